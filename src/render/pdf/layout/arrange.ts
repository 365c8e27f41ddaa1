import { framesDown, isBlank, type Laid, type LaidBox, NO_EDGES, type Placed, roomAcross } from "./laid.ts";
import type { BoxStyle } from "./vocabulary.ts";

/** A box whose height is still to be found. */
export type Unmeasured = Omit<LaidBox, "height">;

const outerHeight = ({ margin, height }: Laid): number => margin.top + height + margin.bottom;
const outerWidth = ({ margin, width }: Laid): number => margin.left + width + margin.right;

/** What is left beside or above something, by how it is to stand. */
const shift = (how: BoxStyle["alignItems"] | BoxStyle["justifyContent"], left: number): number =>
	how === "center" ? left / 2 : how === "flex-end" ? left : 0;

const highest = (flow: readonly Laid[]): number => {
	let most = 0;
	for (const item of flow) most = Math.max(most, outerHeight(item));
	return most;
};

/** Height of blocks that stand below each other. It adds up; no margins collapse. */
export const stackHeight = (flow: readonly Laid[]): number => {
	let sum = 0;
	for (const item of flow) sum += outerHeight(item);
	return sum;
};

/** Gives a box its height: what is inside, or what its style states. */
export const measured = (box: Unmeasured): LaidBox => {
	const { style, flow, arrangement, lists = [] } = box;
	const content =
		arrangement === "row"
			? highest(flow)
			: arrangement === "columns"
				? Math.max(0, ...lists.map(stackHeight))
				: stackHeight(flow);
	return { ...box, height: style.height ?? Math.max(content + framesDown(box), style.minHeight ?? 0) };
};

/** Children beside each other, as high as the row unless they say otherwise. */
const inRow = ({ style, flow }: LaidBox, across: number, down: number): readonly Placed[] => {
	const left = across - flow.reduce((sum, item) => sum + outerWidth(item), 0);
	const parts = flow.length - 1;
	const stated = style.columnGap ?? 0;
	const gap = style.justifyContent === "space-between" && parts > 0 ? left / parts : stated;
	let x = shift(style.justifyContent, left - stated * parts);
	return flow.map((item): Placed => {
		const how = item.style.alignSelf ?? style.alignItems ?? "stretch";
		const room = down - item.margin.top - item.margin.bottom;
		const stretched =
			how === "stretch" && item.kind !== "drawing" && item.height < room ? { ...item, height: room } : item;
		const place = {
			x: x + item.margin.left,
			y: item.margin.top + shift(how, room - stretched.height),
			item: stretched,
		};
		x += outerWidth(item) + gap;
		return place;
	});
};

/** Children below each other. */
const inColumn = (
	flow: readonly Laid[],
	across: number,
	align: BoxStyle["alignItems"],
	x = 0,
): readonly Placed[] => {
	let y = 0;
	return flow.map((item): Placed => {
		const left = across - outerWidth(item);
		const place = {
			x: x + item.margin.left + shift(item.style.alignSelf ?? align, left),
			y: y + item.margin.top,
			item,
		};
		y += outerHeight(item);
		return place;
	});
};

const inColumns = (box: LaidBox, across: number): readonly Placed[] => {
	const { lists = [], style, props } = box;
	const gap = style.columnGap ?? 0;
	const width = columnWidth(across, props.columns ?? 1, gap);
	return lists.flatMap((list, i) => inColumn(list, width, style.alignItems, i * (width + gap)));
};

export const columnWidth = (across: number, columns: number, gap: number): number =>
	(across - gap * (columns - 1)) / columns;

/** A box's children at their places, from its top left corner. */
export const placesIn = (box: LaidBox): readonly Placed[] => {
	const { style, flow, border, padding, arrangement, height } = box;
	const across = roomAcross(box);
	const down = height - framesDown(box);
	const [dx, dy] = [border.left + padding.left, border.top + padding.top];
	const spare =
		arrangement === "column" && style.justifyContent !== undefined
			? shift(style.justifyContent, Math.max(0, down - stackHeight(flow)))
			: 0;
	const places =
		arrangement === "row"
			? inRow(box, across, down)
			: arrangement === "columns"
				? inColumns(box, across)
				: inColumn(flow, across, style.alignItems);
	return places.map(({ x, y, item }) => ({ x: x + dx, y: y + dy + spare, item }));
};

/** Nothing, as wide as something: what is left of a cell that ended on the page before. */
export const emptied = (item: Laid): LaidBox => ({
	kind: "box",
	arrangement: "column",
	props: {},
	style: {},
	width: item.width,
	height: 0,
	margin: { ...NO_EDGES, left: item.margin.left, right: item.margin.right },
	border: NO_EDGES,
	padding: NO_EDGES,
	flow: [],
	again: [],
});

/** Without the space that has come to head a page, or to end it. */
export const withoutOuterSpace = (flow: readonly Laid[]): readonly Laid[] => {
	const first = flow.findIndex((item) => !isBlank(item));
	const last = flow.findLastIndex((item) => !isBlank(item));
	return first === -1 ? [] : first === 0 && last === flow.length - 1 ? flow : flow.slice(first, last + 1);
};
