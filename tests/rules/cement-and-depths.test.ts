import { describe, expect, it } from "vitest";
import { type Edit, finding, KICKED, set, without } from "./builders.ts";

const STRENGTH = "casing.1.cement.slurries.1.strength";
const points = (...list: readonly (readonly [string, string])[]) =>
	set(
		STRENGTH,
		list.map(([value, after]) => ({ value, after, at: "80 degF" })),
	);
const tail = (at_least: string, after = "24 hr", ...edits: readonly Edit[]) =>
	finding(
		{
			check: "cement-strength",
			applies_to: { string: "surface" },
			limit: { measure: "strength", zone: "shoe", after, at_least },
		},
		...edits,
	);

describe("strength between two tests", () => {
	// 500 psi after 12 hours, 1200 psi after 72 hours; cement gains strength (common practice, no source).
	it("is at least the earlier", () => {
		expect(tail("500 psi").verdict).toBe("met");
		expect(tail("500 psi").because).toContain("at least 500");
	});
	it("is at most the later", () => {
		expect(tail("1201 psi").verdict).toBe("not met");
	});
	it("is not interpolated", () => {
		const open = tail("800 psi");
		expect(open.verdict).toBe("cannot tell");
		expect(open.because).toContain("between 500");
		expect(open.missing?.[0]).toMatchObject({
			what: expect.stringContaining("tail slurry after 24"),
			at: STRENGTH.split(".").map((s) => (/^\d+$/.test(s) ? Number(s) : s)),
		});
	});
	it("before the first test only the upper bound is known, after the last only the lower", () => {
		expect(tail("400 psi", "8 hr").verdict).toBe("cannot tell");
		expect(tail("501 psi", "8 hr").verdict).toBe("not met");
		expect(tail("1200 psi", "96 hr").verdict).toBe("met");
		expect(tail("1201 psi", "96 hr").verdict).toBe("cannot tell");
	});
	it("at the time itself it is the test", () => {
		expect(tail("1200 psi", "72 hr").measured?.value).toBe(1200);
		expect(tail("900 psi", "24 hr", points(["900 psi", "24 hr"])).verdict).toBe("met");
	});
	it("a test at another temperature is no test of the rule", () => {
		const row = (cured_at: string) => ({
			check: "cement-strength",
			applies_to: { string: "surface" },
			limit: { measure: "strength", zone: "shoe", after: "72 hr", cured_at, at_least: "1200 psi" },
		});
		expect(finding(row("80 degF")).verdict).toBe("met");
		expect(finding(row("95 degF")).verdict).toBe("cannot tell");
	});
});

describe("zones of a cement column", () => {
	// Tail from 600 to 1000 ft, lead above; strengths after 72 hours 1200 and 400 psi.
	const zone = (height: unknown) =>
		finding({
			check: "cement-strength",
			applies_to: { string: "surface" },
			limit: { measure: "strength", zone: height, after: "72 hr", at_least: "1200 psi" },
		});
	it.each([
		["the bottom 399 ft hold the tail alone", { bottom: "399 ft" }, "met"],
		["the bottom 400 ft end where the tail does", { bottom: "400 ft" }, "met"],
		["the bottom 401 ft reach into the lead", { bottom: "401 ft" }, "not met"],
		["above the bottom 400 ft is the lead alone", { above_bottom: "400 ft" }, "not met"],
		["everything but the slurry at the shoe", "filler", "not met"],
		["the slurry at the shoe", "shoe", "met"],
		["the whole column", "whole", "not met"],
	])("%s", (_, height, verdict) => {
		expect(zone(height).verdict).toBe(verdict);
	});
	it("where nothing lies above the zone nothing is asked", () => {
		const row = {
			check: "cement-strength",
			applies_to: { string: "intermediate" },
			limit: { measure: "strength", zone: "filler", after: "24 hr", at_least: "250 psi" },
		};
		expect(finding(row).verdict).toBe("does not apply");
	});
});

describe("depths that some wells have", () => {
	it("cement above the kickoff", () => {
		const row = (at_least: string) => ({
			check: "cement-top",
			applies_to: { string: "production", when: "horizontal well" },
			limit: { measure: "cement top above kickoff", along: "hole", at_least },
		});
		expect(finding(row("1500 ft"), ...KICKED).verdict).toBe("met");
		expect(finding(row("1499.9 ft"), ...KICKED).verdict).toBe("met");
		expect(finding(row("1500.1 ft"), ...KICKED).verdict).toBe("not met");
		expect(finding(row("1500 ft"), ...KICKED, without("casing.3.cement"))).toMatchObject({
			verdict: "cannot tell",
			missing: [{ at: ["casing", 3, "cement", "slurries"] }],
		});
		expect(finding(row("1500 ft"))).toMatchObject({
			verdict: "does not apply",
			because: "The well has no lateral.",
		});
	});
	it("a liner's lap, along the hole", () => {
		const row = (at_least: string) => ({
			check: "liner-lap",
			applies_to: { string: "liner" },
			limit: { measure: "liner lap", at_least },
		});
		const hung = [
			set("casing.3.kind", "liner"),
			set("casing.3.pipe.0.from", "4900 ft"),
			set("casing.3.cement.slurries.0.from", "4900 ft"),
		];
		expect(finding(row("100 ft"), ...hung).verdict).toBe("met");
		expect(finding(row("99.9 ft"), ...hung).verdict).toBe("met");
		expect(finding(row("100.1 ft"), ...hung).verdict).toBe("not met");
	});
	it("a share of the well's depth below ground", () => {
		const row = (times: number) => ({
			check: "shoe-depth",
			applies_to: { string: "surface" },
			limit: {
				measure: "shoe below ground",
				at_least: { clamp: { times, of: "well depth below ground" }, from: "1 ft", to: "20000 ft" },
			},
		});
		// 980 ft below ground, in a well of 9990 ft.
		expect(finding(row(0.098)).required?.value).toBeCloseTo(979.02, 6);
		expect(finding(row(0.098)).verdict).toBe("met");
		expect(finding(row(0.0982)).verdict).toBe("not met");
	});
	it("three joints below the water wells", () => {
		const row = (times: number) => ({
			check: "surface-shoe-depth",
			applies_to: { string: "surface" },
			limit: {
				measure: "shoe below nearby water wells",
				within: "1000 ft",
				at_least: { times, of: "joint length" },
			},
		});
		// 17 joints of 40 ft are the 680 ft there are.
		expect(finding(row(17)).verdict).toBe("met");
		expect(finding(row(16.999)).verdict).toBe("met");
		expect(finding(row(17.001)).verdict).toBe("not met");
		expect(finding(row(3), without("casing.1.pipe.0.joint")).verdict).toBe("cannot tell");
	});
	it("a flow zone open above the shoe is taken from the marks, and the sentence says so", () => {
		const row = {
			check: "cement-top",
			applies_to: { string: "intermediate", when: "flow zone open above the shoe" },
			limit: { measure: "cement top above flow zone", along: "hole", at_least: "600 ft" },
		};
		expect(finding(row).verdict).toBe("met");
		const unmarked = finding(row, without("geology.formations.2.flow_zone"));
		expect(unmarked.verdict).toBe("does not apply");
		expect(unmarked.because).toContain("is marked as a flow zone");
	});
	it("a zone that begins above the previous shoe is open from that shoe down", () => {
		const row = {
			check: "cement-top",
			applies_to: { string: "intermediate" },
			limit: { measure: "cement top above flow zone", along: "hole", at_least: "1 ft" },
		};
		// The sand from 900 ft is open below the surface shoe at 1000 ft; cement ends at 3400 ft, 2400 ft below that.
		const shallow = set("geology.formations.1.flow_zone", "water");
		const found = finding(row, shallow);
		expect(found.verdict).toBe("not met");
		expect(found.measured?.value).toBe(-2400);
		expect(found.because).toContain("2,400 ft below".replace(" ", "\u00a0"));
	});
});
