import { columnWidth, measured, type Unmeasured } from "./arrange.ts";
import { balanced } from "./divide.ts";
import { type Element, type ElementProps, elementsIn } from "./elements.ts";
import { type Edges, framesDown, type Laid, type LaidDrawing, type LaidText, roomAcross } from "./laid.ts";
import { breakLines } from "./lines.ts";
import type { Length, WordStyle } from "./vocabulary.ts";
import { inherited, runStyle, type TextState, wordsOf } from "./words.ts";

const edges = (top = 0, right = 0, bottom = 0, left = 0): Edges => ({ top, right, bottom, left });

const marginOf = (style: WordStyle): Edges =>
	edges(style.marginTop, style.marginRight, style.marginBottom, style.marginLeft);

const lengthIn = (length: Length, room: number): number =>
	typeof length === "number" ? length : (Number.parseFloat(length) / 100) * room;

/** Width that an element states, or that its drawing has. */
const statedWidth = ({ style = {}, drawing }: ElementProps, room: number): number | undefined =>
	style.width !== undefined ? lengthIn(style.width, room) : drawing?.width;

/** Widths of the children of a row: as stated, and of the rest each its share of what is left. */
const widthsInRow = (children: readonly Element[], across: number, gap: number): readonly number[] => {
	const stated = children.map(({ props }) => statedWidth(props, across));
	const margins = children.map(
		({ props: { style = {} } }) => (style.marginLeft ?? 0) + (style.marginRight ?? 0),
	);
	const taken = [...stated, ...margins].reduce<number>((sum, width) => sum + (width ?? 0), 0);
	const left = Math.max(0, across - taken - gap * (children.length - 1));
	const grows = children.map(({ props }, i) => (stated[i] === undefined ? (props.style?.flexGrow ?? 1) : 0));
	const shares = grows.reduce((sum, share) => sum + share, 0);
	return stated.map((width, i) => width ?? (left * (grows[i] ?? 0)) / (shares === 0 ? 1 : shares));
};

type Frame = Pick<Unmeasured, "props" | "style" | "width" | "margin" | "border" | "padding">;

const frameOf = ({ props }: Element, width: number): Frame => {
	const { style = {}, children: _, ...rest } = props;
	return {
		props: rest,
		style,
		width,
		margin: marginOf(style),
		border: edges(
			style.borderTopWidth,
			style.borderRightWidth,
			style.borderBottomWidth,
			style.borderLeftWidth,
		),
		padding: edges(style.paddingTop, style.paddingRight, style.paddingBottom, style.paddingLeft),
	};
};

const layText = (element: Element, frame: Frame, state: TextState): LaidText => {
	const { words, source } = wordsOf(element.props.children, state);
	const room = roomAcross(frame);
	const lineHeight = state.size * state.leading;
	const { typeface } = runStyle(state);
	const slack = (width: number): number =>
		state.align === "right" ? room - width : state.align === "center" ? (room - width) / 2 : 0;
	const lines = breakLines(words, room).map((line) => ({ ...line, x: slack(line.width) }));
	const content = lines.length * lineHeight + framesDown(frame);
	return {
		kind: "text",
		...frame,
		lines,
		lineHeight,
		ascent: (typeface.ascent / typeface.unitsPerEm) * state.size,
		size: state.size,
		source,
		height: frame.style.height ?? Math.max(content, frame.style.minHeight ?? 0),
	};
};

/**
 * Gives an element, and all within it, its size: widths on the way down, lines and heights on the way up.
 *
 * @param width of its own, frame included [pt]; the room it stands in where absent
 */
export const lay = (element: Element, room: number, state: TextState, width?: number): Laid => {
	const { style = {}, drawing, columns } = element.props;
	const margin = marginOf(style);
	const own = width ?? statedWidth(element.props, room) ?? room - margin.left - margin.right;
	const frame = frameOf(element, own);
	const inside = inherited(state, style);
	if (drawing !== undefined) {
		const laid: LaidDrawing = { kind: "drawing", ...frame, drawing, height: drawing.height };
		return laid;
	}
	if (element.type === "TEXT") return layText(element, frame, inside);
	const children = elementsIn(element.props.children);
	const across = roomAcross(frame);
	const gap = style.columnGap ?? 0;
	const row = style.flexDirection === "row";
	const widths = row ? widthsInRow(children, across, gap) : [];
	const column = columns === undefined ? across : columnWidth(across, columns, gap);
	const laid = children.map((child, i) => lay(child, column, inside, widths[i]));
	const again = laid.filter(({ props }) => props.fixed === true);
	const flow = again.length === 0 ? laid : laid.filter(({ props }) => props.onlyAgain !== true);
	const box: Unmeasured = {
		kind: "box",
		...frame,
		arrangement: columns !== undefined ? "columns" : row ? "row" : "column",
		flow,
		again,
	};
	return columns === undefined ? measured(box) : balanced(box);
};
