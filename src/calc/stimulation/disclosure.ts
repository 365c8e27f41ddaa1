import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

const source = cite("epa-601-r-14-003", "maximum ingredient concentration in the fluid, percent by mass");

/** Mass of a volume of fluid [lb]. */
export const fluidMass = formula({
	id: "stimulation/fluid-mass",
	name: "Mass of a fluid",
	expression: "m = 42 V ρ",
	source: cite("definition"),
	inputs: { volume: "volume", density: "density" },
	gives: "mass",
	compute: ({ volume, density }) => 42 * volume * density,
});

/** Volume of an additive metered into the base fluid [bbl]. */
export const additiveVolume = formula({
	id: "stimulation/additive-volume",
	name: "Volume of an additive",
	expression: "V_a = r V_base / 1000",
	source: cite("definition", "gallons per thousand gallons of base fluid"),
	inputs: { rate: "additive-rate", base: "volume" },
	gives: "volume",
	compute: ({ rate, base }) => (rate * base) / 1000,
});

/** Greatest mass of an ingredient in an additive [lb]. */
export const ingredientMass = formula({
	id: "stimulation/ingredient-mass",
	name: "Greatest mass of an ingredient",
	expression: "mᵢ = m_a sᵢ",
	source,
	inputs: { additive: "mass", share: "share" },
	gives: "mass",
	validity: "a share from 0 to 1",
	compute: ({ additive, share }) => (share < 0 || share > 1 ? Number.NaN : additive * share),
});

/** Greatest share of an ingredient in the fluid, by mass. */
export const massShare = formula({
	id: "stimulation/mass-share",
	name: "Greatest share in the fluid, by mass",
	expression: "Σ mᵢ / m_total",
	source,
	inputs: { parts: { many: "mass" }, total: "mass" },
	gives: "share",
	validity: "total = base fluid + proppant + additives; sums may pass 100 % because each share is a maximum",
	compute: ({ parts, total }) =>
		total > 0 ? parts.reduce<number>((sum, part) => sum + part, 0) / total : Number.NaN,
});

/** Check digit of a CAS registry number, from its other digits in order. */
export const casCheckDigit = formula({
	id: "stimulation/cas-check-digit",
	name: "CAS check digit",
	expression: "R = (Σ i Nᵢ) mod 10, i counted from the right",
	source: cite("cas-check-digit"),
	inputs: { digits: { many: "count" } },
	gives: "count",
	validity:
		"four to nine digits before the check digit, the first not zero; a pass proves consistency, not identity",
	compute: ({ digits }) =>
		digits.length < 4 || digits.length > 9 || digits[0] === 0
			? Number.NaN
			: digits.reduce<number>((sum, digit, i) => sum + (digits.length - i) * digit, 0) % 10,
});
