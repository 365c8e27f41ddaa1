import { describe, expect, it } from "vitest";
import { wellDrawings } from "../../src/paper/parts/figures.ts";
import { composePapers } from "../../src/pipeline.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { findingsOf, type Starter } from "../starters.ts";

/* Places in which two papers of one well told two stories, or one paper told a thing that the well is not. */

const textOf = (starter: Starter, paper: "answers" | "landowner", language: "en" | "es" = "en"): string =>
	composePapers(findingsOf(starter), [{ paper, language, units: "field" }])
		.documents.map((each) => renderText(each.paper))
		.join(" ")
		.replaceAll(/\s+/gu, " ");

describe("a well that goes straight down", () => {
	it.each([
		["en", "There is none: the well goes straight down.", "straight part of the hole"],
		["es", "No hay: el pozo baja derecho.", "parte recta del agujero"],
	] as const)("is not answered for as one that turns (%s)", (language, said, unsaid) => {
		const words = textOf("vertical-metric", "answers", language);
		expect(words).toContain(said);
		expect(words).not.toContain(unsaid);
	});
});

describe("the distance that noise travels", () => {
	it("is not headed as one from the wellhead where it was surveyed from the pad edge", () => {
		expect(textOf("horizontal", "answers")).toContain("Nearest house: 1,710 feet from the pad edge");
		const words = textOf("horizontal", "landowner");
		expect(words).toContain("Nearest distance, over ground, ft");
		expect(words).not.toContain("From the wellhead, ft");
	});
});

describe("openings along a level lateral", () => {
	it("are told at one depth below ground where the two print alike, and never up to a deeper one", () => {
		const said = (starter: Starter): string =>
			JSON.stringify(
				wellDrawings(findingsOf(starter), "field", "en", "landowner").find(
					({ id }) => id === "schematic-plain",
				),
			).replaceAll(/\s+/gu, " ");
		expect(said("horizontal")).toContain("39 stages are perforated at 8,907 ft below ground.");
		expect(said("horizontal-as-built")).toMatch(/perforated between 7,980 ft .* and 7,978 ft/u);
	});
});

describe("the plan view", () => {
	it("is looked for in the paper that has it", () => {
		expect(textOf("horizontal", "answers")).toContain("on the plan view in the packet");
		expect(textOf("horizontal", "landowner")).toContain("[Plan view of Sorrel Bench Unit 3-16H]");
	});
});
