import type { Known } from "../../cite/known.ts";
import { message } from "../../messages/message.ts";
import { type Case, missingOf } from "../case.ts";
import { allowedPull, distanceAlongHole } from "../formulas.ts";
import { cementOf } from "./cement.ts";
import { placements, planned, pumped } from "./cement-job.ts";
import { absent, known, lacking, type Measure } from "./reading.ts";
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

export const jobEquipmentMeasures = {
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
		read: pumped((the) =>
			known(
				highestOfJob(the),
				missingOf(the, stringOf(the), message("rules/plastic-viscosity-and-yield-point-every"), "cement"),
			),
		),
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
