import geodesic from "geographiclib-geodesic";

/** Ellipsoid of each horizontal datum: equatorial radius [m] and inverse flattening. */
export const ELLIPSOIDS = {
	NAD83: { name: "GRS 80", a: 6_378_137, inverseFlattening: 298.257222101 },
	WGS84: { name: "WGS 84", a: 6_378_137, inverseFlattening: 298.257223563 },
	NAD27: { name: "Clarke 1866", a: 6_378_206.4, inverseFlattening: 294.978698214 },
} as const;
export type HorizontalDatum = keyof typeof ELLIPSOIDS;

/** Geodesics on a datum's ellipsoid. */
export const geodesicOn = (datum: HorizontalDatum) => {
	const { a, inverseFlattening } = ELLIPSOIDS[datum];
	return new geodesic.Geodesic.Geodesic(a, 1 / inverseFlattening);
};
