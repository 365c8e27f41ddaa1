import type { LimitLeaf } from "../../catalog/limits/limit.ts";
import { message } from "../../messages/message.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { noCementReturned } from "../measures/cement.ts";
import { stringOf } from "../measures/shoe.ts";
import { cannotTell, doesNotApply, met, notMet, type Outcome } from "../outcome.ts";
import type { Check } from "./check.ts";

type Words = Extract<LimitLeaf, { form: "one of" }>;

const noJob = (the: Case): Outcome =>
	doesNotApply(message("rules/cement-job-string-is-not-recorded", { string: stringOf(the).id }));

/** Whether the floats held when pressure was bled off after the job. */
const floats = (the: Case, { words }: Words): Outcome => {
	const string = stringOf(the);
	const actual = string.cement?.actual;
	if (actual === undefined) return noJob(the);
	const { floatsHeld } = actual;
	if (floatsHeld === undefined)
		return cannotTell([
			missingOf(the, string, message("rules/record-whether-floats-held"), "cement", "actual", "floats_held"),
		]);
	const found = floatsHeld ? "held" : "failed";
	return words.includes(found)
		? met(message("rules/record-says-that-floats-held"))
		: notMet(message("rules/record-says-that-floats-did-not-hold"));
};

/** Returns while the cement was placed; cement seen at surface is returns to the end. */
const returns = (the: Case, { words }: Words): Outcome => {
	const string = stringOf(the);
	const actual = string.cement?.actual;
	if (actual === undefined) return noJob(the);
	const { returnsWhilePumping: seen, returnsToSurface: cement } = actual;
	if (seen !== undefined)
		return words.includes(seen)
			? met(message("rules/record-says-that-returns-were-while-pumping", { seen }))
			: notMet(
					seen === "none"
						? message("rules/record-says-that-there-were-no")
						: message("rules/record-says-that-returns-were-while-pumping", { seen }),
				);
	if (cement !== undefined && cement.value > 0 && words.includes("cement at surface"))
		return met(message("rules/record-shows-cement-returned-to-surface-2", { cement }));
	if (cement !== undefined && cement.value <= 0) return notMet(noCementReturned(the));
	return cannotTell([
		missingOf(
			the,
			string,
			message("rules/record-returns-while-pumping"),
			"cement",
			"actual",
			"returns",
			"while_pumping",
		),
	]);
};

/** Whether the preventers held their recorded test. */
const stackHeld = ({ subject, well }: Case, { words }: Words): Outcome => {
	if (subject.kind !== "stack") return doesNotApply(message("rules/this-is-not-preventer-stack"));
	const { actual, over } = subject.stack;
	if (actual === undefined)
		return doesNotApply(message("rules/no-test-preventers-on-string-is-recorded", { over }));
	const i = well.wellControl?.preventers?.indexOf(subject.stack) ?? 0;
	if (actual.held === undefined)
		return cannotTell([
			missingAt(
				message("rules/record-whether-preventers-on-string-held", { over }),
				"well_control",
				"preventers",
				i,
				"actual",
				"held",
			),
		]);
	return words.includes(actual.held ? "held" : "failed")
		? met(message("rules/record-says-that-preventers-held-their-test"))
		: notMet(message("rules/record-says-that-preventers-did-not-hold"));
};

const RECORD =
	"A record is held against what was designed; before the job is recorded the check does not apply.";

export const recordChecks = {
	"slurry-volume-record": {
		title: "Slurry pumped against slurry calculated",
		looksAt: "volume of each slurry in the job record, against its calculated volume",
		explain: `${RECORD} The slurry with the least part of its calculated volume decides.`,
	},
	"slurry-density-record": {
		title: "Slurry density against design",
		looksAt: "density of each slurry in the job record, against its design density",
		explain: `${RECORD} Cement mixed light sets weak and slowly; mixed heavy it may break the rock down or set early.`,
	},
	"lift-record": {
		title: "Lift pressure against calculated",
		looksAt:
			"final lift pressure in the job record, against the columns at rest and the final circulating pressure",
		explain:
			`${RECORD} A lift pressure that is too low says that cement is not as high as it should be. The gauge reads the columns ` +
			"alone or with the friction of the last pumping, and anything between the two agrees.",
	},
	"cement-top-record": {
		title: "Cement top against plan",
		looksAt: "the recorded cement top, else the one that the volumes pumped come to, against the planned one",
		explain:
			"Where no top was seen or logged, it is worked from the volumes pumped, with the excess of the plan. Volumes cannot " +
			"see losses or a channel.",
	},
	"bump-record": {
		title: "Bump pressure against what the string allows",
		looksAt: "bump pressure in the job record, against the casing, its test and the wellhead",
		explain: RECORD,
	},
	"float-record": {
		title: "Floats held",
		looksAt: "whether the job record says that the floats held",
		explain:
			"Floats that fail let cement flow back into the pipe, unless pressure is held on it until the cement has set.",
		forms: { "one of": floats },
	},
	"returns-record": {
		title: "Returns while cementing",
		looksAt: "returns in the job record, or cement seen at surface",
		explain: "What does not come back has gone into the rock, and the top is lower by as much.",
		forms: { "one of": returns },
	},
	"shoe-test-record": {
		title: "Shoe test against what the next hole needs",
		looksAt: "recorded shoe test, against the planned one and the fluid below the shoe",
		explain: `${RECORD} The next hole was designed on the planned test; a lower one leaves less room for mud, friction and a kick.`,
	},
	"casing-test-record": {
		title: "Casing test against its plan",
		looksAt: "recorded pressure, hold and fall of the casing test, against the planned ones",
		explain: RECORD,
	},
	"preventer-test-record": {
		title: "Preventer test against its plan",
		looksAt: "recorded test of each preventer stack",
		explain: RECORD,
		forms: { "one of": stackHeld },
	},
	"treating-pressure-record": {
		title: "Treating pressure on record",
		looksAt: "the highest maximum of the stage records, against the limits of the treatment",
		explain: `${RECORD} The stage that reached the highest pressure decides.`,
	},
	"stage-volume-record": {
		title: "Stages pumped against plan",
		looksAt: "clean volume and proppant of each stage record, against the plan of the stage",
		explain: `${RECORD} The stage that fell shortest decides; the stage table shows every one.`,
	},
	"water-blend": {
		title: "Density of the water as blended",
		looksAt: "dissolved solids of the water sources, against the stated density of the base fluid",
		explain:
			"Salt makes water heavier, and the column in the pipe with it: a base fluid stated as fresh gives too high a surface pressure " +
			"and too low a pressure at depth.",
	},
	"chart-record": {
		title: "Treatment chart against record",
		looksAt: "slurry volume under the rate of each chart, against the volume of the stage's record",
		explain: `${RECORD} The chart that is farthest off decides. Either may be wrong.`,
	},
	"shut-in-gradient-record": {
		title: "Gradient at shut-in",
		looksAt: "instantaneous shut-in pressure of each stage with its column, over depth",
		explain:
			"A fracture opens against the least stress. From about the weight of the rock above, the least stress may be that weight, " +
			"and a fracture lies flat or has met one that does.",
	},
	"annulus-record": {
		title: "Annulus pressure on record",
		looksAt: "highest pressure recorded in each annulus, against the pressure at which the job stops",
		explain: RECORD,
	},
} as const satisfies Readonly<Record<string, Check>>;
