import { FAMILY, type Face, fontBytes } from "./faces.ts";
import { openFace } from "./open-face.ts";
import { readTables, writeTables } from "./sfnt.ts";
import { typefaceOf } from "./typeface.ts";

type Words = readonly (readonly ["u16" | "i16" | "u32", number])[];

const pack = (words: Words): Uint8Array => {
	const out = new Uint8Array(words.reduce((sum, [kind]) => sum + (kind === "u32" ? 4 : 2), 0));
	const data = new DataView(out.buffer);
	let at = 0;
	for (const [kind, value] of words) {
		if (kind === "u32") data.setUint32(at, value);
		else if (kind === "i16") data.setInt16(at, value);
		else data.setUint16(at, value);
		at += kind === "u32" ? 4 : 2;
	}
	return out;
};

/** Character map, format 12: one group a character. */
const characterMap = (glyphOf: ReadonlyMap<number, number>): Uint8Array => {
	const points = [...glyphOf.keys()].sort((a, b) => a - b);
	return pack([
		["u16", 0],
		["u16", 1],
		["u16", 3],
		["u16", 10],
		["u32", 12],
		["u16", 12],
		["u16", 0],
		["u32", 16 + 12 * points.length],
		["u32", 0],
		["u32", points.length],
		...points.flatMap(
			(point): Words => [
				["u32", point],
				["u32", point],
				["u32", glyphOf.get(point) ?? 0],
			],
		),
	]);
};

/** Pair kerning, format 0, for the pairs that occur. */
const kerning = (pairs: ReadonlyMap<number, number>): Uint8Array => {
	const keys = [...pairs.keys()].sort((a, b) => a - b);
	const power = keys.length === 0 ? 0 : 2 ** Math.floor(Math.log2(keys.length));
	return pack([
		["u16", 0],
		["u16", 1],
		["u16", 0],
		["u16", 14 + 6 * keys.length],
		["u16", 1],
		["u16", keys.length],
		["u16", power * 6],
		["u16", power === 0 ? 0 : Math.log2(power)],
		["u16", (keys.length - power) * 6],
		...keys.flatMap(
			(key): Words => [
				["u32", key],
				["i16", pairs.get(key) ?? 0],
			],
		),
	]);
};

/** Family name alone (name id 1, Windows, Unicode, US English). */
const names = (family: string): Uint8Array => {
	const entries = [1, 4, 6].map((id) => ({
		id,
		text: id === 6 ? family.replaceAll(" ", "") : family,
	}));
	let offset = 0;
	const records = entries.flatMap(({ id, text }): Words => {
		const record: Words = [
			["u16", 3],
			["u16", 1],
			["u16", 0x409],
			["u16", id],
			["u16", text.length * 2],
			["u16", offset],
		];
		offset += text.length * 2;
		return record;
	});
	const text = entries.flatMap((entry) => [...entry.text].map((c) => ["u16", c.charCodeAt(0)] as const));
	return pack([["u16", 0], ["u16", entries.length], ["u16", 6 + 12 * entries.length], ...records, ...text]);
};

/** `post` table of version 3: no glyph names. */
const NO_GLYPH_NAMES = pack([
	["u32", 0x00030000],
	["u32", 0],
	["u32", 0],
	...Array.from({ length: 5 }, () => ["u32", 0] as const),
]);

/**
 * A stand-alone TrueType font of only the characters that occur in `texts`, for embedding in an SVG file. It has no
 * ligatures; the pairs that occur are kerned, so that a line comes out as wide as `textWidth` says.
 */
export const fontSubset = (face: Face, texts: Iterable<string>): Uint8Array => {
	const typeface = typefaceOf(face);
	const subset = openFace(face).createSubset();
	const glyphOf = new Map<number, number>();
	const pairs = new Map<number, number>();
	const place = (point: number): number => {
		const known = glyphOf.get(point);
		if (known !== undefined) return known;
		const glyph = subset.includeGlyph(typeface.glyphOf(point));
		glyphOf.set(point, glyph);
		return glyph;
	};
	for (const text of new Set(texts)) {
		const points = [...text].map((character) => character.codePointAt(0) ?? 0).filter((p) => p >= 0x20);
		for (const [i, point] of points.entries()) {
			const left = place(point);
			const next = points[i + 1];
			if (next === undefined) continue;
			const key = left * 0x10000 + place(next);
			if (pairs.has(key)) continue;
			pairs.set(key, typeface.kerning(typeface.glyphOf(point), typeface.glyphOf(next)));
		}
	}
	for (const [key, adjustment] of pairs) if (adjustment === 0) pairs.delete(key);
	const whole = readTables(fontBytes(face));
	const tables = new Map(readTables(subset.encode()));
	tables.set("cmap", characterMap(glyphOf));
	if (pairs.size > 0) tables.set("kern", kerning(pairs));
	tables.set("name", names(FAMILY));
	tables.set("post", NO_GLYPH_NAMES);
	const os2 = whole.get("OS/2");
	if (os2 !== undefined) tables.set("OS/2", os2);
	return writeTables(tables);
};
