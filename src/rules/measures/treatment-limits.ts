import { message } from "../../messages/message.ts";
import { type Case, missingAt } from "../case.ts";
import { absent, known, knownOr, type Measure } from "./reading.ts";
import { annulus, pressureNeeds, treated } from "./treatment.ts";

const onRecord = (the: Case): boolean => {
	const stages = the.well.stimulation?.stages ?? [];
	return stages.length > 0 && stages.every(({ actual }) => actual !== undefined);
};

const treatedString = (the: Case) =>
	the.well.strings.find(({ id }) => id === the.well.stimulation?.treatedThrough);

export const treatmentLimitMeasures = {
	"expected treating pressure": {
		noun: message("rules/expected-treating-pressure"),
		read: treated((the) => {
			if (onRecord(the)) return absent(message("rules/treatment-is-on-record"));
			return knownOr(the.results.stimulation?.expected_treating_pressure, ...pressureNeeds(the));
		}),
		say: ({ part }) => [message("rules/treatment-is-expected-to-need", { part })],
	},
	"greatest proppant concentration": {
		noun: message("rules/greatest-proppant-concentration"),
		read: treated((the) => {
			const { baseFluid, stages } = the.well.stimulation ?? {};
			if (onRecord(the)) return absent(message("rules/treatment-is-on-record"));
			if (!/slick|water/iu.test(baseFluid?.kind ?? ""))
				return absent(message("rules/fluid-is-not-slickwater"));
			const [greatest] = (stages ?? [])
				.flatMap(({ steps }) => steps.flatMap(({ concentration }) => concentration ?? []))
				.sort((a, b) => b.value - a.value);
			return greatest === undefined
				? absent(message("rules/no-proppant-is-pumped"))
				: { state: "known", value: greatest };
		}),
		say: ({ part }) => [message("rules/slickwater-carries", { part })],
	},
	"toe valve opening pressure": {
		noun: message("rules/toe-valve-opening-pressure"),
		read: treated((the) => {
			const toe = the.well.stimulation?.toe;
			if (toe?.kind !== "initiation valve") return absent(message("rules/no-toe-valve"));
			if (onRecord(the)) return absent(message("rules/treatment-is-on-record"));
			return known(
				the.results.stimulation?.toe_opens_at_surface,
				missingAt(message("rules/toe-valve-opening-pressure"), "stimulation", "toe", "opens_at"),
			);
		}),
		say: ({ part }) => [message("rules/toe-valve-opens-at", { part })],
	},
	"casing test of the treated string": {
		noun: message("rules/casing-test-of-treated-string"),
		read: treated((the) => {
			const test = treatedString(the)?.pressureTest;
			return known(
				test?.actual?.pressure ?? test?.pressure,
				missingAt(message("rules/casing-test-of-treated-string"), "casing"),
			);
		}),
		say: ({ part }) => [message("rules/treated-string-is-tested-to", { part })],
	},
	"annulus pressure without a leak": {
		noun: message("rules/annulus-pressure-without-leak"),
		read: treated((the) => {
			const { limit } = annulus(the);
			if (limit === undefined) return absent(message("rules/annulus-not-watched"));
			if (onRecord(the)) return absent(message("rules/treatment-is-on-record"));
			const { highest } =
				the.results.stimulation?.annuli.find(({ id }) => id === limit.between.join("-")) ?? {};
			// The operator's own prediction counts where it is the greater; a relief valve caps both.
			const { predictedRise: predicted, relief } = limit;
			const stands =
				predicted !== undefined && relief !== undefined && relief.value < predicted.value
					? relief
					: predicted;
			const [greatest] = [highest, stands]
				.filter((each) => each !== undefined)
				.sort((a, b) => b.value - a.value);
			return greatest === undefined
				? absent(message("rules/annulus-does-not-rise"))
				: { state: "known", value: greatest };
		}),
		say: ({ part }) => [message("rules/annulus-may-rise-to", { part })],
	},
} as const satisfies Readonly<Record<string, Measure>>;
