import { definitionSchema } from "../../src/definition/definition.ts";
import { valueAt } from "../../src/definition/fault.ts";
import { fieldAt } from "../../src/definition/schema-walk.ts";
import type { Path } from "../../src/diagnostics/path.ts";
import { readYaml } from "../../src/source/read-yaml.ts";
import { fromCanonical } from "../../src/units/convert.ts";
import type { Dimension } from "../../src/units/dimensions.ts";
import { parseQuantity } from "../../src/units/parse.ts";
import { definitionOf, isUnitless, writtenAs } from "../../src/units/units-of.ts";

/*
 * A starter drawn anew as an engineer would plan another well with it: all depths moved together, every figure in a unit of
 * its own, lists shorter or longer, names longer, optional entries left out. What comes of it is meant to bind.
 */

type Random = () => number;
type Node = Record<string | number, unknown>;

const isNode = (value: unknown): value is Node => typeof value === "object" && value !== null;

const pathsOf = (node: unknown, path: Path = []): Path[] =>
	isNode(node)
		? Object.entries(node).flatMap(([key, child]) => {
				const here = [...path, Array.isArray(node) ? Number(key) : key];
				return [here, ...pathsOf(child, here)];
			})
		: [];

const holderOf = (tree: unknown, path: Path): Node | undefined => {
	const holder = path.length === 1 ? tree : valueAt(tree, path.slice(0, -1));
	return isNode(holder) ? holder : undefined;
};

const draw = <T>(random: Random, list: readonly T[]): T | undefined =>
	list[Math.floor(random() * list.length)];

/** What a depth is measured from stays behind its figure. */
const DEPTH = /^(-?[\d.]+ (?:ft|m|usft))( .+)?$/;
const DEPTHS: readonly string[] = ["measured-depth", "true-vertical-depth"];

const eachQuantity = (
	tree: unknown,
	change: (
		value: number,
		dimension: Dimension,
		unit: string,
		path: Path,
	) => readonly [value: number, unit: string],
): void => {
	for (const path of pathsOf(tree)) {
		const dimension = fieldAt(definitionSchema, path)?.dimension as Dimension | undefined;
		const text = valueAt(tree, path);
		if (dimension === undefined || typeof text !== "string") continue;
		const [, figure = text, from = ""] = DEPTH.exec(text) ?? [];
		const read = parseQuantity(figure, dimension);
		const holder = holderOf(tree, path);
		const last = path.at(-1);
		if (!read.ok || holder === undefined || last === undefined || isUnitless(dimension)) continue;
		const [value, unit] = change(read.value, dimension, read.unit, path);
		if (unit === read.unit && value === read.value) continue;
		const written = fromCanonical(value, dimension, unit);
		holder[last] =
			`${Number(written.toPrecision(9))} ${writtenAs(definitionOf(dimension).units.find(({ symbol }) => symbol === unit) ?? { symbol: unit, si: 1 })}${from}`;
	}
};

/** Half of the figures in another unit of their dimension. */
const inOtherUnits = (tree: unknown, random: Random): void =>
	eachQuantity(tree, (value, dimension, unit) => {
		const other = draw(random, definitionOf(dimension).units)?.symbol ?? unit;
		return [value, random() < 0.5 && other !== "1" ? other : unit];
	});

/** All depths of the well, and of the rock around it, by one factor. */
const deeper = (tree: unknown, factor: number): void =>
	eachQuantity(tree, (value, dimension, unit, path) => [
		DEPTHS.includes(dimension) || path.at(-1) === "lateral" ? value * factor : value,
		unit,
	]);

/** Lists whose items stand alone: one fewer, or the last once more under a longer name. */
const LISTS: readonly Path[] = [
	["site", "neighbors"],
	["site", "offset_wells"],
	["well", "contractors"],
	["well", "revisions"],
	["geology", "water"],
	["emergency", "contacts"],
	["community", "traffic"],
];

const withOtherLists = (tree: unknown, random: Random): void => {
	for (const path of LISTS) {
		const items = valueAt(tree, path);
		if (!Array.isArray(items) || items.length === 0) continue;
		const lot = random();
		if (lot < 0.3 && items.length > 1) items.pop();
		const times = lot > 0.9 ? 12 : lot > 0.6 ? 1 : 0;
		for (let n = 0; n < times; n += 1) {
			const copy: unknown = structuredClone(items.at(-1));
			if (!isNode(copy)) continue;
			if (typeof copy["id"] === "string") copy["id"] = `${copy["id"]}-${n}`;
			if (typeof copy["name"] === "string")
				copy["name"] = `${copy["name"].slice(0, 60)}, and what lies beside it`;
			items.push(copy);
		}
	}
};

/** Names of wells and places as long as people give them. */
const withLongNames = (tree: unknown, random: Random): void => {
	for (const path of pathsOf(tree)) {
		const text = valueAt(tree, path);
		const holder = holderOf(tree, path);
		const last = path.at(-1);
		if (last !== "name" || typeof text !== "string" || holder === undefined || path[0] === "casing") continue;
		if (path[0] !== "geology" && random() < 0.15)
			holder[last] = `${text} of the Greater Quillback Bench Area`;
	}
};

/** The text of a definition drawn from a starter's; the same for the same numbers. */
export const soundWell = (text: string, random: Random): string => {
	const tree: unknown = structuredClone(
		JSON.parse(JSON.stringify(readYaml(text, "well.yaml").value?.value)) as unknown,
	);
	if (random() < 0.7) deeper(tree, 0.85 + 0.3 * random());
	withOtherLists(tree, random);
	withLongNames(tree, random);
	if (random() < 0.7) inOtherUnits(tree, random);
	return JSON.stringify(tree, null, 1);
};
