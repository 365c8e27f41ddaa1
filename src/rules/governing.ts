import type { Operator } from "../catalog/limits/limit.ts";
import { practicallyEqual } from "../units/practically-equal.ts";
import type { Finding } from "./finding.ts";

type Compared = Finding & Required<Pick<Finding, "required" | "measured" | "comparison">>;

const isCompared = (finding: Finding): finding is Compared =>
	finding.required !== undefined &&
	finding.measured !== undefined &&
	["at least", "more than", "at most", "less than"].includes(finding.comparison ?? "");

const upward = (comparison: Compared["comparison"]): boolean =>
	(["at least", "more than"] satisfies readonly Operator[]).some((each) => each === comparison);

/** What two limits have in common that bind the same thing: the check, the subject, the value found, and the side. */
const bindsSame = (a: Compared, b: Compared): boolean =>
	a.check === b.check &&
	a.subject === b.subject &&
	a.measured.dimension === b.measured.dimension &&
	practicallyEqual(a.measured.value, b.measured.value) &&
	upward(a.comparison) === upward(b.comparison);

/** Whether a limit asks more than another on the same side. */
const stricter = (a: Compared, b: Compared): boolean =>
	upward(a.comparison) ? a.required.value > b.required.value : a.required.value < b.required.value;

/**
 * Findings with the governing one of several marked: of limits that bind the same value of the same thing on the same side, the one
 * that asks most. Nothing is merged, and a limit that stands alone carries no mark.
 */
export const withGoverning = (findings: readonly Finding[]): readonly Finding[] => {
	const compared = findings.filter(isCompared);
	return findings.map((finding) => {
		if (!isCompared(finding)) return finding;
		const others = compared.filter(
			(each) => each.cite.rule !== finding.cite.rule && bindsSame(each, finding),
		);
		const governs = others.length > 0 && !others.some((each) => stricter(each, finding));
		return governs ? { ...finding, governing: true } : finding;
	});
};
