/**
 * TrueType container: a directory of named tables.
 *
 * @source opentype-spec, "Organization of an OpenType Font" and "Calculating Checksums"
 */
type FontTables = ReadonlyMap<string, Uint8Array>;

const HEADER = 12;
const RECORD = 16;
const view = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
const padded = (length: number): number => (length + 3) & ~3;

export const readTables = (font: Uint8Array): FontTables => {
	const data = view(font);
	const tables = new Map<string, Uint8Array>();
	for (let i = 0; i < data.getUint16(4); i += 1) {
		const record = HEADER + i * RECORD;
		const name = String.fromCharCode(...font.subarray(record, record + 4));
		const offset = data.getUint32(record + 8);
		tables.set(name, font.slice(offset, offset + data.getUint32(record + 12)));
	}
	return tables;
};

/** Sum of a table's 32-bit words, modulo 2³². */
const checksum = (bytes: Uint8Array): number => {
	const whole = new Uint8Array(padded(bytes.length));
	whole.set(bytes);
	const data = view(whole);
	let sum = 0;
	for (let at = 0; at < whole.length; at += 4) sum = (sum + data.getUint32(at)) >>> 0;
	return sum;
};

/** Whole-file checksum that `head.checkSumAdjustment` makes up. */
const MAGIC = 0xb1b0afba;

export const writeTables = (tables: FontTables): Uint8Array => {
	const names = [...tables.keys()].sort();
	const count = names.length;
	const size = names.reduce(
		(sum, name) => sum + padded(tables.get(name)?.length ?? 0),
		HEADER + count * RECORD,
	);
	const out = new Uint8Array(size);
	const data = view(out);
	const power = 2 ** Math.floor(Math.log2(count));
	data.setUint32(0, 0x00010000);
	data.setUint16(4, count);
	data.setUint16(6, power * 16);
	data.setUint16(8, Math.log2(power));
	data.setUint16(10, count * 16 - power * 16);
	let offset = HEADER + count * RECORD;
	let headAt = 0;
	for (const [i, name] of names.entries()) {
		const bytes = Uint8Array.from(tables.get(name) ?? []);
		if (name === "head") {
			view(bytes).setUint32(8, 0);
			headAt = offset;
		}
		const record = HEADER + i * RECORD;
		for (let c = 0; c < 4; c += 1) out[record + c] = name.charCodeAt(c);
		data.setUint32(record + 4, checksum(bytes));
		data.setUint32(record + 8, offset);
		data.setUint32(record + 12, bytes.length);
		out.set(bytes, offset);
		offset += padded(bytes.length);
	}
	data.setUint32(headAt + 8, (MAGIC - checksum(out)) >>> 0);
	return out;
};
