import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { SLIDE_PICTURES } from "../../src/catalog/own-slides.ts";
import type { PaperDocument } from "../../src/document/document.ts";
import { SLIDE_VALUES } from "../../src/paper/slides/own-slides.ts";
import { PICTURES } from "../../src/paper/slides/pictures.ts";
import { readOwnSlides } from "../../src/paper/slides/read-own-slides.ts";
import { slideData } from "../../src/paper/slides/slides.ts";
import { loadWords } from "../../src/paper/words/words.ts";
import { composePapers, faultsOfOwnSlides } from "../../src/pipeline.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { ROOT } from "../broken/broken-case.ts";
import { findingsOf, STARTERS, type Starter } from "../starters.ts";

const README = readFileSync(new URL("src/paper/slides/README.md", ROOT), "utf8");
const EXAMPLE = /```yaml\n(.*?)```/su.exec(README)?.[1] ?? "";

const slidesIn = (text: string) => {
	const { value, diagnostics } = readOwnSlides(text, "own.yaml");
	expect(diagnostics).toEqual([]);
	return [{ name: "own.yaml", slides: value ?? [] }];
};

const talk = (starter: Starter, paper: "slides" | "notes", text: string, language: "en" | "es" = "en") => {
	const [made] = composePapers(findingsOf(starter), [
		{ paper, language, units: "field", ownSlides: slidesIn(text) },
	]).documents;
	return made?.paper as PaperDocument;
};

it("the README's example stands where it says, with this well's numbers, in slides and notes", () => {
	const slides = talk("horizontal", "slides", EXAMPLE);
	const ids = slides.sections.map(({ title }) => title);
	expect(ids.indexOf("We pay for the road")).toBe(ids.indexOf("How many trucks, and when") + 1);
	expect(ids.indexOf("What we will come back with")).toBe(ids.length - 2);
	const said = renderText(slides).replaceAll("\u00a0", " ");
	expect(said).toContain("We repair what 1,200 loads wear off County Road 212 (fictional).");
	expect(said).toContain("the date of the first truck");
	const notes = renderText(talk("horizontal", "notes", EXAMPLE)).replaceAll("\u00a0", " ");
	expect(notes).toContain("Who decides what is worn?");
	expect(notes).toContain("The county walks the road with us");
	expect(notes).toMatch(/1,200.*1,241/u);
	expect(renderText(talk("horizontal", "slides", EXAMPLE, "es"))).toContain("la fecha del primer camión");
});

it("are set a page each, at twenty points or more", () => {
	const { pages, findings } = setPaper(talk("horizontal", "slides", EXAMPLE));
	expect(findings).toEqual([]);
	expect(pages.length).toBe(talk("horizontal", "slides", EXAMPLE).sections.length);
});

it("that do not fit a page are told of, and by which title", () => {
	const long = `slides:\n  - title: Too much\n    say: "${"We have a great deal to say about this. ".repeat(40)}"\n`;
	const { findings } = setPaper(talk("horizontal", "slides", long));
	expect(findings).toContainEqual(expect.objectContaining({ kind: "over-full", text: "Too much" }));
});

it("that name what this well has not are refused at their place", () => {
	const files = slidesIn('slides:\n  - title: Sideways\n    say: "It runs {lateral} to the side."\n');
	const asked = { language: "en", units: "field" } as const;
	expect(faultsOfOwnSlides(findingsOf("horizontal"), asked, files)).toEqual([]);
	const faults = faultsOfOwnSlides(findingsOf("vertical-metric"), asked, files);
	expect(faults.map(({ code, at }) => [code, at.file, at.path.join(" ")])).toEqual([
		["slides/value", "own.yaml", "slides 0 say"],
	]);
});

it("may name no value that says how well the water is protected", () => {
	for (const name of ["steel_layers", "cement_layers", "shoe_below_water", "water_protected"])
		expect(readOwnSlides(`slides:\n  - title: T\n    say: "{${name}}"\n`, "own.yaml").value).toBeUndefined();
});

it("cannot bring markup or an address into the room", () => {
	for (const say of [
		"# A heading",
		"![x](http://x.test/y.png)",
		"<b>bold</b>",
		"| a |\n|---|\n| b |\n\n---",
		"> quote",
	])
		expect(
			readOwnSlides(`slides:\n  - title: T\n    say: ${JSON.stringify(say)}\n`, "own.yaml").value,
			say,
		).toBeUndefined();
});

it("each value and picture that may be named is in the README, and is there for some starter", () => {
	const there = STARTERS.map((starter) =>
		slideData({ ...findingsOf(starter), paper: "slides", words: loadWords("en"), units: "field" }),
	);
	for (const name of SLIDE_VALUES) {
		expect(README).toContain(`\`${name}\``);
		const values = there.map((data) => data[name]);
		expect(
			values.some((value) => typeof value === "string" || typeof value === "object"),
			name,
		).toBe(true);
	}
	expect([...SLIDE_PICTURES].sort()).toEqual(Object.keys(PICTURES).sort());
	for (const { id } of loadWords("en").slides())
		expect(README).toContain(`\`${id === "SEQUENCE" ? "steps" : id}\``);
});
