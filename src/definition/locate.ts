import { isKnown } from "../cite/known.ts";
import type { Path } from "../diagnostics/path.ts";
import { isBlock } from "./fault.ts";

/**
 * Fills in where each value was written. A schema does not know the path it runs at, so values leave it without one.
 * Where one text became several entries (a depth and its reference), all of them keep the place of the text.
 *
 * @param read what the schemas gave
 * @param tree what they were given
 */
export const locate = <T>(read: T, tree: unknown): T => visit(read, tree, []) as T;

const visit = (node: unknown, written: unknown, path: Path): unknown => {
	if (typeof node !== "object" || node === null) return node;
	if (isKnown(node))
		return node.from.kind === "definition" ? { ...node, from: { ...node.from, at: path } } : node;
	const below = (step: string | number, child: unknown): unknown => {
		if (Array.isArray(written) && typeof step === "number")
			return visit(child, written[step], [...path, step]);
		if (isBlock(written) && typeof step === "string") return visit(child, written[step], [...path, step]);
		return visit(child, written, path);
	};
	if (Array.isArray(node)) return node.map((item, i) => below(i, item));
	return Object.fromEntries(Object.entries(node).map(([key, child]) => [key, below(key, child)]));
};
