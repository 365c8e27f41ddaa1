import { formula } from "../../cite/formula.ts";
import type { Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { holeMark } from "../depths/marks.ts";
import { temperatureAtDepth } from "../pressure/hydrostatic.ts";
import type { CementResults } from "../results.ts";
import type { JobContext } from "./cement-results.ts";

/** How far the nearest test of a slurry was from the range of the rock it sets in [°F]. */
export const nearestTest = formula({
	id: "cement/test-temperature-off",
	name: "Difference of test temperature and rock temperature",
	expression: "least distance of T_test from T_top … T_bottom; none within",
	source: cite("api-10b-2", "tests at the temperature of the zone; from memory"),
	inputs: { T_i: { many: "temperature" }, T_top: "temperature", T_bottom: "temperature" },
	gives: "temperature-difference",
	validity: "at least one test whose temperature is stated",
	compute: ({ T_i, T_top, T_bottom }) =>
		T_i.length === 0
			? Number.NaN
			: Math.min(
					...T_i.map((t) => Math.max(0, Math.min(T_top, T_bottom) - t, t - Math.max(T_top, T_bottom))),
				),
});

/** The rock at the foot of each slurry, and how near its strength was tested to what lies along it. */
export const slurryTemperatures = ({ well, path, job }: JobContext): CementResults["temperatures"] => {
	const { surfaceTemperature: T_s, temperatureGradient: G } = well.geology;
	if (T_s === undefined || G === undefined) return [];
	const at = (md: Known<"measured-depth">) =>
		temperatureAtDepth.of({ T_s, G, D: holeMark(path, md, well.datum).below_ground });
	return job.slurries.map(({ id, top, bottom, strength }) => {
		const [upper, rock] = [at(top), at(bottom)];
		const tested = strength.flatMap((test) => test.at ?? []);
		return {
			id,
			rock,
			...(tested.length === 0
				? {}
				: { test_off: nearestTest.of({ T_i: tested, T_top: upper, T_bottom: rock }) }),
		};
	});
};
