import type { Code } from "../diagnostics/codes.ts";
import { diagnose, type Telling } from "../diagnostics/diagnose.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";

/** A message about the place at a path of the definition. */
export interface Fault extends Telling {
	readonly code: Code;
	readonly at: Path;
	/** Point at the key rather than at its value. */
	readonly key?: boolean;
}

export const faultAt = ({ code, at, key, ...telling }: Fault): Diagnostic =>
	diagnose(code, key === true ? { path: at, key } : { path: at }, telling);

export const isBlock = (value: unknown): value is Readonly<Record<string, unknown>> =>
	typeof value === "object" && value !== null && !Array.isArray(value);

/** What stands at a path of the tree as read; `undefined` where nothing does. */
export const valueAt = (tree: unknown, path: Path): unknown =>
	path.reduce<unknown>((node, step) => {
		if (Array.isArray(node)) return typeof step === "number" ? node[step] : undefined;
		return isBlock(node) && Object.hasOwn(node, step) ? node[step] : undefined;
	}, tree);

/** Items of the list at a path; none where no list stands. */
export const itemsAt = (tree: unknown, path: Path): readonly unknown[] => {
	const list = valueAt(tree, path);
	return Array.isArray(list) ? list : [];
};

/** A value short enough for a message. */
export const shown = (value: unknown): Said => {
	if (Array.isArray(value)) return message("definition/list-of", { count: value.length });
	return isBlock(value) ? message("definition/expected.block") : scalarShown(value);
};

/** The same, of a value that is neither a list nor a block. */
export const scalarShown = (value: unknown): string => {
	const text = typeof value === "string" ? value : String(value);
	return text.length > 60 ? `${text.slice(0, 57)}…` : text;
};
