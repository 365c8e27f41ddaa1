import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

const DAY = 24 * 60;

/** Days that the stages take [min, printed in days]. */
export const stagesDuration = formula({
	id: "logistics/stages-duration",
	name: "Days of stimulation",
	expression: "t = N / r",
	source: cite("definition"),
	inputs: { N: "count", r: "count" },
	gives: "duration",
	validity: "a pace above zero",
	compute: ({ N, r }) => (r > 0 ? (N / r) * DAY : Number.NaN),
});

/** The same from the pumping time of a stage and the time between stages [min, printed in days]. */
export const stagesDurationByCycle = formula({
	id: "logistics/stages-duration-by-cycle",
	name: "Days of stimulation, by stage cycle",
	expression: "t = N (t_p + t_s) / ((h / 24 h) e)",
	source: cite("definition", "cycle time over hours worked and uptime"),
	inputs: {
		N: "count",
		t_p: "duration",
		t_s: "duration",
		h: "duration",
		e: "share",
	},
	gives: "duration",
	validity: "hours above 0 to 24 h; uptime above 0 to 1",
	compute: ({ N, t_p, t_s, h, e }) =>
		h <= 0 || h > DAY || e <= 0 || e > 1 ? Number.NaN : (N * (t_p + t_s)) / ((h / DAY) * e),
});

/** Phases one after another [min, printed in days]. */
export const totalDuration = formula({
	id: "logistics/total-duration",
	name: "Total of the phases",
	expression: "t = Σ t_i",
	source: cite("definition", "phases one after another, without the waiting between them"),
	inputs: { t_i: { many: "duration" } },
	gives: "duration",
	compute: ({ t_i }) => t_i.reduce<number>((sum, t) => sum + t, 0),
});
