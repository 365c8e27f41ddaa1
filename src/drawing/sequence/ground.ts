import type { Shape } from "../../document/shapes.ts";
import { tickString } from "../../units/format.ts";
import { graduations } from "../depth-scale.ts";
import { run, setLine } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { groundLine } from "../marks/lines.ts";
import { protectedBase, waterBand } from "../marks/water.ts";
import { named } from "../named.ts";
import { GROUND, INK, TARGET_TINT } from "../palette.ts";
import { bedsOf } from "../schematic/view.ts";
import type { Scene } from "./scene.ts";

/** Type size from which the base of the water has words beside its depth [pt]. */
const WORDED = 14;

/** Rock, water and the ruler: the same in every picture of a well. */
export const groundShapes = (scene: Scene): Shape[] => {
	const { well, results, scale, left, right, ground, deepest } = scene;
	const band = (from: number, to: number) => ({
		x: left,
		y: scale.y(from),
		width: right - left,
		height: Math.max(0, scale.y(to) - scale.y(from)),
	});
	const surface = well.datum.groundLevel.value;
	return [
		{ kind: "path", d: boxPath(band(surface, deepest)), fill: GROUND },
		...bedsOf(well, deepest)
			.filter(({ formation }) => formation.target)
			.map(({ top, base }): Shape => ({ kind: "path", d: boxPath(band(top, base)), fill: TARGET_TINT })),
		...results.geology.water.flatMap((zone) =>
			waterBand(band(Math.max(zone.top.tvd.value, surface), zone.base.tvd.value)),
		),
		{
			kind: "line",
			x1: left,
			y1: ground,
			x2: left,
			y2: scale.y(deepest),
			stroke: { color: INK, width: 0.8 },
		},
	];
};

/** Ground level and the base of protected water, kept clear of the well. */
export const groundLines = (scene: Scene): Shape[] => {
	const { results, scale, left, right, ground, middle, nest } = scene;
	const clear = [middle - nest.widest - 1, middle + nest.widest + 1] as const;
	const base = results.geology.protected_water_base;
	return [
		...groundLine(left, clear[0], ground),
		...groundLine(clear[1], right, ground),
		...(base === undefined ? [] : protectedBase(left, clear[0], scale.y(base.tvd.value))),
		...(base === undefined ? [] : protectedBase(clear[1], right, scale.y(base.tvd.value))),
	];
};

/** Depths below ground at the left edge, and how deep the protected water goes. */
export const groundLabels = (scene: Scene): Shape[] => {
	const { well, results, print, scale, left, size, middle, nest, mark } = scene;
	const surface = well.datum.groundLevel.value;
	const ticks = graduations(scale, print.perFoot, surface, size * 3).filter(
		({ numbered, value, y }) =>
			numbered && value > 0 && y > scene.ground + size && y + size * 0.4 < scene.box.y + scene.box.height,
	);
	const base = results.geology.protected_water_base;
	return [
		named(
			"label ruler",
			setLine([run(`0 ${print.depthUnit}`)], {
				x: left - 7 * mark,
				y: scene.ground + size * 0.34,
				size,
				anchor: "end",
			}),
		),
		...ticks.flatMap(({ value, y }): Shape[] => [
			{ kind: "line", x1: left - 5 * mark, y1: y, x2: left, y2: y, stroke: { color: INK, width: 0.8 } },
			named(
				`label depth ${value}`,
				setLine([run(tickString(value))], {
					x: left - 7 * mark,
					y: y + size * 0.34,
					size,
					anchor: "end",
				}),
			),
		]),
		...(base === undefined
			? []
			: [
					named(
						"label protected water",
						setLine(
							[
								...(size >= WORDED ? [run(`${print.words.frameProtected} `)] : []),
								print.value(base.below_ground),
							],
							{
								x: middle + nest.widest + 8 * mark,
								y: Math.max(scale.y(base.tvd.value) - 5 * mark, scene.ground + size * 1.02),
								size,
							},
						),
					),
				]),
	];
};
