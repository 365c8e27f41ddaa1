import type { Known } from "../../cite/known.ts";
import type { CementActual, CementJob, Slurry } from "../../well/well.ts";
import { holeMark } from "../depths/marks.ts";
import { maybe } from "../gaps.ts";
import type { CementResults, JobRecordResults, PlacementResults, SlurryResults } from "../results.ts";
import { annulusIntervals } from "./annulus.ts";
import { totalVolume } from "./capacity.ts";
import type { JobContext } from "./cement-results.ts";
import { filledTo } from "./column.ts";
import {
	capacityWithExcess,
	capacityWithTwiceExcess,
	densityOffPlan,
	greatestDensityOff,
	leastOfPlan,
	liftOffCalculated,
	slurryOfPlan,
} from "./record.ts";
import { volumeLeft } from "./sacks.ts";

type Depth = Known<"measured-depth">;

/** Lines of the job record that are this slurry, by its id or its role. */
const linesOf = (actual: CementActual, { id, role }: Slurry): CementActual["pumped"] => {
	const names = [id, role].map((name) => name.toLowerCase());
	return actual.pumped.filter(({ fluid }) => names.includes(fluid.trim().toLowerCase()));
};

/** Volume of a slurry by the record. */
const pumpedOf = (job: CementJob, slurry: Slurry): Known<"volume"> | undefined => {
	const lines = job.actual === undefined ? [] : linesOf(job.actual, slurry);
	const [only] = lines;
	if (only === undefined) return undefined;
	return lines.length === 1 ? only.volume : totalVolume.of({ V_i: lines.map(({ volume }) => volume) });
};

/** Density of a slurry by the record: of several weighings the one farthest from the design. */
const weighedOf = (job: CementJob, slurry: Slurry): Known<"density"> | undefined => {
	const off = (ρ: Known<"density">) => Math.abs(ρ.value - slurry.density.value);
	return (job.actual === undefined ? [] : linesOf(job.actual, slurry))
		.flatMap(({ density }) => density ?? [])
		.sort((a, b) => off(b) - off(a))[0];
};

export interface WorkedTop {
	readonly id: string;
	readonly depth: Depth;
}

/** The job as it stands in the annulus: slurries as heavy as they were weighed and, where given, as high as they reach. */
export const asPlaced = (job: CementJob, tops: readonly WorkedTop[] = []): CementJob => ({
	...job,
	slurries: job.slurries.map((slurry) => {
		const i = tops.findIndex(({ id }) => id === slurry.id);
		return {
			...slurry,
			density: weighedOf(job, slurry) ?? slurry.density,
			top: tops[i]?.depth ?? slurry.top,
			bottom: tops[i - 1]?.depth ?? slurry.bottom,
		};
	}),
});

/** Room in open hole: as the plan has it, no wider than it was drilled, and wider by twice the excess. */
const ROOM = {
	"as planned": (C: Known<"capacity">, e: Known<"share">) => capacityWithExcess.of({ C, e }),
	"without excess": (C: Known<"capacity">) => C,
	"twice the excess": (C: Known<"capacity">, e: Known<"share">) => capacityWithTwiceExcess.of({ C, e }),
} as const;

/**
 * Where each slurry ends by the volume pumped, the deepest first: the shoe track and the hole below the shoe are filled
 * first, then the annulus upward, with the excess of the plan, so that the planned volume gives the planned top. Nothing
 * where the volume of a slurry is not recorded, or where slurries are pumped through a stage tool.
 */
export const workedTops = (
	{ well, string, job }: JobContext,
	bottom: Depth,
	slurries: readonly SlurryResults[],
	hole: keyof typeof ROOM = "as planned",
): readonly WorkedTop[] | undefined => {
	if (job.actual === undefined || job.stageTool !== undefined) return undefined;
	const deepestFirst = [...job.slurries].sort((a, b) => b.bottom.value - a.bottom.value);
	const tops: WorkedTop[] = [];
	let from = bottom;
	for (const slurry of deepestFirst) {
		const pumped = pumpedOf(job, slurry);
		if (pumped === undefined) return undefined;
		const planned = slurries.find(({ id }) => id === slurry.id);
		const inside = [planned?.shoe_track_volume, planned?.rathole_volume].filter((v) => v !== undefined);
		const V =
			inside.length === 0 ? pumped : volumeLeft.of({ V: pumped, V_last: totalVolume.of({ V_i: inside }) });
		const up = annulusIntervals(well, string, job.volumeBasis, well.datum.groundLevel, from).toReversed();
		if (V.value > 0 && up.length > 0)
			from = filledTo.of({
				V,
				MD_bottom: from,
				C_i: up.map(({ surroundings, capacity: C }) =>
					surroundings === "open hole" ? ROOM[hole](C, slurry.excess) : C,
				),
				L_i: up.map(({ length }) => length),
			});
		tops.push({ id: slurry.id, depth: from });
	}
	return tops;
};

/** The record of a job beside its plan; nothing before there is one. */
export const jobRecord = (
	{ well, path, job }: JobContext,
	found: {
		readonly slurries: readonly SlurryResults[];
		readonly tops: readonly WorkedTop[] | undefined;
		/** The bounds of those tops: with no excess, and with twice that of the plan. */
		readonly highest: readonly WorkedTop[] | undefined;
		readonly lowest: readonly WorkedTop[] | undefined;
		readonly lift: CementResults["final_lift"];
		readonly placement: PlacementResults | undefined;
	},
): JobRecordResults | undefined => {
	const { actual } = job;
	if (actual === undefined) return undefined;
	const slurries = job.slurries.map((slurry): JobRecordResults["slurries"][number] => {
		const V_pumped = pumpedOf(job, slurry);
		const ρ = weighedOf(job, slurry);
		const V = found.slurries.find(({ id }) => id === slurry.id)?.volume;
		const of = (tops: typeof found.tops) => tops?.find(({ id }) => id === slurry.id)?.depth;
		const [top, high, low] = [of(found.tops), of(found.highest), of(found.lowest)];
		return {
			id: slurry.id,
			...maybe("volume", V_pumped),
			...maybe("of_plan", V_pumped && V && V.value > 0 ? slurryOfPlan.of({ V_pumped, V }) : undefined),
			...maybe("density", ρ),
			...maybe("density_off", ρ && densityOffPlan.of({ ρ, ρ_p: slurry.density })),
			...maybe("top_by_volume", top && holeMark(path, top, well.datum)),
			...maybe("highest_by_volume", high && holeMark(path, high, well.datum)),
			...maybe("lowest_by_volume", low && holeMark(path, low, well.datum)),
		};
	});
	const shares = slurries.flatMap(({ of_plan }) => of_plan ?? []);
	const off = slurries.flatMap(({ density_off }) => density_off ?? []);
	const p = actual.lift;
	const p_f =
		found.placement?.with_friction === true ? found.placement.final_circulating_pressure : undefined;
	return {
		slurries,
		...maybe(
			"least_of_plan",
			shares.length === slurries.length ? leastOfPlan.of({ s_i: shares }) : undefined,
		),
		...maybe(
			"greatest_density_off",
			off.length === slurries.length ? greatestDensityOff.of({ d_i: off }) : undefined,
		),
		...maybe(
			"lift_off_calculated",
			p && found.lift && found.lift.value > 0
				? liftOffCalculated.of({ p, Δp: found.lift, p_f: p_f ?? p })
				: undefined,
		),
	};
};
