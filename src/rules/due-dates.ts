import type { HowKnown, Jurisdiction, Limit, PublicCopy, Rule } from "../catalog/limits/limit.ts";
import { readConditions } from "../catalog/limits/read-conditions.ts";
import type { Said } from "../messages/message.ts";
import type { Well } from "../well/well.ts";
import type { Case } from "./case.ts";
import { dueDate } from "./deadline.ts";
import { EVENT_WORDS } from "./events.ts";
import type { Standing } from "./finding.ts";
import { outOfForce, PERMIT } from "./judge.ts";
import { subjectsOfRule } from "./subjects-of-rule.ts";

/** A notice or report with its day, for a calendar. */
export interface DueItem {
	/** `notice` before the work, `report` after it, or another check whose rule sets a day. */
	readonly check: string;
	readonly rule: string;
	/** Of the rule's deadlines, from 1. */
	readonly number: number;
	readonly citation: Said;
	readonly standing: Standing;
	readonly publicCopy?: PublicCopy;
	readonly howKnown: HowKnown;
	readonly textAsOf: string;
	readonly jurisdictionName: Said;
	readonly requirement: Said;
	/** ISO date. */
	readonly due: string;
	readonly event: string;
	/** `spud`, `the end of drilling`. */
	readonly eventWords: Said;
	/** `2 business days before`, `30 days after`. */
	readonly span: Said;
	readonly eventDate: string;
	readonly basis: "recorded" | "planned";
	/** ISO date on which the definition records it as sent. */
	readonly sent?: string;
}

const deadlinesIn = (limit: Limit): readonly Extract<Limit, { form: "deadline" }>[] => {
	if (limit.form === "deadline") return [limit];
	if (limit.form === "all of" || limit.form === "any of") return limit.parts.flatMap(deadlinesIn);
	return limit.form === "if" ? deadlinesIn(limit.limit) : [];
};

/**
 * Every due date that can be worked out, of the jurisdictions in force on the day of issue and of the permit's own
 * conditions, earliest first. Those whose event has no date are findings of `judge`.
 */
export const dueDates = (well: Well, jurisdictions: readonly Jurisdiction[]): readonly DueItem[] => {
	const conditions = readConditions(well.conditions).flatMap(({ rule, fault }) =>
		fault === undefined ? [rule] : [],
	);
	return [
		...jurisdictions.flatMap((jurisdiction) =>
			jurisdiction.rules.flatMap((rule) => dueOf(well, jurisdiction, rule)),
		),
		...conditions.flatMap((rule) => dueOf(well, PERMIT, rule)),
	].sort((a, b) => a.due.localeCompare(b.due) || a.rule.localeCompare(b.rule) || a.number - b.number);
};

const dueOf = (well: Well, authority: Case["jurisdiction"], rule: Rule): readonly DueItem[] => {
	const { id, check, citation, standing, requirement, limit } = rule;
	if (outOfForce(rule, well) !== undefined) return [];
	const sent = well.site.notices?.find((notice) => notice.rule === id)?.sent;
	const subjects = subjectsOfRule(rule, well);
	const strings =
		"verdict" in subjects
			? []
			: subjects.map((each) => (each.kind === "string" ? each.string.id : undefined));
	const asked = deadlinesIn(limit).flatMap((deadline) =>
		strings.map((string) => dueDate({ well, jurisdiction: authority }, deadline, string)),
	);
	return asked.flatMap((found, i): readonly DueItem[] => {
		if (!("due" in found)) return [];
		return [
			{
				check: check.replace(/^string-/, ""),
				rule: id,
				number: i + 1,
				citation,
				standing,
				...(rule.publicCopy === undefined ? {} : { publicCopy: rule.publicCopy }),
				howKnown: rule.howKnown,
				textAsOf: rule.textAsOf,
				jurisdictionName: authority.name,
				requirement,
				...found,
				eventWords: EVENT_WORDS[found.event],
				...(sent === undefined ? {} : { sent }),
			},
		];
	});
};
