import { formula, tableFormula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { pipeCapacity } from "../cement/capacity.ts";
import { columnPressure } from "../pressure/hydrostatic.ts";
import { placeAt } from "../trajectory/at-depth.ts";
import { pathStationsOf } from "../trajectory/path.ts";
import { frictionOver } from "./friction-over.ts";
import { perforationFriction } from "./treating-pressure.ts";

/** The last bits of a depth: a fluid over less than this is not there [ft]. */
const SLIVER = 1e-6;

/** A length of bore, from the surface down. */
interface Bore {
	readonly md_top: number;
	readonly md_bottom: number;
	readonly diameter: number;
}

/** What one step pumps, in order. */
interface Batch {
	readonly slurry: number;
	readonly rate: number;
	readonly density: number;
	/** Proppant in it. */
	readonly mass: number;
}

/** A fluid between two depths of the casing. */
interface Slug {
	readonly top: number;
	readonly bottom: number;
	readonly density: number;
}

/** The bores from the surface to the uppermost cluster, as a table. */
export const boresDown = tableFormula({
	id: "stimulation/bores-down",
	name: "Bores from the surface to the uppermost cluster",
	expression: "each bore with its top, bottom and diameter",
	source: cite("definition"),
	inputs: {
		MD_top: { many: "measured-depth" },
		MD_bottom: { many: "measured-depth" },
		d: { many: "diameter" },
	},
	gives: { md_top: "measured-depth", md_bottom: "measured-depth", diameter: "diameter" },
	compute: ({ MD_top, MD_bottom, d }) =>
		d.map((diameter, i) => ({
			md_top: MD_top[i] ?? Number.NaN,
			md_bottom: MD_bottom[i] ?? Number.NaN,
			diameter,
		})),
});

/** The steps of a stage in the order pumped, as a table. */
export const stepsPumped = tableFormula({
	id: "stimulation/steps-pumped",
	name: "Steps in the order pumped",
	expression: "each step with its slurry, rate, density and proppant",
	source: cite("definition"),
	inputs: {
		V_s: { many: "volume" },
		Q: { many: "flow-rate" },
		ρ: { many: "density" },
		m: { many: "mass" },
	},
	gives: { slurry: "volume", rate: "flow-rate", density: "density", mass: "mass" },
	compute: ({ V_s, Q, ρ, m }) =>
		V_s.map((slurry, i) => ({
			slurry,
			rate: Q[i] ?? Number.NaN,
			density: ρ[i] ?? Number.NaN,
			mass: m[i] ?? Number.NaN,
		})),
});

/** How many times inside a step the pressure is worked, besides at its ends and as each fluid reaches the rock. */
const WITHIN_STEP = 3;

/**
 * The surface pressure while a stage is pumped: at the ends of each step, within it, and as each fluid reaches the rock.
 *
 * The column is slug on slug in the order pumped, base fluid below the first; proppant changes its density and not its
 * viscosity. The discharge coefficient goes from fresh to worn with the proppant that has passed the perforations.
 */
export const stageCourse = tableFormula({
	id: "stimulation/stage-course",
	name: "Surface pressure through a stage",
	expression:
		"P_s = P_frac − Σ 0.052 ρ_i ΔD_i + Σ ΔP_pipe,i + ΔP_perf(C_d) + ΔP_nwb, C_d = C_1 + (C_2 − C_1) m / m_t",
	source: cite("guo-2007", "surface pressure, step by step along the column of what has been pumped"),
	inputs: {
		bores: { table: "bores from the surface to the uppermost cluster" },
		batches: { table: "steps in the order pumped" },
		path: { table: "path" },
		P_frac: "pressure",
		ΔP_nwb: "pressure",
		ρ_0: "density",
		μ: "plastic-viscosity",
		ε: "diameter",
		DR: "share",
		N: "count",
		d: "diameter",
		C_1: "ratio",
		C_2: "ratio",
	},
	gives: {
		step: "count",
		slurry: "volume",
		time: "duration",
		rate: "flow-rate",
		hydrostatic: "pressure",
		pipe_friction: "pressure",
		perforation_friction: "pressure",
		surface: "pressure",
	},
	validity: "steady flow at each moment; fracturing pressure held at its stated value throughout",
	compute: (given) => {
		const bores = given.bores.rows as unknown as readonly Bore[];
		const batches = given.batches.rows as unknown as readonly Batch[];
		const stations = pathStationsOf(given.path);
		const tvd = (md: number): number => placeAt(stations, md)?.tvd ?? Number.NaN;
		const pipe = bores.reduce((sum, bore) => sum + boreBarrels(bore), 0);
		const starts = batches.map((_, i) => batches.slice(0, i).reduce((sum, b) => sum + b.slurry, 0));
		const times = batches.map((_, i) => batches.slice(0, i).reduce((sum, b) => sum + b.slurry / b.rate, 0));
		const allMass = batches.reduce((sum, b) => sum + b.mass, 0);
		return batches.flatMap((batch, i) => {
			const start = starts[i] ?? 0;
			return moments(
				start,
				start + batch.slurry,
				starts.map((v) => v + pipe),
			).map((slurry) => {
				const slugs = columnOf(bores, batches, starts, slurry, i, given.ρ_0);
				const hydrostatic = slugs.reduce(
					(sum, { top, bottom, density }) =>
						sum +
						Number(columnPressure.compute({ ρ: density, D_top: tvd(top), D_bottom: tvd(bottom) } as never)),
					0,
				);
				const friction = slugs.reduce(
					(sum, slug) => sum + frictionOfSlug(slug, bores, { ...given, Q: batch.rate }),
					0,
				);
				const passed = massBefore(batches, starts, slurry - pipe);
				const discharge = given.C_1 + (given.C_2 - given.C_1) * (allMass > 0 ? passed / allMass : 0);
				const perforating = Number(
					perforationFriction.compute({
						Q: batch.rate,
						ρ: slugs.at(-1)?.density ?? given.ρ_0,
						N: given.N,
						d: given.d,
						C_d: discharge,
					} as never),
				);
				return {
					step: i + 1,
					slurry,
					time: (times[i] ?? 0) + (slurry - start) / batch.rate,
					rate: batch.rate,
					hydrostatic,
					pipe_friction: friction,
					perforation_friction: perforating,
					surface: given.P_frac - hydrostatic + friction + perforating + given.ΔP_nwb,
				};
			});
		});
	},
});

const capacityOf = (d: number): number => Number(pipeCapacity.compute({ d } as never));
const boreBarrels = ({ md_top, md_bottom, diameter }: Bore): number =>
	capacityOf(diameter) * (md_bottom - md_top);

const moments = (start: number, end: number, arrivals: readonly number[]): readonly number[] => {
	const within = Array.from(
		{ length: WITHIN_STEP },
		(_, k) => start + ((k + 1) / (WITHIN_STEP + 1)) * (end - start),
	);
	const all = [start, ...within, ...arrivals.filter((v) => v > start && v < end), end];
	return [...new Set(all)].sort((a, b) => a - b);
};

/** What stands in the casing when a volume of slurry has been pumped, from the surface down. */
const columnOf = (
	bores: readonly Bore[],
	batches: readonly Batch[],
	starts: readonly number[],
	pumped: number,
	current: number,
	base: number,
): readonly Slug[] => {
	const slugs: { to: number; density: number }[] = [];
	for (let i = current; i >= 0; i--)
		slugs.push({ to: pumped - (starts[i] ?? 0), density: batches[i]?.density ?? base });
	slugs.push({ to: Number.POSITIVE_INFINITY, density: base });
	let top = bores[0]?.md_top ?? 0;
	const end = bores.at(-1)?.md_bottom ?? top;
	return slugs.flatMap(({ to, density }) => {
		const bottom = Math.min(depthOfBarrels(bores, to), end);
		if (bottom - top < SLIVER) return [];
		const slug = { top, bottom, density };
		top = bottom;
		return [slug];
	});
};

/** The depth to which a volume fills the casing from the surface; past the last bore, its bottom. */
const depthOfBarrels = (bores: readonly Bore[], barrels: number): number => {
	let left = barrels;
	for (const bore of bores) {
		const holds = boreBarrels(bore);
		if (left < holds) return bore.md_top + left / capacityOf(bore.diameter);
		left -= holds;
	}
	return bores.at(-1)?.md_bottom ?? 0;
};

const frictionOfSlug = (
	{ top, bottom, density }: Slug,
	bores: readonly Bore[],
	{ Q, μ, ε, DR }: { readonly Q: number; readonly μ: number; readonly ε: number; readonly DR: number },
): number =>
	bores.reduce((sum, bore) => {
		const length = Math.min(bottom, bore.md_bottom) - Math.max(top, bore.md_top);
		return length > 0 ? sum + frictionOver({ ρ: density, Q, d: bore.diameter, L: length, μ, ε, DR }) : sum;
	}, 0);

/** Proppant in the first barrels pumped. */
const massBefore = (batches: readonly Batch[], starts: readonly number[], volume: number): number =>
	batches.reduce((sum, { slurry, mass }, i) => {
		const passed = Math.min(Math.max(volume - (starts[i] ?? 0), 0), slurry);
		return slurry > 0 ? sum + (mass * passed) / slurry : sum;
	}, 0);

/** The greatest surface pressure over a stage [psi]. */
export const greatestSurfacePressure = formula({
	id: "stimulation/greatest-surface-pressure",
	name: "Greatest surface pressure through a stage",
	expression: "max P_s",
	source: cite("definition"),
	inputs: { course: { table: "course of the stage" } },
	gives: "pressure",
	validity: "at least one moment",
	compute: ({ course }) =>
		course.rows.length === 0
			? Number.NaN
			: course.rows.reduce(
					(most, row) => Math.max(most, row["surface"] ?? Number.NaN),
					Number.NEGATIVE_INFINITY,
				),
});

/** Proppant left in the casing when the perforations pack off with the richest slurry in it [lb]. */
export const proppantInPipe = formula({
	id: "stimulation/proppant-in-pipe",
	name: "Proppant in the casing at a screen-out",
	expression: "m = 42 V c",
	source: cite("conservation", "the casing full of the richest slurry"),
	inputs: { V: "volume", c: "proppant-concentration" },
	gives: "mass",
	validity: "c in lb of proppant per gallon of slurry",
	compute: ({ V, c }) => 42 * V * c,
});

/** Room between what is expected and the first kickout [psi]; negative where there is none. */
export const roomBelow = formula({
	id: "stimulation/room-below",
	name: "Room below a limit",
	expression: "Δp = p_limit − p",
	source: cite("definition"),
	inputs: { p_limit: "pressure", p: "pressure" },
	gives: "pressure-difference",
	compute: ({ p_limit, p }) => p_limit - p,
});
