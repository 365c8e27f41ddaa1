import { Link, Page, Document as Root, Text, View } from "@react-pdf/primitives";
import type { ComponentType, ReactElement, ReactNode } from "react";
import type { Weight } from "../../../measure/faces.ts";
import { FAMILY } from "../../../measure/faces.ts";
import { INK } from "../design.ts";
import type { BoxStyle, FlowProps, Sheet, WordStyle } from "../layout/vocabulary.ts";

export type { BoxStyle, WordStyle };

interface BoxProps extends FlowProps {
	readonly style?: BoxStyle;
	readonly children?: ReactNode;
}
interface WordsProps extends FlowProps {
	readonly style: WordStyle;
	readonly children?: ReactNode;
}

// The library's own types have no place for the properties that carry meaning, and for our page rules.
/** A rectangle. */
export const Box = View as unknown as ComponentType<BoxProps>;
/** A run of text in lines. */
export const Words = Text as unknown as ComponentType<WordsProps>;
/** A link, around boxes or within words. */
export const Go = Link as unknown as ComponentType<WordsProps & { readonly src: string }>;

interface PageProps {
	readonly size: readonly [number, number];
	readonly rules?: Sheet["rules"];
	readonly style: Readonly<Record<string, string | number>>;
	readonly children: ReactNode;
}
const PageOf = Page as unknown as ComponentType<PageProps>;

/** Everything that begins on a new page and runs on from there, on pages of one size. */
export const Pages = ({
	sheet,
	fontSize,
	children,
}: {
	sheet: Sheet;
	fontSize: number;
	children: ReactNode;
}): ReactElement => (
	<PageOf
		size={[sheet.width, sheet.height]}
		{...(sheet.rules === undefined ? {} : { rules: sheet.rules })}
		style={{
			paddingTop: sheet.top,
			paddingBottom: sheet.bottom,
			paddingLeft: sheet.side,
			paddingRight: sheet.side,
			fontFamily: FAMILY,
			fontSize,
			color: INK.text,
		}}
	>
		{children}
	</PageOf>
);

const Whole = Root as unknown as ComponentType<{ readonly children: ReactNode }>;

export { Whole as Root };

/** Space above or below a block, as a box of its own: it heads no page, and at the foot of one it is cut off. */
export const Space = ({ height }: { height: number }): ReactElement => <Box style={{ height }} />;

/** Style of a line of type. */
export const type = (fontSize: number, lineHeight: number, weight: Weight = "regular"): WordStyle => ({
	fontSize,
	lineHeight,
	fontWeight: weight === "regular" ? 400 : weight === "semibold" ? 600 : 700,
});
