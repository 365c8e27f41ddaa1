import type * as z from "zod";
import { RECORD } from "./audience.ts";
import { group, optional } from "./field.ts";
import { q, ratio } from "./quantity-field.ts";

/** Safety margins asked of pipe. What is absent is defaulted, and listed as an assumption. */
export const designFactors = group("Design factors", "Rating over load must reach these.", RECORD, {
	burst: optional(ratio("Burst", "Pressure from inside.", RECORD)),
	collapse: optional(ratio("Collapse", "Pressure from outside.", RECORD)),
	tension: optional(ratio("Tension", "Weight and pull.", RECORD)),
	triaxial: optional(ratio("Triaxial", "All of them together.", RECORD)),
});

export const designBasis = group("Design basis", "Stated once; each string may override.", RECORD, {
	burst_backup: optional(
		q(
			"pressure-gradient",
			"Pressure gradient outside the pipe in burst",
			"What helps hold the pipe.",
			RECORD,
		),
	),
	design_factors: optional(designFactors),
	wear: optional(q("share", "Wall loss by wear", "Drilling through casing thins it.", RECORD)),
	temperature_derating: optional(
		q("share-per-temperature", "Loss of yield with temperature", "Hot steel is weaker.", RECORD),
	),
	overpull: optional(q("force", "Overpull", "Pull above weight that the pipe must stand.", RECORD)),
});

export type DesignBasisDefinition = z.output<typeof designBasis>;
