import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { CasingString, CementJob, Slurry, Well } from "../../well/well.ts";
import { DATUM_DEPTH } from "../pressure/hydrostatic.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { pathStationsOf } from "../trajectory/path.ts";
import { annulusIntervals } from "./annulus.ts";
import { boreInterval, DATUM } from "./bore.ts";
import { volumeWithExcess } from "./capacity.ts";
import { pumpedThrough } from "./cement-results.ts";
import { middleOf, piecesBetween } from "./cuts.ts";

type Depth = Known<"measured-depth">;

/** The way of the fluids, as the placement takes it; with the annulus's own boundaries beside it. */
export interface JobWay {
	readonly inputs: {
		readonly D_pipe: readonly Known<"true-vertical-depth">[];
		readonly L_pipe: readonly Known<"length">[];
		readonly V_pipe: readonly Known<"volume">[];
		readonly d_pipe: readonly Known<"diameter">[];
		readonly V_below: Known<"volume">;
		readonly D_annulus: readonly Known<"true-vertical-depth">[];
		readonly L_annulus: readonly Known<"length">[];
		readonly V_annulus: readonly Known<"volume">[];
		readonly D_hole: readonly Known<"diameter">[];
		readonly d_inner: readonly Known<"diameter">[];
	};
	/** Boundaries of the annulus from its top down. */
	readonly boundaries: readonly Depth[];
}

const NOTHING = constant("volume", 0, "no hole below the shoe", cite("definition"));
const NO_PIPE = constant("diameter", 0, "no pipe in the bore", cite("definition"));

/** Cuts a curve often enough that depth is straight between cuts [degrees]. */
const TURN = 5;

/** Depths where the hole has turned by so much since the last one. */
const bends = (path: KnownTable): readonly Depth[] => {
	const found: Depth[] = [];
	let last = 0;
	for (const { md, inclination } of pathStationsOf(path)) {
		if (Math.abs(inclination - last) < TURN) continue;
		last = inclination;
		found.push(constant("measured-depth", md, "a station of the path", cite("definition")));
	}
	return found;
};

/**
 * The pipe down to where the fluids leave it, the shoe or a stage tool, and the annulus up to the datum, cut where anything changes.
 *
 * @param changes further depths to cut the annulus at: tops of rock, water zones
 */
export const jobWay = (
	well: Well,
	path: KnownTable,
	string: CasingString,
	job: CementJob,
	{
		outlet,
		rathole,
		changes,
	}: {
		readonly outlet: Depth;
		readonly rathole: Known<"volume"> | undefined;
		readonly changes: readonly Depth[];
	},
): JobWay => {
	const tvd = (md: Depth) => (md === DATUM ? DATUM_DEPTH : tvdAt(path, md));
	const turns = bends(path);
	const bores = pumpedThrough(string, outlet).flatMap((bore) =>
		piecesBetween(bore.top, bore.bottom, turns).map(([top, bottom]) =>
			boreInterval(top, bottom, bore.insideDiameter),
		),
	);
	const cuts = [...turns, ...changes, ...job.slurries.flatMap((slurry) => [slurry.top, slurry.bottom])];
	const pieces = piecesBetween(DATUM, outlet, cuts).flatMap(([top, bottom]) =>
		annulusIntervals(well, string, job.volumeBasis, top, bottom).map((interval) => ({
			...interval,
			filled:
				interval.surroundings === "open hole"
					? withExcess(job, interval.volume, middleOf([interval.top, interval.bottom]))
					: interval.volume,
			// The narrower gauge hole makes the greater friction.
			gauge:
				annulusIntervals(well, string, "gauge hole", interval.top, interval.bottom)[0]?.outer ??
				interval.outer,
		})),
	);
	const up = [...pieces].reverse();
	return {
		inputs: {
			D_pipe: [DATUM_DEPTH, ...bores.map(({ bottom }) => tvd(bottom))],
			L_pipe: bores.map(({ length }) => length),
			V_pipe: bores.map(({ volume }) => volume),
			d_pipe: bores.map(({ insideDiameter }) => insideDiameter),
			V_below: rathole ?? NOTHING,
			D_annulus: [...up.map(({ bottom }) => tvd(bottom)), tvd(DATUM)],
			L_annulus: up.map(({ length }) => length),
			V_annulus: up.map(({ filled }) => filled),
			D_hole: up.map(({ gauge }) => gauge),
			d_inner: up.map(({ inner }) => inner ?? NO_PIPE),
		},
		boundaries: [DATUM, ...pieces.map(({ bottom }) => bottom)],
	};
};

/** Open hole takes the excess of the slurry that is to stand there, so that each ends where the plan puts it. */
const withExcess = (job: CementJob, volume: Known<"volume">, at: number): Known<"volume"> => {
	const slurry: Slurry | undefined = job.slurries.find(
		({ top, bottom }) => at > top.value && at < bottom.value,
	);
	return slurry === undefined ? volume : volumeWithExcess.of({ V: volume, e: slurry.excess });
};
