/** The part of fontkit that the tool uses; fontkit ships no declarations. Lengths are font units. */
declare module "fontkit" {
	export interface Glyph {
		readonly id: number;
		readonly advanceWidth: number;
		readonly codePoints: readonly number[];
	}
	export interface GlyphRun {
		readonly glyphs: readonly Glyph[];
		readonly positions?: readonly {
			readonly xAdvance: number;
			readonly yAdvance: number;
			readonly xOffset: number;
			readonly yOffset: number;
		}[];
		readonly advanceWidth: number;
	}
	export interface Subset {
		/** Adds a glyph and answers with its number in the subset. */
		includeGlyph(glyph: number | Glyph): number;
		encode(): Uint8Array;
	}
	export interface Font {
		readonly postscriptName: string;
		readonly familyName: string;
		readonly unitsPerEm: number;
		readonly ascent: number;
		readonly descent: number;
		readonly lineGap: number;
		readonly capHeight: number;
		readonly xHeight: number;
		hasGlyphForCodePoint(codePoint: number): boolean;
		glyphForCodePoint(codePoint: number): Glyph;
		layout(text: string, features?: Readonly<Record<string, boolean>>, script?: string): GlyphRun;
		createSubset(): Subset;
	}
	export function openSync(path: string): Font;
}
