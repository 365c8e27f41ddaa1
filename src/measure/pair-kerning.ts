import { classOf, coverageIndex } from "./glyph-sets.ts";

/** Adjustment of a pair [font units], or `undefined` where the table has nothing to say of it. */
type Pairs = (left: number, right: number) => number | undefined;

/** Kinds of lookups in the positioning table. */
const PAIR = 2;
const EXTENSION = 9;
/** Bit of a value record that says that it holds a horizontal advance. */
const ADVANCE = 4;

const bits = (format: number): number => {
	let count = 0;
	for (let rest = format; rest > 0; rest &= rest - 1) count += 1;
	return count;
};

const pairsAt = (data: DataView, at: number): Pairs | undefined => {
	const coverage = at + data.getUint16(at + 2);
	const [format, other] = [data.getUint16(at + 4), data.getUint16(at + 6)];
	const [size, otherSize] = [2 * bits(format), 2 * bits(other)];
	// In the record, what moves a glyph stands before what widens it.
	const before = 2 * bits(format & (ADVANCE - 1));
	const advanceAt = (record: number): number =>
		(format & ADVANCE) === 0 ? 0 : data.getInt16(record + before);
	switch (data.getUint16(at)) {
		case 1:
			return (left, right) => {
				const index = coverageIndex(data, coverage, left);
				if (index === undefined) return undefined;
				const set = at + data.getUint16(at + 10 + 2 * index);
				let [low, high] = [0, data.getUint16(set) - 1];
				while (low <= high) {
					const middle = (low + high) >> 1;
					const record = set + 2 + middle * (2 + size + otherSize);
					const second = data.getUint16(record);
					if (second === right) return advanceAt(record + 2);
					if (second < right) low = middle + 1;
					else high = middle - 1;
				}
				return undefined;
			};
		case 2: {
			const [first, second] = [at + data.getUint16(at + 8), at + data.getUint16(at + 10)];
			const columns = data.getUint16(at + 14);
			return (left, right) => {
				if (coverageIndex(data, coverage, left) === undefined) return undefined;
				const cell = classOf(data, first, left) * columns + classOf(data, second, right);
				return advanceAt(at + 16 + cell * (size + otherSize));
			};
		}
		default:
			return undefined;
	}
};

const tagAt = (data: DataView, at: number): string =>
	String.fromCharCode(...[0, 1, 2, 3].map((i) => data.getUint8(at + i)));

/** Lookups that the feature `kern` uses, of whatever script, in the order in which they apply. */
const kernLookups = (data: DataView, table: number): readonly number[] => {
	const features = table + data.getUint16(table + 6);
	const lookups = new Set<number>();
	for (let i = 0; i < data.getUint16(features); i += 1) {
		const record = features + 2 + 6 * i;
		if (tagAt(data, record) !== "kern") continue;
		const feature = features + data.getUint16(record + 4);
		for (let n = 0; n < data.getUint16(feature + 2); n += 1) lookups.add(data.getUint16(feature + 4 + 2 * n));
	}
	return [...lookups].sort((a, b) => a - b);
};

const subtablesOf = (data: DataView, lookup: number): readonly Pairs[] => {
	const subtables: Pairs[] = [];
	for (let i = 0; i < data.getUint16(lookup + 4); i += 1) {
		let at = lookup + data.getUint16(lookup + 6 + 2 * i);
		let kind = data.getUint16(lookup);
		if (kind === EXTENSION) {
			kind = data.getUint16(at + 2);
			at += data.getUint32(at + 4);
		}
		const pairs = kind === PAIR ? pairsAt(data, at) : undefined;
		if (pairs !== undefined) subtables.push(pairs);
	}
	return subtables;
};

/**
 * Kerning of pairs of glyphs [font units], as the feature `kern` of a positioning table has it: of each lookup the first
 * subtable that knows the pair.
 *
 * @source opentype-spec, "GPOS": Lookup types 2 and 9
 */
export const pairKerning = (data: DataView, table: number): ((left: number, right: number) => number) => {
	const list = table + data.getUint16(table + 8);
	const lookups = kernLookups(data, table).map((index) =>
		subtablesOf(data, list + data.getUint16(list + 2 + 2 * index)),
	);
	const known = new Map<number, number>();
	return (left, right) => {
		const key = left * 0x10000 + right;
		const before = known.get(key);
		if (before !== undefined) return before;
		let sum = 0;
		for (const subtables of lookups) {
			for (const pairs of subtables) {
				const value = pairs(left, right);
				if (value === undefined) continue;
				sum += value;
				break;
			}
		}
		known.set(key, sum);
		return sum;
	};
};
