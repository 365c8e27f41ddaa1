import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { readJurisdictionText } from "../../src/catalog/limits/read-rule-set.ts";
import { loadCatalog } from "../../src/catalog/load-catalog.ts";
import { readShippedSeed } from "../../src/catalog/seed-file.ts";
import type { Diagnostic } from "../../src/diagnostics/diagnostic.ts";
import type { Sources } from "../../src/diagnostics/locate.ts";
import { printDiagnostics } from "../../src/diagnostics/print.ts";
import { readOwnSlides } from "../../src/paper/slides/read-own-slides.ts";
import { understand } from "../../src/pipeline.ts";
import { type FileAccess, filesBeside } from "../../src/source/locate-files.ts";
import { readYaml } from "../../src/source/read-yaml.ts";
import { type BrokenCase, FOLDER } from "./broken-case.ts";

export interface Faults {
	readonly diagnostics: readonly Diagnostic[];
	readonly sources: Sources;
}

const catalog = loadCatalog().value;

const inFolder = (path: string): string => fileURLToPath(new URL(path, FOLDER));

/** The folder of the cases, with one link in it that leads out. */
const folder: FileAccess = {
	realPath: (path) => {
		if (path === ".") return inFolder(".");
		if (path === "linked.csv") return inFolder("../linked.csv");
		return existsSync(inFolder(path)) ? inFolder(path) : undefined;
	},
	readBytes: (path) => readFileSync(path),
};

const sourcesOf = (text: string, file: string): Sources => {
	const { value } = readYaml(text, file);
	return new Map([[file, value === undefined ? { text } : { text: value.text, positions: value.positions }]]);
};

/** Every fault that is found in a definition, from reading it to judging it. */
export const definitionFaults = (bytes: Uint8Array, file: string): Faults => {
	if (catalog === undefined) throw new Error("the shipped tables cannot be read");
	const surroundings = { catalog, version: "0", readFile: filesBeside(file, folder), ownRules: [] };
	const { diagnostics, texts } = understand({ name: file, bytes }, surroundings);
	return { diagnostics, sources: texts };
};

const planted = (text: string, file: string): Faults => {
	const readSeed = (name: string): string | undefined =>
		`seeds/${name}` === file ? text : readShippedSeed(name);
	return { diagnostics: loadCatalog(readSeed).diagnostics, sources: sourcesOf(text, file) };
};

/** What is found in a case: a definition, a rules file, or a table that ships with the tool. */
export const faultsOf = ({ code, file, bytes }: BrokenCase): Faults => {
	const text = new TextDecoder().decode(bytes);
	if (file.startsWith("seeds/jurisdictions/") || (code.startsWith("rules/") && file !== "well.yaml"))
		return { diagnostics: readJurisdictionText(text, file).diagnostics, sources: sourcesOf(text, file) };
	if (code.startsWith("slides/"))
		return { diagnostics: readOwnSlides(text, file).diagnostics, sources: sourcesOf(text, file) };
	if (file.startsWith("seeds/")) return planted(text, file);
	return definitionFaults(bytes, file);
};

export const printedFaults = ({ diagnostics, sources }: Faults): string =>
	printDiagnostics(diagnostics, sources, { color: false, width: 80 });

export const baseFaults = (): Faults => definitionFaults(readFileSync(inFolder("base.yaml")), "well.yaml");
