import * as z from "zod";
import { nearestName } from "../diagnostics/nearest-name.ts";
import { type Path, pathKey } from "../diagnostics/path.ts";
import { type Definition, definitionSchema } from "./definition.ts";
import { isBlock, valueAt } from "./fault.ts";
import { locate } from "./locate.ts";
import { alternatives, keysAt, schemasAt } from "./schema-walk.ts";
import { STAND_IN, STAND_IN_DATE, STAND_IN_NAME } from "./stand-ins.ts";

type Tree = Record<string | number, unknown>;
type Schema = z.core.$ZodType;

/** What could be read of a definition with faults, and where stand-ins stand in it. */
export interface Partial {
	readonly definition: Definition;
	readonly suspects: readonly Path[];
}

/** Beyond so many faults of form there is too little left to compare. */
const MOST_MENDED = 200;
const MOST_PASSES = 12;

/**
 * Reads what can be read of a tree that is no definition as it stands: names that are misspelled are taken as meant,
 * strange ones left out, and where a value cannot be read something stands in for it, or the optional block around it is
 * left out. List items keep their places. Nothing where that does not come to a definition.
 */
export const readPartly = (tree: unknown): Partial | undefined => {
	const mended = copied(tree);
	const suspects = new Map<string, Path>();
	const tries = new Map<string, number>();
	for (let pass = 0; pass < MOST_PASSES; pass += 1) {
		const parsed = definitionSchema.safeParse(mended);
		if (parsed.success) return { definition: locate(parsed.data, mended), suspects: [...suspects.values()] };
		for (const issue of parsed.error.issues) {
			const at = issue.path.map((step) => (typeof step === "symbol" ? String(step) : step));
			const places = issue.code === "unrecognized_keys" ? issue.keys.map((key) => [...at, key]) : [at];
			for (const place of places) suspects.set(pathKey(place), place);
			if (suspects.size > MOST_MENDED) return undefined;
			if (issue.code === "unrecognized_keys") for (const key of issue.keys) takeAsMeant(mended, at, key);
			else {
				const tried = tries.get(pathKey(at)) ?? 0;
				tries.set(pathKey(at), tried + 1);
				if (!standIn(mended, at, tried)) return undefined;
			}
		}
	}
	return undefined;
};

/** A copy to mend; where a node holds itself there is nothing. */
const copied = (node: unknown, around: readonly unknown[] = []): unknown => {
	if (around.includes(node)) return null;
	if (Array.isArray(node)) return node.map((item) => copied(item, [...around, node]));
	if (!isBlock(node)) return node;
	const copy: Tree = Object.create(null);
	for (const [key, child] of Object.entries(node)) copy[key] = copied(child, [...around, node]);
	return copy;
};

const holderOf = (tree: unknown, path: Path): Tree | undefined => {
	const holder = valueAt(tree, path.slice(0, -1));
	return typeof holder === "object" && holder !== null ? (holder as Tree) : undefined;
};

const takeAsMeant = (tree: unknown, block: Path, key: string): void => {
	const holder = holderOf(tree, [...block, key]);
	if (holder === undefined) return;
	const free = keysAt(definitionSchema, block).filter((name) => !Object.hasOwn(holder, name));
	const meant = nearestName(key, free);
	if (meant !== undefined) holder[meant] = holder[key];
	delete holder[key];
};

/** Puts something in place of a value, each time something else; false where nothing is left to try. */
const standIn = (tree: unknown, path: Path, tried: number): boolean => {
	const holder = holderOf(tree, path);
	const last = path.at(-1);
	if (holder === undefined || last === undefined) return false;
	const candidate = candidatesFor(path)[tried];
	if (candidate !== undefined) {
		holder[last] = candidate.value;
		return true;
	}
	const dispensable = optionalAround(path);
	const around = dispensable && holderOf(tree, dispensable);
	const name = dispensable?.at(-1);
	if (around === undefined || name === undefined) return false;
	delete around[name];
	return true;
};

interface Candidate {
	readonly value: unknown;
}

/** What may stand at a path: a stand-in of the right kind, or of a closed list its first word. */
const candidatesFor = (path: Path): readonly Candidate[] => {
	const kinds = schemasAt(definitionSchema, path)
		.flatMap(alternatives)
		.map((each) => (each instanceof z.ZodPipe ? each._zod.def.in : each));
	const has = (kind: (schema: Schema) => boolean): boolean => kinds.some(kind);
	const [word] = kinds.flatMap((each) =>
		each instanceof z.ZodEnum ? each.options : each instanceof z.ZodLiteral ? [...each.values] : [],
	);
	return [
		...(has((each) => each instanceof z.ZodString) ? [{ value: STAND_IN }, { value: STAND_IN_NAME }] : []),
		...(has((each) => each instanceof z.ZodISODate) ? [{ value: STAND_IN_DATE }] : []),
		...(word === undefined ? [] : [{ value: word }]),
		...(has((each) => each instanceof z.ZodObject) ? [{ value: Object.create(null) }] : []),
	];
};

/** The nearest optional entry at or above a path that is no item of a list. */
const optionalAround = (path: Path): Path | undefined => {
	for (let length = path.length; length > 0; length -= 1) {
		const here = path.slice(0, length);
		if (typeof here.at(-1) === "number") continue;
		const optional = schemasAt(definitionSchema, here).some((each) => each instanceof z.ZodExactOptional);
		if (optional) return here;
	}
	return undefined;
};
