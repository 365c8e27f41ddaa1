import type { Jurisdiction, Limit, Rule } from "../catalog/limits/limit.ts";
import { ENGLISH_READER, tellSaid } from "../messages/print.ts";
import type { Findings } from "../paper/context.ts";
import { say } from "../rules/reason.ts";

/** A limit that arithmetic decides, so that a number of it can be laid beside a text. */
const isArithmetic = (limit: Limit): boolean => {
	switch (limit.form) {
		case "all of":
		case "any of":
			return limit.parts.some(isArithmetic);
		case "if":
			return isArithmetic(limit.limit);
		default:
			return ["threshold", "deadline", "evidence within", "samples within", "pattern"].includes(limit.form);
	}
};

const share = (n: number, of: number): string => (of === 0 ? "–" : `${Math.round((100 * n) / of)} %`);

interface Count {
	readonly rows: number;
	readonly compared: number;
	readonly draft: number;
	readonly differing: number;
	readonly arithmetic: number;
	readonly arithmeticCompared: number;
}

const isCompared = ({ standing, publicCopy }: Rule): boolean =>
	standing === "compared" || (publicCopy !== undefined && publicCopy.kind !== "draft");

const count = (rules: readonly Rule[]): Count => {
	const arithmetic = rules.filter(({ limit }) => isArithmetic(limit));
	return {
		rows: rules.length,
		compared: rules.filter(isCompared).length,
		draft: rules.filter(({ publicCopy }) => publicCopy?.kind === "draft").length,
		differing: rules.filter(({ publicCopy }) => publicCopy?.differed !== undefined).length,
		arithmetic: arithmetic.length,
		arithmeticCompared: arithmetic.filter(isCompared).length,
	};
};

const cells = (name: string, each: Count): readonly string[] => [
	name,
	`${each.rows}`,
	`${each.compared}`,
	share(each.compared, each.rows),
	`${each.draft}`,
	`${each.differing}`,
	`${each.rows - each.compared - each.draft}`,
	`${each.arithmeticCompared} of ${each.arithmetic}`,
	share(each.arithmeticCompared, each.arithmetic),
];

/** Set by set: how many limits, and how many of them were laid beside a text; a draft is counted apart. */
export const limitsTable = (sets: readonly Jurisdiction[]): readonly (readonly string[])[] => [
	[
		"set",
		"limits",
		"compared",
		"share",
		"draft",
		"mended",
		"not compared",
		"with numbers, compared",
		"share",
	],
	...sets.map(({ code, rules }) => cells(code, count(rules))),
	cells("all", count(sets.flatMap(({ rules }) => rules))),
];

const BLANK = "____________________";

/** The sheet a person fills while laying the limits that apply to a well beside the official text. */
export const comparisonSheet = ({ well, judgement }: Findings): readonly string[] => {
	const rows = [
		...new Map(
			judgement.findings
				.filter(({ cite }) => cite.kind !== "practice" && cite.kind !== "permit")
				.map((finding) => [finding.cite.rule, finding]),
		).values(),
	];
	return [
		`Limits that apply to ${well.identity.name}, to be laid beside the text in force`,
		`${rows.length} limits; ${rows.filter(({ cite }) => cite.comparedBy !== undefined).length} compared by a person named in the definition`,
		...rows.flatMap(({ cite, requirement, reason }) => [
			"",
			`${cite.rule}   ${tellSaid(cite.citation, ENGLISH_READER)}`,
			`  our words   ${tellSaid(requirement, ENGLISH_READER)}`,
			`  our number  ${say(reason)}`,
			`  standing    ${cite.standing}${cite.publicCopy === undefined ? "" : `: ${cite.publicCopy.at} (${cite.publicCopy.kind}, ${cite.publicCopy.dated}); read: ${cite.publicCopy.read}`}`,
			...(cite.forms === undefined ? [] : [`  forms       ${cite.forms.join("; ")}`]),
			...(cite.comparedBy === undefined
				? [
						`  number in the text ${BLANK}  agrees ____  differs ____`,
						`  by ${BLANK}  license ${BLANK}  on ____-__-__  against ${BLANK}  dated ____-__-__`,
					]
				: [
						`  compared    by ${cite.comparedBy.by} on ${cite.comparedBy.on} against ${cite.comparedBy.against} of ${cite.comparedBy.dated}`,
					]),
		]),
		"",
		"Write what agrees under site › compared: { rule, by, license, on, against, dated }; mend what differs in a rules file of your own (replaces: <id>).",
	];
};
