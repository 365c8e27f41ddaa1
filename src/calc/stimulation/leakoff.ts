import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { BARREL, CUBIC_FOOT } from "../../units/factors.ts";

const source = cite("howard-fast-1957", "Carter's appendix");

const inputs = {
	q: "flow-rate",
	h: "length",
	w: "length",
	C: "leakoff",
	S: "length",
	t: "duration",
} as const;
type Given = { readonly [S in keyof typeof inputs]: number };

/** Half-length of a fracture of constant width that loses fluid through its faces [ft]. */
export const carterHalfLength = formula({
	id: "stimulation/carter-half-length",
	name: "Half-length with leakoff (Carter)",
	expression: "x_f = (w + 2S) q / (4 π C² h) [e^(β²) erfc β + 2β/√π − 1], β = 2 C √(π t) / (w + 2S)",
	source,
	inputs,
	gives: "length",
	validity: "constant mean width; one-wing rate; leakoff above zero; height taken as wholly permeable",
	compute: (given) => halfLength(given),
});

/** Part of the injected fluid that is still in the fracture. */
export const carterEfficiency = formula({
	id: "stimulation/carter-efficiency",
	name: "Fluid efficiency with leakoff (Carter)",
	expression: "η = w h x_f / (q t)",
	source,
	inputs,
	gives: "share",
	validity: "as the half-length",
	compute: (given) => (given.w * given.h * halfLength(given)) / (cubicFeet(given.q) * given.t),
});

const cubicFeet = (barrels: number): number => barrels * (BARREL / CUBIC_FOOT);

const halfLength = ({ q, h, w, C, S, t }: Given): number => {
	if (C <= 0 || w <= 0 || h <= 0 || t < 0) return Number.NaN;
	const wide = w + 2 * S;
	const beta = (2 * C * Math.sqrt(Math.PI * t)) / wide;
	return ((wide * cubicFeet(q)) / (4 * Math.PI * C ** 2 * h)) * carterBracket(beta);
};

/**
 * e^(x²) erfc x + 2x/√π − 1 for x ≥ 0.
 *
 * Below 2.5 by the power series Σ (−x)ⁿ/Γ(n/2 + 1) from its x² term on, which keeps its digits where the closed form
 * cancels; above by the continued fraction of erfc.
 */
export const carterBracket = (x: number): number => {
	if (x < 2.5) {
		// even terms sum to e^(x²) − 1, odd ones beyond the first to −(e^(x²) erf x − 2x/√π)
		let even = 1;
		let odd = (2 * x) / Math.sqrt(Math.PI);
		let sum = 0;
		for (let n = 1; n < 200; n++) {
			even *= (x * x) / n;
			odd *= (x * x) / (n + 0.5);
			sum += even - odd;
			if (even < 1e-18 * Math.abs(sum)) break;
		}
		return sum;
	}
	let fraction = 0;
	for (let n = 120; n >= 1; n--) fraction = n / 2 / (x + fraction);
	return 1 / (Math.sqrt(Math.PI) * (x + fraction)) + (2 * x) / Math.sqrt(Math.PI) - 1;
};
