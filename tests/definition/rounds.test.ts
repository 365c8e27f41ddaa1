import { describe, expect, it } from "vitest";
import { starterText, understandText } from "../starters.ts";

/*
 * Who writes a definition by hand mends what one run tells, and runs again. Faults of the form must not hide those of
 * pipe, stages and cement, so that two runs suffice: one that tells of everything, and one that finds nothing.
 */

/** As it should be written, as it was written, and the code that tells of it. */
type Fault = readonly [good: string, bad: string, code: string];

const WELLS: readonly {
	readonly name: string;
	readonly from: "horizontal" | "vertical-metric";
	readonly faults: readonly Fault[];
}[] = [
	{
		name: "a horizontal well with faults of units, pipe, stages and cement",
		from: "horizontal",
		faults: [
			["ground_elevation: 1482 ft", "ground_elevation: 1482", "quantity/no-unit"],
			["state: issued for review", "state: for review", "definition/not-one-of"],
			["od: 13 3/8 in, weight: 54.5 lb/ft", "od: 13 3/8 in, weight: 55.4 lb/ft", "well/unknown-pipe"],
			["weight: 43.5 lb/ft, grade: L80", "weight: 43.5 lb/ft, grade: L-88", "well/unknown-grade"],
			["from: surface, to: 17245 ft }", "from: surface, to: 17345 ft }", "well/shoe-below-hole"],
			["proppant: 40-70, concentration", "proppant: 30-50, concentration", "well/unknown-reference"],
			[
				"role: tail, class: H, from: 8200 ft, to: 17245 ft",
				"role: tail, class: H, from: 8300 ft, to: 17245 ft",
				"well/slurry-gap",
			],
			["treated_through: production", "treated_through: tubing", "well/unknown-reference"],
			["base: 9010 ft TVD", "base: 8010 ft TVD", "well/top-below-bottom"],
			["landing_inclination: 90 deg", "landing_inclination: 90", "quantity/no-unit"],
		],
	},
	{
		name: "a horizontal well with faults of the path, the form and the treatment",
		from: "horizontal",
		faults: [
			["  field: Sorrel", "  feild: Sorrel", "definition/unknown-key"],
			["build: 10 deg/100 ft", "build: 0 deg/100 ft", "calc/impossible-plan"],
			["Pond water, share: 60 %", "Pond water, share: 50 %", "definition/shares-of-whole"],
			["shoe_track: 84 ft", "shoe_track: 8400 ft", "well/shoe-track"],
			["count: 39, bottom: 17110 ft", "count: 39, bottom: 17410 ft", "well/stage-outside"],
			["api_number: 42-000-00000-00-00", "api_number: 42-000-0000", "definition/api-number"],
			["maximum_treating_pressure: 9500 psi", "maximum_treating_pressure: 9500 ppg", "quantity/unknown-unit"],
			["from: 885 ft\n          to: 1185 ft", "from: 885 ft\n          to: 1135 ft", "well/slurry-bottom"],
			["hole: intermediate\n", "hole: intermedate\n", "well/unknown-reference"],
		],
	},
	{
		name: "a vertical well in metric units",
		from: "vertical-metric",
		faults: [
			["density: 1440 kg/m3, yield: 1.55", "density: 1440 kg, yield: 1.55", "quantity/unknown-unit"],
			["od: 139.7 mm, weight: 25.3 kg/m", "od: 139.7 mm, weight: 28.3 kg/m", "well/unknown-pipe"],
			["role: tail, class: G, from: 1150 m", "role: tail, class: G, from: 1180 m", "well/slurry-gap"],
			["shoe_track: 12 m", "shoe_track: 1200 m", "well/shoe-track"],
			["interval: { from: 1398 m", "interval: { from: 1498 m", "well/top-below-bottom"],
			["sand 1, proppant: 20-40", "sand 1, proppant: 20-44", "well/unknown-reference"],
			[
				"water_sources: [{ name: Town supply, share: 100 %",
				"water_sources: [{ name: Town supply, share: 90 %",
				"definition/shares-of-whole",
			],
			["method: single interval", "method: single intervall", "definition/not-one-of"],
			["wait_on_cement: 12 hr", "wait_on_cement: 12", "quantity/no-unit"],
		],
	},
];

const withFaults = (text: string, faults: readonly Fault[]): string =>
	faults.reduce((left, [good, bad]) => {
		expect(left).toContain(good);
		return left.replace(good, bad);
	}, text);

describe("a definition made by hand", () => {
	it.each(WELLS.map((well) => [well.name, well] as const))("%s", (_, { from, faults }) => {
		expect(faults.length).toBeGreaterThanOrEqual(8);
		const { diagnostics } = understandText(withFaults(starterText(from), faults));
		const told = diagnostics.filter(({ severity }) => severity === "error").map(({ code }) => code as string);
		// Each once, and nothing beside: what is mended by it is a definition without a fault.
		expect(told.toSorted()).toEqual(faults.map(([, , code]) => code).toSorted());
		expect(understandText(starterText(from)).findings).toBeDefined();
	});
});
