import type { BarrierPhaseResults, Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import type { ChartOptions } from "../charts/chart-options.ts";
import { type LegendEntry, legendHeight, legendShapes, SWATCH } from "../legend.ts";
import { compose, lineText, lineWidth, run, sentence, setLine } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { groundLine } from "../marks/lines.ts";
import { named } from "../named.ts";
import { GROUND, INK, SECOND_INK } from "../palette.ts";
import { printer } from "../print.ts";
import { barrierShapes, barrierStroke } from "./barrier-lines.ts";
import { barrierWell } from "./barrier-well.ts";

const SIZE = 8;
/** Type may shrink to here and no further [pt]. */
const SMALLEST = 7;
/** Room over the ground for what closes at the top, and under the well for nothing [pt]. */
const HEAD = 16;
const GAP = 12;

/**
 * The two barriers on the well, a panel a phase: the last hole drilled, its job, treating, producing. The primary is one
 * heavy line, the secondary a line of rings; each runs down its steel and out through its cement to the rock.
 */
export const barrierPanels = (
	well: Well,
	results: Results,
	{ width, height, words, units, keyOf }: ChartOptions,
): Drawing | undefined => {
	const phases = shown(results.barriers.phases);
	if (phases.length === 0) return undefined;
	const print = printer(units, words, keyOf);
	const legend: readonly LegendEntry[] = (["primary", "secondary"] as const).map((barrier) => ({
		text: words.barrierLegend[barrier],
		swatch: barrierStroke(
			[
				[0, SWATCH.height / 2],
				[SWATCH.width, SWATCH.height / 2],
			],
			barrier,
			true,
		),
	}));
	const foot = legendHeight(legend, { x: 0, width, size: SIZE }) + 4;
	const across = (width - GAP * (phases.length - 1)) / phases.length;
	const title = ({ phase }: BarrierPhaseResults) =>
		compose(words.barrierPhases[phase], {}, { weight: "semibold" });
	const which = ({ phase, of }: BarrierPhaseResults) =>
		of === undefined ? [] : [run((phase === "cementing" ? words.strings : words.holes)[of] ?? of)];
	const count = ({ standing, required }: BarrierPhaseResults) =>
		compose(words.barriersHold, { standing: print.value(standing), required: print.value(required) });
	const shapes = phases.flatMap((phase, i): Shape[] => {
		const x = i * (across + GAP);
		const top = SIZE * 3.7 + HEAD;
		const box = { x, y: top, width: across, height: height - foot - top };
		const drawn = barrierWell(well, results, phase, {
			...box,
			x: x + across * 0.08,
			width: across * 0.84,
			height: box.height - 6,
		});
		const line = (text: ReturnType<typeof compose>, y: number) =>
			setLine(text, { x: x + across / 2, y, size: fitting(text, across), anchor: "middle" });
		return [
			named("label panel", [
				...line(title(phase), SIZE),
				...line(which(phase), SIZE * 2.2),
				...line(
					count(phase).map((part) => ({ ...part, color: SECOND_INK })),
					SIZE * 3.4,
				),
			]),
			{ kind: "path", d: boxPath(box), fill: GROUND },
			...groundLine(x, x + across, top),
			...drawn.shapes,
			...barrierShapes(drawn, phase),
		];
	});
	return {
		id: "barriers",
		width,
		height,
		title: sentence(words.barriersOf, { well: run(well.identity.name, { color: INK }) }),
		alternative: sentence(words.altBarriers, {
			list: phases
				.map(
					(phase) =>
						`${[title(phase), which(phase)]
							.map(lineText)
							.filter((said) => said !== "")
							.join(" ")}: ${lineText(count(phase))}`,
				)
				.join("; "),
		}),
		scale: words.barriersScale,
		shapes: [...shapes, ...legendShapes(legend, { x: 0, y: height - foot + 4, width, size: SIZE })],
	};
};

/** Type small enough for a panel's width. */
const fitting = (text: ReturnType<typeof compose>, across: number): number =>
	Math.max(SMALLEST, Math.min(SIZE, (SIZE * across) / Math.max(1, lineWidth(text, SIZE))));

/** The last hole with its job, treating, producing; shut in has the elements of producing but for its own. */
const shown = (phases: readonly BarrierPhaseResults[]): readonly BarrierPhaseResults[] =>
	(["drilling", "cementing", "treating", "producing"] as const).flatMap(
		(kind) => phases.findLast(({ phase }) => phase === kind) ?? [],
	);
