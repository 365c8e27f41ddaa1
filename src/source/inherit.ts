import type { Path } from "../diagnostics/path.ts";

/** A tree made of two: what its own file says, and what that leaves to a file that several share. */
interface Inherited {
	readonly value: unknown;
	/** Whether what stands at a path, or would stand there, is of the shared file. */
	readonly isShared: (path: Path) => boolean;
}

type Block = Readonly<Record<string, unknown>>;

const isBlock = (node: unknown): node is Block =>
	typeof node === "object" && node !== null && !Array.isArray(node);

const joined = (shared: unknown, own: unknown): unknown => {
	if (own === undefined) return shared;
	if (!isBlock(shared) || !isBlock(own)) return own;
	const both: Record<string, unknown> = Object.create(null);
	// The order of its own entries first, so that a definition reads on as it was written.
	for (const key of [...Object.keys(own), ...Object.keys(shared)]) both[key] = joined(shared[key], own[key]);
	return both;
};

/** Steps of a path that a tree has. */
const reach = (tree: unknown, path: Path): number => {
	let node = tree;
	for (const [i, step] of path.entries()) {
		const next = Array.isArray(node)
			? typeof step === "number"
				? node[step]
				: undefined
			: isBlock(node)
				? node[step]
				: undefined;
		if (next === undefined) return i;
		node = next;
	}
	return path.length;
};

/**
 * Lays a tree over one that it shares with others: blocks are joined entry by entry, and of a list or a value the own
 * one stands whole. A path is of the file that has more of it, and of its own where both have as much.
 */
export const inherit = (shared: unknown, own: unknown): Inherited => ({
	value: joined(shared, own),
	isShared: (path) => reach(shared, path) > reach(own, path),
});
