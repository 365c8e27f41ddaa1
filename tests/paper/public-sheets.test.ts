import { describe, expect, it } from "vitest";
import { LANGUAGES, type PaperDocument } from "../../src/document/document.ts";
import type { Shape } from "../../src/document/shapes.ts";
import { renderHtml } from "../../src/render/html/render-html.ts";
import { SHEETS } from "../../src/render/pdf/design.ts";
import { placesIn } from "../../src/render/pdf/layout/arrange.ts";
import type { Laid } from "../../src/render/pdf/layout/laid.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { blocksOf } from "../render/laid-places.ts";
import { composeOnce } from "../run/compose-once.ts";
import { findingsOf, STARTERS, type Starter } from "../starters.ts";

const EDITIONS = STARTERS.flatMap((starter) =>
	LANGUAGES.flatMap((language) =>
		(["field", "metric"] as const).map((units) => [starter, language, units] as const),
	),
);

const paperOf = (
	starter: Starter,
	paper: "handout" | "answers" | "landowner",
	language: "en" | "es",
	units: "field" | "metric" = "field",
): PaperDocument => {
	const [made] = composeOnce(findingsOf(starter), [{ paper, language, units }]).documents;
	if (made === undefined) throw new Error(`no ${paper}`);
	return made.paper;
};

/** Share of a side that is used at least. */
const FULL = 0.78;

describe("the handout", () => {
	it.each(EDITIONS)("of %s in %s, %s: two sides, both full", (...[starter, language, units]) => {
		const { pages, findings } = setPaper(paperOf(starter, "handout", language, units));
		expect(findings).toEqual([]);
		expect(pages.length).toBe(2);
		const found = blocksOf(pages).filter(({ item }) => item.kind !== "box");
		const { top, bottom, height } = SHEETS.letter;
		for (const [side] of pages.entries()) {
			const end = Math.max(
				...found.filter(({ page }) => page === side).map(({ y, item }) => y + item.height),
			);
			expect((end - top) / (height - top - bottom), `side ${side + 1}`).toBeGreaterThan(FULL);
		}
	});

	it.each(STARTERS)("of %s: says itself what is asked first, and names each additive", (starter) => {
		const { well } = findingsOf(starter);
		const said = renderText(paperOf(starter, "handout", "en"));
		for (const what of ["Your water", "Your sleep", "Your road", "An accident", "Testing your water"])
			expect(said).toContain(what);
		expect(said).toMatch(/The limit there is \d+.decibels/u);
		for (const { name } of well.stimulation?.additives ?? []) expect(said).toContain(name);
		expect(said).toMatch(/555-01\d\d/u);
		// Whoever holds the sheet alone is sent to no other paper for an answer.
		expect(said).not.toMatch(/the packet (has|lists|names)/iu);
	});
});

const sizesIn = (shapes: readonly Shape[]): readonly number[] =>
	shapes.flatMap((shape) =>
		shape.kind === "group" ? sizesIn(shape.children) : shape.kind === "text" ? [shape.size] : [],
	);

const sizesOf = (item: Laid): readonly number[] => {
	if (item.kind === "text") return item.lines.flatMap((line) => line.runs.map(({ style }) => style.size));
	if (item.kind === "drawing") return sizesIn(item.drawing.shapes);
	return placesIn(item).flatMap((child) => sizesOf(child.item));
};

/** Least type that is read at arm's length in a hall; what the head and the foot of a page repeat is smaller [pt]. */
const LECTERN = 11;

describe("the answers at the lectern", () => {
	it.each(EDITIONS)("of %s in %s, %s: nothing is under 11 points", (...[starter, language, units]) => {
		const { pages, findings } = setPaper(paperOf(starter, "answers", language, units));
		expect(findings).toEqual([]);
		const { top, bottom, height } = SHEETS.letter;
		const sizes = pages.flatMap(({ children }) =>
			children
				.filter(({ y, item }) => y >= top - 1 && y + item.height <= height - bottom + 1)
				.flatMap(({ item }) => sizesOf(item)),
		);
		expect(sizes.length).toBeGreaterThan(200);
		expect(Math.min(...sizes)).toBeGreaterThanOrEqual(LECTERN);
	});

	it.each(STARTERS)("of %s say units as a speaker does", (starter) => {
		const said = renderText(paperOf(starter, "answers", "en"));
		expect(said).not.toMatch(/\d acre\b(?!s)/u);
		expect(said).toContain("decibels");
	});
});

it.each(STARTERS)("%s: the public is told a version and a day in words, not a form's dates", (starter) => {
	const packet = paperOf(starter, "landowner", "en");
	expect(packet.imprint.words.revision).toBe("Version");
	expect(packet.imprint.issuedAs).toMatch(/^[A-Z][a-z]+ \d{1,2}, 20\d\d$/u);
	expect(packet.imprint.validUntil).toBeUndefined();
});

it.each(STARTERS)(
	"%s: on a phone a broad drawing is moved along under the finger, and by the keyboard",
	(starter) => {
		const page = renderHtml(paperOf(starter, "landowner", "en"));
		const broad = [
			...page.matchAll(/<div class="wide drawing" role="group" tabindex="0" aria-label="[^"]+">/gu),
		];
		expect(broad.length).toBeGreaterThan(2);
		expect(page).toContain("@media screen and (max-width:40rem){.drawing svg{max-width:none;width:42rem}}");
	},
);
