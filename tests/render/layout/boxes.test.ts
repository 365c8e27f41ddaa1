import { createElement } from "react";
import { describe, expect, it } from "vitest";
import { layPages } from "../../../src/render/pdf/layout/pages.ts";
import { box, brick, document, onPages, page, placesOf, words } from "./made-up.ts";

describe("boxes", () => {
	it("stand inside frame, padding and margin, below each other", () => {
		const style = {
			marginTop: 2,
			marginLeft: 3,
			paddingTop: 4,
			paddingLeft: 5,
			borderTopWidth: 1,
			borderLeftWidth: 1,
		};
		expect(
			placesOf(box({ style: { paddingTop: 1 } }, brick("a", 10, { style: { ...style } }), brick("b", 10))),
		).toEqual({ a: [3, 3, 77, 10], b: [0, 13, 80, 10] });
		expect(placesOf(box({ style }, brick("a", 10)))).toEqual({ a: [9, 5, 71, 10] });
	});

	it("beside each other have the widths they state, and share what is left", () => {
		const row = { flexDirection: "row", columnGap: 5 } as const;
		expect(
			placesOf(
				box(
					{ style: row },
					brick("a", 10, { style: { width: 10 } }),
					brick("b", 10, { style: { width: "25%" } }),
					brick("c", 10, { style: { flexGrow: 3 } }),
					brick("d", 10),
				),
			),
		).toEqual({ a: [0, 0, 10, 10], b: [15, 0, 20, 10], c: [40, 0, 26.25, 10], d: [71.25, 0, 8.75, 10] });
	});

	it("beside each other are as high as the highest, or stand at its foot or middle", () => {
		const row = (alignItems?: "flex-end" | "center") =>
			placesOf(
				box(
					{ style: { flexDirection: "row", ...(alignItems === undefined ? {} : { alignItems }) } },
					brick("a", 30, { style: { width: 40 } }),
					brick("b", 10, { style: { width: 40 } }),
				),
			)["b"];
		expect(row()).toEqual([40, 0, 40, 30]);
		expect(row("flex-end")).toEqual([40, 20, 40, 10]);
		expect(row("center")).toEqual([40, 10, 40, 10]);
	});

	it("of a stated height keep it, with their content at its top, middle or foot", () => {
		const fixed = (justifyContent?: "center" | "flex-end") =>
			placesOf(
				box(
					{ id: "card", style: { height: 50, ...(justifyContent === undefined ? {} : { justifyContent }) } },
					brick("a", 10),
				),
				brick("below", 10),
			);
		expect(fixed()).toMatchObject({ card: [0, 0, 80, 50], a: [0, 0, 80, 10], below: [0, 50, 80, 10] });
		expect(fixed("center")["a"]).toEqual([0, 20, 80, 10]);
		expect(fixed("flex-end")["a"]).toEqual([0, 40, 80, 10]);
	});

	it("are divided beside each other, each at its own place", () => {
		const list = (name: string, count: number) =>
			box({}, ...Array.from({ length: count }, (_, i) => brick(`${name}${i + 1}`, 20)));
		expect(
			onPages(brick("z", 40), box({ style: { flexDirection: "row" } }, list("a", 3), list("b", 1))),
		).toEqual([["z", "a1", "a2", "b1"], ["a3"]]);
	});
});

describe("columns", () => {
	const flow = (count: number, columns: number, height = 10) =>
		box(
			{ columns, style: { columnGap: 10 } },
			...Array.from({ length: count }, (_, i) => brick(`${i + 1}`, height)),
		);

	it("are as high as each other, in reading order", () => {
		const places = placesOf(flow(6, 2), brick("below", 10));
		expect(places["3"]).toEqual([0, 20, 35, 10]);
		expect(places["4"]).toEqual([45, 0, 35, 10]);
		expect(places["below"]).toEqual([0, 30, 80, 10]);
	});

	it("fill a page before they go on on the next, and are even there", () => {
		expect(onPages(flow(20, 2))).toEqual([
			Array.from({ length: 16 }, (_, i) => `${i + 1}`),
			["17", "18", "19", "20"],
		]);
		const last = placesOf(flow(20, 2));
		expect([last["17"], last["19"]]).toEqual([
			[0, 0, 35, 10],
			[45, 0, 35, 10],
		]);
	});

	it("keep a heading with what it heads", () => {
		const places = placesOf(
			box({ columns: 2 }, brick("a", 20), brick("heading", 10, { withNext: true }), brick("b", 20)),
		);
		expect(places["heading"]?.[0]).toBe(40);
	});
});

describe("pages", () => {
	it("are each of its own size, and begin anew", () => {
		const wide = createElement(
			"PAGE",
			{ size: [200, 50], style: { paddingLeft: 20, paddingTop: 5 } },
			brick("a", 10),
		);
		const pages = layPages(document(page(brick("b", 10)), wide, page()));
		expect(pages.map(({ sheet }) => [sheet.width, sheet.height])).toEqual([
			[100, 100],
			[200, 50],
			[100, 100],
		]);
		expect(pages[1]?.children[0]).toMatchObject({ x: 20, y: 5, item: { width: 160 } });
	});
});

describe("text", () => {
	it("stands left, right or in the middle of its room", () => {
		const at = (textAlign: "left" | "right" | "center") => {
			const [laid] = layPages(document(page(words("word", { style: { textAlign } }))))[0]?.children ?? [];
			if (laid?.item.kind !== "text") throw new Error("no text");
			const [line] = laid.item.lines;
			return [line?.x, line?.width] as const;
		};
		const [left, width = 0] = at("left");
		expect(left).toBe(0);
		expect(at("right")[0]).toBeCloseTo(80 - width, 6);
		expect(at("center")[0]).toBeCloseTo((80 - width) / 2, 6);
	});
});
