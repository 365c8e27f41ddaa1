import { formula } from "../../cite/formula.ts";
import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { depthBelowGround, verticalMark } from "../depths/marks.ts";
import { porePressure } from "../pressure/fracture-gradient.ts";
import { pressureDifference } from "../pressure/hydrostatic.ts";
import type { AnnulusColumn, CementResults } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { holeAt } from "./annulus.ts";
import { sectionAt } from "./bore.ts";
import { intervalLength } from "./capacity.ts";
import type { JobContext } from "./cement-results.ts";
import { standingPressureAt } from "./column.ts";

const source = cite("sutton-1984", "gas flow potential; from memory");

/** The most pressure that setting cement may lose to its own gel strength [psi]. */
export const pressureRestriction = formula({
	id: "cement/maximum-pressure-restriction",
	name: "Maximum pressure restriction of the gelling column",
	expression: "MPR = 1.67 L / (D_h − D_c)",
	source,
	inputs: { L: "length", D_h: "diameter", D_c: "diameter" },
	gives: "pressure",
	validity: "gel strength of 500 lbf/100 ft² over the whole column above the zone; hole wider than the pipe",
	compute: ({ L, D_h, D_c }) => (D_h > D_c ? (1.67 * L) / (D_h - D_c) : Number.NaN),
});

/** Minor below 3, moderate to 8, severe above. */
export const gasFlowPotential = formula({
	id: "cement/gas-flow-potential",
	name: "Gas flow potential",
	expression: "GFP = MPR / OBP",
	source,
	inputs: { MPR: "pressure", OBP: "pressure-difference" },
	gives: "ratio",
	validity: "more pressure on the zone than in it when the plug lands",
	compute: ({ MPR, OBP }) => (OBP > 0 ? MPR / OBP : Number.NaN),
});

/** Gel strength at which the column presses on the zone no more than the zone does [lbf/100 ft²]. */
export const criticalGel = formula({
	id: "cement/critical-gel-strength",
	name: "Critical static gel strength",
	expression: "CSGS = 300 OBP (D_h − D_c) / L",
	source: cite("api-65-2", "critical static gel strength; from memory"),
	inputs: { OBP: "pressure-difference", D_h: "diameter", D_c: "diameter", L: "length" },
	gives: "yield-point",
	validity:
		"more pressure on the zone than in it when the plug lands; one gel strength over the whole column",
	compute: ({ OBP, D_h, D_c, L }) =>
		OBP > 0 && D_h > D_c && L > 0 ? (300 * OBP * (D_h - D_c)) / L : Number.NaN,
});

/** Pressure on the zone over that in it once the column has gelled so far [psi]; negative where the zone may flow. */
export const overbalanceGelled = formula({
	id: "cement/overbalance-gelled",
	name: "Overbalance at a gel strength",
	expression: "OBP − SGS L / (300 (D_h − D_c))",
	source: cite("sutton-1984", "pressure that a gelling column loses; from memory"),
	inputs: { OBP: "pressure-difference", SGS: "yield-point", D_h: "diameter", D_c: "diameter", L: "length" },
	gives: "pressure-difference",
	validity: "one gel strength over the whole column; no volume is lost into rock",
	compute: ({ OBP, SGS, D_h, D_c, L }) => (D_h > D_c ? OBP - (SGS * L) / (300 * (D_h - D_c)) : Number.NaN),
});

/** Gel strengths at which the hydrostatic decay is printed: from here the slurry no longer passes its pressure on whole. */
const STEPS = [100, 250, 500].map((gel) =>
	constant("yield-point", gel, "a step of static gel strength", cite("api-65-2", "100 to 500 lbf/100 ft²")),
);

/** Each zone marked as gas-bearing that stands open behind the string and under its cement. */
export const gasFlow = (
	{ well, path, string }: JobContext,
	column: AnnulusColumn | undefined,
	top: Known<"measured-depth">,
): CementResults["gas_flow"] => {
	const outer = well.strings.find(({ id }) => id === string.within);
	const [from, to] = [
		outer === undefined ? 0 : tvdAt(path, outer.shoe).value,
		tvdAt(path, string.shoe).value,
	];
	return well.geology.formations.flatMap(({ name, flowZone, top: zone, porePressure: ρ_p }) => {
		if (flowZone !== "gas" || column === undefined || ρ_p === undefined) return [];
		if (zone.value < from || zone.value > to) return [];
		const at = verticalMark(path, zone, well.datum);
		const [hole, pipe] = [
			holeAt(well.holes, at.md?.value ?? 0),
			sectionAt(string.sections, at.md?.value ?? 0),
		];
		if (at.md === undefined || at.md.value <= top.value || hole === undefined || pipe === undefined)
			return [];
		const D = depthBelowGround.of({ TVD: zone, height: well.datum.aboveGround });
		const overbalance = pressureDifference.of({
			p_1: standingPressureAt.of({ column, D: zone }),
			p_2: porePressure.of({ ρ_p, D }),
		});
		const gelling = {
			L: intervalLength.of({ MD_top: top, MD_bottom: at.md }),
			D_h: hole.diameter,
			D_c: pipe.outsideDiameter,
		};
		const MPR = pressureRestriction.of(gelling);
		const potential = gasFlowPotential.of({ MPR, OBP: overbalance });
		return Number.isFinite(potential.value)
			? [
					{
						formation: name,
						at,
						restriction: MPR,
						overbalance,
						potential,
						critical_gel: criticalGel.of({ ...gelling, OBP: overbalance }),
						decay: STEPS.map((gel) => ({
							gel,
							left: overbalanceGelled.of({ ...gelling, OBP: overbalance, SGS: gel }),
						})),
					},
				]
			: [];
	});
};
