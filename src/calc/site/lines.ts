import { formula, tableFormula } from "../../cite/formula.ts";
import type { Known, KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { FOOT } from "../../units/factors.ts";
import { nearestOf, type PointOfHole, pointsOf } from "../trajectory/approach.ts";
import { ELLIPSOIDS, geodesicOn, type HorizontalDatum } from "./ellipsoids.ts";

/*
 * Lines on the ground, given by their corners: a road, a stream, the line of a lease or a unit. Between two corners a line
 * runs straight in the plane that touches the ground at the wellhead.
 */

/** Columns of a line's corners, in its datum. */
const CORNER_COLUMNS = { latitude: "angle", longitude: "angle" } as const;

const lineOn = (datum: HorizontalDatum) => {
	const ellipsoid = geodesicOn(datum);
	return tableFormula({
		id: `site/line-${datum.toLowerCase()}`,
		name: `Corners of a line from the wellhead, ${datum}`,
		expression: `N = s cos(A_true − γ), E = s sin(A_true − γ), s and A_true of the shortest line to each corner on the ${ELLIPSOIDS[datum].name} ellipsoid`,
		source: cite("karney-2013", "inverse geodesic problem"),
		inputs: { corners: { table: "corners" }, φ_0: "angle", λ_0: "angle", γ: "angle" },
		gives: { north: "offset", east: "offset" },
		validity: "within some tens of miles of the wellhead; all in one datum",
		compute: ({ corners, φ_0, λ_0, γ }) =>
			corners.rows.map((corner) => {
				const found = ellipsoid.Inverse(
					φ_0,
					λ_0,
					corner["latitude"] ?? Number.NaN,
					corner["longitude"] ?? Number.NaN,
				);
				const s = (found.s12 ?? Number.NaN) / FOOT;
				const A = (((found.azi1 ?? Number.NaN) - γ) * Math.PI) / 180;
				return { north: s * Math.cos(A), east: s * Math.sin(A) };
			}),
	});
};

export const lineNad83 = lineOn("NAD83");
export const lineWgs84 = lineOn("WGS84");
export const lineNad27 = lineOn("NAD27");

/** Corners of a line as offsets from the wellhead, in a datum. */
export const LINES = { NAD83: lineNad83, WGS84: lineWgs84, NAD27: lineNad27 } as const;

const source = cite("geometry", "least distance between straight pieces");
const validity = "in plan; straight between corners and between points of the path";

/** The corners in plan, as points of a line, each with its way along it. */
const inPlan = ({ rows }: KnownTable): readonly PointOfHole[] => {
	let md = 0;
	return rows.map(({ north = Number.NaN, east = Number.NaN }, i) => {
		const before = rows[i - 1];
		if (before !== undefined)
			md += Math.hypot(north - (before["north"] ?? Number.NaN), east - (before["east"] ?? Number.NaN));
		return { md, at: [north, east, 0] };
	});
};

const WELLHEAD: readonly PointOfHole[] = [{ md: 0, at: [0, 0, 0] }];

/** Least horizontal distance from the wellhead to a line [ft]. */
export const wellheadToLine = formula({
	id: "site/wellhead-to-line",
	name: "Least horizontal distance from the wellhead to a line",
	expression: "min over the line of √(N² + E²)",
	source,
	inputs: { line: { table: "line" } },
	gives: "distance",
	validity,
	compute: ({ line }) => nearestOf(WELLHEAD, inPlan(line)).distance,
});

/** Least horizontal distance from the well path to a line; none where it crosses [ft]. */
export const pathToLine = formula({
	id: "site/path-to-line",
	name: "Least horizontal distance from the well path to a line",
	expression: "min over path and line of √(ΔN² + ΔE²)",
	source,
	inputs: { path: { table: "path" }, line: { table: "line" } },
	gives: "distance",
	validity,
	compute: ({ path, line }) =>
		nearestOf(
			pointsOf(path).map(({ md, at: [north, east] }) => ({ md, at: [north, east, 0] })),
			inPlan(line),
		).distance,
});

/** A line by its corners as written. */
export const cornersOf = (
	corners: readonly { readonly latitude: Known<"angle">; readonly longitude: Known<"angle"> }[],
	at: readonly (string | number)[],
): KnownTable<"latitude" | "longitude"> => ({
	columns: CORNER_COLUMNS,
	rows: corners.map(({ latitude, longitude }) => ({ latitude: latitude.value, longitude: longitude.value })),
	from: {
		kind: "definition",
		at,
		text: corners.map(({ latitude, longitude }) => `${latitude.value}, ${longitude.value}`).join("; "),
	},
});
