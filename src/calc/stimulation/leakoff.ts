import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { BARREL, CUBIC_FOOT } from "../../units/factors.ts";

const source = cite("howard-fast-1957", "Carter's appendix");

const inputs = {
	rate: "flow-rate",
	height: "length",
	width: "length",
	leakoff: "leakoff",
	spurt: "length",
	time: "duration",
} as const;

/** Half-length of a fracture of constant width that loses fluid through its faces [ft]. */
export const carterHalfLength = formula({
	id: "stimulation/carter-half-length",
	name: "Half-length with leakoff (Carter)",
	expression: "x_f = (w̄ + 2S) q / (4 π C² h) [e^(β²) erfc β + 2β/√π − 1], β = 2 C √(π t) / (w̄ + 2S)",
	source,
	inputs,
	gives: "length",
	validity: "constant average width; one-wing rate; leakoff above zero; height taken as wholly permeable",
	compute: ({ rate, height, width, leakoff, spurt, time }) =>
		halfLength(rate, height, width, leakoff, spurt, time),
});

/** Part of the injected fluid that is still in the fracture. */
export const carterEfficiency = formula({
	id: "stimulation/carter-efficiency",
	name: "Fluid efficiency with leakoff (Carter)",
	expression: "η = w̄ h x_f / (q t)",
	source,
	inputs,
	gives: "share",
	validity: "as the half-length",
	compute: ({ rate, height, width, leakoff, spurt, time }) =>
		(width * height * halfLength(rate, height, width, leakoff, spurt, time)) /
		(rate * (BARREL / CUBIC_FOOT) * time),
});

const halfLength = (
	rate: number,
	height: number,
	width: number,
	leakoff: number,
	spurt: number,
	time: number,
): number => {
	if (leakoff <= 0 || width <= 0 || height <= 0 || time < 0) return Number.NaN;
	const cubicFeetPerMinute = rate * (BARREL / CUBIC_FOOT);
	const wide = width + 2 * spurt;
	const beta = (2 * leakoff * Math.sqrt(Math.PI * time)) / wide;
	const bracket = scaledErfc(beta) + (2 * beta) / Math.sqrt(Math.PI) - 1;
	return ((wide * cubicFeetPerMinute) / (4 * Math.PI * leakoff ** 2 * height)) * bracket;
};

/**
 * e^(x²) erfc x for x ≥ 0: by the series of erf below 2.5, by its continued fraction above, where the product of the
 * two functions would overflow and vanish. About twelve figures, less what the bracket above loses to cancellation.
 */
export const scaledErfc = (x: number): number => {
	if (x < 2.5) {
		let term = x;
		let sum = x;
		for (let n = 1; n < 200 && Math.abs(term) > 1e-17 * sum; n++) {
			term *= (2 * x * x) / (2 * n + 1);
			sum += term;
		}
		// erf x = 2/√π e^(−x²) Σ 2ⁿ x^(2n+1) / (1·3·…·(2n+1)), all terms of one sign
		return Math.exp(x * x) - (2 / Math.sqrt(Math.PI)) * sum;
	}
	let fraction = 0;
	for (let n = 120; n >= 1; n--) fraction = n / 2 / (x + fraction);
	return 1 / (Math.sqrt(Math.PI) * (x + fraction));
};
