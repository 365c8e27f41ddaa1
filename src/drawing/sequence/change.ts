import type { Known } from "../../cite/known.ts";
import type { Shape } from "../../document/shapes.ts";
import { setLine } from "../line-of-text.ts";
import { arrow } from "../marks/arrow.ts";
import { named } from "../named.ts";
import { INK } from "../palette.ts";
import { openPath } from "../well-axis.ts";
import { levelOf } from "./built.ts";
import type { Scene } from "./scene.ts";
import type { WellStep } from "./steps.ts";

/** A bracket beside the part of the upright hole that a step changes, with its depth; cement on its way has an arrow. */
export const changeShapes = (scene: Scene, step: WellStep): Shape[] => {
	const { well, results, axis, ground, middle, nest, mark, size } = scene;
	const string = well.strings.find(({ id }) => id === step.string);
	if (string === undefined) return [];
	const x = middle - nest.widest - 12 * mark;
	const shoe = results.casing[string.id]?.shoe;
	const hole = results.pressure.holes.find(({ id }) => id === string.hole.id)?.bottom;
	const foot = axis.at(string.shoe.value).y;
	const bracket = (bottom: number, depth: Known | undefined): Shape[] => [
		{
			kind: "path",
			d: openPath([
				[x + 5 * mark, ground],
				[x, ground],
				[x, bottom],
				[x + 5 * mark, bottom],
			]),
			stroke: { color: INK, width: Math.max(0.9, 2.4 * mark) },
		},
		...(depth === undefined ? [] : [depthLabel(scene, depth, x - 5 * mark, bottom)]),
	];
	switch (step.kind) {
		case "hole":
			return bracket(axis.at(string.hole.bottom.value).y, hole?.below_ground);
		case "pad":
		case "pipe":
		case "string":
		case "returns":
			return bracket(foot, shoe?.below_ground);
		case "cement": {
			const level = axis.at(levelOf(scene, string)).y;
			const down = Math.min(foot, scene.scale.y(scene.deepest));
			return [
				...arrow([x, down], [x, level], Math.max(1.4, 4 * mark)),
				...(shoe === undefined
					? []
					: [depthLabel(scene, shoe.below_ground, x - 7 * mark, Math.max(foot, ground + size))]),
			];
		}
		default:
			return [];
	}
};

const depthLabel = (scene: Scene, depth: Known, x: number, y: number): Shape => {
	const { print, size, ground, box } = scene;
	const base = scene.results.geology.protected_water_base;
	const water = base === undefined ? ground : scene.scale.y(base.tvd.value);
	// No word stands on the line at the base of the water.
	const clear = Math.abs(y - water) < size * 0.9 ? water + size * 0.75 : y;
	return named(
		"label change",
		setLine([{ ...print.value(depth), weight: "bold" }], {
			x,
			y: Math.min(Math.max(clear + size * 0.34, ground + size), box.y + box.height - 2),
			size,
			anchor: "end",
		}),
	);
};
