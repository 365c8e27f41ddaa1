import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

const DAY = 24 * 60;

/** Days that the stages take [min, printed in days]. */
export const stagesDuration = formula({
	id: "logistics/stages-duration",
	name: "Days of stimulation",
	expression: "t = stages / stages per day",
	source: cite("definition"),
	inputs: { stages: "count", stages_per_day: "ratio" },
	gives: "duration",
	validity: "a pace above zero",
	compute: ({ stages, stages_per_day }) =>
		stages_per_day > 0 ? (stages / stages_per_day) * DAY : Number.NaN,
});

/** The same from the pumping time of a stage and the time between stages [min, printed in days]. */
export const stagesDurationByCycle = formula({
	id: "logistics/stages-duration-by-cycle",
	name: "Days of stimulation, by stage cycle",
	expression: "t = N (V_slurry/Q + t_swap) / (h e / 24 h)",
	source: cite("definition", "cycle time over hours worked and uptime"),
	inputs: {
		stages: "count",
		pumping: "duration",
		swap: "duration",
		hours_a_day: "duration",
		uptime: "share",
	},
	gives: "duration",
	validity: "hours above 0 to 24 h; uptime above 0 to 1",
	compute: ({ stages, pumping, swap, hours_a_day, uptime }) =>
		hours_a_day <= 0 || hours_a_day > DAY || uptime <= 0 || uptime > 1
			? Number.NaN
			: (stages * (pumping + swap)) / ((hours_a_day / DAY) * uptime),
});

/** Phases one after another [min, printed in days]. */
export const totalDuration = formula({
	id: "logistics/total-duration",
	name: "Total of the phases",
	expression: "t = Σ tᵢ",
	source: cite("definition", "phases one after another, without the waiting between them"),
	inputs: { parts: { many: "duration" } },
	gives: "duration",
	compute: ({ parts }) => parts.reduce<number>((sum, part) => sum + part, 0),
});
