import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { CUBIC_FOOT, GALLON } from "../../units/factors.ts";

/** Density of water for slurry work [lb/gal], at 60 to 75 °F. */
const WATER_DENSITY = 8.33;
/** A sack: 94 lb, one cubic foot of bulk cement. */
export const SACK_POUNDS = 94;

const GALLONS_PER_CUBIC_FOOT = CUBIC_FOOT / GALLON;

/** Volume that a material takes up in a slurry [gal/lb]. */
export const absoluteVolume = formula({
	id: "cement/absolute-volume",
	name: "Absolute volume",
	expression: "V = 1 / (8.33 SG)",
	source: cite("lapeyrouse", "ch. 2, cement additive calculations"),
	inputs: { SG: "ratio" },
	gives: "specific-volume",
	validity: "specific gravity above zero; not for salts in solution, whose volume in water is tabulated",
	compute: ({ SG }) => (SG > 0 ? 1 / (WATER_DENSITY * SG) : Number.NaN),
});

/** Mass of an additive in a slurry of one sack [lb], from its share by weight of cement. */
export const additiveMass = formula({
	id: "cement/additive-mass",
	name: "Additive by weight of cement",
	expression: "m = 94 s",
	source: cite("lapeyrouse", "ch. 2, cement additive calculations"),
	inputs: { s: "share" },
	gives: "mass",
	compute: ({ s }) => SACK_POUNDS * s,
});

/** Mass of a salt in a slurry of one sack [lb], from its share by weight of the mix water. */
export const saltMass = formula({
	id: "cement/salt-mass",
	name: "Salt by weight of water",
	expression: "m = 8.33 w s",
	source: cite("cementing-handbook", "salt is stated by weight of mix water"),
	inputs: { s: "share", w: "water-requirement" },
	gives: "mass",
	compute: ({ s, w }) => WATER_DENSITY * w * s,
});

/** Mass of a liquid additive in a slurry of one sack [lb]. */
export const liquidMass = formula({
	id: "cement/liquid-mass",
	name: "Mass of a liquid additive",
	expression: "m = q / V",
	source: cite("lapeyrouse", "ch. 2, liquid additives by absolute volume"),
	inputs: { q: "water-requirement", V: "specific-volume" },
	gives: "mass",
	validity: "an absolute volume above zero",
	compute: ({ q, V }) => (V > 0 ? q / V : Number.NaN),
});

/** Mixing water from a share by weight of cement [gal/sk]. */
export const waterFromShare = formula({
	id: "cement/water-from-share",
	name: "Mixing water from % by weight of cement",
	expression: "w = 94 s / 8.33",
	source: cite("api-10a", "water ratios by class"),
	inputs: { s: "share" },
	gives: "water-requirement",
	compute: ({ s }) => (SACK_POUNDS * s) / WATER_DENSITY,
});

const slurryInputs = {
	m_i: { many: "mass" },
	V_i: { many: "specific-volume" },
	w: "water-requirement",
} as const;

const slurryGallons = (masses: readonly number[], volumes: readonly number[], water: number): number =>
	masses.length !== volumes.length
		? Number.NaN
		: masses.reduce((sum, mass, i) => sum + mass * (volumes[i] ?? Number.NaN), water);

/** Slurry from one sack, by the absolute volumes of what is in it [ft³/sk]. */
export const slurryYield = formula({
	id: "cement/slurry-yield",
	name: "Slurry yield by absolute volume",
	expression: "y = (Σ m_i V_i + w) / 7.4805",
	source: cite("lapeyrouse", "ch. 2, cement additive calculations"),
	inputs: slurryInputs,
	gives: "slurry-yield",
	validity: "one absolute volume for each mass (cement first, per sack of 94 lb)",
	compute: ({ m_i, V_i, w }) => slurryGallons(m_i, V_i, w) / GALLONS_PER_CUBIC_FOOT,
});

/** Slurry from one sack [gal/sk]. */
export const slurryVolumePerSack = formula({
	id: "cement/slurry-volume-per-sack",
	name: "Slurry volume from one sack",
	expression: "Σ m_i V_i + w",
	source: cite("lapeyrouse", "ch. 2, cement additive calculations"),
	inputs: slurryInputs,
	gives: "water-requirement",
	validity: "one absolute volume for each mass (cement first, per sack of 94 lb)",
	compute: ({ m_i, V_i, w }) => slurryGallons(m_i, V_i, w),
});

/** Slurry density by the absolute volumes of what is in it [lb/gal]. */
export const slurryDensity = formula({
	id: "cement/slurry-density",
	name: "Slurry density by absolute volume",
	expression: "ρ = (Σ m_i + 8.33 w) / (Σ m_i V_i + w)",
	source: cite("lapeyrouse", "ch. 2, cement additive calculations"),
	inputs: slurryInputs,
	gives: "density",
	validity: "one absolute volume for each mass (cement first, per sack of 94 lb)",
	compute: ({ m_i, V_i, w }) =>
		(m_i.reduce<number>((sum, m) => sum + m, 0) + WATER_DENSITY * w) / slurryGallons(m_i, V_i, w),
});

/** Mixing water that brings a slurry to a wanted density [gal/sk]. */
export const waterForDensity = formula({
	id: "cement/water-for-density",
	name: "Mixing water for a wanted density",
	expression: "w = (Σ m_i − ρ Σ m_i V_i) / (ρ − 8.33)",
	source: cite("lapeyrouse", "ch. 2, water requirement and slurry yield for a wanted density"),
	inputs: {
		m_i: { many: "mass" },
		V_i: { many: "specific-volume" },
		ρ: "density",
	},
	gives: "water-requirement",
	validity: "heavier than water, lighter than the dry mix",
	compute: ({ m_i, V_i, ρ }) => {
		const mass = m_i.reduce<number>((sum, m) => sum + m, 0);
		const w = (mass - ρ * slurryGallons(m_i, V_i, 0)) / (ρ - WATER_DENSITY);
		return ρ > WATER_DENSITY && w >= 0 ? w : Number.NaN;
	},
});

/** Density that yield and water alone imply for a neat slurry, to lay beside the stated one [lb/gal]. */
export const densityFromYield = formula({
	id: "cement/density-from-yield",
	name: "Density implied by yield and water",
	expression: "ρ = (94 + 8.33 w) / (7.4805 y)",
	source: cite("conservation", "mass of one sack and its water over its slurry volume"),
	inputs: { y: "slurry-yield", w: "water-requirement" },
	gives: "density",
	validity: "one sack of 94 lb and its water; dry additives make the true density greater",
	compute: ({ y, w }) => (SACK_POUNDS + WATER_DENSITY * w) / (GALLONS_PER_CUBIC_FOOT * y),
});

/** Of a component, for every sack [lb]. */
export const componentMass = formula({
	id: "cement/component-mass",
	name: "Mass of a component for the whole slurry",
	expression: "M = n m",
	source: cite("definition"),
	inputs: { n: "count", m: "mass" },
	gives: "mass",
	compute: ({ n, m }) => n * m,
});
