import { formula } from "../cite/formula.ts";
import { cite } from "../cite/source.ts";

/** A wall that leaves a bore. */
export const isPipe = (D: number, t: number): boolean => t > 0 && 2 * t < D;

export const insideDiameter = formula({
	id: "casing/inside-diameter",
	name: "Inside diameter",
	expression: "d = D − 2t",
	source: cite("definition"),
	inputs: { D: "diameter", t: "diameter" },
	gives: "diameter",
	validity: "0 < t < D/2",
	compute: ({ D, t }) => (isPipe(D, t) ? D - 2 * t : Number.NaN),
});

/** What a standard drift mandrel must pass. Sizes between the listed ones are not API casing. */
export const drift = formula({
	id: "casing/drift",
	name: "Drift diameter",
	expression: "d − 1/8 (D ≤ 8 5/8), d − 5/32 (9 5/8 to 13 3/8), d − 3/16 (D ≥ 16)",
	source: cite("api-5ct", "standard drift mandrels"),
	inputs: { D: "diameter", t: "diameter" },
	gives: "diameter",
	validity: "0 < t < D/2",
	compute: ({ D, t }) => {
		if (!isPipe(D, t)) return Number.NaN;
		const d = D - 2 * t;
		if (D <= 8.625) return { value: d - 1 / 8, branch: "8 5/8 and smaller" };
		if (D <= 13.375) return { value: d - 5 / 32, branch: "9 5/8 to 13 3/8" };
		return { value: d - 3 / 16, branch: "16 and larger" };
	},
});
