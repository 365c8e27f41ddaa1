import { createHash } from "node:crypto";
import { calculate } from "./calc/calculate.ts";
import { completeWell } from "./calc/complete-well.ts";
import type { Catalog } from "./catalog/catalog.ts";
import {
	applyDesignBasis,
	conditionFaults,
	JURISDICTION_CODES,
	type Jurisdiction,
	loadJurisdictions,
	loadPractice,
	withOwnRules,
} from "./catalog/jurisdictions.ts";
import { ruleReferenceFaults } from "./catalog/rule-references.ts";
import { indexValues } from "./cite/index-values.ts";
import { withoutStandIns } from "./definition/stand-ins.ts";
import { validate } from "./definition/validate.ts";
import { type Diagnostic, hasErrors } from "./diagnostics/diagnostic.ts";
import { withoutDoubts, withoutEchoes } from "./diagnostics/echoes.ts";
import type { SourceText } from "./diagnostics/source-text.ts";
import { hasGlyph } from "./measure/has-glyph.ts";
import type { Findings } from "./paper/context.ts";
import { dueDates, judge, missingIn } from "./rules/index.ts";
import { lackingLetter, printableTree } from "./source/characters.ts";
import { decodeText } from "./source/decode-text.ts";
import { readYaml } from "./source/read-yaml.ts";
import type { UnitSystem } from "./units/format.ts";
import { writtenSystem } from "./units/written-system.ts";
import type { ReadFile } from "./well/read-file.ts";
import { resolveWell } from "./well/resolve-well.ts";

/*
 *  The first half of the tour: from the text to what is judged. Where the second half is not wanted, it is not loaded.
 */

/** A file as it was read. */
export interface NamedFile {
	readonly name: string;
	readonly bytes: Uint8Array;
}

/** What a definition is read against. */
export interface Surroundings {
	readonly catalog: Catalog;
	readonly version: string;
	/** Gives a file that the definition names. */
	readonly readFile: ReadFile;
	/** Rules files of the user's own, judged beside the shipped ones. */
	/** Files that the catalogue was added to from. */
	readonly own?: readonly NamedFile[];
	readonly ownRules: readonly { readonly file: NamedFile; readonly jurisdiction: Jurisdiction }[];
}

/** What came of one definition. `findings` is absent where an error stands. */
export interface Understanding {
	readonly diagnostics: readonly Diagnostic[];
	/** Texts that the diagnostics point into, by file name; the definition's first. */
	readonly texts: ReadonlyMap<string, SourceText>;
	/** The unit system that the definition is written in, so that its writer is answered in it. */
	readonly units: UnitSystem;
	readonly findings?: Findings;
}

/** Reads, validates, resolves, calculates and judges one definition. */
export const understand = (
	file: NamedFile,
	{ catalog, version, readFile, own = [], ownRules }: Surroundings,
): Understanding => {
	const texts = new Map<string, SourceText>();
	const read: NamedFile[] = [file, ...ownRules.map((rules) => rules.file), ...own];
	const diagnostics: Diagnostic[] = [];

	const decoded = decodeText(file.bytes, file.name);
	diagnostics.push(...decoded.diagnostics);
	texts.set(file.name, { text: decoded.value ?? new TextDecoder().decode(file.bytes) });
	if (decoded.value === undefined) return { diagnostics, texts, units: "field" };

	const tree = readYaml(decoded.value, file.name);
	diagnostics.push(...tree.diagnostics);
	if (tree.value === undefined) return { diagnostics, texts, units: "field" };
	const units = writtenSystem(tree.value.value);
	texts.set(file.name, { text: tree.value.text, positions: tree.value.positions });

	const printable = printableTree(tree.value.value, file.name, hasGlyph);
	diagnostics.push(...printable.diagnostics);
	const definition = validate(printable.value);
	diagnostics.push(...withoutEchoes(definition.diagnostics, tree.diagnostics));
	const readable = definition.value ?? definition.partial?.definition;
	if (readable === undefined) return { diagnostics, texts, units };

	const whole = !hasErrors(diagnostics);
	const letters: Diagnostic[] = [];
	const resolved = resolveWell(readable, catalog, recording(readFile, read, texts, letters));
	const ownCodes = ownRules.map(({ jurisdiction }) => jurisdiction.code);
	const shipped = loadJurisdictions(
		readable.site.jurisdictions.filter(
			(code) => !ownCodes.includes(code) || JURISDICTION_CODES.some((each) => each === code),
		),
	);
	const practice = applyDesignBasis(loadPractice().value ?? [], readable.design_basis?.limits ?? []);
	const every = withOwnRules(
		[...(shipped.value ?? []), ...(practice.value ?? [])],
		ownRules.map(({ file: { name }, jurisdiction }) => ({ file: name, jurisdiction })),
		readable.well.issued,
	);
	const jurisdictions = every.value ?? [];
	const found = [
		...letters,
		...resolved.diagnostics,
		...conditionFaults(resolved.value?.conditions ?? []),
		...shipped.diagnostics,
		...practice.diagnostics,
		...every.diagnostics,
		...ruleReferenceFaults(
			readable.site,
			jurisdictions.flatMap(({ rules }) => rules.map(({ id }) => id)),
		),
	];
	const suspects = [...(definition.partial?.suspects ?? []), ...tree.diagnostics.map(({ at }) => at.path)];
	diagnostics.push(...(whole ? found : withoutStandIns(found, suspects)));
	if (resolved.value === undefined || hasErrors(diagnostics)) return { diagnostics, texts, units };

	const well = completeWell(resolved.value);
	diagnostics.push(...well.diagnostics);
	if (well.value === undefined || hasErrors(diagnostics)) return { diagnostics, texts, units };

	const calculated = calculate(well.value);
	diagnostics.push(...calculated.diagnostics);
	const results = calculated.value;
	if (results === undefined || hasErrors(diagnostics))
		return { diagnostics: withoutDoubts(diagnostics), texts, units };

	const judgement = judge(well.value, results, jurisdictions);
	return {
		diagnostics,
		texts,
		units,
		findings: {
			well: well.value,
			results,
			judgement,
			missing: missingIn(judgement),
			due: dueDates(well.value, jurisdictions),
			index: indexValues({ well: well.value, results, findings: judgement.findings }),
			sources: catalog.sources,
			glossary: catalog.glossary,
			jobs: catalog.jobs,
			written: printable.value,
			writtenIn: units,
			digest: digest(read),
			version,
		},
	};
};

/** Remembers every file read, for the digest and for pointing into, and the letters in it that no paper can show. */
const recording =
	(readFile: ReadFile, read: NamedFile[], texts: Map<string, SourceText>, letters: Diagnostic[]): ReadFile =>
	(name) => {
		const file = readFile(name);
		if ("bytes" in file) {
			read.push({ name, bytes: file.bytes });
			const text = new TextDecoder().decode(file.bytes);
			texts.set(file.file, { text });
			const lacking = lackingLetter(text, file.file, hasGlyph);
			if (lacking !== undefined) letters.push(lacking);
		}
		return file;
	};

const DIGEST_LENGTH = 8;

/** Over the definition and every file it draws on: names of side files count, the definition's own name does not. */
const digest = ([definition, ...beside]: readonly NamedFile[]): string => {
	const hash = createHash("sha256");
	if (definition) hash.update(definition.bytes);
	for (const file of beside.toSorted((a, b) => (a.name < b.name ? -1 : 1)))
		hash.update(`\n${file.name}\n`).update(file.bytes);
	return hash.digest("hex").slice(0, DIGEST_LENGTH);
};
