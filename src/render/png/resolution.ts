import { crc32 } from "node:zlib";

const METERS_PER_INCH = 0.0254;
/** The signature (8 bytes) and the header chunk (4 + 4 + 13 + 4) that every file begins with. */
const AFTER_HEADER = 33;

/**
 * The same PNG file with its resolution told, so that it prints at the size it was drawn for: a `pHYs` chunk after the
 * header.
 *
 * @source W3C, *Portable Network Graphics (PNG) Specification*, third edition (2025), sections 5.3 and 11.3.4.3 (from memory)
 */
export const withResolution = (png: Uint8Array, dotsPerInch: number): Uint8Array => {
	const perMeter = Math.round(dotsPerInch / METERS_PER_INCH);
	const chunk = new Uint8Array(21);
	const data = new DataView(chunk.buffer);
	data.setUint32(0, 9);
	chunk.set(new TextEncoder().encode("pHYs"), 4);
	data.setUint32(8, perMeter);
	data.setUint32(12, perMeter);
	data.setUint8(16, 1);
	data.setUint32(17, crc32(chunk.subarray(4, 17)));
	const out = new Uint8Array(png.length + chunk.length);
	out.set(png.subarray(0, AFTER_HEADER));
	out.set(chunk, AFTER_HEADER);
	out.set(png.subarray(AFTER_HEADER), AFTER_HEADER + chunk.length);
	return out;
};
