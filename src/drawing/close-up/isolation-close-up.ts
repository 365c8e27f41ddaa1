import type { Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { UnitSystem } from "../../units/format.ts";
import type { Well } from "../../well/well.ts";
import { depthScale } from "../depth-scale.ts";
import { labelColumn } from "../label.ts";
import { legendHeight, legendShapes } from "../legend.ts";
import { compose, type Line, run, sentence, setLine } from "../line-of-text.ts";
import { type Box, boxPath } from "../lithology.ts";
import { breakMark } from "../marks/lines.ts";
import { named } from "../named.ts";
import { nesting } from "../nesting.ts";
import { keeping } from "../never-dropped.ts";
import { SECOND_INK } from "../palette.ts";
import { type KeyOf, type Print, printer, stringName, withinSentence } from "../print.ts";
import { waterBaseDepth } from "../schematic/alternative.ts";
import { groundLabels } from "../schematic/ground-labels.ts";
import { groundPart, linesPart, rulerPart } from "../schematic/ground-part.ts";
import { legendOf } from "../schematic/legend-part.ts";
import { heading } from "../schematic/string-labels.ts";
import type { Frame, View } from "../schematic/view.ts";
import { wellPart } from "../schematic/well-part.ts";
import { wellAxis } from "../well-axis.ts";
import type { DrawingWords } from "../words/words.ts";
import { closeUpLabels, dimensions } from "./close-up-labels.ts";
import { layerEntries, layerNumbers } from "./layer-numbers.ts";
import { layerLines, layersAt, layersText } from "./layers.ts";

interface CloseUpOptions {
	readonly units: UnitSystem;
	/** [pt] */
	readonly width: number;
	readonly height: number;
	readonly words: DrawingWords;
	/** `plain`: larger type, depths below ground, and no more than a neighbor asks. */
	readonly detail?: "full" | "plain";
	readonly keyOf?: KeyOf;
}

const SIZES = { full: 8.5, plain: 10 } as const;

/**
 * From the surface to just below the shoe that protects the water, at one depth scale: aquifers, every layer of steel and
 * cement across the base of protected water, and the distances between.
 */
export const isolationCloseUp = (well: Well, results: Results, options: CloseUpOptions): Drawing => {
	const print = printer(options.units, options.words, options.keyOf);
	const view = viewOf(well, results, options, print);
	const { frame } = view;
	const base = results.geology.protected_water_base;
	const layers = base === undefined ? [] : layersAt(well, results, base.tvd.value, view.nest);
	const lines = layerLines(layers, results, print);
	const right = labelColumn(keeping("close-up", closeUpLabels(view)), {
		side: "right",
		x: frame.right.x,
		width: frame.right.width,
		edge: frame.lane,
		low: frame.top - 14,
		high: frame.bottom + 6,
		size: frame.size,
	});
	const left = labelColumn(keeping("close-up", groundLabels(view)), {
		side: "left",
		x: frame.left.x,
		width: frame.left.width,
		edge: frame.column.x - 9,
		low: frame.top - 4,
		high: frame.bottom + 4,
		size: frame.size,
	});
	const window: Box = { x: 0, y: frame.top - 12, width: frame.width, height: frame.bottom - frame.top + 12 };
	const lost = left.dropped.length + right.dropped.length;
	const { words } = options;
	const list = layerEntries(lines);
	const box = { x: 0, width: frame.width, size: frame.size * 0.95 };
	const gap = results.isolation.protected_water_to_top_perforation;
	const small = { italic: true, color: SECOND_INK };
	const notes: Line[] = [
		...(gap === undefined || gap.value < 0
			? []
			: [compose(words.gapPerforation, { distance: { ...print.value(gap), weight: "semibold" } })]),
		[run(words.closeUpScale, small)],
		...(lost === 0 ? [] : [[run(sentence(words.undrawn, { count: String(lost) }), small)]]),
	];
	const legend = legendOf(well, results, view.detail, view.deepest, words, false);
	return {
		id: view.detail === "plain" ? "isolation-close-up-plain" : "isolation-close-up",
		width: options.width,
		height: options.height,
		title: sentence(words.closeUpOf, { well: well.identity.name }),
		alternative: alternativeOf(view, lines),
		scale: words.closeUpScale,
		undrawn: [left, right].flatMap((each) => each.lost),
		shapes: [
			named("ground", clipped(groundPart(view), window)),
			named("well", clipped(wellPart(view), window)),
			named("lines", linesPart(view, frame.lane)),
			named("end", breakMark(frame.column.x - 9, frame.lane, frame.bottom)),
			named("dimensions", dimensions(view)),
			...layerNumbers(view, layers),
			...rulerPart(view),
			...left.shapes,
			...right.shapes,
			...notes.map((line, i) =>
				named(
					`label note ${i + 1}`,
					setLine(line, { x: 0, y: frame.notes + (i + 1) * frame.size * 1.3, size: frame.size }),
				),
			),
			named(
				"label layers",
				setLine(heading(base === undefined || lines.length > 0 ? words.layersHead : words.layerOpen), {
					x: 0,
					y: frame.row.top + frame.size,
					size: frame.size,
				}),
			),
			...legendShapes(list, { ...box, y: frame.row.top + frame.size * 1.5 }),
			...legendShapes(legend, { ...box, y: frame.legend }),
		],
	};
};

/** Corners of a path that lie at the smallest depth; of no path but those that drawings of a well are made of. */
const topOf = (d: string): number =>
	Math.min(...[...d.matchAll(/[ML]-?[\d.]+[ ,](-?[\d.]+)/gu)].map(([, y]) => Number(y)));

/**
 * The same shapes, seen through a window; shapes that have a clip of their own lie inside it already. What lies below the
 * window is left out, not hidden: the picture library ends the whole program over a path of which nothing is left.
 */
const clipped = (shapes: readonly Shape[], window: Box): Shape[] =>
	shapes.flatMap((shape): Shape[] => {
		if (shape.kind === "group") return [{ ...shape, children: clipped(shape.children, window) }];
		if (shape.kind !== "path" || shape.clip !== undefined) return [shape];
		return topOf(shape.d) > window.y + window.height ? [] : [{ ...shape, clip: boxPath(window) }];
	});

const alternativeOf = ({ well, results, print, detail }: View, layers: readonly Line[]): string => {
	const { words } = print;
	const base = results.geology.protected_water_base;
	const string = well.strings.find((each) => each.id === results.isolation.protecting_string);
	const below = results.isolation.shoe_below_protected_water;
	const gap = results.isolation.protected_water_to_top_perforation;
	return [
		words.closeUpTitle,
		...(base === undefined
			? []
			: [
					sentence(words.altWaterBase, {
						depth: waterBaseDepth(print, base, detail),
					}),
				]),
		...(layers.length === 0 ? [] : [sentence(words.altLayers, { list: layersText(layers) })]),
		...(string === undefined || below === undefined
			? []
			: [
					sentence(below.value < 0 ? words.altShoeAbove : words.altShoeBelow, {
						string: withinSentence(stringName(words, string)),
						distance: print.magnitude(below),
					}),
				]),
		...(gap === undefined || gap.value < 0 ? [] : [sentence(words.altGap, { distance: print.value(gap) })]),
	]
		.map((text) => (text.endsWith(".") ? text : `${text}.`))
		.join(" ");
};

const viewOf = (well: Well, results: Results, options: CloseUpOptions, print: Print): View => {
	const { width, height, words, detail = "full" } = options;
	const size = SIZES[detail];
	const nest = nesting(well, {
		bore: 9,
		steel: 2.6,
		clearance: 1.2,
		step: 18,
		most: Math.min(84, width * 0.17),
	});
	const { geology, isolation, casing } = results;
	const shoe =
		casing[isolation.protecting_string ?? well.strings[1]?.id ?? well.strings[0]?.id ?? ""]?.shoe.tvd.value ??
		0;
	const deepest =
		1.14 *
		Math.max(
			shoe,
			geology.protected_water_base?.tvd.value ?? 0,
			...isolation.neighbor_wells.map((each) => each.bottom?.value ?? 0),
			50,
		);
	const legend = legendOf(well, results, detail, deepest, words, false);
	const legendTall = legendHeight(legend, { x: 0, width, size: size * 0.95 });
	const base = geology.protected_water_base;
	const lines =
		base === undefined ? [] : layerLines(layersAt(well, results, base.tvd.value, nest), results, print);
	const listTall = legendHeight(layerEntries(lines), { x: 0, width, size: size * 0.95 }) + size * 2;
	const notes = height - legendTall - size * 4.6;
	const list = notes - listTall;
	const [top, bottom] = [size * 2.4, list - 10];
	const ruler = size * 3.6;
	const leftWidth = width * 0.2;
	const leftX = ruler + 4 + leftWidth;
	const columnX = leftX + 24;
	const rock = width * 0.04;
	const middle = columnX + rock + Math.min(38, width * 0.076) + nest.widest;
	const lane = middle + nest.widest + 27;
	const scale = depthScale([0, deepest], [top, bottom]);
	const frame: Frame = {
		width,
		height,
		size,
		ruler,
		left: { x: leftX, width: leftWidth },
		column: { x: columnX, width: rock },
		middle,
		lane,
		right: { x: lane + 14, width: width - lane - 14 },
		top,
		bottom,
		row: { top: list, bottom: notes },
		notes,
		legend: height - legendTall,
	};
	const axis = wellAxis(results.trajectory, scale, { x: middle, curve: 0, lateral: 0, slant: 0 });
	return { well, results, detail, print, frame, scale, axis: upright(axis, bottom + BELOW), nest, deepest };
};

/** So far below its frame the hole goes on, unseen, for the frame to cut [pt]. */
const BELOW = 24;

/** What is drawn here is shallow: the hole is upright, and its turn lies below the drawing. */
const upright = (axis: View["axis"], lowest: number): View["axis"] => {
	const end = axis.points.find((point) => point.y > lowest)?.md ?? Number.POSITIVE_INFINITY;
	return {
		at: axis.at,
		between: (from, to) => axis.between(Math.min(from, end), Math.min(to, end)),
		points: axis.points,
	};
};
