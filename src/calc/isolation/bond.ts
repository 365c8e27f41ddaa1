import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** From this index the guidance calls a stretch bonded. */
export const BONDED = 0.8;

const semilog = cite(
	"epa-r8-guidance-34",
	"amplitude against bond index on a semilog chart: 0 % at free pipe, 100 % at full bond",
);

/** How far the amplitude has fallen from free pipe to full bond, on the log scale [share]. */
export const bondIndex = formula({
	id: "isolation/bond-index",
	name: "Bond index",
	expression: "BI = log(A_0 / A) / log(A_0 / A_100)",
	source: semilog,
	inputs: { A: "sonic-amplitude", A_0: "sonic-amplitude", A_100: "sonic-amplitude" },
	gives: "share",
	validity: "A_0 in free pipe above A_100 in full bond; below full bond it is 100 %, above free pipe 0",
	compute: ({ A, A_0, A_100 }) =>
		A > 0 && A_100 > 0 && A_0 > A_100
			? Math.min(1, Math.max(0, Math.log(A_0 / A) / Math.log(A_0 / A_100)))
			: Number.NaN,
});

/** The amplitude at which a stretch begins to count as bonded [mV]. */
export const bondedAmplitude = formula({
	id: "isolation/bonded-amplitude",
	name: "Amplitude at a bond index of 80 %",
	expression: "A_80 = 10^(0.2 log A_0 + 0.8 log A_100)",
	source: semilog,
	inputs: { A_0: "sonic-amplitude", A_100: "sonic-amplitude" },
	gives: "sonic-amplitude",
	validity: "A_0 in free pipe above A_100 in full bond",
	compute: ({ A_0, A_100 }) =>
		A_100 > 0 && A_0 > A_100
			? 10 ** ((1 - BONDED) * Math.log10(A_0) + BONDED * Math.log10(A_100))
			: Number.NaN,
});

const stretches = {
	top: "measured-depth",
	bottom: "measured-depth",
	MD_top: { many: "measured-depth" },
	MD_bottom: { many: "measured-depth" },
} as const;

/** As far as each stretch lies between two depths, in order. */
const within = (
	top: number,
	bottom: number,
	MD_top: readonly number[],
	MD_bottom: readonly number[],
): readonly (readonly [number, number])[] =>
	MD_top.map((from, i) => [Math.max(from, top), Math.min(MD_bottom[i] ?? from, bottom)] as const)
		.filter(([from, to]) => to > from)
		.sort(([a], [b]) => a - b);

/** Length of all stretches between two depths, along the hole [ft]. */
export const lengthWithin = formula({
	id: "isolation/length-within",
	name: "Length of the stretches between two depths",
	expression: "Σ max(0, min(MD_bottom, bottom) − max(MD_top, top))",
	source: cite("definition"),
	inputs: stretches,
	gives: "length",
	validity: "one top for each bottom; stretches that do not overlap",
	compute: ({ top, bottom, MD_top, MD_bottom }) =>
		MD_top.length !== MD_bottom.length || bottom < top
			? Number.NaN
			: within(top, bottom, MD_top, MD_bottom).reduce((sum, [from, to]) => sum + to - from, 0),
});

/** Stretches that meet within this are one [ft]. */
const MEET = 0.5;

/** The longest that runs without a break between two depths, along the hole [ft]. */
export const longestWithin = formula({
	id: "isolation/longest-within",
	name: "Longest continuous stretch between two depths",
	expression: "max of the lengths of stretches joined where they meet",
	source: cite("definition"),
	inputs: stretches,
	gives: "length",
	validity: "one top for each bottom",
	compute: ({ top, bottom, MD_top, MD_bottom }) => {
		if (MD_top.length !== MD_bottom.length || bottom < top) return Number.NaN;
		let [longest, start, end] = [0, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
		for (const [from, to] of within(top, bottom, MD_top, MD_bottom)) {
			if (from > end + MEET) start = from;
			end = Math.max(end, to);
			longest = Math.max(longest, end - start);
		}
		return longest;
	},
});

/** Pressure that came back into an annulus after it was bled [psi]. */
export const pressureRebuilt = formula({
	id: "isolation/pressure-rebuilt",
	name: "Annulus pressure that came back after a bleed",
	expression: "max(0, p_rebuilt − p_bled)",
	source: cite("api-90", "sustained casing pressure: pressure that rebuilds after it is bled down (memory)"),
	inputs: { p_rebuilt: "pressure", p_bled: "pressure" },
	gives: "pressure",
	compute: ({ p_rebuilt, p_bled }) => Math.max(0, p_rebuilt - p_bled),
});

/** Zones that no sheath is shown to seal [count]. */
export const zonesUnsealed = formula({
	id: "isolation/zones-unsealed",
	name: "Zones of protected water without a seal shown",
	expression: "number with n_i < 1",
	source: cite("definition", "n_i, sheaths across a zone that are verified"),
	inputs: { n_i: { many: "count" } },
	gives: "count",
	compute: ({ n_i }) => n_i.filter((n) => n < 1).length,
});
