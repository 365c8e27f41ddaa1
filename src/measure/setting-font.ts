import type { Font, Glyph, GlyphRun } from "fontkit";
import type { Face } from "./faces.ts";
import { openFace } from "./open-face.ts";
import { isUnseen, typefaceOf } from "./typeface.ts";

const known = new Map<Face, Font>();

/**
 * The parsed font of a face, whose lines come out as wide as `textWidth` says: its layout is by advances and kerning
 * alone, and each glyph keeps the character that it was set for.
 */
export const settingFont = (face: Face): Font => {
	const before = known.get(face);
	if (before !== undefined) return before;
	const { glyphOf, advanceOf, kerning } = typefaceOf(face);
	const layout = (text: string): GlyphRun => {
		const glyphs: Glyph[] = [];
		const positions: { xAdvance: number; yAdvance: number; xOffset: number; yOffset: number }[] = [];
		let advanceWidth = 0;
		let left = -1;
		for (const character of text) {
			const codePoint = character.codePointAt(0) ?? 0;
			if (isUnseen(codePoint)) {
				left = -1;
				continue;
			}
			const id = glyphOf(codePoint);
			const advance = advanceOf(id);
			const pair = left === -1 ? 0 : kerning(left, id);
			const before = positions.at(-1);
			if (before !== undefined) before.xAdvance += pair;
			glyphs.push({ id, advanceWidth: advance, codePoints: [codePoint] });
			positions.push({ xAdvance: advance, yAdvance: 0, xOffset: 0, yOffset: 0 });
			advanceWidth += advance + pair;
			left = id;
		}
		return { glyphs, positions, advanceWidth };
	};
	const font: Font = Object.assign(Object.create(openFace(face)), { layout });
	known.set(face, font);
	return font;
};
