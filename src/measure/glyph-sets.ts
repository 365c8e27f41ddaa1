/**
 * The two ways in which a typeface's layout tables name sets of glyphs. Both answer from the file itself, by bisection:
 * nothing is read before it is asked for.
 *
 * @source opentype-spec, "OpenType Layout Common Table Formats": Coverage Table, Class Definition Table
 */

/** Finds the record that holds a glyph among records sorted by their first glyph; `undefined` where none does. */
const findRange = (
	data: DataView,
	at: number,
	count: number,
	size: number,
	glyph: number,
): number | undefined => {
	let [low, high] = [0, count - 1];
	while (low <= high) {
		const middle = (low + high) >> 1;
		const record = at + size * middle;
		if (glyph < data.getUint16(record)) high = middle - 1;
		else if (glyph > data.getUint16(record + (size === 2 ? 0 : 2))) low = middle + 1;
		else return middle;
	}
	return undefined;
};

/** Number of a glyph within a coverage table. */
export const coverageIndex = (data: DataView, at: number, glyph: number): number | undefined => {
	const count = data.getUint16(at + 2);
	if (data.getUint16(at) === 1) return findRange(data, at + 4, count, 2, glyph);
	const range = findRange(data, at + 4, count, 6, glyph);
	if (range === undefined) return undefined;
	const record = at + 4 + 6 * range;
	return data.getUint16(record + 4) + glyph - data.getUint16(record);
};

/** Class of a glyph; 0 for one that the table does not name. */
export const classOf = (data: DataView, at: number, glyph: number): number => {
	if (data.getUint16(at) === 1) {
		const first = data.getUint16(at + 2);
		const within = glyph >= first && glyph < first + data.getUint16(at + 4);
		return within ? data.getUint16(at + 6 + 2 * (glyph - first)) : 0;
	}
	const range = findRange(data, at + 4, data.getUint16(at + 2), 6, glyph);
	return range === undefined ? 0 : data.getUint16(at + 4 + 6 * range + 4);
};
