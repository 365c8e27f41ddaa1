import { describe, expect, it } from "vitest";
import type { Block, Cell } from "../../src/document/blocks.ts";
import type { PaperDocument } from "../../src/document/document.ts";
import { composePapers, type PaperRequest } from "../../src/pipeline.ts";
import type { Laid, LaidPage } from "../../src/render/pdf/layout/laid.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { starterText, understandText } from "../starters.ts";

/*
 * A sheet with more on it than its two sides hold: the worst wells have the most reasons to stop, and must not be the ones that
 * get no sheet. What does not fit is on a third page, and the first says so.
 */

const wordsOf = (item: Laid): string =>
	item.kind === "text" ? item.source : item.kind === "box" ? item.flow.map(wordsOf).join("\n") : "";
const pageWords = ({ children }: LaidPage): string => children.map(({ item }) => wordsOf(item)).join("\n");

const told = (cell: Cell): string =>
	cell.kind === "rich"
		? cell.children.map((each) => (each.kind === "text" ? each.text : "")).join(" ")
		: cell.kind === "text" || cell.kind === "unset"
			? cell.text
			: "";

/** Every word that a block says, save numbers, which are printed by the renderer. */
const sayings = (block: Block): string => {
	switch (block.kind) {
		case "callout":
		case "columns":
			return block.blocks.map(sayings).join(" ");
		case "list":
			return block.items.flat().map(sayings).join(" ");
		case "paragraph":
			return told({ kind: "rich", children: block.children });
		case "heading":
			return block.text;
		case "facts":
			return block.items.map(({ label, value }) => `${label} ${told(value)}`).join(" ");
		case "table":
			return block.rows.flatMap(({ cells }) => Object.values(cells).map(told)).join(" ");
		default:
			return "";
	}
};

type Edit = readonly [from: string, to: string];

const edited = (text: string, edits: readonly Edit[]): string =>
	edits.reduce((said, [from, to]) => {
		if (!said.includes(from)) throw new Error(`the starter has no ${from}`);
		return said.replace(from, to);
	}, text);

/** The horizontal starter with this in the place of that: in its production string, and after its strings. */
const findingsWith = (ofString: readonly Edit[], after: readonly Edit[] = []) => {
	const whole = starterText("horizontal");
	const [from, to] = [whole.indexOf("  - id: production\n    hole"), whole.indexOf("\nwellhead: {")];
	const text =
		whole.slice(0, from) + edited(whole.slice(from, to), ofString) + edited(whole.slice(to), after);
	const { findings, diagnostics } = understandText(text, "horizontal.yaml");
	if (findings === undefined) throw new Error(JSON.stringify(diagnostics));
	return findings;
};

const NO_VISCOSITY: Edit = [", plastic_viscosity: 1 cP, yield_point: 0 lbf/100ft2, last: ", ", last: "];

const paperOf = (findings: ReturnType<typeof findingsWith>, more: Partial<PaperRequest> = {}) => {
	const [made] = composePapers(findings, [
		{ paper: "crew", language: "en", units: "field", job: "cementing-production", ...more },
	]).documents;
	if (made === undefined) throw new Error("there is no sheet");
	return made.paper;
};

/** The reasons to stop of a sheet made longer: so many of each. */
const withReasons = (paper: PaperDocument, times: number): PaperDocument => {
	let count = 0;
	const blocks = (all: readonly Block[]): readonly Block[] =>
		all.map((block) => {
			if (block.kind === "callout") return { ...block, blocks: blocks(block.blocks) };
			if (block.kind !== "list" || block.goesOn === undefined) return block;
			const items = Array.from({ length: times }, (_, i) => {
				count += 1;
				const kind: Block["kind"] = "paragraph";
				const text = `Reason ${i + 1}: ${"the pressure at the shoe while the plug is displaced is not known. ".repeat(3)}`;
				return [{ kind, children: [{ kind: "text" as const, text }] }];
			});
			return { ...block, items };
		});
	const made = {
		...paper,
		sections: paper.sections.map((section) => ({ ...section, blocks: blocks(section.blocks) })),
	};
	if (count === 0) throw new Error("the sheet has no reason to stop");
	return made;
};

describe("a sheet with more reasons to stop than it has room for", () => {
	const paper = paperOf(findingsWith([NO_VISCOSITY]));
	const { pages, findings } = setPaper(paper);
	const [front = "", , third = ""] = pages.map(pageWords);

	it("is set, on a third page where two do not hold it", () => {
		expect(findings).toEqual([]);
		expect(pages.length).toBe(3);
	});

	it("says on its first page what is on the third, and titles that as the front's", () => {
		expect(front).toMatch(/STOP: Read also page 3/u);
		expect(third).toContain("Front of the sheet, continued: cementing, production string");
	});

	it("says every word of the paper, and each thing once", () => {
		// A callout's tone and a box to fill are the page's own; the text edition rules lines and draws boxes.
		const words = (text: string): readonly string[] => text.match(/[\p{L}\d.,§]{3,}/gu) ?? [];
		const on = new Set(words(pages.map(pageWords).join(" ").replaceAll("\u00a0", " ")));
		const said = words(paper.sections.map(({ blocks }) => blocks.map(sayings).join(" ")).join(" "));
		expect(said.length).toBeGreaterThan(300);
		expect(said.filter((word) => !on.has(word))).toEqual([]);
		expect(front).not.toContain("If returns stop\n");
		expect(third).toContain("If returns stop");
	});
});

it.each([6, 12, 30, 80])(
	"keeps the worst of %i reasons on page 1, and the rest behind the sheet",
	(times) => {
		const paper = withReasons(paperOf(findingsWith([NO_VISCOSITY])), times);
		const { pages, findings } = setPaper(paper);
		expect(findings).toEqual([]);
		const [front = "", back = "", ...behind] = pages.map(pageWords);
		for (const worst of [1, 2, 3]) expect(front).toContain(`Reason ${worst}:`);
		const onFront = [...front.matchAll(/Reason \d+:/gu)].length;
		const after = [...behind.join("\n").matchAll(/Reason \d+:/gu)].map(([found]) => found);
		expect(new Set(after).size).toBe(times - onFront);
		expect(onFront + after.length).toBe(times);
		expect(front).toContain(`${times - onFront} more reason`);
		expect(front).toContain("Anyone may stop this job");
		expect(back).toContain("Emergency");
		expect(renderText(paper)).toContain(`Reason ${times}:`);
	},
);

it("puts what is broken before what is unknown, and loses none, with five more faults", () => {
	const paper = paperOf(
		findingsWith([
			NO_VISCOSITY,
			["line_test: 8000 psi", "line_test: 500 psi"],
			["plugs: [bottom, top]", "plugs: [bottom]"],
			["floats: [float shoe, float collar]", "floats: [float shoe]"],
			["class: H, from: 5400", "class: A, from: 5400"],
			["thickening_time: 6 hr", "thickening_time: 1 hr"],
		]),
	);
	const { pages, findings } = setPaper(paper);
	expect(findings).toEqual([]);
	expect(pages.length).toBe(3);
	const [front = "", , third = ""] = pages.map(pageWords);
	expect(front).toMatch(/Read also page 3\s+3 more reasons to stop/u);
	for (const broken of ["reaches its thickening time", "is of class A", "No top plug is listed"])
		expect(front).toContain(broken);
	expect(third).toContain("has no collar named");
	expect(third).toMatch(/comes within 659\spsi of the pressure of the shoe test/u);
	// Two rules ask for the flow of the two fluids, and one needs it: two reasons, each naming once what it misses.
	const flow =
		"plastic viscosity or yield point of the displacement and the last displacement in the cement job of";
	expect(third.split(flow).length - 1).toBe(2);
	expect(third).toMatch(
		/last displacement in the cement job of[^•]*is not given\.[^•]*\(common practice; API RP 54\)/u,
	);
});

it("goes on in two languages, and on the pack of every job", () => {
	const findings = findingsWith([NO_VISCOSITY]);
	const both = setPaper(withReasons(paperOf(findings, { second: "es" }), 40));
	expect(both.findings).toEqual([]);
	expect(both.pages.length).toBeGreaterThan(2);
	expect(both.pages.map(pageWords)[0]).toMatch(/Read also page 3 \/ Lea también la página 3/u);
	const all = setPaper(paperOf(findings, { job: "all" }));
	expect(all.findings).toEqual([]);
	const texts = all.pages.map(pageWords);
	const at = texts.findIndex((text) => /STOP: Read also page \d+/u.test(text));
	const [, page] = /Read also page (\d+)/u.exec(texts[at] ?? "") ?? [];
	expect(texts[Number(page) - 1]).toContain("Front of the sheet, continued: cementing, production string");
	expect(Number(page)).toBe(at + 3);
});

it("hangs a second poster behind the first, where the first has no room for every reason", () => {
	const findings = findingsWith([], [["relief_valve: 9400 psi", "relief_valve: 9900 psi"]]);
	const { pages, findings: faults } = setPaper(withReasons(paperOf(findings, { job: "poster" }), 25));
	expect(faults).toEqual([]);
	const [first = "", second = ""] = pages.map(pageWords);
	expect(first).toMatch(/Read also page 2/u);
	expect(second).toContain("Pumping: pressures that limit the job, continued");
	expect(second).toContain("Reason 25:");
});

it("puts behind the sheet what its back has no room for", () => {
	const lessons = Array.from(
		{ length: 60 },
		(_, i) => `"Lesson ${i + 1}: the hose of the return line was not tied down when the plug landed"`,
	);
	const findings = findingsWith([], [["  lessons: [", `  lessons: [${lessons.join(", ")}, `]]);
	const { pages, findings: faults } = setPaper(paperOf(findings));
	expect(faults).toEqual([]);
	const [, back = "", behind = ""] = pages.map(pageWords);
	expect(back).toMatch(/Read also page 3/u);
	expect(back).toMatch(/Lessons: \d+ more/u);
	expect(behind).toContain("Back of the sheet, continued");
	expect(behind).toContain("Lesson 60:");
});
