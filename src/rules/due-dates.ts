import type { Jurisdiction, Limit } from "../catalog/limits/limit.ts";
import type { Well } from "../well/well.ts";
import { dueDate } from "./deadline.ts";

/** A notice or report with its day, for a calendar. */
export interface DueItem {
	readonly rule: string;
	readonly citation: string;
	readonly jurisdictionName: string;
	readonly requirement: string;
	/** ISO date. */
	readonly due: string;
	readonly event: string;
	/** `2 business days before`, `30 days after`. */
	readonly span: string;
	readonly eventDate: string;
	readonly basis: "recorded" | "planned";
}

const deadlinesIn = (limit: Limit): readonly Extract<Limit, { form: "deadline" }>[] => {
	if (limit.form === "deadline") return [limit];
	if (limit.form === "all of" || limit.form === "any of") return limit.parts.flatMap(deadlinesIn);
	return limit.form === "if" ? deadlinesIn(limit.limit) : [];
};

/** Every due date that can be worked out, earliest first. Those whose event has no date are findings of `judge`. */
export const dueDates = (well: Well, jurisdictions: readonly Jurisdiction[]): readonly DueItem[] =>
	jurisdictions
		.flatMap((jurisdiction) =>
			jurisdiction.rules.flatMap(({ id, citation, requirement, limit }) =>
				deadlinesIn(limit).flatMap((deadline): DueItem[] => {
					const found = dueDate({ well, jurisdiction }, deadline);
					if (!("due" in found)) return [];
					return [{ rule: id, citation, jurisdictionName: jurisdiction.name, requirement, ...found }];
				}),
			),
		)
		.sort((a, b) => a.due.localeCompare(b.due) || a.rule.localeCompare(b.rule));
