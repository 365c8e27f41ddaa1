/**
 * Checks meet limits.
 *
 * takes  a well, what was computed of it, and the jurisdictions' limits as data
 * gives  a finding for each limit on each thing it is asked of: a verdict, a sentence with the numbers, the citation and
 *        its standing; what is missing; due dates; the register of checks
 * may not  hold a number of law, merge two limits into one, or pass on silence
 */
export { CHECKS, type CheckEntry } from "./check-register.ts";
export { type DueItem, dueDates } from "./due-dates.ts";
export { limitsOfCheck } from "./explain-check.ts";
export type { Finding, Judgement, LimitCitation, MissingInput, MissingItem } from "./finding.ts";
export { RULE_FORMULAS } from "./formulas.ts";
export { judge } from "./judge.ts";
export { missingIn, missingInformation } from "./missing-information.ts";
export { type Reason, type ReasonPart, type SaidPart, say, sayParts } from "./reason.ts";
export { WORST_VERDICT_FIRST, worstFirst } from "./worst-first.ts";
