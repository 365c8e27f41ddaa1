import type { Shape } from "../document/shapes.ts";
import { type Line, lineWidth, setLine } from "./line-of-text.ts";
import { boxPath } from "./lithology.ts";
import { leader } from "./marks/lines.ts";
import { PAPER } from "./palette.ts";
import type { Point } from "./well-axis.ts";

/** A box on the page [pt]. */
export interface Area {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
}

/** A short line of words beside a place. */
export interface Tag {
	readonly name: string;
	readonly line: Line;
	readonly at: Point;
	/** Color of a box behind it; white where absent. */
	readonly backing?: string;
}

/** Distances from the place that are tried, nearest first, and the directions at each [pt, °]. */
const FAR = [7, 12, 18, 26, 36, 48];
const TURNS = [0, 45, -45, 90, -90, 135, -135, 180, 22, -22, 67, -67, 112, -112, 157, -157];
/** From this distance on a line joins a tag to its place. */
const JOINED = 15;

const ASPECTS: readonly Point[] = FAR.flatMap((far): Point[] =>
	TURNS.map((turn): Point => {
		const angle = (turn * Math.PI) / 180;
		return [Math.cos(angle) * far, -Math.sin(angle) * far];
	}),
);

export const overlap = (a: Area, b: Area): number =>
	Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
	Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));

const within = (one: Area, box: Area): boolean =>
	one.left >= box.left + 2 &&
	one.right <= box.right - 2 &&
	one.top >= box.top + 2 &&
	one.bottom <= box.bottom - 2;

/**
 * Sets each tag near its place, the first ones first, where it lies within the box, on no earlier tag, and covers as
 * little as may be of what is taken. A tag without such a spot is left out.
 */
export const tagShapes = (
	tags: readonly Tag[],
	taken: readonly Area[],
	box: Area,
	size: number,
): { readonly shapes: readonly Shape[]; readonly dropped: readonly string[] } => {
	const set: Area[] = [];
	const dropped: string[] = [];
	const shapes = tags.flatMap((tag): Shape[] => {
		const wide = lineWidth(tag.line, size);
		const spots = ASPECTS.map(([dx, dy], rank) => {
			const middle = tag.at[0] + dx + Math.sign(Math.round(dx)) * (wide / 2);
			const y = tag.at[1] + dy;
			return {
				rank,
				left: middle - wide / 2 - 1,
				right: middle + wide / 2 + 1,
				top: y - size / 2,
				bottom: y + size / 2,
			};
		}).filter((spot) => within(spot, box) && set.every((other) => overlap(spot, other) === 0));
		const cost = (spot: Area) => taken.reduce((sum, other) => sum + overlap(spot, other), 0);
		const [best] = spots
			.map((spot) => ({ spot, cost: cost(spot) }))
			.sort((a, b) => a.cost - b.cost || a.spot.rank - b.spot.rank);
		if (best === undefined) {
			dropped.push(tag.name);
			return [];
		}
		const { spot } = best;
		set.push(spot);
		const [x, y] = tag.at;
		const tip: Point = [
			Math.min(Math.max(x, spot.left), spot.right),
			Math.min(Math.max(y, spot.top), spot.bottom),
		];
		return [
			...(Math.hypot(tip[0] - x, tip[1] - y) < JOINED ? [] : leader([x, y], undefined, tip, false)),
			{
				kind: "group",
				dx: 0,
				dy: 0,
				name: `label ${tag.name}`,
				children: [
					{
						kind: "path",
						d: boxPath({ x: spot.left, y: spot.top, width: spot.right - spot.left, height: size }),
						fill: tag.backing ?? PAPER,
					},
					...setLine(tag.line, {
						x: (spot.left + spot.right) / 2,
						// Letters reach 0.22 of their size under the line.
						y: spot.bottom - size * 0.22,
						size,
						anchor: "middle",
					}),
				],
			},
		];
	});
	return { shapes, dropped };
};
