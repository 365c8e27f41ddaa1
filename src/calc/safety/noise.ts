import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Sound level at a distance, from the level at another [dBA]. */
export const soundLevelAtDistance = formula({
	id: "safety/sound-level-at-distance",
	name: "Sound level at a distance",
	expression: "L₂ = L₁ − 20 log(r₂ / r₁)",
	source: cite("federal-ea-noise", "point source, spreading only"),
	inputs: { level: "sound-level", at: "distance", distance: "distance" },
	gives: "sound-level",
	validity: "a point source in the open; no allowance for ground, wind, walls or air",
	compute: ({ level, at, distance }) =>
		at <= 0 || distance <= 0 ? Number.NaN : level - 20 * Math.log10(distance / at),
});

/** Levels of several sources heard together [dBA]. */
export const totalSoundLevel = formula({
	id: "safety/total-sound-level",
	name: "Sound level of several sources",
	expression: "L = 10 log Σ 10^(Lᵢ/10)",
	source: cite("federal-ea-noise", "addition of levels"),
	inputs: { levels: { many: "sound-level" } },
	gives: "sound-level",
	validity: "at least one source",
	compute: ({ levels }) =>
		levels.length === 0
			? Number.NaN
			: 10 * Math.log10(levels.reduce<number>((sum, l) => sum + 10 ** (l / 10), 0)),
});
