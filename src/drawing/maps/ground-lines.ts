import type { Results } from "../../calc/results.ts";
import type { PlaceResults } from "../../calc/results-of-isolation.ts";
import type { Known } from "../../cite/known.ts";
import type { Shape, Stroke } from "../../document/shapes.ts";
import type { Well } from "../../well/well.ts";
import { type LegendEntry, strokeSwatch } from "../legend.ts";
import { type Line, run } from "../line-of-text.ts";
import { boxPath } from "../lithology.ts";
import { BLUE, INK, PAPER, SECOND_INK } from "../palette.ts";
import type { Print } from "../print.ts";
import type { Area, Tag } from "../tags.ts";
import { openPath, type Point } from "../well-axis.ts";
import { entryOf } from "./entry-of.ts";
import { placeWords } from "./plan-places.ts";

/** A road, a stream or a boundary that the definition gives by its corners. */
interface GroundLine {
	readonly name: string;
	readonly kind: string;
	readonly corners: readonly { readonly north: number; readonly east: number }[];
	/** Its name, its kind where the name does not say it, and how far it is from the path. */
	readonly words: Line;
	/** A boundary of land lies around the well, and belongs whole on the map; a road runs on. */
	readonly bounds: boolean;
}

const BOUNDARIES: ReadonlySet<string> = new Set(["lease line", "unit line", "property line"] as const);
const WATERS = new Set(["stream", "lake or pond", "wetland"]);

/** Strokes of a line, the lower first: told apart by dash and width, not by color alone. */
const strokesOf = (kind: string): readonly Stroke[] => {
	if (WATERS.has(kind)) return [{ color: BLUE, width: 1.6, join: "round" }];
	switch (kind) {
		case "lease line":
			return [{ color: INK, width: 0.9, dash: [9, 2.5, 1.5, 2.5] }];
		case "unit line":
			return [{ color: INK, width: 1.5, dash: [12, 3, 1.5, 3, 1.5, 3] }];
		case "property line":
			return [{ color: SECOND_INK, width: 0.7, dash: [6, 2, 2, 2] }];
		case "road":
			return [
				{ color: SECOND_INK, width: 3, join: "round" },
				{ color: PAPER, width: 1.8, join: "round" },
			];
		case "railroad":
			return [
				{ color: SECOND_INK, width: 0.8 },
				{ color: SECOND_INK, width: 4, dash: [0.8, 5] },
			];
		default:
			return [{ color: SECOND_INK, width: 0.9, dash: [4, 2] }];
	}
};

const lineWords = (
	place: PlaceResults,
	kind: string,
	radius: Known<"distance"> | undefined,
	print: Print,
): Line => {
	const [name, ...far] = placeWords(place, radius, print);
	const called = print.words.groundLines[kind] ?? kind;
	const isSaid = place.name.toLowerCase().includes(called.toLowerCase());
	return name === undefined ? [] : [name, ...(isSaid ? [] : [run(` (${called})`)]), ...far];
};

export const groundLines = (well: Well, { site, trajectory }: Results, print: Print): readonly GroundLine[] =>
	(site?.neighbors ?? []).flatMap((place) => {
		const entry = entryOf(well.neighbors, place);
		// What a line is may be kept from the paper's readers: nothing is drawn of it then.
		return entry?.kind === undefined || place.line === undefined
			? []
			: [
					{
						name: place.name,
						kind: entry.kind,
						corners: place.line.rows,
						words: lineWords(place, entry.kind, trajectory?.uncertainty_radius, print),
						bounds: BOUNDARIES.has(entry.kind),
					},
				];
	});

type At = (place: { readonly north: number; readonly east: number }) => Point;

export const groundLineShapes = (lines: readonly GroundLine[], at: At, box: Area): Shape[] => {
	const clip = boxPath({
		x: box.left,
		y: box.top,
		width: box.right - box.left,
		height: box.bottom - box.top,
	});
	return lines.flatMap((line) =>
		strokesOf(line.kind).map(
			(stroke): Shape => ({ kind: "path", d: openPath(line.corners.map(at)), stroke, clip }),
		),
	);
};

/** Steps along a line on the page, at which a label may stand and what it covers is counted [pt]. */
const STEP = 6;

/** Places along a line on the page that lie within a box. */
const alongIn = (corners: readonly Point[], box: Area): readonly Point[] =>
	corners.flatMap((from, i): Point[] => {
		const to = corners[i + 1];
		if (to === undefined) return [];
		const steps = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / STEP));
		return Array.from(
			{ length: steps },
			(_, k): Point => [from[0] + ((to[0] - from[0]) * k) / steps, from[1] + ((to[1] - from[1]) * k) / steps],
		).filter(([x, y]) => x > box.left && x < box.right && y > box.top && y < box.bottom);
	});

/** Names of the lines, each beside the place of it that lies farthest from what is there already. */
export const groundLineTags = (
	lines: readonly GroundLine[],
	at: At,
	box: Area,
	taken: readonly Point[],
): readonly Tag[] => {
	const inner = { left: box.left + 30, right: box.right - 30, top: box.top + 14, bottom: box.bottom - 14 };
	const others = [...taken];
	return lines.flatMap((line) => {
		const room = ([x, y]: Point) =>
			Math.min(...others.map((other) => Math.hypot(other[0] - x, other[1] - y)));
		const [best] = alongIn(line.corners.map(at), inner)
			.map((place) => ({ place, room: room(place) }))
			.sort((a, b) => b.room - a.room);
		if (best === undefined) return [];
		others.push(best.place);
		return [{ name: `line ${line.name}`, at: best.place, line: [run(line.name, { weight: "semibold" })] }];
	});
};

/** What the lines cross on the page. */
export const groundLineAreas = (lines: readonly GroundLine[], at: At, box: Area): readonly Area[] =>
	lines
		.flatMap((line) => alongIn(line.corners.map(at), box))
		.map(([x, y]) => ({ left: x - 1.5, right: x + 1.5, top: y - 1.5, bottom: y + 1.5 }));

/** Each line as it is drawn, with how far it is; or, to save room, each kind of line once. */
export const groundLineLegend = (
	lines: readonly GroundLine[],
	{ words }: Print,
	by: "line" | "kind",
): LegendEntry[] => {
	const swatch = (kind: string) =>
		strokesOf(kind).map(({ color, width, dash }) => strokeSwatch(color, width, dash));
	return by === "line"
		? lines.map((line) => ({ text: line.words, swatch: swatch(line.kind) }))
		: [...new Set(lines.map(({ kind }) => kind))].map((kind) => ({
				text: words.groundLines[kind] ?? kind,
				swatch: swatch(kind),
			}));
};
