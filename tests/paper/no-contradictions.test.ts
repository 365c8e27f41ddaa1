import { describe, expect, it } from "vitest";
import type { Paper } from "../../src/document/document.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { composeOnce } from "../run/compose-once.ts";
import { findingsOf, STARTERS, type Starter, starterText, understandText } from "../starters.ts";

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

const sheet = (starter: Starter, job: string): string => {
	const [made] = composeOnce(findingsOf(starter), [
		{ paper: "crew", language: "en", units: "field", job },
	]).documents;
	if (made === undefined) throw new Error(`no ${job} of ${starter}`);
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

	it("does not deny the error model that it reports", () => {
		expect(paper("horizontal", "regulator-appendix")).toContain("ISCWSA MWD, revision 5");
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
		expect(text).toContain("Stage 17, screen-out | 264,600 lb | 198,300 lb");
		expect(text).toContain("Stages planned otherwise than the rest | – | stage 15");
	});

	it("has both sizes of its last pipe", () => {
		expect(paper("horizontal-as-built", "slides")).toContain("5½ inches wide above and 5 inches wide below");
	});
});

describe("numbers that a reader takes from each other", () => {
	it("a margin is what is left between the two beside it", () => {
		const text = paper("horizontal", "regulator");
		expect(text).toContain("| ≥ 10,450 psi | 12,370 psi | 1,920 psi");
		expect(text).toMatch(/Factor, surface \| 2\.08 collapse, .* \| ≥ 1\.125 \| 0\.96/u);
		expect(text).toMatch(/Cement pumped over calculated, least: 1\.25 \| ≥ 1\.10 \| 0\.15/u);
	});

	it("a wait is counted in hours on every paper", () => {
		for (const starter of STARTERS)
			expect(paper(starter, "regulator")).toMatch(/\| ≥ 8 hr \| \d+ hr(?:, production)? \| \d+ hr/u);
	});

	it("the exact number is no rounder than the one said", () => {
		expect(paper("horizontal", "notes")).toContain("0.34 % | 0.34 % |");
		expect(paper("horizontal-as-built", "notes")).toContain("0.37 % | 0.37 % |");
	});

	it("a height of cement names the place it is counted from, beside the depth of its top", () => {
		const text = sheet("horizontal", "cementing-production");
		expect(text).toContain("Cement top: 5,400 ft");
		expect(text).not.toContain("Top of cement |");
		expect(text).toContain("Height of cement above the shoe | at least 600 ft | 11,845 ft |");
		expect(text).toContain("Height of cement above the previous shoe | at least 200 ft | 1,080 ft |");
	});

	it("a limit of nothing is told by its place", () => {
		expect(sheet("horizontal", "casing-surface")).toContain("16 TAC § 3.13(b)(1) (must reach it)");
		expect(sheet("horizontal", "casing-surface")).not.toContain("at least 0 ft");
	});
});

describe("one question, one answer", () => {
	it("the packet answers of the old wells what the presenter answers", () => {
		for (const starter of ["horizontal", "horizontal-as-built"] as const) {
			const packet = paper(starter, "landowner");
			expect(packet).toMatch(/How do you know the old wells nearby are sealed\?\S* \S.*: cement plug\./u);
			expect(packet).not.toMatch(/We do not know yet\.[^\n]*the old wells nearby/u);
			expect(packet).not.toContain("undefined");
			expect(paper(starter, "answers")).toContain("cement plug (plugging record of");
		}
	});

	it("notes ask nothing that they leave without an answer which another paper has", () => {
		expect(paper("horizontal", "notes")).toContain("What changed is on the answers sheet.");
		expect(paper("horizontal", "answers")).toContain("Last change: surface casing set 25 ft deeper.");
		expect(paper("horizontal", "notes")).not.toContain("who pays for the damage");
		expect(paper("horizontal", "notes")).not.toContain("shows whose land");
	});

	it("a rounded cement top is said to be about it, and the exact one is the regulator's", () => {
		expect(paper("horizontal", "slides")).toContain("up to about 5,400 feet below the ground");
		expect(paper("horizontal", "notes")).toContain("Its top will be 5,374 feet below the ground");
		expect(paper("horizontal-as-built", "notes")).toContain("Its top is 5,845 feet below the ground");
		expect(paper("horizontal", "slides", "es")).toMatch(/hasta unos 5,400 pies bajo tierra/u);
	});
});

describe("two papers to the agency", () => {
	it("the attachment names every appendix that is bound with it", () => {
		for (const starter of STARTERS)
			for (const language of ["en", "es"] as const) {
				const named = paper(starter, "regulator", language);
				const [made] = composeOnce(findingsOf(starter), [
					{ paper: "regulator-appendix", language, units: "field" },
				]).documents;
				for (const { number } of made?.paper.sections ?? [])
					if (number !== undefined)
						expect(named, starter).toMatch(new RegExp(`(?:Appendix|Apéndice) ${number}\\b`, "u"));
			}
	});

	it("the slurry pumped stands beside the one calculated, and is the public's", () => {
		const row = /Surface \| To surface \| .*\| 215\.4 \| 229\.5 \|/u;
		expect(paper("horizontal-as-built", "regulator")).toMatch(row);
		expect(paper("horizontal-as-built", "notes")).toContain("229.5 bbl = 9,639 gal");
	});

	it("cement across the water is recorded, and how well it seals is said beside it", () => {
		expect(paper("horizontal-as-built", "regulator")).toContain("0 planned, 2 recorded");
		expect(paper("horizontal-as-built", "regulator-appendix")).toContain("2, recorded 2");
	});

	it("no source is named twice for one string", () => {
		expect(paper("horizontal", "regulator")).not.toContain("common practice; common practice");
	});
});

describe("work that is done", () => {
	it("has its tables and pictures titled in the past", () => {
		const text = paper("horizontal-as-built", "landowner");
		expect(text).toContain("Everything that was pumped");
		expect(text).toContain("How the well was built: from the bare ground");
		expect(text).not.toMatch(/How the well is built|Everything that is pumped/u);
		expect(paper("horizontal", "landowner")).toContain("Everything that is pumped");
	});

	it("is told in the past by the attachment", () => {
		const text = paper("horizontal-as-built", "regulator");
		expect(text).toContain("landed at 8,333 ft MD (8,004 ft TVD) and reached total depth at 15,838 ft MD");
		expect(text).toContain(
			"Surface treating pressure was limited to 9,000 psi; the relief valve was set to open at",
		);
		expect(text).toContain("the first pump was set to trip at 8,500 psi");
		expect(paper("horizontal", "regulator")).toContain("the first pump trips at 8,900 psi");
	});

	it("has its dates in the words for those who cannot see the picture, under a title in the past", () => {
		const text = paper("horizontal-as-built", "landowner");
		expect(text).toContain("[When the work was done]");
		expect(text).toContain("around the clock, done Nov 3, 2025 to Dec 2, 2025");
		expect(paper("horizontal", "landowner")).toContain("[When the work happens]");
		expect(paper("horizontal-as-built", "landowner", "es")).not.toContain("around the clock");
	});

	it("has a job sheet that said, not one that says", () => {
		expect(paper("horizontal-as-built", "notes")).toContain("The job sheet said: Slow to 3 bbl/min");
		expect(paper("horizontal", "notes")).toContain("The job sheet says: Slow to 3 bbl/min");
	});
});

describe("one stage, as the room is told it", () => {
	it("starts with the fluid that the schedule pumps first", () => {
		expect(paper("horizontal", "regulator-appendix")).toMatch(/acid \| acid-15|acid .*24/u);
		for (const each of ["slides", "landowner", "notes"] as const) {
			expect(paper("horizontal", each).replaceAll(/\s+/gu, " ")).toContain(": acid, water, sand, water.");
			expect(paper("horizontal", each, "es").replaceAll(/\s+/gu, " ")).toContain(
				": ácido, agua, arena, agua.",
			);
		}
		expect(paper("vertical-metric", "slides")).toContain(": water, sand, water.");
	});

	it("has the tool of the sentence on the picture too", () => {
		expect(paper("horizontal", "slides", "es")).toContain("De cerca: una herramienta en tubería flexible");
		expect(paper("horizontal-as-built", "slides", "es")).toContain("De cerca: una herramienta en un cable");
	});
});

describe("a well with no other well near it, whose area was searched", () => {
	it.each(["answers", "landowner", "slides", "notes"] as const)(
		"%s: asks for no record of old wells",
		(each) => {
			const open = paper("vertical-metric", each);
			expect(open).not.toMatch(/(?:No answer yet|We do not know yet)[^\n]*How do you know the old wells/u);
			expect(open.split("we do not have an answer so far").slice(1).join()).not.toContain("old wells");
		},
	);

	it("says so, and leaves faults open", () => {
		for (const each of ["answers", "landowner"] as const)
			expect(paper("vertical-metric", each)).toContain(
				"The area was searched, and there is no other well on our list.",
			);
		expect(paper("vertical-metric", "answers")).toContain("About faults we have no answer yet.");
		expect(paper("vertical-metric", "landowner")).toContain("Are there faults near");
		expect(paper("vertical-metric", "answers", "es")).toContain(
			"Se revisó la zona y no hay otros pozos en nuestra lista. De las fallas todavía no tenemos respuesta.",
		);
	});
});

it("is not told that there is no other well where one is only kept from the reader", () => {
	const site = starterText("horizontal").replace(
		"      name: Sorrel 1\n",
		"      name: Sorrel 1\n      papers: [regulator]\n",
	);
	expect(site).not.toBe(starterText("horizontal"));
	const { findings } = understandText(site);
	if (findings === undefined) throw new Error("the changed starter has faults");
	for (const each of ["answers", "landowner", "slides"] as const) {
		const [made] = composeOnce(findings, [{ paper: each, language: "en", units: "field" }]).documents;
		expect(made && renderText(made.paper)).not.toContain("there is no other well on our list");
	}
});

describe("what the speaker holds", () => {
	it("tells of the picture's numbers that have no row", () => {
		expect(paper("horizontal", "notes")).toMatch(
			/Other numbers of the picture, not listed here: \d+\. The picture prints them\./u,
		);
	});

	it("has acres in the plural, as the slide has them", () => {
		for (const each of ["answers", "notes"] as const) {
			expect(paper("horizontal", each)).toContain("covers 6.4 acres");
			expect(paper("horizontal", each, "es")).toContain("ocupa 6.4 acres");
		}
	});

	it("names every cement job as one and the same pipe", () => {
		const answers = paper("vertical-metric", "answers");
		expect(answers).toContain("How do you know the cement worked? | Around the surface pipe: planned");
	});
});

it("the Spanish file says of which pipe a shoe and a cement are, in one piece", () => {
	const file = paper("horizontal-as-built", "regulator", "es");
	expect(file).toContain("La zapata del revestimiento de superficie queda 182 ft");
	expect(file).toContain("cemento del tubo conductor");
	expect(file).not.toMatch(/tubería revestimiento|de la (?:tubo|revestimiento)/u);
});
