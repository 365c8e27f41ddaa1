import type { Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { axisOf } from "../charts/axis.ts";
import { chartBox, levelAxis, levelAxisTall, uprightAxis } from "../charts/chart-frame.ts";
import type { ChartOptions } from "../charts/chart-options.ts";
import { between, curve } from "../charts/curve.ts";
import { labelColumn, labelRow } from "../label.ts";
import { legendHeight, legendShapes } from "../legend.ts";
import { sentence } from "../line-of-text.ts";
import { named } from "../named.ts";
import { noteOf, noteShapes } from "../note.ts";
import { GROUND, INK } from "../palette.ts";
import { printer } from "../print.ts";
import type { Area } from "../tags.ts";
import type { Point } from "../well-axis.ts";
import { asDensity, STROKES, type WindowLine, windowLines } from "./window-lines.ts";
import { besideLabels, endLabels, legendOf, strengthMarks, windowAlternative } from "./window-words.ts";

/** Type size [pt]. */
const SIZE = 8;
/** Right edge of the depth ruler, and the room that the labels take on the right [pt]. */
const RULER = 38;
const LABELS = 156;
/**
 * Rock's gradients count from ground level and equivalent densities from the datum: nearer to the surface than so many
 * times the one's height over the other, an equivalent density of rock says nothing.
 */
const SHALLOW = 4;

/** What the charts are drawn from. */
export interface WindowView {
	readonly lines: readonly WindowLine[];
	readonly pressures: Area;
	readonly densities: Area;
	readonly y: (tvd: number) => number;
	readonly atPressure: (pressure: number) => number;
	readonly atDensity: (density: number) => number;
	/** Equivalent densities are drawn from this depth on [ft TVD]. */
	readonly shallow: number;
}

/**
 * Pressure of the rock's pores, pressure that breaks the rock, and between them what the drilling fluid and the cement
 * exert, against true vertical depth: as pressures, and beside it as the densities of fluid that would give them.
 * Nothing where neither the rock's pressures nor a fluid's are known.
 */
export const pressureWindowChart = (
	well: Well,
	results: Results,
	options: ChartOptions,
): Drawing | undefined => {
	const lines = windowLines(well, results);
	if (lines.length === 0) return undefined;
	const { width, height, units, words } = options;
	const print = printer(units, words, options.keyOf);
	const legend = legendOf(lines, results, words);
	const legendBox = { x: 0, width, size: SIZE };
	const legendTall = legendHeight(legend, legendBox);
	// Room for a note of two lines.
	const notes = height - legendTall - SIZE * 2.9;
	const top = levelAxisTall(SIZE) + 2;
	const bottom = notes - SIZE * 4.4;
	const each = (width - RULER - LABELS - 14) / 2;
	const pressures: Area = { left: RULER, right: RULER + each, top, bottom };
	const densities: Area = { left: RULER + each + 14, right: RULER + 2 * each + 14, top, bottom };
	const points = lines.flatMap((line) => line.points);
	const deepest =
		Math.max(results.trajectory.total_depth.tvd.value, ...points.map((point) => point.tvd)) * 1.02;
	const most = Math.max(...points.map((point) => point.pressure), 1) * 1.05;
	const depth = axisOf("true-vertical-depth", units, [0, deepest], [top, bottom], 26);
	const pressure = axisOf("pressure", units, [0, most], [pressures.left, pressures.right], 30);
	const shallow = SHALLOW * well.datum.groundLevel.value;
	const [least, greatest] = densityRange(lines, results, shallow);
	const density = axisOf("density", units, [least, greatest], [densities.left, densities.right], 32);
	const view: WindowView = {
		lines,
		pressures,
		densities,
		y: depth.at,
		atPressure: pressure.at,
		atDensity: density.at,
		shallow,
	};
	const ends = endLabels(view, words);
	const right = labelColumn([...besideLabels(view, well, results, print), ...ends.beside], {
		side: "right",
		x: densities.right + 18,
		width: LABELS - 18,
		edge: densities.right + 4,
		low: 0,
		high: notes - 2,
		size: SIZE,
	});
	const under = labelRow(ends.under, {
		left: densities.left - 40,
		right: densities.right + 12,
		top: bottom + 12,
		bottom: bottom + SIZE * 4,
		edge: bottom + 2,
		widest: 80,
		size: SIZE,
	});
	const lost = right.dropped.length + under.dropped.length;
	const note = noteOf(
		[words.windowScale, ...(lost === 0 ? [] : [sentence(words.undrawn, { count: String(lost) })])],
		SIZE,
		width,
	);
	return {
		id: "pressure-window",
		width,
		height,
		title: sentence(words.windowOf, { well: well.identity.name }),
		alternative: windowAlternative(view, well, results, print),
		scale: words.windowScale,
		undrawn: [right, under].flatMap((each) => each.lost),
		shapes: [
			...chartBox(pressures, pressure, depth),
			...chartBox(densities, density, depth),
			named("window", windowShapes(view)),
			named("shoes", shoeLines(view, well, results)),
			named(
				"lines",
				lines.flatMap((line) => lineShapes(view, line)),
			),
			named("strengths", strengthMarks(view, results)),
			...uprightAxis(depth, { edge: RULER, size: SIZE, title: words.rulerVertical, name: "depth" }),
			...levelAxis(pressure, { edge: top, size: SIZE, title: words.axisPressure, name: "pressure" }),
			...levelAxis(density, { edge: top, size: SIZE, title: words.axisDensity, name: "density" }),
			...right.shapes,
			...under.shapes,
			noteShapes(note, notes),
			...legendShapes(legend, { ...legendBox, y: height - legendTall }),
		],
	};
};

const densityRange = (
	lines: readonly WindowLine[],
	results: Results,
	shallow: number,
): readonly [number, number] => {
	const told = [
		...lines.flatMap((line) => asDensity(line.points, shallow)).map((point) => point.density),
		...results.pressure.holes.flatMap((hole) =>
			hole.shoe_strength === undefined ? [] : [hole.shoe_strength.value],
		),
	];
	if (told.length === 0) return [0, 20];
	return [Math.max(0, Math.min(...told) - 1), Math.max(...told) + 1];
};

const asPressures = (view: WindowView, line: WindowLine): Point[] =>
	line.points.map(({ tvd, pressure }) => [view.atPressure(pressure), view.y(tvd)]);
const asDensities = (view: WindowView, line: WindowLine): Point[] =>
	asDensity(line.points, view.shallow).map(({ tvd, density }) => [view.atDensity(density), view.y(tvd)]);

/** The open ground between pores and breaking rock. */
const windowShapes = (view: WindowView): Shape[] => {
	const of = (kind: WindowLine["kind"]) => view.lines.filter((line) => line.kind === kind);
	const fractures = of("fracture");
	return of("pore").flatMap((pore, i): Shape[] => {
		const fracture = fractures[i];
		return fracture === undefined
			? []
			: [
					...between(asPressures(view, pore), asPressures(view, fracture), GROUND, view.pressures),
					...between(asDensities(view, pore), asDensities(view, fracture), GROUND, view.densities),
				];
	});
};

const lineShapes = (view: WindowView, line: WindowLine): Shape[] => [
	...curve(asPressures(view, line), STROKES[line.kind], view.pressures),
	...curve(asDensities(view, line), STROKES[line.kind], view.densities),
];

/** A level line through both charts at each shoe. */
const shoeLines = ({ pressures, densities, y }: WindowView, well: Well, results: Results): Shape[] =>
	well.strings.flatMap((string): Shape[] => {
		const shoe = results.casing[string.id]?.shoe.tvd.value;
		if (shoe === undefined || string.kind === "tieback") return [];
		return [pressures, densities].map((box) => ({
			kind: "line",
			x1: box.left,
			y1: y(shoe),
			x2: box.right + (box === densities ? 4 : 0),
			y2: y(shoe),
			stroke: { color: INK, width: 0.8 },
		}));
	});
