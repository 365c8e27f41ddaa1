import { describe, expect, it } from "vitest";
import { loadCatalog } from "../../src/catalog/load-catalog.ts";
import { LANGUAGES, type PaperDocument } from "../../src/document/document.ts";
import type { Findings } from "../../src/paper/context.ts";
import { SHEET_VALUES } from "../../src/paper/crew/numbers.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import { loadWords } from "../../src/paper/words/words.ts";
import { composePapers } from "../../src/pipeline.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import type { Finding } from "../../src/rules/finding.ts";
import { findingsOf, STARTERS, starterText, understandText } from "../starters.ts";

const pack = (findings: Findings, job: string, language: PaperDocument["language"] = "en"): PaperDocument => {
	const [document] = composePapers(findings, [{ paper: "crew", language, units: "field", job }]).documents;
	if (document === undefined) throw new Error(`there is no pack for ${job}`);
	return document.paper;
};

const textOf = (document: PaperDocument): string =>
	renderText(document)
		.replaceAll(/[ \u00a0]+/gu, " ")
		.replaceAll("\u2212", "-");

const firstPage = (document: PaperDocument): string =>
	textOf({ ...document, sections: document.sections.slice(0, 1) });

const changed = (...edits: readonly (readonly [from: string, to: string])[]): Findings => {
	const text = edits.reduce((before, [from, to]) => {
		if (!before.includes(from)) throw new Error(`the starter has no "${from}"`);
		return before.replace(from, to);
	}, starterText("horizontal"));
	const { findings, diagnostics } = understandText(text);
	if (findings === undefined) throw new Error(diagnostics.map(({ what }) => what).join("; "));
	return findings;
};

describe("the void box", () => {
	it.each(["draft", "issued for review", "superseded"])(
		"stands on every sheet of a plan that is %s",
		(state) => {
			const findings = changed(["state: issued for review", `state: ${state}`]);
			for (const job of jobsOfWell(findings.well).map(jobName))
				expect(firstPage(pack(findings, job)), job).toContain("do not work from this sheet");
		},
	);

	it("is not there when the plan is for operations", () => {
		const findings = changed(["state: issued for review", "state: for operations"]);
		expect(textOf(pack(findings, "pumping"))).not.toContain("do not work from this sheet");
	});

	it("lists every finding that stops the job, and none of another job", () => {
		const plan = findingsOf("horizontal");
		const [some] = plan.judgement.findings;
		if (some === undefined) throw new Error("the starter has no findings");
		const stopping: Finding = {
			...some,
			subject: "well",
			verdict: "not met",
			stop: ["pumping"],
			reason: ["An old well stands beside stage 7."],
		};
		const findings = {
			...plan,
			judgement: { ...plan.judgement, findings: [...plan.judgement.findings, stopping] },
		};
		expect(firstPage(pack(findings, "pumping"))).toContain("An old well stands beside stage 7.");
		expect(textOf(pack(findings, "flowback"))).not.toContain("An old well stands beside stage 7.");
		const met = { ...findings.judgement, findings: [{ ...stopping, verdict: "met" as const }] };
		expect(textOf(pack({ ...findings, judgement: met }, "pumping"))).not.toContain("An old well");
	});
});

describe("STOP boxes", () => {
	it.each(STARTERS)("%s: no sheet of a shipped starter says that its job must not start", (starter) => {
		const findings = findingsOf(starter);
		for (const job of jobsOfWell(findings.well).map(jobName))
			expect(firstPage(pack(findings, job)), job).not.toContain("This job must not start");
	});

	it("asks no mud of a hole drilled with air, and none of the figures of a plug where none is landed", () => {
		const findings = findingsOf("horizontal");
		expect(firstPage(pack(findings, "casing-conductor"))).toContain("Mud in hole | none, drilled with air");
		const cementing = textOf(pack(findings, "cementing-conductor"));
		expect(cementing).toContain("Displacement to collar | none, no plug is landed");
		expect(cementing).not.toMatch(/Bump the plug|Land the plug/u);
	});

	it("asks for the mud of a hole whose fluid is not told", () => {
		const findings = changed(["to: 108 ft, fluid: { kind: air } }", "to: 108 ft }"]);
		expect(firstPage(pack(findings, "casing-conductor"))).toContain("Mud in hole | NOT SET: DO NOT START");
	});
});

describe("limits", () => {
	it("are all there, however many there are", () => {
		const findings = findingsOf("horizontal");
		const { annuli = [] } = findings.well.stimulation ?? {};
		const printed = textOf(pack(findings, "pumping"));
		const [, limits = ""] = printed.split("[Limits: do not exceed]");
		const lines = limits.split("\n").filter((line) => line.includes(" | "));
		// The head, the weakest element, each annulus, and the rules' own limits: more than the six of old.
		expect(lines.length).toBeGreaterThan(1 + 1 + annuli.length + 4);
		for (const { verdict, check, cite } of findings.judgement.findings)
			if (check === "casing-pressure-test" && verdict === "met") expect(limits).toContain(cite.citation);
	});
});

describe("operating numbers", () => {
	const sheet = (job: string, ...edits: readonly (readonly [string, string])[]): string =>
		firstPage(pack(edits.length === 0 ? findingsOf("horizontal") : changed(...edits), job));

	it("of running casing: pull, torque, hook load and speed with their numbers", () => {
		const printed = sheet("casing-surface");
		expect(printed).toContain("Maximum pull (rig and gear may allow less) | 250,000 lbf");
		expect(printed).toContain("Make-up torque | 6,500 ft·lbf to 9,500 ft·lbf");
		expect(printed).toContain("Running speed, at most | 150 ft/min");
		expect(printed).toContain("Hook load at bottom, in and out | in 55,000 lbf; out 55,000 lbf");
		expect(sheet("casing-production")).toMatch(
			/Hook load at bottom, in and out \| in [\d,]+ lbf to [\d,]+ lbf; out [\d,]+ lbf to [\d,]+ lbf/u,
		);
	});

	it("of running casing: NOT SET where nobody stated them", () => {
		const printed = sheet(
			"casing-surface",
			[
				"torque: { least: 6500 ft-lbf, greatest: 9500 ft-lbf, source: make-up chart of the pipe service (fictional) }",
				"",
			],
			["speed: 150 ft/min, ", ""],
		);
		expect(printed).toContain("Make-up torque | NOT SET");
		expect(printed).toContain("Running speed, at most | NOT SET");
		expect(sheet("casing-conductor")).toContain("Hook load at bottom, in and out | NOT SET");
	});

	it("of a pull that nobody stated: what pipe and connection allow", () => {
		const printed = sheet("casing-surface", ["maximum_pull: 250000 lbf, ", ""]);
		const { least_tension, maximum_pull } = findingsOf("horizontal").results.casing["surface"] ?? {};
		expect(maximum_pull?.value).toBe(250_000);
		// Tension factor of the starter: 1.6.
		const allowed = Math.round(Number(least_tension?.value) / 1.6 / 1000);
		expect(printed).toContain(`Maximum pull (rig and gear may allow less) | ${allowed},000 lbf`);
	});

	it("the weakest of pipe and connection is the one shown", () => {
		const { results } = findingsOf("horizontal");
		for (const string of ["surface", "intermediate", "production"]) {
			const [section] = results.casing[string]?.sections ?? [];
			const weakest = Math.min(Number(section?.body_yield.value), Number(section?.joint_strength?.value));
			expect(results.casing[string]?.least_tension?.value).toBe(weakest);
		}
		// A round thread parts before its pipe yields.
		const metric = findingsOf("vertical-metric").results.casing["surface"];
		expect(metric?.least_tension?.value).toBeLessThan(Number(metric?.sections[0]?.body_yield.value));
	});

	it("of cementing: line test and strokes, or NOT SET", () => {
		const printed = sheet("cementing-surface");
		expect(printed).toContain("Line test | 1,500 psi");
		const { displacement_volume, displacement_strokes } =
			findingsOf("horizontal").results.cement["surface"] ?? {};
		expect(displacement_strokes?.value).toBe(Math.round(Number(displacement_volume?.value) / 0.0997));
		expect(printed).toMatch(/Displacement in strokes \| 1,\d{3} at 0\.0997 bbl/u);
		const without = sheet(
			"cementing-surface",
			["      line_test: 1500 psi\n", ""],
			[" pump_output: 0.0997 bbl,", ""],
		);
		expect(without).toContain("Line test | NOT SET");
		expect(without).toContain("Displacement in strokes | NOT SET");
	});
});

describe("STOP conditions and the first page", () => {
	it("say the same of returns that stop", () => {
		const printed = textOf(pack(findingsOf("horizontal"), "cementing-surface"));
		expect(printed).toContain("If returns stop | Slow to 3 bbl/min and finish the job.");
		expect(printed).toContain("If returns stop, do what page 1 says.");
		expect(printed).not.toMatch(/\| Returns stop/u);
	});

	it.each(LANGUAGES)("%s: every number that a step names is a value of a sheet", (language) => {
		const words = loadWords(language);
		let named = 0;
		for (const { id } of loadCatalog().value?.jobs ?? [])
			for (const step of words.steps(id))
				for (const text of [step.step, step.hazard, step.control, step.stop_if])
					for (const [, name = ""] of text.matchAll(/\{([^}]*)\}/gu)) {
						named += 1;
						expect(Object.keys(SHEET_VALUES), `${id}: ${name}`).toContain(name);
					}
		expect(named).toBeGreaterThan(20);
	});
});

describe("questions asked back", () => {
	const jobs = loadCatalog().value?.jobs ?? [];

	it.each(jobs.map((job) => [job.id, job] as const))(
		"%s: each has its answer on the first page",
		(_, job) => {
			const onSheet = job.numbers.map(({ value }) => value);
			for (const { question, answers } of job.ask) {
				for (const answer of answers) expect(onSheet, question).toContain(answer);
				for (const language of LANGUAGES)
					expect(loadWords(language).findLabel(`crew.ask.${question}`), question).toBeDefined();
			}
		},
	);

	it("are asked on the sheet, and the answer is printed", () => {
		for (const name of jobsOfWell(findingsOf("horizontal").well).map(jobName)) {
			const document = pack(findingsOf("horizontal"), name);
			expect(textOf(document), name).toContain("Ask the crew, and wait for the answer");
			expect(firstPage(document), name).toContain("North gate");
			expect(firstPage(document), name).toContain("100 ft from wellhead and pressured iron");
		}
	});
});

describe("what is typed for the crew", () => {
	it.each([
		["31.483300°, -98.773000°", "the landing site"],
		["Flame-resistant clothing within | 150 ft from wellhead", "flame-resistant clothing"],
		["Man-lift comes down above | 25 mph", "the man-lift's wind"],
		["10 mi; after the last strike wait 30 min", "lightning, in the unit a person says it in"],
		["Hearing protection above | 85 dBA", "hearing protection"],
		["half mask with P100 filters", "the respirator"],
		["oxygen | BELOW 19.5 %", "the side that oxygen warns on"],
		["hydrogen sulfide | above 10 ppm; leave at once above 15 ppm", "both alarms of a gas"],
	])("is printed on every sheet: %s (%s)", (words) => {
		const findings = findingsOf("horizontal");
		for (const job of jobsOfWell(findings.well).map(jobName))
			expect(textOf(pack(findings, job)), job).toContain(words);
	});

	it("handling of additives is on the sheet of the job that handles them", () => {
		const printed = textOf(pack(findingsOf("horizontal"), "pumping"));
		for (const words of [
			"Gloves and eye protection.",
			"Face shield, long gloves and apron.",
			"Acid suit and face shield.",
		])
			expect(printed).toContain(words);
	});

	it("a large distance reads on from its number", () => {
		const printed = firstPage(pack(findingsOf("horizontal"), "wireline-and-perforating"));
		expect(printed).toContain("150 ft Radios and phones OFF this close to guns and wireline unit");
		expect(printed).not.toContain("within from");
	});
});

describe("the sheet of the pumping job", () => {
	const limitsOf = (findings: Findings): string => {
		const text = textOf(pack(findings, "pumping"));
		return text.slice(text.indexOf("Limits: do not exceed"), text.indexOf("Anyone may stop this job"));
	};

	it("gives the treating maximum as the limit, and no part that holds more as one to go to", () => {
		const limits = limitsOf(findingsOf("horizontal"));
		expect(limits).toContain("Maximum treating pressure | at most 9,500 psi | 8,044 psi");
		expect(limits).not.toContain("Pressure on the weakest part");
	});

	it("gives a rating of pipe as every other paper rounds it", () => {
		expect(limitsOf(findingsOf("horizontal"))).toContain("12,370 psi");
		expect(limitsOf(findingsOf("horizontal"))).not.toContain("12,369");
	});

	it("gives the weakest part where it holds less than the maximum", () => {
		const limits = limitsOf(
			changed(["pressure_test: { pressure: 9800 psi", "pressure_test: { pressure: 9300 psi"]),
		);
		expect(limits).toContain("Pressure on the weakest part | at most 9,300 psi");
	});

	it("carries an old well near the fractures in its void box", () => {
		const findings = changed(
			["state: issued for review", "state: for operations"],
			["total_depth: 4120 ft TVD", "total_depth: 9000 ft TVD"],
			["latitude: 31.476905", "latitude: 31.470000"],
			["longitude: -98.767720", "longitude: -98.765000"],
			[
				"      barriers: [{ top: 3650 ft TVD, bottom: 4120 ft TVD, what: cement plug, shown_by: plugging record of 1981 }]\n      evidence: plugging record on file\n",
				"",
			],
		);
		const page = firstPage(pack(findings, "pumping"));
		expect(page).toContain("STOP");
		expect(page).toMatch(/Sorrel 1 .{0,200}(fractures|treated|fractured)/u);
		expect(firstPage(pack(findings, "flowback"))).not.toContain("Sorrel 1");
	});

	it("gives no expected pressure where friction cannot be worked", () => {
		const findings = changed(["density: 8.4 ppg, viscosity: 1.2 cP", "density: 8.4 ppg"]);
		const page = firstPage(pack(findings, "pumping"));
		expect(page).not.toContain("psi expected");
		expect(page).toContain("Rate, pressure, proppant | NOT SET");
	});
});

describe("the sheet of a cement job", () => {
	it("gives no pressure at the plug where friction cannot be worked", () => {
		const page = firstPage(
			pack(
				changed([
					"rate: 7 bbl/min, plastic_viscosity: 40 cP, yield_point: 12 lbf/100ft2, strength",
					"rate: 7 bbl/min, strength",
				]),
				"cementing-production",
			),
		);
		expect(page).toMatch(/Pressure before the plug lands \| NOT SET/u);
		expect(page).toMatch(/Bump the plug at \| NOT SET/u);
	});
});

describe("the sheet of the preventer test", () => {
	it("says whether a plug keeps the test off the casing", () => {
		expect(firstPage(pack(findingsOf("horizontal"), "preventer-test"))).toContain(
			"rated 10,000 psi; with test plug",
		);
		const without = starterText("horizontal").replaceAll(/, test_plug: [^,}]+/gu, " ");
		const { findings } = understandText(without);
		if (findings === undefined) throw new Error("the changed plan does not read");
		const page = firstPage(pack(findings, "preventer-test"));
		expect(page).toContain("rated 10,000 psi; test plug: NOT SET");
	});
});
