import type { LimitLeaf } from "../../catalog/limits/limit.ts";
import { message } from "../../messages/message.ts";
import { type Case, missingOf } from "../case.ts";
import { stringOf } from "../measures/shoe.ts";
import { cannotTell, doesNotApply, met, notMet, type Outcome } from "../outcome.ts";
import type { Check } from "./check.ts";

type Words = Extract<LimitLeaf, { form: "one of" }>;

/** Whether every squeeze of a string was tested afterwards, and held. */
const squeezes = (the: Case, { words }: Words): Outcome => {
	const string = stringOf(the);
	const done = string.cement?.actual?.seal?.squeezes ?? [];
	if (done.length === 0)
		return doesNotApply(message("rules/no-squeeze-is-recorded-of", { string: string.id }));
	const failed = done.find(({ held }) => held === false);
	if (failed !== undefined && !words.includes("failed"))
		return notMet(message("rules/squeeze-did-not-hold-its-test", { date: failed.date }));
	const open = done.findIndex(({ held }) => held === undefined);
	if (open >= 0)
		return cannotTell([
			missingOf(
				the,
				string,
				message("rules/test-after-squeeze-of", { date: done[open]?.date ?? "" }),
				"cement",
				"actual",
				"squeezes",
				open,
				"held",
			),
		]);
	return met(message("rules/squeeze-held-its-test", { date: done.at(-1)?.date ?? "" }));
};

export const sealChecks = {
	"bonded-interval": {
		title: "Bonded interval against rock",
		looksAt: "the bond log of a string by interval, below the shoe outside it",
		explain:
			"A stretch counts as bonded from the index that the guidance names, or where the analyst grades it good; of the two the " +
			"worse holds. The longest stretch without a break against rock decides. A log cannot see a channel narrower than it " +
			"resolves, and reads low where a micro-annulus parts cement from pipe.",
	},
	"sustained-annulus-pressure": {
		title: "Annulus pressure that comes back",
		looksAt: "readings of each annulus: pressure found, bled to, and rebuilt to",
		explain:
			"Pressure from heat stays away once it is bled; pressure that comes back is fed through a leak or past cement. A reading " +
			"that was not watched after the bleed shows neither.",
	},
	"squeeze-record": {
		title: "Squeeze tested",
		looksAt: "squeezes in the job record, and whether the test after each held",
		explain: "A squeeze that was not tested afterwards has shown nothing.",
		forms: { "one of": squeezes },
	},
	"abandonment-plan": {
		title: "Zones closed by the plan of abandonment",
		looksAt: "planned plugs, against the base of protected water, each zone that flows and the target",
		explain:
			"A zone is closed by a plug across its top or just above it, protected water by one across its base. The plugging " +
			"rules of the agency, and the cement outside the pipe, decide in the end.",
	},
	"water-seal-record": {
		title: "Seal shown across protected water",
		looksAt: "cement across each zone of protected water and its base, with what shows that it is there",
		explain:
			"Counted are depths at which no sheath is more than planned or calculated, or at which a bond log found none bonded. " +
			"Cement seen at surface shows that the column reached it, and not that it is free of channels.",
	},
} as const satisfies Readonly<Record<string, Check>>;
