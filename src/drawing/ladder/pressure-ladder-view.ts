import type { PressureLadder, Results } from "../../calc/results.ts";
import type { Drawing, Shape, Stroke } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { axisOf } from "../charts/axis.ts";
import { uprightAxis } from "../charts/chart-frame.ts";
import type { ChartOptions } from "../charts/chart-options.ts";
import { type Label, labelColumn } from "../label.ts";
import { type LegendEntry, legendHeight, legendShapes, SWATCH } from "../legend.ts";
import { compose, type Line, lineText, lineWidth, run, sentence, setLine } from "../line-of-text.ts";
import { type Box, boxPath, n } from "../lithology.ts";
import { breakMark } from "../marks/lines.ts";
import { named } from "../named.ts";
import { GROUND, INK, PAPER, SECOND_INK, VERMILLION } from "../palette.ts";
import { type Print, printer } from "../print.ts";

type Rung = PressureLadder["rungs"][number];

/** Type size: read on the rig floor [pt]. */
const USUAL = 9.5;
/** Widths of the scale and of the post that the rungs hang on, at the usual type size [pt]. */
const RULER = 44;
const POST = 44;
/** Where even the lowest pressure is this share of the highest, the post does not begin at zero. */
const HIGH_UP = 0.4;

const STROKES: Readonly<Record<Rung["tier"], Stroke>> = {
	expected: { color: INK, width: 1.2, dash: [3, 1.6] },
	kickout: { color: INK, width: 0.8 },
	relief: { color: INK, width: 0.8 },
	maximum: { color: VERMILLION, width: 3 },
	element: { color: INK, width: 1.6 },
	"line-test": { color: INK, width: 1.2, dash: [1.4, 1.4] },
};

/** What is set, on the right of the post; what the equipment bears and was tested to, on its left. */
const onLeft = ({ tier }: Rung): boolean => tier === "element" || tier === "line-test";

/**
 * Every pressure that limits the job on one post, to scale: what is expected and set on the right, what each element
 * bears on the left, and no word on another. Nothing where fewer than two are known.
 */
export const pressureLadderView = (
	well: Well,
	results: Results,
	{ width, height, units, words, keyOf, size = USUAL }: ChartOptions,
): Drawing | undefined => {
	const { stimulation } = results;
	const ladder = stimulation?.ladder;
	if (ladder === undefined || ladder.rungs.length < 2) return undefined;
	const print = printer(units, words, keyOf);
	const [ruler, broad] = [(RULER * size) / USUAL, (POST * size) / USUAL];
	const values = ladder.rungs.map((rung) => rung.pressure.value);
	const [lowest, highest] = [Math.min(...values), Math.max(...values)];
	const from = lowest > HIGH_UP * highest ? 0.82 * lowest : 0;
	const scale = from > 0 ? words.ladderScaleFrom : words.ladderScale;
	const note = [run(scale, { italic: true, color: SECOND_INK })];
	const legend = legendOf(ladder, print);
	// The legend stands beside the scale where both fit in one row, else under it.
	const wide = lineWidth(note, size * 0.95) + size;
	const beside = { x: wide, width: width - wide, size: size * 0.95 };
	const under = { x: 0, width, size: size * 0.95 };
	const oneRow = legendHeight(legend, beside) <= size * 2;
	const legendBox = oneRow ? beside : under;
	const foot = oneRow ? legendHeight(legend, beside) : legendHeight(legend, under) + size * 1.3;
	const [top, bottom] = [size * 2.4, height - foot - 5];
	const axis = axisOf("pressure", units, [from, highest * 1.03], [bottom, top], 24);
	const post: Box = { x: width * 0.47, y: top, width: broad, height: bottom - top };
	const broken = new Set(ladder.broken.flatMap((pair) => [pair.lower, pair.upper]));
	const labels = ladder.rungs.map((rung): Label & { readonly left: boolean } => ({
		id: rung.id,
		left: onLeft(rung),
		anchor: [onLeft(rung) ? post.x - 6 : post.x + broad + 6, axis.at(rung.pressure.value)],
		lines: rungLines(rung, results, print, broken.has(rung.id)),
		weight: 9,
		keep: true,
		least: 1,
		dot: false,
	}));
	const column = { low: 0, high: bottom + 6, size };
	const left = labelColumn(
		labels.filter((label) => label.left),
		{ ...column, side: "left", x: post.x - 26, width: post.x - 26 - ruler - 8, edge: post.x - 6 },
	);
	const right = labelColumn(
		labels.filter((label) => !label.left),
		{
			...column,
			side: "right",
			x: post.x + broad + 26,
			width: width - post.x - broad - 26,
			edge: post.x + broad + 6,
		},
	);
	return {
		id: "pressure-ladder",
		width,
		height,
		title: sentence(words.ladderOf, { well: well.identity.name }),
		alternative: alternativeOf(ladder, results, print),
		scale,
		shapes: [
			...postShapes(ladder, post, axis.at),
			...(from > 0
				? [...breakMark(ruler - 7, ruler + 7, bottom), ...breakMark(post.x - 5, post.x + broad + 5, bottom)]
				: []),
			...uprightAxis(
				{ ...axis, ticks: axis.ticks.filter(({ at }) => from === 0 || at < bottom - 6) },
				{ edge: ruler, size: size * 0.9, title: words.axisPressure, name: "pressure" },
			),
			{ kind: "line", x1: ruler, y1: top, x2: ruler, y2: bottom, stroke: { color: INK, width: 0.8 } },
			...ladder.rungs.map((rung) =>
				rungShape(rung, post, axis.at(rung.pressure.value), limits(rung, results)),
			),
			...left.shapes,
			...right.shapes,
			named(
				"label scale",
				setLine(note, {
					x: 0,
					y: bottom + 5 + size * 0.8,
					size: size * 0.95,
				}),
			),
			...legendShapes(legend, { ...legendBox, y: bottom + 5 + (oneRow ? 0 : size * 1.3) }),
		],
	};
};

/** Whether it is the weakest element. */
const limits = (rung: Rung, { stimulation }: Results): boolean =>
	rung.tier === "element" && rung.name === stimulation?.limiting?.element;

const rungName = (rung: Rung, { words }: Print): string => {
	if (rung.tier !== "element") return sentence(words.ladderTiers[rung.tier], { number: rung.name ?? "" });
	const name = words.elements[rung.name ?? ""] ?? rung.name ?? "";
	return name.charAt(0).toUpperCase() + name.slice(1);
};

const rungLines = (rung: Rung, results: Results, print: Print, broken: boolean): Line[] => {
	const { words } = print;
	const element = results.stimulation?.boundary.find(
		(each) => rung.tier === "element" && each.id === rung.id,
	);
	const style = rung.tier === "element" ? { nearest: 10 } : { decimals: 0 };
	return [
		[
			run(rungName(rung, print), { weight: "semibold" }),
			run("  "),
			{ ...print.value(rung.pressure, style), weight: "semibold" },
			...(broken ? [run(`  ${words.ladderBroken}`, { weight: "bold" })] : []),
		],
		...(element === undefined
			? []
			: [
					[
						...compose(words.ladderAllowed, {
							rating: print.value(element.rating, { nearest: 10 }),
							factor: shareOf(element.allowed.value / element.rating.value),
						}),
						...(limits(rung, results) ? [run(`; ${words.ladderLimits}`, { weight: "semibold" })] : []),
					],
				]),
	];
};

/** `0.85`, with no more digits than it needs. */
const shareOf = (factor: number): string => String(Math.round(factor * 1000) / 1000);

const hatch = (box: Box): Shape => {
	let d = "";
	for (let x = box.x - box.height; x < box.x + box.width; x += 5)
		d += `M${n(x)} ${n(box.y + box.height)}l${n(box.height)} ${n(-box.height)}`;
	return { kind: "path", d, stroke: { color: SECOND_INK, width: 0.7 }, clip: boxPath(box) };
};

/** The post: tinted up to what is expected, hatched above the maximum. */
const postShapes = (ladder: PressureLadder, post: Box, y: (value: number) => number): Shape[] => {
	const at = (tier: Rung["tier"]) => ladder.rungs.find((rung) => rung.tier === tier)?.pressure.value;
	const [expected, maximum] = [at("expected"), at("maximum")];
	const bottom = post.y + post.height;
	return [
		{ kind: "path", d: boxPath(post), fill: PAPER },
		...(expected === undefined
			? []
			: [
					{
						kind: "path",
						d: boxPath({ ...post, y: y(expected), height: bottom - y(expected) }),
						fill: GROUND,
					} as const,
				]),
		...(maximum === undefined || y(maximum) - post.y < 0.5
			? []
			: [hatch({ ...post, height: y(maximum) - post.y })]),
		{ kind: "path", d: boxPath(post), stroke: { color: INK, width: 0.8 } },
	];
};

const rungShape = (rung: Rung, post: Box, y: number, limiting: boolean): Shape => {
	const broad = post.width;
	const whole = rung.tier === "maximum" || limiting;
	const [from, to] = onLeft(rung)
		? [post.x - 6, post.x + (whole ? broad + 6 : broad / 2)]
		: [post.x + (whole ? -6 : broad / 2), post.x + broad + 6];
	const stroke = STROKES[rung.tier];
	return {
		kind: "line",
		x1: from,
		y1: y,
		x2: to,
		y2: y,
		stroke: limiting ? { ...stroke, width: 3 } : stroke,
	};
};

const legendOf = (ladder: PressureLadder, { words }: Print): LegendEntry[] => {
	const has = (tier: Rung["tier"]) => ladder.rungs.some((rung) => rung.tier === tier);
	const swatch: Box = { x: 0, y: 0, width: SWATCH.width, height: SWATCH.height };
	return [
		...(has("expected")
			? [
					{
						text: words.legendExpected,
						swatch: [
							{ kind: "path", d: boxPath(swatch), fill: GROUND, stroke: { color: INK, width: 0.5 } } as const,
						],
					},
				]
			: []),
		...(has("maximum")
			? [
					{
						text: words.legendNever,
						swatch: [
							hatch(swatch),
							{ kind: "path", d: boxPath(swatch), stroke: { color: INK, width: 0.5 } } as const,
						],
					},
				]
			: []),
	];
};

const alternativeOf = (ladder: PressureLadder, results: Results, print: Print): string => {
	const broken = new Set(ladder.broken.flatMap((pair) => [pair.lower, pair.upper]));
	const list = [...ladder.rungs]
		.sort((a, b) => a.pressure.value - b.pressure.value)
		.map((rung) =>
			rungLines(rung, results, print, broken.has(rung.id))
				.map((line) => lineText(line).replace(/\s{2,}/gu, " "))
				.join(", "),
		);
	return sentence(print.words.altLadder, { list: list.join("; ") });
};
