import { isTable, type Known, type KnownTable } from "../cite/known.ts";
import { definitionSchema } from "../definition/definition.ts";
import { namesOf } from "../definition/entry-names.ts";
import { fieldAt } from "../definition/schema-walk.ts";
import { showPath } from "../diagnostics/path.ts";
import { type Message, message } from "../messages/message.ts";
import { type Reader, tell, tellPhrase, tellSaid } from "../messages/print.ts";
import {
	formatQuantity,
	joinUnit,
	numberString,
	type PrintedQuantity,
	type UnitSystem,
} from "../units/format.ts";
import { practicallyEqual } from "../units/practically-equal.ts";
import type { ChangedInput } from "./changed-inputs.ts";
import type { Changes } from "./compare.ts";
import { type MovedResult, printed, roundingOf } from "./moved-results.ts";

/*
 * How changes are worded, alike on the terminal, as data and in the paper.
 */

/** Longest text of a block that came or went, in characters: its beginning says which it is. */
const LONGEST = 160;

/** A changed input in words: its name, what it is, and how it was and is written. */
export interface ToldInput {
	readonly name: string;
	/** The title of its field. The titles are in English. */
	readonly title?: string;
	readonly was?: string;
	readonly is?: string;
	readonly note?: string;
}

export const toldInput = (input: ChangedInput, { before, after }: Changes, reader: Reader): ToldInput => {
	const say = (given: Message) => tellPhrase(given, reader);
	switch (input.what) {
		case "entry": {
			const path = input.after ?? input.before ?? [];
			const title = fieldAt(definitionSchema, path)?.title;
			return {
				name: namesOf(path, input.after === undefined ? before.written : after.written),
				...(title === undefined ? {} : { title }),
				...(input.kind === "added" ? {} : { was: asWritten(input.from) }),
				...(input.kind === "removed" ? {} : { is: asWritten(input.to) }),
				...(input.kind === "changed"
					? {}
					: { note: say(message(input.kind === "added" ? "compare/added" : "compare/removed")) }),
				...(input.sameAmount === true ? { note: say(message("compare/same-amount")) } : {}),
			};
		}
		case "file":
			return {
				name: `${showPath(input.at)} › ${input.file}`,
				note: say(
					input.rows > 0
						? message("compare/file-rows", { rows: input.rows })
						: message("compare/file-values", { values: input.keys.length }),
				),
			};
		case "assumption":
			return {
				name: showPath(input.at),
				...(input.from === undefined ? {} : { was: tellSaid(input.from, reader) }),
				...(input.to === undefined ? {} : { is: tellSaid(input.to, reader) }),
				note: say(message("compare/assumed")),
			};
	}
};

/** An entry as it is written, a block on one line. */
const asWritten = (node: unknown): string => {
	const text = onOneLine(node);
	return text.length > LONGEST ? `${text.slice(0, LONGEST - 2).trimEnd()} …` : text;
};

const onOneLine = (node: unknown): string => {
	if (Array.isArray(node)) return `[${node.map(onOneLine).join(", ")}]`;
	if (typeof node === "object" && node !== null)
		return `{ ${Object.entries(node)
			.map(([key, value]) => `${key}: ${onOneLine(value)}`)
			.join(", ")} }`;
	return String(node ?? "–");
};

const DASH = "–";

/** A value as it is printed; of a table its number of rows; a dash for none. */
export const toldValue = (value: Known | KnownTable | undefined, reader: Reader): string => {
	if (value === undefined) return DASH;
	if (isTable(value)) return tell(message("compare/rows-of-table", { rows: value.rows.length }), reader);
	return printed(value, reader.units) ?? DASH;
};

/** By how much a result moved: `+10 ft, +0.8 %`; of a table, the column that moved most. Empty where one is missing. */
export const toldChange = ({ before, after }: MovedResult, units: UnitSystem): string => {
	if (before === undefined || after === undefined) return "";
	if (!isTable(before) && !isTable(after))
		return before.dimension === after.dimension ? movedBy(before, after, units) : "";
	if (!isTable(before) || !isTable(after) || before.rows.length !== after.rows.length) return "";
	const most = Object.entries(after.columns)
		.map(([column, dimension]) => {
			const pairs = before.rows.map((row, i) => [row[column] ?? 0, after.rows[i]?.[column] ?? 0] as const);
			const [old, now] = pairs.reduce(
				(a, b) => (Math.abs(b[1] - b[0]) > Math.abs(a[1] - a[0]) ? b : a),
				[0, 0],
			);
			const of = (value: number) => ({ dimension, value, from: after.from }) as Known;
			return { column, old, now, text: practicallyEqual(old, now) ? "" : movedBy(of(old), of(now), units) };
		})
		.filter(({ text }) => text !== "")
		.toSorted((a, b) => share(b) - share(a))[0];
	return most === undefined ? "" : `${most.column}: ${most.text}`;
};

const share = ({ old, now }: { readonly old: number; readonly now: number }): number =>
	Math.abs(now - old) / Math.max(Math.abs(old), Math.abs(now), Number.EPSILON);

/** Scales whose zero is a convention, that go round or are logarithms: a percentage of them says nothing. */
const WITHOUT_SHARE: ReadonlySet<string> = new Set([
	"temperature",
	"angle",
	"share",
	"elevation",
	"offset",
	"sound-level",
]);

/** Between this share and this many times as much, a percentage reads better than two numbers. */
const LEAST_SHARE = 0.0005;
const GREATEST_SHARE = 10;

/** The difference of the two numbers as they are printed, so that a reader who subtracts finds the same. */
const movedBy = (old: Known, now: Known, units: UnitSystem): string => {
	if (!Number.isFinite(old.value) || !Number.isFinite(now.value)) return "";
	const [was, is] = [old, now].map((known) =>
		formatQuantity({ dimension: known.dimension, value: known.value, style: roundingOf(known) }, units),
	) as [PrintedQuantity, PrintedQuantity];
	const decimals = is.number.split(".")[1]?.length ?? 0;
	const amount = joinUnit({ number: signed(numberIn(is) - numberIn(was), decimals), unit: is.unit });
	const part = (now.value - old.value) / Math.abs(old.value);
	const worthTelling =
		old.value !== 0 &&
		!WITHOUT_SHARE.has(now.dimension) &&
		Math.abs(part) >= LEAST_SHARE &&
		Math.abs(part) <= GREATEST_SHARE;
	return worthTelling ? `${amount}, ${signed(part * 100, 1)} %` : amount;
};

const numberIn = ({ number }: PrintedQuantity): number =>
	Number(number.replaceAll(",", "").replace("\u2212", "-"));

const signed = (value: number, decimals: number): string => numberString(value, decimals, { sign: true });

/** Numbers of the changed inputs that a result rests on, from 1: `1 and 3`; of choices, `1 or 3`. */
export const toldCauses = ({ causes, byChoice }: MovedResult, reader: Reader): string | undefined => {
	if (causes.length === 0) return undefined;
	const list = causes.map((i) => String(i + 1));
	return byChoice === true && causes.length > 1
		? tellPhrase(message("compare/from-choice", { inputs: { list, joined: "or" } }), reader)
		: tellPhrase(message("compare/from", { inputs: { list, joined: "and" } }), reader);
};
