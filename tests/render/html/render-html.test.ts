import { describe, expect, it } from "vitest";
import type { Inline } from "../../../src/document/inline.ts";
import { contrast } from "../../../src/drawing/palette.ts";
import { DARK, LIGHT } from "../../../src/render/html/colors.ts";
import { renderHtml } from "../../../src/render/html/render-html.ts";
import { JSDOM } from "../../run/jsdom.ts";
import { stringsOf } from "../printed-strings.ts";
import { drawing, p, samplePaper } from "../sample-paper.ts";

const squash = (text: string): string => text.replaceAll(/\s+/gu, "");

describe("renderHtml", () => {
	const paper = samplePaper();
	const html = renderHtml(paper);
	const page = new JSDOM(html).window.document;

	it("holds every word and number of every kind of block", () => {
		const text = squash(page.body.textContent ?? "");
		const strings = paper.sections.flatMap((section) => [section.title, ...stringsOf(section.blocks)]);
		expect(strings.length).toBeGreaterThan(600);
		expect(strings.filter((string) => !text.includes(squash(string)))).toEqual([]);
	});

	it("makes a telephone number in a column of them a link, and leaves the words beside it", () => {
		const [section] = paper.sections;
		if (section === undefined) throw new Error("no section");
		const numbers = ["555-0190 (fictional)", "+1 (555) 010-0199", "911", "ask"];
		const made = new JSDOM(
			renderHtml({
				...paper,
				sections: [
					{
						...section,
						blocks: [
							{
								kind: "table",
								caption: "Whom to call",
								columns: [
									{ id: "who", head: "Who", width: 1, kind: "text", rowHead: true },
									{ id: "phone", head: "Phone", width: 1, kind: "text" },
								],
								rows: numbers.map((text, i) => ({
									cells: { who: { kind: "text", text: `Desk ${i}` }, phone: { kind: "text", text } },
								})),
							},
						],
					},
				],
			}),
		).window.document;
		expect([...made.querySelectorAll("td a")].map((a) => [a.getAttribute("href"), a.textContent])).toEqual([
			["tel:5550190", "555-0190"],
			["tel:+15550100199", "+1 (555) 010-0199"],
		]);
		expect(made.querySelector("tbody td")?.textContent).toBe("555-0190 (fictional)");
	});

	it("heads columns and rows, and gives a subhead its own body", () => {
		const table = page.querySelector("#t-casing");
		expect([...(table?.querySelectorAll("thead th") ?? [])].map((th) => th.getAttribute("scope"))).toEqual(
			Array.from({ length: 6 }, () => "col"),
		);
		expect([...(table?.querySelectorAll("tbody th") ?? [])].map((th) => th.getAttribute("scope"))).toEqual([
			"rowgroup",
			"row",
			"row",
			"rowgroup",
			"row",
			"row",
			"row",
		]);
		expect(table?.querySelectorAll("tbody")).toHaveLength(2);
		expect(table?.querySelector("caption")?.textContent).toBe("Casing program");
	});

	it("says a verdict by its word, and a missing value loudly", () => {
		expect(page.querySelector(".not-met")?.textContent).toBe("does not meet");
		expect(page.querySelector(".unset")?.textContent).toBe("NOT SET");
	});

	it("describes its drawings, and keeps their keys to itself", () => {
		expect(page.querySelector("svg desc")?.textContent).toContain(drawing.alternative);
		expect(html).not.toContain("data-");
		expect(html.match(/@font-face/gu)).toHaveLength(5);
	});

	it("prints caution, standing and page number in the margins of every page", () => {
		const margins = /@page\{size:letter[\s\S]*?\n@page/u.exec(html)?.[0] ?? "";
		expect(margins).toContain("judgement of a licensed engineer govern");
		expect(margins).toContain("5f3a90c1");
		expect(margins).toContain("counter(pages)");
	});

	it("writes in no color that a reader or a copier could lose", () => {
		// WCAG 2.1, 1.4.6 (enhanced): 7:1 for text, on the ground that the page states, light or dark.
		const colors = new Set(
			html.match(/--(?:text|heading|stop):#[0-9a-f]{6}/gu)?.map((rule) => rule.slice(-7)),
		);
		expect(colors.size).toBe(6);
		for (const { text, heading, stop, ground } of [LIGHT, DARK])
			for (const color of [text, heading, stop]) expect(contrast(color, ground), color).toBeGreaterThan(7);
		expect([...new Set(html.match(/background:[^;}]*/gu))].sort()).toEqual([
			"background:#ffffff",
			"background:var(--ground)",
		]);
	});

	it("takes whatever is written for text", () => {
		const hostile = `</style><script>alert(1)</script> "><img src=x onerror=alert(1)> \\";} & 'x' \u0000`;
		const link: Inline = {
			kind: "link",
			to: "javascript:alert(1)",
			children: [{ kind: "text", text: hostile }],
		};
		const written = renderHtml({
			...paper,
			imprint: { ...paper.imprint, well: hostile, operator: hostile, title: hostile, caution: hostile },
			sections: [
				{
					id: `x" onload="alert(1)`,
					title: hostile,
					blocks: [
						p(hostile, link),
						{
							kind: "figure",
							caption: [{ kind: "text", text: hostile }],
							drawing: { ...drawing, title: hostile, alternative: hostile },
						},
						{ kind: "facts", items: [{ label: hostile, value: { kind: "text", text: hostile } }] },
					],
				},
			],
		});
		const read = new JSDOM(written).window.document;
		expect(read.querySelectorAll("script,img,[onload],[onerror]")).toHaveLength(0);
		expect(read.querySelectorAll("style")).toHaveLength(1);
		expect([...read.querySelectorAll("a")].map((a) => a.getAttribute("href"))).toEqual([
			"#paper",
			"#javascript:alert(1)",
		]);
		expect(read.querySelector("section p")?.textContent).toContain("</style><script>alert(1)</script>");
		// Nothing written can end the style sheet's strings.
		expect(read.querySelector("style")?.textContent).not.toContain("alert(1)");
	});
});
