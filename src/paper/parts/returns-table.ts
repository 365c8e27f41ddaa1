import type { Block } from "../../document/blocks.ts";
import type { CasingString } from "../../well/well.ts";
import { type PaperContext, textCell } from "../context.ts";
import { citationText } from "../words/citation.ts";
import { named, row, table, textColumn } from "./part.ts";

/** Checks whose rules speak of cement that does not come back. */
const RULES_OF_RETURNS: ReadonlySet<string> = new Set(["cement-to-surface", "cement-top"]);

/** What is known and done when returns stop, by what is being pumped; how many barrels that is stands in the pump schedule. */
export const returnsTable = (context: PaperContext): Block[] => {
	const planned = context.well.strings.some(
		({ id, cement }) =>
			cement?.ifReturnsStop !== undefined && context.results.cement[id]?.placement !== undefined,
	);
	const say = (key: string) => textCell(context.words.label(`returns.${key}`));
	return table(
		context,
		"returns",
		[
			textColumn(context, "during", { width: 1, rowHead: true }),
			textColumn(context, "action", { width: 5, label: "then" }),
		],
		!planned
			? []
			: [
					row({ during: textCell(context.words.label("pumped_fluids.spacer")), action: say("spacer") }),
					row({ during: textCell(context.words.label("pumped_fluids.slurry")), action: say("slurry") }),
					row({
						during: textCell(context.words.label("pumped_fluids.displacement")),
						action: say("displacement"),
					}),
					row({ during: say("landed_head"), action: say("landed") }),
				],
		{ dense: true },
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
						[...new Set(rules.flatMap(({ cite }) => citationText(context, cite.citation).split("; ")))].join(
							"; ",
						),
					),
				}),
			];
		}),
		{ dense: true },
	);
