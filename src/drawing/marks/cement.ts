import type { Shape } from "../../document/shapes.ts";
import { CEMENT_BUILT, CEMENT_GRAIN, CEMENT_PLANNED, INK } from "../palette.ts";
import { type AxisPoint, openPath, strip } from "../well-axis.ts";
import { local } from "./local.ts";

type CementBasis = "planned" | "recorded";

/** Distance between rows of grain along the hole [pt]. */
const GRAIN = 3.4;

/** Places at even distances along the drawn axis. */
export const paced = (points: readonly AxisPoint[], pace: number): AxisPoint[] => {
	const out: AxisPoint[] = [];
	let due = pace / 2;
	points.slice(1).forEach((after, i) => {
		const before = points[i];
		if (before === undefined) return;
		const length = Math.hypot(after.x - before.x, after.y - before.y);
		while (due <= length) {
			const share = due / length;
			out.push({
				md: before.md,
				x: before.x + (after.x - before.x) * share,
				y: before.y + (after.y - before.y) * share,
				normal: share < 0.5 ? before.normal : after.normal,
			});
			due += pace;
		}
		due -= length;
	});
	return out;
};

/** Strokes that lean right; crossed by strokes that lean left where the cement is a matter of record. */
const grain = (
	points: readonly AxisPoint[],
	side: 1 | -1,
	near: number,
	far: number,
	basis: CementBasis,
): string => {
	const width = far - near;
	const half = Math.min(1, width * 0.28);
	const lanes = Math.max(1, Math.round(width / 5));
	return paced(points, GRAIN)
		.flatMap((point, i) => {
			const place = local(point);
			return Array.from({ length: lanes }, (_, lane) => {
				const share = (lane + (i % 2 === 0 ? 0.33 : 0.67)) / lanes;
				const across = side * (near + half + (width - 2 * half) * share);
				const right = openPath([place(across - half, half * 1.3), place(across + half, -half * 1.3)]);
				if (basis === "planned") return right;
				return right + openPath([place(across - half, -half * 1.3), place(across + half, half * 1.3)]);
			});
		})
		.join("");
};

/** Cement in an annulus, between two distances from the axis, on both sides. */
export const cementFill = (
	points: readonly AxisPoint[],
	near: number,
	far: number,
	basis: CementBasis,
): Shape[] => {
	const sides = [1, -1] as const;
	const fill = basis === "planned" ? CEMENT_PLANNED : CEMENT_BUILT;
	const strokes = sides.map((side) => grain(points, side, near, far, basis)).join("");
	return [
		{
			kind: "path",
			d: sides.map((side) => strip(points, side, near, far)).join(""),
			fill,
		},
		// A column shorter than one row of grain has none.
		...(strokes === ""
			? []
			: [{ kind: "path", d: strokes, stroke: { color: CEMENT_GRAIN, width: 0.5 } } as const]),
	];
};

/** Cement that fills the bore: the shoe track. */
export const cementPlug = (points: readonly AxisPoint[], inner: number, basis: CementBasis): Shape[] =>
	cementFill(points, 0, inner, basis);

/** Top of a column: dashed as planned, a solid bar as recorded. */
export const cementTopMark = (at: AxisPoint, near: number, far: number, basis: CementBasis): Shape[] => {
	const place = local(at);
	const d = ([1, -1] as const)
		.map((side) => openPath([place(side * near, 0), place(side * far, 0)]))
		.join("");
	const stroke =
		basis === "planned" ? { color: INK, width: 0.9, dash: [1.6, 1.1] } : { color: INK, width: 1.3 };
	return [{ kind: "path", d, stroke }];
};
