import type { CheckId } from "../../catalog/limits/checks.ts";
import type { LimitLeaf } from "../../catalog/limits/limit.ts";
import type { Case } from "../case.ts";
import type { Outcome } from "../outcome.ts";

/** A check: what it looks at, in words, and code for the forms of limit that are not plain comparisons. */
export interface Check {
	/** What a finding's line is headed by. */
	readonly title: string;
	/** The inputs and results it reads, for `list checks`. */
	readonly looksAt: string;
	/** What it means, why it matters, and what it cannot see, for `explain`. */
	readonly explain: string;
	readonly forms?: {
		readonly [F in LimitLeaf["form"]]?: (the: Case, leaf: Extract<LimitLeaf, { form: F }>) => Outcome;
	};
}

export type Checks<I extends CheckId = CheckId> = Readonly<Record<I, Check>>;
