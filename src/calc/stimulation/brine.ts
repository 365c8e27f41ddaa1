import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Pounds a gallon in a pound a cubic foot. */
const GALLONS_PER_CUBIC_FOOT = 7.4805;
/** Milligrams a liter in a pound a cubic foot. */
const MG_PER_LITER = 16_018.46;

/** Of water with a share of solids by weight [lb/ft³]. */
const perCubicFoot = (percent: number): number => 62.368 + 0.438603 * percent + 1.60074e-3 * percent ** 2;

const source = cite("mccain-1990", "density of formation water at standard conditions; from memory");
const validity = "60 °F and one atmosphere; salt mostly sodium chloride, up to saturation";

/** [lb/gal] */
export const brineDensity = formula({
	id: "stimulation/brine-density",
	name: "Density of salt water by share of solids",
	expression: "ρ = (62.368 + 0.438603 S + 0.00160074 S²) / 7.4805, S in % by weight",
	source,
	inputs: { S: "share" },
	gives: "density",
	validity,
	compute: ({ S }) => (S < 0 || S > 0.27 ? Number.NaN : perCubicFoot(100 * S) / GALLONS_PER_CUBIC_FOOT),
});

/** [lb/gal] */
export const brineDensityOfSolids = formula({
	id: "stimulation/brine-density-of-solids",
	name: "Density of salt water by dissolved solids",
	expression: "ρ as by share, S such that S ρ is the solids in a volume",
	source,
	inputs: { C: "dissolved-solids" },
	gives: "density",
	validity,
	compute: ({ C }) => {
		if (C < 0 || C > 320_000) return Number.NaN;
		const solids = C / MG_PER_LITER;
		let percent = 0;
		for (let i = 0; i < 40; i++) percent = (100 * solids) / perCubicFoot(percent);
		return perCubicFoot(percent) / GALLONS_PER_CUBIC_FOOT;
	},
});

/** Density of waters put together [lb/gal]: volumes are taken to add. */
export const blendDensity = formula({
	id: "stimulation/blend-density",
	name: "Density of the blend of water",
	expression: "ρ = Σ s_i ρ_i / Σ s_i",
	source: cite("conservation", "mass over volume; volumes add within a part in a thousand"),
	inputs: { s_i: { many: "share" }, ρ_i: { many: "density" } },
	gives: "density",
	validity: "a density for each share, shares above zero together",
	compute: ({ s_i, ρ_i }) => {
		const whole = s_i.reduce<number>((sum, s) => sum + s, 0);
		return s_i.length !== ρ_i.length || whole <= 0
			? Number.NaN
			: s_i.reduce<number>((sum, s, i) => sum + s * (ρ_i[i] ?? Number.NaN), 0) / whole;
	},
});

/** Stated density of the base fluid off that of its water, either way [lb/gal]. */
export const blendOff = formula({
	id: "stimulation/blend-off",
	name: "Base fluid off the blend of its water",
	expression: "|ρ_f − ρ_b|",
	source: cite("definition"),
	inputs: { ρ_f: "density", ρ_b: "density" },
	gives: "density",
	compute: ({ ρ_f, ρ_b }) => Math.abs(ρ_f - ρ_b),
});
