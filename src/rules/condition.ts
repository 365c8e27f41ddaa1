import type { Condition } from "../catalog/limits/limit.ts";
import type { FactName } from "../catalog/limits/vocabulary.ts";
import { message, type Said } from "../messages/message.ts";
import { type Case, missingAt } from "./case.ts";
import { compare, operatorWords } from "./compare.ts";
import type { MissingInput } from "./finding.ts";
import { MEASURE_CODE } from "./measures/index.ts";
import { openZones } from "./open-zones.ts";
import { listed, type Reason } from "./reason.ts";
import { selectStrings } from "./subject.ts";

/** Whether a condition holds, in words that say what it rests on. */
export type Holding =
	| { readonly holds: boolean; readonly because: Reason }
	| { readonly missing: readonly MissingInput[] };

const told = (holds: boolean, yes: Said, no: Said): Holding => ({ holds, because: [holds ? yes : no] });

const stringOf = ({ subject, well }: Case) =>
	subject.kind === "string"
		? subject.string
		: well.strings.find(({ id }) => id === well.stimulation?.treatedThrough);

const FACT_CODE: Readonly<Record<FactName, (the: Case) => Holding>> = {
	"exploratory well": ({ well }) =>
		well.identity.class === undefined
			? { missing: [missingAt(message("rules/class-well"), "well", "class")] }
			: told(
					well.identity.class === "exploratory",
					message("rules/well-is-exploratory"),
					message("rules/well-is-class", { class: well.identity.class }),
				),
	"stimulation planned": ({ well }) =>
		told(
			well.stimulation !== undefined,
			message("rules/stimulation-is-planned"),
			message("rules/no-stimulation-is-planned-2"),
		),
	"deviated string": (the) => {
		const string = stringOf(the);
		const shoe = string && the.results.casing[string.id]?.shoe.md.value;
		const kickoff = the.results.trajectory.kickoff?.md;
		if (string === undefined || shoe === undefined) return { missing: [missingAt("string", "casing")] };
		return told(
			kickoff !== undefined && kickoff.value < shoe,
			message("rules/string-reaches-below-kickoff", { string: string.id }),
			message("rules/string-ends-above-kickoff", { string: string.id }),
		);
	},
	"horizontal well": ({ results }) =>
		told(
			results.trajectory.landing !== undefined,
			message("rules/well-has-lateral"),
			message("rules/well-has-no-lateral"),
		),
	"second surface string": ({ well }) =>
		told(
			selectStrings(well, ["second surface"]).length > 0,
			message("rules/well-has-second-surface-string"),
			message("rules/well-has-one-surface-string"),
		),
	"flow zone open above the shoe": (the) => {
		if (the.subject.kind !== "string") return { missing: [missingAt("string", "casing")] };
		const zones = openZones(the);
		const names = listed(zones.map(({ formation }) => formation.name));
		return told(
			zones.length > 0,
			message("rules/zones-open-above", { count: zones.length, names, string: the.subject.string.id }),
			message("rules/no-formation-open-above-shoe-is", { string: the.subject.string.id }),
		);
	},
	"path surveyed": ({ results }) =>
		told(
			results.trajectory.basis === "surveyed",
			message("rules/hole-has-been-surveyed"),
			message("rules/path-is-still-planned-one"),
		),
	"treated through this string": (the) =>
		told(
			the.subject.kind === "string" && the.subject.string.id === the.well.stimulation?.treatedThrough,
			message("rules/string-is-treated-through"),
			message("rules/string-is-not-treated-through"),
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
			message(verdict === "met" ? "rules/noun-is-as-asked" : "rules/noun-is-not-as-asked", {
				noun: MEASURE_CODE[measure].noun,
				measured: { told: measured, from: required },
				operator: operatorWords(operator),
				required: { told: required, from: measured },
			}),
		],
	};
};

const withoutStop = (reason: Reason): Reason => (reason.at(-1) === "." ? reason.slice(0, -1) : reason);
