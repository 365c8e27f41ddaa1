import type { Condition, Limit, LimitLeaf } from "../catalog/limits/limit.ts";
import type { Case } from "./case.ts";
import { CHECK_CODE } from "./checks/index.ts";
import { compare } from "./compare.ts";
import { holding } from "./condition.ts";
import { allOf, anyOf, cannotTell, doesNotApply, type Outcome } from "./outcome.ts";

/** Code of a check for one form of limit. The reader of rules files lets through only the forms a check takes. */
const leafOutcome = (the: Case, leaf: LimitLeaf): Outcome => {
	const forms = CHECK_CODE[the.rule.check].forms ?? {};
	const code = forms[leaf.form] as ((the: Case, leaf: LimitLeaf) => Outcome) | undefined;
	if (code !== undefined) return code(the, leaf);
	if (leaf.form === "threshold") return compare(the, leaf);
	throw new TypeError(`the check ${the.rule.check} has no code for a limit of the form "${leaf.form}"`);
};

/** Whether a limit is one way of several (`any_of`), or asked beside whatever else is. */
type Among = "all" | "any";

/**
 * A limit asked only under a condition. Where the condition cannot be told, a limit that is met is met either way, and one
 * that is not leaves the question open. As one way of several it is the other way round: a way that may not be there for
 * this well carries nothing until the condition is told, and one that fails carries nothing in any case.
 */
export const under = (
	the: Case,
	conditions: readonly Condition[],
	then: () => Outcome,
	among: Among = "all",
): Outcome => {
	const held = conditions.map((condition) => holding(the, condition));
	const failing = held.find((each) => "holds" in each && !each.holds);
	if (failing && "because" in failing) return doesNotApply(...failing.because, ".");
	const open = held.flatMap((each) => ("missing" in each ? each.missing : []));
	const outcome = then();
	const settled = among === "all" ? "met" : "not met";
	if (open.length === 0 || outcome.verdict === settled || outcome.verdict === "does not apply")
		return outcome;
	return cannotTell([...open, ...outcome.missing]);
};

/** One limit, of whatever form, on one case. */
export const evaluate = (the: Case, limit: Limit, among: Among = "all"): Outcome => {
	switch (limit.form) {
		case "all of":
			return allOf(limit.parts.map((part) => evaluate(the, part)));
		case "any of":
			return anyOf(limit.parts.map((part) => evaluate(the, part, "any")));
		case "if":
			return under(the, [limit.condition], () => evaluate(the, limit.limit, among), among);
		default:
			return leafOutcome(the, limit);
	}
};
