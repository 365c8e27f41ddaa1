import { readFileSync } from "node:fs";
import type { Path } from "../../src/diagnostics/path.ts";
import { readYaml } from "../../src/source/read-yaml.ts";

export const STARTERS = ["horizontal", "horizontal-as-built", "vertical-metric"] as const;
export type Starter = (typeof STARTERS)[number];

const FOLDER = new URL("../../seeds/starters/", import.meta.url);

export const sideFile = (name: string): string => readFileSync(new URL(name, FOLDER), "utf8");

/** A starter as the tool reads it: a tree that nothing has checked yet. */
export const starterTree = (starter: Starter): unknown => {
	const read = readYaml(sideFile(`${starter}.yaml`), `${starter}.yaml`);
	if (read.value === undefined || read.diagnostics.length > 0) throw new Error(`${starter} does not read`);
	return read.value.value;
};

type Branch = Record<string | number, unknown>;

/** A copy of a tree with another value at a path; `undefined` takes the entry out. */
export const changed = (tree: unknown, path: Path, value: unknown): unknown => {
	const copy: unknown = structuredClone(tree);
	const last = path.at(-1);
	if (last === undefined) return value;
	let block = copy as Branch;
	for (const step of path.slice(0, -1)) block = block[step] as Branch;
	if (value !== undefined) block[last] = value;
	else if (Array.isArray(block)) block.splice(Number(last), 1);
	else delete block[last];
	return copy;
};
