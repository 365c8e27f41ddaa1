import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/*
 * Two published ways to a radius, which do not agree: a paper says which one it prints. Neither is a safe distance, and
 * neither knows the ground or the weather of the day.
 */

const texas = (ppm: 100 | 500, coefficient: number) =>
	formula({
		id: `safety/h2s-radius-${ppm}-rule`,
		name: `Radius of exposure to ${ppm} ppm hydrogen sulfide, rule form`,
		expression: `X${ppm} = (${coefficient} MF Q)^0.6258`,
		source: cite("tac-3-36", "(c), radius of exposure (memory)"),
		inputs: { MF: "gas-fraction", Q: "gas-rate" },
		gives: "distance",
		validity:
			"Q in scf/d at 14.65 psia and 60 °F, MF as a mole fraction; the rule starts at 100 ppm in the system",
		compute: ({ MF, Q }) => (MF < 0 || Q < 0 ? Number.NaN : (coefficient * (MF / 1e6) * Q) ** 0.6258),
	});

/** [ft] */
export const ruleRadius100 = texas(100, 1.589);
/** [ft] */
export const ruleRadius500 = texas(500, 0.4546);

/** Hydrogen sulfide in a stream of gas [scf/d]. */
export const hydrogenSulfideRate = formula({
	id: "safety/h2s-rate",
	name: "Hydrogen sulfide released",
	expression: "q = Q ppm / 10⁶",
	source: cite("api-55", "Annex C, release rate"),
	inputs: { Q: "gas-rate", ppm: "gas-fraction" },
	gives: "gas-rate",
	compute: ({ Q, ppm }) => (Q * ppm) / 1e6,
});

/** Pounds of hydrogen sulfide in an hour of a stream. */
export const hydrogenSulfideMass = formula({
	id: "safety/h2s-mass-per-hour",
	name: "Hydrogen sulfide released in an hour",
	expression: "m = Q ppm / 267,605,634",
	source: cite("api-55", "Annex C, release rate"),
	inputs: { Q: "gas-rate", ppm: "gas-fraction" },
	gives: "mass",
	compute: ({ Q, ppm }) => (Q * ppm) / 267_605_634,
});

const annexC = (id: string, name: string, a: number, b: number, sample: string) =>
	formula({
		id: `safety/${id}`,
		name,
		expression: `ROE = 10^(${a} log q + ${b}), q in scf of hydrogen sulfide an hour`,
		source: cite("api-55", `Annex C, ${sample}`),
		inputs: { q: "gas-rate" },
		gives: "distance",
		validity: "a continuous release of hydrogen sulfide at 100 ppm",
		compute: ({ q }) => (q > 0 ? 10 ** (a * Math.log10(q / 24) + b) : Number.NaN),
	});

/** [ft] */
export const continuousRadiusDay = annexC(
	"h2s-radius-annex-c-day",
	"Radius of exposure to 100 ppm hydrogen sulfide, continuous, by day",
	0.58,
	0.45,
	"sample C.9",
);
/** [ft] */
export const continuousRadiusNight = annexC(
	"h2s-radius-annex-c-night",
	"Radius of exposure to 100 ppm hydrogen sulfide, continuous, at night",
	0.66,
	0.69,
	"continuous release, night",
);

/** [ft] */
export const puffRadiusDay = formula({
	id: "safety/h2s-radius-annex-c-puff",
	name: "Radius of exposure to 100 ppm hydrogen sulfide, one puff, by day",
	expression: "ROE = 10^(0.39 log q + 1.91), q in scf of hydrogen sulfide",
	source: cite("api-55", "Annex C, sample C.11"),
	inputs: { q: "gas-volume" },
	gives: "distance",
	validity: "a puff of hydrogen sulfide at 100 ppm",
	compute: ({ q }) => (q > 0 ? 10 ** (0.39 * Math.log10(q) + 1.91) : Number.NaN),
});
