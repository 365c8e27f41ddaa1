import type { Jurisdiction, Limit, Rule } from "../catalog/limits/limit.ts";
import { type Message, message } from "../messages/message.ts";
import { type Reader, tellPhrase, tellSaid } from "../messages/print.ts";
import type { Findings } from "../paper/context.ts";
import { loadWords } from "../paper/words/words.ts";
import type { Finding } from "../rules/finding.ts";
import { numbersOf } from "../rules/limit-in-words.ts";
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

const cells = (name: string, each: Count, reader: Reader): readonly string[] => [
	name,
	`${each.rows}`,
	`${each.compared}`,
	share(each.compared, each.rows),
	`${each.draft}`,
	`${each.differing}`,
	`${each.rows - each.compared - each.draft}`,
	tellPhrase(message("list/of", { some: each.arithmeticCompared, all: each.arithmetic }), reader),
	share(each.arithmeticCompared, each.arithmetic),
];

const HEADS: readonly Message[] = [
	message("list/set"),
	message("list/limits"),
	message("list/compared"),
	message("list/share"),
	message("list/draft"),
	message("list/mended"),
	message("list/not-compared"),
	message("list/numbers-compared"),
	message("list/share"),
];

/** Set by set: how many limits, and how many of them were laid beside a text; a draft is counted apart. */
export const limitsTable = (
	sets: readonly Jurisdiction[],
	reader: Reader,
): readonly (readonly string[])[] => [
	HEADS.map((head) => tellPhrase(head, reader)),
	...sets.map(({ code, rules }) => cells(code, count(rules), reader)),
	cells(tellPhrase(message("list/all"), reader), count(sets.flatMap(({ rules }) => rules)), reader),
];

const BLANK = "____________________";

/** The sheet a person fills while laying the limits that apply to a well beside the official text. */
export const comparisonSheet = ({ well, judgement }: Findings, reader: Reader): readonly string[] => {
	const rows = [
		...new Map(
			judgement.findings
				.filter(({ cite }) => cite.kind !== "practice" && cite.kind !== "permit")
				.map((finding) => [finding.cite.rule, finding]),
		).values(),
	];
	const compared = rows.filter(({ cite }) => cite.comparedBy !== undefined).length;
	return [
		tellPhrase(message("list/sheet-title", { well: well.identity.name }), reader),
		tellPhrase(message("list/sheet-count", { count: rows.length, compared }), reader),
		...rows.flatMap((finding) => [
			"",
			`${finding.cite.rule}   ${tellSaid(finding.cite.citation, reader)}`,
			...toCompare(finding, reader).map((line) => tellPhrase(line, reader)),
		]),
		"",
		tellPhrase(message("list/sheet-end"), reader),
	];
};

/** Of one limit: what our rules file has, and the lines that a person fills. */
const toCompare = ({ cite, requirement, limit, reason }: Finding, reader: Reader): readonly Message[] => [
	message("list/sheet-words", {
		requirement: loadWords(reader.language).requirement(cite.rule, requirement),
	}),
	numberLine(limit),
	message("list/sheet-well", { reason: say(reason, reader) }),
	message("list/sheet-standing", { standing: standingOf(cite) }),
	...(cite.forms === undefined ? [] : [message("list/sheet-forms", { forms: cite.forms.join("; ") })]),
	...(cite.comparedBy === undefined
		? [message("list/sheet-agrees", { blank: BLANK }), message("list/sheet-by", { blank: BLANK })]
		: [message("list/sheet-compared", cite.comparedBy)]),
];

/** The numbers of our row as it writes them; a limit of words alone has none. */
const numberLine = (limit: Limit): Message => {
	const numbers = numbersOf(limit);
	return numbers.length === 0
		? message("list/sheet-no-number")
		: message("list/sheet-number", {
				numbers: { parts: numbers.flatMap((each, i) => (i === 0 ? [each] : ["; ", each])) },
			});
};

const standingOf = ({ standing, publicCopy }: Finding["cite"]) =>
	publicCopy === undefined
		? { declared: standing }
		: message("list/sheet-copy", {
				...publicCopy,
				standing: { declared: standing },
				kind: { declared: publicCopy.kind },
			});
