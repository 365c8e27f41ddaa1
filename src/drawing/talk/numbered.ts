import type { Shape } from "../../document/shapes.ts";
import { type Line, run, setLine, wrap } from "../line-of-text.ts";
import { n } from "../lithology.ts";
import { named } from "../named.ts";
import { INK, PAPER } from "../palette.ts";
import type { Point } from "../well-axis.ts";

/** A thing of a picture with a number, and what the list beside the picture says of it. */
export interface Numbered {
	readonly at: Point;
	readonly says: Line;
}

const RING = 0.72;

const circle = ([x, y]: Point, radius: number): string =>
	`M${n(x - radius)} ${n(y)}a${n(radius)} ${n(radius)} 0 1 0 ${n(2 * radius)} 0a${n(radius)} ${n(radius)} 0 1 0 ${n(-2 * radius)} 0Z`;

const badge = (at: Point, number: number, size: number): Shape[] => [
	{ kind: "path", d: circle(at, size * RING), fill: PAPER, stroke: { color: INK, width: size * 0.09 } },
	named(
		`label number ${number}`,
		setLine([run(String(number), { weight: "bold" })], {
			x: at[0],
			y: at[1] + size * 0.34,
			size,
			anchor: "middle",
		}),
	),
];

/** Directions tried in turn for a number, from straight right around. */
const TURNS = [0, -0.5, 0.5, -1, 1, 0.75, -0.75, 0.25, -0.25].map((share) => share * Math.PI);
const DISTANCES = [1.6, 2.4, 3.4, 4.6];

/** Numbers beside the things they name, none over another and none outside the box, each tied to its place by a line. */
export const numberShapes = (
	items: readonly Numbered[],
	box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number },
	size: number,
): Shape[] => {
	const taken: Point[] = items.map(({ at }) => at);
	const apart = size * RING * 2.15;
	return items.flatMap(({ at }, i): Shape[] => {
		const places = DISTANCES.flatMap((away) =>
			TURNS.map(
				(turn): Point => [at[0] + Math.cos(turn) * away * size, at[1] + Math.sin(turn) * away * size],
			),
		);
		const reach = size * RING + 1;
		const fits = ([x, y]: Point): boolean =>
			x - reach >= box.left && x + reach <= box.right && y - reach >= box.top && y + reach <= box.bottom;
		const free = (place: Point, own: number): boolean =>
			taken.every(
				(other, k) =>
					Math.hypot(other[0] - place[0], other[1] - place[1]) >=
					(k < items.length ? (k === own ? 0 : size * 0.95) : apart),
			);
		const place = places.find((each) => fits(each) && free(each, i)) ?? places.find(fits) ?? at;
		taken.push(place);
		return [
			{
				kind: "path",
				d: `M${n(at[0])} ${n(at[1])}L${n(place[0])} ${n(place[1])}`,
				stroke: { color: INK, width: size * 0.05 },
			},
			...badge(place, i + 1, size),
		];
	});
};

/** The list beside the picture, as far as there is room; how many of it were set. */
export const keyShapes = (
	items: readonly Numbered[],
	box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number },
	size: number,
): Shape[] => {
	const indent = size * INDENT;
	let y = box.top;
	return items.flatMap(({ says }, i): Shape[] => {
		const lines = wrap(says, size, box.right - box.left - indent, 2);
		const top = y;
		y += entryHeight(lines.length, size);
		return [
			...badge([box.left + size * 0.75, top + size * 0.62], i + 1, size),
			named(
				`label key ${i + 1}`,
				lines.flatMap((line, k) =>
					setLine(line, { x: box.left + indent, y: top + size * (0.96 + k * 1.12), size }),
				),
			),
		];
	});
};

/** Height of that list [pt]. */
export const keyHeight = (items: readonly Numbered[], width: number, size: number): number =>
	items.reduce(
		(sum, { says }) => sum + entryHeight(wrap(says, size, width - size * INDENT, 2).length, size),
		0,
	);

const INDENT = 2;
const entryHeight = (lines: number, size: number): number => lines * size * 1.12 + size * 0.42;

/** How many entries of two lines at most the list has room for. */
export const keyRoom = (height: number, size: number): number => Math.floor(height / (size * 2.3));
