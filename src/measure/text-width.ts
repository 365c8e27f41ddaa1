import { faceFor, type Weight } from "./faces.ts";
import { isUnseen, typefaceOf } from "./typeface.ts";

export type { Weight };

export interface TextStyle {
	/** Type size [pt] */
	readonly size: number;
	readonly weight?: Weight;
	readonly italic?: boolean;
}

/** Heights of a face at a size, from the baseline [pt]; `descent` is positive downward. */
interface FontMetrics {
	readonly ascent: number;
	readonly descent: number;
	readonly lineHeight: number;
	readonly capHeight: number;
	readonly xHeight: number;
}

/** Advance width of a line of text [pt], with the kerning that the PDF is set with, and no ligatures. */
export const textWidth = (text: string, style: TextStyle): number => {
	const typeface = typefaceOf(faceFor(style.weight, style.italic));
	return (typeface.widthOf(text) / typeface.unitsPerEm) * style.size;
};

export const fontMetrics = (style: TextStyle): FontMetrics => {
	const typeface = typefaceOf(faceFor(style.weight, style.italic));
	const scale = style.size / typeface.unitsPerEm;
	return {
		ascent: typeface.ascent * scale,
		descent: -typeface.descent * scale,
		lineHeight: (typeface.ascent - typeface.descent + typeface.lineGap) * scale,
		capHeight: typeface.capHeight * scale,
		xHeight: typeface.xHeight * scale,
	};
};

/** Characters of a text that the family has no glyph for, each once, in order of appearance. */
export const missingGlyphs = (text: string, weight?: Weight, italic?: boolean): readonly string[] => {
	const { glyphOf } = typefaceOf(faceFor(weight, italic));
	const lacks = (character: string): boolean => {
		const codePoint = character.codePointAt(0) ?? 0;
		return !isUnseen(codePoint) && glyphOf(codePoint) === 0;
	};
	for (const character of text) if (lacks(character)) return [...new Set(text)].filter(lacks);
	return [];
};

export const hasGlyphs = (text: string, weight?: Weight, italic?: boolean): boolean =>
	missingGlyphs(text, weight, italic).length === 0;
