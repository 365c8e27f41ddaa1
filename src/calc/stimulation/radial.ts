import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { FOOT, INCH } from "../../units/factors.ts";
import { INJECTION, inSi } from "./plane-strain.ts";

const source = cite("valko-economides-1995", "radial fracture");
const validity = "no leakoff; one-wing rate; Newtonian fluid";
const inputs = { ...INJECTION, t: "duration" } as const;

/** [ft] */
export const radialRadius = formula({
	id: "stimulation/radial-radius",
	name: "Radial fracture, radius without leakoff",
	expression: "R = 0.572 (q³ E' / μ)^(1/9) t^(4/9)",
	source,
	inputs,
	gives: "length",
	validity,
	compute: (given) => {
		const { q, μ, E } = inSi(given);
		return (0.572 * ((q ** 3 * E) / μ) ** (1 / 9) * (given.t * 60) ** (4 / 9)) / FOOT;
	},
});

/** [in] */
export const radialWidth = formula({
	id: "stimulation/radial-width",
	name: "Radial fracture, greatest width without leakoff",
	expression: "w_0 = 3.65 (q³ μ² / E'²)^(1/9) t^(1/9)",
	source,
	inputs,
	gives: "diameter",
	validity,
	compute: (given) => {
		const { q, μ, E } = inSi(given);
		return (3.65 * ((q ** 3 * μ ** 2) / E ** 2) ** (1 / 9) * (given.t * 60) ** (1 / 9)) / INCH;
	},
});
