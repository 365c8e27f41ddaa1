import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openSync } from "fontkit";
import { describe, expect, it } from "vitest";
import { PAPERS } from "../../src/document/document.ts";
import { FACES, type Face, faceFor, fontBytes, NO_LIGATURES } from "../../src/measure/faces.ts";
import { fontSubset } from "../../src/measure/font-subset.ts";
import { readTables, writeTables } from "../../src/measure/sfnt.ts";
import { fontMetrics, hasGlyphs, missingGlyphs, textWidth } from "../../src/measure/text-width.ts";
import { typefaceOf } from "../../src/measure/typeface.ts";
import { composePapers } from "../../src/pipeline.ts";
import { stringsOf } from "../render/printed-strings.ts";
import { sampleOf, WHOLE } from "../run/sample.ts";
import { findingsOf } from "../starters.ts";

const reopen = (bytes: Uint8Array) => {
	const directory = mkdtempSync(join(tmpdir(), "face-"));
	try {
		const path = join(directory, "subset.ttf");
		writeFileSync(path, bytes);
		return openSync(path);
	} finally {
		rmSync(directory, { recursive: true });
	}
};

describe("the family", () => {
	it("prints every sign a paper needs, in every face", () => {
		const signs = "9⅝ ½¼¾⅛⅜⅞⅓⅔ 90° ±≥≤×µ–—→•“”’ áéíóúüñ¿¡ ³² ≈ ✓";
		for (const face of FACES) expect(missingGlyphs(signs, face.weight, face.italic)).toEqual([]);
		expect(missingGlyphs("a☒b☒")).toEqual(["☒"]);
		expect(hasGlyphs("\u2008")).toBe(false);
	});

	it("has figures of one width, so that columns align", () => {
		for (const face of FACES) {
			const style = { size: 10, weight: face.weight, italic: face.italic };
			const widths = [..."0123456789\u2007"].map((d) => textWidth(d, style));
			// The italic's zero is drawn 1/1000 em narrower than its other figures.
			expect(Math.max(...widths) - Math.min(...widths)).toBeLessThanOrEqual(0.0101);
		}
	});

	it("sets bold italic in semibold italic", () => {
		expect(faceFor("bold", true)).toBe(faceFor("semibold", true));
	});
});

describe("textWidth", () => {
	// 497/1000 em is the figure width that the font file itself states in its hmtx table.
	it("is the sum of advances, in proportion to size", () => {
		expect(textWidth("0000", { size: 10 })).toBeCloseTo(4 * 4.97, 10);
		expect(textWidth("0000", { size: 20 })).toBeCloseTo(2 * textWidth("0000", { size: 10 }), 10);
	});
	it("kerns", () => {
		expect(textWidth("To", { size: 10 })).toBeLessThan(
			textWidth("T", { size: 10 }) + textWidth("o", { size: 10 }),
		);
	});
	/** fontkit as a yardstick; it shapes a word in some tenths of a millisecond. */
	const yardstick = (face: Face): ((text: string) => number) => {
		const font = openSync(face.path);
		// By the rules of Greek: those of Latin would put the phonetic forms of beta, lambda and phi into a formula.
		return (text) => font.layout(text, NO_LIGATURES, "grek").advanceWidth;
	};
	const printed = (): readonly string[] => {
		const texts = (["en", "es"] as const).flatMap((language) =>
			PAPERS.flatMap((paper) =>
				composePapers(findingsOf("horizontal"), [{ paper, language, units: "field" }]).documents.flatMap(
					({ paper: { sections } }) =>
						sections.flatMap(({ title, blocks }) => [
							title,
							...stringsOf(blocks, { units: "field", language }),
						]),
				),
			),
		);
		// Words of a text with the next one: a space may be spaced too.
		const words = texts.flatMap((text) => text.match(/\S+(?:\s\S+)?/gu) ?? []);
		return [...new Set([...words, ...texts.filter((text) => text.length < 60)])];
	};
	it("agrees with fontkit on the strings of the papers, in every face and both languages", {
		timeout: 120_000,
	}, () => {
		const strings = sampleOf("measured strings", printed(), 2_500);
		let compared = 0;
		for (const [i, face] of FACES.entries()) {
			const wanted = yardstick(face);
			const { widthOf } = typefaceOf(face);
			const off = strings
				// The upright faces set nearly everything; the italics see every third string.
				.filter((_, n) => !face.italic || n % 3 === i % 3)
				.filter((text) => {
					compared += 1;
					return wanted(text) !== widthOf(text);
				});
			expect(off).toEqual([]);
		}
		expect(compared).toBeGreaterThan(WHOLE ? 20_000 : 7_500);
	});
	it("agrees with fontkit on characters that take no room", () => {
		const wanted = yardstick(faceFor());
		for (const unseen of ["\u00ad", "\u200b", "\u2060", "\ufeff"]) {
			const text = `A${unseen}V 9⅝`;
			expect(typefaceOf(faceFor()).widthOf(text)).toBe(wanted(text));
			expect(missingGlyphs(text)).toEqual([]);
		}
	});
	it("knows heights", () => {
		const metrics = fontMetrics({ size: 10 });
		expect(metrics.lineHeight).toBeCloseTo(metrics.ascent + metrics.descent, 10);
		expect(metrics.capHeight).toBeGreaterThan(metrics.xHeight);
	});
});

describe("fontSubset", () => {
	const text = "To 9⅝ in at 1,185 ft áñ AVA";
	const bytes = fontSubset(faceFor(), [text, text]);
	const font = reopen(bytes);

	it("is small, stands alone and holds exactly what was asked", () => {
		expect(bytes.length).toBeLessThan(12_000);
		expect([...readTables(bytes).keys()]).toEqual(
			expect.arrayContaining([
				"OS/2",
				"cmap",
				"glyf",
				"head",
				"hhea",
				"hmtx",
				"kern",
				"loca",
				"maxp",
				"name",
				"post",
			]),
		);
		expect([...text].every((c) => font.hasGlyphForCodePoint(c.codePointAt(0) ?? 0))).toBe(true);
		expect(font.hasGlyphForCodePoint("Q".charCodeAt(0))).toBe(false);
	});

	it("is as wide as the whole font", () => {
		for (const line of [text, "To", "AVA", "1,185 ft"]) {
			expect((font.layout(line).advanceWidth / font.unitsPerEm) * 10).toBeCloseTo(
				textWidth(line, { size: 10 }),
				1,
			);
		}
	});

	it("is a sound TrueType file: its checksums close", () => {
		// OpenType specification, "Calculating checksums": the sum over the file is 0xB1B0AFBA.
		const sum = (data: Uint8Array): number => {
			const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
			let total = 0;
			for (let at = 0; at + 4 <= data.length; at += 4) total = (total + view.getUint32(at)) >>> 0;
			return total;
		};
		expect(sum(bytes)).toBe(0xb1b0afba);
		const whole = fontBytes(faceFor());
		expect(sum(whole)).toBe(0xb1b0afba);
		expect(writeTables(readTables(whole)).length).toBe(whole.length);
	});
});
