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
		expect(firstPage(pack(findings, "casing-conductor"))).toContain("Mud in hole: none, drilled with air");
		const cementing = textOf(pack(findings, "cementing-conductor"));
		expect(cementing).toContain("Displacement to collar: none, no plug is landed");
		expect(cementing).not.toMatch(/Bump the plug|Land the plug/u);
	});

	it("asks for the mud of a hole whose fluid is not told", () => {
		const findings = changed(["to: 108 ft, fluid: { kind: air } }", "to: 108 ft }"]);
		expect(firstPage(pack(findings, "casing-conductor"))).toContain("Mud in hole: NOT SET: DO NOT START");
	});
});

describe("limits", () => {
	it("are all there, however many there are", () => {
		const findings = findingsOf("horizontal");
		const { annuli = [] } = findings.well.stimulation ?? {};
		const printed = textOf(pack(findings, "pumping"));
		const [, limits = ""] = printed.split("[Limits for today]");
		for (const { stopAbove } of annuli) expect(limits).toContain(`at most ${stopAbove?.value} psi`);
		let seen = 0;
		for (const { verdict, check, cite, subject, required } of findings.judgement.findings)
			if (check === "casing-pressure-test" && subject === "production" && verdict === "met" && required) {
				seen += 1;
				expect(limits).toContain(cite.citation);
			}
		expect(seen).toBeGreaterThan(1);
	});

	it("on one thing are one line: the strictest, with the others beside it", () => {
		const limits = textOf(pack(findingsOf("horizontal"), "pumping")).split("[Limits for today]")[1] ?? "";
		expect(limits.match(/^Pressure in the annulus: Production × intermediate/gmu)).toHaveLength(1);
		expect(limits.match(/^Pressure test: production/gmu)).toHaveLength(1);
		expect(limits).toMatch(/at least 9,500 psi \| 9,800 psi \| [^|\n]+; [^|\n]+\(at least 1,500 psi\)/u);
		// Other strings were tested before they were cemented over.
		expect(limits).not.toContain("Pressure test: surface");
	});
});

describe("operating numbers", () => {
	const sheet = (job: string, ...edits: readonly (readonly [string, string])[]): string =>
		firstPage(pack(edits.length === 0 ? findingsOf("horizontal") : changed(...edits), job));

	it("of running casing: pull, torque, hook load and speed with their numbers", () => {
		const printed = sheet("casing-surface");
		expect(printed).toContain("250,000 lbf Maximum pull (rig and gear may allow less)");
		expect(printed).toContain("Make-up torque: 6,500 ft·lbf to 9,500 ft·lbf");
		expect(printed).toContain("150 ft/min Running speed, at most");
		expect(printed).toContain("Hook load at bottom, in and out: in 55,000 lbf; out 55,000 lbf");
		expect(sheet("casing-production")).toMatch(
			/Hook load at bottom, in and out: may stop at [\d,]+ ft by its own weight, .*; out [\d,]+ lbf to [\d,]+ lbf/u,
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
		expect(printed).toContain("Make-up torque: NOT SET");
		expect(printed).toContain("Running speed, at most: NOT SET");
		const conductor = sheet("casing-conductor");
		expect(conductor).toContain("Hook load at bottom, in and out: NOT SET");
		expect(conductor).toMatch(
			/CAUTION: Not set\n\s+Get these from the person in charge [^\n]*Hook load at bottom/u,
		);
	});

	it("of a pull that nobody stated: what pipe and connection allow", () => {
		const printed = sheet("casing-surface", ["maximum_pull: 250000 lbf, ", ""]);
		const { least_tension, maximum_pull } = findingsOf("horizontal").results.casing["surface"] ?? {};
		expect(maximum_pull?.value).toBe(250_000);
		// Tension factor of the starter: 1.6.
		const allowed = Math.round(Number(least_tension?.value) / 1.6 / 1000);
		expect(printed).toContain(`${allowed},000 lbf Maximum pull (rig and gear may allow less)`);
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
		expect(printed).toContain("Line test: 1,500 psi");
		const { displacement_volume, displacement_strokes } =
			findingsOf("horizontal").results.cement["surface"] ?? {};
		expect(displacement_strokes?.value).toBe(Math.round(Number(displacement_volume?.value) / 0.0997));
		expect(printed).toMatch(/Displacement in strokes: 1,\d{3} at 0\.0997 bbl/u);
		const without = sheet(
			"cementing-surface",
			["      line_test: 1500 psi\n", ""],
			[" pump_output: 0.0997 bbl,", ""],
		);
		expect(without).toContain("Line test: NOT SET");
		expect(without).toContain("Displacement in strokes: NOT SET");
	});
});

describe("STOP conditions and the first page", () => {
	it("say the same of returns that stop", () => {
		const printed = textOf(pack(findingsOf("horizontal"), "cementing-surface"));
		expect(printed).toContain("If returns stop: Slow to 3 bbl/min and finish the job.");
		expect(printed).toContain("If returns stop, do what this sheet says.");
		expect(printed).not.toMatch(/\| Returns stop/u);
	});

	it.each(LANGUAGES)("%s: every number that a step names is a value of a sheet", (language) => {
		let named = 0;
		for (const { id, steps } of loadCatalog().value?.jobs ?? [])
			for (const step of steps)
				for (const words of [step.step, step.hazard, step.control, step.stop_if])
					for (const [, name = ""] of (typeof words === "string" ? words : words[language]).matchAll(
						/\{([^}]*)\}/gu,
					)) {
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
				for (const answer of answers) expect(onSheet, String(question)).toContain(answer);
				for (const language of LANGUAGES)
					expect(loadWords(language).findLabel(`crew.ask.${question}`), String(question)).toBeDefined();
			}
		},
	);

	it("are asked on the sheet, and the answer is printed", () => {
		for (const name of jobsOfWell(findingsOf("horizontal").well).map(jobName)) {
			const document = pack(findingsOf("horizontal"), name);
			expect(textOf(document), name).toContain("Ask the crew, and wait for the answer");
			expect(firstPage(document), name).toContain("North gate");
			expect(firstPage(document), name).toMatch(
				/100 ft (?:from|Nobody this close to) wellhead and pressured iron/u,
			);
		}
	});
});

describe("what is typed for the crew", () => {
	const everywhere = ["31.483300°, −98.773000°", "R. Okafor", "North gate. West side of the water tanks"];
	const where: readonly (readonly [words: string, jobs: readonly string[], what: string])[] = [
		["Flame-resistant clothing within: 150 ft from wellhead", ["pumping", "casing-surface"], "clothing"],
		["25 mph Man-lift comes down above", ["rig-up"], "the man-lift's wind"],
		[
			"10 mi Lightning: stop within",
			["rig-up", "wireline-and-perforating"],
			"in the unit a person says it in",
		],
		["10 mi; after the last strike wait 30 min", ["rig-up", "wireline-and-perforating"], "the wait"],
		["Hearing protection above: 85 dBA", ["pumping"], "hearing protection"],
		["half mask with P100 filters", ["pumping"], "the respirator"],
		["19.5 % Oxygen: ALARM BELOW", ["flowback"], "the side that oxygen warns on"],
		["hydrogen sulfide: above 10 ppm; leave at once above 15 ppm", ["flowback", "pumping"], "both alarms"],
		["Zone guard: M. Ferreira (fictional)", ["pumping"], "a role by name"],
		["Well 2: a trip was set on one pump of three.", ["pumping"], "a lesson"],
		["Water haulers on the south road until 18:00", ["pumping"], "who else works there"],
	];

	/** With rigging up, which the starter does not ask for. */
	const all = (() => {
		const { findings } = understandText(starterText("horizontal").replace(/^ {2}jobs: .*\n/mu, ""));
		if (findings === undefined) throw new Error("the starter does not read");
		return findings;
	})();

	it.each(where)("is printed where the job meets it: %s", (words, jobs) => {
		for (const job of jobs) expect(textOf(pack(all, job)), job).toContain(words);
	});

	it("what help needs is on every sheet", () => {
		for (const job of jobsOfWell(all.well).map(jobName))
			for (const words of everywhere)
				expect(textOf(pack(all, job)), job).toContain(words.replaceAll("−", "-"));
	});

	it("a fact of the site that the job does not meet is not there", () => {
		expect(textOf(pack(all, "casing-surface"))).not.toContain("P100");
		expect(textOf(pack(all, "flowback"))).not.toContain("Radios and phones OFF");
	});

	it("a distance is not told in feet where a person says miles", () => {
		for (const job of jobsOfWell(all.well).map(jobName))
			expect(textOf(pack(all, job))).not.toContain("52,800");
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
		return text.slice(text.indexOf("Limits for today"), text.indexOf("Anyone may stop this job"));
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
		expect(page).toContain("Rate, pressure, proppant: NOT SET");
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
		expect(page).toMatch(/Pressure before the plug lands: NOT SET/u);
		expect(page).toMatch(/Bump the plug at: NOT SET/u);
	});
});

describe("a job that is on record as done", () => {
	const built = (() => {
		const { findings } = understandText(starterText("horizontal-as-built").replace(/^ {2}jobs: .*\n/mu, ""));
		if (findings === undefined) throw new Error("the starter does not read");
		return findings;
	})();

	it("says so, with the date, and asks for nothing that is not set", () => {
		const done = jobsOfWell(built.well).filter((job) => job.done);
		expect(done.length).toBeGreaterThan(5);
		for (const job of done) {
			const page = firstPage(pack(built, jobName(job)));
			expect(page, jobName(job)).toContain("On record as done");
			if (job.doneOn !== undefined) expect(page).toContain(`On record as done, ${job.doneOn}`);
			expect(page, jobName(job)).not.toContain("NOT SET");
		}
		expect(done.some(({ id, doneOn }) => id === "casing" && doneOn !== undefined)).toBe(true);
	});

	it("a job still to be done says nothing of the kind", () => {
		expect(firstPage(pack(findingsOf("horizontal"), "flowback"))).not.toContain("On record as done");
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
