import type { Block } from "../../document/blocks.ts";
import type { Said } from "../../messages/message.ts";
import { tellSaid } from "../../messages/print.ts";
import { stopsOf } from "../../rules/finding.ts";
import { type PaperContext, readerOf } from "../context.ts";
import type { Part } from "../parts/part.ts";
import { because } from "../parts/rule-checks.ts";

/** Findings that keep this job from starting: what was found, with the limit that it is held against. */
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
			blocks: [
				{
					kind: "list",
					ordered: false,
					items: stops.map((finding): readonly Block[] => [
						{
							kind: "paragraph",
							children: [
								...because(finding, context),
								{ kind: "text", text: ` (${tellSaid(finding.cite.citation, readerOf(context))})` },
							],
						},
					]),
				},
			],
		},
	];
};

/** A finding about another string is no matter of this string's job. */
const isString = (context: PaperContext, subject: Said): boolean =>
	context.well.strings.some(({ id }) => id === subject);
