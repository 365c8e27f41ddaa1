import type { Known } from "../../cite/known.ts";
import type { Block, Cell, Row } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import { capital } from "../../messages/print.ts";
import { type Finding, isOpen } from "../../rules/finding.ts";
import { WORST_VERDICT_FIRST, worstFirst } from "../../rules/index.ts";
import { quantityString } from "../../units/format.ts";
import { type PaperContext, textCell } from "../context.ts";
import { citationText, type StandingLetter, standingLetter } from "../words/citation.ts";
import { unknownRules } from "./identity.ts";
import { limitInlines, marginCell, measuredInlines, tightness } from "./limit-cells.ts";
import { type Part, row, table, textColumn } from "./part.ts";
import { subjectWords } from "./review.ts";
import { because } from "./rule-checks.ts";

/** One rule with everything that it was checked on, the least room first. */
export interface Checked {
	readonly rule: string;
	readonly first: Finding;
	readonly findings: readonly Finding[];
}

export const byRule = (findings: readonly Finding[]): readonly Checked[] =>
	[...new Set(findings.map(({ cite }) => cite.rule))].flatMap((rule): readonly Checked[] => {
		const of = findings
			.filter(({ cite }) => cite.rule === rule)
			.toSorted(
				(a, b) =>
					WORST_VERDICT_FIRST.indexOf(a.verdict) - WORST_VERDICT_FIRST.indexOf(b.verdict) ||
					tightness(a) - tightness(b),
			);
		const [first] = of;
		return first === undefined ? [] : [{ rule, first, findings: of }];
	});

export const applies = ({ verdict }: Finding): boolean => verdict !== "does not apply";
const wantsPerson = ({ verdict }: Finding): boolean => isOpen(verdict) || verdict === "needs judgement";

const text = (words: string): Inline => ({ kind: "text", text: words });

/** `16 TAC § 3.13(a)(2)  P`: which text, and in a letter how far it was compared. */
export const citationCell = (context: PaperContext, { cite }: Finding): Cell => ({
	kind: "rich",
	children: [
		text(`${citationText(context, cite.citation)} `),
		{ kind: "strong", children: [text(standingLetter(cite))] },
	],
});

/** What the well has beside the limit: the number, of the tightest where several were checked; else why. */
const hereCell = (context: PaperContext, { first, findings }: Checked): Cell => {
	const subject = subjectWords(context, first);
	const several = findings.filter(applies).length;
	const measured = measuredInlines(context, first);
	const of = several > 1 ? `, ${subject.toLowerCase()}` : "";
	if (wantsPerson(first) && (first.verdict !== "cannot tell" || measured.length === 0))
		return { kind: "rich", children: because(first, context) };
	if (measured.length > 0) return { kind: "rich", children: [...measured, text(of)] };
	return several > 1
		? textCell(context.words.label("rules.all_of").replace("{n}", String(several)))
		: { kind: "none" };
};

const limitCellOf = (context: PaperContext, finding: Finding): Cell => {
	const limit = limitInlines(context, finding);
	if (limit.length === 0) return { kind: "none" };
	return {
		kind: "rich",
		children:
			finding.governing === true ? [...limit, text(` (${context.words.label("rules.governs")})`)] : limit,
	};
};

export const requirementOf = (context: PaperContext, first: Finding): string =>
	context.words.requirement(first.cite.rule, first.requirement);

const checkedRow = (context: PaperContext, checked: Checked): Row => {
	const { first } = checked;
	return row({
		citation: citationCell(context, first),
		requirement: textCell(requirementOf(context, first)),
		limit: limitCellOf(context, first),
		this_well: hereCell(context, checked),
		margin: marginCell(context, first),
	});
};

/** A limit and a value that can stand in columns; a variance has words of its own. */
const isCompared = ({ verdict, margin, variance, measured, required }: Finding): boolean =>
	verdict !== "cannot tell" &&
	margin !== undefined &&
	variance === undefined &&
	measured !== undefined &&
	required !== undefined &&
	!printAlike(measured, required);

/** Whether rounding makes one number of two: what is short by less than a digit is told by its sentence, which has more. */
const printAlike = (a: Known, b: Known): boolean =>
	quantityString(a, "field") === quantityString(b, "field") ||
	quantityString(a, "metric") === quantityString(b, "metric");

/** Of an open rule with numbers: a row for each thing that it is open on, the requirement said once. */
const comparedRows = (context: PaperContext, findings: readonly Finding[]): readonly Row[] =>
	findings.map((finding, i) =>
		row({
			citation: i === 0 ? citationCell(context, finding) : { kind: "none" },
			to_decide: textCell(i === 0 ? requirementOf(context, finding) : subjectWords(context, finding)),
			limit: limitCellOf(context, finding),
			this_well: {
				kind: "rich",
				children: [
					...measuredInlines(context, finding),
					text(findings.length > 1 && i === 0 ? `, ${subjectWords(context, finding).toLowerCase()}` : ""),
				],
			},
			margin: marginCell(context, finding),
		}),
	);

/** What a person has to decide: of law and permit the requirement, which is the question; of the rest what was found. */
const askedRows = (context: PaperContext, { first, findings }: Checked): readonly Row[] => {
	const compared = findings.filter(isCompared);
	const others = findings.filter((finding) => !isCompared(finding));
	const [other] = others;
	if (other === undefined) return comparedRows(context, compared);
	const said = new Map(
		others.map((finding) => {
			const sentence = because(finding, context);
			return [JSON.stringify(sentence), sentence] as const;
		}),
	);
	return [
		...comparedRows(context, compared),
		row({
			citation: citationCell(context, first),
			to_decide: {
				kind: "rich",
				children:
					other.verdict === "needs judgement" && other.cite.kind !== "practice" && !other.variance
						? [text(requirementOf(context, other))]
						: [...said.values()].flatMap((sentence, i) => [...(i === 0 ? [] : [text(" ")]), ...sentence]),
			},
		}),
	];
};

/** The key of the letters that stand behind the citations. */
const letterKey = (context: PaperContext, findings: readonly Finding[]): string => {
	const used = new Set(findings.map(({ cite }) => standingLetter(cite)));
	const letters: readonly StandingLetter[] = ["C", "E", "P", "D", "N"];
	return letters
		.filter((letter) => used.has(letter))
		.map((letter) => `${letter}: ${context.words.label(`standing.${letter}`)}`)
		.join("; ");
};

export const keyBlock = (context: PaperContext, findings: readonly Finding[]): Block => ({
	kind: "paragraph",
	tone: "note",
	children: [text(`${letterKey(context, findings)}.`)],
});

/**
 * The rules that apply, a row each. First what is open and what a person has to confirm, with why; then the law and the
 * permit that are met, the least room first. What is met and is of practice, or has no number to compare, is counted here
 * and stands in the appendix.
 */
export const ruleTable: Part = (context) => {
	const all = context.judgement.findings;
	const rules = byRule(worstFirst(all).filter(applies));
	const of = (verdict: Finding["verdict"]): readonly Checked[] =>
		rules.filter(({ first }) => first.verdict === verdict);
	const law = of("met").filter(({ first }) => first.cite.kind !== "practice" && first.margin !== undefined);
	const tightFirst = (some: readonly Checked[]): readonly Checked[] =>
		some.toSorted((a, b) => tightness(a.first) - tightness(b.first));
	const group = (
		head: string,
		some: readonly Finding[],
		rowsOf: (context: PaperContext, checked: Checked) => readonly Row[],
	): readonly Row[] =>
		some.length === 0
			? []
			: [
					// Checks are counted, as everywhere; a rule on several strings is several of them.
					row({ citation: textCell(`${head}: ${some.length}`) }, "group"),
					...byRule(some).flatMap((checked) => rowsOf(context, checked)),
				];
	const { label } = context.words;
	const asked = (["not met", "cannot tell", "needs judgement"] as const).flatMap((verdict) =>
		group(
			capital(label(`verdicts.${verdict}`)),
			worstFirst(all).filter((each) => each.verdict === verdict),
			askedRows,
		),
	);
	const met = tightFirst(law).map((checked) => checkedRow(context, checked));
	return [
		...unknownRules(context),
		...(all.length === 0 ? [] : [keyBlock(context, all)]),
		...table(
			context,
			"rules_to_decide",
			[
				textColumn(context, "citation", { width: 1.5, rowHead: true }),
				textColumn(context, "to_decide", { width: 4.5 }),
				textColumn(context, "limit", { width: 1, label: "limit_here" }),
				textColumn(context, "this_well", { width: 1.2 }),
				textColumn(context, "margin", { width: 0.8 }),
			],
			asked,
			{ dense: true },
		),
		...table(
			context,
			"rules_met",
			[
				textColumn(context, "citation", { width: 1.5, rowHead: true }),
				textColumn(context, "requirement", { width: 4.5 }),
				textColumn(context, "limit", { width: 1, label: "limit_here" }),
				textColumn(context, "this_well", { width: 1.2 }),
				textColumn(context, "margin", { width: 0.8 }),
			],
			met,
			{ dense: true },
		),
	];
};
