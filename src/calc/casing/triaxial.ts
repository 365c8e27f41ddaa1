import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/*
 * Thick-walled elastic pipe. Tension and outward pressure positive. Holds where yield governs and not instability: the
 * collapse rating is always checked beside it. The worst place is the inner or the outer wall, on either side of a bend.
 */

const LAME = cite("api-5c3", "triaxial yield of pipe body; Lamé's stresses");

interface Pressures {
	readonly D: number;
	readonly t: number;
	readonly p_i: number;
	readonly p_o: number;
	readonly r: number;
}

/** Radial and hoop stress at a radius [psi]; NaN where the radius lies outside the wall. */
const lameStresses = ({
	D,
	t,
	p_i,
	p_o,
	r,
}: Pressures): { readonly radial: number; readonly hoop: number } => {
	const [inner, outer] = [D / 2 - t, D / 2];
	if (!(inner > 0) || r < inner - 1e-9 || r > outer + 1e-9) return { radial: Number.NaN, hoop: Number.NaN };
	const wall = outer ** 2 - inner ** 2;
	const a = (p_i * inner ** 2 - p_o * outer ** 2) / wall;
	const b = ((p_i - p_o) * inner ** 2 * outer ** 2) / (wall * r ** 2);
	return { radial: a - b, hoop: a + b };
};

const inputs = {
	D: "diameter",
	t: "diameter",
	p_i: "pressure",
	p_o: "pressure",
	r: "diameter",
} as const;
const validity = "d/2 ≤ r ≤ D/2; elastic";

export const radialStress = formula({
	id: "casing/radial-stress",
	name: "Radial stress",
	expression:
		"σ_r = a − b, a = (p_i r_i² − p_o r_o²)/(r_o² − r_i²), b = (p_i − p_o) r_i² r_o² / [(r_o² − r_i²) r²]",
	source: LAME,
	inputs,
	gives: "pressure-difference",
	validity,
	compute: (at) => lameStresses(at).radial,
});

export const hoopStress = formula({
	id: "casing/hoop-stress",
	name: "Hoop stress",
	expression: "σ_θ = a + b, a and b as for the radial stress",
	source: LAME,
	inputs,
	gives: "pressure-difference",
	validity,
	compute: (at) => lameStresses(at).hoop,
});

/** von Mises equivalent of three principal stresses. */
const vonMises = (σ_r: number, σ_θ: number, σ_z: number): number =>
	Math.sqrt(((σ_r - σ_θ) ** 2 + (σ_θ - σ_z) ** 2 + (σ_z - σ_r) ** 2) / 2);

export const vonMisesStress = formula({
	id: "casing/von-mises-stress",
	name: "Triaxial (von Mises) stress",
	expression: "VME = √{[(σ_r − σ_θ)² + (σ_θ − σ_z)² + (σ_z − σ_r)²] / 2}",
	source: cite("api-5c3", "triaxial yield of pipe body"),
	inputs: {
		σ_r: "pressure-difference",
		σ_θ: "pressure-difference",
		σ_z: "pressure-difference",
	},
	gives: "pressure",
	compute: ({ σ_r, σ_θ, σ_z }) => vonMises(σ_r, σ_θ, σ_z),
});

/**
 * The greatest triaxial stress in a pipe's wall.
 *
 * @param F    axial force, tension positive, without bending [lbf]
 * @param DLS  dogleg severity it is bent to [°/100 ft]
 */
export const greatestTriaxialStress = formula({
	id: "casing/greatest-triaxial-stress",
	name: "Greatest triaxial stress in the wall",
	expression: "greatest VME of r = r_i and r_o, with σ_z = F/A_p ± E κ r",
	source: cite("api-5c3", "triaxial yield of pipe body, with bending"),
	inputs: {
		D: "diameter",
		t: "diameter",
		p_i: "pressure",
		p_o: "pressure",
		F: "force",
		DLS: "dogleg",
	},
	gives: "pressure",
	validity: "elastic",
	compute: ({ D, t, p_i, p_o, F, DLS }) => {
		const axial = F / (Math.PI * (D - t) * t);
		const places = [
			{ r: D / 2 - t, branch: "inner wall" },
			{ r: D / 2, branch: "outer wall" },
		].flatMap(({ r, branch }) => {
			const { radial, hoop } = lameStresses({ D, t, p_i, p_o, r });
			return [-1, 1].map((side) => ({
				value: vonMises(radial, hoop, axial + side * bendingStressAt(r, DLS)),
				branch,
			}));
		});
		return places.reduce((worst, place) => (place.value > worst.value ? place : worst));
	},
});

/** Modulus of elasticity of steel [psi]. */
export const STEEL_MODULUS = 30e6;

/** E κ r [psi], from the axis out to radius r [in]. Curvature in 1/in: DLS · π/180 / 1200. */
export const bendingStressAt = (r: number, DLS: number): number =>
	(STEEL_MODULUS * r * DLS * (Math.PI / 180)) / 1200;
