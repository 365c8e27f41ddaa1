import type { LimitLeaf } from "../../catalog/limits/limit.ts";
import { message } from "../../messages/message.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { stringOf } from "../measures/shoe.ts";
import { cannotTell, doesNotApply, met, notMet, type Outcome } from "../outcome.ts";
import { listed, orListed } from "../reason.ts";
import type { Check } from "./check.ts";

type Includes = Extract<LimitLeaf, { form: "includes" }>;

/** Words that no listed name has in it. */
const wanting = (words: readonly string[], names: readonly string[]): readonly string[] => {
	const lower = names.map((name) => name.toLowerCase());
	return words.filter((word) => !lower.some((name) => name.includes(word.toLowerCase())));
};

/** Float equipment of a string that is displaced with a plug. */
const floats = (the: Case, { words }: Includes): Outcome => {
	const string = stringOf(the);
	const { cement } = string;
	if (cement === undefined || (string.shoeTrack === undefined && cement.displacement === undefined))
		return doesNotApply(message("rules/string-is-grouted-from-surface", { string: string.id }), ".");
	if (cement.actual !== undefined)
		return doesNotApply(message("rules/cement-job-string-is-on-record", { string: string.id }), ".");
	if (string.floats.length === 0)
		return cannotTell([missingOf(the, string, message("rules/float-equipment"), "floats")]);
	const without = wanting(words, string.floats);
	const named = listed(string.floats);
	return without.length === 0
		? met(message("rules/floats-named", { string: string.id, floats: named }), ".")
		: notMet(
				message("rules/no-float-is-named", { string: string.id, floats: named, without: orListed(without) }),
				".",
			);
};

/** Elements of the pressure boundary. What is not named is held against nothing. */
const boundary = ({ well }: Case, { words }: Includes): Outcome => {
	const elements = (well.stimulation?.boundary ?? []).map(({ element }) => element);
	if (elements.length === 0)
		return cannotTell([
			missingAt(message("rules/pressure-boundary-elements"), "stimulation", "pressure_boundary"),
		]);
	// "casing test" is the test of the casing and not the casing; tubing treated through stands in for it.
	const rated = elements.map((element) => (/casing test/i.test(element) ? "test" : element));
	const without = wanting(words, rated);
	return without.length === 0
		? met(message("rules/boundary-has", { elements: listed(elements) }), ".")
		: notMet(message("rules/boundary-lacks", { elements: listed(elements), without: listed(without) }), ".");
};

export const equipmentChecks = {
	"simultaneous-work": {
		title: "Work on the pad at the same time",
		looksAt: "other wells of the pad that are worked on while this one is drilled or treated",
		explain:
			"A rig, a crane or pumped fluid at the next well endangers people here, and the other way round. Somebody has to hold the plan for both.",
	},
	"dwelling-noise": {
		title: "Noise at the nearest dwelling",
		looksAt: "noise at the nearest dwelling while pumps run, against the limit that the definition states",
		explain:
			"Pumps run day and night. The level is worked from a measured one by distance alone; ground, wind and walls are left out, so a " +
			"measurement at the house outranks it.",
	},
	"treatment-after-drilling": {
		title: "Order of drilling and treatment",
		looksAt: "first day of the treatment against the last day of drilling",
		explain: "A well is treated after it is drilled and cased; dates that say otherwise are mostly a slip.",
	},
	"wellhead-at-test": {
		title: "Wellhead in the casing test",
		looksAt: "casing test pressure against the wellhead that is on at that moment",
		explain:
			"A casing test loads the head that is on. The drilling head is taken, unless the definition says that the treating head is on.",
	},
	"lead-slurry-foot": {
		title: "Lead slurry against the treated interval",
		looksAt: "foot of the lead slurry against the shallowest perforation",
		explain: "Lead slurry is light and weak; the interval that is treated is covered by the tail.",
	},
	"spacer-rheology": {
		title: "Viscosity of the spacer",
		looksAt: "plastic viscosity stated for the spacer",
		explain:
			"A spacer clears mud only if it is thicker than the mud and thinner than the cement. Where its viscosity is not stated, its friction is taken as the mud's.",
	},
	"cementing-line-test": {
		title: "Test of the cementing line",
		looksAt: "line test against the highest pressure of the job, plug bump included",
		explain: "Iron that is not tested above what the job needs may part while people stand beside it.",
	},
	"cement-class-depth": {
		title: "Cement class for the depth",
		looksAt: "depth that slurries of class A, B or C reach",
		explain:
			"Classes A, B and C are made for shallow, cool rock; deeper, classes G and H are used with retarders and additives that suit the heat.",
	},
	"float-equipment": {
		title: "Float equipment",
		looksAt: "floats named for the string",
		explain: "Floats keep cement from flowing back; two, so that one may fail.",
		forms: { includes: floats },
	},
	"maximum-pull": {
		title: "Maximum pull against the string",
		looksAt: "maximum pull given to the crew, against pipe and joint over the overpull factor",
		explain: "A crew pulls to the number on its sheet; the string must bear it.",
	},
	"production-packer": {
		title: "Production packer against the cement",
		looksAt: "packer depth against the top of cement behind its string",
		explain: "A packer set where the casing is not cemented leaves a leak beneath it a way up.",
	},
	"preventers-over-hole": {
		title: "Preventers over each hole",
		looksAt: "preventers listed over the string that each hole is drilled out of",
		explain:
			"Every hole below the conductor is drilled through preventers, and a hole above them that meets gas through a diverter.",
	},
	"planned-shoe-test": {
		title: "Planned shoe test",
		looksAt: "planned shoe test, against the next fluid and the rock at the shoe",
		explain:
			"A test shows what the shoe bears before the hole below relies on it. One planned above what the rock bears breaks it.",
	},
	"pressure-boundary": {
		title: "Elements of the pressure boundary",
		looksAt: "names of what sees treating pressure",
		explain: "An element that is not named is held against nothing.",
		forms: { includes: boundary },
	},
} as const satisfies Readonly<Record<string, Check>>;
