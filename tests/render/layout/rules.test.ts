import { describe, expect, it } from "vitest";
import { type Asks, type Blocks, lastPlace, mayPart } from "../../../src/render/pdf/layout/rules.ts";

const NOTHING: Asks = { space: false, begins: false, withNext: false, withPrevious: false, repeats: false };

/** One sign a block: `.` content, `_` space, `>` goes with the next, `<` with the one before, `!` begins, `=` repeats. */
const blocks = (signs: string): Blocks => ({
	length: signs.length,
	at: (index) => {
		const sign = signs[index];
		return sign === undefined
			? undefined
			: {
					...NOTHING,
					space: sign === "_",
					begins: sign === "!",
					withNext: sign === ">",
					withPrevious: sign === "<",
					repeats: sign === "=",
				};
	},
});

/** Places at which a page may end, as bars between the signs. */
const places = (signs: string, least?: { first: number; last: number }): string =>
	[...signs].map((sign, i) => (i > 0 && mayPart(blocks(signs), i, least) ? `|${sign}` : sign)).join("");

describe("where a page may end", () => {
	it.each([
		["between any two blocks", "...", ".|.|."],
		["never with nothing on it but space or a repeated head", "_=..", "_=.|."],
		["never between a heading and what it heads, whatever space is between", ".>_.", ".|>_."],
		["nor in a chain of such", ".>>_>.", ".|>>_>."],
		["never before what belongs to the block above", "..<.", ".|.<|."],
		["before or behind space, which is cut off there", "._.", ".|_|."],
		["where a block begins a page, even behind a heading", ">!", ">|!"],
	])("%s", (_, signs, wanted) => {
		expect(places(signs)).toBe(wanted);
	});

	it("never leaves fewer rows than two under a head, or at the end", () => {
		expect(places("=......", { first: 2, last: 2 })).toBe("=..|.|.|..");
		expect(places("=....<", { first: 2, last: 3 })).toBe("=..|..<");
		expect(places("=...", { first: 2, last: 2 })).toBe("=...");
	});

	it("is found last at or before where room ends", () => {
		expect(lastPlace(blocks("..>."), 3)).toBe(2);
		expect(lastPlace(blocks(">>>."), 3)).toBe(0);
		expect(lastPlace(blocks("=......"), 6, { first: 2, last: 2 })).toBe(5);
	});
});
