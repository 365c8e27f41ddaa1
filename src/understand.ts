import { createHash } from "node:crypto";
import { calculate } from "./calc/calculate.ts";
import { completeWell } from "./calc/complete-well.ts";
import { trajectoryResults } from "./calc/trajectory/index.ts";
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
import { inOneLanguage } from "./definition/typed-prose.ts";
import { validate } from "./definition/validate.ts";
import { diagnose } from "./diagnostics/diagnose.ts";
import { type Diagnostic, hasErrors } from "./diagnostics/diagnostic.ts";
import { withoutDoubts, withoutEchoes } from "./diagnostics/echoes.ts";
import type { Path } from "./diagnostics/path.ts";
import type { SourceText } from "./diagnostics/source-text.ts";
import { hasGlyph } from "./measure/has-glyph.ts";
import { message } from "./messages/message.ts";
import type { Findings } from "./paper/context.ts";
import { dueDates, judge, missingIn } from "./rules/index.ts";
import { lackingLetter, printableTree } from "./source/characters.ts";
import { decodeText } from "./source/decode-text.ts";
import { foreignTable } from "./source/foreign/table-text.ts";
import { inherit } from "./source/inherit.ts";
import { type WithTables, withTables } from "./source/list-tables.ts";
import { readYaml } from "./source/read-yaml.ts";
import type { UnitSystem } from "./units/format.ts";
import { writtenSystem } from "./units/written-system.ts";
import type { ReadFile } from "./well/read-file.ts";
import { resolveWell } from "./well/resolve-well.ts";
import type { Well } from "./well/well.ts";

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

/** What a definition takes from a file that several wells share: read already, and told of by whoever read it. */
export interface Shared {
	readonly file: NamedFile;
	readonly text: SourceText;
	readonly value: unknown;
}

/** A definition as far as it can be read and resolved by itself: what is calculated may have to wait for its neighbors. */
export interface Resolved extends Omit<Understanding, "findings" | "diagnostics"> {
	readonly diagnostics: readonly Diagnostic[];
	/** Absent where an error stands. */
	readonly ready?: {
		readonly well: Well;
		readonly jurisdictions: readonly Jurisdiction[];
		readonly written: unknown;
		readonly read: readonly NamedFile[];
	};
	/** A fault with the file that it stands in. */
	readonly placed: (diagnostic: Diagnostic) => Diagnostic;
}

/** Reads, validates, resolves, calculates and judges one definition. */
export const understand = (file: NamedFile, surroundings: Surroundings): Understanding =>
	conclude(resolveDefinition(file, surroundings), surroundings);

/** Reads, validates and resolves one definition, over what it shares with others. */
export const resolveDefinition = (
	file: NamedFile,
	{ catalog, readFile, own = [], ownRules }: Surroundings,
	shared?: Shared,
): Resolved => {
	const texts = new Map<string, SourceText>();
	const read: NamedFile[] = [
		file,
		...(shared === undefined ? [] : [shared.file]),
		...ownRules.map((rules) => rules.file),
		...own,
	];
	const diagnostics: Diagnostic[] = [];
	const asRead = (units: UnitSystem, placed: Resolved["placed"], ready?: Resolved["ready"]): Resolved => ({
		diagnostics: diagnostics.map(placed),
		texts,
		units,
		placed,
		...(ready === undefined ? {} : { ready }),
	});
	const ofFile = (each: Diagnostic): Diagnostic => each;

	const decoded = decodeText(file.bytes, file.name);
	diagnostics.push(...decoded.diagnostics);
	texts.set(file.name, { text: decoded.value ?? new TextDecoder().decode(file.bytes) });
	if (decoded.value === undefined) return asRead("field", ofFile);

	const tree = readYaml(decoded.value, file.name);
	diagnostics.push(...tree.diagnostics);
	if (tree.value === undefined) return asRead("field", ofFile);
	texts.set(file.name, { text: tree.value.text, positions: tree.value.positions });
	if (shared !== undefined) texts.set(shared.file.name, shared.text);
	const { value: joined, isShared } =
		shared === undefined
			? { value: tree.value.value, isShared: () => false }
			: inherit(shared.value, tree.value.value);
	const tables = withTables(joined, (name) => {
		const found = readFile(name);
		if ("bytes" in found) read.push({ name, bytes: found.bytes });
		return found;
	});
	const whole = tables.value;
	for (const [name, text] of tables.texts) texts.set(name, text);
	diagnostics.push(...tables.diagnostics, ...tables.refused.map(noTable));
	const placed =
		shared === undefined && tables.texts.size === 0
			? ofFile
			: inFiles(
					file.name,
					(path) =>
						tables.fileOf(path) ?? (shared !== undefined && isShared(path) ? shared.file.name : file.name),
				);
	const units = writtenSystem(whole);

	const printable = printableTree(whole, file.name, hasGlyph);
	diagnostics.push(...printable.diagnostics);
	const definition = validate(inOneLanguage(printable.value));
	diagnostics.push(...withoutEchoes(beside(tables, definition.diagnostics), tree.diagnostics));
	const readable = definition.value ?? definition.partial?.definition;
	if (readable === undefined) return asRead(units, placed);

	const isWhole = !hasErrors(diagnostics);
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
	diagnostics.push(...(isWhole ? found : withoutStandIns(found, suspects)));
	if (resolved.value === undefined) return asRead(units, placed);
	if (hasErrors(diagnostics)) {
		diagnostics.push(...furtherFaults(resolved.value, diagnostics, suspects));
		return asRead(units, placed);
	}

	const well = completeWell(resolved.value);
	diagnostics.push(...well.diagnostics);
	if (well.value === undefined || hasErrors(diagnostics)) return asRead(units, placed);
	return asRead(units, placed, { well: well.value, jurisdictions, written: printable.value, read });
};

/** Calculates and judges a well that is resolved; of one that has errors only those are told. */
export const conclude = (
	{ diagnostics: before, texts, units, ready, placed }: Resolved,
	{ catalog, version }: Pick<Surroundings, "catalog" | "version">,
): Understanding => {
	if (ready === undefined) return { diagnostics: before, texts, units };
	const { well, jurisdictions, written, read } = ready;
	const calculated = calculate(well);
	const diagnostics = [...before, ...calculated.diagnostics.map(placed)];
	const results = calculated.value;
	if (results === undefined || hasErrors(diagnostics))
		return { diagnostics: withoutDoubts(diagnostics), texts, units };

	const judgement = judge(well, results, jurisdictions);
	return {
		diagnostics,
		texts,
		units,
		findings: {
			well,
			results,
			judgement,
			missing: missingIn(judgement),
			due: dueDates(well, jurisdictions),
			index: indexValues({ well, results, findings: judgement.findings }),
			sources: catalog.sources,
			glossary: catalog.glossary,
			jobs: catalog.jobs,
			written,
			writtenIn: units,
			digest: digest(read),
			version,
		},
	};
};

const noTable = ({ at, name, why }: WithTables["refused"][number]): Diagnostic =>
	diagnose(
		"file/not-found",
		{ path: at },
		{
			what: message("file/refused", { why }),
			expected: message("well/table-file.expected"),
			found: name,
			mend: message("well/table-file.mend"),
		},
	);

/** A table that cannot be had leaves a list unwritten, which is no fault of its own. */
const beside = ({ refused }: WithTables, found: readonly Diagnostic[]): readonly Diagnostic[] =>
	found.filter(
		({ at: { path } }) => !refused.some(({ at }) => at.slice(0, -1).every((step, i) => step === path[i])),
	);

/** Names the file that each fault stands in, where a path may lead into one of several. */
const inFiles = (own: string, fileOf: (path: Path) => string): ((diagnostic: Diagnostic) => Diagnostic) => {
	const place = (at: Diagnostic["at"]): Diagnostic["at"] =>
		at.range !== undefined || (at.file !== undefined && at.file !== own)
			? at
			: { ...at, file: fileOf(at.path) };
	return (diagnostic) => ({
		...diagnostic,
		at: place(diagnostic.at),
		...(diagnostic.related === undefined
			? {}
			: { related: diagnostic.related.map((each) => ({ ...each, at: place(each.at) })) }),
	});
};

/** Blocks of the definition that the path is worked from. */
const OF_THE_PATH = ["trajectory", "holes", "north"];

/** Blocks that slurries and gradients are worked from. */
const OF_THE_WORKING = ["casing", "geology"];

/** What the calculation would find fault with next, where all that it works from is without fault: told in the same run. */
const furtherFaults = (
	well: Well,
	told: readonly Diagnostic[],
	suspects: readonly Path[],
): readonly Diagnostic[] => {
	const wrong = told.filter(({ severity }) => severity === "error").map(({ at }) => at);
	if (wrong.some(({ file, path }) => file !== undefined || path.length === 0)) return [];
	const touched = new Set(
		[...wrong.map(({ path }) => path), ...suspects].map(([block, part]) =>
			String(part === "north" ? part : block),
		),
	);
	const isSound = (blocks: readonly string[]): boolean => blocks.every((block) => !touched.has(block));
	return [
		...(isSound(OF_THE_WORKING) ? completeWell(well).diagnostics : []),
		...(isSound(OF_THE_PATH) ? trajectoryResults(well).diagnostics : []),
	];
};

/** Remembers every file read, for the digest and for pointing into, and the letters in it that no paper can show. */
const recording =
	(readFile: ReadFile, read: NamedFile[], texts: Map<string, SourceText>, letters: Diagnostic[]): ReadFile =>
	(name) => {
		const file = readFile(name);
		if ("bytes" in file) {
			read.push({ name, bytes: file.bytes });
			const foreign = foreignTable(file.bytes);
			const text =
				foreign === undefined ? new TextDecoder().decode(file.bytes) : "text" in foreign ? foreign.text : "";
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

/** Of several wells taken together: over the fingerprints of all of them, in their order. */
export const digestOfWells = (digests: readonly string[]): string =>
	createHash("sha256").update(digests.join("\n")).digest("hex").slice(0, DIGEST_LENGTH);
