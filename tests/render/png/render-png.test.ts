import { inflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import type { Drawing } from "../../../src/document/shapes.ts";
import { renderPng } from "../../../src/render/png/render-png.ts";

/** An inch square: a black block, a half inch wide, and a word on the rest. */
const SQUARE: Drawing = {
	id: "square",
	width: 72,
	height: 72,
	title: "A square",
	alternative: "A black block and a word.",
	scale: "Not to scale.",
	shapes: [
		{ kind: "path", d: "M0 0H36V72H0Z", fill: "#1a1a1a" },
		{ kind: "text", x: 40, y: 40, text: "Wide", size: 12, color: "#d55e00", weight: "bold" },
	],
};

const chunks = (png: Uint8Array): { readonly type: string; readonly data: Uint8Array }[] => {
	const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
	const out: { type: string; data: Uint8Array }[] = [];
	for (let at = 8; at < png.length; ) {
		const length = view.getUint32(at);
		const type = new TextDecoder().decode(png.subarray(at + 4, at + 8));
		out.push({ type, data: png.subarray(at + 8, at + 8 + length) });
		at += 12 + length;
	}
	return out;
};

/** Rows of red, green, blue, alpha. */
const pixels = (png: Uint8Array) => {
	const all = chunks(png);
	const header = all.find((chunk) => chunk.type === "IHDR")?.data ?? new Uint8Array();
	const view = new DataView(header.buffer, header.byteOffset, header.byteLength);
	const [width, height] = [view.getUint32(0), view.getUint32(4)];
	expect([header[8], header[9]]).toEqual([8, 6]);
	const data = inflateSync(
		Buffer.concat(all.filter((chunk) => chunk.type === "IDAT").map((chunk) => chunk.data)),
	);
	const bytes = new Uint8Array(width * height * 4);
	const stride = width * 4;
	for (let y = 0; y < height; y += 1) {
		const filter = data[y * (stride + 1)] ?? 0;
		for (let i = 0; i < stride; i += 1) {
			const raw = data[y * (stride + 1) + 1 + i] ?? 0;
			const left = i < 4 ? 0 : (bytes[y * stride + i - 4] ?? 0);
			const up = y === 0 ? 0 : (bytes[(y - 1) * stride + i] ?? 0);
			const corner = i < 4 || y === 0 ? 0 : (bytes[(y - 1) * stride + i - 4] ?? 0);
			const guess = left + up - corner;
			const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)];
			const paeth = a <= b && a <= c ? left : b <= c ? up : corner;
			const add = [0, left, up, (left + up) >> 1, paeth][filter] ?? 0;
			bytes[y * stride + i] = (raw + add) & 255;
		}
	}
	return {
		width,
		height,
		at: (x: number, y: number) => [...bytes.subarray((y * width + x) * 4, (y * width + x) * 4 + 4)],
	};
};

describe("a drawing as a picture", () => {
	const png = renderPng(SQUARE, 144);

	it("has the drawing's size at the resolution that it tells", () => {
		const { width, height } = pixels(png);
		expect([width, height]).toEqual([144, 144]);
		const told = chunks(png).find((chunk) => chunk.type === "pHYs")?.data ?? new Uint8Array(9);
		const view = new DataView(told.buffer, told.byteOffset, told.byteLength);
		expect(
			[view.getUint32(0) * 0.0254, view.getUint32(4) * 0.0254, told[8]].map((each) => Math.round(each ?? 0)),
		).toEqual([144, 144, 1]);
	});

	it("shows the shapes where they are, on white", () => {
		const { at } = pixels(png);
		expect(at(10, 10)).toEqual([0x1a, 0x1a, 0x1a, 255]);
		expect(at(130, 130)).toEqual([255, 255, 255, 255]);
	});

	it("sets words in the shipped typeface", () => {
		const { at } = pixels(png);
		let colored = 0;
		for (let x = 74; x < 144; x += 1)
			for (let y = 50; y < 90; y += 1) {
				const [red = 255, , blue = 255] = at(x, y);
				if (red - blue > 100) colored += 1;
			}
		expect(colored).toBeGreaterThan(150);
		const without = pixels(renderPng({ ...SQUARE, shapes: SQUARE.shapes.slice(0, 1) }, 144));
		expect(without.at(84, 76)).toEqual([255, 255, 255, 255]);
	});

	it("is the same every time", () => {
		expect(Buffer.from(renderPng(SQUARE, 144)).equals(Buffer.from(png))).toBe(true);
	});
});
