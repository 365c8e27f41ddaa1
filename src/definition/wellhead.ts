import type * as z from "zod";
import { TECHNICAL } from "./audience.ts";
import { group, optional } from "./field.ts";
import { q } from "./quantity-field.ts";

/** Rated working pressures of the wellhead as it stands for each part of the work. */
export const wellhead = group("Wellhead", "May not be weaker than what it holds.", TECHNICAL, {
	drilling: optional(q("pressure", "Rating while drilling", "Against well-control pressures.", TECHNICAL)),
	stimulation: optional(q("pressure", "Rating while pumping", "Against treating pressure.", TECHNICAL)),
});

export type Wellhead = z.output<typeof wellhead>;
