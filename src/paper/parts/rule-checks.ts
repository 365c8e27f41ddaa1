import type { Inline } from "../../document/inline.ts";
import type { Finding } from "../../rules/finding.ts";
import { type PaperContext, textCell } from "../context.ts";
import { type Part, row, table, textColumn, verdictColumn } from "./part.ts";

/** Every check of every limit, in groups by jurisdiction: requirement, value here, verdict, and how the text is known. */
export const ruleChecks: Part = (context) => {
	const { findings: all } = context.judgement;
	const names = [...new Set(all.map((finding) => finding.cite.jurisdictionName))];
	return names.flatMap((name) =>
		table(
			context,
			"rule_checks",
			[
				textColumn(context, "citation", { width: 1.7, rowHead: true }),
				textColumn(context, "requirement", { width: 2.8 }),
				textColumn(context, "because", { width: 3.4 }),
				verdictColumn(context, "verdict", 1.15),
			],
			all
				.filter((finding) => finding.cite.jurisdictionName === name)
				.map((finding) =>
					row({
						citation: textCell(`${finding.cite.citation}, ${finding.subject}`),
						requirement: textCell(`${finding.requirement} [${standing(finding, context)}]`),
						because: { kind: "rich", children: because(finding, context) },
						verdict: { kind: "verdict", verdict: finding.verdict },
						standing: textCell(standing(finding, context)),
					}),
				),
			{ dense: true, suffix: name },
		),
	);
};

const because = (finding: Finding, context: PaperContext): Inline[] => {
	const words: Inline[] = [{ kind: "text", text: finding.because }];
	const missing = finding.missing ?? [];
	if (missing.length > 0)
		words.push({
			kind: "text",
			text: ` ${context.words.label("phrases.missing")}: ${missing.map((m) => m.what).join("; ")}.`,
		});
	if (finding.variance)
		words.push({
			kind: "text",
			text: ` ${context.words.label("phrases.variance")}: ${finding.variance.granted} (${finding.variance.cite}).`,
		});
	return words;
};

const standing = (finding: Finding, context: PaperContext): string =>
	finding.cite.standing === "compared"
		? `${context.words.label("phrases.text_of")} ${finding.cite.textAsOf}`
		: `${context.words.label("phrases.not_compared")} (${finding.cite.howKnown})`;

/** The checks that stand in the way, for the first page. */
export const openChecks: Part = (context) => {
	const open = context.judgement.findings.filter(
		(f) => f.verdict === "not met" || f.verdict === "cannot tell",
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
				citation: textCell(finding.cite.citation),
				subject: textCell(finding.subject),
				because: { kind: "rich", children: because(finding, context) },
				verdict: { kind: "verdict", verdict: finding.verdict },
			}),
		),
	);
};
