import { cell, type PaperContext, textCell } from "../context.ts";
import { type Part, quantityColumn, row, table, textColumn } from "./part.ts";

/** Radii of exposure, by each published method on lines of its own. Nothing where the gas is stated to carry none. */
export const exposureRadii: Part = (context) => {
	const found = context.results.safety?.hydrogen_sulfide;
	const stated = context.well.safety?.hydrogen_sulfide;
	if (found === undefined) return [];
	const line = (method: string, of: string, radius: Parameters<typeof cell>[1]) =>
		row({
			method: textCell(word(context, method)),
			radius_of: textCell(word(context, of)),
			gas_fraction: cell(context, stated?.fraction),
			gas_rate: cell(context, stated?.gas_rate),
			radius: cell(context, radius),
		});
	return table(
		context,
		"exposure_radii",
		[
			textColumn(context, "method", { width: 2.6, rowHead: true }),
			textColumn(context, "radius_of", { width: 2 }),
			quantityColumn(context, "gas_fraction", "gas-fraction", { width: 1 }),
			quantityColumn(context, "gas_rate", "gas-rate", { width: 1.2 }),
			quantityColumn(context, "radius", "distance", { width: 1, style: { decimals: 0 } }),
		],
		[
			line("rule_form", "to_100_ppm", found.rule.to_100_ppm),
			line("rule_form", "to_500_ppm", found.rule.to_500_ppm),
			line("practice_form", "to_100_ppm_day", found.practice.by_day),
			line("practice_form", "to_100_ppm_night", found.practice.at_night),
		],
		{ note: "exposure_radii" },
	);
};

const word = (context: PaperContext, key: string): string => context.words.label(`exposure.${key}`);
