import { emptied, measured, stackHeight, type Unmeasured, withoutOuterSpace } from "./arrange.ts";
import { isBlank, isFramed, type Laid, type LaidBox, type LaidText } from "./laid.ts";
import { asksOf, type Blocks, isContent, lastPlace, mayPart } from "./rules.ts";
import type { Least } from "./vocabulary.ts";

/** Rounding of sums of heights [pt]. */
const EASE = 0.01;

/** Lines of a paragraph that stand together at least, before the end of a page and behind it. */
const LEAST_LINES = 2;

/** What stands on a page, and what is left for the next ones. */
interface Division {
	readonly head: readonly Laid[];
	readonly tail: readonly Laid[];
}

interface Limits {
	/** Height there is [pt]. */
	readonly room: number;
	/** The page is empty: something must be put on it, even against the rules. */
	readonly force: boolean;
	readonly least?: Least | undefined;
}

/** What each block asks, found when a rule wants to know. */
const asking = (flow: readonly Laid[]): Blocks => ({
	length: flow.length,
	at: (index) => {
		const item = flow[index];
		return item === undefined ? undefined : asksOf(item);
	},
});

/** Divides blocks that stand below each other at a height, as their rules allow. */
export const divide = (flow: readonly Laid[], { room, force, least }: Limits): Division => {
	let y = 0;
	let content = false;
	for (const [i, item] of flow.entries()) {
		const asks = asksOf(item);
		if (asks.begins && content) return parted(flow, i);
		if (asks.space) {
			// Space at the foot of a page is cut off there.
			y = Math.min(room, y + item.margin.top + item.height + item.margin.bottom);
			continue;
		}
		const top = y + item.margin.top;
		if (top + item.height > room + EASE) return broken(flow, i, { room: room - top, force, least }, content);
		y = top + item.height + item.margin.bottom;
		content ||= isContent(asks);
	}
	return { head: flow, tail: [] };
};

const parted = (flow: readonly Laid[], at: number): Division => {
	const [next, ...rest] = flow.slice(at);
	const begun = next?.props.break === true ? { ...next, props: { ...next.props, break: false } } : next;
	return { head: flow.slice(0, at), tail: begun === undefined ? [] : [begun, ...rest] };
};

/** The page ends at or before the block `at`, for all of which it has no room: within it, else where the rules allow. */
const broken = (flow: readonly Laid[], at: number, limits: Limits, content: boolean): Division => {
	const { room, force, least } = limits;
	const item = flow[at];
	if (item === undefined) return { head: flow, tail: [] };
	const blocks = asking(flow);
	if (least === undefined || mayPart(withPieces(blocks, at), at + 1, least)) {
		const [head, tail] = split(item, room, force && !content);
		if (head !== undefined) {
			const rest = flow.slice(at + 1);
			return { head: [...flow.slice(0, at), head], tail: tail === undefined ? rest : [tail, ...rest] };
		}
	}
	const place = lastPlace(blocks, at, least);
	if (place > 0) return parted(flow, place);
	if (!force) return { head: [], tail: flow };
	// Rules that no page can keep give way: what is higher than a page is divided though it should stand whole, else all
	// that fits stands here, and one block at least.
	const [head, tail] = split(item, room, true);
	if (head !== undefined && tail !== undefined)
		return { head: [...flow.slice(0, at), head], tail: [tail, ...flow.slice(at + 1)] };
	return parted(flow, content ? at : at + 1);
};

/** The blocks with one of them in two pieces. */
const withPieces = (blocks: Blocks, at: number): Blocks => ({
	length: blocks.length + 1,
	at: (index) => {
		const found = blocks.at(index <= at ? index : index - 1);
		if (found === undefined || index < at || index > at + 1) return found;
		return index === at ? { ...found, withNext: false } : { ...found, withPrevious: false };
	},
});

type Halves = readonly [head: Laid | undefined, tail: Laid | undefined];

/** A block divided at a height: what stands above, and what is left. No head where nothing of it may stand there. */
const split = (item: Laid, room: number, force: boolean): Halves => {
	const whole = item.props.wrap === false && !force;
	if (whole || item.kind === "drawing" || item.style.height !== undefined) return [undefined, item];
	if (item.kind === "text") return splitText(item, room);
	switch (item.arrangement) {
		case "row":
			return splitRow(item, room);
		case "columns":
			return splitColumns(item, room, force);
		case "column":
			return splitColumn(item, room, force);
		default:
			return item.arrangement satisfies never;
	}
};

const splitText = (text: LaidText, room: number): Halves => {
	const { lines, lineHeight, padding, border } = text;
	const fitting = Math.floor((room - padding.top - border.top + EASE) / lineHeight);
	const count = Math.min(fitting, lines.length - LEAST_LINES);
	if (count < LEAST_LINES) return [undefined, text];
	const head: LaidText = {
		...text,
		piece: true,
		lines: lines.slice(0, count),
		margin: { ...text.margin, bottom: 0 },
		padding: { ...padding, bottom: 0 },
		border: { ...border, bottom: 0 },
		height: border.top + padding.top + count * lineHeight,
	};
	const tail: LaidText = {
		...text,
		piece: true,
		lines: lines.slice(count),
		margin: { ...text.margin, top: 0 },
		padding: { ...padding, top: 0 },
		border: { ...border, top: 0 },
		height: (lines.length - count) * lineHeight + padding.bottom + border.bottom,
	};
	return [head, tail];
};

/** The two pieces of a box, without their children: a frame closes on both pages, and what has none loses its padding. */
const piecesOf = (box: LaidBox): readonly [LaidBox, LaidBox] => {
	const { minHeight: _, ...style } = box.style;
	const framed = isFramed(box);
	const { margin, padding } = box;
	return [
		{
			...box,
			style,
			margin: { ...margin, bottom: 0 },
			padding: framed ? padding : { ...padding, bottom: 0 },
		},
		{ ...box, style, margin: { ...margin, top: 0 }, padding: framed ? padding : { ...padding, top: 0 } },
	];
};

const insideOf = ({ border, padding }: LaidBox): number =>
	border.top + padding.top + border.bottom + (border.bottom > 0 ? padding.bottom : 0);

const splitColumn = (box: LaidBox, room: number, force: boolean): Halves => {
	const { head, tail } = divide(box.flow, { room: room - insideOf(box), force, least: box.props.least });
	if (tail.length === 0 || !head.some((item) => !isBlank(item) && item.props.fixed !== true))
		return [undefined, box];
	const [above, below] = piecesOf(box);
	const rest = withoutOuterSpace(tail);
	return [
		measured({ ...above, flow: withoutOuterSpace(head) }),
		measured({ ...below, flow: [...box.again, ...rest] }),
	];
};

const splitRow = (row: LaidBox, room: number): Halves => {
	const inside = room - insideOf(row);
	const halves = row.flow.map((item): Halves => {
		const { margin, height } = item;
		return margin.top + height <= inside + EASE ? [item, undefined] : split(item, inside - margin.top, false);
	});
	const heads = halves.flatMap(([head]) => (head === undefined ? [] : [head]));
	if (heads.length < row.flow.length) return [undefined, row];
	const [above, below] = piecesOf(row);
	const tails = halves.map(([head, tail]) => tail ?? emptied(head ?? row));
	return [measured({ ...above, flow: heads }), measured({ ...below, flow: tails })];
};

/** Deals a list into columns of a height, and gives what they have no room for. */
const deal = (
	flow: readonly Laid[],
	columns: number,
	room: number,
	force: boolean,
): { readonly lists: readonly (readonly Laid[])[]; readonly rest: readonly Laid[] } => {
	const lists: (readonly Laid[])[] = [];
	let rest = withoutOuterSpace(flow);
	for (let i = 0; i < columns && rest.length > 0; i += 1) {
		const { head, tail } = divide(rest, { room, force });
		lists.push(withoutOuterSpace(head));
		rest = withoutOuterSpace(tail);
	}
	return { lists, rest };
};

/** Least difference of heights that balancing looks for [pt]. */
const BALANCED = 0.5;

/** A box of several columns, all of it on one page: no higher than its columns need, dealt evenly. */
export const balanced = (box: Unmeasured): LaidBox => {
	const columns = box.props.columns ?? 1;
	const whole = stackHeight(box.flow);
	let [low, high] = [whole / columns, whole];
	while (high - low > BALANCED) {
		const middle = (low + high) / 2;
		if (deal(box.flow, columns, middle, false).rest.length === 0) high = middle;
		else low = middle;
	}
	return measured({ ...box, lists: deal(box.flow, columns, high, true).lists });
};

const splitColumns = (box: LaidBox, room: number, force: boolean): Halves => {
	const { lists, rest } = deal(box.flow, box.props.columns ?? 1, room - insideOf(box), force);
	if (lists.every((list) => list.length === 0)) return [undefined, box];
	// Space beneath the last block of a column is cut off at the foot of a page.
	const dealt = (piece: LaidBox): LaidBox => {
		const set = measured({ ...piece, lists });
		return { ...set, height: Math.min(set.height, room) };
	};
	if (rest.length === 0) return [dealt(box), undefined];
	const [above, below] = piecesOf(box);
	return [dealt(above), balanced({ ...below, flow: rest })];
};
