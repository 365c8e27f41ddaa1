import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { casDigit } from "../../definition/cas-number.ts";

const source = cite("epa-601-r-14-003", "maximum ingredient concentration in the fluid, percent by mass");

/** Mass of a volume of fluid [lb]. */
export const fluidMass = formula({
	id: "stimulation/fluid-mass",
	name: "Mass of a fluid",
	expression: "m = 42 V ρ",
	source: cite("definition"),
	inputs: { V: "volume", ρ: "density" },
	gives: "mass",
	compute: ({ V, ρ }) => 42 * V * ρ,
});

/** Volume of an additive metered into the base fluid [bbl]. */
export const additiveVolume = formula({
	id: "stimulation/additive-volume",
	name: "Volume of an additive",
	expression: "V_a = r V / 1000",
	source: cite("definition", "gallons per thousand gallons of base fluid"),
	inputs: { r: "additive-rate", V: "volume" },
	gives: "volume",
	compute: ({ r, V }) => (r * V) / 1000,
});

/** Greatest mass of an ingredient in an additive [lb]. */
export const ingredientMass = formula({
	id: "stimulation/ingredient-mass",
	name: "Greatest mass of an ingredient",
	expression: "m_i = m_a s",
	source,
	inputs: { m_a: "mass", s: "share" },
	gives: "mass",
	validity: "a share from 0 to 1",
	compute: ({ m_a, s }) => (s < 0 || s > 1 ? Number.NaN : m_a * s),
});

/** Greatest share of an ingredient in the fluid, by mass. */
export const massShare = formula({
	id: "stimulation/mass-share",
	name: "Greatest share in the fluid, by mass",
	expression: "Σ m_i / m_t",
	source,
	inputs: { m_i: { many: "mass" }, m_t: "mass" },
	gives: "share",
	validity: "total = base fluid + proppant + additives; sums may pass 100 % because each share is a maximum",
	compute: ({ m_i, m_t }) => (m_t > 0 ? m_i.reduce<number>((sum, m) => sum + m, 0) / m_t : Number.NaN),
});

/** Check digit of a CAS registry number, from its other digits in order. */
export const casCheckDigit = formula({
	id: "stimulation/cas-check-digit",
	name: "CAS check digit",
	expression: "R = (Σ i N_i) mod 10, i counted from the right",
	source: cite("cas-check-digit"),
	inputs: { N_i: { many: "count" } },
	gives: "count",
	validity:
		"four to nine digits before the check digit, the first not zero; a pass proves consistency, not identity",
	compute: ({ N_i }) => (N_i.length < 4 || N_i.length > 9 || N_i[0] === 0 ? Number.NaN : casDigit(N_i)),
});
