import type { HowKnown, Limit, PublicCopy, RuleSetKind, Standing } from "../catalog/limits/limit.ts";
import type { FormTopic } from "../catalog/limits/vocabulary.ts";
import type { Known } from "../cite/known.ts";
import type { Path } from "../diagnostics/path.ts";
import { type Paper, readerPaperOf } from "../document/document.ts";
import type { Verdict } from "../document/verdict.ts";
import { isMessage, type Said } from "../messages/message.ts";
import type { Well } from "../well/well.ts";
import type { Reason } from "./reason.ts";
import type { AppliedRuleSet } from "./rule-sets.ts";

export type { Standing };

/** Where a limit comes from, as printed beside each verdict. */
export interface LimitCitation {
	/** Code of the jurisdiction (`us-tx`), or `permit`. */
	readonly jurisdiction: string;
	readonly jurisdictionName: Said;
	/** Law, the permit, or practice: practice is never printed as law. */
	readonly kind: RuleSetKind | "permit";
	/** Id of the row in the jurisdiction's file. */
	readonly rule: string;
	readonly citation: Said;
	readonly standing: Standing;
	readonly publicCopy?: PublicCopy;
	readonly forms?: readonly string[];
	readonly filledFrom?: readonly FormTopic[];
	/** Who laid the row beside the official text, by the definition. */
	readonly comparedBy?: Omit<NonNullable<Well["site"]["compared"]>[number], "rule">;
	readonly howKnown: HowKnown;
	/** ISO date of the text used, or `unknown`. */
	readonly textAsOf: string;
	readonly inForceFrom: string;
}

/** An input that a check needs and does not have. */
export interface MissingInput {
	/** In words of the trade, with its article: `the wait on cement of the surface string`. */
	readonly what: Said;
	/** Where it may be written in the definition. */
	readonly at: Path;
}

/** One check against one limit, on one thing. */
export interface Finding {
	/** Check id: a noun of the trade. */
	readonly check: string;
	/** What it was made on: a string, an annulus, the well. */
	readonly subject: Said;
	readonly cite: LimitCitation;
	/** The requirement, one sentence in our own words, from the limit's file. */
	readonly requirement: Said;
	/** The limit as its row has it, before it is known for which string. */
	readonly limit: Limit;
	readonly verdict: Verdict;
	/** What the limit comes to here, and what was found, where they are numbers. */
	readonly required?: Known;
	readonly measured?: Known;
	/** Room to the limit; negative by how much the limit is missed. */
	readonly margin?: Known;
	/** How they were compared, as the rule writes it: "at least", "more than", … */
	readonly comparison?: Comparison;
	/** What was held against the limit, a noun: "height of cement above the shoe". */
	readonly quantity?: Said;
	/** Why this verdict: one sentence, in words that hold without the table; `say` gives it to a reader. */
	readonly reason: Reason;
	/** Of several limits that bind the same thing, the one that asks most. */
	readonly governing?: boolean;
	/** Of a *cannot tell*: what is missing and where it may be written. */
	readonly missing?: readonly MissingInput[];
	/** Jobs that must not start while the verdict is *not met* or *cannot tell*. */
	readonly stop?: readonly string[];
	/** Papers that carry it beside the regulator's. */
	readonly tell?: readonly Paper[];
	/** A granted variance, printed with the rule it replaces. */
	readonly variance?: { readonly granted: string; readonly cite: string };
}

/** Findings that keep a job from starting. */
export const stopsOf = (findings: readonly Finding[], job: string): readonly Finding[] =>
	findings.filter(({ stop, verdict }) => stop?.includes(job) === true && isOpen(verdict));

/** Made on the well as a whole. */
export const isWell = (subject: Said): boolean => isMessage(subject) && subject.code === "rules/subject-well";

/** Not met, or not to be told: as loud as each other. */
export const isOpen = (verdict: Verdict): boolean => verdict === "not met" || verdict === "cannot tell";

/** Findings beside the regulator's own that a paper carries, unless they are met or do not apply. */
export const toldIn = (findings: readonly Finding[], paper: Paper): readonly Finding[] =>
	findings.filter(
		({ tell, verdict }) =>
			tell?.includes(readerPaperOf(paper)) === true && (isOpen(verdict) || verdict === "needs judgement"),
	);

export type Comparison = "at least" | "more than" | "at most" | "less than" | "present" | "one of";

export interface Judgement {
	readonly findings: readonly Finding[];
	readonly counts: Readonly<Record<Verdict, number>>;
	/** Jurisdictions named by the well for which no limits are known: a finding in itself. */
	readonly unknownJurisdictions: readonly string[];
	/** Every set that was applied, the user's own among them. */
	readonly ruleSets: readonly AppliedRuleSet[];
}

/** Something a jurisdiction asks for and the definition lacks. */
export interface MissingItem {
	/** What is missing, in words of the trade. */
	readonly what: Said;
	/** Where it may be written in the definition. */
	readonly at: Path;
	/** Citations that ask for it. */
	readonly askedBy: readonly Said[];
}
