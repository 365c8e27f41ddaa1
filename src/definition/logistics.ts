import * as z from "zod";
import { PUBLIC } from "./audience.ts";
import { field, group, optional, text } from "./field.ts";
import { part, q, typed } from "./quantity-field.ts";

/** Loads carried to the site, so that trucks can be counted. */
export const logistics = group("Logistics", "How many trucks, on which road.", PUBLIC, {
	water_truck: optional(q("volume", "Water in a truck", "Counts loads.", PUBLIC)),
	water_by_pipeline: optional(part("Share of the water by pipeline", "Spares trucks.", PUBLIC)),
	sand_truck: optional(q("mass", "Sand in a truck", "Counts loads.", PUBLIC)),
	cement_truck: optional(q("mass", "Cement in a truck", "Counts loads.", PUBLIC)),
	pipe_truck: optional(q("mass", "Pipe on a truck", "Counts loads.", PUBLIC)),
	other_loads: optional(
		field(
			z
				.int()
				.min(0)
				.transform((loads) => typed("count", loads, String(loads))),
			{
				title: "Other loads",
				why: "Rig, tanks, iron, fuel and gravel.",
				papers: PUBLIC,
				expected: "a whole number, 0 or more",
				example: "140",
			},
		),
	),
	route: optional(text("Route", "Neighbors ask which road.", PUBLIC)),
	hours: optional(text("Hauling hours", "Neighbors and schools ask when.", PUBLIC)),
});

export type Logistics = z.output<typeof logistics>;
