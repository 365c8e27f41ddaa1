import type { Catalog } from "../catalog/catalog.ts";
import { loadPractice, readJurisdictionText } from "../catalog/jurisdictions.ts";
import { shippedCatalog } from "../catalog/shipped.ts";
import { type Diagnostic, hasErrors } from "../diagnostics/diagnostic.ts";
import { printDiagnostics } from "../diagnostics/print.ts";
import type { SourceText } from "../diagnostics/source-text.ts";
import { hasGlyph } from "../measure/has-glyph.ts";
import type { OwnSlidesFile } from "../paper/slides/own-slides.ts";
import { printableTree } from "../source/characters.ts";
import { decodeText } from "../source/decode-text.ts";
import { readYaml } from "../source/read-yaml.ts";
import type { NamedFile, Surroundings } from "../understand.ts";
import { nameOf, readBytes } from "./read-bytes.ts";
import { SeedFault } from "./seed-fault.ts";
import { terminal } from "./terminal.ts";
import { VERSION } from "./version.ts";

/** What ships with the tool, read and found good. */
export interface ShippedData {
	readonly catalog: Catalog;
	readonly version: string;
	/** Files of the user's that became part of it; the fingerprint of a well is made over them too. */
	readonly own?: readonly NamedFile[];
	/** The presenter's own slides, with the texts that faults of them point into. */
	readonly ownSlides?: {
		readonly files: readonly OwnSlidesFile[];
		readonly texts: ReadonlyMap<string, SourceText>;
	};
}

export const refuse = (
	diagnostics: readonly Diagnostic[],
	texts: ReadonlyMap<string, SourceText> = new Map(),
): never => {
	throw new SeedFault(
		printDiagnostics(diagnostics, texts, { color: terminal.color, width: terminal.width }).trimEnd(),
		diagnostics,
		texts,
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
		const shown = nameOf(name);
		const bytes = readBytes(name);
		const text = decodeText(bytes, shown);
		if (text.value === undefined) return refuse(text.diagnostics);
		const written = readYaml(text.value, shown).value?.value;
		const other = notRules(written);
		if (other !== undefined) throw new SeedFault(`casebound: ${shown} is not a rules file: ${other}`);
		const read = readJurisdictionText(text.value, shown);
		const letters = printableTree(written, shown, hasGlyph).diagnostics;
		const faults = [...read.diagnostics, ...letters];
		if (read.value === undefined || hasErrors(faults)) return refuse(faults, textsOf(text.value, shown));
		return { file: { name: shown, bytes }, jurisdiction: read.value };
	});

/** What a file is instead, if it is plainly no rules file: a hundred faults of form would not say so. */
const notRules = (written: unknown): string | undefined => {
	if (written === undefined) return undefined;
	if (typeof written !== "object" || written === null || Array.isArray(written))
		return "it holds no entries with names, such as `rules:`; the files under seeds/jurisdictions show the form";
	if ("definition" in written && !("rules" in written))
		return "it is the definition of a well; give it without --rules";
	if (!("rules" in written))
		return "it has no entry `rules:`; the files under seeds/jurisdictions show the form";
	return undefined;
};

export const textsOf = (text: string, name: string): ReadonlyMap<string, SourceText> => {
	const tree = readYaml(text, name).value;
	return new Map([[name, tree === undefined ? { text } : { text: tree.text, positions: tree.positions }]]);
};
