import type { Inline } from "../../document/inline.ts";
import type { Said } from "../../messages/message.ts";
import { tellSaid } from "../../messages/print.ts";
import { type Finding, isOpen } from "../../rules/finding.ts";
import { worstFirst } from "../../rules/index.ts";
import { sayParts } from "../../rules/reason.ts";
import { type PaperContext, readerOf, toldInlines } from "../context.ts";
import { citationText } from "../words/citation.ts";
import { unknownRules } from "./identity.ts";
import { type Part, row, table, textColumn, verdictColumn } from "./part.ts";

/** What a finding was made on: a string as the paper's language names it. */
export const subjectText = (subject: Said, context: PaperContext): string =>
	typeof subject === "string" && context.words.language !== "en"
		? (context.words.findLabel(`names.${subject}`) ?? subject)
		: tellSaid(subject, readerOf(context));

/** The sentence of a finding in the units of the paper, each value with its key; what is missing and not yet said; a variance. */
export const because = (finding: Finding, context: PaperContext): Inline[] => {
	const words = toldInlines(context, sayParts(finding.reason, readerOf(context)));
	const said = words
		.map((each) => (each.kind === "text" ? each.text : " "))
		.join("")
		.toLowerCase();
	const missing = (finding.missing ?? [])
		.map(({ what }) => tellSaid(what, readerOf(context)))
		.filter((what) => !said.includes(what.toLowerCase()));
	if (missing.length > 0)
		words.push({ kind: "text", text: ` ${context.words.label("phrases.missing")}: ${missing.join("; ")}.` });
	if (finding.variance)
		words.push({
			kind: "text",
			text: ` ${context.words.label("phrases.variance")}: ${finding.variance.granted} (${finding.variance.cite}).`,
		});
	return words;
};

/** What is open, of law and practice, the worst first: for the first page. */
export const openChecks: Part = (context) => {
	const open = worstFirst(context.judgement.findings).filter(
		({ verdict, cite }) => isOpen(verdict) || (verdict === "needs judgement" && cite.kind === "practice"),
	);
	const points = table(
		context,
		"open_checks",
		[verdictColumn(context, "verdict", 1), textColumn(context, "because", { width: 5 })],
		open.map((finding) =>
			row({
				verdict: { kind: "verdict", verdict: finding.verdict },
				because: {
					kind: "rich",
					children: [
						...because(finding, context),
						{ kind: "text", text: ` (${citationText(context, finding.cite.citation)})` },
					],
				},
			}),
		),
		{ dense: true },
	);
	return [...unknownRules(context), ...points];
};
