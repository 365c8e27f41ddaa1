import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { applyEdits } from "../broken/broken-case.ts";
import { understandText } from "../starters.ts";
import { type Told, told } from "./told.ts";

/*
 * What was told on the terminal alone, as a fault of the writing, is a finding about the well: it reaches the papers that
 * it concerns. Each is tried under, at and over its limit. The wells are ours.
 */

const BROKEN = new URL("../../fixtures/broken/", import.meta.url);
const BASE = readFileSync(new URL("base.yaml", BROKEN), "utf8");

const findingsOf = (edits: string): readonly Told[] => {
	const { findings } = understandText(edits === "" ? BASE : applyEdits(edits, BASE), "well.yaml", BROKEN);
	if (findings === undefined) throw new Error("the well has faults");
	return findings.judgement.findings
		.map(told)
		.map((finding) => ({ ...finding, because: finding.because.replaceAll(/[\u00a0\u202f]/g, " ") }));
};
const found = (rule: string, edits: string, subject?: string): Told => {
	const one = findingsOf(edits).find(
		(each) => each.cite.rule === `practice.${rule}` && (subject === undefined || each.subject === subject),
	);
	if (one === undefined) throw new Error(`no ${rule}`);
	return one;
};

const valve = (opens: string) =>
	`- limits: { maximum_treating_pressure: 5500 psi }\n+ limits: { maximum_treating_pressure: 6600 psi }\n+   toe: { kind: initiation valve, depth: 4310 ft, opens_at: ${opens}, opens_at_measured: surface }\n`;

describe("a toe valve", () => {
	// The casing is tested to 6,000 psi.
	test.each([
		["6000 psi", "not met"],
		["6001 psi", "met"],
		["6600 psi", "met"],
		["6601 psi", "not met"],
	])("that opens at %s: %s", (opens, verdict) =>
		expect(found("treatment.toe-valve", valve(opens)).verdict).toBe(verdict),
	);
	test("names both pressures", () => {
		expect(found("treatment.toe-valve", valve("5800 psi")).because).toBe(
			"The toe valve opens at 5,800 psi at surface; more than 6,000 psi is required: the casing test of the treated string.",
		);
	});
	test("that no pressure is given for cannot be told", () => {
		const none = valve("5800 psi").replace(", opens_at: 5800 psi, opens_at_measured: surface", "");
		expect(found("treatment.toe-valve", none).verdict).toBe("cannot tell");
	});
	test("is not asked for where guns open the toe", () => {
		expect(found("treatment.toe-valve", "").verdict).toBe("does not apply");
	});
});

const annulus = (rest: string) =>
	`- { role: lead, class: C, from: surface, to: 3500 ft\n+ { role: lead, class: C, from: 600 ft, to: 3500 ft\n\n- limits: { maximum_treating_pressure: 5500 psi }\n+ limits: { maximum_treating_pressure: 5500 psi }\n+   annuli: [{ between: [production, surface], ${rest} }]\n`;

describe("an annulus that rises without a leak", () => {
	const rise = (rest: string) => found("treatment.annulus-rise", annulus(rest));
	test("above its stop is told with both pressures", () => {
		expect(rise("stop_above: 50 psi")).toMatchObject({
			verdict: "not met",
			because:
				"The annulus may rise to 633 psi without a leak; at most 50 psi is allowed: the shutdown pressure of the annulus.",
			stop: ["pumping"],
		});
		expect(rise("stop_above: 634 psi").verdict).toBe("met");
	});
	test("is capped by its relief valve", () => {
		expect(rise("relief: 60 psi, stop_above: 60 psi").verdict).toBe("met");
		expect(rise("relief: 60 psi, stop_above: 59 psi").verdict).toBe("not met");
	});
	test("counts the rise that the operator predicts where it is the greater", () => {
		expect(rise("predicted_rise: 900 psi, stop_above: 700 psi").verdict).toBe("not met");
		expect(rise("predicted_rise: 900 psi, relief: 650 psi, stop_above: 700 psi").verdict).toBe("met");
	});
});

const pressure = (kickout: string) =>
	`- limits: { maximum_treating_pressure: 5500 psi }\n+ limits: { maximum_treating_pressure: 5500 psi, pump_kickouts: [${kickout}] }\n+   pressure_model: { net: 300 psi, friction_reduction: 50 %, roughness: 0.0018 in, discharge: [0.65, 0.85] }\n\n- pore_pressure: 9.0 ppg, fracture_gradient: 0.76 psi/ft }\n+ pore_pressure: 9.0 ppg, fracture_gradient: 0.76 psi/ft, mechanical: { closure: 0.70 psi/ft } }\n`;

test("a treatment that needs more than its first kickout", () => {
	expect(found("treatment.expected-pressure", pressure("1500 psi")).because).toBe(
		"The expected treating pressure is 2,844 psi at the highest-pressure stage; less than 1,500 psi is required: the lowest pump kickout.",
	);
	expect(found("treatment.expected-pressure", pressure("2843 psi")).verdict).toBe("not met");
	expect(found("treatment.expected-pressure", pressure("2846 psi")).verdict).toBe("met");
	expect(found("treatment.expected-pressure", "").verdict).toBe("cannot tell");
});

const strength = (points: string, more = "") =>
	`- excess: 50 %, density: 14.8 ppg, yield: 1.32 ft3/sk, water: 6.3 gal/sk }\n+ excess: 50 %, density: 14.8 ppg, yield: 1.32 ft3/sk, water: 6.3 gal/sk, strength: [${points}] }\n${more}`;

describe("cement that is drilled out", () => {
	const out = (points: string, more?: string) =>
		found("cement.strength-at-drill-out", strength(points, more), "surface");
	// The wait is 12 hr.
	test("too early by its first test is not met, by how much said as a bound", () => {
		expect(out("{ value: 500 psi, after: 20 hr }")).toMatchObject({
			verdict: "not met",
			because:
				"The cement at the surface shoe has at most 300 psi after 12 hr, and reaches 500 psi after 20 hr; at least 500 psi is required.",
		});
	});
	test("before its first test, which would do, cannot be told: the line lies above a curve that starts late", () => {
		expect(out("{ value: 700 psi, after: 14 hr }").verdict).toBe("cannot tell");
	});
	test("between two tests is judged by the line between them", () => {
		expect(out("{ value: 400 psi, after: 8 hr }, { value: 600 psi, after: 16 hr }").verdict).toBe("met");
		expect(out("{ value: 390 psi, after: 8 hr }, { value: 600 psi, after: 16 hr }").verdict).toBe("not met");
	});
	test("waits for the strength that the definition asks", () => {
		const asked =
			"\n-       wait_on_cement: 12 hr\n+       wait_on_cement: 12 hr\n+       drill_out: { strength: 1000 psi, after: 12 hr }\n";
		expect(out("{ value: 900 psi, after: 8 hr }", asked).verdict).toBe("not met");
		expect(out("{ value: 1000 psi, after: 8 hr }", asked).verdict).toBe("met");
	});
});

test("a plug is bumped where a bump is stated, whether or not its plugs are named", () => {
	const bump =
		"-       wait_on_cement: 18 hr\n+       wait_on_cement: 18 hr\n+       displacement: { density: 9.6 ppg, rate: 6 bbl/min }\n+       bump: 5500 psi\n";
	expect(found("cement.plug-bump", bump, "production").verdict).toBe("cannot tell");
	expect(found("cement.plug-bump", bump, "surface").verdict).toBe("does not apply");
});

test("rock that flows is named with its depth and what passes it then", () => {
	const light =
		"-       wait_on_cement: 18 hr\n+       wait_on_cement: 18 hr\n+       displacement: { density: 9.6 ppg, rate: 6 bbl/min }\n+       spacer: { volume: 200 bbl, density: 8.4 ppg }\n";
	expect(found("cement.pore-margin", light, "production").because).toMatch(
		/^The static column of the production cement job falls \d+ psi below the pore pressure of the Ledger Sand at 4,310 ft, while the spacer passes;/,
	);
});

test("recorded cement that leaves water bare names the water; an outer string's cement covers it", () => {
	const top = (depth: string) =>
		`-       wait_on_cement: 12 hr\n+       wait_on_cement: 12 hr\n+       actual: { top: { depth: ${depth}, method: bond log } }\n`;
	expect(found("records.water-zone", top("300 ft"), "surface")).toMatchObject({
		verdict: "not met",
		because:
			"Cement behind the surface string stops 240 ft below the top of the Candler aquifer; none is allowed.",
	});
	expect(found("records.water-zone", top("60 ft"), "surface").verdict).toBe("met");
	const inner = `-       wait_on_cement: 18 hr\n+       wait_on_cement: 18 hr\n+       actual: { top: { depth: 3000 ft, method: bond log } }\n`;
	expect(found("records.water-zone", inner, "production").verdict).toBe("does not apply");
});

test("a cement job that pushes a short string up", () => {
	const lift =
		"-       wait_on_cement: 12 hr\n+       wait_on_cement: 12 hr\n+       displacement: { density: 7.0 ppg, rate: 5 bbl/min }\n";
	expect(found("cement.casing-lift", lift, "surface")).toMatchObject({
		verdict: "not met",
		stop: ["cementing"],
	});
	const heavy = lift.replace("7.0 ppg", "9.0 ppg");
	expect(found("cement.casing-lift", heavy, "surface").verdict).toBe("met");
});
