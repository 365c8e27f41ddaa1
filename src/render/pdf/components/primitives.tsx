import { Link, Page, Document as Root, Text, View } from "@react-pdf/renderer";
import type { ComponentType, ReactElement, ReactNode } from "react";
import type { Weight } from "../../../measure/faces.ts";
import { FAMILY } from "../../../measure/faces.ts";
import { INK, PAGE } from "../design.ts";
import type { NodeProps } from "../layout-node.ts";

type Length = number | `${number}%`;

/** The few style properties the papers are made with. */
export interface BoxStyle {
	readonly width?: Length;
	readonly minHeight?: number;
	/** Of a box without words only: words in one too low for them are lost without a sound. */
	readonly height?: number;
	readonly flexDirection?: "row" | "column";
	readonly columnGap?: number;
	readonly flexGrow?: number;
	readonly alignItems?: "flex-start" | "flex-end" | "center" | "stretch";
	readonly alignSelf?: "flex-start" | "flex-end" | "center";
	readonly justifyContent?: "space-between" | "flex-end" | "center";
	readonly marginTop?: number;
	readonly marginBottom?: number;
	readonly marginLeft?: number;
	readonly paddingTop?: number;
	readonly paddingBottom?: number;
	readonly paddingLeft?: number;
	readonly paddingRight?: number;
	readonly borderColor?: string;
	readonly borderStyle?: "solid" | "dashed";
	readonly borderTopWidth?: number;
	readonly borderRightWidth?: number;
	readonly borderBottomWidth?: number;
	readonly borderLeftWidth?: number;
	readonly backgroundColor?: string;
}

export interface WordStyle extends BoxStyle {
	readonly fontSize?: number;
	readonly lineHeight?: number;
	readonly fontWeight?: 400 | 600 | 700;
	readonly fontStyle?: "italic";
	readonly textAlign?: "left" | "right" | "center";
	readonly color?: string;
	readonly textDecoration?: "none" | "underline";
}

interface FlowProps extends NodeProps {
	/** Repeats at the top of each page its parent runs over. */
	readonly fixed?: boolean;
	/** `false`: never split over pages. */
	readonly wrap?: boolean;
	/** No page break within this many points below it. */
	readonly minPresenceAhead?: number;
	readonly break?: boolean;
	readonly children?: ReactNode;
}

interface BoxProps extends FlowProps {
	readonly style?: BoxStyle;
}
interface WordsProps extends FlowProps {
	readonly style: WordStyle;
}

// The library's own types have no place for the properties that carry meaning through its layout.
/** A rectangle. */
export const Box = View as unknown as ComponentType<BoxProps>;
/** A run of text in lines. `fontSize` must stand beside every `lineHeight`: the engine multiplies that style's own size. */
export const Words = Text as unknown as ComponentType<WordsProps>;
/** A link, around boxes or within words. */
export const Go = Link as unknown as ComponentType<WordsProps & { readonly src: string }>;

interface SheetProps {
	readonly size: readonly [number, number];
	readonly experimentalPagination: true;
	readonly style: Readonly<Record<string, string | number>>;
	readonly children: ReactNode;
}
const Sheet = Page as unknown as ComponentType<SheetProps>;

/** Everything that begins on a new page and runs on from there. */
export const Pages = ({ fontSize, children }: { fontSize: number; children: ReactNode }): ReactElement => (
	<Sheet
		size={[PAGE.width, PAGE.height]}
		experimentalPagination
		style={{
			paddingTop: PAGE.top,
			paddingBottom: PAGE.bottom,
			paddingLeft: PAGE.side,
			paddingRight: PAGE.side,
			fontFamily: FAMILY,
			fontSize,
			color: INK.text,
		}}
	>
		{children}
	</Sheet>
);

export { Root };

/**
 * Space above or below a block, as a box of its own, for which no page keeps room at its head (`tidyPages`). As a margin
 * below a block that may not be parted it would take the block along to the next page where it alone does not fit, and
 * a table would repeat its head there over nothing. Its height is fixed: of a least height that is parted the engine
 * counts the rest on the next page, but lays the whole there, and presses the page together.
 */
export const Space = ({ height }: { height: number }): ReactElement => <Box style={{ height }} />;

/** Style of a line of type. */
export const type = (fontSize: number, lineHeight: number, weight: Weight = "regular"): WordStyle => ({
	fontSize,
	lineHeight,
	fontWeight: weight === "regular" ? 400 : weight === "semibold" ? 600 : 700,
});
