import fc from "fast-check";
import { expect, test } from "vitest";
import { planned, results, sand, stage, step } from "./a-stimulation.ts";

const close = (found: number | undefined, due: number) =>
	expect(Math.abs((found ?? Number.NaN) - due)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(due)));

const anyStep = fc.record({
	clean: fc.double({ min: 1, max: 5000, noNaN: true }),
	concentration: fc.option(fc.double({ min: 0.1, max: 8, noNaN: true }), { nil: undefined }),
});
const anyDesign = fc.array(fc.array(anyStep, { minLength: 1, maxLength: 8 }), { minLength: 1, maxLength: 6 });

test("on any design, slurry is fluid and sand, and every total is the sum of its parts to 1e-9", () => {
	fc.assert(
		fc.property(anyDesign, (design) => {
			const stages = design.map((steps, i) =>
				stage(i + 1, 8900 - 100 * i, {
					steps: steps.map(({ clean, concentration }, k) =>
						step(`step ${k}`, clean, concentration === undefined ? {} : sand(concentration)),
					),
				}),
			);
			const { found } = results(planned({ stages }));
			const steps = design.flat();
			const clean = steps.reduce((sum, s) => sum + s.clean, 0);
			const mass = steps.reduce((sum, s) => sum + 42 * s.clean * (s.concentration ?? 0), 0);
			close(found?.clean_volume.value, clean);
			close(found?.proppant_mass.value, mass);
			// A pound of sand of SG 2.65 takes 1/(8.33 · 2.65) gal.
			close(found?.slurry_volume.value, clean + mass / (8.33 * 2.65) / 42);
			close(
				found?.proppant_by_type.reduce((sum, p) => sum + p.mass.value, 0),
				mass,
			);
			close(
				found?.water_by_source.reduce((sum, w) => sum + w.volume.value, 0),
				found?.water_volume.value ?? 0,
			);
			const { averages } = found ?? {};
			close((averages?.clean_per_length.value ?? 0) * (averages?.treated_length.value ?? 0), clean);
			close((averages?.proppant_per_stage.value ?? 0) * design.length, mass);
			const disclosure = found?.disclosure;
			const parts = [
				disclosure?.base_fluid.share,
				disclosure?.proppant_share,
				disclosure?.additive_share,
			].map((share) => share?.value ?? Number.NaN);
			if (disclosure !== undefined)
				close(
					parts.reduce((sum, share) => sum + share, 0),
					1,
				);
		}),
		{ numRuns: 60 },
	);
});
