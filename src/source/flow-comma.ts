import { isScalar, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from "yaml";
import type { Code } from "../diagnostics/codes.ts";
import type { Telling } from "../diagnostics/diagnose.ts";
import type { Range } from "../diagnostics/source-text.ts";
import { message } from "../messages/message.ts";
import { withoutComma } from "../units/comma.ts";

/** Inside `{ }` and `[ ]` a comma ends a value. One value that was cut by it, put together again. */
export interface CutValue {
	/** First item that belongs to it (the one before the first comma), or none if the fault stands alone. */
	readonly first: number | undefined;
	/** Last item that belongs to it. */
	readonly last: number;
	/** What was meant, for the tree to go on with: reading on must not find the same fault again. */
	readonly text: string | undefined;
	readonly range: Range;
	readonly code: Code;
	readonly telling: Telling;
}

type Located = Scalar & { range: [number, number, number] };

const plain = (node: unknown): node is Located =>
	isScalar(node) && node.type === "PLAIN" && node.range != null && node.range[0] < node.range[1];

const sourceOf = (node: Located, text: string): string => text.slice(node.range[0], node.range[1]);

/** No pipe is thousands of inches wide: there the comma marks decimals. */
const INCHES = /\d\s*(?:in\b|inch|["”″])/i;

/** What was meant, the likelier reading first. */
const readings = (written: string): readonly string[] => {
	const [joined, decimal] = withoutComma(written);
	if (decimal === undefined) return [joined];
	return INCHES.test(written) ? [decimal, joined] : [joined, decimal];
};

const commaInNumber = (written: string): Telling => {
	const [first = written, second] = readings(written);
	const unit = /[^\d\s.,+-]/.test(written) ? "" : message("syntax/comma-in-number.with-unit");
	return {
		what: message("syntax/comma-in-number.what"),
		expected: message("syntax/comma-in-number.expected"),
		found: written,
		mend:
			second === undefined
				? message("syntax/comma-in-number.mend", { first, unit })
				: INCHES.test(written)
					? message("syntax/comma-in-number.or-thousands", { first, second, unit })
					: message("syntax/comma-in-number.or-decimals", { first, second, unit }),
	};
};

const commaInText = (written: string): Telling => ({
	what: message("syntax/comma-in-text.what"),
	expected: message("syntax/comma-in-text.expected"),
	found: written,
	mend: /[\d%]\s*,\s+\d/.test(written)
		? message("syntax/comma-in-text.text-or-list", { written })
		: message("syntax/comma-in-text.mend", { written }),
});

/** @param before the text before the comma, which the name may be the rest of */
const noValue = (name: string, before: string | undefined): Telling => {
	const joined = /^([\w-]+):(\S.*)$/.exec(name);
	if (joined !== null) {
		const [, given = "", value = ""] = joined;
		return {
			what: message("syntax/colon.what"),
			expected: message("syntax/no-value.expected"),
			found: name,
			mend: message("syntax/no-value.spaced", { name: given, value }),
		};
	}
	return {
		what: message("syntax/no-value.what", { name }),
		expected: message("syntax/no-value.expected"),
		found: name,
		mend:
			before !== undefined
				? message("syntax/no-value.rest-of-text", { before, name })
				: /^\w+$/.test(name)
					? message("syntax/no-value.give", { name })
					: message("syntax/no-value.mend"),
	};
};

/** Entries of a `{ }` that have no colon: the tell-tale of a comma inside a value. */
export const cutInMap = (map: YAMLMap, text: string): CutValue[] => {
	const found: CutValue[] = [];
	const items: readonly Pair[] = map.items;
	const bare = (index: number): Located | undefined => {
		const pair = items[index];
		return pair !== undefined && pair.value === null && plain(pair.key) ? pair.key : undefined;
	};
	for (let index = 0; index < items.length; index += 1) {
		const start = bare(index);
		if (start === undefined) continue;
		const before = items[index - 1]?.value;
		const name = sourceOf(start, text);
		if (!plain(before) || /^[a-z][a-z0-9_]*$|^[\w-]+:\S/.test(name)) {
			const range: Range = [start.range[0], start.range[1]];
			found.push({
				first: undefined,
				last: index,
				text: undefined,
				range,
				code: "syntax/no-value",
				telling: noValue(
					name,
					plain(before) && /[a-z]{2}/i.test(sourceOf(before, text)) ? sourceOf(before, text) : undefined,
				),
			});
			continue;
		}
		let last = index;
		while (bare(last + 1) !== undefined) last += 1;
		const end = bare(last)?.range[1] ?? start.range[1];
		const range: Range = [before.range[0], end];
		const written = text.slice(...range).replace(/\s+/g, " ");
		const numeric = /\d,\d/.test(written);
		found.push({
			first: index - 1,
			last,
			text: numeric ? readings(written)[0] : written,
			range,
			code: numeric ? "syntax/comma-in-number" : "syntax/comma-in-text",
			telling: numeric ? commaInNumber(written) : commaInText(written),
		});
		index = last;
	}
	return found;
};

/**
 * A number in a `[ ]` that a comma has cut: digits without a unit, directly before a comma, then digits with one
 * (`[1,200 ft]`). `[100,200]` and `[1, 200 ft]` are lists as they stand.
 */
export const cutInList = (list: YAMLSeq, text: string): CutValue[] => {
	const found: CutValue[] = [];
	const items: readonly unknown[] = list.items;
	for (let index = 0; index < items.length; index += 1) {
		const head = items[index];
		if (!plain(head) || !/^[-+]?\d{1,3}$/.test(sourceOf(head, text))) continue;
		let last = index;
		let end = head.range[1];
		let closed = false;
		while (!closed) {
			const next = items[last + 1];
			if (!plain(next) || next.range[0] !== end + 1) break;
			const piece = sourceOf(next, text);
			closed = /^\d[\d.]*\s*[^\d\s.]/.test(piece);
			if (!closed && !/^\d{3}$/.test(piece)) break;
			last += 1;
			end = next.range[1];
		}
		if (!closed) continue;
		const range: Range = [head.range[0], end];
		const written = text.slice(...range);
		found.push({
			first: index,
			last,
			text: readings(written)[0],
			range,
			code: "syntax/comma-in-number",
			telling: commaInNumber(written),
		});
		index = last;
	}
	return found;
};
