import type { Known } from "../../cite/known.ts";
import { message } from "../../messages/message.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { allowedPull, distanceAlongHole } from "../formulas.ts";
import { cementOf, heightBetween } from "./cement.ts";
import { friction, placements, planned, pumped } from "./cement-job.ts";
import { aboveOrBelow, absent, known, lacking, type Measure } from "./reading.ts";
import { casingOf, stringOf } from "./shoe.ts";

/** The highest pressure that the cementing line sees: while pumping, or when the plug is bumped. */
const highestOfJob = (the: Case): Known<"pressure"> | undefined =>
	placements(the)
		.flatMap(({ greatest_pump_pressure, bump_pressure }) => [greatest_pump_pressure, bump_pressure])
		.filter((each) => each !== undefined)
		.sort((a, b) => b.value - a.value)[0];

/** Classes that are made for shallow and cool rock. */
const SHALLOW = ["A", "B", "C"];

const shallowFoot = (the: Case) =>
	(cementOf(the)?.slurries ?? [])
		.filter(({ id }) => {
			const { cementClass } = stringOf(the).cement?.slurries.find((each) => each.id === id) ?? {};
			return cementClass !== undefined && SHALLOW.includes(cementClass.toUpperCase());
		})
		.sort((a, b) => b.bottom.tvd.value - a.bottom.tvd.value)[0];

const ratings = (the: Case) =>
	(casingOf(the)?.sections ?? []).flatMap(({ body_yield, joint_strength }) => [
		body_yield,
		...(joint_strength === undefined ? [] : [joint_strength]),
	]);

/** The head that a casing test loads: the drilling head, unless the treating head is stated to be on. */
const headAtTest = (the: Case): Known<"pressure"> | undefined => {
	const { wellhead } = the.well;
	return stringOf(the).pressureTest?.head === "stimulation" ? wellhead?.stimulation : wellhead?.drilling;
};

/** The foot of the lead slurry of a string of several slurries, on the treated string. */
const leadFoot = (the: Case) => {
	const string = stringOf(the);
	if (string.id !== the.well.stimulation?.treatedThrough) return undefined;
	const [lead, tail] = (cementOf(the)?.slurries ?? []).toSorted(
		(a, b) => a.top.tvd.value - b.top.tvd.value || mdOf(a.top) - mdOf(b.top),
	);
	return tail === undefined ? undefined : lead;
};

const mdOf = ({ md }: { readonly md?: Known<"measured-depth"> }): number => md?.value ?? 0;

export const jobEquipmentMeasures = {
	"wellhead rating at the casing test": {
		noun: message("rules/wellhead-rating-at-casing-test"),
		read: (the) =>
			stringOf(the).pressureTest === undefined
				? absent(message("rules/no-casing-test-is-planned", { string: stringOf(the).id }))
				: known(
						headAtTest(the),
						stringOf(the).pressureTest?.head === "stimulation"
							? missingAt(message("rules/rating-wellhead-while-treating"), "wellhead", "stimulation")
							: missingAt(message("rules/rating-wellhead-while-drilling"), "wellhead", "drilling"),
					),
		say: ({ part }) => [message("rules/wellhead-at-casing-test-is-rated", { part })],
	},
	"lead slurry above the treated interval": {
		noun: message("rules/lead-slurry-above-treated-interval"),
		side: "above",
		read: planned((the) => {
			const [lead, top] = [leadFoot(the), the.results.stimulation?.top_perforation];
			return lead === undefined || top === undefined
				? absent(message("rules/no-lead-slurry-over-treated-interval", { string: stringOf(the).id }))
				: known(
						heightBetween(top, lead.bottom, "hole"),
						missingOf(the, stringOf(the), message("rules/cement-top"), "cement", "slurries"),
					);
		}),
		say: (said, the) =>
			aboveOrBelow(
				message("rules/foot-of-slurry", { slurry: leadFoot(the)?.id ?? "" }),
				message("rules/the-uppermost-perforation"),
				said,
			),
	},
	"spacer plastic viscosity": {
		noun: message("rules/spacer-plastic-viscosity"),
		read: planned((the) =>
			stringOf(the).cement?.spacer === undefined
				? absent(message("rules/no-spacer-is-pumped", { string: stringOf(the).id }))
				: known(
						stringOf(the).cement?.spacer?.plasticViscosity,
						missingOf(
							the,
							stringOf(the),
							message("rules/plastic-viscosity-and-yield-point-of-spacer", { string: stringOf(the).id }),
							"cement",
							"spacer",
						),
					),
		),
		say: ({ part }, the) => [message("rules/spacer-has-viscosity", { string: stringOf(the).id, part })],
	},
	"cementing line test": {
		noun: message("rules/cementing-line-test"),
		read: pumped((the) =>
			known(
				stringOf(the).cement?.lineTest,
				missingOf(the, stringOf(the), message("rules/cementing-line-test"), "cement", "line_test"),
			),
		),
		say: ({ part }, the) => [
			message("rules/cementing-line-is-tested-to", { string: stringOf(the).id, part }),
		],
	},
	"highest cementing pressure": {
		noun: message("rules/highest-cementing-pressure"),
		read: pumped((the) => known(highestOfJob(the), friction(the))),
		say: ({ part }) => [message("rules/cement-job-reaches", { part })],
	},
	"depth of shallow cement class": {
		noun: message("rules/depth-of-shallow-cement-class"),
		read: planned((the) => {
			const foot = shallowFoot(the);
			return foot === undefined
				? absent(message("rules/no-shallow-class", { string: stringOf(the).id }))
				: { state: "known", value: foot.bottom.tvd };
		}),
		say: ({ part }, the) => {
			const foot = shallowFoot(the)?.id ?? "";
			return [
				message("rules/slurry-of-class-reaches", {
					slurry: foot,
					string: stringOf(the).id,
					class: stringOf(the).cement?.slurries.find(({ id }) => id === foot)?.cementClass ?? "",
					part,
				}),
			];
		},
	},
	"stated maximum pull": {
		noun: message("rules/stated-maximum-pull"),
		read: (the) => {
			const string = stringOf(the);
			if (string.landed !== undefined)
				return absent(message("rules/string-is-on-record-as-landed", { string: string.id }));
			const pull = string.running?.maximumPull;
			return pull === undefined
				? absent(message("rules/no-maximum-pull", { string: string.id }))
				: { state: "known", value: pull };
		},
		say: ({ part }, the) => [message("rules/maximum-pull-is", { string: stringOf(the).id, part })],
	},
	"allowed pull": {
		noun: message("rules/allowed-pull"),
		read: (the) => {
			const string = stringOf(the);
			const F = ratings(the);
			return known(
				F.length === 0 ? undefined : allowedPull.of({ F_i: F, DF: string.designFactors.overpull }),
				missingOf(the, string, message("rules/rating-pipe"), "pipe"),
			);
		},
		say: ({ part }) => [message("rules/pull-allowed-is", { part })],
	},
	"production packer below cement top": {
		noun: message("rules/production-packer-below-cement-top"),
		read: (the) => {
			const string = stringOf(the);
			const packer = string.production?.packer;
			const top = cementOf(the)?.top;
			if (packer === undefined) return absent(message("rules/no-packer", { string: string.id }));
			return top === undefined
				? lacking(missingOf(the, string, message("rules/cement-top"), "cement", "slurries"))
				: { state: "known", value: distanceAlongHole.of({ lower: packer, upper: top.md }) };
		},
		say: ({ value, size }, the) => [
			message(value.value < 0 ? "rules/packer-above-cement" : "rules/packer-below-cement", {
				string: stringOf(the).id,
				size,
			}),
		],
	},
} as const satisfies Readonly<Record<string, Measure>>;
