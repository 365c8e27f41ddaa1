import { readFileSync } from "node:fs";
import { readJurisdictionText } from "../../src/catalog/limits/load-jurisdictions.ts";
import { loadCatalog } from "../../src/catalog/load-catalog.ts";
import { readShippedSeed } from "../../src/catalog/seed-file.ts";
import { validate } from "../../src/definition/validate.ts";
import type { Diagnostic } from "../../src/diagnostics/diagnostic.ts";
import { withoutEchoes } from "../../src/diagnostics/echoes.ts";
import type { Sources } from "../../src/diagnostics/locate.ts";
import { printDiagnostics } from "../../src/diagnostics/print.ts";
import { decodeText } from "../../src/source/decode-text.ts";
import { readYaml } from "../../src/source/read-yaml.ts";
import { type BrokenCase, ROOT } from "./broken-case.ts";

export interface Faults {
	readonly diagnostics: readonly Diagnostic[];
	readonly sources: Sources;
}

const sourcesOf = (text: string, file: string): Sources => {
	const { value } = readYaml(text, file);
	return new Map([[file, value === undefined ? { text } : { text: value.text, positions: value.positions }]]);
};

/** Every fault that the stages in front of the calculation find in a definition. */
export const definitionFaults = (bytes: Uint8Array, file: string): Faults => {
	const decoded = decodeText(bytes, file);
	if (decoded.value === undefined)
		return {
			diagnostics: decoded.diagnostics,
			sources: new Map([[file, { text: new TextDecoder().decode(bytes) }]]),
		};
	const read = readYaml(decoded.value, file);
	const sources = sourcesOf(decoded.value, file);
	if (read.value === undefined) return { diagnostics: read.diagnostics, sources };
	const checked = validate(read.value.value);
	return {
		diagnostics: [...read.diagnostics, ...withoutEchoes(checked.diagnostics, read.diagnostics)],
		sources,
	};
};

const planted = (text: string, file: string): Faults => {
	const readSeed = (name: string): string | undefined =>
		`seeds/${name}` === file ? text : readShippedSeed(name);
	return { diagnostics: loadCatalog(readSeed).diagnostics, sources: sourcesOf(text, file) };
};

/** What is found in a case: a definition, a rules file, or a table that ships with the tool. */
export const faultsOf = ({ code, file, bytes }: BrokenCase): Faults => {
	const text = new TextDecoder().decode(bytes);
	if (code.startsWith("seed/")) return planted(text, file);
	if (code.startsWith("rules/"))
		return { diagnostics: readJurisdictionText(text, file).diagnostics, sources: sourcesOf(text, file) };
	return definitionFaults(bytes, file);
};

export const printedFaults = ({ diagnostics, sources }: Faults): string =>
	printDiagnostics(diagnostics, sources, { color: false, width: 80 });

export const baseFaults = (): Faults =>
	definitionFaults(readFileSync(new URL("fixtures/broken/base.yaml", ROOT)), "well.yaml");
