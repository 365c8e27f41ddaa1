import type { Drawing } from "../../../document/shapes.ts";
import type { Tag } from "../tags.ts";

/*
 * What the components may say of a box, a text or a page: the primitives of react-pdf, as far as the papers use them,
 * and a few properties of our own that its renderer passes over. Lengths are points.
 */

export type Length = number | `${number}%`;

export interface BoxStyle {
	/** In a row, a box without a width takes its share of what the others leave. */
	readonly width?: Length;
	readonly minHeight?: number;
	/** Exactly so high, whatever is inside; what does not fit is a fault that the audit finds. */
	readonly height?: number;
	readonly flexDirection?: "row" | "column";
	readonly columnGap?: number;
	/** Share of the width that is left in a row; 1 for a box that states neither this nor a width. */
	readonly flexGrow?: number;
	readonly alignItems?: "flex-start" | "flex-end" | "center" | "stretch";
	readonly alignSelf?: "flex-start" | "flex-end" | "center";
	/** Along the row; in a column of a stated height, down it. */
	readonly justifyContent?: "space-between" | "flex-end" | "center";
	readonly marginTop?: number;
	readonly marginBottom?: number;
	readonly marginLeft?: number;
	readonly marginRight?: number;
	readonly paddingTop?: number;
	readonly paddingBottom?: number;
	readonly paddingLeft?: number;
	readonly paddingRight?: number;
	readonly borderColor?: string;
	/** A dashed frame has four sides of one width. */
	readonly borderStyle?: "solid" | "dashed";
	readonly borderTopWidth?: number;
	readonly borderRightWidth?: number;
	readonly borderBottomWidth?: number;
	readonly borderLeftWidth?: number;
	readonly backgroundColor?: string;
}

export interface WordStyle extends BoxStyle {
	readonly fontSize?: number;
	/** Multiple of the size; react-pdf multiplies that of the same style, so both stand together. */
	readonly lineHeight?: number;
	readonly fontWeight?: 400 | 600 | 700;
	readonly fontStyle?: "italic";
	readonly textAlign?: "left" | "right" | "center";
	readonly color?: string;
	readonly textDecoration?: "none" | "underline";
}

/** What a page may do with a block, and what the block means. */
export interface FlowProps {
	readonly tag?: Tag;
	readonly id?: string;
	/** Of a link. */
	readonly src?: string;
	/** Of words within a text: their language, where it is another than the paper's. */
	readonly lang?: "en" | "es";
	/** The text is the number of the page on which this id stands; set when all pages are known. */
	readonly pageOf?: string;
	/** Of a drawing: what it draws. */
	readonly drawing?: Drawing;
	/** Repeats at the top of each page that its parent runs over. */
	readonly fixed?: boolean;
	/** Of what repeats: stands on the pages after the first alone, as the word *continued* does. */
	readonly onlyAgain?: boolean;
	/** `false`: never divided over pages. */
	readonly wrap?: boolean;
	/** Begins a page. */
	readonly break?: boolean;
	/** A page does not end between this block and the next. */
	readonly withNext?: boolean;
	/** A page does not end between this block and the one before. */
	readonly withPrevious?: boolean;
	/** Of a box: so many of its children stand at least on the first page it is divided over, and on the last. */
	readonly least?: Least;
	/** Of a box: its children run down so many columns of one width, as high as each other on the last page. */
	readonly columns?: number;
}

export interface Least {
	readonly first: number;
	readonly last: number;
}

/** A page to set on. */
export interface Sheet {
	readonly width: number;
	readonly height: number;
	readonly top: number;
	readonly bottom: number;
	/** Margins at the left and the right. */
	readonly side: number;
	/** Rules that part head and foot from the text: from the top of the page and from its bottom. */
	readonly rules?: { readonly head: number; readonly foot: number };
}
