import type { Cell } from "../../document/blocks.ts";
import { cell, type PaperContext, shown, textCell } from "../context.ts";
import { facts, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

const PARTS = { decimals: 5 } as const;

/** What goes in, additive by additive and ingredient by ingredient, each by mass. */
export const disclosureTable: Part = (context) => {
	const disclosure = context.results.stimulation?.disclosure;
	if (disclosure === undefined) return [];
	const additives = new Map(context.well.stimulation?.additives.map((each) => [each.id, each]));
	const proppants = new Map(context.well.stimulation?.proppants.map((each) => [each.id, each]));
	return table(
		context,
		"disclosure",
		[
			textColumn(context, "ingredient", { width: 2.4, rowHead: true }),
			textColumn(context, "cas", { width: 1.2 }),
			textColumn(context, "additive_purpose", { width: 1.4 }),
			textColumn(context, "supplier", { width: 1.6 }),
			quantityColumn(context, "mass", "mass", { width: 1.1, style: { nearest: 1 } }),
			quantityColumn(context, "max_share", "share", { style: { decimals: 0 } }),
			quantityColumn(context, "share_of_fluid", "share", { width: 1.1, style: PARTS }),
		],
		[
			row(
				{
					ingredient: textCell(
						`${context.words.label("phrases.base_fluid")}: ${context.well.stimulation?.baseFluid.kind}`,
					),
					cas: textCell(disclosure.chemicals[0]?.cas),
					mass: cell(context, disclosure.base_fluid.mass),
					share_of_fluid: cell(context, disclosure.base_fluid.share),
				},
				"group",
			),
			...disclosure.proppants.map(({ id, mass, share }) =>
				row(
					{
						ingredient: textCell(`${proppants.get(id)?.material ?? id} ${id}`),
						cas: textCell(proppants.get(id)?.cas),
						additive_purpose: textCell(context.words.label("phrases.proppant")),
						supplier: textCell(proppants.get(id)?.supplier),
						mass: cell(context, mass),
						share_of_fluid: cell(context, share),
					},
					"group",
				),
			),
			...disclosure.additives.flatMap((additive) => [
				row(
					{
						ingredient: textCell(additive.name),
						additive_purpose: textCell(additives.get(additive.id)?.purpose),
						supplier: textCell(additives.get(additive.id)?.supplier),
						mass: cell(context, additive.mass),
						share_of_fluid: cell(context, additive.share),
					},
					"group",
				),
				...additive.ingredients.map((each) =>
					row({
						ingredient: textCell(each.name),
						cas:
							each.trade_secret === undefined
								? textCell(each.cas)
								: textCell(context.words.label("phrases.trade_secret")),
						supplier: textCell(
							each.trade_secret && `${context.words.label("phrases.claimed_by")} ${each.trade_secret}`,
						),
						max_share: cell(context, each.share_of_additive),
						share_of_fluid: cell(context, each.share),
					}),
				),
			]),
		],
		{ dense: true, note: "disclosure" },
	);
};

/** Each chemical once, summed over everything it is in. */
export const chemicalsTable: Part = (context) => {
	const disclosure = context.results.stimulation?.disclosure;
	if (disclosure === undefined) return [];
	return [
		...table(
			context,
			"chemicals",
			[
				textColumn(context, "chemical", { width: 3, rowHead: true }),
				textColumn(context, "cas", { width: 1.4 }),
				quantityColumn(context, "share_of_fluid", "share", { width: 1.4, style: PARTS }),
			],
			disclosure.chemicals.map((chemical) =>
				row({
					chemical: textCell(chemical.name),
					cas: textCell(chemical.cas),
					share_of_fluid: cell(context, chemical.share),
				}),
			),
			{ note: "chemicals" },
		),
		...facts(context, [["total_mass", cell(context, disclosure.total_mass)]]),
	];
};

/** What comes back, what is drilled out, and where the water goes. */
export const flowbackFacts: Part = (context) => {
	const totals = context.results.stimulation;
	const plan = context.well.stimulation?.flowback;
	return facts(
		context,
		[
			["plugs_drilled_out", totals?.plugs.value === 0 ? { kind: "none" } : cell(context, totals?.plugs)],
			["expected_flowback", expectedFlowback(context)],
			["flowback_goes_to", textCell(plan?.goesTo)],
		],
		{ caption: "flowback", columns: 1 },
	);
};

/** `10 % to 30 % (34,600 bbl to 103,900 bbl)`. */
const expectedFlowback = (context: PaperContext): Cell => {
	const volume = context.results.stimulation?.returned;
	const [least, most] = context.well.stimulation?.flowback?.returned ?? [];
	if (least === undefined || most === undefined) return { kind: "none" };
	const to = { kind: "text" as const, text: ` ${context.words.label("phrases.to")} ` };
	const style = { nearest: 100, decimals: 0 } as const;
	return {
		kind: "rich",
		children: [
			shown(context, least, { decimals: 0 }),
			to,
			shown(context, most, { decimals: 0 }),
			...(volume === undefined
				? []
				: [
						{ kind: "text" as const, text: " (" },
						shown(context, volume.low, style),
						to,
						shown(context, volume.high, style),
						{ kind: "text" as const, text: ")" },
					]),
		],
	};
};
