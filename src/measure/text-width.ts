import { faceFor, NO_LIGATURES, type Weight } from "./faces.ts";

export type { Weight };

import { openFace } from "./open-face.ts";

export interface TextStyle {
	/** Type size [pt] */
	readonly size: number;
	readonly weight?: Weight;
	readonly italic?: boolean;
}

/** Heights of a face at a size, from the baseline [pt]; `descent` is positive downward. */
export interface FontMetrics {
	readonly ascent: number;
	readonly descent: number;
	readonly lineHeight: number;
	readonly capHeight: number;
	readonly xHeight: number;
}

const advances = new Map<string, number>();
const REMEMBERED = 20_000;

/** Advance width of a line of text [pt], with the kerning that the PDF is set with, and no ligatures. */
export const textWidth = (text: string, style: TextStyle): number => {
	const face = faceFor(style.weight, style.italic);
	const key = `${face.css}${face.italic ? "i" : ""} ${text}`;
	let perPoint = advances.get(key);
	if (perPoint === undefined) {
		const font = openFace(face);
		perPoint = font.layout(text, NO_LIGATURES).advanceWidth / font.unitsPerEm;
		if (advances.size >= REMEMBERED) advances.clear();
		advances.set(key, perPoint);
	}
	return perPoint * style.size;
};

export const fontMetrics = (style: TextStyle): FontMetrics => {
	const font = openFace(faceFor(style.weight, style.italic));
	const scale = style.size / font.unitsPerEm;
	return {
		ascent: font.ascent * scale,
		descent: -font.descent * scale,
		lineHeight: (font.ascent - font.descent + font.lineGap) * scale,
		capHeight: font.capHeight * scale,
		xHeight: font.xHeight * scale,
	};
};

/** Characters of a text that the family has no glyph for, each once, in order of appearance. */
export const missingGlyphs = (text: string, weight?: Weight, italic?: boolean): readonly string[] => {
	const font = openFace(faceFor(weight, italic));
	return [...new Set(text)].filter(
		(character) => character !== "\n" && !font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0),
	);
};

export const hasGlyphs = (text: string, weight?: Weight, italic?: boolean): boolean =>
	missingGlyphs(text, weight, italic).length === 0;
