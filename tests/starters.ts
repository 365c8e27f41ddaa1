import { readFileSync } from "node:fs";
import { loadCatalog } from "../src/catalog/load-catalog.ts";
import type { Findings } from "../src/paper/context.ts";
import { type Understanding, understand } from "../src/pipeline.ts";
import { told } from "./told.ts";

export const STARTERS = ["horizontal", "horizontal-as-built", "vertical-metric"] as const;
export type Starter = (typeof STARTERS)[number];

const FOLDER = new URL("../seeds/starters/", import.meta.url);

const catalog = loadCatalog().value;
if (catalog === undefined) throw new Error("the shipped catalogue does not load");

const cache = new Map<string, Understanding>();

/** A starter, or a changed one, taken through the pipeline. */
export const understandText = (text: string, name = "well.yaml", folder = FOLDER): Understanding =>
	understand(
		{ name, bytes: Buffer.from(text) },
		{
			catalog,
			version: "0.0.0",
			ownRules: [],
			readFile: (file) => {
				try {
					return { file, bytes: readFileSync(new URL(file, folder)) };
				} catch {
					return { refused: "there is no such file", code: "file/not-found" };
				}
			},
		},
	);

export const starterText = (starter: Starter): string =>
	readFileSync(new URL(`${starter}.yaml`, FOLDER), "utf8");

export const understandStarter = (starter: Starter): Understanding => {
	const known = cache.get(starter) ?? understandText(starterText(starter), `${starter}.yaml`);
	cache.set(starter, known);
	return known;
};

/** @throws Error if the starter has faults */
export const findingsOf = (starter: Starter): Findings => {
	const { findings, diagnostics } = understandStarter(starter);
	if (findings === undefined)
		throw new Error(diagnostics.map((d) => `${d.code}: ${told(d.what)}`).join("\n"));
	return findings;
};
