import type { Verdict } from "../document/verdict.ts";
import type { Finding } from "./finding.ts";

/** What a reader must act on comes first; what is in order comes last. */
export const WORST_VERDICT_FIRST: readonly Verdict[] = [
	"not met",
	"cannot tell",
	"needs judgement",
	"met",
	"does not apply",
];

/** Share of the limit that is left: −0.05 is five hundredths short. Nothing where there is no margin. */
const shareLeft = ({ margin, required }: Finding): number => {
	if (margin === undefined || required === undefined) return Number.POSITIVE_INFINITY;
	return margin.value / Math.max(Math.abs(required.value), Number.EPSILON);
};

const rank = (finding: Finding): readonly number[] => [
	WORST_VERDICT_FIRST.indexOf(finding.verdict),
	finding.stop === undefined ? 1 : 0,
	shareLeft(finding),
];

/**
 * Findings of law and practice together, the worst first: by verdict, those that keep a job from starting before the
 * others, then by how far the limit is missed. Equals keep the order of the rules.
 */
export const worstFirst = (findings: readonly Finding[]): readonly Finding[] =>
	findings.toSorted((a, b) => {
		const [of, other] = [rank(a), rank(b)];
		const i = of.findIndex((value, at) => value !== other[at]);
		return i < 0 ? 0 : (of[i] ?? 0) - (other[i] ?? 0);
	});
