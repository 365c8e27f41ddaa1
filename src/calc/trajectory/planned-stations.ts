import { tableFormula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { quantity } from "../../units/quantity.ts";
import { arcPoint, arcStep, type Station } from "./arc.ts";
import { holdInclination, holdLength, lengthOfBuild } from "./plan-geometry.ts";

/** Columns of planned or surveyed stations. */
export const STATION_COLUMNS = {
	md: "measured-depth",
	inclination: "angle",
	azimuth: "angle",
} as const;

/** Stations stand no further apart than this along a plan [ft]. */
const SPACING = 100;
/** No station nearer to the end of a piece than this [ft]: it would print as the same depth. */
const SLIVER = 1;

const source = cite("geometry", "a plan is an exact list of arcs and straights");

/**
 * Stations from the datum through the ends of each piece: both ends, and every whole hundred feet between them, where
 * the arc stands. Each piece is one circular arc (or straight) in space.
 */
const stationsAlong = (start: Station, ends: readonly Station[]): readonly Station[] => {
	const stations: Station[] = [start];
	let from = start;
	for (const to of ends) {
		if (to.md < from.md) return [];
		if (to.md === from.md) continue;
		if (!Number.isFinite(arcStep(from, to)[2])) return [];
		for (let md = (Math.floor(from.md / SPACING) + 1) * SPACING; md < to.md; md += SPACING) {
			if (md - from.md < SLIVER || to.md - md < SLIVER) continue;
			const { inclination, azimuth } = arcPoint(from, to, md - from.md);
			stations.push({ md, inclination, azimuth });
		}
		stations.push(to);
		from = to;
	}
	return stations.every((s) => Number.isFinite(s.md + s.inclination + s.azimuth)) ? stations : [];
};

const surface = (azimuth: number): Station => ({
	md: 0,
	inclination: 0,
	azimuth,
});

export const verticalStations = tableFormula({
	id: "trajectory/vertical-stations",
	name: "Planned stations: vertical hole",
	expression: "I = 0 to TD",
	source,
	inputs: { TD: "measured-depth" },
	gives: STATION_COLUMNS,
	compute: ({ TD }) => stationsAlong(surface(0), [{ ...surface(0), md: TD }]),
});

export const buildAndLandStations = tableFormula({
	id: "trajectory/build-and-land-stations",
	name: "Planned stations: build and land",
	expression: "vertical to KOP; arc at B to I_L; straight for L; all at azimuth A",
	source,
	inputs: {
		KOP: "measured-depth",
		B: "dogleg",
		A: "angle",
		I_L: "angle",
		L: "length",
	},
	gives: STATION_COLUMNS,
	validity: "KOP ≥ 0, B > 0, 0 < I_L < 180°, L ≥ 0",
	compute: ({ KOP, B, A, I_L, L }) => {
		if (!(KOP >= 0 && B > 0 && I_L > 0 && I_L < 180 && L >= 0)) return [];
		const landing = KOP + lengthOfBuild(0, I_L, B);
		return stationsAlong(surface(A), [
			{ md: KOP, inclination: 0, azimuth: A },
			{ md: landing, inclination: I_L, azimuth: A },
			{ md: landing + L, inclination: I_L, azimuth: A },
		]);
	},
});

export const buildAndHoldStations = tableFormula({
	id: "trajectory/build-and-hold-stations",
	name: "Planned stations: build and hold to a target",
	expression:
		"vertical to KOP; arc at B to θ; straight for √((R−X)² + Z² − R²), Z = TVD − KOP; all at azimuth A",
	source: cite("bourgoyne-1986", "ch. 8, build-and-hold"),
	inputs: {
		KOP: "measured-depth",
		B: "dogleg",
		A: "angle",
		TVD: "true-vertical-depth",
		X: "length",
	},
	gives: STATION_COLUMNS,
	validity: "KOP ≥ 0, B > 0; the target outside the arc and reached before 90°",
	compute: ({ KOP, B, A, TVD, X }) => {
		if (!(KOP >= 0 && B > 0)) return [];
		const geometry = {
			R: quantity("length", 18_000 / Math.PI / B),
			Z: quantity("offset", TVD - KOP),
			X,
		};
		const θ = holdInclination.compute(geometry) as number;
		const hold = holdLength.compute(geometry) as number;
		const built = KOP + lengthOfBuild(0, θ, B);
		if (!Number.isFinite(built + hold)) return [];
		return stationsAlong(surface(A), [
			{ md: KOP, inclination: 0, azimuth: A },
			{ md: built, inclination: θ, azimuth: A },
			{ md: built + hold, inclination: θ, azimuth: A },
		]);
	},
});

export const segmentStations = tableFormula({
	id: "trajectory/segment-stations",
	name: "Planned stations: segments",
	expression:
		"each segment one arc (or straight) of its length, from where the one before ended to its own I and A",
	source,
	inputs: { L: { many: "length" }, I: { many: "angle" }, A: { many: "angle" } },
	gives: STATION_COLUMNS,
	validity: "as many inclinations and azimuths as lengths; each dogleg below 180°",
	compute: ({ L, I, A }) => {
		const ends: Station[] = [];
		for (const [i, length] of L.entries())
			ends.push({
				md: (ends.at(-1)?.md ?? 0) + length,
				inclination: I[i] ?? Number.NaN,
				azimuth: A[i] ?? Number.NaN,
			});
		return ends.length === 0 ? [] : stationsAlong(surface(A[0] ?? 0), ends);
	},
});
