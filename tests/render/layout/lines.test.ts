import { createElement, type ReactNode } from "react";
import { describe, expect, it } from "vitest";
import { textWidth } from "../../../src/measure/text-width.ts";
import { lineText } from "../../../src/render/pdf/layout/laid.ts";
import { breakLines } from "../../../src/render/pdf/layout/lines.ts";
import { type TextState, wordsOf } from "../../../src/render/pdf/layout/words.ts";

const STATE: TextState = {
	size: 10,
	leading: 1.2,
	weight: 400,
	italic: false,
	align: "left",
	color: "#000000",
	underline: false,
};
const set = (room: number, ...children: readonly ReactNode[]) =>
	breakLines(wordsOf(children, STATE).words, room);
const texts = (room: number, ...children: readonly ReactNode[]) => set(room, ...children).map(lineText);
const wide = (text: string): number => textWidth(text, { size: 10 });

describe("lines", () => {
	it("are as full as they can be, and end in the space that parts them", () => {
		expect(texts(wide("one two"), "one two three four")).toEqual(["one two ", "three ", "four"]);
		expect(texts(wide("one two") * 0.98, "one two")).toEqual(["one ", "two"]);
	});

	it("are set a little narrower where a word more then fits, and no wider than the room", () => {
		const text = "Nobody is punished for stopping";
		const [line, ...more] = set(wide(text) * 0.99, text);
		expect(more).toEqual([]);
		expect(line?.width).toBeCloseTo(wide(text) * 0.99, 6);
		expect(line?.runs.map(({ narrowed }) => narrowed)).toEqual([expect.closeTo(0.99, 6)]);
		expect(set(wide("9,500") * 0.99, "9,500")[0]?.runs[0]?.narrowed).toBe(1);
	});

	it("are as wide as their text measures, without that space", () => {
		for (const line of set(88, "Depths are measured from the kelly bushing, 26 ft above AVA To."))
			expect(line.width).toBeCloseTo(wide(lineText(line).trimEnd()) * (line.runs[0]?.narrowed ?? 1), 6);
	});

	it("hold a number to its unit", () => {
		expect(texts(wide("at 5,000"), "at 5,000\u00a0psi")).toEqual(["at ", "5,000\u00a0psi"]);
	});

	it("end where the writer ends them, and stand empty where nothing is written", () => {
		expect(texts(500, "one\ntwo\n\nthree")).toEqual(["one", "two", "", "three"]);
	});

	it("never end inside a word of ordinary length, and only behind the joints of a long one", () => {
		expect(texts(10, "impermeable")).toEqual(["impermeable"]);
		const key = "results.casing.production.sections";
		const lines = texts(wide("results.casing."), key);
		expect(lines.join("")).toBe(key);
		expect(lines.length).toBeGreaterThan(1);
		for (const line of lines.slice(0, -1)) expect(line).toMatch(/\.$/u);
	});

	it("do not leave a short last word alone where the line before has words to spare", () => {
		const text = "a plain row of words that runs on, in.";
		const room = wide("a plain row of words that runs on,") + 0.5;
		expect(texts(room, text)).toEqual(["a plain row of words that runs ", "on, in."]);
		expect(texts(wide("two words"), "two words in.")).toEqual(["two words ", "in."]);
	});

	it("keep every space that is written between words", () => {
		const [line] = set(500, "9  Casing");
		expect(line?.width).toBeCloseTo(wide("9  Casing"), 6);
		expect(line?.runs[0]?.text).toBe("9  Casing");
	});

	it("change style within a word without a gap", () => {
		const [line] = set(500, "a ", createElement("TEXT", { style: { fontWeight: 600 } }, "bold"), ", then");
		expect(line?.runs.map(({ text }) => text)).toEqual(["a ", "bold", ", then"]);
		const [a, bold, then] = line?.runs ?? [];
		expect(bold?.x).toBeCloseTo(a?.width ?? 0, 6);
		expect(then?.x).toBeCloseTo((bold?.x ?? 0) + (bold?.width ?? 0), 6);
		expect(bold?.width).toBeCloseTo(textWidth("bold", { size: 10, weight: "semibold" }), 6);
	});

	it("carry where they lead", () => {
		const [line] = set(500, "see ", createElement("LINK", { src: "#water" }, "the water"));
		expect(line?.runs.map(({ style }) => style.link)).toEqual([undefined, "#water"]);
	});
});
