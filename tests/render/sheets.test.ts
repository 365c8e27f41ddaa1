import { describe, expect, it } from "vitest";
import type { PaperDocument } from "../../src/document/document.ts";
import { SHEETS } from "../../src/render/pdf/design.ts";
import { renderPdf } from "../../src/render/pdf/render-pdf.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import { readPdf } from "./read-pdf.ts";
import { samplePaper } from "./sample-paper.ts";

const sizes = (paper: PaperDocument) => {
	const { pages, findings } = setPaper(paper);
	expect(findings).toEqual([]);
	return pages.map(({ sheet }) => [sheet.width, sheet.height]);
};
const sizeOf = ({ width, height }: (typeof SHEETS)["letter"]) => [width, height];

describe("pages", () => {
	it("are letter where nothing is said", () => {
		for (const size of sizes(samplePaper())) expect(size).toEqual([612, 792]);
	});

	it.each(["letter-landscape", "screen"] as const)("are all %s where the paper says so", (sheet) => {
		for (const size of sizes({ ...samplePaper(), sheet })) expect(size).toEqual(sizeOf(SHEETS[sheet]));
	});

	it("turn for the section that says so, and turn back", async () => {
		const paper = samplePaper();
		const [first, second, third] = paper.sections;
		if (first === undefined || second === undefined || third === undefined) throw new Error("three sections");
		const turned: PaperDocument = {
			...paper,
			sections: [first, { ...second, sheet: "letter-landscape" }, { ...third, newPage: false }],
		};
		const found = sizes(turned).map(([width]) => width);
		expect([...new Set(found)].sort()).toEqual([612, 792]);
		expect(found.at(-1)).toBe(612);
		const { bytes, findings, pages } = await renderPdf(turned);
		expect(findings).toEqual([]);
		const read = await readPdf(bytes);
		// The head and foot of a turned page are as wide as it is, and say the same.
		for (const [i, text] of read.texts.entries()) expect(text).toContain(`page ${i + 1} of ${pages}`);
	});
});
