import type { Shape } from "../../document/shapes.ts";
import { n } from "../lithology.ts";
import { PAPER, VERMILLION } from "../palette.ts";
import { type AxisPoint, closedPath, openPath } from "../well-axis.ts";
import { local } from "./local.ts";

/** A stroke through each wall, out into the rock. */
export const clusterMarks = (
	places: readonly AxisPoint[],
	near: number,
	far: number,
	width: number,
): Shape[] =>
	places.length === 0
		? []
		: [
				{
					kind: "path",
					d: places
						.flatMap((at) => {
							const place = local(at);
							return ([1, -1] as const).map((side) =>
								openPath([place(side * near, 0), place(side * far, 0)]),
							);
						})
						.join(""),
					stroke: { color: VERMILLION, width },
				},
			];

/** Where a level hole is drawn wider than the bed that it lies in: upright strokes that end with the bed. */
export const bedMarks = (
	strokes: readonly { readonly x: number; readonly top: number; readonly bottom: number }[],
	width: number,
): Shape[] =>
	strokes.length === 0
		? []
		: [
				{
					kind: "path",
					d: strokes.map(({ x, top, bottom }) => `M${n(x)} ${n(top)}V${n(bottom)}`).join(""),
					stroke: { color: VERMILLION, width },
				},
			];

/** A small open diamond on each wall: a sleeve, or a valve that pressure opens. */
export const valveMarks = (places: readonly AxisPoint[], outer: number): Shape[] =>
	places.flatMap((at) => {
		const place = local(at);
		return ([1, -1] as const).map((side): Shape => {
			const [middle, reach] = [side * outer, 2.2];
			return {
				kind: "path",
				d: closedPath([
					place(middle, -reach),
					place(middle + reach, 0),
					place(middle, reach),
					place(middle - reach, 0),
				]),
				fill: PAPER,
				stroke: { color: VERMILLION, width: 0.9 },
			};
		});
	});
