import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { FOOT, INCH, PSI } from "../../units/factors.ts";
import { INJECTION, inSi } from "./plane-strain.ts";

const source = cite("valko-economides-1995", "KGD");
const validity = "no leakoff; half-length below the height; one-wing rate; Newtonian fluid";
const timed = { ...INJECTION, h: "length", t: "duration" } as const;

/** [in] */
export const kgdWidth = formula({
	id: "stimulation/kgd-width",
	name: "KGD mean width at a half-length",
	expression: "w = π/4 · 3.22 (μ q x_f² / (E' h))^¼",
	source,
	inputs: { ...INJECTION, x_f: "length", h: "length" },
	gives: "diameter",
	validity: "half-length below the height; one-wing rate; Newtonian fluid",
	compute: (given) => {
		const { q, μ, E } = inSi(given);
		const x = given.x_f * FOOT;
		return ((Math.PI / 4) * 3.22 * ((μ * q * x ** 2) / (E * given.h * FOOT)) ** 0.25) / INCH;
	},
});

/** [ft] */
export const kgdLength = formula({
	id: "stimulation/kgd-length",
	name: "KGD half-length without leakoff",
	expression: "x_f = 0.539 (q³ E' / (μ h³))^⅙ t^⅔",
	source,
	inputs: timed,
	gives: "length",
	validity,
	compute: (given) => {
		const { q, μ, E } = inSi(given);
		const h = given.h * FOOT;
		return (0.539 * ((q ** 3 * E) / (μ * h ** 3)) ** (1 / 6) * (given.t * 60) ** (2 / 3)) / FOOT;
	},
});

/** [in] */
export const kgdGrowth = formula({
	id: "stimulation/kgd-growth",
	name: "KGD greatest width at the well without leakoff",
	expression: "w = 2.36 (q³ μ / (E' h³))^⅙ t^⅓",
	source,
	inputs: timed,
	gives: "diameter",
	validity,
	compute: (given) => {
		const { q, μ, E } = inSi(given);
		const h = given.h * FOOT;
		return (2.36 * ((q ** 3 * μ) / (E * h ** 3)) ** (1 / 6) * (given.t * 60) ** (1 / 3)) / INCH;
	},
});

/** [psi] */
export const kgdPressure = formula({
	id: "stimulation/kgd-pressure",
	name: "KGD net pressure at the well without leakoff",
	expression: "p = 1.09 (E'² μ)^⅓ t^−⅓",
	source,
	inputs: { μ: "plastic-viscosity", "E'": "pressure", t: "duration" },
	gives: "pressure",
	validity: "no leakoff; half-length below the height; Newtonian fluid; time above zero",
	compute: (given) => {
		const { μ, E } = inSi({ ...given, q: 0 });
		return given.t <= 0 ? Number.NaN : (1.09 * (E ** 2 * μ) ** (1 / 3) * (given.t * 60) ** (-1 / 3)) / PSI;
	},
});
