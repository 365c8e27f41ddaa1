import type { Threshold } from "../../catalog/limits/limit.ts";
import type { Known } from "../../cite/known.ts";
import { message, type Said } from "../../messages/message.ts";
import type { Case } from "../case.ts";
import type { MissingInput } from "../finding.ts";
import type { Reason } from "../reason.ts";

/** Further words of a limit that a measure needs: the zone of cement, the time, the place measured from. */
export type Parameters = Partial<
	Pick<Threshold, "along" | "zone" | "after" | "curedAt" | "formation" | "within" | "from">
> & {
	/** The height of a zone of cement, worked out for this string. */
	readonly height?: Known;
};

/** What a measure finds. It never guesses: what is not there is missing, and what has no meaning here is absent. */
export type Reading =
	| { readonly state: "known"; readonly value: Known; readonly note?: Reason }
	/** Known only to lie at or above, or at or below, some value. */
	| {
			readonly state: "bounded";
			readonly atLeast?: Known;
			readonly atMost?: Known;
			readonly missing: readonly MissingInput[];
			readonly note?: Reason;
	  }
	| { readonly state: "missing"; readonly missing: readonly MissingInput[]; readonly because?: Reason }
	| { readonly state: "absent"; readonly because: Reason };

export interface Measure {
	readonly read: (the: Case, parameters: Parameters) => Reading;
	/** The clause that says the value: `the shoe is 175 ft below the base of protected water`. */
	readonly say: (value: ClauseValue, the: Case, parameters: Parameters) => Reason;
	/** Which way of a place the value counts; less than nothing lies the other way, and the limit's words have to say so. */
	readonly side?: "above" | "below";
	/** What the measure is called in an expression: `string length`. */
	readonly noun: Said;
}

/** A value on its way into a clause, and its sign where the words change with it. */
interface ClauseValue {
	readonly value: Known;
	/** Prints the value without its sign. */
	readonly size: Reason[number];
	readonly part: Reason[number];
}

/** A value, or all that it lacks. */
export const knownOr = (value: Known | undefined, ...missing: readonly MissingInput[]): Reading =>
	value === undefined || !Number.isFinite(value.value)
		? { state: "missing", missing }
		: { state: "known", value };

export const known = (value: Known | undefined, missing: MissingInput, note?: Reason): Reading =>
	value === undefined || !Number.isFinite(value.value)
		? { state: "missing", missing: [missing] }
		: { state: "known", value, ...(note === undefined ? {} : { note }) };

export const absent = (...because: Reason): Reading => ({ state: "absent", because });
export const lacking = (...missing: readonly MissingInput[]): Reading => ({ state: "missing", missing });

/** `the shoe is 175 ft below the base …`, or `25 ft above` it where the value is negative. */
export const belowOrAbove = (subject: Said, place: Said, { value, size }: ClauseValue): Reason => [
	value.value < 0
		? message("rules/lies-above", { subject, size, place })
		: message("rules/lies-below", { subject, size, place }),
];
export const aboveOrBelow = (subject: Said, place: Said, { value, size }: ClauseValue): Reason => [
	value.value < 0
		? message("rules/lies-below", { subject, size, place })
		: message("rules/lies-above", { subject, size, place }),
];

/** A least value of several of which some are not known: it may only be less. Where nothing is known, all of it is missing. */
export const boundedBy = (unknown: readonly MissingInput[], reading: Reading): Reading => {
	if (unknown.length === 0) return reading;
	if (reading.state === "known")
		return {
			state: "bounded",
			atMost: reading.value,
			missing: unknown,
			...(reading.note === undefined ? {} : { note: reading.note }),
		};
	return reading.state === "absent" ? reading : { ...reading, missing: [...reading.missing, ...unknown] };
};
