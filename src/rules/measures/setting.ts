import { outerStrings } from "../../calc/cement/annulus.ts";
import { verticalMark } from "../../calc/depths/marks.ts";
import type { Known } from "../../cite/known.ts";
import { message } from "../../messages/message.ts";
import { practicallyEqual } from "../../units/practically-equal.ts";
import { type Case, missingOf } from "../case.ts";
import { verticalDistance } from "../formulas.ts";
import { cementOf } from "./cement.ts";
import { pumped } from "./cement-job.ts";
import { absent, known, lacking, type Measure } from "./reading.ts";
import { stringOf } from "./shoe.ts";

/** A column within this of where it should be has come there [ft]. */
const THERE = 1;

/** Least force that holds the pipe down, over the job and when the plug lands; negative where it is lifted. */
const leastHold = (the: Case): Known<"force"> | undefined => {
	const cement = cementOf(the);
	return [cement?.placement?.least_net_force?.force, cement?.net_hold_down]
		.filter((each) => each !== undefined)
		.sort((a, b) => a.value - b.value)[0];
};

/** Water zones that the string passes, beside which its recorded cement stops short and no outer string has any. */
const barest = (the: Case) => {
	const string = stringOf(the);
	const { well, results } = the;
	const top = cementOf(the)?.top;
	if (top === undefined) return undefined;
	const outside = outerStrings(well.strings, string);
	return well.geology.water
		.filter(({ base }) => {
			const { md } = verticalMark(results.trajectory.path, base, well.datum);
			return md !== undefined && md.value < string.shoe.value;
		})
		.filter(
			(zone) =>
				!outside.some(({ id }) =>
					(results.cement[id]?.columns ?? []).some(
						(column) =>
							column.top.tvd.value <= zone.top.value + THERE &&
							column.bottom.tvd.value >= zone.base.value - THERE,
					),
				),
		)
		.map((zone) => ({ zone, short: verticalDistance.of({ lower: top.tvd, upper: zone.top }) }))
		.sort((a, b) => b.short.value - a.short.value)[0];
};

export const settingMeasures = {
	"strength when drilled out": {
		noun: message("rules/strength-when-drilled-out"),
		read: (the) => {
			const string = stringOf(the);
			const setting = cementOf(the)?.setting;
			if (setting === undefined) return lacking(missingOf(the, string, "cement", "cement"));
			if (setting.drill_out_planned === undefined)
				return lacking(missingOf(the, string, message("rules/wait-on-cement"), "cement", "wait_on_cement"));
			const index = string.cement?.slurries.findIndex(({ id }) => id === setting.slurry) ?? -1;
			const slurry = string.cement?.slurries[index];
			const missing = missingOf(
				the,
				string,
				message("rules/strength-tests-of-slurry", { slurry: setting.slurry }),
				"cement",
				"slurries",
				Math.max(0, index),
				"strength",
			);
			const value = setting.strength_at_drill_out;
			const first = [...(slurry?.strength ?? [])].sort((a, b) => a.after.value - b.after.value)[0];
			// Before the first test the straight line lies above a curve that starts late: it only bounds the strength.
			const early =
				first !== undefined &&
				first.after.value > setting.drill_out_planned.value &&
				!practicallyEqual(first.after.value, setting.drill_out_planned.value);
			if (value !== undefined && early) return { state: "bounded", atMost: value, missing: [missing] };
			return known(value, missing);
		},
		say: ({ part }, the) => {
			const { setting } = cementOf(the) ?? {};
			return [
				message("rules/cement-at-shoe-has", {
					string: stringOf(the).id,
					part,
					after: setting?.drill_out_planned ?? "",
					detail: {
						parts:
							setting?.strength_reached === undefined
								? []
								: [
										message("rules/it-reaches-strength-after", {
											wanted: setting.strength_wanted,
											reached: setting.strength_reached,
										}),
									],
					},
				}),
			];
		},
	},
	"strength wanted at drill-out": {
		noun: message("rules/strength-wanted-at-drill-out"),
		read: (the) => {
			const stated = stringOf(the).cement?.drillOut?.strength;
			return stated === undefined
				? absent(message("rules/no-strength-is-stated-for-drilling-out", { string: stringOf(the).id }))
				: { state: "known", value: stated };
		},
		say: ({ part }) => [message("rules/strength-wanted-is", { part })],
	},
	"hold-down while cementing": {
		noun: message("rules/hold-down-while-cementing"),
		read: pumped((the) => {
			const string = stringOf(the);
			const widths = new Set(string.sections.map(({ outsideDiameter }) => outsideDiameter.value));
			const force = leastHold(the);
			if (force === undefined && (string.kind !== "casing" || widths.size > 1))
				return absent(message("rules/hold-down-of-one-diameter", { string: string.id }));
			return known(force, missingOf(the, string, message("rules/density-mud-and-spacer"), "cement"));
		}),
		say: ({ value, size }, the) => [
			value.value < 0
				? message("rules/cement-job-lifts", { string: stringOf(the).id, size })
				: message("rules/cement-job-holds-down", { string: stringOf(the).id, size }),
		],
	},
	"cement top below water zone": {
		noun: message("rules/recorded-cement-top-below-water-zone"),
		read: (the) => {
			const string = stringOf(the);
			if (string.cement?.actual === undefined)
				return absent(message("rules/cement-job-string-is-not-recorded-2", { string: string.id }));
			const bare = barest(the);
			return bare === undefined
				? absent(message("rules/string-passes-no-water-bare", { string: string.id }))
				: { state: "known", value: bare.short };
		},
		say: ({ value, size }, the) => {
			const zone = barest(the)?.zone.name ?? "";
			return [
				value.value > 0
					? message("rules/cement-stops-below-water", { string: stringOf(the).id, size, zone })
					: message("rules/cement-covers-water", { string: stringOf(the).id, zone }),
			];
		},
	},
} as const satisfies Readonly<Record<string, Measure>>;
