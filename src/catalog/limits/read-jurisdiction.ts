import * as z from "zod";
import { cite } from "../../cite/source.ts";
import type { Checked } from "../../diagnostics/diagnostic.ts";
import { pathKey } from "../../diagnostics/path.ts";
import { message } from "../../messages/message.ts";
import { type Desk, report } from "./fault.ts";
import { type Jurisdiction, LAW_KINDS, type Rule, type RuleSetKind } from "./limit.ts";
import { howKnownShape, readRule, reportShape } from "./read-rule.ts";

const text = z.string().trim().min(1);

const practiceShape = z.strictObject({
	practice: z.string().regex(/^[a-z]+(?:-[a-z]+)*$/),
	kind: z.literal("practice"),
	note: z.exactOptional(text),
	rules: z.array(z.unknown()).min(1),
});

const fileShape = z.strictObject({
	jurisdiction: z.string().regex(/^[a-z]+(?:-[a-z0-9]+)+$/),
	name: text,
	kind: z.enum(LAW_KINDS),
	agency: text,
	version: z.exactOptional(text),
	note: z.exactOptional(text),
	sought: z.exactOptional(text),
	holidays: z.exactOptional(
		z.strictObject({
			covers: z.array(z.int().min(1900)).min(1),
			dates: z.array(z.iso.date()).min(1),
			how_known: howKnownShape,
		}),
	),
	rules: z.array(z.unknown()).min(1),
});

/** The row's citation, for the origin of its numbers; the row itself may still be at fault. */
const citationOf = (row: unknown): string => textIn(row, "citation");

const idOf = (row: unknown): string => textIn(row, "id");

/** What a row holds there, if it is one piece of text or a number. */
const textIn = (row: unknown, key: string): string => {
	const held = typeof row === "object" && row !== null ? (row as Readonly<Record<string, unknown>>)[key] : "";
	return typeof held === "string" || typeof held === "number" ? String(held) : "";
};

/** Practice is cited in words of ours, law by its number. */
const inOwnWords = (rule: Rule): Rule => ({
	...rule,
	citation:
		typeof rule.citation === "string"
			? message("limits/practice.citation", { citation: { declared: rule.citation } })
			: rule.citation,
});

/** Practice is one body to its reader, whatever files it comes in. */
const PRACTICE_NAME = "Engineering practice";

interface Head {
	readonly code: string;
	readonly name: string;
	readonly kind: RuleSetKind;
	readonly agency: string;
	readonly note?: string;
	readonly sought?: string;
	readonly version?: string;
	readonly holidays?: NonNullable<Jurisdiction["holidays"]>;
	readonly rules: readonly unknown[];
}

const readPracticeHead = (desk: Desk, raw: unknown): Head | undefined => {
	const shape = practiceShape.safeParse(raw);
	if (!shape.success) return reportShape(desk, shape.error.issues, [], raw, Object.keys(practiceShape.shape));
	const { practice, ...rest } = shape.data;
	return { ...rest, code: `practice.${practice}`, name: PRACTICE_NAME, agency: PRACTICE_NAME };
};

const readHead = (desk: Desk, raw: unknown): Head | undefined => {
	if (typeof raw === "object" && raw !== null && "practice" in raw) return readPracticeHead(desk, raw);
	const shape = fileShape.safeParse(raw);
	if (!shape.success) return reportShape(desk, shape.error.issues, [], raw, Object.keys(fileShape.shape));
	const { jurisdiction: code, holidays, ...rest } = shape.data;
	return {
		...rest,
		code,
		...(holidays === undefined
			? {}
			: { holidays: { covers: holidays.covers, dates: holidays.dates, howKnown: holidays.how_known } }),
	};
};

/**
 * A file of limits, already read from YAML to plain values: of a jurisdiction, or of engineering practice.
 *
 * Gives the rows that could be read and every fault of those that could not, each located in `file`.
 */
export const readJurisdiction = (raw: unknown, file: string): Checked<Jurisdiction> => {
	const desk: Desk = {
		file,
		faults: [],
		originOf: () => ({ kind: "definition", at: [], text: "" }),
	};
	const head = readHead(desk, raw);
	if (head === undefined) return { diagnostics: desk.faults };
	const { code, rules } = head;
	const seen = new Map<string, number>();
	const read = rules.map((row, i) => {
		const id = idOf(row);
		const first = seen.get(id);
		if (first !== undefined || (id !== "" && !id.startsWith(`${code}.`)))
			return report(desk, {
				code: "rules/id",
				at: ["rules", i, "id"],
				what: first === undefined ? message("limits/id.prefix", { code }) : message("limits/id.repeated"),
				expected: message("limits/id.expected", { code }),
				found: id,
				mend: message("limits/id.mend"),
			});
		seen.set(id, i);
		const rowDesk: Desk = {
			...desk,
			originOf: (at, text) => ({
				kind: "catalogue",
				table: file,
				row: id,
				column: pathKey(at.slice(2)),
				source: cite("cited-rule", citationOf(row)),
				text,
			}),
		};
		return readRule(rowDesk, row, ["rules", i]);
	});
	const found = read.filter((rule) => rule !== undefined);
	return {
		value: { ...head, rules: head.kind === "practice" ? found.map(inOwnWords) : found },
		diagnostics: desk.faults,
	};
};
