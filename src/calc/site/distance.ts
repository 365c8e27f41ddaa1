import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { FOOT } from "../../units/factors.ts";
import { ELLIPSOIDS, geodesicOn, type HorizontalDatum } from "./ellipsoids.ts";

const inputs = { φ_1: "angle", λ_1: "angle", φ_2: "angle", λ_2: "angle" } as const;
const validity = "both places in one datum, degrees, north and east positive; heights are left out";

const inverse = (datum: HorizontalDatum) => {
	const ellipsoid = geodesicOn(datum);
	return (φ1: number, λ1: number, φ2: number, λ2: number) => ellipsoid.Inverse(φ1, λ1, φ2, λ2);
};

const distanceOn = (datum: HorizontalDatum) => {
	const solve = inverse(datum);
	return formula({
		id: `site/distance-${datum.toLowerCase()}`,
		name: `Horizontal distance, ${datum}`,
		expression: `shortest line between two places on the ${ELLIPSOIDS[datum].name} ellipsoid`,
		source: cite("karney-2013", "inverse geodesic problem"),
		inputs,
		gives: "distance",
		validity,
		compute: ({ φ_1, λ_1, φ_2, λ_2 }) => (solve(φ_1, λ_1, φ_2, λ_2).s12 ?? Number.NaN) / FOOT,
	});
};

const azimuthOn = (datum: HorizontalDatum) => {
	const solve = inverse(datum);
	return formula({
		id: `site/azimuth-${datum.toLowerCase()}`,
		name: `Direction from true north, ${datum}`,
		expression: `azimuth at the first place of the shortest line on the ${ELLIPSOIDS[datum].name} ellipsoid`,
		source: cite("karney-2013", "inverse geodesic problem"),
		inputs,
		gives: "angle",
		validity,
		compute: ({ φ_1, λ_1, φ_2, λ_2 }) => ((solve(φ_1, λ_1, φ_2, λ_2).azi1 ?? Number.NaN) + 360) % 360,
	});
};

export const distanceNad83 = distanceOn("NAD83");
export const distanceWgs84 = distanceOn("WGS84");
export const distanceNad27 = distanceOn("NAD27");
export const azimuthNad83 = azimuthOn("NAD83");
export const azimuthWgs84 = azimuthOn("WGS84");
export const azimuthNad27 = azimuthOn("NAD27");

/** The geodesic on a datum's ellipsoid. */
export const GEODESICS = {
	NAD83: { distance: distanceNad83, azimuth: azimuthNad83 },
	WGS84: { distance: distanceWgs84, azimuth: azimuthWgs84 },
	NAD27: { distance: distanceNad27, azimuth: azimuthNad27 },
} as const;
