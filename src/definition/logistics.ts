import * as z from "zod";
import { message } from "../messages/message.ts";
import { PUBLIC } from "./audience.ts";
import { entry, field, group, list, oneOf, optional, text } from "./field.ts";
import { count, part, q, typed } from "./quantity-field.ts";
import { PHASES } from "./schedule.ts";

const equipment = entry("Equipment of a phase", "Rigs, tanks and iron come with their own work.", PUBLIC, {
	phase: oneOf(PHASES, "Phase", "Spreads the trucks over its days.", PUBLIC),
	loads: count("Loads", "Brought in for it and taken away after it.", PUBLIC),
});

/** Loads carried to the site, so that trucks can be counted. */
export const logistics = group("Logistics", "How many trucks, on which road.", PUBLIC, {
	water_truck: optional(q("volume", "Water in a truck", "Counts loads.", PUBLIC)),
	water_by_pipeline: optional(part("Share of the water by pipeline", "Spares trucks.", PUBLIC)),
	sand_truck: optional(q("mass", "Sand in a truck", "Counts loads.", PUBLIC)),
	cement_truck: optional(q("mass", "Cement in a truck", "Counts loads.", PUBLIC)),
	pipe_truck: optional(q("mass", "Pipe on a truck", "Counts loads.", PUBLIC)),
	returned_water_by_pipeline: optional(
		part("Share of the returned water by pipeline", "What does not go by pipe is hauled away.", PUBLIC),
	),
	equipment: optional(
		list("Equipment by phase", "Loads that come with one phase of the work.", PUBLIC, equipment),
	),
	other_loads: optional(
		field(
			z
				.int()
				.min(0)
				.transform((loads) => typed("count", loads, String(loads))),
			{
				title: "Other loads",
				why: "Fuel, gravel and what else belongs to no one phase.",
				papers: PUBLIC,
				expected: message("definition/expected.whole"),
				example: "140",
			},
		),
	),
	route: optional(text("Route", "Neighbors ask which road.", PUBLIC)),
	hours: optional(text("Hauling hours", "Neighbors and schools ask when.", PUBLIC)),
});

export type Logistics = z.output<typeof logistics>;
