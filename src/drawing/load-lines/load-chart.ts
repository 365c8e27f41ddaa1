import type { Shape, Stroke } from "../../document/shapes.ts";
import { type Axis, axisOf } from "../charts/axis.ts";
import { chartBox, levelAxis } from "../charts/chart-frame.ts";
import { curve } from "../charts/curve.ts";
import { RING, ring, ringSpots } from "../charts/ring.ts";
import { compose, type Line, run, setLine, wrap } from "../line-of-text.ts";
import { named } from "../named.ts";
import { BLUE, INK } from "../palette.ts";
import type { Print } from "../print.ts";
import type { Area } from "../tags.ts";
import type { Point } from "../well-axis.ts";
import { type BorneCase, forceUnit, type LoadChart, tightness } from "./load-cases.ts";

/** Type size of the lists under the charts [pt]. */
const LIST_SIZE = 8;
const LEADING = 1.2;
/** Most lines of words a case may take. */
const MOST_LINES = 2;

export const RATING: Stroke = { color: INK, width: 2.2 };
export const LIMIT: Stroke = { color: INK, width: 1, dash: [7, 4] };
export const LOAD: Stroke = { color: BLUE, width: 1.2 };
/** Loads of one chart differ in dash as well as in number. */
export const DASHES: readonly (readonly number[] | undefined)[] = [
	undefined,
	[6, 1.6],
	[1.4, 1.4],
	[8, 1.6, 1.4, 1.6],
	[3, 1.4],
	[10, 1.6, 1.4, 1.4, 1.4, 1.6],
	[1.4, 3.2],
	[6, 1.4, 3, 1.4],
	[2.6, 1.2, 1.2, 1.2],
];

/** `1  Pressure test  2.70, asked 1.10`, as the list under a chart says it. */
export const caseLine = (each: BorneCase, { words, value }: Print): Line => {
	const short = each.reached === false || tightness(each) < 1;
	return [
		run(words.situations[each.situation], { weight: "semibold" }),
		run("  "),
		...compose(short ? words.factorShort : words.factorReached, {
			factor: { ...value(each.least_factor), weight: short ? "bold" : "regular" },
			asked: value(each.required, exactly(each.required.value)),
		}),
	];
};

/** A design factor is printed as it was written: 1.125 is no 1.13. */
const exactly = (factor: number) => ({ decimals: Number.isInteger(Math.round(factor * 1e6) / 1e4) ? 2 : 3 });

const listed = (cases: readonly BorneCase[], width: number, print: Print): Line[][] =>
	cases.map((each) => wrap(caseLine(each, print), LIST_SIZE, width - 2 * RING - 5, MOST_LINES));

const entryTall = (lines: readonly Line[]): number =>
	Math.max(2 * RING + 1.5, lines.length * LIST_SIZE * LEADING + 1.5);

export const listTall = (cases: readonly BorneCase[], width: number, print: Print): number =>
	listed(cases, width, print).reduce((sum, lines) => sum + entryTall(lines), 0);

/** One way of loading: its loads and its ratings against depth along the hole, and under them what each number is. */
export const loadChart = (
	kind: LoadChart,
	cases: readonly BorneCase[],
	{
		box,
		depth,
		size,
		print,
	}: { readonly box: Area; readonly depth: Axis; readonly size: number; readonly print: Print },
): Shape[] => {
	const values = cases.flatMap((each) => each.line.rows.flatMap((row) => [row.load, row.rating]));
	const [low, high] = [Math.min(0, ...values), Math.max(...values, 1)];
	const room = 0.05 * (high - low);
	const range = [low < 0 ? low - room : 0, high + room] as const;
	const across =
		kind === "tension"
			? axisOf("force", print.units, range, [box.left, box.right], 30, forceUnit(print.units))
			: axisOf("pressure", print.units, range, [box.left, box.right], 30);
	const points = (each: BorneCase, of: (row: { load: number; rating: number }) => number): Point[] =>
		each.line.rows.map((row) => [across.at(of(row)), depth.at(row.md)]);
	const loads = cases.map((each) => points(each, (row) => row.load));
	const ratings = cases.flatMap((each) =>
		curve(
			points(each, (row) => row.rating),
			RATING,
			box,
		),
	);
	const [tightest] = cases;
	const limit =
		tightest === undefined
			? []
			: curve(
					points(tightest, (row) => row.rating / tightest.required.value),
					LIMIT,
					box,
				);
	const spots = ringSpots(loads, box);
	const list = listed(cases, box.right - box.left, print);
	let y = box.bottom + 7;
	return [
		...chartBox(box, across, depth),
		...(low < 0
			? [
					{
						kind: "line",
						x1: across.at(0),
						y1: box.top,
						x2: across.at(0),
						y2: box.bottom,
						stroke: { color: INK, width: 0.6 },
					} as const,
				]
			: []),
		...ratings.filter((shape, i) => ratings.findIndex((other) => sameLine(shape, other)) === i),
		...limit,
		...loads.flatMap((line, i) => {
			const dash = DASHES[i % DASHES.length];
			return curve(
				line,
				{ ...LOAD, width: i === 0 ? 1.7 : LOAD.width, ...(dash === undefined ? {} : { dash }) },
				box,
			);
		}),
		...spots.flatMap((spot, i): Shape[] => {
			const each = cases[i];
			return spot === undefined || each === undefined
				? []
				: [named(`label ${kind} ${i + 1}`, ring(spot, i + 1, tightness(each) < 1))];
		}),
		...levelAxis(across, { edge: box.top, size, title: print.words.loadAxes[kind], name: kind }),
		...list.flatMap((lines, i): Shape[] => {
			const each = cases[i];
			const top = y;
			y += entryTall(lines);
			return [
				named(`label ${kind} case ${i + 1}`, [
					...ring([box.left + RING, top + RING], i + 1, each !== undefined && tightness(each) < 1),
					...lines.flatMap((line, row) =>
						setLine(line, {
							x: box.left + 2 * RING + 5,
							y: top + RING + LIST_SIZE * 0.34 + row * LIST_SIZE * LEADING,
							size: LIST_SIZE,
						}),
					),
				]),
			];
		}),
	];
};

/** Whether loads change what the pipe can bear, so that several lines of rating are drawn. */
export const ratingsDiffer = (cases: readonly BorneCase[]): boolean => {
	const [first, ...others] = cases.map(({ line }) => line.rows);
	return others.some((rows) =>
		rows.some(({ rating, md }) => {
			const same = first?.find((row) => row.md === md)?.rating;
			return same !== undefined && Math.abs(rating - same) > TOLD * same;
		}),
	);
};

/** Ratings nearer to each other than this share cannot be told apart on the page. */
const TOLD = 0.005;

const sameLine = (a: Shape, b: Shape): boolean => a.kind === "path" && b.kind === "path" && a.d === b.d;
