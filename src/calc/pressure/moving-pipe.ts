import { formula, tableFormula } from "../../cite/formula.ts";
import type { KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { placeAt } from "../trajectory/at-depth.ts";
import { pathStationsOf } from "../trajectory/path.ts";
import { VELOCITY_CONSTANT } from "./bingham-flow.ts";
import { HYDROSTATIC_CONSTANT } from "./hydrostatic.ts";

/*
 * What moves the fluid of an annulus: the pumps, or pipe that is run or pulled. Pipe that moves drags fluid along with it,
 * so that it passes the wall faster than it is displaced; the clinging constant says by how much.
 */

/** Share of the pipe's speed that clings to it. */
export const clingingConstant = formula({
	id: "pressure/clinging-constant",
	name: "Clinging constant of pipe that moves",
	expression: "κ = 0.275 d/D + 0.25",
	source: cite("guo-liu-2011", "eq. 2.81, after Burkhardt's chart for laminar flow"),
	inputs: { D: "diameter", d: "diameter" },
	gives: "ratio",
	validity: "laminar flow; inner diameter less than outer",
	compute: ({ D, d }) => (d < D ? (0.275 * d) / D + 0.25 : Number.NaN),
});

/** Velocity past pipe that is closed at its foot [ft/s]. */
export const closedPipeVelocity = formula({
	id: "pressure/closed-pipe-velocity",
	name: "Annular velocity past closed pipe that moves",
	expression: "v = [κ + d² / (D² − d²)] v_p",
	source: cite("lapeyrouse", "ch. 5, surge and swab pressures; after Burkhardt 1961"),
	inputs: { κ: "ratio", D: "diameter", d: "diameter", v_p: "fluid-velocity" },
	gives: "fluid-velocity",
	validity: "closed pipe; inner diameter less than outer",
	compute: ({ κ, D, d, v_p }) => (d < D ? (κ + d ** 2 / (D ** 2 - d ** 2)) * v_p : Number.NaN),
});

/** The rate that would pass an annulus at a velocity [bbl/min]. */
export const rateOfVelocity = formula({
	id: "pressure/rate-of-velocity",
	name: "Rate through an annulus at a velocity",
	expression: "Q = v (D² − d²) / 17.157",
	source: cite("geometry"),
	inputs: { v: "fluid-velocity", D: "diameter", d: "diameter" },
	gives: "flow-rate",
	validity: "inner diameter less than outer",
	compute: ({ v, D, d }) => (d < D ? (v * (D ** 2 - d ** 2)) / VELOCITY_CONSTANT : Number.NaN),
});

/** Pressure lost in the nozzles of a bit [psi]. */
export const bitLoss = formula({
	id: "pressure/bit-loss",
	name: "Pressure loss through the bit",
	expression: "ΔP = 156.5 ρ Q² / (Σ N²)², gal/min, N in 32nds of an inch",
	source: cite("lapeyrouse", "ch. 4, hydraulics analysis (p. 170 in a read copy)"),
	inputs: { ρ: "density", Q: "flow-rate", N: { many: "diameter" } },
	gives: "pressure",
	validity: "one nozzle at least",
	compute: ({ ρ, Q, N }) => {
		const area = N.reduce<number>((sum, each) => sum + (32 * each) ** 2, 0);
		return area > 0 ? (156.5 * ρ * (42 * Q) ** 2) / area ** 2 : Number.NaN;
	},
});

/** Mud with what it carries out of the hole [lb/gal]. */
export const loadedDensity = formula({
	id: "pressure/loaded-density",
	name: "Density of mud with cuttings",
	expression: "ρ + Δρ",
	source: cite("definition"),
	inputs: { ρ: "density", Δρ: "density" },
	gives: "density",
	compute: ({ ρ, Δρ }) => ρ + Δρ,
});

const inputs = {
	path: { table: "path" },
	ρ: "density",
	MD_bottom: { many: "measured-depth" },
	G: { many: "pressure-gradient" },
} as const;

const gives = {
	md: "measured-depth",
	tvd: "true-vertical-depth",
	pressure: "pressure",
	density: "density",
} as const;

/** A row is worked at least so often [ft]. */
const STEP = 250;

interface Given {
	readonly path: KnownTable;
	readonly ρ: number;
	readonly MD_bottom: readonly number[];
	readonly G: readonly number[];
}

const column = ({ path, ρ, MD_bottom, G }: Given, sign: 1 | -1) => {
	if (G.length !== MD_bottom.length || !G.every(Number.isFinite)) return [];
	const stations = pathStationsOf(path);
	const end = MD_bottom.at(-1) ?? 0;
	const depths = [
		...new Set([
			...stations.map(({ md }) => md).filter((md) => md > 0 && md < end),
			...MD_bottom,
			...Array.from({ length: Math.floor(end / STEP) }, (_, i) => (i + 1) * STEP),
		]),
	]
		.filter((md) => md <= end)
		.sort((a, b) => a - b);
	let [loss, above, piece] = [0, 0, 0];
	return depths.flatMap((md) => {
		while (md > (MD_bottom[piece] ?? Number.POSITIVE_INFINITY)) piece += 1;
		loss += (G[piece] ?? Number.NaN) * (md - above);
		above = md;
		const tvd = placeAt(stations, md)?.tvd ?? Number.NaN;
		if (!(tvd > 0)) return [];
		const pressure = HYDROSTATIC_CONSTANT * ρ * tvd + sign * loss;
		return [{ md, tvd, pressure, density: pressure / (HYDROSTATIC_CONSTANT * tvd) }];
	});
};

const validity = "a gradient for each stretch, from the surface down; the hole full to the depth datum";

/** Pressure in an annulus whose fluid is moved up the hole: what rubs it adds to its weight. */
export const movingColumn = tableFormula({
	id: "pressure/moving-column",
	name: "Pressure along the annulus, fluid moving up",
	expression: "p = 0.052 ρ TVD + Σ G ΔMD from the surface down; as density p / (0.052 TVD)",
	source: cite("lapeyrouse", "ch. 1, equivalent circulating density"),
	inputs,
	gives,
	validity,
	compute: (given) => column(given, 1),
});

/** The same with pipe pulled out: what rubs takes from its weight. */
export const swabbedColumn = tableFormula({
	id: "pressure/swabbed-column",
	name: "Pressure along the annulus, pipe pulled",
	expression: "p = 0.052 ρ TVD − Σ G ΔMD from the surface down; as density p / (0.052 TVD)",
	source: cite("lapeyrouse", "ch. 5, surge and swab pressures"),
	inputs,
	gives,
	validity,
	compute: (given) => column(given, -1),
});

/** What the moving column amounts to at a depth [lb/gal]. */
export const columnDensityAt = formula({
	id: "pressure/column-density",
	name: "Equivalent density of the moving column",
	expression: "density at MD, between rows of the column",
	source: cite("definition"),
	inputs: { column: { table: "md, density" }, MD: "measured-depth" },
	gives: "density",
	validity: "MD within the column",
	compute: ({ column: { rows }, MD }) => {
		const after = rows.findIndex((row) => (row["md"] ?? Number.NaN) >= MD - 1e-6);
		const [low, high] = [rows[after - 1], rows[after]];
		if (high === undefined) return Number.NaN;
		const [from, to] = [low?.["md"] ?? high["md"] ?? 0, high["md"] ?? 0];
		const share = to > from ? (MD - from) / (to - from) : 1;
		const [a, b] = [low?.["density"] ?? high["density"] ?? 0, high["density"] ?? Number.NaN];
		return a + (b - a) * Math.min(1, share);
	},
});
