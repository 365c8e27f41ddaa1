import type { Block } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import type { Finding } from "../../rules/finding.ts";
import { worstFirst } from "../../rules/index.ts";
import type { PaperContext } from "../context.ts";
import { citationText } from "../words/citation.ts";
import { notEvaluatedInShort } from "./not-evaluated.ts";
import type { Part } from "./part.ts";

const text = (words: string): Inline => ({ kind: "text", text: words });
const bold = (words: string): Inline => ({ kind: "strong", children: [text(words)] });

/**
 * How every check came out that asks for somebody's attention, and what was not evaluated at all: for the first page. What
 * is of practice stands above it by name; of law and permit the places are named, and section and appendix have the words.
 */
export const reviewStatus: Part = (context): readonly Block[] => {
	const { label } = context.words;
	const of = (verdict: Finding["verdict"]): readonly Finding[] =>
		worstFirst(context.judgement.findings).filter((finding) => finding.verdict === verdict);
	const count = (verdict: Finding["verdict"]): readonly Inline[] => [
		bold(`${label(`verdicts.${verdict}`)}: ${of(verdict).length}.`),
		text(" "),
	];
	const asked = of("needs judgement");
	const law = asked.filter(({ cite }) => cite.kind !== "practice");
	const names = [...new Set(law.map(({ cite }) => citationText(context, cite.citation)))];
	return [
		{
			kind: "paragraph",
			tone: "note",
			children: [
				...count("not met"),
				...count("cannot tell"),
				bold(`${label("verdicts.needs judgement")}: ${asked.length}`),
				...(names.length === 0
					? [text(". ")]
					: [
							text(`, ${label("review.of_law")} ${law.length} (${names.join("; ")}; `),
							link("rules", label("review.see")),
							text("). "),
						]),
				...notEvaluated(context),
				...(context.missing.length > 0 ? [] : [text(` ${label(nothingMissing(context))}`)]),
			],
		},
	];
};

const nothingMissing = ({ judgement }: PaperContext): string =>
	judgement.unknownJurisdictions.length > 0 ? "phrases.nothing_missing_of_known" : "phrases.nothing_missing";

/** A reference that becomes `section 13` when the paper is whole. */
const link = (ref: string, words: string): Inline => ({
	kind: "link",
	to: `#ref:${ref}`,
	children: [text(words)],
});

const notEvaluated = (context: PaperContext): readonly Inline[] => {
	const { undetermined } = context.results;
	const { label } = context.words;
	if (undetermined.length === 0) return [bold(`${label("review.not_evaluated")}: 0.`)];
	return [
		bold(`${label("review.not_evaluated")}: ${undetermined.length}`),
		text(` (${notEvaluatedInShort(context)}; `),
		link("assumptions", label("review.see")),
		text(")."),
	];
};
