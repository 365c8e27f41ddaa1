import axe from "axe-core";
import { describe, expect, it } from "vitest";
import { sequencePage } from "../../../src/pipeline.ts";
import { JSDOM } from "../../run/jsdom.ts";
import { findingsOf, STARTERS } from "../../starters.ts";

const NEEDS_PAINT = ["color-contrast", "target-size"];

const pages = new Map<string, Promise<string>>();
const pageText = (starter: (typeof STARTERS)[number], language: "en" | "es"): Promise<string> => {
	const key = `${starter} ${language}`;
	const made =
		pages.get(key) ?? sequencePage(findingsOf(starter), "field", language).then(({ text }) => text);
	pages.set(key, made);
	return made;
};

/** A page whose script runs; `reduced` is what the reader's system asks for. */
const opened = (html: string, reduced: boolean) => {
	const timers: number[] = [];
	const { window } = new JSDOM(html.replace(/<style>[\s\S]*?<\/style>/u, ""), {
		runScripts: "dangerously",
		beforeParse: (view) => {
			view.matchMedia = ((query: string) => ({ matches: reduced && query.includes("reduce") })) as never;
			view.setInterval = ((_: unknown, every: number) => timers.push(every)) as never;
			view.clearInterval = (() => undefined) as never;
		},
	});
	const shown = () => window.document.querySelector(".frame.shown")?.id;
	const press = (key: string) =>
		window.document.body.dispatchEvent(new window.KeyboardEvent("keydown", { key, bubbles: true }));
	return { window, timers, shown, press };
};

describe.each(STARTERS)("the page of the steps, %s", (starter) => {
	it.each(["en", "es"] as const)("fetches nothing and has no barrier, in %s", async (language) => {
		const html = await pageText(starter, language);
		expect(html.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:/u);
		expect(html).not.toMatch(/(?:src|href)="|@import/u);
		const { window } = new JSDOM(html.replace(/<style>[\s\S]*?<\/style>/u, ""), {
			runScripts: "outside-only",
		});
		for (const shape of window.document.querySelectorAll("svg > :not(title, desc)")) shape.remove();
		window.eval(axe.source);
		const { violations, passes } = await (window["axe"] as typeof axe).run(window.document, {
			rules: Object.fromEntries(NEEDS_PAINT.map((id) => [id, { enabled: false }])),
			resultTypes: ["violations", "passes"],
		});
		expect(passes.length).toBeGreaterThan(10);
		expect(violations.map(({ id }) => id)).toEqual([]);
		for (const svg of window.document.querySelectorAll("svg"))
			expect((svg.querySelector("desc")?.textContent ?? "").length).toBeGreaterThan(40);
	});
});

describe("the page of the steps", () => {
	it("goes round by the keyboard, and stops where its reader takes it", async () => {
		const { window, shown, press, timers } = opened(await pageText("horizontal", "en"), false);
		const ids = [...window.document.querySelectorAll(".frame")].map(({ id }) => id);
		expect(timers.length).toBe(1);
		expect(shown()).toBe(ids[0]);
		press("ArrowLeft");
		expect(shown()).toBe(ids.at(-1));
		press("ArrowRight");
		press("ArrowRight");
		expect(shown()).toBe(ids[1]);
		expect(window.document.getElementById("play")?.textContent).toBe("Play");
		expect(window.document.getElementById("frames")?.getAttribute("aria-live")).toBe("polite");
	});

	it("does not move by itself where less motion is asked for", async () => {
		const { timers, window } = opened(await pageText("horizontal", "en"), true);
		expect(timers).toEqual([]);
		window.document.getElementById("play")?.click();
		expect(timers.length).toBe(1);
	});

	it("shows every step without its script", async () => {
		const html = await pageText("horizontal", "en");
		const { window } = new JSDOM(html);
		expect(window.document.querySelectorAll(".frame").length).toBe(20);
		expect(window.document.body.classList.contains("alone")).toBe(false);
	});

	it("is the same bytes each time", async () => {
		const again = await sequencePage(findingsOf("horizontal"), "field", "en");
		expect(again.text).toBe(await pageText("horizontal", "en"));
	});
});
