import type { LimitLeaf } from "../../catalog/limits/limit.ts";
import { type Fact, message, type Said } from "../../messages/message.ts";
import { type Case, missingAt } from "../case.ts";
import { cannotTell, doesNotApply, met, type Outcome } from "../outcome.ts";
import { listed } from "../reason.ts";
import type { Check } from "./check.ts";

const OF_ANNULUS = (field: string): Said =>
	field === "predicted annulus rise"
		? message("rules/field-predicted-rise")
		: message("rules/field-stop-pressure");

/** Whether an annulus carries the values a rule needs before treating. */
const annulusFields = (the: Case, { fields }: Extract<LimitLeaf, { form: "present" }>): Outcome => {
	const { subject, well } = the;
	if (subject.kind !== "annulus") return doesNotApply(message("rules/this-is-not-annulus"));
	if (well.stimulation === undefined) return doesNotApply(message("rules/no-stimulation-is-planned"));
	const { inner, outer, limit } = subject;
	const name = message("rules/annulus-named", { inner: inner.id, outer: outer.id });
	const index = limit === undefined ? undefined : well.stimulation.annuli.indexOf(limit);
	const read = fields.map((field) => ({
		field,
		value:
			field === "predicted annulus rise"
				? limit?.predictedRise
				: field === "annulus stop pressure"
					? limit?.stopAbove
					: undefined,
		key: field === "predicted annulus rise" ? "predicted_rise" : "stop_above",
	}));
	const missing = read.filter(({ value }) => value === undefined);
	if (missing.length > 0)
		return cannotTell(
			missing.map(({ field, key }) =>
				missingAt(
					message("rules/field-of-annulus", { field: OF_ANNULUS(field), name }),
					"stimulation",
					"annuli",
					...(index === undefined ? [] : [index, key]),
				),
			),
		);
	const said = read.flatMap(({ field, value }): readonly Fact[] =>
		value === undefined ? [] : [message("rules/a-field-of", { field: OF_ANNULUS(field), value })],
	);
	return met(message("rules/annulus-has", { name, said: listed(said) }));
};

export const pressureChecks = {
	"casing-pressure-test": {
		title: "Casing pressure test",
		looksAt: "planned or recorded test pressure, hold and fall",
		explain:
			"The test proves the pipe before anything depends on it. The required pressure is often computed from the length of the string and " +
			"held between a floor and a share of the pipe's yield; the finding shows that arithmetic. A planned test is judged by its " +
			"planned limits, a recorded one by its record alone.",
	},
	"internal-yield-margin": {
		title: "Internal yield over treating pressure",
		looksAt: "least internal yield of the string, pipe and coupling, against the maximum treating pressure",
		explain:
			"Pipe that sees treating pressure needs a margin of internal yield over it. The rating is that of new pipe, of the weakest run; " +
			"wear, corrosion and bending are not taken off here.",
	},
	"relief-valve": {
		title: "Relief valve setting",
		looksAt: "setting of the relief valve against a rating",
		explain: "Where a rule limits the setting of a relief valve, the planned setting is compared with it.",
	},
	"relief-below-maximum": {
		title: "Relief valve below maximum treating pressure",
		looksAt: "setting of the relief valve, and the maximum treating pressure",
		explain:
			"A relief valve that opens above the maximum treating pressure protects nothing: the pumps can load the pipe past its " +
			"limit before it lifts. The planned setting is compared with the planned maximum.",
	},
	"annulus-limit": {
		title: "Annulus pressure while treating",
		looksAt: "predicted rise and stop pressure of each annulus that opens at the wellhead",
		explain:
			"Pressure in an annulus that departs from what heat and ballooning predict is the first sign of a leak. Rules ask for a stop at an " +
			"absolute pressure, at a rise, or at any departure; the last needs a prediction for every annulus.",
		forms: { present: annulusFields },
	},
} as const satisfies Readonly<Record<string, Check>>;
