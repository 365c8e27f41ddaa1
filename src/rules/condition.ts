import type { Condition, Threshold } from "../catalog/limits/limit.ts";
import type { FactName } from "../catalog/limits/vocabulary.ts";
import { message, type Said } from "../messages/message.ts";
import { type Case, missingAt, missingOf } from "./case.ts";
import { compare, operatorWords } from "./compare.ts";
import { EVENT_WORDS, eventDate } from "./events.ts";
import type { MissingInput } from "./finding.ts";
import { MEASURE_CODE } from "./measures/index.ts";
import { openZones } from "./open-zones.ts";
import { listed, type Reason } from "./reason.ts";
import { selectStrings } from "./subject.ts";

/** Whether a condition holds, in words that say what it rests on. */
type Holding =
	| { readonly holds: boolean; readonly because: Reason }
	| { readonly missing: readonly MissingInput[] };

const told = (holds: boolean, yes: Said, no: Said): Holding => ({ holds, because: [holds ? yes : no] });

const stringOf = ({ subject, well }: Case) =>
	subject.kind === "string"
		? subject.string
		: well.strings.find(({ id }) => id === well.stimulation?.treatedThrough);

/** Whether a well is to produce gas, or oil; one for both is a well of either. */
const produces =
	(what: "gas" | "oil") =>
	({ well }: Case): Holding => {
		const { purpose } = well.identity;
		return purpose === undefined
			? { missing: [missingAt(message("rules/purpose-of-well"), "well", "purpose")] }
			: told(
					purpose.split(" ").includes(what),
					message("rules/well-produces", { what }),
					message("rules/well-is-for", { purpose }),
				);
	};

/** A name as places are compared: without its case, "County" or "Parish", or a remark in brackets. */
const placeName = (name: string): string =>
	name
		.toLowerCase()
		.replace(/\([^)]*\)/g, " ")
		.replace(/\b(?:county|parish|field|borough)\b/g, " ")
		.replace(/\s+/g, " ")
		.trim();

const inPlace = ({ well }: Case, { of, names }: Extract<Condition, { kind: "place" }>): Holding => {
	const name = of === "county" ? well.site.county : well.identity.field;
	if (name === undefined)
		return {
			missing: [
				of === "county"
					? missingAt(message("rules/county-of-well"), "site", "county")
					: missingAt(message("rules/field-of-well"), "well", "field"),
			],
		};
	const found = names.some((each) => placeName(each) === placeName(name));
	return told(
		found,
		message("rules/well-lies-in", { name }),
		message("rules/well-lies-in-no-place-listed", { name }),
	);
};

const onDay = (the: Case, { event, from, before }: Extract<Condition, { kind: "dated" }>): Holding => {
	const at = eventDate(the.well, event, the.subject.kind === "string" ? the.subject.string.id : undefined);
	if ("missing" in at)
		return at.never === undefined ? { missing: [at.missing] } : { holds: false, because: [at.never] };
	const late = from === undefined || at.date >= from;
	const early = before === undefined || at.date < before;
	const facts = { event: EVENT_WORDS[event], on: at.date };
	return { holds: late && early, because: [message("rules/event-falls-on", facts)] };
};

/** Several conditions: one that decides is enough; where none does, what is missing keeps the whole open. */
const several = (the: Case, { kind, of }: Extract<Condition, { kind: "all" | "any" }>): Holding => {
	const held = of.map((each) => holding(the, each));
	const decides = held.find((each) => "holds" in each && each.holds === (kind === "any"));
	if (decides !== undefined) return decides;
	const open = held.flatMap((each) => ("missing" in each ? each.missing : []));
	if (open.length > 0) return { missing: open };
	const because = listed(held.map((each) => ({ parts: "because" in each ? each.because : [] })));
	return { holds: kind === "all", because: [because] };
};

const FACT_CODE: Readonly<Record<FactName, (the: Case) => Holding>> = {
	"exploratory well": ({ well }) =>
		well.identity.class === undefined
			? { missing: [missingAt(message("rules/class-well"), "well", "class")] }
			: told(
					well.identity.class === "exploratory",
					message("rules/well-is-exploratory"),
					message("rules/well-is-class", { class: well.identity.class }),
				),
	"gas well": produces("gas"),
	"oil well": produces("oil"),
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
	"floats did not hold": (the) => {
		if (the.subject.kind !== "string") return { missing: [missingAt("string", "casing")] };
		const { string } = the.subject;
		const held = string.cement?.actual?.floatsHeld;
		// Without a record, floats that are planned are taken to hold; whether any are run has to be said.
		if (held === undefined && string.floats.length === 0)
			return { missing: [missingOf(the, string, message("rules/field.float-equipment"), "floats")] };
		return told(
			held === false,
			message("rules/record-has-floats-that-did-not-hold"),
			message("rules/no-record-of-floats-that-did-not-hold"),
		);
	},
	"plain-end pipe": (the) => {
		if (the.subject.kind !== "string") return { missing: [missingAt("string", "casing")] };
		const { string } = the.subject;
		return told(
			string.sections.some(({ connection }) => /^plain[ -]end/i.test(connection.trim())),
			message("rules/string-has-plain-end-pipe", { string: string.id }),
			message("rules/string-has-no-plain-end-pipe", { string: string.id }),
		);
	},
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
	if (condition.kind === "place") return inPlace(the, condition);
	if (condition.kind === "dated") return onDay(the, condition);
	if (condition.kind === "threshold") return comparing(the, condition.threshold);
	if (condition.kind === "not") {
		const found = holding(the, condition.of);
		return "missing" in found ? found : { ...found, holds: !found.holds };
	}
	return several(the, condition);
};

const comparing = (the: Case, threshold: Threshold): Holding => {
	const { operator, measure } = threshold;
	const { verdict, reason, missing, measured, required } = compare(the, threshold);
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
