import type { Checked, Diagnostic } from "../../diagnostics/diagnostic.ts";
import { message } from "../../messages/message.ts";
import { shippedRuleSet } from "../shipped.ts";
import type { Jurisdiction } from "./limit.ts";

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
export const PRACTICE_TOPICS = [
	"barriers",
	"cement",
	"isolation",
	"neighboring-wells",
	"open-hole",
	"protected-water",
	"safety",
	"records",
	"sour",
	"strings",
	"treatment",
	"well-control",
] as const;

const unknown = (code: string, index: number): Diagnostic => ({
	code: "rules/unknown-jurisdiction",
	severity: "warning",
	at: { path: ["site", "jurisdictions", index] },
	what: message("limits/jurisdiction.what", { code }),
	expected: message("source/one-of", { names: JURISDICTION_CODES.join(", ") }),
	found: code,
	mend: message("limits/jurisdiction.mend"),
});

/**
 * The limits of the jurisdictions a well names, in that order; each code once.
 *
 * Faults of a file are errors located in it; a code without a file is a warning located in the definition, and the code is
 * left out.
 */
export const loadJurisdictions = (codes: readonly string[]): Checked<readonly Jurisdiction[]> => {
	const diagnostics: Diagnostic[] = [];
	const value = [...new Set(codes)].flatMap((code): Jurisdiction[] => {
		const read = /^[a-z-]+$/.test(code) ? shippedRuleSet(`jurisdictions/${code}.yaml`) : undefined;
		if (read === undefined) {
			diagnostics.push(unknown(code, codes.indexOf(code)));
			return [];
		}
		diagnostics.push(...read.diagnostics);
		return read.value === undefined ? [] : [read.value];
	});
	return { value, diagnostics };
};

/** The limits of engineering practice, which apply to every well. */
export const loadPractice = (): Checked<readonly Jurisdiction[]> => {
	const diagnostics: Diagnostic[] = [];
	const value = PRACTICE_TOPICS.flatMap((topic): Jurisdiction[] => {
		const file = `practice/${topic}.yaml`;
		const read = shippedRuleSet(file);
		if (read === undefined) throw new TypeError(`seeds/${file} does not ship`);
		diagnostics.push(...read.diagnostics);
		return read.value === undefined ? [] : [read.value];
	});
	return { value, diagnostics };
};
