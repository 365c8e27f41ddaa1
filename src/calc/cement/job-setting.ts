import { constant } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { message } from "../../messages/message.ts";
import type { Slurry } from "../../well/well.ts";
import { holeMark } from "../depths/marks.ts";
import { maybe } from "../gaps.ts";
import { temperatureAtDepth } from "../pressure/hydrostatic.ts";
import type { FurtherJobResults, PlacementResults, SettingResults } from "../results.ts";
import { annulusIntervals, annulusVolume } from "./annulus.ts";
import { totalVolume, volumeWithExcess } from "./capacity.ts";
import { grouted, type JobContext } from "./cement-results.ts";
import { exactSacks, mixWater, sacks } from "./sacks.ts";
import { drillOutFrom, strengthAfter, timeInUse, timeToStrength } from "./setting.ts";

const USUAL_STRENGTH = constant(
	"pressure",
	500,
	"strength that drilling out waits for",
	cite("common-practice"),
);
const NO_EXCESS = constant("share", 0, "no excess", cite("definition"));
const AT_START = constant("duration", 0, "the job begins", cite("definition"));

/** When the cement at the shoe may be drilled; nothing where its strength was not tested and nothing thickens. */
export const settingResults = (
	context: JobContext,
	slurry: Slurry | undefined,
	stages: readonly PlacementResults[],
): SettingResults | undefined => {
	const { well, path, job, string, gaps, at } = context;
	if (slurry === undefined) return undefined;
	const wanted = job.drillOut?.strength ?? USUAL_STRENGTH;
	const curve = {
		t_i: slurry.strength.map(({ after }) => after),
		s_i: slurry.strength.map(({ value }) => value),
	};
	const tested = slurry.strength.length > 0;
	const key = `cement.${string.id}.setting`;
	const reached = tested
		? gaps.finite(
				`${key}.strength_reached`,
				timeToStrength.of({ ...curve, s: wanted }),
				message("calc/tests-slurry-end-below-that-strength", { slurry: slurry.id }),
				[[...at, "cement", "slurries"]],
			)
		: grouted(context)
			? undefined
			: gaps.missing(
					`${key}.strength_reached`,
					message("calc/strength-slurry-is-not-given", { slurry: slurry.id }),
					[[...at, "cement", "slurries"]],
				);
	const planned = job.drillOut?.after ?? job.waitOnCement;
	const { surfaceTemperature: T_s, temperatureGradient: G } = well.geology;
	const D = holeMark(path, string.shoe, well.datum).below_ground;
	return {
		slurry: slurry.id,
		strength_wanted: wanted,
		...maybe("strength_reached", reached),
		...maybe("drill_out_planned", planned),
		...maybe(
			"strength_at_drill_out",
			tested && planned ? strengthAfter.of({ ...curve, t: planned }) : undefined,
		),
		...maybe(
			"free_from",
			reached &&
				(job.waitOnCement === undefined
					? reached
					: drillOutFrom.of({ wait: job.waitOnCement, t_s: reached })),
		),
		...maybe("temperature_at_shoe", T_s && G && temperatureAtDepth.of({ T_s, G, D })),
		thickening: job.slurries.flatMap(({ id, thickeningTime }) => {
			const stage = stages.find(({ schedule }) => schedule.some((fluid) => fluid.id === id));
			const i = stage?.schedule.findIndex((fluid) => fluid.id === id) ?? -1;
			if (thickeningTime === undefined || stage === undefined) return [];
			const mixed = stage.schedule[i - 1]?.elapsed ?? AT_START;
			return [
				{
					id,
					in_use: timeInUse.of({ t_end: stage.time, t_mixed: mixed }),
					thickening_time: thickeningTime,
				},
			];
		}),
	};
};

/** Top-ups and squeezes: volume, sacks and water. A squeeze fills its stretch of annulus; what goes into rock is excess. */
export const furtherJobs = ({ well, path, string, job }: JobContext): readonly FurtherJobResults[] =>
	(job.further ?? []).map((each) => {
		const intervals = annulusIntervals(well, string, job.volumeBasis, each.top, each.bottom);
		const volume = volumeWithExcess.of({
			V: annulusVolume(intervals),
			e: each.excess ?? NO_EXCESS,
		});
		const whole = sacks.of({
			n: exactSacks.of({ V: totalVolume.of({ V_i: [volume] }), y: each.yield }),
		});
		return {
			kind: each.kind,
			top: holeMark(path, each.top, well.datum),
			bottom: holeMark(path, each.bottom, well.datum),
			volume,
			sacks: whole,
			...maybe("mix_water", each.water && mixWater.of({ n: whole, w: each.water })),
			...maybe("when", each.when),
		};
	});
