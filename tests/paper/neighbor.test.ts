import { describe, expect, it } from "vitest";
import { LANGUAGES } from "../../src/document/document.ts";
import { keysIn } from "../../src/paper/places.ts";
import { composePapers, type PaperRequest } from "../../src/pipeline.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { counts, fleschKincaidGrade, runningText } from "../readability.ts";
import { findingsOf, starterText, understandText } from "../starters.ts";

const request = (neighbor?: string, language: PaperRequest["language"] = "en"): PaperRequest => ({
	paper: "landowner",
	language,
	units: "field",
	...(neighbor === undefined ? {} : { neighbor }),
});
const edition = (neighbor?: string, language: PaperRequest["language"] = "en") => {
	const { documents } = composePapers(findingsOf("horizontal"), [request(neighbor, language)]);
	const [document] = documents;
	if (document === undefined) throw new Error("no paper");
	return document;
};
const words = (neighbor?: string, language: PaperRequest["language"] = "en"): string =>
	renderText(edition(neighbor, language).paper).replaceAll(/\s+/gu, " ");

describe("a neighbor's own edition", () => {
	it("is named after the neighbor, and says whose it is", () => {
		expect(edition("ww-1").name).toMatch(/\.landowner\.ww-1$/u);
		expect(edition("ww-1", "es").name).toMatch(/\.landowner\.ww-1\.es$/u);
		expect(edition().name).toMatch(/\.landowner$/u);
		expect(words("ww-1")).toContain("Copy for: Windmill well");
		expect(words()).not.toContain("Copy for");
	});

	it.each(LANGUAGES)(
		"tells the well's depth, its distances and its sample from the values (%s)",
		(language) => {
			const printed = words("ww-1", language);
			expect(printed).toContain(language === "en" ? "285 feet" : "285 pies");
			expect(printed).toContain(language === "en" ? "March 11, 2026" : "11 de marzo de 2026");
			const keys = new Set(edition("ww-1", language).paper.sections.flatMap(({ blocks }) => keysIn(blocks)));
			expect(keys).toContain("results.site.neighbors.ww-1.from_wellhead");
			expect(keys).toContain("results.site.neighbors.ww-1.from_path");
			expect(keys).toContain("results.isolation.neighbor_wells.ww-1.above_top_perforation");
		},
	);

	it("tells nobody else when the water was sampled", () => {
		for (const other of [undefined, "home-1", "creek"]) {
			expect(words(other)).not.toContain("2026-03-11");
			expect(words(other)).not.toContain("March 11, 2026");
		}
	});

	it("takes a measured distance before a computed one", () => {
		const text = starterText("horizontal").replace(
			"{ from: pad edge, distance: 1710 ft, by: plat }",
			"{ from: wellhead, distance: 7777 ft, by: plat }",
		);
		const { findings } = understandText(text);
		if (findings === undefined) throw new Error("the changed starter has faults");
		const [document] = composePapers(findings, [request("home-1")]).documents;
		if (document === undefined) throw new Error("no paper");
		expect(renderText(document.paper).replaceAll(/\s+/gu, " ")).toContain("7,800 feet");
	});

	it("never prints an owner, not the reader's own either", () => {
		const text = starterText("horizontal").replace(
			"name: Windmill well,",
			"name: Windmill well, owner: Zebulon Quarry,",
		);
		const { findings } = understandText(text);
		if (findings === undefined) throw new Error("the changed starter has faults");
		for (const neighbor of [undefined, "ww-1", "ww-2"]) {
			const [document] = composePapers(findings, [request(neighbor)]).documents;
			if (document === undefined) throw new Error("no paper");
			expect(JSON.stringify(document)).not.toContain("Zebulon");
		}
	});

	it("says which neighbors there are where one is unknown, or is kept from the public", () => {
		const { unknownNeighbor, documents } = composePapers(findingsOf("horizontal"), [request("ww-9")]);
		expect(documents).toEqual([]);
		expect(unknownNeighbor).toEqual({
			asked: "ww-9",
			neighbors: ["ww-1", "ww-2", "home-1", "creek", "lease", "unit", "property"],
		});
		const { findings } = understandText(
			starterText("horizontal").replace("name: Windmill well,", "name: Windmill well, papers: [regulator],"),
		);
		if (findings === undefined) throw new Error("the changed starter has faults");
		expect(composePapers(findings, [request("ww-1")]).unknownNeighbor?.neighbors).not.toContain("ww-1");
	});

	it("is as plain as the rest: grade at most 8", () => {
		for (const neighbor of ["ww-1", "home-1"]) {
			const water = edition(neighbor).paper.sections.find(({ id }) => id === "fears");
			expect(fleschKincaidGrade(counts(runningText(water?.blocks ?? [])))).toBeLessThanOrEqual(8);
		}
	});
});
