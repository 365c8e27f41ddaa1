import type { Shape } from "../document/shapes.ts";
import type { Lithology } from "../well/well.ts";
import { ROCK_LINE } from "./palette.ts";

/** An upright rectangle on the page. */
export interface Box {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

export const boxPath = ({ x, y, width, height }: Box): string =>
	`M${n(x)} ${n(y)}H${n(x + width)}V${n(y + height)}H${n(x)}Z`;

/** Coordinates are kept to hundredths of a point. */
export const n = (value: number): string => String(Math.round(value * 100) / 100);

type Segments = (box: Box) => string;

/** Calls `at` on a staggered grid that covers the box; the grid hangs from the page, so that neighbors join. */
const grid = (
	box: Box,
	dx: number,
	dy: number,
	at: (x: number, y: number, row: number) => string,
	stagger = 0.5,
): string => {
	let d = "";
	const first = Math.floor(box.y / dy);
	for (let row = first; row * dy <= box.y + box.height + dy; row += 1) {
		const shift = (((row % 2) + 2) % 2) * stagger * dx;
		for (let x = box.x - dx + shift; x <= box.x + box.width + dx; x += dx) d += at(x, row * dy, row);
	}
	return d;
};

/** A dot, as a stroke too short to see the length of; round caps make it round. */
const dot = (x: number, y: number): string => `M${n(x)} ${n(y)}h0.05`;
const dash = (length: number) => (x: number, y: number) => `M${n(x - length / 2)} ${n(y)}h${n(length)}`;
const pebble = (rx: number, ry: number) => (x: number, y: number) =>
	`M${n(x - rx)} ${n(y)}a${rx} ${ry} 0 1 0 ${2 * rx} 0a${rx} ${ry} 0 1 0 ${-2 * rx} 0`;
const courses = (box: Box, dy: number): string => {
	let d = "";
	for (let row = Math.floor(box.y / dy); row * dy <= box.y + box.height + dy; row += 1)
		d += `M${n(box.x)} ${n(row * dy)}h${n(box.width)}`;
	return d;
};
const joints = (box: Box, dx: number, dy: number, joint: (x: number, y: number) => string): string =>
	courses(box, dy) + grid(box, dx, dy, joint);

interface Pattern {
	/** Number in the federal chart. */
	readonly fgdc: number;
	readonly lines: Segments;
	readonly width: number;
	readonly filled?: boolean;
}

/**
 * Rock patterns as line work.
 *
 * @source FGDC-STD-013-2006, Appendix A, section 37 (lithologic patterns), prepared by the U.S. Geological Survey; which
 *         were compared with the chart's artwork, and which are from memory of it, is in the shape grammar in DEVELOPERS.md
 */
const ROCK_PATTERNS: Readonly<Record<Lithology, Pattern>> = {
	gravel: {
		fgdc: 601,
		width: 0.5,
		lines: (box) =>
			grid(box, 8, 5, (x, y, row) => (row % 3 === 0 ? pebble(1.5, 1.1)(x, y) : pebble(2.3, 1.6)(x, y))),
	},
	conglomerate: {
		fgdc: 602,
		width: 0.5,
		lines: (box) =>
			grid(
				box,
				9,
				6,
				(x, y) =>
					pebble(2.2, 1.6)(x, y) + dot(x + 4.5, y - 0.8) + dot(x + 3.6, y + 1.6) + dot(x + 5.5, y + 1),
			),
	},
	sand: { fgdc: 607, width: 0.8, lines: (box) => grid(box, 4.4, 3.4, dot) },
	sandstone: {
		fgdc: 608,
		width: 0.75,
		lines: (box) =>
			grid(box, 3.2, 2.5, dot) +
			grid({ ...box, x: box.x + 2 }, 13, 12.5, (x, y) => `M${n(x)} ${n(y + 1.25)}h5`),
	},
	siltstone: {
		fgdc: 616,
		width: 0.5,
		lines: (box) => grid(box, 7, 3, (x, y) => dash(3)(x, y) + dot(x + 3.1, y) + dot(x + 3.9, y)),
	},
	clay: { fgdc: 660, width: 0.5, lines: (box) => grid(box, 8, 4.2, dash(3.4)) },
	claystone: {
		fgdc: 620,
		width: 0.5,
		lines: (box) => grid(box, 7, 3, dash(4.6)),
	},
	shale: {
		fgdc: 620,
		width: 0.5,
		lines: (box) => grid(box, 10, 2.1, dash(8.2)),
	},
	marl: {
		fgdc: 623,
		width: 0.5,
		lines: (box) =>
			grid(box, 8, 3.2, (x, y, row) => dash(5.6)(x, y) + (row % 2 === 0 ? `M${n(x)} ${n(y)}v-1.9` : "")),
	},
	limestone: {
		fgdc: 627,
		width: 0.5,
		lines: (box) => joints(box, 9, 4.5, (x, y) => `M${n(x)} ${n(y)}v4.5`),
	},
	dolomite: {
		fgdc: 642,
		width: 0.5,
		lines: (box) => joints(box, 9, 4.5, (x, y) => `M${n(x + 1.3)} ${n(y)}l-2.6 4.5`),
	},
	chalk: {
		fgdc: 626,
		width: 0.5,
		lines: (box) => joints(box, 9, 4.5, (x, y) => `M${n(x - 0.8)} ${n(y)}v4.5M${n(x + 0.8)} ${n(y)}v4.5`),
	},
	anhydrite: {
		fgdc: 667,
		width: 0.5,
		lines: (box) => {
			let d = "";
			const reach = Math.max(box.height, 1);
			for (let x = box.x - reach; x <= box.x + box.width; x += 2.8)
				d += `M${n(x)} ${n(box.y)}l${n(reach)} ${n(reach)}`;
			return d;
		},
	},
	salt: {
		fgdc: 668,
		width: 0.6,
		lines: (box) => grid(box, 6, 6, (x, y) => `M${n(x - 1.8)} ${n(y)}h3.6M${n(x)} ${n(y - 1.8)}v3.6`, 0),
	},
	coal: { fgdc: 658, width: 0.5, filled: true, lines: () => "" },
	volcanic: {
		fgdc: 717,
		width: 0.5,
		lines: (box) => grid(box, 7, 4.4, (x, y) => `M${n(x - 1.6)} ${n(y - 1.2)}l1.6 2.4l1.6 -2.4`),
	},
	granite: {
		fgdc: 718,
		width: 0.5,
		lines: (box) =>
			grid(box, 7.5, 4.6, (x, y, row) => {
				const turn = ((row % 3) + 3) % 3;
				if (turn === 0) return `M${n(x - 1.8)} ${n(y)}h3.6M${n(x + 3)} ${n(y + 0.6)}v2.6`;
				if (turn === 1) return `M${n(x - 1.3)} ${n(y - 1.3)}l2.6 2.6`;
				return `M${n(x - 1.3)} ${n(y + 1.3)}l2.6 -2.6M${n(x + 2.6)} ${n(y)}h2.8`;
			}),
	},
};

/** A bed's rock, drawn in a box: its pattern in line work, clipped to the box. */
export const rockPattern = (lithology: Lithology, box: Box): Shape[] => {
	if (box.height <= 0 || box.width <= 0) return [];
	const pattern = ROCK_PATTERNS[lithology];
	const outline = boxPath(box);
	if (pattern.filled === true) return [{ kind: "path", d: outline, fill: ROCK_LINE }];
	return [
		{
			kind: "path",
			d: pattern.lines(box),
			stroke: { color: ROCK_LINE, width: pattern.width, cap: "round" },
			clip: outline,
		},
	];
};
