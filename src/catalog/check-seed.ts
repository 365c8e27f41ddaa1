import type * as z from "zod";
import type { Checked, Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";

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

const expectation = (issue: z.core.$ZodIssue): string => {
	switch (issue.code) {
		case "invalid_type":
			return `a ${issue.expected}`;
		case "invalid_value":
			return `one of: ${issue.values.slice(0, 12).map(String).join(", ")}${issue.values.length > 12 ? ", ..." : ""}`;
		case "too_small":
			return issue.origin === "array" ? "a list with at least one row" : `more than ${issue.minimum}`;
		case "unrecognized_keys":
			return "only the fields that the head of the file describes";
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
	const name = String(path.at(-1) ?? "the whole file");
	const inconsistent = isInconsistent(issue);
	return {
		code: inconsistent ? "seed/inconsistent" : "seed/shape",
		severity: "error",
		at: { file, path, ...(extra.length > 0 ? { key: true } : {}) },
		what: missing
			? `the shipped table lacks "${name}"`
			: inconsistent
				? `"${name}" contradicts the rest of its row`
				: `"${name}" is not what the shipped table holds there`,
		expected: expectation(issue),
		...(missing ? {} : { found: show(value) }),
		mend: "restore the file from the package, or mend the row",
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
				what: `"${name}" is listed twice in the shipped table`,
				expected: "each name once",
				found: name,
				mend: "restore the file from the package, or take one of the two rows out",
				related: [{ at: { file: `seeds/${file}`, path: before }, label: "first listed here" }],
			},
		];
	});
};
