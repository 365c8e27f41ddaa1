import { definitionSchema } from "../../src/definition/definition.ts";
import { valueAt } from "../../src/definition/fault.ts";
import { papersOf } from "../../src/definition/privacy.ts";
import { alternatives, fieldAt, schemasAt } from "../../src/definition/schema-walk.ts";
import type { Path } from "../../src/diagnostics/path.ts";
import { readYaml } from "../../src/source/read-yaml.ts";

type Node = Record<string | number, unknown>;

const isNode = (value: unknown): value is Node => typeof value === "object" && value !== null;

export const treeOf = (text: string): unknown =>
	structuredClone(JSON.parse(JSON.stringify(readYaml(text, "well.yaml").value?.value)) as unknown);

const pathsOf = (node: unknown, path: Path = []): Path[] =>
	isNode(node)
		? Object.entries(node).flatMap(([key, child]) => {
				const here = [...path, Array.isArray(node) ? Number(key) : key];
				return [here, ...pathsOf(child, here)];
			})
		: [];

const put = (tree: unknown, path: Path, value: unknown): void => {
	const holder = path.length === 1 ? tree : valueAt(tree, path.slice(0, -1));
	const last = path.at(-1);
	if (isNode(holder) && last !== undefined) holder[last] = value;
};

/** Entries whose words the tool itself knows, looks up or matches with another entry. */
const KNOWN = new Set([
	"id",
	"for",
	"string",
	"grade",
	"connection",
	"class",
	"cas",
	"license",
	"file",
	"reference",
	"gas",
]);

/** Where a person's own words stand: two of them or more, which no list of ours holds. */
export const ownWords = (tree: unknown): readonly Path[] =>
	pathsOf(tree).filter((path) => {
		const text = valueAt(tree, path);
		return (
			typeof text === "string" &&
			/^\p{L}/u.test(text) &&
			/\p{L}{3} .*\p{L}{3}/u.test(text) &&
			!KNOWN.has(String(path.at(-1))) &&
			fieldAt(definitionSchema, path)?.dimension === undefined &&
			schemasAt(definitionSchema, path)
				.flatMap(alternatives)
				.every((schema) => !("entries" in schema._zod.def))
		);
	});

/** Every place of one text gets the same mark, so that what refers to it by name still does. */
export const planted = (
	tree: unknown,
	marked: (text: string, n: number) => string,
): { readonly tree: unknown; readonly marks: ReadonlyMap<string, readonly Path[]> } => {
	const changed = structuredClone(tree);
	const marks = new Map<string, Path[]>();
	const texts = new Map<string, string>();
	for (const path of ownWords(tree)) {
		const text = String(valueAt(tree, path));
		const mark = texts.get(text) ?? marked(text, texts.size);
		texts.set(text, mark);
		marks.set(mark, [...(marks.get(mark) ?? []), path]);
		put(changed, path, mark);
	}
	return { tree: changed, marks };
};

/** Blocks that may be kept from some readers, with those who may have them by default. */
export const narrowable = (
	tree: unknown,
): readonly { readonly path: Path; readonly papers: readonly string[] }[] =>
	pathsOf(tree).flatMap((path) => {
		const block = valueAt(tree, path);
		const written = isNode(block) ? block["papers"] : undefined;
		const papers = Array.isArray(written) ? written.map(String) : papersOf(path);
		return isNode(block) &&
			!Array.isArray(block) &&
			papers.length > 0 &&
			!path.includes("limit") &&
			schemasAt(definitionSchema, [...path, "papers"]).length > 0
			? [{ path, papers }]
			: [];
	});

export const narrow = (tree: unknown, path: Path, papers: readonly string[]): void =>
	put(tree, [...path, "papers"], papers);
