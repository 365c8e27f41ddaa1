import { scaleLinear } from "d3-scale";
import type { Shape } from "../../document/shapes.ts";
import { tickString } from "../../units/format.ts";
import { run, setLine } from "../line-of-text.ts";
import { INK, PAPER, SECOND_INK } from "../palette.ts";
import type { Print } from "../print.ts";

/** A well that ends nearer to its wellhead than this goes straight down, and has no direction [ft]. */
export const STRAIGHT_DOWN = 1;

/** A box on the page [pt]. */
export interface PageBox {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
}

/** Feet to points, the same both ways. `down` tells that the second axis grows down the page (depth), not up (north). */
export interface EqualScale {
	readonly perFoot: number;
	readonly x: (across: number) => number;
	readonly y: (along: number) => number;
}

/** The largest equal scale at which a range of feet fits a box, the range in the middle of it. */
export const equalScale = (
	across: readonly [number, number],
	along: readonly [number, number],
	box: PageBox,
	direction: "down" | "up",
): EqualScale => {
	const perFoot = Math.min(
		(box.right - box.left) / Math.max(across[1] - across[0], 1),
		(box.bottom - box.top) / Math.max(along[1] - along[0], 1),
	);
	const [midX, midY] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
	const [midAcross, midAlong] = [(across[0] + across[1]) / 2, (along[0] + along[1]) / 2];
	const sign = direction === "down" ? 1 : -1;
	const x = scaleLinear()
		.domain([midAcross, midAcross + 1])
		.range([midX, midX + perFoot]);
	const y = scaleLinear()
		.domain([midAlong, midAlong + 1])
		.range([midY, midY + sign * perFoot]);
	return { perFoot, x: (value) => x(value), y: (value) => y(value) };
};

/** A bar of a round length near a wanted one, divided in two, with its length beside it. */
export const scaleBar = (
	print: Print,
	scale: EqualScale,
	{
		x,
		y,
		near,
		size,
	}: { readonly x: number; readonly y: number; readonly near: number; readonly size: number },
): Shape[] => {
	const units = (near / scale.perFoot) * print.perFoot;
	const power = 10 ** Math.floor(Math.log10(units));
	const round = [5, 2, 1].map((digit) => digit * power).find((length) => length <= units) ?? power;
	const length = (round / print.perFoot) * scale.perFoot;
	const half = length / 2;
	const text = run(`${tickString(round)}\u00a0${print.depthUnit}`, { color: SECOND_INK });
	return [
		{ kind: "path", d: `M${x} ${y}h${half}v4h${-half}Z`, fill: INK, stroke: { color: INK, width: 0.6 } },
		{
			kind: "path",
			d: `M${x + half} ${y}h${half}v4h${-half}Z`,
			fill: PAPER,
			stroke: { color: INK, width: 0.6 },
		},
		{
			kind: "group",
			dx: 0,
			dy: 0,
			name: "label scale bar",
			children: setLine([text], { x: x + length + 5, y: y + size * 0.55, size }),
		},
	];
};
