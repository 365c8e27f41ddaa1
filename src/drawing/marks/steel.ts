import type { Shape } from "../../document/shapes.ts";
import { n } from "../lithology.ts";
import type { StringWidth } from "../nesting.ts";
import { INK, PAPER, WALL } from "../palette.ts";
import { type AxisPoint, closedPath, offset, openPath, strip } from "../well-axis.ts";
import { local } from "./local.ts";

/** A string's wall: a solid bar on each side. */
export const steelWall = (points: readonly AxisPoint[], { outer, inner }: StringWidth): Shape[] =>
	([1, -1] as const).map((side) => ({
		kind: "path",
		d: strip(points, side, inner, outer),
		fill: INK,
	}));

/** The foot of a string: a quarter disc against each wall, flat side at the shoe. */
export const shoeMark = (at: AxisPoint, outer: number, size: number): Shape[] => {
	const place = local(at);
	return ([1, -1] as const).map((side) => {
		const [corner, wall, out] = [
			place(side * outer, 0),
			place(side * outer, -size),
			place(side * (outer + size), 0),
		];
		const sweep = side === 1 ? 1 : 0;
		const d = `M${n(corner[0])} ${n(corner[1])}L${n(wall[0])} ${n(wall[1])}A${n(size)} ${n(size)} 0 0 ${sweep} ${n(out[0])} ${n(out[1])}Z`;
		return { kind: "path", d, fill: INK };
	});
};

/** The open hole: white inside, a grey line at each wall, a bowl at the bottom. */
export const holeShapes = (points: readonly AxisPoint[], half: number): Shape[] => {
	const last = points.at(-1);
	if (last === undefined) return [];
	const place = local(last);
	const bowl = [0.75, 0.4, 0, -0.4, -0.75].map((share) => place(half * share, 1.6 * (1 - share ** 2)));
	const outline = [...offset(points, half), ...bowl, ...offset(points, -half).reverse()];
	return [
		{ kind: "path", d: closedPath(outline), fill: PAPER },
		{
			kind: "path",
			d: openPath(outline),
			stroke: { color: WALL, width: 0.6, join: "round" },
		},
	];
};

/** A bar across the bore with a ball beneath it. */
export const floatCollarMark = (at: AxisPoint, inner: number): Shape[] => {
	const place = local(at);
	const radius = Math.min(1.7, inner * 0.4);
	const [left, right, ball] = [place(-inner, 0), place(inner, 0), place(0, radius + 0.9)];
	return [
		{
			kind: "path",
			d: openPath([left, right]),
			stroke: { color: INK, width: 0.9 },
		},
		{
			kind: "path",
			d: `M${n(ball[0] - radius)} ${n(ball[1])}a${n(radius)} ${n(radius)} 0 1 0 ${n(2 * radius)} 0a${n(radius)} ${n(radius)} 0 1 0 ${n(-2 * radius)} 0Z`,
			fill: INK,
		},
	];
};

/** A solid block across the bore with a white waist. */
export const plugMark = (at: AxisPoint, inner: number): Shape[] => {
	const place = local(at);
	const block = (from: number, to: number): Shape => ({
		kind: "path",
		d: closedPath([place(-inner, from), place(inner, from), place(inner, to), place(-inner, to)]),
		fill: INK,
	});
	return [block(-2.1, -0.5), block(0.5, 2.1)];
};

/** Three ribs that bridge an annulus on each side: a liner top, or a packer. */
export const sealMark = (at: AxisPoint, near: number, far: number): Shape[] => {
	const place = local(at);
	const ribs = ([1, -1] as const).flatMap((side) =>
		[0, 2.2, 4.4].map((along) => openPath([place(side * near, along), place(side * far, along)])),
	);
	return [{ kind: "path", d: ribs.join(""), stroke: { color: INK, width: 1.2 } }];
};
