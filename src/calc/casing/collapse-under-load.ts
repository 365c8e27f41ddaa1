import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { collapseOf } from "./collapse.ts";

/*
 * Two methods, never mixed. Up to 2015: tension lowers the yield strength, and the rating is compared with an equivalent
 * external pressure. From 2015: tension and internal pressure lower it together, and the rating is compared with the
 * difference of the pressures. The later one gives the higher strength. Bending enters neither; compression adds nothing.
 */

const BEFORE_2015 = cite("api-5c3", "collapse under axial tension, before the 2015 addendum");
const FROM_2015 = cite("api-5c3", "collapse under combined load, 2015 addendum (from memory; abstract read)");

/** [psi]; NaN where the stress reaches the yield strength. */
const reducedYield = (Y: number, stress: number): number => {
	const ratio = Math.max(0, stress) / Y;
	return ratio < 1 ? (Math.sqrt(1 - 0.75 * ratio ** 2) - 0.5 * ratio) * Y : Number.NaN;
};

export const yieldUnderTension = formula({
	id: "casing/yield-under-tension",
	name: "Yield strength left under tension",
	expression: "Y_pa = {√[1 − 0.75(σ_a/Y_p)²] − 0.5 σ_a/Y_p} Y_p",
	source: BEFORE_2015,
	inputs: { Y_p: "pressure", σ_a: "pressure-difference" },
	gives: "pressure",
	validity: "σ_a < Y_p; no change under compression",
	compute: ({ Y_p, σ_a }) => reducedYield(Y_p, σ_a),
});

export const collapseUnderTension = formula({
	id: "casing/collapse-under-tension",
	name: "Collapse rating under tension",
	expression: "the four regimes with Y_pa for Y_p",
	source: BEFORE_2015,
	inputs: {
		D: "diameter",
		t: "diameter",
		Y_p: "pressure",
		σ_a: "pressure-difference",
	},
	gives: "pressure",
	validity: "σ_a < Y_p and Y_pa ≥ 24,000 psi; D/t > 2",
	compute: ({ D, t, Y_p, σ_a }) => collapseOf({ D, t, Y_p: reducedYield(Y_p, σ_a) }),
});

/** What the earlier method's rating is compared with. */
export const equivalentExternalPressure = formula({
	id: "casing/equivalent-external-pressure",
	name: "Equivalent external pressure",
	expression: "p_e = p_o − (1 − 2t/D) p_i",
	source: BEFORE_2015,
	inputs: { D: "diameter", t: "diameter", p_o: "pressure", p_i: "pressure" },
	gives: "pressure-difference",
	compute: ({ D, t, p_o, p_i }) => p_o - (1 - (2 * t) / D) * p_i,
});

export const yieldUnderCombinedLoad = formula({
	id: "casing/yield-under-combined-load",
	name: "Yield strength left under tension and internal pressure",
	expression: "Y_pa = {√[1 − 0.75((σ_a+p_i)/Y_p)²] − 0.5 (σ_a+p_i)/Y_p} Y_p, σ_a + p_i no less than 0",
	source: FROM_2015,
	inputs: { Y_p: "pressure", σ_a: "pressure-difference", p_i: "pressure" },
	gives: "pressure",
	validity: "σ_a + p_i < Y_p",
	compute: ({ Y_p, σ_a, p_i }) => reducedYield(Y_p, σ_a + p_i),
});

/** Compared with p_o − p_i. */
export const collapseUnderCombinedLoad = formula({
	id: "casing/collapse-under-combined-load",
	name: "Collapse rating under tension and internal pressure",
	expression: "the four regimes with Y_pa(σ_a + p_i) for Y_p; compare with p_o − p_i",
	source: FROM_2015,
	inputs: {
		D: "diameter",
		t: "diameter",
		Y_p: "pressure",
		σ_a: "pressure-difference",
		p_i: "pressure",
	},
	gives: "pressure",
	validity: "σ_a + p_i < Y_p and Y_pa ≥ 24,000 psi; D/t > 2",
	compute: ({ D, t, Y_p, σ_a, p_i }) => collapseOf({ D, t, Y_p: reducedYield(Y_p, σ_a + p_i) }),
});
