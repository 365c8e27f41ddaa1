import type { Shape, Undrawn } from "../document/shapes.ts";
import { placeInOrder } from "./label-column.ts";
import { type Line, lineText, lineWidth, setLine, wrap } from "./line-of-text.ts";
import { boxPath } from "./lithology.ts";
import { leader } from "./marks/lines.ts";
import type { Point } from "./well-axis.ts";

/** What a drawing says of one place. */
export interface Label {
	readonly id: string;
	/** The place it speaks of, on the page. */
	readonly anchor: Point;
	/** The name first; when room is short the last lines go first. */
	readonly lines: readonly Line[];
	/** Labels of less weight give way first. */
	readonly weight: number;
	/** Never dropped, and never shorter than `least` lines. */
	readonly keep?: boolean;
	readonly least?: number;
	/** Whether a dot marks the place; a line or a band marks itself. */
	readonly dot?: boolean;
	/** In a column: the label may point at any place of this stretch of the page, level with its anchor [pt]. */
	readonly span?: readonly [number, number];
	/** A label that would stand farther than this from its place says nothing, and is left out [pt]. */
	readonly near?: number;
}

export interface Placed {
	readonly shapes: readonly Shape[];
	/** Ids of the labels there was no room for. */
	readonly dropped: readonly string[];
	/** What was not set: labels left out, and lines that labels gave up. */
	readonly lost: readonly Undrawn[];
}

/** A label with its lines broken to the column's width; each inner list is one line as given. */
interface Set {
	readonly label: Label;
	groups: Line[][];
	/** True of a label with a line that is not set in full. */
	cut?: boolean;
}

const squashed = (line: Line): string => lineText(line).replaceAll(/\s+/gu, "");

/** A label in lines of a width, each broken over so many rows at most. */
const broken = (label: Label, size: number, width: number, most?: number): Set => {
	const groups = label.lines.map((line) => wrap(line, size, width, most));
	const cut = label.lines.some((line, i) => (groups[i] ?? []).map(squashed).join("") !== squashed(line));
	return { label, groups, cut };
};

const LEADING = 1.2;
/** Clear space between two labels, as a share of the type size. */
const APART = 0.45;
/** The same where room is short: less space goes before any words do. */
const CLOSE = 0.15;
/** Longer labels lose lines before labels of so many lines do. */
const SHORT = 2;
/** Labels that are never dropped also stand nearer to their places. */
const KEPT_WEIGHT = 4;

const rows = (set: Set): Line[] => set.groups.flat();
const heightOf = (set: Set, size: number, apart: number): number =>
	rows(set).length * size * LEADING + size * apart;

/** Takes away lines, then labels, until the rest fits. */
const shed = (
	sets: Set[],
	fits: (kept: readonly Set[]) => boolean,
	shortened: (line: Line) => Line[],
): { kept: Set[]; dropped: string[] } => {
	let kept = [...sets];
	const dropped: string[] = [];
	const leastLines = (set: Set) => (set.label.keep === true ? (set.label.least ?? 1) : 1);
	for (;;) {
		if (fits(kept)) return { kept, dropped };
		const long = kept.filter((set) => set.groups.length > leastLines(set));
		const [victim] = long.sort(
			(a, b) =>
				Number(a.groups.length <= SHORT) - Number(b.groups.length <= SHORT) ||
				a.label.weight - b.label.weight ||
				b.groups.length - a.groups.length,
		);
		if (victim !== undefined) {
			victim.groups = victim.groups.slice(0, -1);
			continue;
		}
		const [spare] = kept
			.filter((set) => set.label.keep !== true)
			.sort((a, b) => a.label.weight - b.label.weight);
		if (spare !== undefined) {
			kept = kept.filter((set) => set !== spare);
			dropped.push(spare.label.id);
			continue;
		}
		const [longest] = kept
			.filter((set) => rows(set).length > 1)
			.sort((a, b) => rows(b).length - rows(a).length);
		if (longest === undefined) return { kept, dropped };
		if (longest.groups.length > 1) {
			longest.groups = longest.groups.slice(0, -1);
			continue;
		}
		longest.groups = [shortened(longest.label.lines[0] ?? [])];
		longest.cut = true;
	}
};

/** Labels that are not among the sets, and the lines that the sets gave up. */
const lostOf = (labels: readonly Label[], sets: readonly Set[]): Undrawn[] =>
	labels.flatMap((label): Undrawn[] => {
		const set = sets.find((each) => each.label === label);
		const left = set?.cut
			? label.lines
			: label.lines.slice(set === undefined ? 1 : Math.max(set.groups.length, 1));
		const name = lineText(label.lines[0] ?? []);
		const says = left.map((line) => lineText(line).replaceAll(/\s{2,}/gu, " "));
		return set === undefined || says.length > 0 ? [{ name, says: says.join("; ") }] : [];
	});

/** Where a column of labels stands. */
export interface Column {
	/** `left`: text ends at `x`; `right`: text begins at `x`. */
	readonly side: "left" | "right";
	readonly x: number;
	readonly width: number;
	/** Edge of the well or of the ground: leaders run level up to it. */
	readonly edge: number;
	readonly low: number;
	readonly high: number;
	readonly size: number;
	/** Color of a box behind each label, where the column stands on the drawing itself. */
	readonly backing?: string;
}

/** Sets labels in one column beside the drawing, with leaders that keep order. */
export const labelColumn = (labels: readonly Label[], column: Column): Placed => {
	const { size } = column;
	const sorted = [...labels].sort((a, b) => a.anchor[1] - b.anchor[1]);
	const sets = sorted.map((label) => broken(label, size, column.width, 4));
	const room = column.high - column.low;
	const fits = (apart: number) => (some: readonly Set[]) =>
		some.reduce((sum, set) => sum + heightOf(set, size, apart), 0) <= room;
	const apart = fits(APART)(sets) ? APART : CLOSE;
	const { kept, dropped } = shed(sets, fits(apart), (line) => wrap(line, size, column.width, 1));
	const { starts, anchors, near, strayed } = placedNear(kept, column, apart);
	const anchor = column.side === "left" ? "end" : "start";
	const shapes = near.flatMap((set, i): Shape[] => {
		const top = (starts[i] ?? column.low) + (size * apart) / 2;
		const text = rows(set).flatMap((each, row) =>
			setLine(each, {
				x: column.x,
				y: top + row * size * LEADING + size * 0.9,
				size,
				anchor,
			}),
		);
		const reach = column.side === "left" ? column.x + 2.5 : column.x - 2.5;
		const tip: Point = [reach, top + (size * LEADING) / 2];
		const x = set.label.anchor[0];
		const y = anchors[i] ?? set.label.anchor[1];
		const inside = column.side === "left" ? x > column.edge : x < column.edge;
		return [
			{
				kind: "group",
				dx: 0,
				dy: 0,
				name: `leader ${set.label.id}`,
				children: leader([x, y], inside ? [column.edge, y] : undefined, tip, set.label.dot),
			},
			{
				kind: "group",
				dx: 0,
				dy: 0,
				name: `label ${set.label.id}`,
				children: [...backingOf(rows(set), column, top), ...text],
			},
		];
	});
	return { shapes, dropped: [...dropped, ...strayed], lost: lostOf(sorted, near) };
};

const backingOf = (lines: readonly Line[], { side, x, size, backing }: Column, top: number): Shape[] => {
	if (backing === undefined) return [];
	const width = Math.max(...lines.map((line) => lineWidth(line, size)), 0) + 4;
	const height = lines.length * size * LEADING;
	return [
		{
			kind: "path",
			d: boxPath({ x: side === "left" ? x - width + 2 : x - 2, y: top, width, height }),
			fill: backing,
		},
	];
};

/** Rounds in which labels and the places they point at, where those may slide, come to terms. */
const ROUNDS = 40;

/** Where labels that stand so point at: within the stretch of each, in the order of the labels. */
const pointedAt = (sets: readonly Set[], middles: readonly number[], { low, high }: Column): number[] => {
	const own = sets.map(({ label }) => label.anchor[1]);
	const anchors = sets.map(({ label: { span, anchor } }, i) => {
		if (span === undefined) return anchor[1];
		const [from, to] = [Math.max(span[0], low), Math.min(span[1], high)];
		return to < from ? anchor[1] : Math.max(from, Math.min(to, middles[i] ?? anchor[1]));
	});
	// Where two would change places, those and all before them keep their own.
	const crossed = anchors.findLastIndex((y, i) => i > 0 && y < (anchors[i - 1] ?? y));
	if (crossed === -1) return anchors;
	return anchors.map((y, i) => (i <= crossed ? (own[i] ?? y) : Math.max(y, own[crossed] ?? y)));
};

const placedOnce = (sets: readonly Set[], column: Column, apart: number, lead: number) => {
	let anchors = sets.map(({ label }) => label.anchor[1]);
	for (let round = 0; ; round += 1) {
		const starts = placeInOrder(
			sets.map((set, i) => ({
				anchor: anchors[i] ?? 0,
				size: heightOf(set, column.size, apart),
				lead,
				weight: set.label.keep === true ? KEPT_WEIGHT : 1,
			})),
			column.low,
			column.high,
		);
		const next = pointedAt(
			sets,
			starts.map((start) => start + lead),
			column,
		);
		const moved = Math.max(0, ...next.map((y, i) => Math.abs(y - (anchors[i] ?? y))));
		if (moved < 0.01 || round === ROUNDS) return { starts, anchors: next };
		anchors = next;
	}
};

/** Places a column's labels; those that must stand near their place and cannot are left out, one by one. */
const placedNear = (sets: readonly Set[], column: Column, apart: number) => {
	const lead = (column.size * (LEADING + apart)) / 2;
	const strayed: string[] = [];
	let near = [...sets];
	for (;;) {
		const { starts, anchors } = placedOnce(near, column, apart, lead);
		const excess = near.map(
			(set, i) =>
				Math.abs((starts[i] ?? 0) + lead - (anchors[i] ?? 0)) - (set.label.near ?? Number.POSITIVE_INFINITY),
		);
		const worst = Math.max(...excess);
		if (!(worst > 0)) return { starts, anchors, near, strayed };
		const at = excess.indexOf(worst);
		strayed.push(near[at]?.label.id ?? "");
		near = near.filter((_, i) => i !== at);
	}
};

/** Where a row of labels stands, under a hole that has turned level. */
interface LabelRow {
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
	/** Leaders run upright to it. */
	readonly edge: number;
	/** Above the drawing instead of beneath it. */
	readonly above?: boolean;
	/** Widest a label may be where there is room. */
	readonly widest: number;
	readonly size: number;
}

/** Sets labels, given from left to right, in one row beneath the drawing or above it, each centered under its place as far as the others let it. */
export const labelRow = (labels: readonly Label[], row: LabelRow): Placed => {
	const { size } = row;
	const gap = size;
	const room = row.right - row.left;
	let kept = [...labels];
	const dropped: string[] = [];
	const least = size * 7.5;
	while (kept.length * (least + gap) > room && kept.some((label) => label.keep !== true)) {
		const [spare] = kept.filter((label) => label.keep !== true).sort((a, b) => a.weight - b.weight);
		kept = kept.filter((label) => label !== spare);
		if (spare !== undefined) dropped.push(spare.id);
	}
	const widest = Math.min(row.widest, room / Math.max(kept.length, 1) - gap);
	const sets = kept.map((label) => broken(label, size, widest));
	const most = Math.floor((row.bottom - row.top) / (size * LEADING));
	for (const set of sets) {
		while (rows(set).length > most && set.groups.length > 1) set.groups = set.groups.slice(0, -1);
	}
	const widths = sets.map((set) => Math.max(...rows(set).map((each) => lineWidth(each, size)), 1));
	const starts = placeInOrder(
		sets.map((set, i) => ({
			anchor: set.label.anchor[0],
			size: (widths[i] ?? 0) + gap,
		})),
		row.left,
		row.right,
	);
	const shapes = sets.flatMap((set, i): Shape[] => {
		const middle = (starts[i] ?? row.left) + ((widths[i] ?? 0) + gap) / 2;
		const first = row.above === true ? row.bottom - rows(set).length * size * LEADING : row.top;
		const text = rows(set).flatMap((each, line) =>
			setLine(each, {
				x: middle,
				y: first + line * size * LEADING + size * 0.9,
				size,
				anchor: "middle",
			}),
		);
		const [x, y] = set.label.anchor;
		const bend = row.above === true ? Math.min(row.edge, y) : Math.max(row.edge, y);
		const tip: Point = [middle, row.above === true ? row.bottom + 1.5 : row.top - 1.5];
		return [
			{
				kind: "group",
				dx: 0,
				dy: 0,
				name: `leader ${set.label.id}`,
				children: leader([x, y], [x, bend], tip, set.label.dot),
			},
			{
				kind: "group",
				dx: 0,
				dy: 0,
				name: `label ${set.label.id}`,
				children: text,
			},
		];
	});
	return { shapes, dropped, lost: lostOf(labels, sets) };
};
