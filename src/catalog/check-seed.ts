import type * as z from "zod";
import type { Checked, Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { type Message, message, type Said } from "../messages/message.ts";

const show = (value: unknown): string => {
	const text = typeof value === "string" ? `"${value}"` : (JSON.stringify(value) ?? String(value));
	return text.length > 60 ? `${text.slice(0, 57)}...` : text;
};

const valueAt = (tree: unknown, path: Path): unknown =>
	path.reduce<unknown>(
		(node, step) =>
			typeof node === "object" && node !== null
				? (node as Record<string | number, unknown>)[step]
				: undefined,
		tree,
	);

const expectation = (issue: z.core.$ZodIssue): Said => {
	switch (issue.code) {
		case "invalid_type":
			return message("seed/expected.type", { type: issue.expected });
		case "invalid_value":
			return message("source/one-of", {
				names: `${issue.values.slice(0, 12).map(String).join(", ")}${issue.values.length > 12 ? ", ..." : ""}`,
			});
		case "too_small":
			return issue.origin === "array"
				? message("seed/expected.rows")
				: message("seed/expected.more", { least: String(issue.minimum) });
		case "unrecognized_keys":
			return message("seed/expected.fields");
		case "custom":
			return (issue.params?.["expected"] as Message | undefined) ?? issue.message;
		default:
			return issue.message;
	}
};

const isInconsistent = (issue: z.core.$ZodIssue): boolean =>
	issue.code === "custom" && issue.params?.["inconsistent"] === true;

const fault = (file: string, tree: unknown, issue: z.core.$ZodIssue): Diagnostic => {
	const extra = issue.code === "unrecognized_keys" ? issue.keys.slice(0, 1) : [];
	const path: Path = [
		...issue.path.map((step) => (typeof step === "number" ? step : String(step))),
		...extra,
	];
	const value = valueAt(tree, path);
	const missing = value === undefined;
	const name = path.length === 0 ? message("seed/whole-file") : String(path.at(-1));
	const inconsistent = isInconsistent(issue);
	return {
		code: inconsistent ? "seed/inconsistent" : "seed/shape",
		severity: "error",
		at: { file, path, ...(extra.length > 0 ? { key: true } : {}) },
		what: missing
			? message("seed/shape.lacks", { name })
			: inconsistent
				? message("seed/inconsistent.what", { name })
				: message("seed/shape.what", { name }),
		expected: expectation(issue),
		...(missing ? {} : { found: show(value) }),
		mend: message("seed/row.mend"),
	};
};

/**
 * A shipped table against its form. Every fault is told, each at its place; nothing is thrown.
 *
 * @param file name below `seeds/`
 */
export const checkSeed = <S extends z.ZodType>(
	schema: S,
	tree: unknown,
	file: string,
): Checked<z.output<S>> => {
	const read = schema.safeParse(tree);
	if (read.success) return { value: read.data, diagnostics: [] };
	return { diagnostics: read.error.issues.map((issue) => fault(`seeds/${file}`, tree, issue)) };
};

/** A name that stands twice in a shipped table, told at its second place. */
export const repeatedNames = (
	file: string,
	names: readonly { readonly name: string; readonly path: Path }[],
): Diagnostic[] => {
	const first = new Map<string, Path>();
	return names.flatMap(({ name, path }): Diagnostic[] => {
		const before = first.get(name);
		if (before === undefined) {
			first.set(name, path);
			return [];
		}
		return [
			{
				code: "seed/repeated",
				severity: "error",
				at: { file: `seeds/${file}`, path },
				what: message("seed/repeated.what", { name }),
				expected: message("seed/repeated.expected"),
				found: name,
				mend: message("seed/repeated.mend"),
				related: [{ at: { file: `seeds/${file}`, path: before }, label: message("seed/repeated.label") }],
			},
		];
	});
};
