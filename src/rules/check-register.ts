import { CHECK_IDS, CHECK_LIMITS, type CheckId } from "../catalog/limits/checks.ts";
import { MEASURES, type MeasureName, type SubjectKind } from "../catalog/limits/measures.ts";
import type { LimitForm } from "../catalog/limits/vocabulary.ts";
import type { Dimension } from "../units/dimensions.ts";
import { CHECK_CODE } from "./checks/index.ts";

/** A check as `list checks` and `explain` print it. */
export interface CheckEntry {
	readonly id: CheckId;
	readonly title: string;
	readonly looksAt: string;
	/** What one finding is made on. */
	readonly subject: SubjectKind;
	/** Forms of limit it takes; every check also takes `all of`, `any of` and `if`. */
	readonly forms: readonly LimitForm[];
	readonly measures: readonly { readonly name: MeasureName; readonly dimension: Dimension }[];
	readonly explain: string;
}

/** Every check, in the order of the vocabulary. */
export const CHECKS: readonly CheckEntry[] = CHECK_IDS.map((id) => {
	const { title, looksAt, explain } = CHECK_CODE[id];
	const { subject, forms, measures } = CHECK_LIMITS[id];
	return {
		id,
		title,
		looksAt,
		subject,
		forms,
		measures: measures.map((name) => ({ name, dimension: MEASURES[name].dimension })),
		explain,
	};
});
