import type * as z from "zod";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestName } from "../diagnostics/nearest-name.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";
import { acceptedUnits } from "../units/units-of.ts";
import { faultAt, isBlock, scalarShown, shown, valueAt } from "./fault.ts";
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
		what: message("definition/unknown-key.what"),
		expected:
			names.length === 0
				? message("definition/unknown-key.none")
				: message("source/one-of", { names: names.join(", ") }),
		found: shown(key),
		mend:
			near !== undefined
				? message("definition/near.mend", { near })
				: place !== undefined
					? message("definition/unknown-key.move", { place })
					: bare
						? message("definition/unknown-key.comma")
						: message("definition/unknown-key.mend"),
	});
};

export const missing = (at: Path, { schema }: Reading): Diagnostic => {
	const meta = fieldAt(schema, at);
	const name = at.length === 0 ? message("definition/whole") : String(at.at(-1));
	return faultAt({
		code: "definition/missing",
		at,
		what: message("definition/missing.what", { name }),
		expected:
			meta === undefined
				? message("definition/expected.value")
				: message("definition/missing.expected", {
						title: meta.title.toLowerCase(),
						expected: meta.expected,
					}),
		...(meta === undefined ? {} : { why: meta.why }),
		mend: message(at.length > 1 ? "definition/missing.to-entry" : "definition/missing.at-top", { name }),
	});
};

export const empty = (at: Path, meta: FieldMeta | undefined): Diagnostic =>
	faultAt({
		code: "definition/empty",
		at,
		what:
			at.length === 0
				? message("definition/empty.whole")
				: message("definition/empty.what", { name: String(at.at(-1)) }),
		expected: meta?.expected ?? message("definition/expected.value"),
		mend: at.length === 0 ? message("definition/empty.start") : message("definition/empty.mend"),
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
			what: message("definition/version.what"),
			expected: message("definition/version.expected", { options: options.join(", ") }),
			found: shown(found),
			mend: message("definition/version.mend"),
		});
	if (typeof found !== "string" && !(options.length === 1 && typeof found === "boolean"))
		return wrongKind(at, found, meta);
	const near = nearestName(scalarShown(found), options);
	return faultAt({
		code: "definition/not-one-of",
		at,
		what: message("definition/not-one-of.what"),
		expected:
			options.length === 1
				? (meta?.expected ?? `\`${options[0]}\``)
				: message("source/one-of", { names: options.join(", ") }),
		found: shown(found),
		mend:
			near === undefined ? message("definition/not-one-of.mend") : message("definition/near.mend", { near }),
	});
};

export const wrongForm = (
	at: Path,
	found: unknown,
	meta: FieldMeta | undefined,
	format: string,
): Diagnostic => {
	const expected: Said = meta?.expected ?? message("definition/wrong-form.expected");
	if (format === "date")
		return faultAt({
			code: "definition/date",
			at,
			what: message("definition/date.what"),
			expected: message("definition/expected.date"),
			found: shown(found),
			mend: message("definition/date.mend"),
		});
	return faultAt({
		code: "definition/wrong-form",
		at,
		what: message("definition/wrong-form.what"),
		expected,
		found: shown(found),
		mend:
			meta?.example === undefined
				? message("definition/wrong-form.mend")
				: message("definition/as-in.mend", { example: meta.example }),
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
			what: message("definition/wrong-count.what"),
			expected: meta?.expected ?? message("definition/wrong-count.expected"),
			found: shown(found),
			mend: message("definition/wrong-count.mend"),
		});
	return faultAt({
		code: "definition/out-of-range",
		at,
		what: message("definition/out-of-range.what"),
		expected: meta?.expected ?? message("definition/out-of-range.expected"),
		found: shown(found),
		mend: message("definition/out-of-range.mend"),
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
			what: message("definition/api-number.what"),
			expected: meta?.expected ?? message("definition/api-number.expected"),
			found: shown(found),
			mend: message("definition/api-number.mend"),
		});
	if (fault === "cas-number")
		return faultAt({
			code: "definition/cas-number",
			at,
			what: message("definition/cas-number.what"),
			expected: meta?.expected ?? message("definition/cas-number.expected"),
			found: shown(found),
			mend: message("definition/cas-number.mend"),
		});
	if (fault === "over-whole")
		return faultAt({
			code: "definition/over-whole",
			at,
			what: message("definition/over-whole.what"),
			expected: message("definition/over-whole.expected"),
			found: shown(found),
			mend: message("definition/over-whole.mend"),
		});
	if (isBlock(fault))
		return quantityDiagnostic(at, scalarShown(found), fault as unknown as QuantityFault, meta);
	return wrongKind(at, found, meta);
};

const mendKind = (found: unknown, meta: FieldMeta | undefined): Said => {
	if (meta?.kind === "block") return message("definition/wrong-kind.block");
	if (meta?.kind === "list") return message("definition/wrong-kind.list");
	const scalar = typeof found === "number" || typeof found === "boolean";
	if (meta?.dimension === undefined && scalar)
		return message("definition/wrong-kind.text", { value: scalarShown(found) });
	return meta?.example === undefined
		? message("definition/wrong-kind.mend")
		: message("definition/as-in.mend", { example: meta.example });
};

export const wrongKind = (at: Path, found: unknown, meta: FieldMeta | undefined): Diagnostic => {
	const measured = meta?.dimension !== undefined && meta.dimension !== "ratio" && meta.dimension !== "count";
	if (typeof found === "number" && measured && Number.isFinite(found) && meta.kind !== "number")
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
		what: message("definition/wrong-kind.what"),
		expected: meta?.expected ?? message("definition/wrong-kind.expected"),
		found: shown(found),
		mend: mendKind(found, meta),
	});
};
