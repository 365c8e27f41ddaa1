import { cell, textCell } from "../context.ts";
import { facts, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

const WHOLE = { decimals: 0 } as const;
const TENS = { nearest: 10 } as const;

/** One fracture by several simple models: printed as a range that illustrates, and marked so. */
export const fractureRange: Part = (context) => {
	const range = context.results.stimulation?.fractures;
	if (range === undefined) return [];
	return [
		{
			kind: "callout",
			tone: "caution",
			title: context.words.label("fractures.illustrative_title"),
			blocks: [
				{
					kind: "paragraph",
					children: [{ kind: "text", text: context.words.label("fractures.illustrative") }],
				},
			],
		},
		...table(
			context,
			"fracture_range",
			[
				textColumn(context, "fracture_model", { width: 2.6, rowHead: true }),
				quantityColumn(context, "fracture_height", "length"),
				quantityColumn(context, "half_length", "length"),
				quantityColumn(context, "mean_width", "diameter", { style: { decimals: 2 } }),
				quantityColumn(context, "net_pressure", "pressure", { style: TENS }),
				quantityColumn(context, "efficiency", "share", { style: WHOLE }),
				quantityColumn(context, "fracture_top", "true-vertical-depth"),
				quantityColumn(context, "below_water", "offset"),
			],
			range.models.map((model) =>
				row({
					fracture_model: textCell(context.words.label(`fractures.models.${model.id}`)),
					fracture_height: cell(context, model.height),
					half_length: cell(context, model.half_length),
					mean_width: cell(context, model.width),
					net_pressure: cell(context, model.net_pressure),
					efficiency: cell(context, model.efficiency),
					fracture_top: cell(context, model.top),
					below_water: cell(context, model.below_protected_water),
				}),
			),
			{ note: "fracture_range", suffix: range.formation },
		),
		...facts(context, [
			["highest_fracture_top", cell(context, range.highest_top)],
			["least_rock_below_water", cell(context, range.least_below_protected_water)],
		]),
	];
};
