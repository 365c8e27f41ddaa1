import type { Block } from "../../document/blocks.ts";
import type { Said } from "../../messages/message.ts";
import { tellSaid } from "../../messages/print.ts";
import { stopsOf } from "../../rules/finding.ts";
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
						items: worstFirst(stops).map((finding): readonly Block[] => [
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
				WORST,
			),
		},
	];
};

/** A finding about another string is no matter of this string's job. */
const isString = (context: PaperContext, subject: Said): boolean =>
	context.well.strings.some(({ id }) => id === subject);
