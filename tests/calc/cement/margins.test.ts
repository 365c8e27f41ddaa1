import { describe, expect, test } from "vitest";
import { toldPlainly } from "../../told.ts";
import { resultsOfWell } from "../../wells.ts";

const surface = (...edits: readonly (readonly [from: string, to: string])[]) => {
	const results = resultsOfWell("cementing", ...edits);
	return { job: results.cement["surface"], undetermined: results.undetermined };
};

describe("what cement presses on", () => {
	test("at the shoe above, the lesser of rock and shoe test bears it", () => {
		const tested = (to: string) =>
			surface([
				"    pipe: [{ od: 16 in",
				`    shoe_test: { kind: FIT, equivalent: ${to} ppg }\n    pipe: [{ od: 16 in`,
			]).job;
		const margin = (of: typeof job) => of?.least_fracture_margin?.margin.value ?? Number.NaN;
		const job = tested("14.0");
		// The gravel above the shoe would bear 95 psi, 15.2 lb/gal; a test to more than that shows nothing.
		expect(tested("16.0")?.least_fracture_margin?.formation).not.toBe("shoe test");
		expect(job?.least_fracture_margin?.formation).toBe("shoe test");
		expect(margin(job) - margin(tested("13.0"))).toBeCloseTo(0.052 * 1.0 * 120, 6);
		expect(job?.placement?.fracture?.formation).toBe("shoe test");
		expect(job?.least_fracture_margin?.as_density.value).toBeCloseTo(margin(job) / (0.052 * 120), 6);
	});

	test("around an outermost string too, from below the cellar down", () => {
		const { job } = surface(
			["  - { id: conductor, diameter: 20 in, to: 122 ft, fluid: { kind: air } }\n", ""],
			[
				`  - id: conductor
    hole: conductor
    pipe: [{ od: 16 in, weight: 65 lb/ft, grade: H40, connection: plain end, condition: new, from: surface, to: 120 ft }]
    cement:
      slurries: [{ role: filler, class: A, from: surface, to: 120 ft, excess: 50 %, density: 15.6 ppg, yield: 1.18 ft3/sk, water: 5.2 gal/sk }]
`,
				"",
			],
		);
		// Bramble Sand from 150 ft: 130 ft of it below ground at 0.85 psi/ft, under lead at 12.8 from the ground and mud or spacer above.
		const bears = 0.85 * 130;
		expect(job?.least_fracture_margin).toMatchObject({
			formation: "Bramble Sand",
			at: { tvd: { value: 150 } },
		});
		expect(job?.least_fracture_margin?.margin.value).toBeGreaterThan(bears - 0.052 * 12.8 * 150);
		expect(job?.least_fracture_margin?.margin.value).toBeLessThan(bears - 0.052 * 12.8 * 130);
		expect(job?.placement?.fracture?.margin.value).toBeLessThan(
			job?.least_fracture_margin?.margin.value ?? 0,
		);
	});
});

describe("a job one of whose fluids has no viscosity", () => {
	test("has no pump pressure, no final circulating pressure and no bump pressure, and says whose is missing", () => {
		const { job, undetermined } = surface(["rate: 5 bbl/min, plastic_viscosity: 25 cP,", "rate: 5 bbl/min,"]);
		expect(job?.placement?.with_friction).toBe(false);
		expect(job?.placement).not.toHaveProperty("final_circulating_pressure");
		expect(job?.placement).not.toHaveProperty("bump_pressure");
		expect(job?.placement).not.toHaveProperty("greatest_pump_pressure");
		expect(
			toldPlainly(undetermined.find(({ key }) => key === "cement.surface.placement.friction")?.because),
		).toBe(
			"The plastic viscosity or yield point of the lead slurry is not given; the pressures outside are those at rest, and no pump or bump pressure is given.",
		);
	});
});
