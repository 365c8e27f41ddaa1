import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { EverydaySound } from "../results.ts";

const source = cite("cdc-everyday-sounds", "average level of each sound as it is heard");

/** From the softest up. Of a sound that the table gives a span, the lower end stands. */
const SOUNDS: readonly EverydaySound[] = (
	[
		["whisper", 30],
		["refrigerator", 40],
		["conversation", 60],
		["washing-machine", 70],
		["city-traffic", 80],
		["motorcycle", 95],
	] as const
).map(([id, level]) => ({
	id,
	level: constant("sound-level", level, `everyday sound: ${id.replace("-", " ")}`, source),
}));

/** The everyday sounds that a level lies between; neither end of the table is passed by guessing. */
export const everydaySounds = (
	level: Known<"sound-level">,
): { readonly as_loud_as?: EverydaySound; readonly softer_than?: EverydaySound } => {
	const below = SOUNDS.findLast((sound) => sound.level.value <= level.value);
	const above = SOUNDS.find((sound) => sound.level.value > level.value);
	return {
		...(below === undefined ? {} : { as_loud_as: below }),
		...(above === undefined ? {} : { softer_than: above }),
	};
};
