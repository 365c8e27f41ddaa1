import { formula, tableFormula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { FOOT } from "../../units/factors.ts";
import { ELLIPSOIDS, geodesicOn, type HorizontalDatum } from "./ellipsoids.ts";

/*
 * Where a place of the path lies on the map: the way made good from the wellhead, laid off on the ellipsoid. Offsets are
 * taken as lengths on the ellipsoid: the scale of a grid and the height above the ellipsoid are left out, a few parts in
 * ten thousand at most.
 */

const source = cite("karney-2013", "direct geodesic problem");
const validity = "the wellhead in the datum named; offsets as lengths on the ellipsoid, no grid scale";
const inputs = { φ_0: "angle", λ_0: "angle", s: "length", A_true: "angle" } as const;

/** From the north that the path counts from, to true north [°, 0 to 360]. */
export const trueAzimuth = formula({
	id: "site/true-azimuth",
	name: "Direction from true north",
	expression: "A_true = A + γ",
	source: cite("definition", "convergence or declination counted east of true north"),
	inputs: { A: "angle", γ: "angle" },
	gives: "angle",
	compute: ({ A, γ }) => (((A + γ) % 360) + 360) % 360,
});

const direct = (datum: HorizontalDatum) => {
	const ellipsoid = geodesicOn(datum);
	return (φ: number, λ: number, azimuth: number, feet: number) => {
		const { lat2, lon2 } = ellipsoid.Direct(φ, λ, azimuth, feet * FOOT);
		return { latitude: lat2 ?? Number.NaN, longitude: lon2 ?? Number.NaN };
	};
};

const coordinateOn = (datum: HorizontalDatum, which: "latitude" | "longitude") => {
	const solve = direct(datum);
	return formula({
		id: `site/${which}-${datum.toLowerCase()}`,
		name: `${which === "latitude" ? "Latitude" : "Longitude"} of a place of the path, ${datum}`,
		expression: `end of a line of length s from the wellhead on the ${ELLIPSOIDS[datum].name} ellipsoid`,
		source,
		inputs,
		gives: "angle",
		validity,
		compute: ({ φ_0, λ_0, s, A_true }) => solve(φ_0, λ_0, A_true, s)[which],
	});
};

const stationPlacesOn = (datum: HorizontalDatum) => {
	const solve = direct(datum);
	return tableFormula({
		id: `site/station-places-${datum.toLowerCase()}`,
		name: `Latitude and longitude of the path's stations, ${datum}`,
		expression: `ends of lines of √(N² + E²) at atan2(E, N) + γ from the wellhead on the ${ELLIPSOIDS[datum].name} ellipsoid`,
		source,
		inputs: { path: { table: "path" }, φ_0: "angle", λ_0: "angle", γ: "angle" },
		gives: { md: "measured-depth", latitude: "angle", longitude: "angle" },
		validity,
		compute: ({ path, φ_0, λ_0, γ }) =>
			path.rows.map((row) => {
				const [N, E] = [row["north"] ?? Number.NaN, row["east"] ?? Number.NaN];
				const azimuth = (Math.atan2(E, N) * 180) / Math.PI + γ;
				return { md: row["md"] ?? Number.NaN, ...solve(φ_0, λ_0, azimuth, Math.hypot(N, E)) };
			}),
	});
};

export const latitudeNad83 = coordinateOn("NAD83", "latitude");
export const latitudeWgs84 = coordinateOn("WGS84", "latitude");
export const latitudeNad27 = coordinateOn("NAD27", "latitude");
export const longitudeNad83 = coordinateOn("NAD83", "longitude");
export const longitudeWgs84 = coordinateOn("WGS84", "longitude");
export const longitudeNad27 = coordinateOn("NAD27", "longitude");
export const stationPlacesNad83 = stationPlacesOn("NAD83");
export const stationPlacesWgs84 = stationPlacesOn("WGS84");
export const stationPlacesNad27 = stationPlacesOn("NAD27");

/** The end of a line from the wellhead, in a datum. */
export const PLACES = {
	NAD83: { latitude: latitudeNad83, longitude: longitudeNad83, stations: stationPlacesNad83 },
	WGS84: { latitude: latitudeWgs84, longitude: longitudeWgs84, stations: stationPlacesWgs84 },
	NAD27: { latitude: latitudeNad27, longitude: longitudeNad27, stations: stationPlacesNad27 },
} as const;
