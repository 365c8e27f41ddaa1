/**
 * Limits as data: `seeds/jurisdictions/*.yaml` and `seeds/practice/*.yaml`, read through the same machinery as a user's file.
 *
 * takes  codes, or the text of a file
 * gives  dated, cited rules in closed forms, and located faults
 * may not  judge
 */

export { applyDesignBasis, type DesignBasisLimit } from "./limits/design-basis.ts";
export type { Jurisdiction, Rule } from "./limits/limit.ts";
export {
	JURISDICTION_CODES,
	loadJurisdictions,
	loadPractice,
	PRACTICE_TOPICS,
} from "./limits/load-jurisdictions.ts";
export { type OwnRules, withOwnRules } from "./limits/own-rules.ts";
export { conditionFaults, readConditions } from "./limits/read-conditions.ts";
export { readJurisdictionText } from "./limits/read-rule-set.ts";
