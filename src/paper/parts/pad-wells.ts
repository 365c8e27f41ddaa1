import { cell, textCell } from "../context.ts";
import { type Part, quantityColumn, row, table, textColumn } from "./part.ts";

const ROUNDED = { significant: 2 } as const;

/** Of a pad: each of its wells, with what a neighbor asks of each. */
export const padWells: Part = (context) => {
	const water = { ...ROUNDED, ...(context.units === "metric" ? {} : { unit: "gal" }) };
	return table(
		context,
		"wells_of_pad",
		[
			textColumn(context, "pad_well", { width: 2.4, rowHead: true }),
			quantityColumn(context, "pad_sideways", "length", { style: ROUNDED }),
			quantityColumn(context, "pad_depth", "depth-below-ground", { style: ROUNDED }),
			quantityColumn(context, "pad_pipe", "depth-below-ground"),
			quantityColumn(context, "pad_rock", "offset", { style: ROUNDED }),
			quantityColumn(context, "pad_water", "volume", { style: water }),
		],
		(context.pad?.wells ?? []).map(({ well, results }) => {
			const { isolation, trajectory, stimulation, casing } = results;
			const protecting = isolation.protecting_string;
			return row({
				pad_well: textCell(well.identity.name),
				pad_sideways: cell(context, trajectory.lateral_length),
				pad_depth: cell(context, trajectory.total_depth.below_ground),
				pad_pipe: cell(context, protecting === undefined ? undefined : casing[protecting]?.shoe.below_ground),
				pad_rock: cell(context, isolation.protected_water_to_top_perforation),
				pad_water: cell(context, stimulation?.water_volume),
			});
		}),
	);
};
