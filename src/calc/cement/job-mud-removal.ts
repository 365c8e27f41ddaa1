import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { holeMark } from "../depths/marks.ts";
import { annulusFrictionGradient } from "../pressure/bingham-flow.ts";
import type { MudRemoval, StandoffResults } from "../results.ts";
import { inclinationAt } from "../trajectory/at-depth.ts";
import { annulusIntervals } from "./annulus.ts";
import type { JobContext } from "./cement-results.ts";
import type { Fluid } from "./job-train.ts";
import {
	channelIndex,
	densityStep,
	frictionStep,
	narrowSideDrive,
	narrowSideYield,
	turbulentRate,
} from "./mud-removal.ts";
import { profileDepth } from "./standoff.ts";

type Depth = Known<"measured-depth">;
type Flow = Pick<Fluid, "id" | "ρ"> & {
	readonly PV: Known<"plastic-viscosity">;
	readonly YP: Known<"yield-point">;
};

/** Stations of the profile: no closer than print can show, and few enough to be read. */
const STATIONS = 12;

/** Depths from the top of the cement to the shoe at which the standoff is worked, evenly, the shoe last. */
export const profileDepths = ({ string }: JobContext, top: Depth): readonly Depth[] => {
	const MD_top = top.value < string.top.value ? string.top : top;
	const n = constant("count", STATIONS, "stations of the standoff profile", cite("definition"));
	return Array.from({ length: STATIONS }, (_, i) =>
		profileDepth.of({
			MD_top,
			MD_shoe: string.shoe,
			i: constant("count", i + 1, "station of the standoff profile", cite("definition")),
			n,
		}),
	);
};

/** What displaces what at each place with a standoff: spacer after mud, first slurry after that; those with known flow. */
export const mudRemoval = (
	context: JobContext,
	places: readonly StandoffResults[],
	fluids: readonly Fluid[] | undefined,
): readonly MudRemoval[] => {
	const { string, well, path } = context;
	const mud = string.hole.fluid;
	if (mud?.density === undefined || fluids === undefined) return [];
	const inHole: Partial<Flow> = { id: "mud", ρ: mud.density, ...flow(mud.plasticViscosity, mud.yieldPoint) };
	const train = [inHole, ...fluids.filter(({ id }) => !/displacement$/u.test(id))];
	const Q = fluids.find(({ id }) => id === "displacement")?.Q;
	if (Q === undefined) return [];
	return places.flatMap((place) => {
		const md = place.at.md;
		const above = constant("measured-depth", md.value - 1, "just above the place", cite("definition"));
		const [around] = annulusIntervals(well, string, "gauge hole", above, md);
		if (around?.inner === undefined) return [];
		const [D, d] = [around.outer, around.inner];
		const S = place.between.value < place.at_centralizer.value ? place.between : place.at_centralizer;
		return train.slice(1).flatMap((behind, i): MudRemoval[] => {
			const [first, second] = [train[i], behind];
			if (!isFlow(first) || !isFlow(second)) return [];
			const gradientOf = ({ ρ, PV, YP }: Flow) => annulusFrictionGradient.of({ ρ, Q, PV, YP, D, d });
			const [G_1, G_2] = [gradientOf(first), gradientOf(second)];
			const x_ρ = densityStep.of({ x_1: first.ρ, x_2: second.ρ });
			const x_G = frictionStep.of({ x_1: G_1, x_2: G_2 });
			const Q_t = turbulentRate.of({ ρ: second.ρ, PV: second.PV, YP: second.YP, D, d });
			const G_y = narrowSideYield.of({ YP: first.YP, D, d, S });
			const drive = narrowSideDrive.of({
				G_2,
				ρ_1: first.ρ,
				ρ_2: second.ρ,
				I: inclinationAt(path, md),
				G_y,
			});
			const index = channelIndex.of({ x_ρ, x_G, drive, S, Q, Q_t });
			return [x_G, drive, index].every(({ value }) => Number.isFinite(value))
				? [
						{
							at_name: place.at_name,
							at: holeMark(path, md, well.datum),
							ahead: first.id,
							behind: second.id,
							standoff: S,
							density_step: x_ρ,
							friction_step: x_G,
							drive,
							rate: Q,
							turbulent_from: Q_t,
							index,
						},
					]
				: [];
		});
	});
};

const flow = (PV: Known<"plastic-viscosity"> | undefined, YP: Known<"yield-point"> | undefined) =>
	PV === undefined || YP === undefined ? {} : { PV, YP };

const isFlow = (fluid: Partial<Fluid> | undefined): fluid is Flow =>
	fluid?.PV !== undefined && fluid.YP !== undefined && fluid.ρ !== undefined;
