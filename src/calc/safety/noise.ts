import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Sound level at a distance, from the level at another [dBA]. */
export const soundLevelAtDistance = formula({
	id: "safety/sound-level-at-distance",
	name: "Sound level at a distance",
	expression: "L_2 = L_1 − 20 log(r_2 / r_1)",
	source: cite("federal-ea-noise", "point source, spreading only"),
	inputs: { L_1: "sound-level", r_1: "distance", r_2: "distance" },
	gives: "sound-level",
	validity: "a point source in the open; no allowance for ground, wind, walls or air",
	compute: ({ L_1, r_1, r_2 }) => (r_1 <= 0 || r_2 <= 0 ? Number.NaN : L_1 - 20 * Math.log10(r_2 / r_1)),
});

/** Levels of several sources heard together [dBA]. */
export const totalSoundLevel = formula({
	id: "safety/total-sound-level",
	name: "Sound level of several sources",
	expression: "L = 10 log Σ 10^(L_i/10)",
	source: cite("federal-ea-noise", "addition of levels"),
	inputs: { L_i: { many: "sound-level" } },
	gives: "sound-level",
	validity: "at least one source",
	compute: ({ L_i }) =>
		L_i.length === 0 ? Number.NaN : 10 * Math.log10(L_i.reduce<number>((sum, l) => sum + 10 ** (l / 10), 0)),
});
