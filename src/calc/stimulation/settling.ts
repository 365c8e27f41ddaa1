import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { FOOT, INCH, STANDARD_GRAVITY, WATER } from "../../units/factors.ts";

/** Speed at which a grain falls through still fluid [ft/s]. */
export const settlingVelocity = formula({
	id: "stimulation/settling-velocity",
	name: "Settling velocity of a single grain",
	expression: "v = √(4 g d (SG_p − SG_f) / (3 C_D SG_f)), C_D = 24/Re (1 + 0.15 Re^0.687), Re = ρ_f v d / μ",
	source: cite("schiller-naumann-1933", "drag of a sphere"),
	inputs: { d: "diameter", SG_p: "ratio", SG_f: "ratio", μ: "plastic-viscosity" },
	gives: "fluid-velocity",
	validity: "spheres in a Newtonian fluid lighter than they are; grain Reynolds number below 1,000",
	compute: ({ d, SG_p, SG_f, μ }) => {
		if (SG_p <= SG_f || μ <= 0) return Number.NaN;
		const metres = d * INCH;
		const pascalSeconds = μ * 1e-3;
		const reynolds = (v: number) => (SG_f * WATER * v * metres) / pascalSeconds;
		// Weight under water against drag: 3πμdv(1 + 0.15 Re^0.687) grows with v, so halving always closes in.
		const weight = (Math.PI / 6) * metres ** 3 * (SG_p - SG_f) * WATER * STANDARD_GRAVITY;
		const drag = (v: number) => 3 * Math.PI * pascalSeconds * metres * v * (1 + 0.15 * reynolds(v) ** 0.687);
		let low = 0;
		let high = weight / (3 * Math.PI * pascalSeconds * metres);
		for (let i = 0; i < 100; i++) {
			const middle = (low + high) / 2;
			if (drag(middle) < weight) low = middle;
			else high = middle;
		}
		return reynolds(high) > 1000 ? Number.NaN : high / FOOT;
	},
});

/** The same among many grains [ft/s]. */
export const hinderedSettlingVelocity = formula({
	id: "stimulation/hindered-settling-velocity",
	name: "Hindered settling velocity",
	expression: "v_h = v (1 − φ)⁵",
	source: cite("common-practice", "exponent of about 5"),
	inputs: { v: "fluid-velocity", φ: "share" },
	gives: "fluid-velocity",
	validity: "solids from 0 to 0.5 of the slurry",
	compute: ({ v, φ }) => (φ < 0 || φ > 0.5 ? Number.NaN : v * (1 - φ) ** 5),
});
