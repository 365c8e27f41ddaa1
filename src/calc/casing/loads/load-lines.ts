import { tableFormula } from "../../../cite/formula.ts";
import type { KnownTable } from "../../../cite/known.ts";
import { cite } from "../../../cite/source.ts";
import { quantity } from "../../../units/quantity.ts";
import { bumpForce, shockForce } from "../axial.ts";
import {
	collapseUnderCombinedLoad,
	collapseUnderTension,
	equivalentExternalPressure,
} from "../collapse-under-load.ts";
import { areaOf, yieldAtTemperature } from "../pipe-body.ts";
import { bendingStressAt, greatestTriaxialStress } from "../triaxial.ts";
import { forceAt } from "./force-table.ts";
import { LINE, lineOver } from "./line.ts";
import { profileAt } from "./profiles.ts";
import type { LoadStation } from "./stations.ts";

/*
 * Each line lays a load beside the rating it is compared with, depth by depth. Ratings are those of worn pipe at the
 * rock's temperature. Where pipe and connection are rated apart the lesser is the rating, and both stand beside it.
 */

const common = {
	path: { table: "path" },
	sections: { table: "sections" },
	temperature: { table: "temperature" },
	r: "share-per-temperature",
} as const;

const pressures = { inside: { table: "pressure" }, outside: { table: "pressure" } } as const;
const TENSION = { ...LINE, load: "force", rating: "force", pipe: "force", connection: "force" } as const;

/** Yield strength of a station's steel where it stands [psi]. */
const yieldAt = ({ section, tvd }: LoadStation, temperature: KnownTable, r: number): number =>
	yieldAtTemperature.compute({
		Y_p: quantity("pressure", section.Y_p),
		r: quantity("share-per-temperature", r),
		T: quantity("temperature", profileAt(temperature, "temperature", tvd)),
	}) as number;

const lesser = (pipe: number, connection: number) => ({
	rating: Math.min(pipe, connection),
	pipe,
	connection,
});

/** [lbf] */
const tensionRating = (station: LoadStation, temperature: KnownTable, r: number) => {
	const left = yieldAt(station, temperature, r) / station.section.Y_p;
	return lesser(station.section.F_pipe * left, station.section.F_connection * left);
};

const pressureAt = (table: KnownTable, tvd: number) =>
	quantity("pressure", profileAt(table, "pressure", tvd));

/** Collapse rating and its regime at a station [psi]. */
export const collapseAt = (station: LoadStation, temperature: KnownTable, r: number, force: KnownTable) => {
	const { section } = station;
	const [D, t] = [quantity("diameter", section.D), quantity("diameter", section.t)];
	const rating = collapseUnderTension.compute({
		D,
		t,
		Y_p: quantity("pressure", yieldAt(station, temperature, r)),
		σ_a: quantity("pressure-difference", forceAt(force, station) / areaOf(D, t)),
	});
	return typeof rating === "number"
		? { value: section.k * rating, branch: "" }
		: { value: section.k * rating.value, branch: rating.branch };
};

/** Triaxial stress and the wall it is greatest at, of a station [psi]. */
export const stressAt = (
	station: LoadStation,
	inside: KnownTable,
	outside: KnownTable,
	force: KnownTable,
) => {
	const stress = greatestTriaxialStress.compute({
		D: quantity("diameter", station.section.D),
		t: quantity("diameter", station.section.t),
		p_i: pressureAt(inside, station.tvd),
		p_o: pressureAt(outside, station.tvd),
		F: quantity("force", forceAt(force, station)),
		DLS: quantity("dogleg", station.dogleg),
	});
	return typeof stress === "number" ? { value: stress, branch: "" } : stress;
};

export const burstLine = tableFormula({
	id: "casing/burst-line",
	name: "Burst load over depth",
	expression: "Δp = p_i − p_o against the lesser of pipe and coupling, worn, times Y_p(T)/Y_p",
	source: cite("devereux", "Table 1-2, burst"),
	inputs: { ...common, ...pressures },
	gives: {
		...LINE,
		load: "pressure-difference",
		rating: "pressure",
		pipe: "pressure",
		connection: "pressure",
	},
	compute: ({ path, sections, temperature, r, inside, outside }) =>
		lineOver(path, sections, [inside, outside, temperature], (station) => {
			const left = yieldAt(station, temperature, r) / station.section.Y_p;
			return {
				load: pressureAt(inside, station.tvd) - pressureAt(outside, station.tvd),
				...lesser(station.section.P_pipe * left, station.section.P_connection * left),
			};
		}),
});

export const collapseLine = tableFormula({
	id: "casing/collapse-line",
	name: "Collapse load over depth",
	expression:
		"p_e = p_o − (1 − 2t/D) p_i against the collapse rating of worn pipe with Y_pa(σ_a) at Y_p(T); method before 2015",
	source: cite("api-5c3", "collapse under axial tension, before the 2015 addendum"),
	inputs: { ...common, ...pressures, force: { table: "force" } },
	gives: { ...LINE, load: "pressure-difference", rating: "pressure" },
	validity: "σ_a < Y_p and Y_pa ≥ 24,000 psi throughout",
	compute: ({ path, sections, temperature, r, inside, outside, force }) =>
		lineOver(path, sections, [inside, outside, temperature], (station) => ({
			load: equivalentExternalPressure.compute({
				D: quantity("diameter", station.section.D),
				t: quantity("diameter", station.section.t),
				p_o: pressureAt(outside, station.tvd),
				p_i: pressureAt(inside, station.tvd),
			}) as number,
			rating: collapseAt(station, temperature, r, force).value,
		})),
});

/** By the method from 2015 on: pressure inside counts with the tension, and against the whole difference. */
export const combinedCollapseLine = tableFormula({
	id: "casing/combined-collapse-line",
	name: "Collapse load over depth, method from 2015",
	expression:
		"p_o − p_i against the collapse rating of worn pipe with Y_pa(σ_a + p_i) at Y_p(T); method from 2015",
	source: cite("api-5c3", "collapse under combined load, 2015 addendum (from memory; abstract read)"),
	inputs: { ...common, ...pressures, force: { table: "force" } },
	gives: { ...LINE, load: "pressure-difference", rating: "pressure" },
	validity: "σ_a + p_i < Y_p and Y_pa ≥ 24,000 psi throughout",
	compute: ({ path, sections, temperature, r, inside, outside, force }) =>
		lineOver(path, sections, [inside, outside, temperature], (station) => {
			const { section, tvd } = station;
			const [D, t] = [quantity("diameter", section.D), quantity("diameter", section.t)];
			const p_i = pressureAt(inside, tvd);
			const rating = collapseUnderCombinedLoad.compute({
				D,
				t,
				Y_p: quantity("pressure", yieldAt(station, temperature, r)),
				σ_a: quantity("pressure-difference", forceAt(force, station) / areaOf(D, t)),
				p_i,
			});
			return {
				load: pressureAt(outside, tvd) - p_i,
				rating: section.k * (typeof rating === "number" ? rating : rating.value),
			};
		}),
});

export const tensionLine = tableFormula({
	id: "casing/tension-line",
	name: "Tension over depth",
	expression:
		"F against the lesser of pipe body and joint, worn, times Y_p(T)/Y_p; bending is judged apart, and with the triaxial stress",
	source: cite("devereux", "Table 1-5, tension"),
	inputs: { ...common, force: { table: "force" } },
	gives: TENSION,
	compute: ({ path, sections, temperature, r, force }) =>
		lineOver(path, sections, [temperature], (station) => ({
			load: forceAt(force, station),
			...tensionRating(station, temperature, r),
		})),
});

/** The tension at the outer side of the bend, over the whole section. */
export const bentTensionLine = tableFormula({
	id: "casing/bent-tension-line",
	name: "Tension over depth, bending counted in",
	expression:
		"F + σ_b A_p, σ_b = E κ D / 2, against the lesser of pipe body and joint, worn, times Y_p(T)/Y_p",
	source: cite("rabia", "bending force"),
	inputs: { ...common, force: { table: "force" } },
	gives: TENSION,
	validity: "pipe in contact with the hole all along the bend; elastic",
	compute: ({ path, sections, temperature, r, force }) =>
		lineOver(path, sections, [temperature], (station) => {
			const { D, t } = station.section;
			return {
				load: forceAt(force, station) + bendingStressAt(D / 2, station.dogleg) * areaOf(D, t),
				...tensionRating(station, temperature, r),
			};
		}),
});

/** Let down at speed and stopped dead: a wave of tension runs up the pipe. */
export const shockLine = tableFormula({
	id: "casing/shock-line",
	name: "Tension over depth, pipe stopped while it is run",
	expression: "F + 1780 v A_p against the lesser of pipe body and joint, worn, times Y_p(T)/Y_p",
	source: cite("rabia", "shock loading; √(E ρ) of steel"),
	inputs: { ...common, force: { table: "force" }, v: "fluid-velocity" },
	gives: TENSION,
	compute: ({ path, sections, temperature, r, force, v }) =>
		lineOver(path, sections, [temperature], (station) => {
			const shock = shockForce.compute({
				v,
				D: quantity("diameter", station.section.D),
				t: quantity("diameter", station.section.t),
			}) as number;
			return { load: forceAt(force, station) + shock, ...tensionRating(station, temperature, r) };
		}),
});

/** Stuck fast, so nothing buoys it: what hangs is dry pipe, pulled on. */
export const overpullLine = tableFormula({
	id: "casing/overpull-line",
	name: "Tension over depth, string stuck and pulled",
	expression: "Σ w ΔTVD + overpull against the lesser of pipe body and joint, worn, times Y_p(T)/Y_p",
	source: cite("devereux", "p. 62 and Table 1-2, tension 1: weight in air plus overpull"),
	inputs: { ...common, dry: { table: "force" }, overpull: "force" },
	gives: TENSION,
	compute: ({ path, sections, temperature, r, dry, overpull }) =>
		lineOver(path, sections, [temperature], (station) => ({
			load: forceAt(dry, station) + overpull,
			...tensionRating(station, temperature, r),
		})),
});

/** Pressed on before the cement has set: the landed plug hangs its whole push on the string. */
export const plugTestLine = tableFormula({
	id: "casing/plug-test-line",
	name: "Tension over depth, pressure held on the landed plug",
	expression: "F + (π/4) d² P against the lesser of pipe body and joint, worn, times Y_p(T)/Y_p",
	source: cite("devereux", "Table 1-2, tension 2: buoyant weight plus test pressure"),
	inputs: { ...common, force: { table: "force" }, P: "pressure" },
	gives: TENSION,
	compute: ({ path, sections, temperature, r, force, P }) =>
		lineOver(path, sections, [temperature], (station) => {
			const bump = bumpForce.compute({
				D: quantity("diameter", station.section.D),
				t: quantity("diameter", station.section.t),
				P,
			}) as number;
			return { load: forceAt(force, station) + bump, ...tensionRating(station, temperature, r) };
		}),
});

export const triaxialLine = tableFormula({
	id: "casing/triaxial-line",
	name: "Triaxial stress over depth",
	expression: "greatest VME in the wall, bending included, against Y_p(T)",
	source: cite("api-5c3", "triaxial yield of pipe body, with bending"),
	inputs: { ...common, ...pressures, force: { table: "force" } },
	gives: { ...LINE, load: "pressure", rating: "pressure" },
	validity: "where yield governs, not collapse: the collapse line stands beside it",
	compute: ({ path, sections, temperature, r, inside, outside, force }) =>
		lineOver(path, sections, [inside, outside, temperature], (station) => ({
			load: stressAt(station, inside, outside, force).value,
			rating: yieldAt(station, temperature, r),
		})),
});
