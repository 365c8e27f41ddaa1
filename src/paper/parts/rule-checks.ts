import type { Inline } from "../../document/inline.ts";
import type { Said } from "../../messages/message.ts";
import { capital, tellSaid } from "../../messages/print.ts";
import { type Finding, isOpen } from "../../rules/finding.ts";
import { worstFirst } from "../../rules/index.ts";
import { sayParts } from "../../rules/reason.ts";
import { type PaperContext, readerOf, saidCell, textCell, toldInlines } from "../context.ts";
import { standingWords } from "../words/not-compared.ts";
import { unknownRules } from "./identity.ts";
import { type Part, row, table, textColumn, verdictColumn } from "./part.ts";

/** What a finding was made on: a string as the paper's language names it. */
export const subjectText = (subject: Said, context: PaperContext): string =>
	typeof subject === "string" && context.words.language !== "en"
		? (context.words.findLabel(`names.${subject}`) ?? subject)
		: tellSaid(subject, readerOf(context));

/** Every check of every limit, in groups by jurisdiction: requirement, value here, verdict, and how the text is known. */
export const ruleChecks: Part = (context) => {
	const { findings: all } = context.judgement;
	const nameOf = ({ cite }: Finding) => capital(tellSaid(cite.jurisdictionName, readerOf(context)));
	const names = [...new Set(all.map((finding) => nameOf(finding)))];
	const tables = names.flatMap((name) =>
		table(
			context,
			"rule_checks",
			[
				textColumn(context, "citation", { width: 1.4, rowHead: true }),
				textColumn(context, "requirement", { width: 2.9 }),
				textColumn(context, "because", { width: 3, label: "here_and_how" }),
				verdictColumn(context, "verdict", 1.05),
				textColumn(context, "standing", { width: 2 }),
			],
			all
				.filter((finding) => nameOf(finding) === name)
				.map((finding) =>
					row({
						citation: textCell(
							`${tellSaid(finding.cite.citation, readerOf(context))}, ${subjectText(finding.subject, context)}`,
						),
						requirement: textCell(context.words.requirement(finding.cite.rule, finding.requirement)),
						because: { kind: "rich", children: because(finding, context) },
						verdict: { kind: "verdict", verdict: finding.verdict },
						standing: textCell(standing(finding, context)),
					}),
				),
			{ dense: true, suffix: name },
		),
	);
	return [...unknownRules(context), ...tables];
};

/** The sentence of a finding in the units of the paper, each value with its key; what is missing; a variance. */
export const because = (finding: Finding, context: PaperContext): Inline[] => {
	const words = toldInlines(context, sayParts(finding.reason, readerOf(context)));
	const missing = finding.missing ?? [];
	if (missing.length > 0)
		words.push({
			kind: "text",
			text: ` ${context.words.label("phrases.missing")}: ${missing.map((m) => tellSaid(m.what, readerOf(context))).join("; ")}.`,
		});
	if (finding.variance)
		words.push({
			kind: "text",
			text: ` ${context.words.label("phrases.variance")}: ${finding.variance.granted} (${finding.variance.cite}).`,
		});
	return words;
};

/** Which text, how it was known, and from when it is in force. */
const standing = ({ cite }: Finding, context: PaperContext): string => {
	const label = context.words.label;
	const text = standingWords(cite, context.words);
	const date = (iso: string) => (iso === "unknown" ? label("phrases.unknown_date") : iso);
	return `${text}; ${label("phrases.in_force_from")} ${date(cite.inForceFrom)}`;
};

/** What is open, of law and practice, the worst first: for the first page. */
export const openChecks: Part = (context) => {
	const open = worstFirst(context.judgement.findings).filter(
		({ verdict, cite }) => isOpen(verdict) || (verdict === "needs judgement" && cite.kind === "practice"),
	);
	return table(
		context,
		"open_checks",
		[
			textColumn(context, "citation", { width: 1.5, rowHead: true }),
			textColumn(context, "subject", { width: 1.1 }),
			textColumn(context, "because", { width: 4 }),
			verdictColumn(context, "verdict", 1.2),
		],
		open.map((finding) =>
			row({
				citation: saidCell(context, finding.cite.citation),
				subject: textCell(subjectText(finding.subject, context)),
				because: { kind: "rich", children: because(finding, context) },
				verdict: { kind: "verdict", verdict: finding.verdict },
			}),
		),
	);
};

/** The requirements that no arithmetic can check: a person decides, or a document shows. */
export const judgementChecks: Part = (context) =>
	table(
		context,
		"judgement_checks",
		[
			textColumn(context, "citation", { width: 1.5, rowHead: true }),
			textColumn(context, "subject", { width: 1.1 }),
			textColumn(context, "requirement", { width: 4 }),
		],
		context.judgement.findings
			.filter(({ verdict }) => verdict === "needs judgement")
			.map((finding) =>
				row({
					citation: saidCell(context, finding.cite.citation),
					subject: textCell(subjectText(finding.subject, context)),
					requirement: textCell(context.words.requirement(finding.cite.rule, finding.requirement)),
				}),
			),
		{ dense: true },
	);
