import { message } from "../../messages/message.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { absent, known, lacking, type Measure } from "./reading.ts";
import { stringOf } from "./shoe.ts";

const logOf = (the: Case) =>
	the.results.isolation.bond_logs.find(({ string }) => string === stringOf(the).id);

const annulusOf = ({ subject, results }: Case) =>
	subject.kind === "annulus"
		? results.isolation.annulus_readings.find(({ string }) => string === subject.inner.id)
		: undefined;

/** What shows whether cement seals: logs, readings of the annuli, and sheaths across protected water. */
export const sealMeasures = {
	"longest bonded interval": {
		noun: message("rules/longest-bonded-interval"),
		read: (the) => {
			const string = stringOf(the);
			const log = logOf(the);
			return log === undefined
				? absent(message("rules/no-bond-log-is-recorded-of", { string: string.id }))
				: known(
						log.longest_bonded,
						missingOf(the, string, message("rules/intervals-of-bond-log"), "cement", "actual", "bond_log"),
					);
		},
		say: ({ part }, the) => [
			message("rules/bond-log-shows-bonded-against-rock", { date: logOf(the)?.date ?? "", part }),
		],
	},
	"annulus pressure rebuilt": {
		noun: message("rules/annulus-pressure-that-came-back"),
		read: (the) => {
			const { subject } = the;
			if (subject.kind !== "annulus") return lacking();
			const found = annulusOf(the);
			const name = message("rules/annulus-named", { inner: subject.inner.id, outer: subject.outer.id });
			if (found === undefined) return absent(message("rules/no-reading-is-recorded-of", { name }));
			const i = the.well.strings.indexOf(subject.inner);
			const missing = missingAt(
				message("rules/pressure-after-the-bleed", { name }),
				"casing",
				i,
				"annulus_readings",
			);
			return found.unwatched ? lacking(missing) : known(found.rebuilt ?? found.highest, missing);
		},
		say: ({ value, part }) => [
			value.value > 0
				? message("rules/annulus-pressure-came-back-after-bleed", { part })
				: message("rules/annulus-pressure-did-not-come-back"),
		],
	},
	"zones without a plug": {
		noun: message("rules/zones-without-a-plug"),
		read: ({ results }) => {
			const plan = results.isolation.end_of_life;
			return plan === undefined
				? absent(message("rules/no-plan-of-abandonment-is-given"))
				: known(plan.open_zones, missingAt(message("rules/zones-without-a-plug"), "end_of_life", "plugs"));
		},
		say: ({ part }) => [message("rules/zones-that-no-plug-closes", { part })],
	},
	"protected water without a shown seal": {
		noun: message("rules/protected-water-without-shown-seal"),
		read: ({ results, well }) => {
			const { unsealed_water: found } = results.isolation;
			return well.strings.every(({ cement }) => cement?.actual === undefined)
				? absent(message("rules/no-cement-job-is-recorded-yet"))
				: known(
						found,
						missingAt(message("rules/base-protected-water"), "geology", "protected_water", "base"),
					);
		},
		say: ({ part }) => [message("rules/depths-of-protected-water-without-seal", { part })],
	},
} as const satisfies Readonly<Record<string, Measure>>;
