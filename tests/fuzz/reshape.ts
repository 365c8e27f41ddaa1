import fc from "fast-check";
import * as z from "zod";
import { definitionSchema } from "../../src/definition/definition.ts";
import { valueAt } from "../../src/definition/fault.ts";
import { alternatives, fieldAt, keysAt, metaOf, schemasAt } from "../../src/definition/schema-walk.ts";
import type { Path } from "../../src/diagnostics/path.ts";
import { readYaml } from "../../src/source/read-yaml.ts";

/*
 * Changes that leave a definition well formed: other figures, other words of a list, entries left out, repeated, moved or
 * added. They reach the comparing, calculating, judging and composing, which damaged text seldom does.
 */

interface Spot {
	readonly where: number;
	readonly what: number;
	readonly much: number;
}

type Node = Record<string | number, unknown>;
type Work = (tree: unknown, spot: Spot) => void;

const pick = <T>(list: readonly T[], n: number): T | undefined => list[n % Math.max(1, list.length)];

const isNode = (value: unknown): value is Node => typeof value === "object" && value !== null;

/** Every path of a tree, outer before inner. */
const pathsOf = (node: unknown, path: Path = []): Path[] =>
	isNode(node)
		? Object.entries(node).flatMap(([key, child]) => {
				const here = [...path, Array.isArray(node) ? Number(key) : key];
				return [here, ...pathsOf(child, here)];
			})
		: [];

const put = (tree: unknown, path: Path, value: unknown): void => {
	const holder = valueAt(tree, path.slice(0, -1));
	const last = path.at(-1);
	if (!isNode(holder) || last === undefined) return;
	if (value !== undefined) holder[last] = value;
	else if (Array.isArray(holder)) holder.splice(Number(last), 1);
	else delete holder[last];
};

const MEASURED = /^(-?[\d.]+(?: \d+\/\d+)?(?:e-?\d+)?)( .*)?$/;
const FACTORS = [0, 1e-6, 0.001, 0.1, 0.3048, 0.5, 0.9, 0.99, 1.01, 1.1, 2, 3.2808, 10, 100, 1000, 1e9];

const scaled = (value: unknown, factor: number): unknown => {
	if (typeof value === "number") return value * factor;
	const [, number, rest = ""] = MEASURED.exec(String(value)) ?? [];
	if (typeof value !== "string" || number === undefined) return value;
	const [whole = "0", fraction] = number.split(" ");
	const [over, under] = (fraction ?? "0/1").split("/").map(Number);
	const figure = (Number(whole) + (over ?? 0) / (under ?? 1)) * factor;
	return `${Number(figure.toPrecision(6))}${rest}`;
};

const measured = (tree: unknown): Path[] =>
	pathsOf(tree).filter((path) => {
		const value = valueAt(tree, path);
		return typeof value === "number" || (typeof value === "string" && MEASURED.test(value));
	});

const dimensionAt = (path: Path): string | undefined => fieldAt(definitionSchema, path)?.dimension;

const isOptional = (path: Path): boolean =>
	schemasAt(definitionSchema, path).some((schema) => schema instanceof z.ZodExactOptional);

const wordsAt = (path: Path): readonly unknown[] =>
	schemasAt(definitionSchema, path)
		.flatMap(alternatives)
		.flatMap((schema): unknown[] => {
			if (schema instanceof z.ZodEnum) return [...schema.options];
			return schema instanceof z.ZodBoolean ? [true, false] : [];
		});

const listsOf = (tree: unknown): Path[] => pathsOf(tree).filter((path) => Array.isArray(valueAt(tree, path)));

/** A value as the fields' own examples have it; of a block, what it must have and, by turns, what it may. */
const exampleOf = (schema: z.core.$ZodType, turn: number, depth = 0): unknown => {
	const meta = metaOf(schema);
	const inside = alternatives(schema).map((each) => (each instanceof z.ZodPipe ? each._zod.def.in : each));
	if (meta?.example !== undefined) {
		const read = readYaml(`example: ${meta.example}\n`, "example.yaml").value?.value;
		return isNode(read) ? read["example"] : undefined;
	}
	const form = inside.find((each) => !(each instanceof z.ZodUnion || each instanceof z.ZodExactOptional));
	if (form instanceof z.ZodEnum) return pick(form.options, turn);
	if (form instanceof z.ZodLiteral) return [...form.values][0];
	if (form instanceof z.ZodBoolean) return turn % 2 === 0;
	if (form instanceof z.ZodNumber) return 1 + (turn % 9);
	if (form instanceof z.ZodString) return "2026-03-02";
	if (form instanceof z.ZodArray) return [exampleOf(form._zod.def.element, turn, depth + 1)];
	if (form instanceof z.ZodTuple) return form._zod.def.items.map((item) => exampleOf(item, turn, depth + 1));
	if (!(form instanceof z.ZodObject)) return undefined;
	const entries = Object.entries<z.core.$ZodType>(form.shape).filter(
		([, child], i) => !(child instanceof z.ZodExactOptional) || (depth < 4 && (turn + i) % 3 === 0),
	);
	return Object.fromEntries(entries.map(([name, child]) => [name, exampleOf(child, turn + 1, depth + 1)]));
};

const WORKS = {
	"another figure": (tree, { where, much }) => {
		const path = pick(measured(tree), where);
		if (path !== undefined) put(tree, path, scaled(valueAt(tree, path), pick(FACTORS, much) ?? 1));
	},
	"the figure of a like field": (tree, { where, what }) => {
		const path = pick(measured(tree), where);
		if (path === undefined) return;
		const dimension = dimensionAt(path);
		const like = measured(tree).filter((each) => dimensionAt(each) === dimension);
		put(tree, path, valueAt(tree, pick(like, what) ?? path));
	},
	"every depth of a string, moved": (tree, { where, much }) => {
		const string = pick(
			pathsOf(tree).filter((path) => path.length === 2 && path[0] === "casing"),
			where,
		);
		if (string === undefined) return;
		const factor = pick(FACTORS.slice(4, 12), much) ?? 1;
		for (const path of measured(tree).filter((each) => string.every((step, i) => step === each[i])))
			if (dimensionAt(path) === "measured-depth") put(tree, path, scaled(valueAt(tree, path), factor));
	},
	"an optional entry left out": (tree, { where }) => {
		const path = pick(pathsOf(tree).filter(isOptional), where);
		if (path !== undefined) put(tree, path, undefined);
	},
	"another word": (tree, { where, what }) => {
		const path = pick(
			pathsOf(tree).filter((each) => wordsAt(each).length > 0),
			where,
		);
		if (path !== undefined) put(tree, path, pick(wordsAt(path), what));
	},
	"an item left out": (tree, { where, what }) => {
		const list = pick(listsOf(tree), where);
		const items = list === undefined ? undefined : valueAt(tree, list);
		if (Array.isArray(items) && items.length > 1) items.splice(what % items.length, 1);
	},
	"an item again": (tree, { where, what, much }) => {
		const list = pick(listsOf(tree), where);
		const items = list === undefined ? undefined : valueAt(tree, list);
		if (!Array.isArray(items)) return;
		const copy: unknown = structuredClone(pick(items, what));
		if (isNode(copy))
			for (const name of ["id", "name"])
				if (typeof copy[name] === "string")
					copy[name] = `${copy[name]}${name === "id" ? "-" : " "}${much % 5}`;
		items.splice(what % (items.length + 1), 0, copy);
	},
	"items exchanged": (tree, { where, what, much }) => {
		const list = pick(listsOf(tree), where);
		const items = list === undefined ? undefined : valueAt(tree, list);
		if (!Array.isArray(items)) return;
		const [a, b] = [what % items.length, much % items.length];
		[items[a], items[b]] = [items[b], items[a]];
	},
	"an entry added": (tree, { where, what, much }) => {
		const blocks: Path[] = [[], ...pathsOf(tree)].filter((path) => {
			const value = path.length === 0 ? tree : valueAt(tree, path);
			return isNode(value) && !Array.isArray(value);
		});
		const block = pick(blocks, where);
		const holder = block === undefined ? undefined : block.length === 0 ? tree : valueAt(tree, block);
		if (block === undefined || !isNode(holder)) return;
		const free = keysAt(definitionSchema, block).filter((name) => !Object.hasOwn(holder, name));
		const name = pick(free, what);
		const [schema] = name === undefined ? [] : schemasAt(definitionSchema, [...block, name]);
		const value = schema === undefined ? undefined : exampleOf(schema, much);
		if (name !== undefined && value !== undefined) holder[name] = value;
	},
	"another name": (tree, { where, what }) => {
		const words = pathsOf(tree).filter((path) => {
			const value = valueAt(tree, path);
			return typeof value === "string" && /^[a-z][a-z0-9-]*$/.test(value);
		});
		const [to, from] = [pick(words, where), pick(words, what)];
		if (to !== undefined && from !== undefined) put(tree, to, valueAt(tree, from));
	},
} as const satisfies Record<string, Work>;

type Kind = keyof typeof WORKS;

export interface Reshaping extends Spot {
	readonly kind: Kind;
}

/** The definition after every change in turn, as text that keeps its quotes. */
export const reshaped = (text: string, made: readonly Reshaping[]): string => {
	const tree: unknown = structuredClone(JSON.parse(JSON.stringify(readYaml(text, "well.yaml").value?.value)));
	for (const each of made) WORKS[each.kind](tree, each);
	return JSON.stringify(tree, null, 1);
};

const anywhere = fc.nat({ max: 1_000_000 });

export const reshapings = fc.array(
	fc.record<Reshaping>({
		kind: fc.constantFrom(...(Object.keys(WORKS) as Kind[])),
		where: anywhere,
		what: anywhere,
		much: anywhere,
	}),
	{ minLength: 1, maxLength: 3 },
);
