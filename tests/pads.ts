import { readFileSync } from "node:fs";
import { loadCatalog } from "../src/catalog/load-catalog.ts";
import type { Findings } from "../src/paper/context.ts";
import { type UnderstoodPad, understandPad } from "../src/understand-pad.ts";

const FOLDER = new URL("../seeds/starters/pad/", import.meta.url);

const catalog = loadCatalog().value;
if (catalog === undefined) throw new Error("the shipped catalogue does not load");

/** The shipped pad with some of its files changed, as they would lie in one folder. */
export const understandChangedPad = (
	changes: Readonly<Record<string, (text: string) => string>>,
): UnderstoodPad => {
	const readFile = (file: string) => {
		try {
			const text = readFileSync(new URL(file, FOLDER), "utf8");
			return { file, bytes: Buffer.from(changes[file]?.(text) ?? text) };
		} catch {
			return { refused: "there is no such file", code: "file/not-found" } as const;
		}
	};
	const pad = readFile("pad.yaml");
	if (!("bytes" in pad)) throw new Error("the pad starter is not there");
	const surroundings = { catalog, version: "0.0.0", ownRules: [], readFile, beside: () => readFile };
	return understandPad({ name: "pad.yaml", bytes: pad.bytes }, surroundings);
};

let starter: UnderstoodPad | undefined;

/** The shipped pad, understood once a worker. */
export const padStarter = (): UnderstoodPad => {
	starter ??= understandChangedPad({});
	return starter;
};

/** @throws Error where it has faults */
export const padFindings = (): readonly Findings[] =>
	padStarter().wells.map(({ file, understanding: { findings } }) => {
		if (findings === undefined) throw new Error(`${file} has faults`);
		return findings;
	});
