import { tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { quantity } from "../../../units/quantity.ts";
import { bumpForce } from "../axial.ts";
import { collapseUnderTension, equivalentExternalPressure } from "../collapse-under-load.ts";
import { areaOf, yieldAtTemperature } from "../pipe-body.ts";
import { greatestTriaxialStress } from "../triaxial.ts";
import { forceAt } from "./axial-force.ts";
import { profileAt } from "./profiles.ts";
import { type LoadStation, loadStations } from "./stations.ts";

/*
 * Each line lays a load beside the rating it is compared with, depth by depth. Ratings are those of worn pipe at the
 * rock's temperature.
 */

const common = {
	path: { table: "path" },
	sections: { table: "sections" },
	temperature: { table: "temperature" },
	r: "share-per-temperature",
} as const;

const pressures = { inside: { table: "pressure" }, outside: { table: "pressure" } } as const;
const DEPTHS = { md: "measured-depth", tvd: "true-vertical-depth" } as const;

type Row = { readonly md: number; readonly tvd: number; readonly load: number; readonly rating: number };

/** A line holds whole or not at all: a rating outside its formula's validity leaves no line. */
const whole = (rows: readonly Row[]): readonly Row[] =>
	rows.every((row) => Number.isFinite(row.load) && Number.isFinite(row.rating)) ? rows : [];

/** Yield strength of a station's steel where it stands [psi]. */
const yieldAt = ({ section, tvd }: LoadStation, temperature: KnownTable, r: number): number =>
	yieldAtTemperature.compute({
		Y_p: quantity("pressure", section.Y_p),
		r: quantity("share-per-temperature", r),
		T: quantity("temperature", profileAt(temperature, "temperature", tvd)),
	}) as number;

/** [lbf] */
const tensionRating = (station: LoadStation, temperature: KnownTable, r: number): number =>
	(station.section.F_t * yieldAt(station, temperature, r)) / station.section.Y_p;

const pressureAt = (table: KnownTable, tvd: number) =>
	quantity("pressure", profileAt(table, "pressure", tvd));

export const burstLine = tableFormula({
	id: "casing/burst-line",
	name: "Burst load over depth",
	expression: "Δp = p_i − p_o against the least of pipe and coupling, worn, times Y_p(T)/Y_p",
	source: cite("devereux", "Table 1-2, burst"),
	inputs: { ...common, ...pressures },
	gives: { ...DEPTHS, load: "pressure-difference", rating: "pressure" },
	compute: ({ path, sections, temperature, r, inside, outside }) =>
		whole(
			loadStations(path, sections, inside, outside, temperature).map((station) => ({
				md: station.md,
				tvd: station.tvd,
				load: pressureAt(inside, station.tvd) - pressureAt(outside, station.tvd),
				rating: (station.section.P_i * yieldAt(station, temperature, r)) / station.section.Y_p,
			})),
		),
});

export const collapseLine = tableFormula({
	id: "casing/collapse-line",
	name: "Collapse load over depth",
	expression:
		"p_e = p_o − (1 − 2t/D) p_i against the collapse rating of worn pipe with Y_pa(σ_a) at Y_p(T); method before 2015",
	source: cite("api-5c3", "collapse under axial tension, before the 2015 addendum"),
	inputs: { ...common, ...pressures, force: { table: "force" } },
	gives: { ...DEPTHS, load: "pressure-difference", rating: "pressure" },
	validity: "σ_a < Y_p and Y_pa ≥ 24,000 psi throughout",
	compute: ({ path, sections, temperature, r, inside, outside, force }) =>
		whole(
			loadStations(path, sections, inside, outside, temperature).map((station) => {
				const { md, tvd, section } = station;
				const [D, t] = [quantity("diameter", section.D), quantity("diameter", section.t)];
				const rating = collapseUnderTension.compute({
					D,
					t,
					Y_p: quantity("pressure", yieldAt(station, temperature, r)),
					σ_a: quantity("pressure-difference", forceAt(force, station) / areaOf(D, t)),
				});
				const load = equivalentExternalPressure.compute({
					D,
					t,
					p_o: pressureAt(outside, tvd),
					p_i: pressureAt(inside, tvd),
				}) as number;
				return { md, tvd, load, rating: section.k * (typeof rating === "number" ? rating : rating.value) };
			}),
		),
});

export const tensionLine = tableFormula({
	id: "casing/tension-line",
	name: "Tension over depth",
	expression:
		"F against the least of pipe body and joint, worn, times Y_p(T)/Y_p; bending is judged with the triaxial stress",
	source: cite("devereux", "Table 1-5, tension"),
	inputs: { ...common, force: { table: "force" } },
	gives: { ...DEPTHS, load: "force", rating: "force" },
	compute: ({ path, sections, temperature, r, force }) =>
		whole(
			loadStations(path, sections, temperature).map((station) => ({
				md: station.md,
				tvd: station.tvd,
				load: forceAt(force, station),
				rating: tensionRating(station, temperature, r),
			})),
		),
});

/** Stuck fast, so nothing buoys it: what hangs is dry pipe, pulled on. */
export const overpullLine = tableFormula({
	id: "casing/overpull-line",
	name: "Tension over depth, string stuck and pulled",
	expression: "Σ w ΔTVD + overpull against the least of pipe body and joint, worn, times Y_p(T)/Y_p",
	source: cite("devereux", "p. 62 and Table 1-2, tension 1: weight in air plus overpull"),
	inputs: { ...common, overpull: "force" },
	gives: { ...DEPTHS, load: "force", rating: "force" },
	compute: ({ path, sections, temperature, r, overpull }) => {
		const stations = loadStations(path, sections, temperature);
		let hung = 0;
		let below = stations.at(-1);
		const rows = stations.toReversed().map((station): Row => {
			if (below !== undefined) hung += below.section.w * (below.tvd - station.tvd);
			below = station;
			return {
				md: station.md,
				tvd: station.tvd,
				load: hung + overpull,
				rating: tensionRating(station, temperature, r),
			};
		});
		return whole(rows.reverse());
	},
});

/** Pressed on before the cement has set: the landed plug hangs its whole push on the string. */
export const plugTestLine = tableFormula({
	id: "casing/plug-test-line",
	name: "Tension over depth, pressure held on the landed plug",
	expression: "F + (π/4) d² P against the least of pipe body and joint, worn, times Y_p(T)/Y_p",
	source: cite("devereux", "Table 1-2, tension 2: buoyant weight plus test pressure"),
	inputs: { ...common, force: { table: "force" }, P: "pressure" },
	gives: { ...DEPTHS, load: "force", rating: "force" },
	compute: ({ path, sections, temperature, r, force, P }) =>
		whole(
			loadStations(path, sections, temperature).map((station) => {
				const bump = bumpForce.compute({
					D: quantity("diameter", station.section.D),
					t: quantity("diameter", station.section.t),
					P,
				}) as number;
				return {
					md: station.md,
					tvd: station.tvd,
					load: forceAt(force, station) + bump,
					rating: tensionRating(station, temperature, r),
				};
			}),
		),
});

export const triaxialLine = tableFormula({
	id: "casing/triaxial-line",
	name: "Triaxial stress over depth",
	expression: "greatest VME in the wall, bending included, against Y_p(T)",
	source: cite("api-5c3", "triaxial yield of pipe body, with bending"),
	inputs: { ...common, ...pressures, force: { table: "force" } },
	gives: { ...DEPTHS, load: "pressure", rating: "pressure" },
	validity: "where yield governs, not collapse: the collapse line stands beside it",
	compute: ({ path, sections, temperature, r, inside, outside, force }) =>
		whole(
			loadStations(path, sections, inside, outside, temperature).map((station) => {
				const stress = greatestTriaxialStress.compute({
					D: quantity("diameter", station.section.D),
					t: quantity("diameter", station.section.t),
					p_i: pressureAt(inside, station.tvd),
					p_o: pressureAt(outside, station.tvd),
					F: quantity("force", forceAt(force, station)),
					DLS: quantity("dogleg", station.dogleg),
				});
				return {
					md: station.md,
					tvd: station.tvd,
					load: typeof stress === "number" ? stress : stress.value,
					rating: yieldAt(station, temperature, r),
				};
			}),
		),
});
