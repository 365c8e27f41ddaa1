import { formula } from "../../../cite/formula.ts";
import { cite } from "../../../cite/source.ts";
import { HYDROSTATIC_CONSTANT } from "../../pressure/hydrostatic.ts";

/** Pore pressure of the rock at a depth; rock gradients act from ground level. */
export const porePressure = formula({
	id: "casing/pore-pressure",
	name: "Pore pressure",
	expression: "p = 0.052 ρ_pore D, D below ground",
	source: cite("hydrostatics"),
	inputs: { ρ_pore: "density", D: "depth-below-ground" },
	gives: "pressure",
	compute: ({ ρ_pore, D }) => HYDROSTATIC_CONSTANT * ρ_pore * D,
});

/** The hole shut in, full of gas from one formation. */
export const gasToSurface = formula({
	id: "casing/gas-to-surface",
	name: "Surface pressure of gas to surface",
	expression: "P = P_res − g D_res",
	source: cite("devereux", "Table 1-2, burst"),
	inputs: { P_res: "pressure", g: "pressure-gradient", D_res: "true-vertical-depth" },
	gives: "pressure",
	validity: "the gas reaches surface with pressure left",
	compute: ({ P_res, g, D_res }) => Math.max(0, P_res - g * D_res),
});

/** The most that gas brings to surface from any formation in the open hole. */
export const greatestGasPressure = formula({
	id: "casing/greatest-gas-to-surface",
	name: "Greatest surface pressure of gas to surface",
	expression: "max over the formations in the open hole",
	source: cite("devereux", "Table 1-2, burst"),
	inputs: { P: { many: "pressure" } },
	gives: "pressure",
	validity: "at least one formation",
	compute: ({ P }) => (P.length === 0 ? Number.NaN : Math.max(...P)),
});

/** More than this at surface and the shoe breaks down first. */
export const shoeLimitedPressure = formula({
	id: "casing/shoe-limited-pressure",
	name: "Surface pressure that the shoe allows, gas below it",
	expression: "P = p_frac − g D_shoe",
	source: cite("devereux", "Table 1-2, surface casing: depth × (fracture gradient − 0.1)"),
	inputs: { p_frac: "pressure", g: "pressure-gradient", D_shoe: "true-vertical-depth" },
	gives: "pressure",
	validity: "the fracture pressure exceeds the column of gas",
	compute: ({ p_frac, g, D_shoe }) => Math.max(0, p_frac - g * D_shoe),
});

/** What a string may see at surface while the hole below it is drilled. */
export const maximumSurfacePressure = formula({
	id: "casing/maximum-surface-pressure",
	name: "Maximum anticipated surface pressure",
	expression: "lesser of gas to surface and what the shoe allows",
	source: cite("devereux", "Table 1-2, burst"),
	inputs: { gas: "pressure", shoe: "pressure" },
	gives: "pressure",
	compute: ({ gas, shoe }) =>
		shoe < gas ? { value: shoe, branch: "limited by the shoe" } : { value: gas, branch: "gas to surface" },
});
