import type { PlacementResults } from "../../calc/results.ts";
import type { Block } from "../../document/blocks.ts";
import type { CasingString } from "../../well/well.ts";
import { cell, type PaperContext, textCell } from "../context.ts";
import { citationText } from "../words/citation.ts";
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

/** What each plan says of returns that stop, with the rules that ask for a cement top; their words stand in the appendix. */
export const contingencyTable = (context: PaperContext, strings: readonly CasingString[]): Block[] =>
	table(
		context,
		"contingency",
		[
			textColumn(context, "string", { width: 1, rowHead: true }),
			textColumn(context, "plan_if_lost", { width: 4.4 }),
			textColumn(context, "rules_on_top", { width: 2.4 }),
		],
		strings.flatMap((string) => {
			const plan = string.cement?.ifReturnsStop;
			if (plan === undefined) return [];
			const rules = context.judgement.findings.filter(
				({ check, subject, verdict }) =>
					RULES_OF_RETURNS.has(check) && subject === string.id && verdict !== "does not apply",
			);
			return [
				row({
					string: textCell(named(context, string.id)),
					plan_if_lost: textCell(plan),
					rules_on_top: textCell(
						[...new Set(rules.map(({ cite }) => citationText(context, cite.citation)))].join("; "),
					),
				}),
			];
		}),
		{ dense: true },
	);
