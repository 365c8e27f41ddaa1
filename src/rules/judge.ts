import type { Results } from "../calc/results.ts";
import { CHECK_LIMITS } from "../catalog/limits/checks.ts";
import type { InForceBy, Jurisdiction, Rule } from "../catalog/limits/limit.ts";
import { readConditions } from "../catalog/limits/read-conditions.ts";
import type { EventName } from "../catalog/limits/vocabulary.ts";
import { VERDICTS, type Verdict } from "../document/verdict.ts";
import { message, type Said } from "../messages/message.ts";
import type { Well } from "../well/well.ts";
import { daysBetween } from "./calendar.ts";
import type { Case } from "./case.ts";
import { evaluate, under } from "./evaluate.ts";
import { EVENT_WORDS, eventDate } from "./events.ts";
import type { Finding, Judgement, LimitCitation } from "./finding.ts";
import { marginBetween } from "./formulas.ts";
import { withGoverning } from "./governing.ts";
import { cannotTell, doesNotApply, type Outcome } from "./outcome.ts";
import { joined, type Reason } from "./reason.ts";
import { appliedRuleSets } from "./rule-sets.ts";
import { type Subject, subjectName } from "./subject.ts";
import { noneListed, ruleSubject, subjectsOfRule } from "./subjects-of-rule.ts";

/** A rule and the authority that made it; a permit's own conditions come under the permit. */
interface Authority {
	readonly code: string;
	readonly name: Said;
	readonly kind: LimitCitation["kind"];
	readonly holidays?: NonNullable<Jurisdiction["holidays"]>;
}

/** Practice is said in the reader's words: its files bear no name of an authority. */
const PRACTICE = message("rules/practice");

export const PERMIT: Authority = { code: "permit", name: message("rules/permit-conditions"), kind: "permit" };

/** The event whose day decides whether a rule was in force, and how it is said. */
const BY_EVENT: Readonly<Record<Exclude<InForceBy, "issue">, EventName>> = {
	spud: "spud",
	permit: "permit issued",
	treatment: "stimulation starts",
};

/**
 * Whether the rule was in force on the day that it counts by: of this issue, of spud, of the permit or of the treatment.
 * Unknown dates do not take a rule out; a day that the definition lacks leaves the question open.
 */
export const outOfForce = ({ inForce }: Rule, well: Well): Outcome | undefined => {
	const { from, to, by = "issue" } = inForce;
	if (from === "unknown" && to === undefined) return undefined;
	const day =
		by === "issue"
			? { date: well.identity.issued, words: message("rules/this-was-issued-on") }
			: {
					...eventDate(well, BY_EVENT[by]),
					words: message("rules/event-is-on", { event: EVENT_WORDS[BY_EVENT[by]] }),
				};
	if ("missing" in day) {
		const span = {
			parts: [
				from === "unknown" ? "" : message("rules/from-day", { from }),
				to === undefined ? "" : message("rules/until-day", { to }),
			],
		};
		const counted = by === "issue" ? message("rules/this-issue") : EVENT_WORDS[BY_EVENT[by]];
		return cannotTell([day.missing], message("rules/rule-is-in-force-counted-by-whose", { span, counted }));
	}
	if (from !== "unknown" && daysBetween(day.date, from) > 0)
		return doesNotApply(message("rules/rule-is-in-force-from", { from, words: day.words, date: day.date }));
	if (to !== undefined && daysBetween(to, day.date) > 0)
		return doesNotApply(message("rules/rule-was-in-force-until", { to, words: day.words, date: day.date }));
	return undefined;
};

/** The rule's own soft words and cures, put to what the arithmetic says. */
const softened = (rule: Rule, outcome: Outcome): Outcome => {
	const { verdict, reason } = outcome;
	if (rule.soft !== undefined && (verdict === "met" || verdict === "not met"))
		return {
			...outcome,
			verdict: "needs judgement",
			reason: joined([reason, [message("rules/rule-says-so-person-decides", { soft: rule.soft })]]),
		};
	if (verdict !== "not met") return outcome;
	const cured =
		rule.unless === undefined
			? reason
			: joined([reason, [message("rules/rule-allows-it-only-where", { unless: rule.unless })]]);
	if (rule.ifNotMet === undefined) return { ...outcome, reason: cured };
	const further: Reason = [message("rules/person-has-to-see-to-what-rule")];
	return { ...outcome, verdict: rule.ifNotMet, reason: joined([cured, further]) };
};

const marginOf = ({ required, measured, comparison }: Outcome): Pick<Finding, "margin"> => {
	if (required === undefined || measured === undefined || required.dimension !== measured.dimension)
		return {};
	const upward = comparison === "at least" || comparison === "more than";
	const downward = comparison === "at most" || comparison === "less than";
	if (!upward && !downward) return {};
	const [larger, smaller] = upward ? [measured, required] : [required, measured];
	return { margin: marginBetween(required.dimension, larger, smaller) };
};

/** A shortfall within the rule's lesser limit is for an engineer to confirm. */
const confirmed = (the: Case, outcome: Outcome): Outcome => {
	const { confirm } = the.rule;
	if (confirm === undefined || outcome.verdict !== "not met") return outcome;
	return evaluate(the, confirm).verdict === "met" ? { ...outcome, verdict: "needs judgement" } : outcome;
};

/** A granted variance does not pass the rule; it hands the question to whoever confirms that the variance is kept. */
const varied = (
	rule: Rule,
	well: Well,
	outcome: Outcome,
): Pick<Finding, "variance"> & { readonly outcome: Outcome } => {
	const granted = well.site.variances?.find(({ of }) => of === rule.id);
	if (granted === undefined) return { outcome };
	const variance = { granted: granted.granted, cite: granted.cite };
	if (outcome.verdict !== "not met" && outcome.verdict !== "cannot tell") return { outcome, variance };
	const note: Reason = [message("rules/variance-from-this-rule-is-recorded-person")];
	return {
		variance,
		outcome: { ...outcome, verdict: "needs judgement", reason: joined([outcome.reason, note]) },
	};
};

/** Who laid the row beside the official text, as the definition records it. */
const comparedBy = ({ id }: Rule, well: Well): Pick<LimitCitation, "comparedBy"> => {
	const found = well.site.compared?.find(({ rule }) => rule === id);
	if (found === undefined) return {};
	const { rule: _rule, ...by } = found;
	return { comparedBy: by };
};

const findingOf = (authority: Authority, rule: Rule, well: Well, subject: Said, raw: Outcome): Finding => {
	const { outcome, variance } = varied(rule, well, softened(rule, raw));
	const { verdict, reason, required, measured, comparison, quantity, missing } = outcome;
	return {
		check: rule.check,
		subject,
		cite: {
			jurisdiction: authority.code,
			jurisdictionName: authority.kind === "practice" ? PRACTICE : authority.name,
			kind: authority.kind,
			rule: rule.id,
			citation: rule.citation,
			standing: rule.standing,
			...(rule.publicCopy === undefined ? {} : { publicCopy: rule.publicCopy }),
			...(rule.forms === undefined ? {} : { forms: rule.forms }),
			...(rule.filledFrom === undefined ? {} : { filledFrom: rule.filledFrom }),
			...comparedBy(rule, well),
			howKnown: rule.howKnown,
			textAsOf: rule.textAsOf,
			inForceFrom: rule.inForce.from,
		},
		requirement: rule.requirement,
		limit: rule.limit,
		verdict,
		...(required === undefined ? {} : { required }),
		...(measured === undefined ? {} : { measured }),
		...(comparison === undefined ? {} : { comparison }),
		...(quantity === undefined ? {} : { quantity }),
		...marginOf(outcome),
		reason,
		...(missing.length === 0 ? {} : { missing }),
		...(rule.stop === undefined ? {} : { stop: rule.stop }),
		...(rule.tell === undefined ? {} : { tell: rule.tell }),
		...(variance === undefined ? {} : { variance }),
	};
};

const judgeRule = (
	authority: Authority,
	rule: Rule,
	well: Well,
	results: Results,
	subjects: readonly Subject[] | Outcome = subjectsOfRule(rule, well),
): readonly Finding[] => {
	const early = outOfForce(rule, well);
	const asked = early ?? subjects;
	if ("verdict" in asked) return [findingOf(authority, rule, well, ruleSubject(rule), asked)];
	return asked.map((subject) => {
		const the: Case = { well, results, rule, jurisdiction: authority, subject };
		const outcome = under(the, rule.appliesTo.when, () => confirmed(the, evaluate(the, rule.limit)));
		return findingOf(authority, rule, well, subjectName(subject), outcome);
	});
};

/** Conditions of the permit, judged beside the rules; one that cannot be read as a limit is a finding, not a silence. */
const judgeConditions = (well: Well, results: Results): readonly Finding[] =>
	readConditions(well.conditions).flatMap(({ rule, string, neighbors, fault }, i) => {
		const named = string ?? neighbors?.join(", ") ?? message("rules/subject-well");
		if (fault !== undefined)
			return [findingOf(PERMIT, rule, well, named, cannotTell([fault], fault.why, "."))];
		if (CHECK_LIMITS[rule.check].subject === "neighbor") {
			const of = well.neighbors.filter(({ id, kind }) =>
				neighbors?.some((each) => each === id || each === kind),
			);
			if (of.length === 0) return [findingOf(PERMIT, rule, well, named, noneListed(well, neighbors ?? []))];
			const bound = of.map((neighbor) => ({ kind: "neighbor" as const, neighbor }));
			return judgeRule(PERMIT, rule, well, results, bound);
		}
		if (string === undefined) return judgeRule(PERMIT, rule, well, results);
		const bound = well.strings.find(({ id }) => id === string);
		if (bound === undefined) {
			const missing = {
				what: message("rules/a-string-called", { string }),
				at: ["site", "conditions", i, "string"],
			};
			return [findingOf(PERMIT, rule, well, named, cannotTell([missing]))];
		}
		return judgeRule(PERMIT, rule, well, results, [{ kind: "string", string: bound }]);
	});

/**
 * Every limit of every jurisdiction, and every condition of the permit, on everything in the well it is asked of: one finding
 * each, in the order of the files. Nothing is merged into "the strictest", and nothing passes on silence.
 *
 * @param jurisdictions  as `loadJurisdictions` gave them; codes the well names and these lack are told as unknown
 */
export const judge = (well: Well, results: Results, jurisdictions: readonly Jurisdiction[]): Judgement => {
	const findings = withGoverning([
		...jurisdictions.flatMap((jurisdiction) =>
			jurisdiction.rules.flatMap((rule) => judgeRule(jurisdiction, rule, well, results)),
		),
		...judgeConditions(well, results),
	]);
	const counts = Object.fromEntries(
		VERDICTS.map((verdict) => [verdict, findings.filter((finding) => finding.verdict === verdict).length]),
	) as Readonly<Record<Verdict, number>>;
	const known = jurisdictions.map(({ code }) => code);
	const unknownJurisdictions = well.site.jurisdictions.filter((code) => !known.includes(code));
	return { findings, counts, unknownJurisdictions, ruleSets: appliedRuleSets(well, jurisdictions) };
};
