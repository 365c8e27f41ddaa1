import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";
import { CUBIC_FEET_PER_BARREL } from "./capacity.ts";

/** Sacks that a slurry volume comes to, before rounding. */
export const exactSacks = formula({
	id: "cement/exact-sacks",
	name: "Sacks of cement before rounding",
	expression: "n = 5.6146 V / y",
	source: cite("lapeyrouse", "ch. 2, number of sacks required"),
	inputs: { V: "volume", y: "slurry-yield" },
	gives: "ratio",
	validity: "a yield above zero",
	compute: ({ V, y }) => (y > 0 ? (V * CUBIC_FEET_PER_BARREL) / y : Number.NaN),
});

/** A whole count reached within this is not rounded up once more; it absorbs the last bits of binary arithmetic. */
const LAST_BITS = 1e-9;

/** Whole sacks to bring, never fewer than the volume needs. */
export const sacks = formula({
	id: "cement/sacks",
	name: "Sacks of cement",
	expression: "sacks = n, rounded up",
	source: cite("common-practice", "sacks are rounded up"),
	inputs: { n: "ratio" },
	gives: "count",
	compute: ({ n }) => Math.max(0, Math.ceil(n - LAST_BITS * Math.max(1, n))),
});

/** Water to mix the sacks with [bbl]. */
export const mixWater = formula({
	id: "cement/mix-water",
	name: "Mix water",
	expression: "W = n w / 42",
	source: cite("lapeyrouse", "ch. 2, mix water requirement"),
	inputs: { n: "count", w: "water-requirement" },
	gives: "volume",
	compute: ({ n, w }) => (n * w) / 42,
});

/** Strokes of the pump that a volume takes, to the nearest. */
export const pumpStrokes = formula({
	id: "cement/pump-strokes",
	name: "Pump strokes",
	expression: "n = V / V_s, to the nearest stroke",
	source: cite("lapeyrouse", "ch. 1, pump strokes: volume over pump output"),
	inputs: { V: "volume", V_s: "volume" },
	gives: "count",
	validity: "an output above zero",
	compute: ({ V, V_s }) => (V_s > 0 ? Math.round(V / V_s) : Number.NaN),
});

/** Sacks of a job [sacks]. */
export const totalSacks = formula({
	id: "cement/total-sacks",
	name: "Total sacks of cement",
	expression: "n = Σ n_i",
	source: cite("definition"),
	inputs: { n_i: { many: "count" } },
	gives: "count",
	compute: ({ n_i }) => n_i.reduce<number>((sum, n) => sum + n, 0),
});

/** What was pumped against what was calculated. */
export const pumpedOverCalculated = formula({
	id: "cement/pumped-over-calculated",
	name: "Slurry pumped over slurry calculated",
	expression: "V_pumped / V",
	source: cite("definition"),
	inputs: { V_pumped: "volume", V: "volume" },
	gives: "ratio",
	validity: "a calculated volume above zero",
	compute: ({ V_pumped, V }) => (V > 0 ? V_pumped / V : Number.NaN),
});

/** Time a fluid takes to pass a point [min]. */
export const contactTime = formula({
	id: "cement/contact-time",
	name: "Contact time of a spacer",
	expression: "t = V / Q",
	source: cite("common-practice", "volume passing a point over rate"),
	inputs: { V: "volume", Q: "flow-rate" },
	gives: "duration",
	validity: "a rate above zero",
	compute: ({ V, Q }) => (Q > 0 ? V / Q : Number.NaN),
});

/** What is left of a volume when a part has been set aside [bbl]. */
export const volumeLeft = formula({
	id: "cement/volume-left",
	name: "Volume less a part of it",
	expression: "V − V_last",
	source: cite("conservation"),
	inputs: { V: "volume", V_last: "volume" },
	gives: "volume",
	compute: ({ V, V_last }) => V - V_last,
});

/** [min] */
export const totalTime = formula({
	id: "cement/total-time",
	name: "Time since the job began",
	expression: "t = Σ t_i",
	source: cite("definition"),
	inputs: { t_i: { many: "duration" } },
	gives: "duration",
	compute: ({ t_i }) => t_i.reduce<number>((sum, t) => sum + t, 0),
});
