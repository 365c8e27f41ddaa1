import type { Shape } from "../../document/shapes.ts";
import { type Box, boxPath, n } from "../lithology.ts";
import { BLUE, INK, PAPER, WATER_TINT } from "../palette.ts";

/** A band of water: tint, and rows of a low wave. */
export const waterBand = (box: Box): Shape[] => {
	if (box.height <= 0) return [];
	let waves = "";
	const rows = Math.max(1, Math.round(box.height / 7));
	for (let row = 0; row < rows; row += 1) {
		const y = box.y + ((row + 0.5) * box.height) / rows;
		waves += `M${n(box.x + (row % 2 === 0 ? 2 : 8))} ${n(y)}`;
		for (let x = box.x; x < box.x + box.width; x += 12) waves += "q1.5 -1.5 3 0t3 0m6 0";
	}
	return [
		{ kind: "path", d: boxPath(box), fill: WATER_TINT },
		{
			kind: "path",
			d: waves,
			stroke: { color: BLUE, width: 0.5, cap: "round" },
			clip: boxPath(box),
		},
	];
};

/** Distance between the triangles of the base line [pt]. */
const TEETH = 26;

/** The base of protected water: a heavy line with triangles hanging from it, outside the stretch kept clear. */
export const protectedBase = (
	from: number,
	to: number,
	y: number,
	clear?: readonly [number, number],
): Shape[] => {
	let teeth = "";
	for (let x = from + TEETH / 2; x <= to - 3; x += TEETH) {
		if (clear !== undefined && x > clear[0] - 4 && x < clear[1] + 4) continue;
		teeth += `M${n(x - 2.8)} ${n(y)}h5.6l-2.8 4.2Z`;
	}
	return [
		{
			kind: "line",
			x1: from,
			y1: y,
			x2: to,
			y2: y,
			stroke: { color: BLUE, width: 1.4 },
		},
		...(teeth === "" ? [] : [{ kind: "path", d: teeth, fill: BLUE } as const]),
	];
};

/** A neighbor's well: a thin open tube with a rounded foot, a ring at the surface, water in its lowest part. */
export const waterWellMark = (x: number, ground: number, foot: number, ring = 3): Shape[] => {
	const half = 2.2;
	const bottom = Math.max(foot - half, ground);
	const tube = `M${n(x - half)} ${n(ground)}V${n(bottom)}a${half} ${half} 0 0 0 ${2 * half} 0V${n(ground)}`;
	const filled = Math.max(ground, bottom - Math.max(4, (bottom - ground) * 0.3));
	const water = `M${n(x - half)} ${n(filled)}V${n(bottom)}a${half} ${half} 0 0 0 ${2 * half} 0V${n(filled)}Z`;
	return [
		{ kind: "path", d: `${tube}Z`, fill: PAPER },
		{ kind: "path", d: water, fill: BLUE },
		{ kind: "path", d: tube, stroke: { color: INK, width: 0.7 } },
		{
			kind: "path",
			d: `M${n(x - ring)} ${n(ground - ring)}a${ring} ${ring} 0 1 0 ${2 * ring} 0a${ring} ${ring} 0 1 0 ${-2 * ring} 0Z`,
			fill: PAPER,
			stroke: { color: INK, width: 0.9 },
		},
	];
};
