import { tableFormula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { HYDROSTATIC_CONSTANT } from "./hydrostatic.ts";

/** Pore and fracture pressure at the top and the base of each formation. */
export const pressureWindow = tableFormula({
	id: "pressure/window",
	name: "Pore and fracture pressure against depth",
	expression: "pore 0.052 ρ_p (D − a); fracture F (D − a); gradients of rock act from ground level",
	source: cite("definition"),
	inputs: {
		D_top: { many: "true-vertical-depth" },
		D_base: { many: "true-vertical-depth" },
		ρ_p: { many: "density" },
		F: { many: "pressure-gradient" },
		a: "length",
	},
	gives: { tvd: "true-vertical-depth", pore: "pressure", fracture: "pressure" },
	validity: "one base, density and gradient for each top",
	compute: ({ D_top, D_base, ρ_p, F, a }) =>
		D_top.flatMap((top, i) => {
			const [base, ρ, gradient] = [D_base[i], ρ_p[i], F[i]];
			if (base === undefined || ρ === undefined || gradient === undefined) return [];
			return [top, base].map((tvd) => ({
				tvd,
				pore: HYDROSTATIC_CONSTANT * ρ * (tvd - a),
				fracture: gradient * (tvd - a),
			}));
		}),
});
