import * as z from "zod";
import { message } from "../messages/message.ts";
import { RECORD } from "./audience.ts";
import { entry, field, group, list, optional, text } from "./field.ts";
import { q, ratio } from "./quantity-field.ts";

/** Safety margins asked of pipe. What is absent is defaulted, and listed as an assumption. */
export const designFactors = group("Design factors", "Rating over load must reach these.", RECORD, {
	burst: optional(ratio("Burst", "Pressure from inside.", RECORD)),
	collapse: optional(ratio("Collapse", "Pressure from outside.", RECORD)),
	tension: optional(ratio("Tension", "Weight and pull.", RECORD)),
	bending: optional(ratio("Tension with bending", "Weight and pull, bent in the curve.", RECORD)),
	overpull: optional(ratio("Overpull", "Stuck, and pulled.", RECORD)),
	triaxial: optional(ratio("Triaxial", "All of them together.", RECORD)),
});

const ownLimit = entry("Limit of the company", "Judged in place of the practice rule it names.", RECORD, {
	replaces: text(
		"Practice rule replaced",
		"Id of the rule, as the verdicts show it; a rule of law takes a variance instead.",
		RECORD,
		"practice.treatment.relief-below-maximum",
	),
	limit: field(z.record(z.string(), z.json()), {
		title: "Limit",
		why: "What the company requires, in the form the practice rule has.",
		papers: RECORD,
		expected: message("definition/expected.own-limit"),
	}),
	by: text("Decided by", "Printed beside the verdict.", RECORD, "Larkspur drilling engineering"),
	why: text("Why", "Printed as the requirement.", RECORD),
});

const frictionRange = (title: string, why: string) =>
	field(
		z.tuple([
			ratio("Least", "Hook load at its best.", RECORD),
			ratio("Greatest", "Hook load at its worst.", RECORD),
		]),
		{ title, why, papers: RECORD, expected: message("definition/expected.friction") },
	);

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
	friction: optional(
		group("Friction while running", "Whether pipe slides to bottom, and what it takes to pull it.", RECORD, {
			cased: optional(frictionRange("Inside casing", "Steel on steel.")),
			open_hole: optional(frictionRange("In open hole", "Steel on rock.")),
		}),
	),
	running_speed: optional(
		q("fluid-velocity", "Greatest running speed", "Pipe stopped short is shocked by it.", RECORD),
	),
	limits: optional(
		list("Limits of the company", "Stand in for limits of engineering practice, by name.", RECORD, ownLimit),
	),
});

export type DesignBasisDefinition = z.output<typeof designBasis>;
