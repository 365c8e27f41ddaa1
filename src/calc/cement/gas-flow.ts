import { formula } from "../../cite/formula.ts";
import type { Known } from "../../cite/known.ts";
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
		const MPR = pressureRestriction.of({
			L: intervalLength.of({ MD_top: top, MD_bottom: at.md }),
			D_h: hole.diameter,
			D_c: pipe.outsideDiameter,
		});
		const potential = gasFlowPotential.of({ MPR, OBP: overbalance });
		return Number.isFinite(potential.value)
			? [{ formation: name, at, restriction: MPR, overbalance, potential }]
			: [];
	});
};
