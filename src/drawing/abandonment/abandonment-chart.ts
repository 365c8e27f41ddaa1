import type { Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { axisOf } from "../charts/axis.ts";
import { uprightAxis } from "../charts/chart-frame.ts";
import type { ChartOptions } from "../charts/chart-options.ts";
import { labelColumn } from "../label.ts";
import { run, sentence } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { BLUE, CEMENT_BUILT, INK, PAPER } from "../palette.ts";
import { printer } from "../print.ts";
import { heading } from "../schematic/string-labels.ts";

const SIZE = 8;
const RULER = 40;
const BORE = 26;
/** A plug is never drawn thinner, or a short one would be lost [pt]. */
const LEAST = 3;

/** Beside a scale of measured depth the bore with its planned plugs. Nothing where none are planned. */
export const abandonmentChart = (
	well: Well,
	results: Results,
	{ width, height, units, words, keyOf }: ChartOptions,
): Drawing | undefined => {
	const plan = results.isolation.end_of_life;
	if (plan === undefined) return undefined;
	const print = printer(units, words, keyOf);
	const deepest = Math.max(
		...well.strings.map(({ shoe }) => shoe.value),
		...plan.plugs.map(({ bottom }) => bottom.md.value),
	);
	const [top, bottom] = [SIZE * 2, height - 6];
	const depth = axisOf("measured-depth", units, [0, deepest], [top, bottom], 22);
	const x = RULER + 30;
	const bore = boxPath({ x, y: top, width: BORE, height: bottom - top });
	const base = results.geology.protected_water_base?.md;
	const plugs = plan.plugs.map(({ top: from, bottom: to }): Shape => {
		const tall = Math.max(LEAST, depth.at(to.md.value) - depth.at(from.md.value));
		return {
			kind: "path",
			d: boxPath({ x, y: depth.at(from.md.value), width: BORE, height: tall }),
			fill: CEMENT_BUILT,
			stroke: { color: INK, width: 0.6 },
		};
	});
	const labels = labelColumn(
		plan.plugs.map(({ what, top: from, bottom: to, volume }, i) => ({
			id: `plug ${i + 1}`,
			anchor: [x + BORE, depth.at((from.md.value + to.md.value) / 2)] as const,
			lines: [
				heading(words.plugsGiven[what] ?? what),
				[print.value(from.md), run(" – "), print.value(to.md)],
				[print.value(volume)],
			],
			weight: 5,
			keep: true,
		})),
		{
			side: "right",
			x: x + BORE + 40,
			width: width - x - BORE - 40,
			edge: x + BORE + 2,
			low: top,
			high: bottom,
			size: SIZE,
		},
	);
	return {
		id: "abandonment",
		width,
		height,
		title: sentence(words.abandonmentOf, { well: well.identity.name }),
		alternative: sentence(words.altAbandonment, {
			list: plan.plugs
				.map(
					({ what, top: from, bottom: to }) =>
						`${words.plugsGiven[what] ?? what}, ${print.value(from.md).text} – ${print.value(to.md).text}`,
				)
				.join("; "),
		}),
		scale: words.evidenceScale,
		shapes: [
			{ kind: "path", d: bore, fill: PAPER, stroke: { color: INK, width: 1.2 } },
			...plugs,
			...(base === undefined
				? []
				: [
						{
							kind: "line" as const,
							x1: RULER,
							y1: depth.at(base.value),
							x2: x + BORE,
							y2: depth.at(base.value),
							stroke: { color: BLUE, width: 0.8, dash: [4, 2] },
						},
					]),
			...uprightAxis(depth, { edge: RULER, size: SIZE, title: words.rulerMeasured, name: "depth" }),
			...labels.shapes,
		],
	};
};
