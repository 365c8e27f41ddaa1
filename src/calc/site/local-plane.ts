import { formula } from "../../cite/formula.ts";
import type { KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";

/** Direction in the north that the path's azimuths are counted from [°, 0 to 360]. */
export const azimuthFromPathNorth = formula({
	id: "site/azimuth-from-path-north",
	name: "Direction from the north of the well's azimuths",
	expression: "A = A_true − γ",
	source: cite("definition", "convergence or declination counted east of true north"),
	inputs: { A_true: "angle", γ: "angle" },
	gives: "angle",
	compute: ({ A_true, γ }) => (((A_true - γ) % 360) + 360) % 360,
});

const source = cite("geometry", "tangent plane at the wellhead: geodesic distance and azimuth kept");
const validity = "within some tens of miles of the wellhead";

/** [ft] */
export const northOfWellhead = formula({
	id: "site/north",
	name: "Distance north of the wellhead",
	expression: "N = s cos A",
	source,
	inputs: { s: "distance", A: "angle" },
	gives: "offset",
	validity,
	compute: ({ s, A }) => s * Math.cos((A * Math.PI) / 180),
});

/** [ft] */
export const eastOfWellhead = formula({
	id: "site/east",
	name: "Distance east of the wellhead",
	expression: "E = s sin A",
	source,
	inputs: { s: "distance", A: "angle" },
	gives: "offset",
	validity,
	compute: ({ s, A }) => s * Math.sin((A * Math.PI) / 180),
});

const nearestInputs = { path: { table: "path" }, N: "offset", E: "offset" } as const;
const nearestValidity = "in plan; the path taken straight between its stations";
const nearestSource = cite("geometry", "least distance from a point to a line of straight pieces");

/** Least horizontal distance to the well path [ft]. */
export const distanceToPath = formula({
	id: "site/distance-to-path",
	name: "Least horizontal distance to the well path",
	expression: "min over the path of √((N − N_path)² + (E − E_path)²)",
	source: nearestSource,
	inputs: nearestInputs,
	gives: "distance",
	validity: nearestValidity,
	compute: ({ path, N, E }) => nearest(path, N, E).distance,
});

/** Where along the hole it is nearest [ft]. */
export const nearestMeasuredDepth = formula({
	id: "site/nearest-measured-depth",
	name: "Measured depth where the well path is nearest in plan",
	expression: "MD at the least of √((N − N_path)² + (E − E_path)²)",
	source: nearestSource,
	inputs: nearestInputs,
	gives: "measured-depth",
	validity: nearestValidity,
	compute: ({ path, N, E }) => nearest(path, N, E).md,
});

/** The nearest point of a path; of equally near ones, as down a vertical hole, the shallowest. */
const nearest = (
	{ rows }: KnownTable,
	N: number,
	E: number,
): { readonly distance: number; readonly md: number } => {
	let best = { distance: Number.POSITIVE_INFINITY, md: Number.NaN };
	const of = (row: Readonly<Record<string, number>> | undefined, name: string) => row?.[name] ?? Number.NaN;
	for (const [i, row] of rows.entries()) {
		const next = rows[i + 1] ?? row;
		const [n, e] = [of(row, "north"), of(row, "east")];
		const [dn, de] = [of(next, "north") - n, of(next, "east") - e];
		const square = dn ** 2 + de ** 2;
		const along = square === 0 ? 0 : Math.min(1, Math.max(0, ((N - n) * dn + (E - e) * de) / square));
		const distance = Math.hypot(N - n - along * dn, E - e - along * de);
		if (distance < best.distance)
			best = { distance, md: of(row, "md") + along * (of(next, "md") - of(row, "md")) };
	}
	return best;
};
