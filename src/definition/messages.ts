import type * as z from "zod";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestName } from "../diagnostics/nearest-name.ts";
import type { Path } from "../diagnostics/path.ts";
import { acceptedUnits } from "../units/units-of.ts";
import { faultAt, isBlock, shown, valueAt } from "./fault.ts";
import type { FieldMeta } from "./field.ts";
import { quantityDiagnostic } from "./quantity-diagnostic.ts";
import type { QuantityFault } from "./quantity-field.ts";
import { everyField, fieldAt, keysAt } from "./schema-walk.ts";

export type Issue = z.core.$ZodIssue;

/** What the messages are made from: the schema, and the tree that did not fit it. */
export interface Reading {
	readonly schema: z.ZodType;
	readonly tree: unknown;
}

/* The wording of every fault that a schema can find, a function each. */

const placesBySchema = new WeakMap<z.ZodType, ReadonlyMap<string, readonly string[]>>();

/** Everywhere in the definition that a name may stand. */
const placesOf = (name: string, schema: z.ZodType): readonly string[] => {
	const known = placesBySchema.get(schema);
	if (known !== undefined) return known.get(name) ?? [];
	const places = new Map<string, string[]>();
	for (const { pattern } of everyField(schema)) {
		const last = pattern.slice(pattern.lastIndexOf(".") + 1).replace(/(\[\])+$/, "");
		places.set(last, [...(places.get(last) ?? []), pattern]);
	}
	placesBySchema.set(schema, places);
	return places.get(name) ?? [];
};

export const unknownKey = (key: string, block: Path, { schema, tree }: Reading): Diagnostic => {
	const names = keysAt(schema, block);
	const present = valueAt(tree, block);
	const near = nearestName(
		key,
		names.filter((name) => !(isBlock(present) && Object.hasOwn(present, name))),
	);
	const elsewhere = placesOf(key, schema);
	const place = elsewhere.length > 0 && elsewhere.length <= 3 ? elsewhere.join(", ") : undefined;
	const bare = valueAt(tree, [...block, key]) === null;
	return faultAt({
		code: "definition/unknown-key",
		at: [...block, key],
		key: true,
		what: "a name that has no meaning here",
		expected: names.length === 0 ? "no entry" : `one of: ${names.join(", ")}`,
		found: shown(key),
		mend:
			near !== undefined
				? `write \`${near}\`, if that is meant`
				: place !== undefined
					? `move it to where that name belongs: ${place}`
					: bare
						? "take it out; or, if it belongs to the text before a comma, put that text in quotes"
						: "take it out, or use one of the names listed",
	});
};

export const missing = (at: Path, { schema }: Reading): Diagnostic => {
	const meta = fieldAt(schema, at);
	const name = String(at.at(-1) ?? "the definition");
	return faultAt({
		code: "definition/missing",
		at,
		what: `\`${name}\` is missing`,
		expected: meta === undefined ? "a value" : `${meta.title.toLowerCase()}: ${meta.expected}`,
		...(meta === undefined ? {} : { why: meta.why }),
		mend: `add \`${name}:\` ${at.length > 1 ? "to this entry" : "at the top level"}`,
	});
};

export const empty = (at: Path, meta: FieldMeta | undefined): Diagnostic =>
	faultAt({
		code: "definition/empty",
		at,
		what: at.length === 0 ? "there is no definition in the file" : `\`${String(at.at(-1))}\` has no value`,
		expected: meta?.expected ?? "a value",
		mend:
			at.length === 0
				? "write one, or start from a starter (`casebound new`)"
				: "give it a value, or take the line out",
	});

export const notOneOf = (
	at: Path,
	found: unknown,
	options: readonly string[],
	meta: FieldMeta | undefined,
): Diagnostic => {
	if (at.length === 1 && at[0] === "definition")
		return faultAt({
			code: "definition/version",
			at,
			what: "a version of the format that this version of the tool does not read",
			expected: `\`definition: ${options.join(", ")}\``,
			found: shown(found),
			mend: "write the version that this tool reads, or use the tool that reads that version",
		});
	if (typeof found !== "string" && !(options.length === 1 && typeof found === "boolean"))
		return wrongKind(at, found, meta);
	const near = nearestName(shown(found), options);
	return faultAt({
		code: "definition/not-one-of",
		at,
		what: "not one of the words that are understood here",
		expected:
			options.length === 1 ? (meta?.expected ?? `\`${options[0]}\``) : `one of: ${options.join(", ")}`,
		found: shown(found),
		mend: near === undefined ? "use one of the words listed" : `write \`${near}\`, if that is meant`,
	});
};

export const wrongForm = (
	at: Path,
	found: unknown,
	meta: FieldMeta | undefined,
	format: string,
): Diagnostic => {
	const expected = meta?.expected ?? "another form";
	if (format === "date")
		return faultAt({
			code: "definition/date",
			at,
			what: "not a date of the calendar, written year-month-day",
			expected: "a date written year-month-day, such as `2026-05-04`",
			found: shown(found),
			mend: "write four digits of year, two of month and two of day",
		});
	return faultAt({
		code: "definition/wrong-form",
		at,
		what: "not written in the form that is understood here",
		expected,
		found: shown(found),
		mend: meta?.example === undefined ? "write it in that form" : `write it as in \`${meta.example}\``,
	});
};

export const wrongSize = (
	issue: Extract<Issue, { code: "too_small" | "too_big" }>,
	at: Path,
	found: unknown,
	meta: FieldMeta | undefined,
): Diagnostic => {
	if (issue.origin === "string" || (Array.isArray(found) && found.length === 0)) return empty(at, meta);
	if (Array.isArray(found))
		return faultAt({
			code: "definition/wrong-count",
			at,
			what: "a list of another length than is due here",
			expected: meta?.expected ?? "another number of items",
			found: shown(found),
			mend: "give exactly as many items as that",
		});
	return faultAt({
		code: "definition/out-of-range",
		at,
		what: "a number outside what has a meaning here",
		expected: meta?.expected ?? "another number",
		found: shown(found),
		mend: "correct the number",
	});
};

export const custom = (
	issue: Extract<Issue, { code: "custom" }>,
	at: Path,
	found: unknown,
	meta: FieldMeta | undefined,
): Diagnostic => {
	const fault: unknown = issue.params?.["fault"];
	if (fault === "api-number")
		return faultAt({
			code: "definition/api-number",
			at,
			what: "not an API well number",
			expected: meta?.expected ?? "10, 12 or 14 digits",
			found: shown(found),
			mend: "copy the number from the permit, digit by digit",
		});
	if (fault === "cas-number")
		return faultAt({
			code: "definition/cas-number",
			at,
			what: "not a CAS number: the form is wrong or the check digit does not close",
			expected: meta?.expected ?? "a CAS number whose check digit closes",
			found: shown(found),
			mend: "copy the number from the safety data sheet, digit by digit",
		});
	if (fault === "over-whole")
		return faultAt({
			code: "definition/over-whole",
			at,
			what: "a part greater than the whole",
			expected: "100 % or less",
			found: shown(found),
			mend: "correct the share",
		});
	if (isBlock(fault)) return quantityDiagnostic(at, shown(found), fault as unknown as QuantityFault, meta);
	return wrongKind(at, found, meta);
};

const mendKind = (found: unknown, meta: FieldMeta | undefined): string => {
	if (meta?.expected.startsWith("a block"))
		return "write its entries as `name: value`, one to a line below it";
	if (meta?.expected === "a list") return "write a list: `- ` before each item, or the items in `[ ]`";
	const scalar = typeof found === "number" || typeof found === "boolean";
	if (meta?.dimension === undefined && scalar)
		return `if it is meant as text, put it in quotes: \`"${shown(found)}"\``;
	return meta?.example === undefined ? "write what is expected" : `write it as in \`${meta.example}\``;
};

export const wrongKind = (at: Path, found: unknown, meta: FieldMeta | undefined): Diagnostic => {
	const measured = meta?.dimension !== undefined && meta.dimension !== "ratio" && meta.dimension !== "count";
	if (typeof found === "number" && measured && Number.isFinite(found) && !meta.expected.startsWith("decimal"))
		return quantityDiagnostic(
			at,
			String(found),
			{
				dimension: meta.dimension,
				failure: {
					ok: false,
					reason: "no-unit",
					found: String(found),
					accepted: acceptedUnits(meta.dimension),
				},
			},
			meta,
		);
	return faultAt({
		code: "definition/wrong-kind",
		at,
		what: "another kind of value than is due here",
		expected: meta?.expected ?? "another kind of value",
		found: shown(found),
		mend: mendKind(found, meta),
	});
};
