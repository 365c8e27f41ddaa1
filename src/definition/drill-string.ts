import type * as z from "zod";
import { TECHNICAL } from "./audience.ts";
import { group, optional } from "./field.ts";
import { q } from "./quantity-field.ts";

/** Pipe that the casing shoes are drilled out with, for volumes and well-control figures. */
export const drillString = group("Drill string", "Volumes for well control need it.", TECHNICAL, {
	pipe: group("Drill pipe", "Most of the string.", TECHNICAL, {
		od: q("diameter", "Outside diameter", "Annular volume.", TECHNICAL),
		weight: q("linear-weight", "Nominal weight", "With the diameter it names the pipe.", TECHNICAL),
		id: optional(q("diameter", "Inside diameter", "Friction in the string.", TECHNICAL)),
		joint: optional(q("length", "Length of a joint", "Counts joints to a depth.", TECHNICAL)),
	}),
	tool_loss: optional(
		q("pressure", "Loss in tools", "Motor and survey tools, at the rate stated.", TECHNICAL),
	),
	collars: optional(
		group("Drill collars", "The wide part at the bottom.", TECHNICAL, {
			od: q("diameter", "Outside diameter", "Kick height beside the collars.", TECHNICAL),
			id: optional(q("diameter", "Inside diameter", "Friction in the string.", TECHNICAL)),
			length: q("length", "Length", "Kick height beside the collars.", TECHNICAL),
			weight: optional(q("linear-weight", "Weight", "Weight on bit.", TECHNICAL)),
		}),
	),
});

export type DrillString = z.output<typeof drillString>;
