import type { Known } from "../../cite/known.ts";
import type { Paper } from "../../document/document.ts";
import type { Said } from "../../messages/message.ts";
import type { CheckId } from "./checks.ts";
import type { MeasureName } from "./measures.ts";
import type {
	Covered,
	EventName,
	FactName,
	FieldName,
	FormTopic,
	MeasuredFrom,
	SetbackKind,
	StringSelector,
	TopMethod,
} from "./vocabulary.ts";

/** Boundary as the rule writes it: *at least* holds at the limit, *more than* does not. */
export const OPERATORS = ["at least", "more than", "at most", "less than"] as const;
export type Operator = (typeof OPERATORS)[number];

/** The number of a limit, before it is known for which string. */
export type Amount =
	| { readonly kind: "constant"; readonly value: Known }
	/** Another measure as it stands. */
	| { readonly kind: "measure"; readonly of: MeasureName }
	/** A factor on another measure: psi per foot of string, a share of the yield. */
	| { readonly kind: "times"; readonly factor: Known; readonly of: MeasureName }
	| {
			readonly kind: "greatest of" | "least of" | "sum of";
			readonly among: readonly Amount[];
	  }
	| {
			readonly kind: "clamp";
			readonly amount: Amount;
			readonly from: Amount;
			readonly to: Amount;
	  }
	/** A table: the first step that the measure does not pass, or what holds beyond them all. */
	| {
			readonly kind: "steps";
			readonly by: MeasureName;
			readonly steps: readonly Step[];
			readonly beyond: Amount;
	  }
	/** By how the cement top was found. */
	| {
			readonly kind: "by method";
			readonly cases: Readonly<Partial<Record<TopMethod, Amount>>>;
	  };

/** One step of a table: up to a value of the measure, that value taken in or left out. */
export interface Step {
	readonly end: Known;
	readonly including: boolean;
	readonly amount: Amount;
}

/** Which part of a cement column is meant. */
export type CementZone =
	| { readonly kind: "shoe" }
	| { readonly kind: "whole" }
	/** Every slurry but the one at the shoe. */
	| { readonly kind: "filler" }
	/** The lowest so many feet of the string. */
	| { readonly kind: "bottom"; readonly height: Amount; readonly along: Along }
	/** Everything above the lowest so many feet. */
	| {
			readonly kind: "above bottom";
			readonly height: Amount;
			readonly along: Along;
	  };

/** Measured along the hole, or vertically. */
export type Along = "hole" | "vertical";

export interface Threshold {
	readonly form: "threshold";
	readonly measure: MeasureName;
	readonly operator: Operator;
	readonly amount: Amount;
	/** Of a rule that says "about": how far short of the amount a person decides, and beyond which it is not met. */
	readonly about?: Known;
	readonly along?: Along;
	readonly zone?: CementZone;
	/** Of a strength: time since placing. */
	readonly after?: Known<"duration">;
	readonly curedAt?: Known<"temperature">;
	readonly formation?: string;
	readonly within?: Known<"distance">;
	readonly from?: MeasuredFrom;
}

/** Where centralizers are asked for. */
export type CentralizerPattern =
	| { readonly kind: "bottom joints"; readonly joints: Known<"count"> }
	| { readonly kind: "every joints"; readonly joints: Known<"count"> }
	| {
			readonly kind: "first and then";
			readonly firstWithin: Known<"length">;
			readonly thenEvery: Known<"length">;
	  }
	| { readonly kind: "through protected water" };

type DayKind = "calendar" | "business";

/** What a span of time is counted in. Business days are counted in days or hours. */
export const SPAN_UNITS = ["hours", "days", "weeks", "months", "years"] as const;
export type SpanUnit = (typeof SPAN_UNITS)[number];

export interface Deadline {
	readonly form: "deadline";
	/** Before the event (a notice) or after it (a report); of several, the earliest counts. */
	readonly side: "before" | "after";
	readonly of: readonly {
		readonly event: EventName;
		readonly count: Known<"count">;
		readonly unit: SpanUnit;
	}[];
	readonly days: DayKind;
	/** Of a notice: how long before the event it may be sent at the earliest. */
	readonly noSooner?: { readonly count: Known<"count">; readonly unit: SpanUnit };
}

/** One limit. */
export type LimitLeaf =
	| Threshold
	| { readonly form: "at surface" }
	| { readonly form: "one of"; readonly words: readonly string[] }
	| { readonly form: "none of"; readonly words: readonly string[] }
	| { readonly form: "includes"; readonly words: readonly string[] }
	| { readonly form: "present"; readonly fields: readonly FieldName[] }
	| {
			readonly form: "covers";
			readonly what: readonly Covered[];
			readonly formations: readonly string[];
	  }
	| { readonly form: "pattern"; readonly pattern: CentralizerPattern }
	| Deadline
	| {
			readonly form: "evidence within";
			readonly radius: Known<"distance">;
			readonly of: MeasuredFrom;
	  }
	/** Another hole that the fractures may reach has to be shut off beside them. */
	| { readonly form: "evidence beside"; readonly what: "fractures" }
	| {
			readonly form: "samples within";
			readonly radius: Known<"distance">;
			readonly of: MeasuredFrom;
			readonly before: EventName;
			readonly months?: Known<"count">;
			readonly days?: Known<"count">;
	  }
	/** A neighbor's written consent, as the definition records it. */
	| { readonly form: "consent" }
	/** Words that no arithmetic can pass. */
	| { readonly form: "judgement"; readonly question: string };

export type Limit =
	| LimitLeaf
	| { readonly form: "all of" | "any of"; readonly parts: readonly Limit[] }
	/** Asked only where the condition holds. */
	| {
			readonly form: "if";
			readonly condition: Condition;
			readonly limit: Limit;
	  };

export type Condition =
	| { readonly kind: "fact"; readonly fact: FactName; readonly holds: boolean }
	| { readonly kind: "threshold"; readonly threshold: Threshold }
	/** The well lies in one of these counties, or fields. */
	| { readonly kind: "place"; readonly of: PlaceKind; readonly names: readonly string[] }
	/** An event falls on or after one day, before another, or between the two. */
	| {
			readonly kind: "dated";
			readonly event: EventName;
			readonly from?: string;
			readonly before?: string;
	  }
	| { readonly kind: "not"; readonly of: Condition }
	| { readonly kind: "all" | "any"; readonly of: readonly Condition[] };

export const PLACE_KINDS = ["county", "field"] as const;
export type PlaceKind = (typeof PLACE_KINDS)[number];

export interface AppliesTo {
	readonly strings: readonly StringSelector[];
	/** Roles of the inner and outer string; empty means every annulus. */
	readonly annulus?: {
		readonly inside?: StringSelector;
		readonly outside?: StringSelector;
	};
	readonly neighbors: readonly SetbackKind[];
	/** All must hold. */
	readonly when: readonly Condition[];
}

/** How far the text of a rule was known when its row was written. */
export const WAYS_KNOWN = ["read", "read in part", "second-hand", "draft", "memory"] as const;
type WayKnown = (typeof WAYS_KNOWN)[number];

export interface HowKnown {
	readonly way: WayKnown;
	/** What was read, or whose summary. */
	readonly of?: string;
	readonly confidence?: "high" | "medium" | "low";
}

/** The day that decides whether a rule was in force: of this issue, where the rule does not say. */
export const IN_FORCE_BY = ["issue", "spud", "permit", "treatment"] as const;
export type InForceBy = (typeof IN_FORCE_BY)[number];

/** How far a row's text was laid beside the official one. */
export const STANDINGS = ["compared", "compared with a public copy", "not compared"] as const;
export type Standing = (typeof STANDINGS)[number];

/** What kind of copy a row was laid beside. A draft is not the rule, and is counted apart. */
export const COPY_KINDS = ["certified text", "agency's web text", "third-party copy", "draft"] as const;
type CopyKind = (typeof COPY_KINDS)[number];

/** The public copy that a row was laid beside. */
export interface PublicCopy {
	/** Its address. */
	readonly at: string;
	/** ISO date to which the copy says it is current, or `unknown`. */
	readonly dated: string;
	readonly kind: CopyKind;
	/** Which part of the text was read, and what of the row it does not bear out. */
	readonly read: string;
	/** In what the row differed, and was mended. */
	readonly differed?: string;
}

/** One dated, cited limit: a row of a jurisdiction's file, or a condition of the permit. */
export interface Rule {
	readonly id: string;
	readonly check: CheckId;
	readonly appliesTo: AppliesTo;
	readonly limit: Limit;
	readonly requirement: Said;
	readonly citation: Said;
	readonly standing: Standing;
	/** Of a compared row: the official text and its date. */
	readonly officialText?: { readonly text: string; readonly dated: string };
	/** Of a row compared with a public copy: which copy. */
	readonly publicCopy?: PublicCopy;
	/** Of a row not compared: where its text was sought in vain. */
	readonly sought?: string;
	/** Forms that carry what the rule asks for, by the agency's own names: `W-15, cementing report`. */
	readonly forms?: readonly string[];
	/** What those forms are filled from. */
	readonly filledFrom?: readonly FormTopic[];
	readonly howKnown: HowKnown;
	/** ISO date, or `unknown`. */
	readonly textAsOf: string;
	readonly inForce: { readonly from: string; readonly to?: string; readonly by?: InForceBy };
	/** Of a user's own rule: the shipped rule that it stands in for. */
	readonly replaces?: string;
	/** The rule's own soft word (`approximately`): arithmetic shows the numbers and a person decides. */
	readonly soft?: string;
	/** What the rule lets a shortfall be cured by, continuing the sentence "…, unless". */
	readonly unless?: string;
	/** A shortfall does not break the rule; it brings other duties in. */
	readonly ifNotMet?: "needs judgement";
	/** A lesser limit: where the rule's own is not met and this one is, an engineer confirms. */
	readonly confirm?: Limit;
	/** Jobs that must not start while this is not met or cannot be told: their crew packs carry it. */
	readonly stop?: readonly string[];
	/** Papers that carry the finding beside the regulator's. */
	readonly tell?: readonly Paper[];
	readonly note?: string;
}

/** Who sets the limits of a file. *Practice* is what good engineering asks, and never printed as law. */
export const LAW_KINDS = [
	"federal",
	"state",
	"province",
	"county",
	"municipality",
	"tribe",
	"field",
	"company",
] as const;
export const RULE_SET_KINDS = [...LAW_KINDS, "practice"] as const;
export type RuleSetKind = (typeof RULE_SET_KINDS)[number];

/** A file of limits: of a jurisdiction, or of engineering practice on one topic. */
export interface Jurisdiction {
	/** `us-tx`, or `practice.treatment`: what the ids of its rows begin with. */
	readonly code: string;
	readonly name: string;
	readonly kind: RuleSetKind;
	readonly agency: string;
	readonly note?: string;
	/** Of a user's own file: its name. */
	readonly file?: string;
	/** Of a user's own file: its edition, by its author's count. */
	readonly version?: string;
	/** Where the texts of the rows that are not compared were sought. */
	readonly sought?: string;
	/** Days on which business days do not count, and the years the list covers. */
	readonly holidays?: {
		readonly covers: readonly number[];
		readonly dates: readonly string[];
		readonly howKnown: HowKnown;
	};
	readonly rules: readonly Rule[];
}
