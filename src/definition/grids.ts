import proj4 from "proj4";

/*
 * Grids that plats and permits give places on: the zones of the State Plane Coordinate System of 1983 of states with oil
 * and gas, and UTM. A zone has two EPSG codes, one in feet and one in meters, and one projection; figures carry their own
 * unit here, so that either code names it.
 *
 * Parameters: NOAA Manual NOS NGS 5, State Plane Coordinate System of 1983, appendix A, as the EPSG registry has them.
 */

/** Code in feet, code in meters, and projection: of `lcc` lat_0 lon_0 lat_1 lat_2 x_0 y_0 [°, m], of `tmerc` lat_0 lon_0 k x_0 y_0. */
const STATE_PLANE: readonly (readonly [feet: number, meters: number, projection: string])[] = [
	// Arkansas North
	[3433, 26951, "lcc 34.3333333333333 -92 36.2333333333333 34.9333333333333 400000 0"],
	// Arkansas South
	[3434, 26952, "lcc 32.6666666666667 -92 34.7666666666667 33.3 400000 400000"],
	// Colorado Central
	[2232, 26954, "lcc 37.8333333333333 -105.5 39.75 38.45 914401.8289 304800.6096"],
	// Colorado North
	[2231, 26953, "lcc 39.3333333333333 -105.5 40.7833333333333 39.7166666666667 914401.8289 304800.6096"],
	// Colorado South
	[2233, 26955, "lcc 36.6666666666667 -105.5 38.4333333333333 37.2333333333333 914401.8289 304800.6096"],
	// Kansas North
	[3419, 26977, "lcc 38.3333333333333 -98 39.7833333333333 38.7166666666667 400000 0"],
	// Kansas South
	[3420, 26978, "lcc 36.6666666666667 -98.5 38.5666666666667 37.2666666666667 400000 400000"],
	// Louisiana North
	[3451, 26981, "lcc 30.5 -92.5 32.6666666666667 31.1666666666667 1000000 0"],
	// Louisiana South
	[3452, 26982, "lcc 28.5 -91.3333333333333 30.7 29.3 1000000 0"],
	// Montana
	[2256, 32100, "lcc 44.25 -109.5 49 45 600000 0"],
	// New Mexico Central
	[2258, 32113, "tmerc 31 -106.25 0.9999 500000 0"],
	// New Mexico East
	[2257, 32112, "tmerc 31 -104.333333333333 0.999909091 165000 0"],
	// New Mexico West
	[2259, 32114, "tmerc 31 -107.833333333333 0.999916667 830000 0"],
	// North Dakota North
	[2265, 32120, "lcc 47 -100.5 48.7333333333333 47.4333333333333 600000 0"],
	// North Dakota South
	[2266, 32121, "lcc 45.6666666666667 -100.5 47.4833333333333 46.1833333333333 600000 0"],
	// Ohio North
	[3734, 32122, "lcc 39.6666666666667 -82.5 41.7 40.4333333333333 600000 0"],
	// Ohio South
	[3735, 32123, "lcc 38 -82.5 40.0333333333333 38.7333333333333 600000 0"],
	// Oklahoma North
	[2267, 32124, "lcc 35 -98 36.7666666666667 35.5666666666667 600000 0"],
	// Oklahoma South
	[2268, 32125, "lcc 33.3333333333333 -98 35.2333333333333 33.9333333333333 600000 0"],
	// Pennsylvania North
	[2271, 32128, "lcc 40.1666666666667 -77.75 41.95 40.8833333333333 600000 0"],
	// Pennsylvania South
	[2272, 32129, "lcc 39.3333333333333 -77.75 40.9666666666667 39.9333333333333 600000 0"],
	// Texas Central
	[2277, 32139, "lcc 29.6666666666667 -100.333333333333 31.8833333333333 30.1166666666667 700000 3000000"],
	// Texas North
	[2275, 32137, "lcc 34 -101.5 36.1833333333333 34.65 200000 1000000"],
	// Texas North Central
	[2276, 32138, "lcc 31.6666666666667 -98.5 33.9666666666667 32.1333333333333 600000 2000000"],
	// Texas South
	[2279, 32141, "lcc 25.6666666666667 -98.5 27.8333333333333 26.1666666666667 300000 5000000"],
	// Texas South Central
	[2278, 32140, "lcc 27.8333333333333 -99 30.2833333333333 28.3833333333333 600000 4000000"],
	// Utah Central
	[3566, 32143, "lcc 38.3333333333333 -111.5 40.65 39.0166666666667 500000 2000000"],
	// Utah North
	[3560, 32142, "lcc 40.3333333333333 -111.5 41.7833333333333 40.7166666666667 500000 1000000"],
	// Utah South
	[3567, 32144, "lcc 36.6666666666667 -111.5 38.35 37.2166666666667 500000 3000000"],
	// West Virginia North
	[26853, 32150, "lcc 38.5 -79.5 40.25 39 600000 0"],
	// West Virginia South
	[26854, 32151, "lcc 37 -81 38.8833333333333 37.4833333333333 600000 0"],
	// Wyoming East
	[3736, 32155, "tmerc 40.5 -105.166666666667 0.9999375 200000 0"],
	// Wyoming East Central
	[3737, 32156, "tmerc 40.5 -107.333333333333 0.9999375 400000 100000"],
	// Wyoming West
	[3739, 32158, "tmerc 40.5 -110.083333333333 0.9999375 800000 100000"],
	// Wyoming West Central
	[3738, 32157, "tmerc 40.5 -108.75 0.9999375 600000 0"],
];

const PARAMETERS: Readonly<Record<string, readonly string[]>> = {
	lcc: ["lat_0", "lon_0", "lat_1", "lat_2", "x_0", "y_0"],
	tmerc: ["lat_0", "lon_0", "k", "x_0", "y_0"],
};

/** Where UTM is used under each datum: first EPSG code of zone 1 north, and the ellipsoid. */
const UTM = [
	{ datum: "NAD83", base: 26900, ellipsoid: "GRS80" },
	{ datum: "NAD27", base: 26700, ellipsoid: "clrk66" },
	{ datum: "WGS84", base: 32600, ellipsoid: "WGS84" },
] as const;

/** Zones of the contiguous states and Alaska. */
const UTM_ZONES = Array.from({ length: 19 }, (_, i) => i + 1);

type GridDatum = (typeof UTM)[number]["datum"];

interface Grid {
	readonly datum: GridDatum;
	/** Without a datum: the place stays on that of the grid. */
	readonly projection: string;
}

const GRIDS: ReadonlyMap<string, Grid> = new Map([
	...STATE_PLANE.flatMap(([feet, meters, written]) => {
		const [kind = "", ...values] = written.split(" ");
		const parameters = (PARAMETERS[kind] ?? []).map((name, i) => `+${name}=${values[i]}`).join(" ");
		const grid: Grid = { datum: "NAD83", projection: `+proj=${kind} ${parameters} +ellps=GRS80 +units=m` };
		return [[`EPSG:${feet}`, grid] as const, [`EPSG:${meters}`, grid] as const];
	}),
	...UTM.flatMap(({ datum, base, ellipsoid }) =>
		UTM_ZONES.map(
			(zone) =>
				[
					`EPSG:${base + zone}`,
					{ datum, projection: `+proj=utm +zone=${zone} +ellps=${ellipsoid} +units=m` },
				] as const,
		),
	),
]);

/** Codes that a grid may be named by. */
export const GRID_CODES: readonly string[] = [...GRIDS.keys()];

interface PlaceOnEarth {
	readonly latitude: number;
	readonly longitude: number;
	readonly datum: GridDatum;
}

/**
 * A place on a grid as latitude and longitude on the datum of that grid.
 *
 * @param code one of `GRID_CODES`
 * @param easting [m]
 * @param northing [m]
 * @returns [°]; nothing for an unknown grid, or a place off the projection
 */
export const placeOnGrid = (code: string, easting: number, northing: number): PlaceOnEarth | undefined => {
	const grid = GRIDS.get(code);
	if (grid === undefined) return undefined;
	const [longitude = Number.NaN, latitude = Number.NaN] = proj4(grid.projection).inverse([easting, northing]);
	return Number.isFinite(latitude) && Number.isFinite(longitude) && Math.abs(latitude) <= 90
		? { latitude, longitude, datum: grid.datum }
		: undefined;
};
