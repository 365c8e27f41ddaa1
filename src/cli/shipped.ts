import type { Catalog } from "../catalog/catalog.ts";
import { loadPractice, readJurisdictionText } from "../catalog/jurisdictions.ts";
import { shippedCatalog } from "../catalog/shipped.ts";
import { type Diagnostic, hasErrors } from "../diagnostics/diagnostic.ts";
import { printDiagnostics } from "../diagnostics/print.ts";
import type { SourceText } from "../diagnostics/source-text.ts";
import { decodeText } from "../source/decode-text.ts";
import { readYaml } from "../source/read-yaml.ts";
import type { Surroundings } from "../understand.ts";
import { readBytes } from "./read-bytes.ts";
import { SeedFault } from "./seed-fault.ts";
import { terminal } from "./terminal.ts";
import { VERSION } from "./version.ts";

/** What ships with the tool, read and found good. */
export interface ShippedData {
	readonly catalog: Catalog;
	readonly version: string;
}

const refuse = (
	diagnostics: readonly Diagnostic[],
	texts: ReadonlyMap<string, SourceText> = new Map(),
): never => {
	throw new SeedFault(
		printDiagnostics(diagnostics, texts, { color: terminal.color, width: terminal.width }).trimEnd(),
	);
};

/** @throws SeedFault */
export const openShipped = (): ShippedData => {
	const catalog = shippedCatalog();
	const faults = [...catalog.diagnostics, ...loadPractice().diagnostics];
	if (catalog.value === undefined || hasErrors(faults)) return refuse(faults);
	return { catalog: catalog.value, version: VERSION };
};

/**
 * Rules files of the user's own, in the form of the shipped ones.
 *
 * @throws SeedFault, FileFault
 */
export const readRulesFiles = (names: readonly string[]): Surroundings["ownRules"] =>
	names.map((name) => {
		const bytes = readBytes(name);
		const text = decodeText(bytes, name);
		if (text.value === undefined) return refuse(text.diagnostics);
		const read = readJurisdictionText(text.value, name);
		if (read.value === undefined || hasErrors(read.diagnostics))
			return refuse(read.diagnostics, textsOf(text.value, name));
		return { file: { name, bytes }, jurisdiction: read.value };
	});

const textsOf = (text: string, name: string): ReadonlyMap<string, SourceText> => {
	const tree = readYaml(text, name).value;
	return new Map([[name, tree === undefined ? { text } : { text: tree.text, positions: tree.positions }]]);
};
