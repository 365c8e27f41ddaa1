import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { understandText } from "../starters.ts";
import { type Told, told } from "./told.ts";

const FOLDER = new URL("../../seeds/starters/", import.meta.url);
const BASE = readFileSync(new URL("horizontal.yaml", FOLDER), "utf8");

type Edit = readonly [from: string, to: string];

const known = new Map<string, readonly Told[]>();
const findings = (edits: readonly Edit[]): readonly Told[] => {
	const key = JSON.stringify(edits);
	const before = known.get(key);
	if (before !== undefined) return before;
	const text = edits.reduce((whole, [from, to]) => {
		const pieces = whole.split(from);
		if (pieces.length !== 2) throw new Error(`"${from}" stands ${pieces.length - 1} times`);
		return pieces.join(to);
	}, BASE);
	const understood = understandText(text, "horizontal.yaml", FOLDER);
	if (understood.findings === undefined)
		throw new Error(understood.diagnostics.map(({ what }) => what).join("; "));
	// Spaces that keep a number to its unit are spaces to a test.
	const plain = understood.findings.judgement.findings.map(told).map((finding) => ({
		...finding,
		because: finding.because.replaceAll(/[\u00a0\u202f]/g, " "),
	}));
	known.set(key, plain);
	return plain;
};

/** The finding of one rule of practice on one thing, in the planned starter with some of its text changed. */
const found = (rule: string, subject: string, ...edits: readonly Edit[]): Told => {
	const of = findings(edits).filter(({ cite }) => cite.rule === `practice.${rule}`);
	const one = of.find((each) => each.subject === subject);
	if (one === undefined) throw new Error(`${rule} is on ${of.map((each) => each.subject).join(", ")}`);
	return one;
};
const verdict = (rule: string, subject: string, ...edits: readonly Edit[]) =>
	found(rule, subject, ...edits).verdict;

test("the planned starter has no more than three findings of practice, and none that keeps a job from starting", () => {
	const practice = findings([]).filter(({ cite }) => cite.kind === "practice");
	expect(
		practice
			.filter(({ verdict: each }) => each !== "met" && each !== "does not apply")
			.map(({ cite, subject, verdict: each }) => `${cite.rule}, ${subject}: ${each}`),
	).toEqual([
		"practice.cement.gas-flow-potential, intermediate: needs judgement",
		"practice.strings.reach, production: needs judgement",
		"practice.treatment.friction-reduction, well: needs judgement",
	]);
});

const mud = (ppg: string): Edit => ["oil-based mud, density: 11.8 ppg", `oil-based mud, density: ${ppg} ppg`];
const NO_MUD: Edit = ["oil-based mud, density: 11.8 ppg, ", "oil-based mud, "];

describe("open hole and well control", () => {
	test("mud against pore pressure: 10.97 lb/gal from the datum, and 0.3 lb/gal of trip margin", () => {
		const of = (ppg: string) => verdict("open-hole.mud-over-pore", "production hole", mud(ppg));
		expect(of("11.27")).toBe("met");
		expect(of("11.26")).toBe("needs judgement");
		expect(of("10.97")).toBe("needs judgement");
		expect(of("10.5")).toBe("not met");
		expect(found("open-hole.mud-over-pore", "production hole", mud("10.5"))).toMatchObject({
			because:
				"The mud of the production hole is 0.47 lb/gal lighter than the pore pressure of the Rushford Shale (10.97 lb/gal); at least 0.30 lb/gal is required.",
			stop: ["casing", "cementing"],
		});
		expect(verdict("open-hole.mud-over-pore", "production hole", NO_MUD)).toBe("cannot tell");
		expect(verdict("open-hole.mud-over-pore", "conductor hole")).toBe("does not apply");
	});

	test("pumps and moving pipe: what they add, what they take, and what they are asked with", () => {
		const production = (rule: string, ...edits: readonly Edit[]) =>
			found(`open-hole.${rule}`, "production hole", ...edits);
		expect(production("circulating").because).toMatch(
			/^The intermediate shoe holds 1\.7\d lb\/gal more than the ECD of the production hole \(12\.2\d lb\/gal there\); at least 0\.20 lb\/gal is required\.$/,
		);
		const FAST: Edit = ["drilling: { rate: 500 gal/min, ", "drilling: { rate: 1400 gal/min, "];
		expect(production("circulating", FAST).verdict).toBe("not met");
		const SILENT: Edit = ["drilling: { rate: 500 gal/min, ", "drilling: { "];
		expect(production("circulating", SILENT)).toMatchObject({ verdict: "cannot tell" });
		expect(production("surge").verdict).toBe("met");
		const HASTY: Edit = ["running: { speed: 90 ft/min,", "running: { speed: 900 ft/min,"];
		expect(production("surge", HASTY)).toMatchObject({ verdict: "not met", stop: ["casing"] });
		expect(production("swab").because).toMatch(
			/^With the drill string pulled, the mud weight with swab in the production hole stays 0\.4\d lb\/gal over the pore pressure of the Rushford Shale \(11\.3\d lb\/gal\)/,
		);
		expect(production("swab", mud("11.4")).verdict).toBe("needs judgement");
		expect(production("swab", mud("11.2")).verdict).toBe("not met");
	});

	test("the weakest place against the mud at rest", () => {
		const shoeTo = (ppg: string): Edit => ["equivalent: 14.0 ppg", `equivalent: ${ppg} ppg`];
		expect(verdict("open-hole.rock-over-mud", "production hole", shoeTo("12.1"))).toBe("met");
		expect(verdict("open-hole.rock-over-mud", "production hole", shoeTo("12.0"))).toBe("needs judgement");
		expect(verdict("open-hole.rock-over-mud", "production hole", shoeTo("11.7"))).toBe("not met");
	});

	test("kick tolerance against the design kick and half of it", () => {
		const kick = (bbl: number): Edit => [
			"kick: { intensity: 0.5 ppg, volume: 25 bbl",
			`kick: { intensity: 0.5 ppg, volume: ${bbl} bbl`,
		];
		expect(verdict("well-control.kick-tolerance", "production hole", kick(70))).toBe("met");
		expect(verdict("well-control.kick-tolerance", "production hole", kick(72))).toBe("needs judgement");
		expect(verdict("well-control.kick-tolerance", "production hole", kick(143))).toBe("not met");
		expect(verdict("well-control.kick-tolerance", "surface hole")).toBe("does not apply");
		const NONE: Edit = ["  kick: { intensity: 0.5 ppg, volume: 25 bbl, gas_gradient: 0.1 psi/ft }\n", ""];
		expect(verdict("well-control.kick-tolerance", "production hole", NONE)).toBe("cannot tell");
	});

	test("preventers' rating against gas at surface, 4,201 psi", () => {
		const rated = (psi: number): Edit => [
			"over: intermediate, working_pressure: 10000 psi",
			`over: intermediate, working_pressure: ${psi} psi`,
		];
		expect(verdict("well-control.preventer-rating", "preventers on intermediate", rated(4202))).toBe("met");
		expect(verdict("well-control.preventer-rating", "preventers on intermediate", rated(4200))).toBe(
			"not met",
		);
	});

	test("preventers are tested on a plug, or to 80 % of the casing beneath: 2,735 psi of 13 3/8 in", () => {
		const on = (high: number, plug: boolean): Edit => [
			"high: 5000 psi, hold: 10 min, test_plug: true",
			`high: ${high} psi, hold: 10 min, test_plug: ${plug}`,
		];
		const rule = "well-control.preventer-test";
		expect(verdict(rule, "preventers on surface")).toBe("does not apply");
		expect(verdict(rule, "preventers on surface", on(2187, false))).toBe("met");
		expect(verdict(rule, "preventers on surface", on(2190, false))).toBe("not met");
		expect(found(rule, "preventers on surface", on(5000, false)).because).toBe(
			"The BOP on the surface casing is to be tested to 5,000 psi and no test plug is stated; at most 2,188 psi is allowed: 0.8 × 2,735 psi, the internal yield of the casing beneath.",
		);
		// Couplings lose to wear as the pipe does.
		const WORN: Edit = ["  wear: 0 %", "  wear: 10 %"];
		expect(verdict(rule, "preventers on surface", on(2187, false), WORN)).toBe("not met");
		const LOW: Edit = [
			'over: surface, working_pressure: 5000 psi, equipment: "annular, pipe rams, blind rams", test: { low: 250 psi',
			'over: surface, working_pressure: 5000 psi, equipment: "annular, pipe rams, blind rams", test: { low: 400 psi',
		];
		expect(verdict("well-control.low-pressure-test", "preventers on surface", LOW)).toBe("not met");
	});
});

describe("strings", () => {
	test("the factor stated governs, and two per cent below it is to confirm", () => {
		const factor = (burst: string): Edit => ["burst: 1.1,", `burst: ${burst},`];
		const of = found("strings.burst", "production");
		expect(of.verdict).toBe("met");
		expect(of.because).toContain("in the connection");
		// The pressure test governs at 12,369 psi derated over its load.
		const least = (of.measured?.value ?? Number.NaN) * 1.1;
		expect(verdict("strings.burst", "production", factor((least - 0.005).toFixed(3)))).toBe("met");
		expect(verdict("strings.burst", "production", factor((least * 1.01).toFixed(3)))).toBe("needs judgement");
		expect(verdict("strings.burst", "production", factor((least * 1.03).toFixed(3)))).toBe("not met");
		expect(verdict("strings.collapse", "production", NO_MUD)).toBe("cannot tell");
	});

	test("a test to more than 80 % of the weakest of pipe and coupling, 12,369 psi, is not met", () => {
		const to = (psi: number): Edit => [
			"pressure_test: { pressure: 9800 psi",
			`pressure_test: { pressure: ${psi} psi`,
		];
		expect(verdict("strings.test-pressure", "production", to(9895))).toBe("met");
		expect(verdict("strings.test-pressure", "production", to(9896))).toBe("not met");
	});

	test("overpull, and what coils on its way down", () => {
		const F: Edit = ["overpull: 1.1,", "overpull: 2.1,"];
		expect(verdict("strings.overpull", "production")).toBe("met");
		expect(verdict("strings.overpull", "production", F)).not.toBe("met");
		expect(found("strings.reach", "production").because).toBe(
			"At maximum friction the production string stops at 15,494 ft under its own weight, helically buckled at 8,340 ft by 81,230 lbf of compression (limit 6,506 lbf); at least 17,245 ft is required: the measured depth of the shoe.",
		);
		expect(verdict("strings.slack-off", "production")).toBe("does not apply");
		const FLOATED: Edit = [
			"running: { speed: 90 ft/min,",
			"running: { speed: 90 ft/min, flotation_collar: 8300 ft,",
		];
		expect(verdict("strings.reach", "production", FLOATED)).toBe("met");
		expect(verdict("strings.slack-off", "production", FLOATED)).toBe("met");
		const ROUGH: Edit = ["open_hole: [0.25, 0.40]", "open_hole: [0.38, 0.60]"];
		expect(verdict("strings.reach", "production", ROUGH)).toBe("not met");
	});

	test("gas behind API threads above 5,000 psi is to confirm", () => {
		const TUBING: Edit = ["packer_fluid: 8.6 ppg,", "packer_fluid: 8.6 ppg, tubing_pressure: 5100 psi,"];
		expect(verdict("strings.gas-tightness", "production")).toBe("met");
		expect(found("strings.gas-tightness", "production", TUBING)).toMatchObject({
			verdict: "needs judgement",
			because:
				"Gas pressure on the BTC connections of the production string may reach 5,100 psi; at most 5,000 psi is allowed.",
		});
	});
});

const sour = (fraction: string, more = ""): Edit => [
	"hydrogen_sulfide: { expected: false, fraction: 0 ppm,",
	`hydrogen_sulfide: { expected: true, fraction: ${fraction},${more}`,
];

describe("sour service", () => {
	test("P110 and cool rock in sour gas are told with numbers", () => {
		expect(verdict("sour.pipe", "production")).toBe("does not apply");
		const of = found("sour.pipe", "production", sour("8000 ppm"));
		expect(of.verdict).toBe("not met");
		expect(of.because).toMatch(
			/^P110 of the production string is not fit for sour service at a hydrogen sulfide partial pressure of .* psi: it requires 175 °F or more, and the lowest temperature is 72 °F; none is allowed\.$/,
		);
		// 0.05 psi of some 5,100 psi: below 10 ppm the service is not sour.
		expect(verdict("sour.pipe", "production", sour("9 ppm"))).toBe("does not apply");
		expect(verdict("sour.pipe", "intermediate", sour("8000 ppm"))).toBe("met");
	});

	test("the radius of exposure needs a rate: 8,000 ppm of 10,000,000 scf/d reach 1,564 ft", () => {
		expect(verdict("sour.exposure-radius", "well")).toBe("does not apply");
		expect(verdict("sour.exposure-radius", "well", sour("8000 ppm"))).toBe("cannot tell");
		const rate = (scf: string) => sour("8000 ppm", ` gas_rate: ${scf},`);
		// The nearest house is 1,710 ft from the pad's edge.
		expect(verdict("sour.exposure-radius", "well", rate("10000000 scf/d"))).toBe("met");
		expect(found("sour.exposure-radius", "well", rate("20000000 scf/d"))).toMatchObject({
			verdict: "not met",
		});
		expect(found("sour.exposure-radius", "well", rate("20000000 scf/d")).because).toMatch(
			/^Nearest house is within/,
		);
	});
});

describe("cement jobs", () => {
	const TAIL: Edit = [
		"density: 15.6 ppg\n          thickening_time: 5 hr",
		"density: 19.5 ppg\n          thickening_time: 5 hr",
	];
	test("margin to fracture", () => {
		expect(verdict("cement.fracture-margin", "intermediate")).toBe("met");
		const FIT: Edit = ["equivalent: 15.0 ppg", "equivalent: 12.3 ppg"];
		expect(found("cement.fracture-margin", "intermediate", FIT)).toMatchObject({ verdict: "not met" });
		expect(found("cement.fracture-margin", "intermediate", FIT).because).toContain(
			"the pressure of the shoe test at 1,185 ft",
		);
		expect(verdict("cement.fracture-margin", "intermediate", TAIL)).toBe("met");
		const THIN: Edit = [
			"density: 12.5 ppg\n          yield: 2.13",
			"density: 12.8 ppg\n          yield: 2.13",
		];
		expect(verdict("cement.fracture-margin", "surface", THIN)).toBe("needs judgement");
		const NO_FLOW: Edit = ["rate: 7 bbl/min\n          plastic_viscosity: 30 cP\n", "rate: 7 bbl/min\n"];
		expect(verdict("cement.fracture-margin", "intermediate", NO_FLOW)).toBe("cannot tell");
		expect(verdict("cement.plug-bump", "intermediate", NO_FLOW)).toBe("cannot tell");
		expect(found("cement.plug-bump", "intermediate", NO_FLOW).stop).toEqual(["cementing"]);
	});

	test("margin over pore pressure, with a spacer too light", () => {
		expect(verdict("cement.pore-margin", "production")).toBe("met");
		const LIGHT: Edit = [
			"spacer: { volume: 80 bbl, density: 12.2 ppg, ",
			"spacer: { volume: 400 bbl, density: 8.4 ppg, ",
		];
		expect(verdict("cement.pore-margin", "production", LIGHT)).toBe("not met");
		expect(found("cement.density-order", "production", LIGHT)).toMatchObject({
			verdict: "not met",
			because:
				"The spacer of the production string is 3.40 lb/gal lighter than the mud ahead of it; at least 0.40 lb/gal is required.",
		});
		const NEAR: Edit = [
			"spacer: { volume: 80 bbl, density: 12.2 ppg, ",
			"spacer: { volume: 80 bbl, density: 12.1 ppg, ",
		];
		expect(verdict("cement.density-order", "production", NEAR)).toBe("needs judgement");
	});

	test("plug bump, thickening time and spacer contact", () => {
		const bump = (psi: number): Edit => ["bump: 1000 psi", `bump: ${psi} psi`];
		expect(verdict("cement.plug-bump", "production")).toBe("met");
		expect(verdict("cement.plug-bump", "production", bump(6500))).toBe("needs judgement");
		expect(verdict("cement.plug-bump", "production", bump(9000))).toBe("not met");
		const thick = (hr: string): Edit => ["thickening_time: 7 hr", `thickening_time: ${hr} hr`];
		expect(verdict("cement.thickening-time", "production")).toBe("met");
		expect(verdict("cement.thickening-time", "production", thick("1"))).toBe("not met");
		expect(verdict("cement.thickening-time", "production", ["thickening_time: 7 hr, ", ""])).toBe(
			"cannot tell",
		);
		const SHORT: Edit = [
			"spacer: { volume: 60 bbl, density: 9.5 ppg, ",
			"spacer: { volume: 59 bbl, density: 9.5 ppg, ",
		];
		expect(verdict("cement.spacer-contact", "surface")).toBe("met");
		expect(verdict("cement.spacer-contact", "surface", SHORT)).toBe("needs judgement");
		expect(
			verdict("cement.spacer-contact", "surface", [
				"      spacer: { volume: 60 bbl, density: 9.5 ppg, plastic_viscosity: 10 cP, yield_point: 8 lbf/100ft2 }\n",
				"",
			]),
		).toBe("not met");
	});

	test("standoff, gas-flow potential, silica and strength tests", () => {
		expect(verdict("cement.standoff", "production")).toBe("met");
		expect(
			verdict("cement.standoff", "production", ["every: 1 joint, od: 8 3/8 in", "every: 1 joint, od: 8 in"]),
		).toBe("needs judgement");
		expect(
			verdict("cement.standoff", "production", ["every: 1 joint, od: 8 3/8 in", "every: 2 joints, od: 8 in"]),
		).toBe("not met");
		expect(verdict("cement.gas-flow-potential", "intermediate")).toBe("needs judgement");
		expect(
			verdict("cement.gas-flow-potential", "intermediate", [
				"lithology: sandstone, flow_zone: gas, pore_pressure: 8.9 ppg",
				"lithology: sandstone, flow_zone: gas, pore_pressure: 11.0 ppg",
			]),
		).toBe("not met");
		const HOT: Edit = ["gradient: 1.5 degF/100 ft", "gradient: 3.0 degF/100 ft"];
		expect(verdict("cement.silica", "production")).toBe("met");
		expect(verdict("cement.silica", "production", HOT)).toBe("cannot tell");
		const recipe = (words: string): Edit => [
			"thickening_time: 6 hr, rate: 7 bbl/min, plastic_viscosity: 40 cP",
			`thickening_time: 6 hr, additives: "${words}", rate: 7 bbl/min, plastic_viscosity: 40 cP`,
		];
		expect(verdict("cement.silica", "production", HOT, recipe("35 % silica flour, retarder"))).toBe("met");
		expect(verdict("cement.silica", "production", HOT, recipe("20 % silica flour"))).toBe("not met");
		expect(verdict("cement.silica", "production", HOT, recipe("retarder"))).toBe("not met");
		expect(verdict("cement.strength-test-temperature", "production")).toBe("met");
		expect(verdict("cement.strength-test-temperature", "production", HOT)).toBe("needs judgement");
	});

	test("cement below the previous shoe is told, and over a flow zone it is to confirm", () => {
		const top = (ft: number): readonly Edit[] => [
			["{ role: lead, class: H, from: 5400 ft", `{ role: lead, class: H, from: ${ft} ft`],
			["bow_spring: [{ from: 5400 ft", `bow_spring: [{ from: ${ft} ft`],
		];
		expect(verdict("cement.top", "production", ...top(6280))).toBe("met");
		expect(verdict("cement.top", "production", ...top(6281))).toBe("needs judgement");
		expect(verdict("cement.top", "production", ...top(7000))).toBe("needs judgement");
	});
});

describe("isolation and treatment", () => {
	test("the confining bed", () => {
		expect(verdict("isolation.confining-bed", "well")).toBe("met");
		expect(
			found("isolation.confining-bed", "well", [
				"lithology: limestone, confining: true,",
				"lithology: limestone,",
			]),
		).toMatchObject({
			verdict: "not met",
			because: expect.stringContaining("No confining bed is stated") as string,
		});
		const THIN: Edit = [
			"{ name: Upper Rushford Lime, top: 8610 ft TVD",
			"{ name: Upper Rushford Lime, top: 8842 ft TVD",
		];
		expect(verdict("isolation.confining-bed", "well", THIN)).toBe("needs judgement");
		expect(verdict("isolation.fracture-separation", "well")).toBe("met");
	});

	test("order of pressures, wellhead, annuli and leak", () => {
		expect(verdict("treatment.ladder", "well")).toBe("met");
		expect(
			found("treatment.ladder", "well", [
				"pump_kickouts: [8900 psi, 9000 psi, 9100 psi]",
				"pump_kickouts: [8900 psi, 9000 psi, 9450 psi]",
			]),
		).toMatchObject({
			verdict: "not met",
			because:
				"One treating limit is out of order: pump kickout 3 (9,450 psi) is not below the relief valve (9,400 psi); none is allowed.",
		});
		expect(verdict("treatment.ladder", "well", ["    line_test: 10500 psi\n", ""])).toBe("cannot tell");
		expect(
			verdict("treatment.wellhead", "well", ["stimulation: 15000 psi }", "stimulation: 9499 psi }"]),
		).toBe("not met");
		expect(
			verdict("treatment.wellhead", "well", [
				"wellhead: { drilling: 10000 psi, stimulation: 15000 psi }",
				"wellhead: { drilling: 10000 psi }",
			]),
		).toBe("cannot tell");
		const stop = (psi: number): Edit => [
			"relief: 450 psi, stop_above: 450 psi",
			`relief: 450 psi, stop_above: ${psi} psi`,
		];
		// 80 % of the 2,735 psi of the surface casing is the least.
		expect(verdict("treatment.annulus-stop", "production × intermediate annulus", stop(2187))).toBe("met");
		expect(verdict("treatment.annulus-stop", "production × intermediate annulus", stop(2189))).toBe(
			"not met",
		);
		expect(
			verdict("treatment.annulus-stop", "production × intermediate annulus", [
				", relief: 450 psi, stop_above: 450 psi",
				", relief: 450 psi",
			]),
		).toBe("cannot tell");
		const leak = "treatment.leak-into-annulus";
		expect(verdict(leak, "production × intermediate annulus")).toBe("met");
		expect(verdict(leak, "production × intermediate annulus", [" relief: 450 psi,", ""])).toBe("not met");
		expect(verdict(leak, "intermediate × surface annulus")).toBe("does not apply");
	});

	test("what cannot be told names the input that is not given, and none that is", () => {
		const noViscosity: Edit = ["density: 8.4 ppg, viscosity: 1.2 cP }", "density: 8.4 ppg }"];
		for (const [rule, subject] of [
			["treatment.expected-pressure", "well"],
			["isolation.fracture-separation", "well"],
			["neighboring-wells.fracture-reach", "Sorrel 1"],
		] as const)
			expect(found(rule, subject, noViscosity).because).toBe("The base fluid's viscosity is not given.");
		const noLeakoff: Edit = [", leakoff: 0.0008 ft/min^0.5 }", " }"];
		expect(found("isolation.fracture-separation", "well", noLeakoff).because).toBe(
			"The leakoff of the Rushford Shale is not given.",
		);
		const noRheology: Edit = [
			"rate: 7 bbl/min, plastic_viscosity: 32 cP, yield_point: 12 lbf/100ft2",
			"rate: 7 bbl/min",
		];
		for (const rule of ["cement.plug-bump", "cement.line-test"])
			expect(found(rule, "production", noRheology).because).toBe(
				"The plastic viscosity or yield point of the lead slurry in the cement job of the production string is not given.",
			);
	});
	test("without a viscosity the expected pressure cannot be told, and pumping does not start", () => {
		const NONE: Edit = ["density: 8.4 ppg, viscosity: 1.2 cP }", "density: 8.4 ppg }"];
		expect(found("treatment.friction-reduction", "well", NONE)).toMatchObject({
			verdict: "cannot tell",
			because: "The base fluid's viscosity is not given.",
			stop: ["pumping"],
		});
		const SLOW: Edit = ["      rate: 75 bbl/min\n", "      rate: 30 bbl/min\n"];
		expect(verdict("treatment.friction-reduction", "well", SLOW)).toBe("met");
	});
});

test("a pressure boundary that names nothing is not judged, and what is to be named is told", () => {
	const ELEMENTS: Edit = [
		BASE.slice(
			BASE.indexOf("  pressure_boundary:"),
			BASE.indexOf("  limits:                               #"),
		),
		"",
	];
	expect(found("treatment.boundary", "well", ELEMENTS)).toMatchObject({
		verdict: "cannot tell",
		missing: [{ what: "the elements of the pressure boundary", at: ["stimulation", "pressure_boundary"] }],
	});
	expect(verdict("treatment.boundary", "well")).toBe("met");
	const CASING: Edit = [
		"    - { element: casing, factor: 0.85 }          # rated from the pipe and its connection\n",
		"",
	];
	expect(verdict("treatment.boundary", "well", CASING)).toBe("not met");
});
