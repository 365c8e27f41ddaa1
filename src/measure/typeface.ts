import { characterMap } from "./character-map.ts";
import { type Face, fontBytes } from "./faces.ts";
import { pairKerning } from "./pair-kerning.ts";

/** What a face says of itself, read straight from its TrueType tables. Lengths are font units. */
export interface Typeface {
	readonly face: Face;
	readonly unitsPerEm: number;
	readonly ascent: number;
	/** Negative: below the baseline. */
	readonly descent: number;
	readonly lineGap: number;
	readonly capHeight: number;
	readonly xHeight: number;
	/** 0 for a character that the face lacks. */
	readonly glyphOf: (codePoint: number) => number;
	readonly advanceOf: (glyph: number) => number;
	readonly kerning: (left: number, right: number) => number;
	/** Advance of a line of text, kerned, without ligatures. */
	readonly widthOf: (text: string) => number;
}

/**
 * Characters that are never shown and take no room: controls, the soft hyphen, joiners, marks of direction. They part
 * the pair that they stand between.
 */
export const isUnseen = (codePoint: number): boolean =>
	codePoint < 0x20 ||
	codePoint === 0xad ||
	(codePoint >= 0x200b && codePoint <= 0x200f) ||
	(codePoint >= 0x202a && codePoint <= 0x202e) ||
	(codePoint >= 0x2060 && codePoint <= 0x206f) ||
	codePoint === 0xfeff;

const REMEMBERED = 20_000;

/** @source opentype-spec: head, hhea, hmtx, OS/2 */
const read = (face: Face): Typeface => {
	const bytes = fontBytes(face);
	const data = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	const tables = new Map<string, number>();
	for (let i = 0; i < data.getUint16(4); i += 1) {
		const record = 12 + 16 * i;
		tables.set(String.fromCharCode(...bytes.subarray(record, record + 4)), data.getUint32(record + 8));
	}
	const table = (name: string): number => {
		const at = tables.get(name);
		if (at === undefined) throw new Error(`${face.path} has no table "${name}"`);
		return at;
	};
	const [head, hhea, hmtx, os2] = [table("head"), table("hhea"), table("hmtx"), table("OS/2")];
	const glyphOf = characterMap(data, table("cmap"));
	// Glyphs behind the last stated advance all have that one.
	const last = data.getUint16(hhea + 34) - 1;
	const advanceOf = (glyph: number): number => data.getUint16(hmtx + 4 * Math.min(glyph, last));
	let kerned: ((left: number, right: number) => number) | undefined;
	const kerning = (left: number, right: number): number => {
		kerned ??= pairKerning(data, table("GPOS"));
		return kerned(left, right);
	};
	const widths = new Map<string, number>();
	const widthOf = (text: string): number => {
		const known = widths.get(text);
		if (known !== undefined) return known;
		let width = 0;
		let before = -1;
		for (const character of text) {
			const codePoint = character.codePointAt(0) ?? 0;
			if (isUnseen(codePoint)) {
				before = -1;
				continue;
			}
			const glyph = glyphOf(codePoint);
			width += advanceOf(glyph) + (before === -1 ? 0 : kerning(before, glyph));
			before = glyph;
		}
		if (widths.size >= REMEMBERED) widths.clear();
		widths.set(text, width);
		return width;
	};
	return {
		face,
		unitsPerEm: data.getUint16(head + 18),
		ascent: data.getInt16(hhea + 4),
		descent: data.getInt16(hhea + 6),
		lineGap: data.getInt16(hhea + 8),
		capHeight: data.getInt16(os2 + 88),
		xHeight: data.getInt16(os2 + 86),
		glyphOf,
		advanceOf,
		kerning,
		widthOf,
	};
};

const opened = new Map<Face, Typeface>();

/** The typeface of a face, read once. */
export const typefaceOf = (face: Face): Typeface => {
	const known = opened.get(face);
	if (known !== undefined) return known;
	const typeface = read(face);
	opened.set(face, typeface);
	return typeface;
};
