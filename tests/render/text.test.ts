import { describe, expect, it } from "vitest";
import { renderText } from "../../src/render/text/render-text.ts";
import { stringsOf } from "./printed-strings.ts";
import { samplePaper } from "./sample-paper.ts";

describe("renderText", () => {
	const paper = samplePaper();
	const text = renderText(paper);

	it("holds every word and number of the paper", () => {
		const strings = paper.sections.flatMap((section) => stringsOf(section.blocks));
		expect(strings.filter((string) => !text.includes(string))).toEqual([]);
	});

	it("sets a table as a line a row, units in the heads", () => {
		expect(text).toContain(
			[
				"[Casing program]",
				"String | Outside diameter, in | Weight, lb/ft | Shoe, MD, ft | Burst rating, psi | Check result",
				"> Vertical part",
				"Surface | 13⅜ | 54.50 | 640 | 2,730 | meets",
				"Intermediate | 9⅝ | 40.00 | 7,310 | 5,750 | does not meet",
				"> Lateral",
				"Production | 5½ | 23.00 | 18,640 | NOT SET | insufficient data",
				"Tubing | – | – |  | – | not applicable",
				"= Whole well | – | – | 18,640 | – | engineer to confirm",
			].join("\n"),
		);
	});

	it("speaks the paper's language and units", () => {
		const spanish = renderText({ ...samplePaper("office", "es"), units: "metric" });
		expect(spanish).toContain("Offset review: faltan datos");
		expect(spanish).toContain("! ALTO: If returns are lost while cementing");
		expect(spanish).toContain("Shoe, MD, m");
	});
});
