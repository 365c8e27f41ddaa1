import type { BarrierElementResults, BarrierPhaseResults } from "../../calc/results.ts";
import type { Shape } from "../../document/shapes.ts";
import { n } from "../lithology.ts";
import { BLUE, PAPER, VERMILLION } from "../palette.ts";
import { openPath, type Point } from "../well-axis.ts";
import type { BarrierWell } from "./barrier-well.ts";

type Elements = readonly BarrierElementResults[];

/** Half-width of tubing, as a share of the innermost string's. */
const TUBING = 0.42;

/** One side of a barrier, from where it closes at the top to where it meets the rock; mirrored for the other side. */
type Side = readonly (readonly [across: number, y: number])[];

/** How far above the ground a barrier closes at the top [pt]. */
const CLOSES = { primary: 11, secondary: 5 } as const;

const ofKind = (elements: Elements, kind: BarrierElementResults["element"]) =>
	elements.filter(({ element }) => element === kind);

/** Where a barrier's line runs down beside the steel that it is made of: the primary inside of it, the secondary outside. */
const beside = (drawn: BarrierWell, id: string, barrier: "primary" | "secondary"): number =>
	drawn.steel(id) + (barrier === "primary" ? -3.4 : 1.8);

/**
 * Down the steel of the barrier to its shoe, and out through the cement to the rock; from the tubing over the packer
 * where there is one. Nothing where no steel makes up the barrier.
 */
const sideOf = (
	drawn: BarrierWell,
	elements: Elements,
	top: number,
	barrier: "primary" | "secondary",
): Side => {
	const casings = ofKind(elements, "casing").flatMap(({ string, depth }) =>
		string === undefined || depth === undefined ? [] : [{ string, depth: depth.value }],
	);
	const deepest = casings.toSorted((a, b) => b.depth - a.depth)[0];
	if (deepest === undefined) return [];
	const [packer] = ofKind(elements, "packer");
	const foot = drawn.at(deepest.depth) - 2;
	const x = beside(drawn, deepest.string, barrier);
	const down: Side =
		packer?.depth === undefined
			? [
					[x, top],
					[x, foot],
				]
			: [
					[drawn.steel(packer.string ?? deepest.string) * TUBING, top],
					[drawn.steel(packer.string ?? deepest.string) * TUBING, drawn.at(packer.depth.value)],
					[x, drawn.at(packer.depth.value)],
					[x, foot],
				];
	return [...down, [drawn.wall(deepest.string), foot]];
};

/** Both sides and what closes them at the top: across the well, or across the annulus outside the primary. */
const outlines = (
	drawn: BarrierWell,
	phase: BarrierPhaseResults,
	barrier: "primary" | "secondary",
): Point[][] => {
	const top = drawn.top - CLOSES[barrier];
	const right = sideOf(drawn, phase[barrier], top, barrier);
	const [first] = right;
	const place =
		(side: 1 | -1) =>
		([across, y]: readonly [number, number]): Point => [drawn.center + side * across, y];
	if (first === undefined) {
		// Without steel it is a column of fluid that holds: the only element that is weighed.
		const fluid = phase[barrier].find(({ density }) => density !== undefined);
		if (fluid?.depth === undefined) return [];
		const y = drawn.at(fluid.depth.value) - 3;
		return [
			[
				[drawn.center, drawn.top],
				[drawn.center, y],
			],
			[
				[drawn.center - 6, y],
				[drawn.center + 6, y],
			],
		];
	}
	const other = barrier === "secondary" ? sideOf(drawn, phase.primary, top, "primary")[0] : undefined;
	const shared = other !== undefined && other[0] >= first[0] - 1e-6;
	if (other === undefined || shared) return [[...right.toReversed().map(place(1)), ...right.map(place(-1))]];
	return ([1, -1] as const).map((side) => [place(side)([other[0], top]), ...right.map(place(side))]);
};

/** Small rings along a line, evenly apart. */
const rings = (line: readonly Point[], pace: number, radius: number): string => {
	let due = pace / 2;
	return line
		.slice(1)
		.map((to, i) => {
			const from = line[i] ?? to;
			const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
			let d = "";
			for (; due <= length; due += pace) {
				const share = due / length;
				const [x, y] = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
				d += `M${n(x - radius)} ${n(y)}a${n(radius)} ${n(radius)} 0 1 0 ${n(2 * radius)} 0a${n(radius)} ${n(radius)} 0 1 0 ${n(-2 * radius)} 0Z`;
			}
			due -= length;
			return d;
		})
		.join("");
};

/** Primary: one heavy line. Secondary: a fine line with rings on it, like beads. Where one does not hold it is broken. */
export const barrierStroke = (
	line: readonly Point[],
	barrier: "primary" | "secondary",
	holds: boolean,
): Shape[] => {
	const d = openPath(line);
	const broken = holds ? {} : { dash: [3, 4] };
	if (barrier === "primary")
		return [{ kind: "path", d, stroke: { color: BLUE, width: 2.2, join: "round", ...broken } }];
	const beads = rings(line, holds ? 6 : 14, 1.5);
	return [
		{ kind: "path", d, stroke: { color: VERMILLION, width: 0.8, join: "round", ...broken } },
		...(beads === ""
			? []
			: [{ kind: "path", d: beads, fill: PAPER, stroke: { color: VERMILLION, width: 0.8 } } as const]),
	];
};

const holds = (elements: Elements): boolean =>
	elements.length > 0 && elements.every(({ state }) => state === "holds" || state === "not stated");

export const barrierShapes = (drawn: BarrierWell, phase: BarrierPhaseResults): Shape[] =>
	(["secondary", "primary"] as const).flatMap((barrier) =>
		outlines(drawn, phase, barrier).flatMap((line) => barrierStroke(line, barrier, holds(phase[barrier]))),
	);
