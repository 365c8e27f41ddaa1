import type { Condition } from "../catalog/limits/limit.ts";
import type { FactName } from "../catalog/limits/vocabulary.ts";
import { type Case, missingAt } from "./case.ts";
import { compare } from "./compare.ts";
import type { MissingInput } from "./finding.ts";
import { MEASURE_CODE } from "./measures/index.ts";
import { openZones } from "./open-zones.ts";
import { listed, type Reason } from "./reason.ts";
import { selectStrings } from "./subject.ts";

/** Whether a condition holds, in words that say what it rests on. */
export type Holding =
	| { readonly holds: boolean; readonly because: Reason }
	| { readonly missing: readonly MissingInput[] };

const told = (holds: boolean, yes: string, no: string): Holding => ({ holds, because: [holds ? yes : no] });

const stringOf = ({ subject, well }: Case) =>
	subject.kind === "string"
		? subject.string
		: well.strings.find(({ id }) => id === well.stimulation?.treatedThrough);

const FACT_CODE: Readonly<Record<FactName, (the: Case) => Holding>> = {
	"exploratory well": ({ well }) =>
		well.identity.class === undefined
			? { missing: [missingAt("class of the well", "well", "class")] }
			: told(
					well.identity.class === "exploratory",
					"the well is exploratory",
					`the well is of the class "${well.identity.class}"`,
				),
	"stimulation planned": ({ well }) =>
		told(well.stimulation !== undefined, "a stimulation is planned", "no stimulation is planned"),
	"deviated string": (the) => {
		const string = stringOf(the);
		const shoe = string && the.results.casing[string.id]?.shoe.md.value;
		const kickoff = the.results.trajectory.kickoff?.md;
		if (string === undefined || shoe === undefined) return { missing: [missingAt("string", "casing")] };
		return told(
			kickoff !== undefined && kickoff.value < shoe,
			`the ${string.id} string reaches below the kickoff`,
			`the ${string.id} string ends above the kickoff`,
		);
	},
	"horizontal well": ({ results }) =>
		told(results.trajectory.landing !== undefined, "the well has a lateral", "the well has no lateral"),
	"second surface string": ({ well }) =>
		told(
			selectStrings(well, ["second surface"]).length > 0,
			"the well has a second surface string",
			"the well has one surface string",
		),
	"flow zone open above the shoe": (the) => {
		if (the.subject.kind !== "string") return { missing: [missingAt("string", "casing")] };
		const zones = openZones(the);
		const names = listed(zones.map(({ formation }) => formation.name));
		return told(
			zones.length > 0,
			`${names} ${zones.length > 1 ? "are" : "is"} open above the ${the.subject.string.id} shoe`,
			`no formation open above the ${the.subject.string.id} shoe is marked as a flow zone or as the target`,
		);
	},
	"path surveyed": ({ results }) =>
		told(
			results.trajectory.basis === "surveyed",
			"the hole has been surveyed",
			"the path is still the planned one",
		),
	"treated through this string": (the) =>
		told(
			the.subject.kind === "string" && the.subject.string.id === the.well.stimulation?.treatedThrough,
			"the string is treated through",
			"the string is not treated through",
		),
};

/** Whether a condition of a rule holds for a case. */
export const holding = (the: Case, condition: Condition): Holding => {
	if (condition.kind === "fact") {
		const found = FACT_CODE[condition.fact](the);
		return "missing" in found ? found : { ...found, holds: found.holds === condition.holds };
	}
	const { operator, measure } = condition.threshold;
	const { verdict, reason, missing, measured, required } = compare(the, condition.threshold);
	if (verdict === "cannot tell") return { missing };
	if (measured === undefined || required === undefined) return { holds: false, because: withoutStop(reason) };
	return {
		holds: verdict === "met",
		because: [
			`the ${MEASURE_CODE[measure].noun} is `,
			{ told: measured, from: required },
			`${verdict === "met" ? ", " : ", not "}${operator} `,
			{ told: required, from: measured },
		],
	};
};

const withoutStop = (reason: Reason): Reason => (reason.at(-1) === "." ? reason.slice(0, -1) : reason);
