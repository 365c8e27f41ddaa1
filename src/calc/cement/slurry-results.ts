import type { Known, KnownTable } from "../../cite/known.ts";
import type { CasingString, CementJob, Slurry, Well } from "../../well/well.ts";
import { holeMark } from "../depths/marks.ts";
import { maybe } from "../gaps.ts";
import type { SlurryResults } from "../results.ts";
import { annulusIntervals, annulusVolume } from "./annulus.ts";
import { totalVolume, volumeWithExcess } from "./capacity.ts";
import { workedSlurry } from "./designed-slurry.ts";
import { exactSacks, mixWater, sacks } from "./sacks.ts";
import { componentMass, densityFromYield } from "./slurry-design.ts";

/** What the slurry at the shoe fills besides the annulus. */
export interface AtShoe {
	readonly shoeTrack?: Known<"volume">;
	readonly rathole?: Known<"volume">;
}

/** One slurry: its volume by what surrounds the pipe, its sacks and its water. */
export const slurryResults = (
	well: Well,
	path: KnownTable,
	string: CasingString,
	job: CementJob,
	slurry: Slurry,
	atShoe: AtShoe,
): SlurryResults => {
	const intervals = annulusIntervals(well, string, job.volumeBasis, slurry.top, slurry.bottom);
	const open = volumeWithExcess.of({
		V: annulusVolume(intervals.filter((i) => i.surroundings === "open hole")),
		e: slurry.excess,
	});
	const cased = annulusVolume(intervals.filter((i) => i.surroundings === "cased"));
	const { shoeTrack, rathole } = atShoe;
	const volume = totalVolume.of({
		V_i: [open, cased, shoeTrack, rathole].filter((v) => v !== undefined),
	});
	const exact = exactSacks.of({ V: volume, y: slurry.yield });
	const whole = sacks.of({ n: exact });
	return {
		id: slurry.id,
		top: holeMark(path, slurry.top, well.datum),
		bottom: holeMark(path, slurry.bottom, well.datum),
		open_hole_volume: open,
		cased_volume: cased,
		...maybe("shoe_track_volume", shoeTrack),
		...maybe("rathole_volume", rathole),
		volume,
		sacks_exact: exact,
		sacks: whole,
		mix_water: mixWater.of({ n: whole, w: slurry.water }),
		components: componentMasses(slurry, whole),
		...maybe(
			"density_from_yield",
			slurry.design === undefined ? densityFromYield.of({ y: slurry.yield, w: slurry.water }) : undefined,
		),
	};
};

/** What to load of each component, for every sack. */
const componentMasses = (slurry: Slurry, n: Known<"count">): SlurryResults["components"] => {
	const masses = slurry.design && workedSlurry(slurry.design, slurry.density)?.masses;
	return (masses ?? []).map((m, i) => ({
		material: slurry.design?.components[i]?.material ?? "",
		mass: componentMass.of({ n, m }),
	}));
};
