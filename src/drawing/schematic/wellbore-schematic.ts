import type { Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { UnitSystem } from "../../units/format.ts";
import type { Well } from "../../well/well.ts";
import { BREAK_GAP, type DepthScale, depthScale } from "../depth-scale.ts";
import { labelColumn, labelRow, type Placed } from "../label.ts";
import { legendHeight, legendShapes } from "../legend.ts";
import {
	compose,
	type Line,
	run,
	sentence,
	setLine,
	wrap,
} from "../line-of-text.ts";
import { nesting } from "../nesting.ts";
import { SECOND_INK } from "../palette.ts";
import { type KeyOf, type Print, printer } from "../print.ts";
import { levelFrom, wellAxis } from "../well-axis.ts";
import type { DrawingWords } from "../words.ts";
import { schematicAlternative } from "./alternative.ts";
import { groundLabels } from "./ground-labels.ts";
import { groundPart, linesPart, rulerPart, turnTop } from "./ground-part.ts";
import { lateralPart, railRoom } from "./lateral-part.ts";
import { legendOf, plugEntry } from "./legend-part.ts";
import { type Detail, type Frame, halfWidthAt, type View } from "./view.ts";
import { wellLabels } from "./well-labels.ts";
import { plugsDrawn, wellPart } from "./well-part.ts";

export interface SchematicOptions {
	readonly units: UnitSystem;
	/** [pt] */
	readonly width: number;
	readonly height: number;
	readonly detail: Detail;
	readonly words: DrawingWords;
	/** Key of a value in the index of values, so that printed numbers can be compared between papers. */
	readonly keyOf?: KeyOf;
}

const SIZES = { full: 8, plain: 10.5, numbers: 9.5 } as const;

/**
 * The well on one portrait page: strings, holes and cement nested at their true depths beside the rock and the water,
 * the curve and lateral drawn schematically. See the shape grammar in DEVELOPERS.md.
 */
export const wellboreSchematic = (
	well: Well,
	results: Results,
	options: SchematicOptions,
): Drawing => {
	const print = printer(options.units, options.words, options.keyOf);
	const view = viewOf(well, results, options, print);
	const { frame, scale, axis } = view;
	const { beside, under } = wellLabels(view);
	const level = axis.level !== undefined;
	const right = labelColumn(beside, {
		side: "right",
		x: frame.right.x,
		width: frame.right.width,
		edge: frame.lane,
		low: frame.top - 12,
		high: level ? turnTop(view) - 4 : frame.bottom + 4,
		size: frame.size,
	});
	const left = leftColumns(view);
	const below = labelRow(under, {
		left: 0,
		right: frame.width,
		top: frame.row.top + 12,
		bottom: frame.row.bottom,
		edge: frame.row.top,
		widest: options.detail === "plain" ? 260 : 100,
		size: frame.size,
	});
	const lost =
		options.detail === "plain"
			? 0
			: right.dropped.length + left.dropped.length + below.dropped.length;
	const pieces = scale.pieces.length;
	const phrase = scalePhrase(pieces > 1, level, options.words);
	const scaleText = sentence(phrase, { count: String(pieces) });
	const notes: Line[] = [
		[run(scaleText, { color: SECOND_INK, italic: true })],
		...(lost === 0
			? []
			: [
					[
						run(sentence(options.words.undrawn, { count: String(lost) }), {
							color: SECOND_INK,
							italic: true,
						}),
					],
				]),
	];
	const legend = entriesOf(view);
	return {
		id: `schematic-${options.detail}`,
		width: options.width,
		height: options.height,
		title: sentence(
			options.detail === "plain"
				? options.words.plainTitle
				: options.words.schematicOf,
			{ well: well.identity.name },
		),
		alternative: schematicAlternative(well, results, print),
		scale: scaleText,
		shapes: [
			...headShapes(well, print, frame, options.detail),
			named("ground", groundPart(view)),
			named("well", wellPart(view)),
			named("lines", linesPart(view)),
			named("lateral", lateralPart(view)),
			...rulerPart(view),
			...left.shapes,
			...right.shapes,
			...below.shapes,
			...notes.map(
				(line, i): Shape =>
					named(
						`label note ${i + 1}`,
						setLine(line, {
							x: 0,
							y: frame.notes + (i + 1) * frame.size * 1.2,
							size: frame.size * 0.95,
						}),
					),
			),
			...legendShapes(legend, {
				x: 0,
				y: frame.legend,
				width: frame.width,
				size: frame.size * 0.95,
			}),
		],
	};
};

/** The ground's labels, each in the depth piece it belongs to; under each break, what it does to the scale. */
const leftColumns = (view: View): Placed => {
	const { frame, scale, print } = view;
	const { size } = frame;
	const labels = groundLabels(view);
	const columns = scale.pieces.map((piece, i): Placed => {
		const change = scale.breaks[i - 1];
		const words =
			change === undefined
				? []
				: breakWords(
						print,
						change.ratio,
						size,
						frame.column.x - frame.ruler - 16,
					);
		const low =
			piece.top + (words.length === 0 ? -4 : words.length * size * 1.15 + 2);
		const own = labels.filter(
			(label) =>
				label.anchor[1] >= piece.top - 1e-6 &&
				label.anchor[1] <= piece.bottom + 1e-6,
		);
		const column = labelColumn(own, {
			side: "left",
			x: frame.left.x,
			width: frame.left.width,
			edge: frame.column.x - 9,
			low,
			high: piece.bottom + (i === scale.pieces.length - 1 ? 4 : 0),
			size,
		});
		const middle = (frame.ruler + 6 + frame.column.x - 10) / 2;
		const set = words.flatMap((line, row) =>
			setLine(line, {
				x: middle,
				y: piece.top - BREAK_GAP / 2 + size * 0.6 + row * size * 1.15,
				size: size * 0.95,
				anchor: "middle",
			}),
		);
		return {
			shapes: [
				...(set.length === 0 ? [] : [named(`label break ${i}`, set)]),
				...column.shapes,
			],
			dropped: column.dropped,
		};
	});
	return {
		shapes: columns.flatMap((each) => each.shapes),
		dropped: columns.flatMap((each) => each.dropped),
	};
};

const breakWords = (
	{ words }: Print,
	ratio: number,
	size: number,
	width: number,
): Line[] => {
	const times = ratio >= 1 ? ratio : 1 / ratio;
	const phrase = ratio >= 1 ? words.scaleBreak : words.scaleBreakLarger;
	const text = sentence(phrase, {
		ratio: times >= 10 ? String(Math.round(times)) : times.toFixed(1),
	});
	return wrap([run(text, { italic: true })], size * 0.95, width);
};

const named = (name: string, children: readonly Shape[]): Shape => ({
	kind: "group",
	dx: 0,
	dy: 0,
	name,
	children,
});

const scalePhrase = (
	broken: boolean,
	level: boolean,
	words: DrawingWords,
): string => {
	if (broken) return level ? words.scalePieces : words.scalePiecesVertical;
	return level ? words.scaleWhole : words.scaleWholeVertical;
};

const entriesOf = (view: View) => {
	const { well, results, detail, deepest, print } = view;
	const stages = results.stimulation?.stages ?? [];
	const plugs =
		stages.some((stage) => stage.plug !== undefined) && plugsDrawn(view);
	return [
		...legendOf(well, results, detail, deepest, print.words),
		...(plugs ? [plugEntry(print.words)] : []),
	];
};

/** Who, where, and what the depths count from. */
const headLines = (well: Well, print: Print, detail: Detail): Line[] => {
	const { identity, site, datum } = well;
	const { words } = print;
	if (detail === "plain")
		return [[run(words.datumGround, { color: SECOND_INK })]];
	const who = [
		identity.operator,
		identity.api_number,
		identity.lease,
		site.county,
	].filter((part) => part !== undefined);
	return [
		[
			run(identity.name, { weight: "bold" }),
			run(`  ${detail === "full" ? who.join(" · ") : ""}`),
		],
		[
			...compose(
				words.datum,
				{
					datum: datum.name,
					above: print.value(datum.aboveGround),
					elevation: print.value(datum.groundElevation),
				},
				{ color: SECOND_INK },
			),
			...(identity.spud === undefined
				? []
				: compose(
						` ${words.spud}`,
						{ date: identity.spud },
						{ color: SECOND_INK },
					)),
		],
	];
};

const headShapes = (
	well: Well,
	print: Print,
	frame: Frame,
	detail: Detail,
): Shape[] => {
	const lines = headLines(well, print, detail).flatMap((line) =>
		wrap(line, frame.size, frame.width, 1),
	);
	return [
		named(
			"label head",
			lines.flatMap((line, i) =>
				setLine(line, {
					x: 0,
					y: (i + 1) * frame.size * 1.25,
					size: frame.size,
				}),
			),
		),
	];
};

/** Works out the page: what stands where, and how deep each point of it is. */
const viewOf = (
	well: Well,
	results: Results,
	options: SchematicOptions,
	print: Print,
): View => {
	const { width, height, detail, words } = options;
	const size = SIZES[detail];
	const { trajectory } = results;
	const level = levelFrom(trajectory);
	const reached = Math.max(
		...trajectory.path.rows.map((row) => row.tvd),
		trajectory.total_depth.tvd.value,
	);
	const nest = nesting(well, {
		bore: 5.5,
		steel: 1.8,
		clearance: 0.9,
		step: 8.2,
		most: Math.min(46, width * 0.095),
	});
	const entries = legendOf(well, results, detail, reached, words);
	const legendTall =
		legendHeight(entries, { x: 0, width, size: size * 0.95 }) + size * 1.6;
	const rowTall =
		level === undefined
			? 0
			: 12 + size * 1.2 * (detail === "plain" ? 2.4 : 4.2);
	const head = size * 1.25 * (detail === "plain" ? 1 : 2);
	const top = head + size * 2.6;
	const notes = height - legendTall - size * 2.6;
	const bottom = notes - rowTall - 4;
	const ruler = size * 3.9;
	const leftWidth =
		width * (detail === "numbers" ? 0.2 : detail === "plain" ? 0.22 : 0.215);
	const leftX = ruler + 4 + leftWidth;
	const rock = detail === "numbers" ? 0 : width * 0.045;
	const columnX = leftX + 24;
	const beside = Math.min(42, width * 0.084);
	const middle = columnX + rock + beside + nest.widest;
	const lane = middle + nest.widest + 10;
	const frame: Frame = {
		width,
		height,
		size,
		ruler,
		left: { x: leftX, width: leftWidth },
		column: { x: columnX, width: rock },
		middle,
		lane,
		right: { x: lane + 16, width: width - lane - 16 },
		top,
		bottom,
		row: { top: bottom + 2, bottom: notes },
		notes,
		legend: height - legendTall + size * 1.1,
	};
	const stages = results.stimulation?.stages.length ?? 0;
	const inner = Math.max(
		...well.holes
			.filter(
				(hole) =>
					hole.bottom.value >= (level ?? trajectory.total_depth.md.value) - 1,
			)
			.map(nest.hole),
		8,
	);
	const under = level === undefined ? 10 : inner + railRoom(stages) + 6;
	const { scale, deepest } = scaleOf(
		well,
		results,
		detail,
		[top, bottom],
		reached,
		under,
	);
	const curveTall =
		level === undefined
			? 0
			: scale.y(reached) - scale.y(trajectory.kickoff?.tvd.value ?? reached);
	const room = width - 12 - middle;
	const curve = Math.min(
		room * 0.4,
		Math.max(curveTall * 0.85, nest.widest + 20),
	);
	const axis = wellAxis(trajectory, scale, {
		x: middle,
		curve,
		lateral: room - curve,
		slant: Math.min(60, room * 0.25),
	});
	return fitted({
		well,
		results,
		detail,
		print,
		frame,
		scale,
		axis,
		nest,
		deepest,
	});
};

/** A slanted hole pushes the labels on its right farther out. */
const fitted = (view: View): View => {
	const { axis, frame } = view;
	if (axis.level !== undefined) return view;
	const reach = Math.max(
		...axis.points.map((point) => point.x + halfWidthAt(view, point.md)),
	);
	const lane = Math.max(frame.lane, reach + 8);
	return {
		...view,
		frame: {
			...frame,
			lane,
			right: { x: lane + 16, width: frame.width - lane - 16 },
		},
	};
};

/** Depth scale of the schematic: where the shallow part or the curve would be too small to read, the scale is broken. */
const scaleOf = (
	well: Well,
	results: Results,
	detail: Detail,
	page: readonly [number, number],
	reached: number,
	under: number,
): { readonly scale: DepthScale; readonly deepest: number } => {
	const deepestFor = (perPoint: number) => reached + under * perPoint;
	const whole = deepestFor(reached / (page[1] - page[0] - under));
	if (detail === "plain")
		return { scale: depthScale([0, whole], page), deepest: whole };
	const { geology, isolation, casing, trajectory, stimulation } = results;
	const shallow = Math.max(
		geology.protected_water_base?.tvd.value ?? 0,
		...geology.water.map((zone) => zone.base.tvd.value),
		...isolation.neighbor_wells.map((each) => each.bottom?.value ?? 0),
		casing[
			isolation.protecting_string ??
				well.strings[1]?.id ??
				well.strings[0]?.id ??
				""
		]?.shoe.tvd.value ?? 0,
	);
	const level = levelFrom(trajectory);
	const kickoff = trajectory.kickoff?.tvd.value;
	const top = stimulation?.top_perforation.tvd.value;
	const deep =
		level !== undefined && kickoff !== undefined
			? kickoff - 0.15 * (reached - kickoff)
			: level === undefined &&
					top !== undefined &&
					reached - top < 0.08 * reached
				? top - 1.2 * (reached - top) - 0.01 * reached
				: undefined;
	const cuts = [
		...(shallow > 0 && shallow * 1.12 < reached * 0.5
			? [{ at: shallow * 1.12, least: 0.39 }]
			: []),
		...(deep !== undefined && deep > shallow * 1.3
			? [{ at: deep, least: 0.2 }]
			: []),
	];
	const leastBelow = deep === undefined ? 0.25 : 0.28;
	const first = depthScale([0, whole], page, cuts, leastBelow);
	const last = first.pieces.at(-1);
	if (last === undefined) return { scale: first, deepest: whole };
	const deepest =
		reached +
		(under * (reached - last.from)) /
			Math.max(last.bottom - last.top - under, 1);
	return { scale: depthScale([0, deepest], page, cuts, leastBelow), deepest };
};
