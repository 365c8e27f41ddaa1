import type { Shape } from "../../document/shapes.ts";
import { n } from "../lithology.ts";
import { arrow } from "../marks/arrow.ts";
import { cementFill, cementPlug } from "../marks/cement.ts";
import { clusterMarks } from "../marks/perforations.ts";
import { steelWall } from "../marks/steel.ts";
import { INK, PAPER, VERMILLION, WALL } from "../palette.ts";
import { closedPath, openPath, strip } from "../well-axis.ts";
import type { InsetAxis } from "./inset-axis.ts";

/** Shares of the half-width across a close-up: the bore, the steel, the hole in the rock. */
export const BORE = 0.26;
export const STEEL = 0.36;
export const WALL_AT = 0.6;

/** The hole in the rock, white, its walls a grey line. */
export const holeOf = (axis: InsetAxis, from: number, to: number, share = WALL_AT): Shape[] => {
	const points = axis.between(from, to);
	const at = axis.half * share;
	return [
		{ kind: "path", d: strip(points, 1, -at, at), fill: PAPER },
		{
			kind: "path",
			d: ([1, -1] as const)
				.map((side) => openPath([axis.place(from, side * at), axis.place(to, side * at)]))
				.join(""),
			stroke: { color: WALL, width: 1 },
		},
	];
};

export const pipeOf = (axis: InsetAxis, from: number, to: number): Shape[] =>
	steelWall(axis.between(from, to), { outer: axis.half * STEEL, inner: axis.half * BORE });

/** Cement in the gap around the pipe. */
export const gapFilled = (axis: InsetAxis, from: number, to: number): Shape[] =>
	cementFill(axis.between(from, to), axis.half * STEEL, axis.half * WALL_AT, "planned");

/** Cement in the pipe. */
export const boreFilled = (axis: InsetAxis, from: number, to: number): Shape[] =>
	cementPlug(axis.between(from, to), axis.half * BORE, "planned");

/** A block across the bore with a white waist: a plug, drawn as large as the close-up asks. */
export const plugOf = (axis: InsetAxis, share: number, thick: number): Shape[] => {
	const across = axis.half * BORE;
	const block = (from: number, to: number): Shape => ({
		kind: "path",
		d: closedPath([
			axis.place(share + from / axis.length, -across),
			axis.place(share + from / axis.length, across),
			axis.place(share + to / axis.length, across),
			axis.place(share + to / axis.length, -across),
		]),
		fill: INK,
	});
	return [block(-thick, -thick * 0.2), block(thick * 0.2, thick)];
};

/** A bit on the end of pipe that comes from the near end: it cuts at a share along the hole. */
export const bitOf = (axis: InsetAxis, share: number): Shape[] => {
	const [pipe, bit] = [axis.half * 0.07, axis.half * 0.22];
	const back = share - 0.1;
	const neck = share - 0.05;
	return [
		{ kind: "path", d: strip(axis.between(0, back), 1, -pipe, pipe), fill: INK },
		{
			kind: "path",
			d: closedPath([
				axis.place(back, -pipe),
				axis.place(neck, -bit),
				axis.place(share, -bit * 0.6),
				axis.place(share + 0.02, 0),
				axis.place(share, bit * 0.6),
				axis.place(neck, bit),
				axis.place(back, pipe),
			]),
			fill: INK,
		},
	];
};

/** An arrow along the hole, at a distance across it. */
export const flowOf = (axis: InsetAxis, from: number, to: number, across: number, width: number): Shape[] =>
	arrow(axis.place(from, across), axis.place(to, across), width);

/** Strokes through pipe and cement into the rock. */
export const holesOf = (axis: InsetAxis, shares: readonly number[], reach: number, width: number): Shape[] =>
	clusterMarks(
		shares.map((share) => axis.at(share)),
		axis.half * BORE,
		axis.half * reach,
		width,
	);

/** Cracks that go on from those strokes, both ways: crooked, the same every time. */
export const cracksOf = (axis: InsetAxis, shares: readonly number[], width: number): Shape[] => {
	const bend = [0, 0.014, -0.01, 0.016, -0.006];
	const d = shares
		.flatMap((share, i) =>
			([1, -1] as const).map((side) =>
				openPath(
					bend.map((by, k) =>
						axis.place(
							share + by * (i % 2 === 0 ? 1 : -1) * side,
							side * axis.half * (WALL_AT + 0.08 + (k * 0.3) / (bend.length - 1)),
						),
					),
				),
			),
		)
		.join("");
	return [{ kind: "path", d, stroke: { color: VERMILLION, width, join: "round", cap: "round" } }];
};

/** Grains of sand in those cracks. */
export const sandOf = (axis: InsetAxis, shares: readonly number[], radius: number): Shape[] => {
	const dot = (share: number, across: number): string => {
		const [x, y] = axis.place(share, across);
		return `M${n(x - radius)} ${n(y)}a${n(radius)} ${n(radius)} 0 1 0 ${n(2 * radius)} 0a${n(radius)} ${n(radius)} 0 1 0 ${n(-2 * radius)} 0Z`;
	};
	const d = shares
		.flatMap((share) =>
			([1, -1] as const).flatMap((side) =>
				[0.66, 0.74, 0.82, 0.9].map((at, k) =>
					dot(share + (k % 2 === 0 ? 0.012 : -0.012), side * axis.half * at),
				),
			),
		)
		.join("");
	return [{ kind: "path", d, fill: INK }];
};

/** A dark tool on a cable from the near end. */
export const gunOf = (axis: InsetAxis, from: number, to: number, cable: number): Shape[] => [
	{
		kind: "path",
		d: openPath([axis.place(0, 0), axis.place(from, 0)]),
		stroke: { color: INK, width: cable },
	},
	{ kind: "path", d: strip(axis.between(from, to), 1, -axis.half * 0.13, axis.half * 0.13), fill: INK },
];
