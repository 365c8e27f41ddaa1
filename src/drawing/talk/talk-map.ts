import type { Results } from "../../calc/results.ts";
import type { Drawing, Shape } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { compose, lineText, run } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { entryOf } from "../maps/entry-of.ts";
import { equalScale, scaleBar } from "../maps/equal-scale.ts";
import { northArrow } from "../maps/markers.ts";
import { reachOf } from "../maps/reach.ts";
import { GROUND, INK, PAPER } from "../palette.ts";
import { placesAlong } from "../path-line.ts";
import { printer } from "../print.ts";
import { openPath, type Point } from "../well-axis.ts";
import { keyRoom, keyShapes, type Numbered, numberShapes } from "./numbered.ts";
import type { TalkOptions } from "./talk-options.ts";

/** Share of the width that the map takes; the list has the rest. */
const MAP = 0.5;
const ROUNDED = { significant: 2, spoken: true } as const;

/** The well from above, north up, to one scale, with the nearest places numbered and named beside it. */
export const talkMap = (well: Well, results: Results, options: TalkOptions): Drawing => {
	const { width, height, size, words } = options;
	const print = printer(options.units, words, options.keyOf, options.language);
	const { trajectory, site } = results;
	const path = placesAlong(trajectory.path, 0, trajectory.total_depth.md.value);
	const inReach = reachOf(results);
	const near = [
		...site.neighbors.filter((place) => entryOf(well.neighbors, place) !== undefined),
		...site.offset_wells.filter((place) => entryOf(well.offsetWells, place) !== undefined),
	]
		.flatMap((place) => {
			const { north, east, from_path: distance } = place;
			if (north === undefined || east === undefined || distance === undefined) return [];
			const at = { north: north.value, east: east.value };
			// What every other paper says of another well is how near the two holes come, not how they lie from above.
			const apart = results.isolation.offset_wells.find(({ id }) => id === place.id)?.in_space;
			return inReach(at)
				? [{ name: place.name, at, distance, ...(apart === undefined ? {} : { apart }) }]
				: [];
		})
		.sort((a, b) => a.distance.value - b.distance.value)
		.slice(0, keyRoom(height - size * 2, size));
	const points = [...path, ...near.map(({ at }) => at), { north: 0, east: 0 }];
	const spread = (values: readonly number[]): readonly [number, number] => {
		const [from, to] = [Math.min(...values), Math.max(...values)];
		const margin = Math.max(300, (to - from) * 0.1);
		return [from - margin, to + margin];
	};
	const box = { left: 0, top: 0, right: width * MAP, bottom: height };
	const inside = { left: size, top: size, right: box.right - size, bottom: box.bottom - size * 2 };
	const scale = equalScale(
		spread(points.map(({ east }) => east)),
		spread(points.map(({ north }) => north)),
		inside,
		"up",
	);
	const place = ({ north, east }: { readonly north: number; readonly east: number }): Point => [
		scale.x(east),
		scale.y(north),
	];
	const items = near.map(
		({ name, at, distance, apart }): Numbered => ({
			at: place(at),
			says: [
				run(`${name}: `, { weight: "bold" }),
				...(apart === undefined
					? [print.value(distance, ROUNDED)]
					: compose(words.talkHoleToHole, { distance: print.value(apart, ROUNDED) })),
			],
		}),
	);
	const head = place({ north: 0, east: 0 });
	const half = size * 0.4;
	const shapes: Shape[] = [
		{ kind: "path", d: boxPath({ x: 0, y: 0, width: box.right, height }), fill: GROUND },
		{ kind: "path", d: openPath(path.map(place)), stroke: { color: INK, width: size * 0.2, cap: "round" } },
		{
			kind: "path",
			d: boxPath({ x: head[0] - half, y: head[1] - half, width: 2 * half, height: 2 * half }),
			fill: INK,
			stroke: { color: PAPER, width: 1 },
		},
		...items.map(
			({ at }): Shape => ({
				kind: "path",
				d: `M${at[0]} ${at[1] - size * 0.28}l${size * 0.28} ${size * 0.28}l${-size * 0.28} ${size * 0.28}l${-size * 0.28} ${-size * 0.28}Z`,
				fill: PAPER,
				stroke: { color: INK, width: size * 0.08 },
			}),
		),
		...numberShapes(items, box, size),
		...northArrow([box.right - size, size * 0.4], size * 1.5),
		...scaleBar(print, scale, { x: size * 0.6, y: height - size * 0.9, near: box.right * 0.35, size }),
		...keyShapes(items, { left: box.right + size, top: 2, right: width, bottom: height }, size),
	];
	return {
		id: "talk-map",
		width,
		height,
		title: words.talkMap,
		alternative: [words.talkMapShows, ...items.map(({ says }, i) => `${i + 1}. ${lineText(says)}.`)].join(
			" ",
		),
		scale: words.talkMapScale,
		shapes,
	};
};
