import type { Drawing } from "../../../document/shapes.ts";
import type { Typeface } from "../../../measure/typeface.ts";
import type { BoxStyle, FlowProps, Sheet } from "./vocabulary.ts";

/** Widths of four edges [pt]. */
export interface Edges {
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
	readonly left: number;
}

interface Common {
	/** The same object on every piece of a block that pages divide. */
	readonly props: FlowProps;
	readonly style: BoxStyle;
	/** With padding and border, without margin [pt]. */
	readonly width: number;
	readonly height: number;
	readonly margin: Edges;
	readonly border: Edges;
	readonly padding: Edges;
}

/** How the children of a box stand: below each other, beside each other, or down several columns. */
type Arrangement = "column" | "row" | "columns";

export interface LaidBox extends Common {
	readonly kind: "box";
	readonly arrangement: Arrangement;
	/** Its children, in order; they are placed when they are asked for (`placesIn`). */
	readonly flow: readonly Laid[];
	/** Of `columns`: what stands in each. */
	readonly lists?: readonly (readonly Laid[])[];
	/** What heads each further page that the box runs over. */
	readonly again: readonly Laid[];
}

export interface LaidText extends Common {
	readonly kind: "text";
	readonly lines: readonly Line[];
	/** Baseline to baseline, and the first baseline below the top of the text [pt]. */
	readonly lineHeight: number;
	readonly ascent: number;
	readonly size: number;
	/** The words that the whole text was made from, on however many pages it stands. */
	readonly source: string;
	/** Its lines are some of its text's: the others stand on other pages. */
	readonly piece?: true;
}

export interface LaidDrawing extends Common {
	readonly kind: "drawing";
	readonly drawing: Drawing;
}

/** A block whose size is known. */
export type Laid = LaidBox | LaidText | LaidDrawing;

/** A block at its place, from the top left corner of what it stands in [pt]. */
export interface Placed {
	readonly x: number;
	readonly y: number;
	readonly item: Laid;
}

/** How a run of text looks. */
export interface RunStyle {
	readonly typeface: Typeface;
	readonly size: number;
	readonly color: string;
	readonly underline: boolean;
	/** Where it leads. */
	readonly link?: string;
	/** The language of the words, where it is another than the paper's. */
	readonly lang?: "en" | "es";
}

/** Text of one style on one line; `x` from the beginning of the line. */
export interface Run {
	readonly text: string;
	readonly style: RunStyle;
	readonly x: number;
	readonly width: number;
	/** Width as a share of what the typeface has: 1, or a little less where a word more then fits on the line. */
	readonly narrowed: number;
}

/** `x` from the left of the text's room; `width` without the space that parts it from the next line. */
export interface Line {
	readonly runs: readonly Run[];
	readonly x: number;
	readonly width: number;
}

export interface LaidPage {
	readonly sheet: Sheet;
	readonly children: readonly Placed[];
}

export const lineText = (line: Line): string => line.runs.map(({ text }) => text).join("");

export const NO_EDGES: Edges = { top: 0, right: 0, bottom: 0, left: 0 };

export const isFramed = ({ border }: Laid): boolean =>
	border.top + border.right + border.bottom + border.left > 0;

/** Has a frame or a ground of its own. */
export const isDecorated = (item: Laid): boolean =>
	item.style.backgroundColor !== undefined || isFramed(item);

/** Nothing of it prints: space, or a mark that a page begins. */
export const isBlank = (item: Laid): boolean =>
	item.kind === "box" && item.flow.length === 0 && !isDecorated(item);

/** Room for what is inside, across [pt]. */
export const roomAcross = ({
	width,
	border,
	padding,
}: Pick<Common, "width" | "border" | "padding">): number =>
	width - border.left - padding.left - padding.right - border.right;

/** Height of frames and padding above and below [pt]. */
export const framesDown = ({ border, padding }: Pick<Common, "border" | "padding">): number =>
	border.top + padding.top + padding.bottom + border.bottom;
