import type { PlacementResults } from "../../calc/results.ts";
import type { Block } from "../../document/blocks.ts";
import { tellSaid } from "../../messages/print.ts";
import type { LimitCitation } from "../../rules/finding.ts";
import type { CasingString } from "../../well/well.ts";
import { cell, type PaperContext, readerOf, textCell } from "../context.ts";
import { standingWords } from "../words/not-compared.ts";
import { named, quantityColumn, row, table, textColumn } from "./part.ts";

/** Checks whose rules speak of cement that does not come back. */
const RULES_OF_RETURNS: ReadonlySet<string> = new Set(["cement-to-surface", "cement-top"]);

/**
 * What is done when returns stop, by what is being pumped: from which barrel to which, what is then known, and what the
 * plan and the rules ask for.
 */
export const returnsTable = (context: PaperContext, string: CasingString): Block[] => {
	if (string.cement?.ifReturnsStop === undefined) return [];
	const { placement, second_stage: second } = context.results.cement[string.id] ?? {};
	const [name, first, then] = [
		named(context, string.id),
		context.words.label("phrases.first_stage"),
		context.words.label("phrases.second_stage"),
	];
	return [
		...stageTable(context, placement, second === undefined ? name : `${name}, ${first}`),
		...stageTable(context, second?.placement, `${name}, ${then}`),
	];
};

/** One stage of the job, phase by phase. */
const stageTable = (
	context: PaperContext,
	placement: PlacementResults | undefined,
	suffix: string,
): Block[] => {
	const say = (key: string) => textCell(context.words.label(`returns.${key}`));
	// Slowing down before the plug lands changes nothing in what is done.
	const phases = (placement?.schedule ?? []).filter(({ id }) => id !== "last displacement");
	const rows = phases.map((fluid, i) =>
		row({
			during: textCell(
				fluid.id === "displacement" || fluid.id === "spacer"
					? context.words.label(`pumped_fluids.${fluid.id}`)
					: named(context, fluid.id),
			),
			from_volume: cell(context, phases[i - 1]?.cumulative),
			to_volume: cell(context, fluid.id === "displacement" ? placement?.pumped : fluid.cumulative),
			action: say(fluid.id === "spacer" || fluid.id === "displacement" ? fluid.id : "slurry"),
		}),
	);
	return table(
		context,
		"returns",
		[
			textColumn(context, "during", { width: 1.2, rowHead: true }),
			quantityColumn(context, "from_volume", "volume"),
			quantityColumn(context, "to_volume", "volume"),
			textColumn(context, "action", { width: 4, label: "then" }),
		],
		rows.length === 0
			? []
			: [
					...rows,
					row({
						during: say("landed_head"),
						from_volume: cell(context, placement?.pumped),
						action: say("landed"),
					}),
				],
		{ suffix },
	);
};

/** What the plan says of returns that stop, and the rules that speak of it. */
export const returnsNote = (context: PaperContext, string: CasingString): Block[] => {
	const plan = string.cement?.ifReturnsStop;
	if (plan === undefined) return [];
	const rules = context.judgement.findings.filter(
		({ check, subject, verdict }) =>
			RULES_OF_RETURNS.has(check) && subject === string.id && verdict !== "does not apply",
	);
	const standing = (cite: LimitCitation): string => standingWords(cite, context.words);
	return [
		{
			kind: "callout",
			tone: "note",
			title: `${context.words.label("phrases.if_returns_stop")}: ${named(context, string.id)}`,
			blocks: [
				{ kind: "paragraph", children: [{ kind: "text", text: plan }] },
				...[...new Map(rules.map((rule) => [rule.cite.rule, rule])).values()].map(
					({ requirement, cite }): Block => {
						const words = context.words.requirement(cite.rule, requirement);
						return {
							kind: "paragraph",
							children: [
								{
									kind: "text",
									text: `${tellSaid(cite.citation, readerOf(context))}: ${words} [${standing(cite)}]`,
								},
							],
						};
					},
				),
			],
		},
	];
};
