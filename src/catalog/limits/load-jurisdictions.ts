import type { Checked, Diagnostic } from "../../diagnostics/diagnostic.ts";
import { readYaml } from "../../source/read-yaml.ts";
import { type ReadSeed, readShippedSeed } from "../seed-file.ts";
import type { Jurisdiction } from "./limit.ts";
import { readJurisdiction } from "./read-jurisdiction.ts";

/** Codes of the files under `seeds/jurisdictions/`; a test holds the two equal. */
export const JURISDICTION_CODES = [
	"ca-ab",
	"us-ak",
	"us-ar",
	"us-blm",
	"us-ca",
	"us-co",
	"us-epa",
	"us-il",
	"us-mi",
	"us-mt",
	"us-nd",
	"us-nm",
	"us-nv",
	"us-oh",
	"us-ok",
	"us-pa",
	"us-tx",
	"us-wv",
	"us-wy",
] as const;

/** Topics of engineering practice: the files under `seeds/practice/`; a test holds the two equal. */
export const PRACTICE_TOPICS = ["treatment"] as const;

/** A file of limits, from its text. */
export const readJurisdictionText = (text: string, file: string): Checked<Jurisdiction> => {
	const read = readYaml(text, file);
	if (read.value === undefined) return { diagnostics: read.diagnostics };
	const found = readJurisdiction(read.value.value, file);
	return { ...found, diagnostics: [...read.diagnostics, ...found.diagnostics] };
};

const alreadyRead = new Map<string, { readonly text: string; readonly checked: Checked<Jurisdiction> }>();

/** As `readJurisdictionText`: a batch of wells reads each file once. */
const readOnce = (text: string, file: string): Checked<Jurisdiction> => {
	const known = alreadyRead.get(file);
	if (known?.text === text) return known.checked;
	const checked = readJurisdictionText(text, file);
	alreadyRead.set(file, { text, checked });
	return checked;
};

const unknown = (code: string, index: number): Diagnostic => ({
	code: "rules/unknown-jurisdiction",
	severity: "warning",
	at: { path: ["site", "jurisdictions", index] },
	what: `no limits are known for "${code}"`,
	expected: `one of: ${JURISDICTION_CODES.join(", ")}`,
	found: code,
	mend: "use the code of a jurisdiction that is known, or judge this one's rules by hand",
});

/**
 * The limits of the jurisdictions a well names, in that order; each code once.
 *
 * Faults of a file are errors located in it; a code without a file is a warning located in the definition, and the code is
 * left out.
 */
export const loadJurisdictions = (
	codes: readonly string[],
	readSeed: ReadSeed = readShippedSeed,
): Checked<readonly Jurisdiction[]> => {
	const diagnostics: Diagnostic[] = [];
	const value = [...new Set(codes)].flatMap((code): Jurisdiction[] => {
		const file = `jurisdictions/${code}.yaml`;
		const text = /^[a-z-]+$/.test(code) ? readSeed(file) : undefined;
		if (text === undefined) {
			diagnostics.push(unknown(code, codes.indexOf(code)));
			return [];
		}
		const read = readOnce(text, `seeds/${file}`);
		diagnostics.push(...read.diagnostics);
		return read.value === undefined ? [] : [read.value];
	});
	return { value, diagnostics };
};

/** What ships, for `list jurisdictions`: code, name, and how many rows stand how. */
export const listJurisdictions = (readSeed: ReadSeed = readShippedSeed): readonly Jurisdiction[] =>
	loadJurisdictions(JURISDICTION_CODES, readSeed).value ?? [];

/** The limits of engineering practice, which apply to every well. */
export const loadPractice = (readSeed: ReadSeed = readShippedSeed): Checked<readonly Jurisdiction[]> => {
	const diagnostics: Diagnostic[] = [];
	const value = PRACTICE_TOPICS.flatMap((topic): Jurisdiction[] => {
		const file = `practice/${topic}.yaml`;
		const text = readSeed(file);
		if (text === undefined) throw new TypeError(`seeds/${file} does not ship`);
		const read = readOnce(text, `seeds/${file}`);
		diagnostics.push(...read.diagnostics);
		return read.value === undefined ? [] : [read.value];
	});
	return { value, diagnostics };
};
