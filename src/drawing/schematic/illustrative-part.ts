import type { Results } from "../../calc/results.ts";
import type { Shape } from "../../document/shapes.ts";
import { type Box, boxPath, n } from "../lithology.ts";
import { VERMILLION } from "../palette.ts";
import { halfWidthAt, stretches, type View } from "./view.ts";

/** Beside an upright hole, and beyond the ends of a treated lateral [pt]. */
const BESIDE = 16;
const BEYOND = 4;
const LINES = 5;

/** Greatest range of depth that the models give to a fracture [ft TVD]: an illustration. */
export const illustrativeRange = ({ stimulation }: Results): readonly [number, number] | undefined => {
	const fractures = stimulation?.fractures;
	if (fractures === undefined || fractures.models.length === 0) return undefined;
	const bases = fractures.models.map(({ top, height }) => top.value + height.value);
	return [fractures.highest_top.value, Math.max(...bases)];
};

/** Upright broken lines within a broken frame: what a model draws, and nothing that was seen. */
export const illustrativeBand = (box: Box): Shape[] => {
	let lines = "";
	for (let x = box.x + LINES; x < box.x + box.width - 1; x += LINES)
		lines += `M${n(x)} ${n(box.y)}v${n(box.height)}`;
	return [
		...(lines === ""
			? []
			: [{ kind: "path", d: lines, stroke: { color: VERMILLION, width: 0.5, dash: [1.6, 2.4] } } as const]),
		{ kind: "path", d: boxPath(box), stroke: { color: VERMILLION, width: 0.8, dash: [4, 2] } },
	];
};

/** The range across the treated stretch of the hole. */
export const illustrativePart = (view: View): Shape[] => {
	const { results, scale, axis, well, deepest, detail } = view;
	const range = illustrativeRange(results);
	const { top_perforation: top, bottom_perforation: bottom } = results.stimulation ?? {};
	if (range === undefined || top === undefined || bottom === undefined || detail !== "full") return [];
	const ends = [axis.at(top.md.value), axis.at(bottom.md.value)].map((at) => at.x);
	const level = axis.level !== undefined;
	const aside = level ? BEYOND : BESIDE + halfWidthAt(view, bottom.md.value);
	const [from, to] = [Math.min(...ends) - aside, Math.max(...ends) + aside];
	return stretches(
		scale,
		Math.max(range[0], well.datum.groundLevel.value),
		Math.min(range[1], deepest),
	).flatMap(({ y, height }) => illustrativeBand({ x: from, y, width: to - from, height }));
};
