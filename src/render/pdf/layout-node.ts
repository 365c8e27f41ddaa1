import type { Drawing } from "../../document/shapes.ts";
import type { Tag } from "./tags.ts";

/** Box of a laid-out node, relative to its parent [pt]; widths of edges where it has any. */
export interface Box {
	readonly top: number;
	readonly left: number;
	readonly width: number;
	readonly height: number;
	readonly marginTop?: number;
	readonly paddingTop?: number;
	readonly paddingLeft?: number;
	readonly paddingRight?: number;
	readonly borderTopWidth?: number;
	readonly borderRightWidth?: number;
	readonly borderBottomWidth?: number;
	readonly borderLeftWidth?: number;
}

export interface GlyphPosition {
	readonly xAdvance: number;
}

/** The font a run is set in, as the layout engine's store opened it. */
export interface RunFont {
	/** `STANDARD` for one of the fourteen that every viewer has, which lack most of our signs. */
	readonly type?: string;
	readonly fullName?: string;
}

export interface TextRun {
	readonly start: number;
	readonly end: number;
	readonly xAdvance?: number;
	readonly height?: number;
	readonly descent?: number;
	readonly glyphs?: readonly { readonly id: number; readonly codePoints: readonly number[] }[];
	readonly positions?: readonly GlyphPosition[];
	readonly attributes: { readonly font?: readonly RunFont[]; readonly link?: string | null };
}

export interface TextLine {
	readonly string: string;
	readonly runs: readonly TextRun[];
	readonly box?: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
	readonly xAdvance?: number;
	readonly ascent?: number;
	readonly decorationLines?: readonly unknown[];
}

export interface NodeProps {
	readonly tag?: Tag;
	readonly id?: string;
	readonly src?: string;
	/** The text is the number of the page where this id stands; set when all pages are known. */
	readonly pageOf?: string;
	/** Of an `SVG`: what it draws. */
	readonly drawing?: Drawing;
}

/** A node of the tree that react-pdf's layout gives: the shape this tool relies on. */
export interface LayoutNode {
	readonly type: string;
	/** None on a `TEXT_INSTANCE`. */
	readonly props?: NodeProps;
	readonly style?: Readonly<Record<string, unknown>>;
	readonly box?: Box;
	readonly lines?: readonly TextLine[];
	/** The page ended inside it: its lines are some of its text's. */
	readonly wasSplit?: boolean;
	readonly children?: readonly LayoutNode[];
	/** Of a `TEXT_INSTANCE`. */
	readonly value?: string;
}

/** A laid-out page. */
export interface PageNode extends LayoutNode {
	readonly box: Box;
	readonly children: readonly LayoutNode[];
}

/** The words a node was made from. */
export const sourceText = (node: LayoutNode): string =>
	node.type === "TEXT_INSTANCE" ? (node.value ?? "") : (node.children ?? []).map(sourceText).join("");

const EDGES = ["borderTopWidth", "borderRightWidth", "borderBottomWidth", "borderLeftWidth"] as const;

/** Has a frame or a ground of its own. */
export const isDecorated = (node: LayoutNode): boolean =>
	node.style?.["backgroundColor"] !== undefined || EDGES.some((edge) => (node.box?.[edge] ?? 0) > 0);
