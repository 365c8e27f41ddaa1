import type { ReactNode } from "react";
import { describe, expect, it } from "vitest";
import { layPages } from "../../../src/render/pdf/layout/pages.ts";
import { linesOf } from "../laid-places.ts";
import { box, brick, document, onPages, page, placesOf, space, words } from "./made-up.ts";

/** The page has room for 80 pt. */
describe("blocks on pages", () => {
	it("fill a page, and go on on the next", () => {
		expect(onPages(brick("a", 40), brick("b", 40), brick("c", 1))).toEqual([["a", "b"], ["c"]]);
	});

	it("part with space, which heads no page and ends none", () => {
		expect(onPages(brick("a", 50), space(40), brick("b", 40))).toEqual([["a"], ["b"]]);
		expect(placesOf(space(30), brick("a", 50), space(30), brick("b", 60), space(90))).toEqual({
			a: [0, 0, 80, 50],
			b: [0, 0, 80, 60],
		});
	});

	it("stay with the next one, and a chain of them too", () => {
		const heading = { withNext: true };
		expect(onPages(brick("a", 50), brick("h", 10, heading), space(5), brick("b", 30))).toEqual([
			["a"],
			["h", "b"],
		]);
		expect(onPages(brick("a", 40), brick("h", 10, heading), brick("i", 10, heading), brick("b", 30))).toEqual(
			[["a"], ["h", "i", "b"]],
		);
	});

	it("stay with the beginning of one that may be divided", () => {
		const list = box({}, brick("b1", 15), brick("b2", 15));
		expect(onPages(brick("a", 50), brick("h", 10, { withNext: true }), list)).toEqual([
			["a", "h", "b1"],
			["b2"],
		]);
	});

	it("stay with the one before", () => {
		expect(onPages(brick("a", 40), brick("b", 30), brick("note", 15, { withPrevious: true }))).toEqual([
			["a"],
			["b", "note"],
		]);
	});

	it("stay whole where they say so, and stand alone where no page is high enough", () => {
		const whole = box({ wrap: false }, brick("b", 30), brick("c", 30));
		expect(onPages(brick("a", 40), whole)).toEqual([["a"], ["b", "c"]]);
		expect(onPages(brick("a", 10), brick("tall", 90), brick("c", 10))).toEqual([["a"], ["tall"], ["c"]]);
	});

	it("are divided though they should stay whole, where they are higher than a page", () => {
		const whole = box({ wrap: false }, ...["b", "c", "d", "e"].map((name) => brick(name, 30)));
		expect(onPages(brick("a", 40), whole)).toEqual([["a"], ["b", "c"], ["d", "e"]]);
		expect(onPages(brick("h", 10, { withNext: true }), whole)).toEqual([
			["h", "b", "c"],
			["d", "e"],
		]);
	});

	it("begin a page", () => {
		expect(onPages(brick("a", 10), box({ break: true }), brick("b", 10))).toEqual([["a"], ["b"]]);
		expect(onPages(brick("a", 10, { break: true }), brick("b", 10))).toEqual([["a", "b"]]);
	});

	it("give way where their rules ask for more than a page has", () => {
		const chain = ["a", "b", "c", "d"].map((name) => brick(name, 30, { withNext: true }));
		expect(onPages(...chain)).toEqual([
			["a", "b"],
			["c", "d"],
		]);
	});
});

describe("a table", () => {
	const rows = (count: number, height = 10) =>
		Array.from({ length: count }, (_, i) => brick(`r${i + 1}`, height, { wrap: false }));
	const table = (count: number, ...more: readonly ReturnType<typeof brick>[]) =>
		box(
			{ least: { first: 2, last: 2 } },
			brick("head", 10, { fixed: true, wrap: false }),
			...rows(count),
			...more,
		);

	it("repeats its head on every page, with at least two rows under it", () => {
		expect(onPages(table(9))).toEqual([
			["head", "r1", "r2", "r3", "r4", "r5", "r6", "r7"],
			["head", "r8", "r9"],
		]);
		expect(onPages(brick("a", 60), table(5))).toEqual([["a"], ["head", "r1", "r2", "r3", "r4", "r5"]]);
		expect(onPages(brick("a", 50), table(5))).toEqual([
			["a", "head", "r1", "r2"],
			["head", "r3", "r4", "r5"],
		]);
	});

	it("ends with two rows at least", () => {
		expect(onPages(table(8)).at(-1)).toEqual(["head", "r7", "r8"]);
	});

	it("of three rows stays whole", () => {
		expect(onPages(brick("a", 50), table(3))).toEqual([["a"], ["head", "r1", "r2", "r3"]]);
	});

	it("says on later pages alone that it is continued", () => {
		const continued = brick("continued", 10, { fixed: true, onlyAgain: true });
		const long = box({}, continued, brick("head", 10, { fixed: true }), ...rows(15));
		expect(onPages(long)).toEqual([
			["head", "r1", "r2", "r3", "r4", "r5", "r6", "r7"],
			["continued", "head", "r8", "r9", "r10", "r11", "r12", "r13"],
			["continued", "head", "r14", "r15"],
		]);
	});
});

describe("a paragraph", () => {
	const lines = (count: number) => words(Array.from({ length: count }, (_, i) => `line${i + 1}`).join("\n"));
	const pagesOf = (...children: readonly ReactNode[]) =>
		layPages(document(page(...children))).map((each) => linesOf([each]));

	it("leaves two lines on a page and takes two to the next, or goes whole", () => {
		expect(pagesOf(brick("a", 50), lines(5))).toEqual([
			["line1", "line2", "line3"],
			["line4", "line5"],
		]);
		expect(pagesOf(brick("a", 40), lines(5))[1]).toEqual(["line4", "line5"]);
		expect(pagesOf(brick("a", 70), lines(5))[1]).toHaveLength(5);
		expect(pagesOf(brick("a", 60), lines(3))[1]).toHaveLength(3);
	});
});
