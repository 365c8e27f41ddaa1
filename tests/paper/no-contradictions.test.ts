import { describe, expect, it } from "vitest";
import type { Paper } from "../../src/document/document.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { composeOnce } from "../run/compose-once.ts";
import { findingsOf, STARTERS, type Starter } from "../starters.ts";

/*
 * What two papers of one well say of one thing is one thing. Each case was found by reading all papers of the starters
 * beside each other.
 */

const paper = (starter: Starter, paper: Paper, language: "en" | "es" = "en"): string => {
	const units = starter === "vertical-metric" ? "metric" : "field";
	const [made] = composeOnce(findingsOf(starter), [{ paper, language, units }]).documents;
	if (made === undefined) throw new Error(`no ${paper} of ${starter}`);
	return renderText(made.paper).replaceAll(/[\u00a0\u202f\u2009]/gu, " ");
};

const PUBLIC = ["landowner", "handout", "answers", "slides"] as const;

describe.each(STARTERS)("the papers of %s", (starter) => {
	it.each(PUBLIC)("%s: first away from it, then call", (each) => {
		expect(paper(starter, each)).toContain("get away first, then call 911");
		expect(paper(starter, each)).not.toContain("call 911 first");
		expect(paper(starter, each, "es")).toMatch(/primero aléjese y luego llame al 911/u);
	});

	it("count the checks for an engineer alike in the letter, in the section and above the table", () => {
		const confirm = findingsOf(starter).judgement.counts["needs judgement"];
		expect(paper(starter, "transmittal")).toContain(`for an engineer to confirm: ${confirm}.`);
		expect(paper(starter, "regulator")).toContain(`for an engineer to confirm: ${confirm};`);
		expect(paper(starter, "regulator")).toContain(`Engineer to confirm: ${confirm}\n`);
	});

	it("tell the least separation of fractures and water by one number", () => {
		const [, separation] =
			paper(starter, "regulator").match(
				/The highest modeled fracture top is ([\d,.]+ k?(?:ft|m)) below protected/u,
			) ?? [];
		expect(separation).toBeDefined();
		expect(paper(starter, "regulator-appendix")).toContain(`Separation from protected water: ${separation}`);
	});

	it("leave no question open on one paper that another answers", () => {
		const open = paper(starter, "answers").split("No answer yet").slice(1).join();
		expect(open).not.toContain("Day and night? Lights?");
		expect(open).not.toContain("How do I comment, and by when?");
		expect(open).not.toContain("How many wells, now and later?");
		if (findingsOf(starter).well.offsetWells.some(({ evidence }) => evidence !== undefined))
			expect(open).not.toContain("How do you know the old wells nearby are plugged?");
	});

	it("give the speaker the numbers that the slide shows", () => {
		const shown = paper(starter, "slides").match(/0\.\d\d %/u)?.[0] ?? "none";
		expect(paper(starter, "notes")).toContain(`${shown} | `);
	});

	it("name a water well's depth from the ground, on slides as in the packet", () => {
		const deepest = findingsOf(starter)
			.well.neighbors.flatMap(({ name, depth }) =>
				depth === undefined ? [] : [{ name, depth: depth.depth.value }],
			)
			.toSorted((a, b) => b.depth - a.depth)[0];
		if (deepest === undefined) throw new Error("no water well");
		const said = paper(starter, "slides").match(
			new RegExp(`${deepest.name}: ([\\d,.]+) (feet|meters) deep`, "u"),
		);
		if (said === null) return;
		const feet = Number(said[1]?.replace(",", "")) / (said[2] === "meters" ? 0.3048 : 1);
		expect(Math.abs(feet - deepest.depth)).toBeLessThan(deepest.depth * 0.05);
	});
});

describe("other wells", () => {
	it("are as near on the slides as in the packet and in the regulator's copy", () => {
		expect(paper("horizontal-as-built", "slides")).toContain("Tamarack Draw 8-22H: 84 feet, hole to hole");
		expect(paper("horizontal-as-built", "landowner")).toContain("comes as near as about 84 feet");
		expect(paper("horizontal-as-built", "notes")).toContain("84 feet | 84 ft");
		expect(paper("horizontal", "slides")).toContain("Sorrel 1: 2,400 feet, hole to hole");
		expect(paper("horizontal", "landowner")).toContain(
			"comes as near as about 2,400 feet to it. The other well ends about 4,800 feet above the highest opening in our pipe.",
		);
	});
});

describe("the plan of the horizontal well", () => {
	it("finishes the cement job when returns stop, in the operator's own words too", () => {
		expect(paper("horizontal", "slides")).toContain("We finish the job, find the top of the cement");
		expect(paper("horizontal", "answers")).toContain("Slow to 3 bbl/min and finish the job.");
	});

	it("opens the toe on the slides as the regulator's copy has it", () => {
		expect(paper("horizontal", "regulator")).toContain("guns on coiled tubing");
		expect(paper("horizontal", "slides")).toContain("A tool on coiled tubing shoots 48 small holes");
	});

	it("tells the public one measure of cement: gallons, as on the slides", () => {
		expect(paper("horizontal", "landowner")).toContain(
			"The gap around the pipe holds about 7,900 gallons. We mix about 10,000 gallons of cement",
		);
		expect(paper("horizontal", "slides")).toContain(
			"The gap holds about 7,900 gallons and we mix about 10,000 gallons",
		);
	});

	it("does not deny the error model that the next page reports", () => {
		expect(paper("horizontal", "regulator")).toContain("ISCWSA MWD, revision 5");
		expect(paper("horizontal", "regulator-appendix")).not.toContain("No survey error model");
	});

	it("prints a rating to ten psi wherever it stands", () => {
		expect(paper("horizontal", "regulator-appendix")).toContain(
			"(0.8 × 2,730 psi, the lowest rating of pipe",
		);
		expect(paper("horizontal", "regulator-appendix")).not.toContain("2,735 psi");
		expect(paper("horizontal", "regulator-appendix")).toContain(
			"14,540 psi, the collapse of the string inside",
		);
	});
});

describe("the record of the built well", () => {
	it("is told in the past wherever it is told", () => {
		for (const each of ["slides", "notes"] as const) {
			expect(paper("horizontal-as-built", each)).not.toContain("We pump at no more than");
			expect(paper("horizontal-as-built", each)).not.toContain("The relief valve opens at");
		}
		expect(paper("horizontal-as-built", "notes")).toContain("We drilled it with fresh-water mud.");
		expect(paper("horizontal-as-built", "regulator-appendix")).toContain(
			"Pump jack well was sampled on 2025-09-22, before the start of the stimulation, which was on 2026-01-12.",
		);
	});

	it("has on the slides the days that the packet has", () => {
		expect(paper("horizontal-as-built", "slides")).toContain("Nov 3, 2025 to Dec 2, 2025");
		expect(paper("horizontal-as-built", "landowner")).toContain("Nov 3, 2025 to Dec 2, 2025");
	});

	it("leaves the crew no sheet as if its job were to come", () => {
		const jobs = jobsOfWell(findingsOf("horizontal-as-built").well);
		expect(jobs.filter(({ done }) => !done).map(jobName)).toEqual([]);
		expect(jobs.find(({ id }) => id === "flowback")?.doneOn).toBe("2026-02-27");
	});

	it("names the short stage among the deviations, and counts no stage fifteen times", () => {
		const text = paper("horizontal-as-built", "regulator");
		expect(text).toContain("Proppant of stage 17, the least of its plan | 264,600 lb | 198,300 lb");
		expect(text).toContain("Stages planned otherwise than the rest | – | stage 15");
	});

	it("has both sizes of its last pipe", () => {
		expect(paper("horizontal-as-built", "slides")).toContain("5½ inches wide above and 5 inches wide below");
	});
});
