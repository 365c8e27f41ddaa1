import type { Block } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import { type Finding, toldIn } from "../../rules/finding.ts";
import type { PaperContext } from "../context.ts";
import type { Part } from "./part.ts";
import { because } from "./rule-checks.ts";

/**
 * What is asked for and the plan, or the record, does not show: to the presenter with its numbers, to the public as what is
 * asked, since the numbers take the regulator's copy to read.
 */
export const notYetShown: Part = (context) => {
	const told = toldIn(context.judgement.findings, context.paper);
	if (told.length === 0) return [];
	const said =
		context.paper === "answers" ? told.map((finding) => because(finding, context)) : asked(told, context);
	return [
		{ kind: "paragraph", children: [{ kind: "text", text: context.words.label("phrases.not_yet_shown") }] },
		{
			kind: "list",
			ordered: false,
			items: said.map((children): readonly Block[] => [{ kind: "paragraph", children }]),
		},
	];
};

/** Each requirement once, though several strings or wells may fall short of it. */
const asked = (told: readonly Finding[], context: PaperContext): readonly (readonly Inline[])[] =>
	[...new Set(told.map(({ cite, requirement }) => context.words.requirement(cite.rule, requirement)))].map(
		(text) => [{ kind: "text", text }],
	);
