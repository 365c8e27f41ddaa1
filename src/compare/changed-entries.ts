import type { Path } from "../diagnostics/path.ts";

/** What became of an entry of the definition. `from` and `to` are as written; an entry may be a whole block. */
export interface ChangedEntry {
	readonly kind: "changed" | "added" | "removed";
	/** Where it stands in the earlier definition, and in the later one: items of lists may have moved. */
	readonly before?: Path;
	readonly after?: Path;
	readonly from?: unknown;
	readonly to?: unknown;
}

type Block = Readonly<Record<string, unknown>>;

/**
 * Entries of two definitions that differ, in the order of the later one; blocks are opened as far as both have them.
 * Items of a list are taken for the same by what names them, or, where nothing does, by what they hold and where they
 * stand, so that one more item does not make every one behind it a changed one.
 */
export const changedEntries = (before: unknown, after: unknown): readonly ChangedEntry[] =>
	differing({ node: before, path: [] }, { node: after, path: [] });

interface Placed {
	readonly node: unknown;
	readonly path: Path;
}

const differing = (a: Placed, b: Placed): readonly ChangedEntry[] => {
	if (alike(a.node, b.node)) return [];
	if (Array.isArray(a.node) && Array.isArray(b.node)) return differingItems(a, b);
	if (isBlock(a.node) && isBlock(b.node)) return differingKeys(a, b);
	return [{ kind: "changed", before: a.path, after: b.path, from: a.node, to: b.node }];
};

const differingKeys = (a: Placed, b: Placed): readonly ChangedEntry[] => {
	const [old, now] = [a.node as Block, b.node as Block];
	const gone = Object.keys(old).filter((key) => !Object.hasOwn(now, key));
	return [
		...Object.entries(now).flatMap(([key, node]) => {
			const path = [...b.path, key];
			return Object.hasOwn(old, key)
				? differing({ node: old[key], path: [...a.path, key] }, { node, path })
				: [added({ node, path })];
		}),
		...gone.map((key) => removed({ node: old[key], path: [...a.path, key] })),
	];
};

const differingItems = (a: Placed, b: Placed): readonly ChangedEntry[] => {
	const [old, now] = [itemsOf(a), itemsOf(b)];
	return pairs(old, now).flatMap(([one, other]) => {
		if (one !== undefined && other !== undefined) return differing(one, other);
		if (other !== undefined) return [added(other)];
		return one === undefined ? [] : [removed(one)];
	});
};

const added = ({ node, path }: Placed): ChangedEntry => ({ kind: "added", after: path, to: node });
const removed = ({ node, path }: Placed): ChangedEntry => ({ kind: "removed", before: path, from: node });

const itemsOf = ({ node, path }: Placed): readonly Placed[] =>
	(node as readonly unknown[]).map((item, i) => ({ node: item, path: [...path, i] }));

type Pair = readonly [before: Placed | undefined, after: Placed | undefined];

/** What names an item among its like, the surest first. */
const NAMES = [
	"id",
	"name",
	"number",
	"role",
	"phase",
	"element",
	"over",
	"cas",
	"rule",
	"question",
] as const;

const pairs = (old: readonly Placed[], now: readonly Placed[]): readonly Pair[] => {
	const name = NAMES.find((key) => names(old, key) && names(now, key));
	return name === undefined ? byPlace(old, now) : byName(old, now, name);
};

const names = (items: readonly Placed[], key: string): boolean => {
	const found = items.map(({ node }) => (isBlock(node) ? node[key] : undefined));
	return (
		found.every((value) => typeof value === "string" || typeof value === "number") &&
		new Set(found).size === found.length
	);
};

const byName = (old: readonly Placed[], now: readonly Placed[], key: string): readonly Pair[] => {
	const nameOf = ({ node }: Placed) => (node as Block)[key];
	const known = new Map(old.map((item) => [nameOf(item), item]));
	const kept = new Set(now.map(nameOf));
	return [
		...now.map((item): Pair => [known.get(nameOf(item)), item]),
		...old.filter((item) => !kept.has(nameOf(item))).map((item): Pair => [item, undefined]),
	];
};

/** Items that are alike at the front and at the back are the same; those between are taken in their order. */
const byPlace = (old: readonly Placed[], now: readonly Placed[]): readonly Pair[] => {
	const shorter = Math.min(old.length, now.length);
	let front = 0;
	while (front < shorter && alike(old[front]?.node, now[front]?.node)) front++;
	let back = 0;
	while (back < shorter - front && alike(old.at(-1 - back)?.node, now.at(-1 - back)?.node)) back++;
	const [was, is] = [old.slice(front, old.length - back), now.slice(front, now.length - back)];
	return Array.from({ length: Math.max(was.length, is.length) }, (_, i): Pair => [was[i], is[i]]);
};

const isBlock = (node: unknown): node is Block =>
	typeof node === "object" && node !== null && !Array.isArray(node);

/** Whether two trees say the same; the order of a block's entries says nothing. */
const alike = (a: unknown, b: unknown): boolean => {
	if (Array.isArray(a) && Array.isArray(b))
		return a.length === b.length && a.every((item, i) => alike(item, b[i]));
	if (isBlock(a) && isBlock(b)) {
		const keys = Object.keys(a);
		return (
			keys.length === Object.keys(b).length &&
			keys.every((key) => Object.hasOwn(b, key) && alike(a[key], b[key]))
		);
	}
	return a === b;
};
