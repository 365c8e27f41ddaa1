import { isKnown, isKnownTable, type Known, type KnownTable } from "./known.ts";

/** Every value of a tree under its key, and the key of each value: how a printed number is traced and compared. */
export interface ValueIndex {
	readonly byKey: ReadonlyMap<string, Known | KnownTable>;
	readonly keyOf: (value: object) => string | undefined;
}

/**
 * Walks trees of plain objects, arrays and maps and keys each value by its place, as `results.casing.surface.shoe.md`.
 * A list item with an `id` (or, failing that, a `number`) is keyed by it, so that keys survive reordering.
 */
export const indexValues = (roots: Readonly<Record<string, unknown>>): ValueIndex => {
	const byKey = new Map<string, Known | KnownTable>();
	const keys = new Map<Known | KnownTable, string>();
	// What the walk stands in: a tree that comes back to itself is not followed round.
	const trail = new Set<object>();
	const visit = (node: unknown, key: string): void => {
		if (typeof node !== "object" || node === null || trail.has(node)) return;
		if (isKnown(node) || isKnownTable(node)) {
			byKey.set(key, node);
			if (!keys.has(node)) keys.set(node, key);
			return;
		}
		trail.add(node);
		const said = factsOf(node);
		const under = (child: unknown, step: string | number): void => {
			if (typeof child === "object") visit(child, key === "" ? String(step) : `${key}.${step}`);
		};
		if (said !== undefined) visit(said, key);
		else if (node instanceof Map) for (const [step, child] of node) under(child, String(step));
		else if (Array.isArray(node)) for (const [i, child] of node.entries()) under(child, nameOf(child) ?? i);
		else for (const [step, child] of Object.entries(node)) under(child, step);
		trail.delete(node);
	};
	visit(roots, "");
	return { byKey, keyOf: (value) => keys.get(value as Known | KnownTable) };
};

/** What a message or a part of one carries: its values are keyed by the names of its facts. */
const factsOf = (node: object): unknown => {
	if ("code" in node && "facts" in node) return node.facts;
	if ("parts" in node) return node.parts;
	if ("list" in node && "joined" in node) return node.list;
	return "sentence" in node ? node.sentence : undefined;
};

const nameOf = (item: unknown): string | number | undefined => {
	if (typeof item !== "object" || item === null) return undefined;
	const { id, number } = item as { id?: unknown; number?: unknown };
	if (typeof id === "string") return id;
	return typeof number === "number" ? number : undefined;
};
