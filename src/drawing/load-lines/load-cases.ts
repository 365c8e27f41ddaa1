import type { LoadCaseResults } from "../../calc/results.ts";
import type { UnitSystem } from "../../units/format.ts";

/** Ways that a string is loaded, each a chart. */
export const LOAD_CHARTS = ["burst", "collapse", "tension"] as const;
export type LoadChart = (typeof LOAD_CHARTS)[number];

/** A load that a string bears at some depth, with its factor. */
export type BorneCase = LoadCaseResults & {
	readonly least_factor: NonNullable<LoadCaseResults["least_factor"]>;
};

/** How near a case comes to what is asked of it: 1 is just reached. */
export const tightness = (each: BorneCase): number => each.least_factor.value / each.required.value;

/** The cases of one kind that load the string at all, the tightest first. */
export const casesOf = (loads: readonly LoadCaseResults[], kind: LoadChart): BorneCase[] =>
	loads
		.filter((each): each is BorneCase => each.kind === kind && each.least_factor !== undefined)
		.filter((each) => each.line.rows.length > 1)
		.sort((a, b) => tightness(a) - tightness(b));

/** Thousands of pounds-force, or kilonewtons: forces on pipe are large. */
export const forceUnit = (units: UnitSystem): string => (units === "field" ? "klbf" : "kN");
