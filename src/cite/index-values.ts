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
	const visit = (node: unknown, key: string, trail: readonly unknown[]): void => {
		if (typeof node !== "object" || node === null || trail.includes(node)) return;
		if (isKnown(node) || isKnownTable(node)) {
			byKey.set(key, node);
			if (!keys.has(node)) keys.set(node, key);
			return;
		}
		const within = [...trail, node];
		const said = factsOf(node);
		if (said !== undefined) {
			visit(said, key, within);
			return;
		}
		const join = (step: string | number) => (key === "" ? String(step) : `${key}.${step}`);
		if (node instanceof Map) for (const [step, child] of node) visit(child, join(String(step)), within);
		else if (Array.isArray(node))
			for (const [i, child] of node.entries()) visit(child, join(nameOf(child) ?? i), within);
		else for (const [step, child] of Object.entries(node)) visit(child, join(step), within);
	};
	visit(roots, "", []);
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
