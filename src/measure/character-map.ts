/**
 * Glyph of each character (code point) in a typeface's character map; 0 where it has none.
 *
 * @source opentype-spec, "cmap": formats 4 and 12
 */
export const characterMap = (data: DataView, table: number): ((codePoint: number) => number) => {
	const subtables = Array.from(
		{ length: data.getUint16(table + 2) },
		(_, i) => table + data.getUint32(table + 4 + 8 * i + 4),
	);
	const whole = subtables.find((at) => data.getUint16(at) === 12);
	const basic = subtables.findLast((at) => data.getUint16(at) === 4);
	const known = new Map<number, number>();
	return (codePoint) => {
		let glyph = known.get(codePoint);
		if (glyph === undefined) {
			glyph =
				whole !== undefined
					? inGroups(data, whole, codePoint)
					: basic !== undefined
						? inSegments(data, basic, codePoint)
						: 0;
			known.set(codePoint, glyph);
		}
		return glyph;
	};
};

const inGroups = (data: DataView, at: number, codePoint: number): number => {
	let [low, high] = [0, data.getUint32(at + 12) - 1];
	while (low <= high) {
		const middle = (low + high) >> 1;
		const group = at + 16 + 12 * middle;
		if (codePoint < data.getUint32(group)) high = middle - 1;
		else if (codePoint > data.getUint32(group + 4)) low = middle + 1;
		else return data.getUint32(group + 8) + codePoint - data.getUint32(group);
	}
	return 0;
};

const inSegments = (data: DataView, at: number, codePoint: number): number => {
	const count = data.getUint16(at + 6) / 2;
	const [ends, starts] = [at + 14, at + 16 + 2 * count];
	for (let i = 0; i < count; i += 1) {
		if (codePoint > data.getUint16(ends + 2 * i)) continue;
		const start = data.getUint16(starts + 2 * i);
		if (codePoint < start) return 0;
		const delta = data.getUint16(starts + 2 * count + 2 * i);
		const place = starts + 4 * count + 2 * i;
		const offset = data.getUint16(place);
		if (offset === 0) return (codePoint + delta) & 0xffff;
		const glyph = data.getUint16(place + offset + 2 * (codePoint - start));
		return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
	}
	return 0;
};
