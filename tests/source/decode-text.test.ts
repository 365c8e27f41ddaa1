import { describe, expect, it } from "vitest";
import { decodeText, LARGEST_TEXT } from "../../src/source/decode-text.ts";
import { told } from "../told.ts";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe("decodeText", () => {
	it("reads UTF-8 and drops its byte order mark", () => {
		expect(decodeText(bytes("9⅝ in"), "a.yaml")).toEqual({ value: "9⅝ in", diagnostics: [] });
		expect(decodeText(new Uint8Array([0xef, 0xbb, 0xbf, 0x61]), "a.yaml").value).toBe("a");
	});

	it.each([
		["UTF-16", new Uint8Array([0xff, 0xfe, 0x61, 0x00])],
		["UTF-16, the other way round", new Uint8Array([0xfe, 0xff, 0x00, 0x61])],
		["UTF-16 without a mark", new Uint8Array([0x61, 0x00, 0x3a, 0x00])],
		["Latin-1", new Uint8Array([0x63, 0x61, 0x66, 0xe9])],
		["a zip archive, as spreadsheets are", new Uint8Array([0x50, 0x4b, 0x03, 0x04])],
	])("refuses %s", (_, content) => {
		const { value, diagnostics } = decodeText(content, "a.yaml");
		expect(value).toBeUndefined();
		expect(diagnostics.map(({ code }) => code)).toEqual(["syntax/not-text"]);
	});

	it("refuses what is too large", () => {
		const { diagnostics } = decodeText(new Uint8Array(LARGEST_TEXT + 1), "a.yaml");
		expect(diagnostics.map(({ code, found }) => [code, told(found)])).toEqual([
			["syntax/too-large", "more than that"],
		]);
	});
});
