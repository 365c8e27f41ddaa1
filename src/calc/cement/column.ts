import { formula, tableFormula } from "../../cite/formula.ts";
import type { Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { columnPressure, HYDROSTATIC_CONSTANT, stackedPressure } from "../pressure/hydrostatic.ts";

/** A stretch of one fluid, on both axes. */
export interface FluidColumn {
	/** `mud`, `spacer`, or the slurry's id. */
	readonly fluid: string;
	readonly from: Known<"measured-depth">;
	readonly to: Known<"measured-depth">;
	readonly top: Known<"true-vertical-depth">;
	readonly bottom: Known<"true-vertical-depth">;
	readonly density: Known<"density">;
	readonly plasticViscosity?: Known<"plastic-viscosity">;
	readonly yieldPoint?: Known<"yield-point">;
}

/** Depth of the float collar [ft]. */
export const floatCollar = formula({
	id: "cement/float-collar",
	name: "Depth of the float collar",
	expression: "MD_collar = MD_shoe − L",
	source: cite("definition"),
	inputs: { MD_shoe: "measured-depth", L: "length" },
	gives: "measured-depth",
	validity: "a shoe track shorter than the string",
	compute: ({ MD_shoe, L }) => (L > MD_shoe ? Number.NaN : MD_shoe - L),
});

/** How high a volume stands in a hole that is filled from a depth upward [ft]. */
export const filledTo = formula({
	id: "cement/filled-to",
	name: "Depth that a volume fills up to",
	expression: "MD where Σ C_i L_i from MD_bottom upward = V",
	source: cite("conservation"),
	inputs: {
		V: "volume",
		MD_bottom: "measured-depth",
		C_i: { many: "capacity" },
		L_i: { many: "length" },
	},
	gives: "measured-depth",
	validity: "intervals in order from the bottom up; a volume that they do not hold stands at their top",
	compute: ({ V, MD_bottom, C_i, L_i }) => {
		let left: number = V;
		let depth: number = MD_bottom;
		for (const [i, C] of C_i.entries()) {
			const L = L_i[i] ?? Number.NaN;
			if (left <= C * L) return { value: depth - left / C, branch: "within the annulus" };
			left -= C * L;
			depth -= L;
		}
		return { value: depth, branch: "to the top of the annulus" };
	},
});

/** Pressure at the foot of columns standing one on another [psi]. */
export const pressureUnder = (columns: readonly FluidColumn[]): Known<"pressure"> =>
	stackedPressure.of({
		p_i: columns.map(({ density, top, bottom }) =>
			columnPressure.of({ ρ: density, D_top: top, D_bottom: bottom }),
		),
	});

/** Pressure at every change of fluid. */
export const standingColumn = tableFormula({
	id: "cement/standing-column",
	name: "Pressure outside the string with cement in place",
	expression: "p(D) = Σ 0.052 ρ_i (D_i − D_i−1)",
	source: cite("hydrostatics"),
	inputs: {
		D_top: { many: "true-vertical-depth" },
		D_bottom: { many: "true-vertical-depth" },
		ρ_i: { many: "density" },
	},
	gives: { tvd: "true-vertical-depth", standing: "pressure" },
	validity: "columns one under another, from the depth datum down",
	compute: ({ D_top, D_bottom, ρ_i }) => {
		let standing = 0;
		const [first] = D_top;
		if (first === undefined) return [];
		return [
			{ tvd: first, standing },
			...ρ_i.map((ρ, i) => {
				const [top, bottom] = [D_top[i] ?? Number.NaN, D_bottom[i] ?? Number.NaN];
				standing += HYDROSTATIC_CONSTANT * ρ * (bottom - top);
				return { tvd: bottom, standing };
			}),
		];
	},
});

/** Pressure of standing columns at a depth among them [psi]. */
export const standingPressureAt = formula({
	id: "cement/standing-pressure",
	name: "Pressure outside the string at a depth, cement in place",
	expression: "p(D) between the changes of fluid",
	source: cite("hydrostatics"),
	inputs: { column: { table: "tvd, standing" }, D: "true-vertical-depth" },
	gives: "pressure",
	validity: "a depth between the datum and the shoe",
	compute: ({ column, D }) => {
		const { rows } = column;
		for (const [i, row] of rows.entries()) {
			const next = rows[i + 1];
			const [a, b] = [row["tvd"] ?? Number.NaN, next?.["tvd"] ?? Number.NaN];
			if (next === undefined || D < a || D > b) continue;
			const [p, q] = [row["standing"] ?? Number.NaN, next["standing"] ?? Number.NaN];
			return b > a ? p + ((q - p) * (D - a)) / (b - a) : q;
		}
		return Number.NaN;
	},
});

/** Weight of a fluid standing in pipe [lbf]. */
export const fluidWeight = formula({
	id: "cement/fluid-weight",
	name: "Weight of fluid in pipe",
	expression: "W = 42 ρ C (D_bottom − D_top)",
	source: cite("hydrostatics", "what bears on the end of the pipe is the vertical column"),
	inputs: {
		ρ: "density",
		C: "capacity",
		D_top: "true-vertical-depth",
		D_bottom: "true-vertical-depth",
	},
	gives: "force",
	validity: "top and bottom along the hole; negative where it climbs between them",
	compute: ({ ρ, C, D_top, D_bottom }) => 42 * ρ * C * (D_bottom - D_top),
});

/** What holds a cemented string down when the plug lands [lbf]; below zero the string is lifted. */
export const netHoldDown = formula({
	id: "cement/net-hold-down",
	name: "Net downward force on the string when the plug lands",
	expression: "F = W + Σ W_i − p (π/4) D²",
	source: cite("drilling-pressure-page", "hydraulic lift of casing"),
	inputs: { W: "force", W_i: { many: "force" }, p: "pressure", D: "diameter" },
	gives: "force",
	validity:
		"weights by vertical depth; p outside at the shoe, at rest; no annular friction, no friction on the wall, one diameter",
	compute: ({ W, W_i, p, D }) => W_i.reduce<number>((sum, w) => sum + w, W) - p * (Math.PI / 4) * D ** 2,
});
