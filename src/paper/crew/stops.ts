import type { Block } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import type { Said } from "../../messages/message.ts";
import { tellSaid } from "../../messages/print.ts";
import { type Finding, stopsOf } from "../../rules/finding.ts";
import { worstFirst } from "../../rules/worst-first.ts";
import { type PaperContext, readerOf } from "../context.ts";
import type { Part } from "../parts/part.ts";
import { because } from "../parts/rule-checks.ts";
import { frontGoesOn } from "./goes-on.ts";

/** However full the page is, the worst of them stand on it. */
const WORST = 3;

/** Findings that keep this job from starting, the worst first: what was found, with the limit that it is held against. */
export const crewStops: Part = (context) => {
	const stops = stopsOf(context.judgement.findings, context.job?.id ?? "").filter(
		({ subject }) =>
			context.job?.string === undefined || subject === context.job.string || !isString(context, subject),
	);
	if (stops.length === 0) return [];
	return [
		{
			kind: "callout",
			tone: "stop",
			title: context.words.label("crew.critical_title"),
			blocks: frontGoesOn(
				context,
				"reasons",
				[
					{
						kind: "list",
						ordered: false,
						items: reasonsOf(context, worstFirst(stops)),
					},
				],
				WORST,
			),
		},
	];
};

/** A reason is told once, with every rule that asks for it: rows of one wording are read as a slip, and then not at all. */
const reasonsOf = (context: PaperContext, stops: readonly Finding[]): readonly (readonly Block[])[] => {
	const reasons = new Map<string, { readonly said: readonly Inline[]; readonly asking: Set<string> }>();
	for (const finding of stops) {
		const said = because(finding, context);
		const wording = JSON.stringify(said);
		const reason = reasons.get(wording) ?? { said, asking: new Set<string>() };
		for (const source of tellSaid(finding.cite.citation, readerOf(context)).split("; "))
			reason.asking.add(source);
		reasons.set(wording, reason);
	}
	return [...reasons.values()].map(({ said, asking }): readonly Block[] => [
		{
			kind: "paragraph",
			children: [...said, { kind: "text", text: ` (${[...asking].join("; ")})` }],
		},
	]);
};

/** A finding about another string is no matter of this string's job. */
const isString = (context: PaperContext, subject: Said): boolean =>
	context.well.strings.some(({ id }) => id === subject);
