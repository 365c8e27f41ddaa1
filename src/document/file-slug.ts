/** Letters and figures, in bytes, that are left for what is written behind the slug, on every common file system. */
const LONGEST = 100;

/** Names that Windows gives to devices, whatever their ending. */
const DEVICE = /^(?:con|prn|aux|nul|com\d|lpt\d)$/u;

/**
 * What the names of a well's files begin with: `Sorrel Bench Unit 3-16H` as `sorrel-bench-unit-3-16h`. A very long name
 * is cut, and told from another that begins alike by a number made of the whole of it.
 */
export const fileSlug = (name: string): string => {
	const whole = name
		.normalize("NFC")
		.toLowerCase()
		.replaceAll(/[^\p{L}\p{N}\p{M}]+/gu, "-")
		.replaceAll(/^-+|-+$/gu, "");
	if (whole === "") return "well";
	if (DEVICE.test(whole)) return `well-${whole}`;
	const bytes = new TextEncoder();
	if (bytes.encode(whole).length <= LONGEST) return whole;
	let cut = "";
	for (const letter of whole) {
		if (bytes.encode(cut + letter).length > LONGEST - 9) break;
		cut += letter;
	}
	return `${cut.replace(/-+$/u, "")}-${checksum(bytes.encode(whole))}`;
};

/** Eight figures of a text, by the FNV-1a hash: to tell two names apart, and nothing else. */
const checksum = (bytes: Uint8Array): string => {
	let hash = 0x811c9dc5;
	for (const byte of bytes) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
	return hash.toString(16).padStart(8, "0");
};
