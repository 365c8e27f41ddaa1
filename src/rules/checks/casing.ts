import type { LimitLeaf } from "../../catalog/limits/limit.ts";
import { type Fact, message } from "../../messages/message.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { stringOf } from "../measures/shoe.ts";
import { cannotTell, met, notMet, type Outcome } from "../outcome.ts";
import { listed, orListed } from "../reason.ts";
import { centralizerPattern } from "./centralizer-pattern.ts";
import type { Check } from "./check.ts";

type OneOf = Extract<LimitLeaf, { form: "one of" }>;

const orList = (words: readonly Fact[]): Fact => orListed(words);

/** Condition of every run of the string. An assumed condition is no evidence: the well model defaults it to new. */
const condition = (the: Case, { words }: OneOf): Outcome => {
	const string = stringOf(the);
	const assumed = the.well.assumptions
		.filter(({ at }) => at.includes("condition"))
		.map(({ at }) => at.join("."));
	const unstated = string.sections.flatMap((_, i) => {
		const missing = missingOf(the, string, message("rules/condition-pipe"), "pipe", i, "condition");
		return assumed.includes(missing.at.join(".")) ? [missing] : [];
	});
	if (unstated.length > 0)
		return cannotTell(unstated, message("rules/condition-pipe-is-not-stated", { string: string.id }));
	const found = [...new Set(string.sections.map((section) => section.condition))];
	const said = message("rules/pipe-is-stated", { string: string.id, found: listed(found) });
	return found.every((each) => words.includes(each))
		? met(said, ".")
		: notMet(message("rules/is-required", { said, orList: orList(words) }));
};

/** Drilling fluid of every hole down to the string's own: the water is open to all of them until the string is cemented. */
const fluid = (the: Case, { words }: OneOf): Outcome => {
	const string = stringOf(the);
	const index = the.well.holes.findIndex(({ id }) => id === string.hole.id);
	const holes = the.well.holes.slice(0, index + 1);
	const unknown = holes.flatMap(({ id, fluid: used }, i) =>
		used === undefined
			? [missingAt(message("rules/drilling-fluid-hole", { hole: id }), "holes", i, "fluid", "kind")]
			: [],
	);
	if (unknown.length > 0) return cannotTell(unknown);
	const allowed = words.map((word) => word.toLowerCase());
	const outside = holes.filter(
		({ fluid: used }) => !allowed.includes((used?.kind ?? "").toLowerCase().trim()),
	);
	const said = listed(
		holes.map(({ id, fluid: used }) =>
			message("rules/hole-with-fluid", { hole: id, fluid: used?.kind ?? "" }),
		),
	);
	return outside.length === 0
		? met(message("rules/plan-drills", { said }))
		: notMet(message("rules/plan-drills-rule-names", { said, orList: orList(words) }));
};

export const casingChecks = {
	"hole-clearance": {
		title: "Clearance in the hole",
		looksAt: "bit size against the outside diameter of pipe or coupling",
		explain:
			"Cement needs room around the pipe. Rules count on each side or on diameter, from the pipe or from its coupling; the words of the " +
			"finding say which. Bit size is used, not washed-out hole, and the pipe is taken as centered.",
	},
	"casing-condition": {
		title: "Condition of the pipe",
		looksAt: "stated condition of each run of the string",
		explain:
			"Some rules ask for new pipe, or for a test of used pipe. The condition has to be stated; an assumed one is no evidence.",
		forms: { "one of": condition },
	},
	centralizers: {
		title: "Centralizers",
		looksAt: "centralizer runs, joint length and shoe",
		explain:
			"Pipe against the wall is not sealed all round. Rules give a pattern: on the lowest joints, on every so many joints, the first within " +
			"a distance and then at a spacing, or through the water. Runs are read as written; a run's lowest centralizer is taken at its bottom.",
		forms: { pattern: centralizerPattern },
	},
	"drilling-fluid": {
		title: "Drilling fluid through fresh water",
		looksAt: "fluid of each hole down to and including the string's own",
		explain:
			"Until the string that protects the water is cemented, whatever is in the hole touches the water. Kinds are compared by name with the " +
			"rule's list.",
		forms: { "one of": fluid },
	},
} as const satisfies Readonly<Record<string, Check>>;
