import type { Known } from "../../cite/known.ts";
import type { Slurry } from "../../well/well.ts";
import type { PumpedFluid, SlurryResults } from "../results.ts";
import { totalVolume } from "./capacity.ts";
import type { JobContext } from "./cement-results.ts";
import { contactTime, totalTime, volumeLeft } from "./sacks.ts";

interface Parts {
	readonly slurries: readonly SlurryResults[];
	readonly displacement: Known<"volume"> | undefined;
}

/** A fluid of the train with its flow. */
export interface Fluid {
	readonly id: string;
	readonly V: Known<"volume">;
	readonly Q: Known<"flow-rate">;
	readonly ρ: Known<"density">;
	readonly PV: Known<"plastic-viscosity"> | undefined;
	readonly YP: Known<"yield-point"> | undefined;
}

/** Fluids whose densities differ by no more are one mud, as it is weighed [lb/gal]. */
const SAME_MUD = 0.1;

/** What is pumped, in order; nothing where a rate or a density is wanting. */
export const trainOf = (
	{ job, string }: JobContext,
	{ slurries, displacement }: Parts,
): readonly Fluid[] | undefined => {
	const { spacer, displacement: pushed } = job;
	const mud = string.hole.fluid;
	const rate = pushed?.rate ?? job.slurries.find((slurry) => slurry.rate !== undefined)?.rate;
	if (rate === undefined || pushed === undefined || displacement === undefined) return undefined;
	if (spacer !== undefined && spacer.density === undefined) return undefined;
	const flowOf = (fluid: Pick<Slurry, "plasticViscosity" | "yieldPoint">) => ({
		PV: fluid.plasticViscosity ?? mud?.plasticViscosity,
		YP: fluid.yieldPoint ?? mud?.yieldPoint,
	});
	const mixed = job.slurries.flatMap((slurry): Fluid[] => {
		const volume = slurries.find(({ id }) => id === slurry.id)?.volume;
		return volume === undefined || volume.value <= 0
			? []
			: [
					{
						id: slurry.id,
						V: volume,
						Q: slurry.rate ?? rate,
						ρ: slurry.density,
						PV: slurry.plasticViscosity,
						YP: slurry.yieldPoint,
					},
				];
	});
	const { last } = pushed;
	const slow = last !== undefined && last.volume.value < displacement.value ? last : undefined;
	// Displaced with the hole's own mud, the mud's flow is known; another fluid says its own.
	const isMud = mud?.density !== undefined && Math.abs(mud.density.value - pushed.density.value) <= SAME_MUD;
	const push = {
		ρ: pushed.density,
		...(isMud ? flowOf(pushed) : { PV: pushed.plasticViscosity, YP: pushed.yieldPoint }),
	};
	return [
		...(spacer?.density === undefined
			? []
			: [
					{
						id: "spacer",
						V: spacer.volume,
						Q: rate,
						ρ: spacer.density,
						...flowOf(spacer),
					},
				]),
		...mixed,
		{
			id: "displacement",
			V: slow === undefined ? displacement : volumeLeft.of({ V: displacement, V_last: slow.volume }),
			Q: rate,
			...push,
		},
		...(slow === undefined ? [] : [{ id: "last displacement", V: slow.volume, Q: slow.rate, ...push }]),
	];
};

export const scheduleOf = (fluids: readonly Fluid[]): readonly PumpedFluid[] => {
	const times = fluids.map(({ V, Q }) => contactTime.of({ V, Q }));
	return fluids.map(({ id, V, Q, ρ }, i) => ({
		id,
		volume: V,
		cumulative: totalVolume.of({
			V_i: fluids.slice(0, i + 1).map((fluid) => fluid.V),
		}),
		density: ρ,
		rate: Q,
		time: times[i] ?? contactTime.of({ V, Q }),
		elapsed: totalTime.of({ t_i: times.slice(0, i + 1) }),
	}));
};
