import axe from "axe-core";
import { describe, expect, it } from "vitest";
import type { PaperDocument } from "../../../src/document/document.ts";
import { renderHtml } from "../../../src/render/html/render-html.ts";
import { composeOnce } from "../../run/compose-once.ts";
import { documentOf, ONE_OF_EACH } from "../../run/editions.ts";
import { JSDOM } from "../../run/jsdom.ts";
import { findingsOf } from "../../starters.ts";
import { stringsOf } from "../printed-strings.ts";

/** What only a browser that lays out and paints can judge; contrast is computed in a test of its own. */
const NEEDS_PAINT = ["color-contrast", "target-size"];

interface Barrier {
	readonly id: string;
	readonly where: string;
}

const pageOf = (html: string): InstanceType<typeof JSDOM> =>
	new JSDOM(html.replace(/<style>[\s\S]*?<\/style>/u, ""), { runScripts: "outside-only" });

/** Rows of one table that are looked at for barriers: they are all made alike, and a long table takes minutes. */
const ENOUGH_ROWS = 4;

const barriersIn = async (html: string): Promise<readonly Barrier[]> => {
	const { window } = pageOf(html);
	for (const row of window.document.querySelectorAll(`tbody tr:nth-child(n+${ENOUGH_ROWS + 1})`))
		row.remove();
	for (const shape of window.document.querySelectorAll("svg > :not(title, desc)")) shape.remove();
	window.eval(axe.source);
	const run = window["axe"] as typeof axe;
	const rules = Object.fromEntries(NEEDS_PAINT.map((id) => [id, { enabled: false }]));
	const { violations, passes } = await run.run(window.document, {
		rules,
		resultTypes: ["violations", "passes"],
	});
	expect(passes.length).toBeGreaterThan(15);
	return violations.flatMap(({ id, nodes }) => nodes.map((node) => ({ id, where: node.html.slice(0, 120) })));
};

const squash = (text: string): string => text.replaceAll(/\s+/gu, "");

const faultsOf = (html: string, document: PaperDocument): readonly string[] => {
	const { window } = pageOf(html);
	// The attachment and its appendices lead to each other, beside each other in one folder.
	const withoutCompanion =
		document.companion === undefined ? html : html.replaceAll(`href="${document.companion}.html#`, 'href="#');
	const page = window.document;
	const text = squash(page.body.textContent ?? "");
	const ids = [...page.querySelectorAll("[id]")].map(({ id }) => id);
	const links = [...page.querySelectorAll("a[href^='#']")].map((a) => a.getAttribute("href")?.slice(1) ?? "");
	const levels = [...page.querySelectorAll("h1,h2,h3,h4,h5,h6")].map(({ tagName }) =>
		Number(tagName.slice(1)),
	);
	const strings = document.sections.flatMap((section) => [
		section.title,
		...stringsOf(section.blocks, { units: document.units, language: document.language }),
	]);
	const shape = [...page.querySelectorAll("table")].flatMap((table) => {
		const wide = [...table.rows].map((row) => [...row.cells].reduce((sum, cell) => sum + cell.colSpan, 0));
		return new Set(wide).size === 1 ? [] : [`rows unequal: ${table.caption?.textContent}`];
	});
	return [
		...strings.filter((string) => !text.includes(squash(string))).map((string) => `not printed: ${string}`),
		...ids.filter((id, i) => ids.indexOf(id) !== i).map((id) => `two of id ${id}`),
		...links.filter((id) => !ids.includes(id)).map((id) => `leads nowhere: #${id}`),
		...levels
			.filter((level, i) => level > (levels[i - 1] ?? 0) + 1)
			.map((level) => `heading skipped to h${level}`),
		...shape,
		...(page.documentElement.lang.startsWith(document.language) ? [] : ["language"]),
		...(page.querySelectorAll("script,img,iframe,object,link,[onload],[onclick],[srcset]").length === 0
			? []
			: ["something that runs or is fetched"]),
		...[...page.querySelectorAll("th:not([scope])")].map((th) => `head without scope: ${th.textContent}`),
		...[...page.querySelectorAll("svg")]
			.filter(
				(svg) =>
					(svg.querySelector("desc")?.textContent ?? "").length < 20 || svg.getAttribute("role") !== "img",
			)
			.map((svg) => `figure without text: ${svg.querySelector("title")?.textContent}`),
		...(/(?:src|href)="(?!#|https?:|mailto:|tel:)|url\((?!data:|#)|@import|data-key/u.test(withoutCompanion)
			? ["a reference out of the file"]
			: []),
	];
};

it.each(ONE_OF_EACH)(
	"$title: the HTML edition says what the paper says and has no barrier",
	async (edition) => {
		const document = documentOf(edition);
		const html = renderHtml(document);
		expect(renderHtml(document) === html).toBe(true);
		expect(faultsOf(html, document)).toEqual([]);
		expect(await barriersIn(html)).toEqual([]);
	},
);

describe("the checks of an edition", () => {
	const document = composeOnce(findingsOf("horizontal"), [
		{ paper: "handout", language: "en", units: "field" },
	]).documents[0]?.paper;
	if (document === undefined) throw new Error("no handout");
	const html = renderHtml(document);
	it.each([
		["a heading skipped", html.replace("<h2>", "<h5>").replace("</h2>", "</h5>")],
		["an id twice", html.replace('<main id="paper">', '<main id="paper"><p id="paper"></p>')],
		["a link to nowhere", html.replace('href="#paper"', 'href="#away"')],
		["a number that is not there", html.replaceAll(">984<", "><").replaceAll("984", "")],
		["a script", html.replace("<main", "<script></script><main")],
		["a picture without words", html.replaceAll(/<desc[\s\S]*?<\/desc>/gu, "")],
	])("catch %s", (_, broken) => {
		expect(broken).not.toBe(html);
		expect(faultsOf(broken, document)).not.toEqual([]);
	});
	it.each([
		["no language", html.replace(' lang="en-US"', ""), "html-has-lang"],
		["no title", html.replace(/<title>.*?<\/title>\n<style>/u, "<style>"), "document-title"],
		[
			"a picture without a name",
			html.replace(/ aria-labelledby="d\d+[^"]*"/u, "").replace(/<title id[^<]*<\/title>/u, ""),
			"svg-img-alt",
		],
	])("find %s with axe", async (_, broken, id) => {
		expect(broken).not.toBe(html);
		expect((await barriersIn(broken)).map((barrier) => barrier.id)).toContain(id);
	});
});
