import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { applyEdits } from "../broken/broken-case.ts";
import { definitionFaults } from "../broken/broken-faults.ts";

/* Wells that are sound, beside the broken ones: no rule between the parts may cry wolf. */

const BASE = readFileSync(new URL("../../fixtures/broken/base.yaml", import.meta.url), "utf8");

const told = (script: string): string[] => {
	const bytes = new TextEncoder().encode(script === "" ? BASE : applyEdits(script, BASE));
	return definitionFaults(bytes, "well.yaml").diagnostics.map(({ code }) => code);
};

const slurry = (figures: string): string => {
	const line = BASE.split("\n").find((each) => each.includes("from: 3500 ft, to: 4490 ft")) ?? "";
	const changed = line
		.trim()
		.replace(
			/class: C, (.*), density: .* \}$/,
			`${figures.includes("class") ? "" : "class: C, "}$1, ${figures} }`,
		);
	return changed === line.trim() ? "" : `- ${line.trim()}\n+ ${changed}\n`;
};

describe("a slurry is judged as neat only where it is", () => {
	it.each([
		["neat", "density: 14.8 ppg, yield: 1.32 ft3/sk, water: 6.3 gal/sk"],
		["neat, rounded", "density: 14.8 ppg, yield: 1.33 ft3/sk, water: 6.32 gal/sk"],
		["neat with a little retarder", "density: 14.7 ppg, yield: 1.34 ft3/sk, water: 6.4 gal/sk"],
		["extended", "density: 12.8 ppg, yield: 2.02 ft3/sk, water: 11.3 gal/sk"],
		["much extended", "density: 11.5 ppg, yield: 2.9 ft3/sk, water: 17.6 gal/sk"],
		["weighted", "density: 17.5 ppg, yield: 1.38 ft3/sk, water: 6.6 gal/sk"],
		["a blend that is named", "density: 14.8 ppg, yield: 1.32 ft3/sk, water: 3.6 gal/sk, additives: latex"],
		["another class", "class: H, density: 16.4 ppg, yield: 1.08 ft3/sk, water: 4.5 gal/sk"],
	])("%s", (_, figures) => {
		expect(told(slurry(figures)).filter((code) => code === "well/neat-slurry")).toEqual([]);
	});

	it.each([
		["the density", "density: 18.4 ppg, yield: 1.32 ft3/sk, water: 6.3 gal/sk"],
		["the yield", "density: 14.8 ppg, yield: 2.32 ft3/sk, water: 6.3 gal/sk"],
		["the water", "density: 14.8 ppg, yield: 1.32 ft3/sk, water: 9.3 gal/sk"],
	])("%s of a neat slurry, mistyped, is told", (_, figures) => {
		expect(told(slurry(figures))).toContain("well/neat-slurry");
	});
});

describe("sacks times yield is the volume within one part in a hundred", () => {
	// 400 sacks of 2.02 ft³ are 808 ft³, which is 143.91 bbl of 5.61458 ft³ (42 gallons of 231 cubic inches).
	it.each([
		[143.9, []],
		[142.6, []],
		[145.3, []],
		[142.3, ["well/sacks-volume"]],
		[145.6, ["well/sacks-volume"]],
	])("%d bbl: %j", (volume, codes) => {
		const edit = `- yield: 2.02 ft3/sk, water: 11.3 gal/sk }\n+ yield: 2.02 ft3/sk, water: 11.3 gal/sk, sacks: 400, volume: ${volume} bbl }\n`;
		expect(told(edit)).toEqual(codes);
	});

	it("one of them alone is not judged", () => {
		expect(told("- water: 11.3 gal/sk }\n+ water: 11.3 gal/sk, sacks: 1 }\n")).toEqual([]);
	});
});

describe("places", () => {
	it.each([
		["a neighbor some miles off", "latitude: 31.484902, longitude", "latitude: 31.534902, longitude"],
		[
			"a well some miles from where its neighbors were placed",
			"latitude: 31.482716, longitude: -98.771204",
			"latitude: 31.5227, longitude: -98.7912",
		],
	])("%s is left alone", (_, old, changed) => {
		expect(told(`- ${old}\n+ ${changed}\n`)).toEqual([]);
	});

	it("without a state nothing is said of a place", () => {
		expect(
			told(
				"- jurisdictions: [us-tx]\n+ jurisdictions: [us-blm]\n\n- api_number: 42-000-00002\n+ api_number: 99-000-00002\n",
			),
		).toEqual([]);
	});

	it("the API number tells the state where no jurisdiction does", () => {
		expect(
			told(
				"- jurisdictions: [us-tx]\n+ jurisdictions: [us-blm]\n\n- api_number: 42-000-00002\n+ api_number: 05-000-00002\n",
			),
		).toEqual(["well/coordinates-astray"]);
	});
});

describe("a job in stages", () => {
	const TOOL = "- wait_on_cement: 18 hr\n+ wait_on_cement: 18 hr\n+       stage_tool: 2500 ft\n\n";
	it("may leave a gap below its tool", () => {
		const edit = `${TOOL}- role: lead, class: C, from: surface, to: 3500 ft\n+ role: lead, class: C, from: surface, to: 2500 ft\n`;
		expect(told(edit)).toEqual([]);
	});

	it("may leave none above it", () => {
		const edit = `${TOOL}- - { role: lead, class: C, from: surface, to: 3500 ft\n+ - { role: upper, class: C, from: surface, to: 1000 ft, excess: 20 %, density: 12.8 ppg, yield: 2.02 ft3/sk, water: 11.3 gal/sk }\n+         - { role: lead, class: C, from: 1200 ft, to: 2500 ft\n`;
		expect(told(edit)).toEqual(["well/slurry-gap"]);
	});
});

/** The production string as a liner, and what joins it to the surface. */
const LINER = `- wait_on_cement: 18 hr
+ wait_on_cement: 18 hr

-     pipe: [{ od: 5 1/2 in, weight: 17 lb/ft, grade: L80, connection: LTC, condition: new, joint: 42 ft, from: surface, to: 4490 ft }]
+     kind: liner
+     pipe: [{ od: 5 1/2 in, weight: 17 lb/ft, grade: L80, connection: LTC, condition: new, joint: 42 ft, from: 550 ft, to: 4490 ft }]

- role: lead, class: C, from: surface, to: 3500 ft
+ role: lead, class: C, from: 550 ft, to: 3500 ft

`;
const tieback = (to: string): string =>
	`${LINER}- wellhead:\n+   - id: tieback\n+     kind: tieback\n+     hole: production\n+     pipe: [{ od: 5 1/2 in, weight: 17 lb/ft, grade: L80, connection: LTC, condition: new, from: surface, to: ${to} }]\n+ wellhead:\n`;

describe("a tieback", () => {
	it.each([
		["at the liner's top", "550 ft", []],
		["in its receptacle", "562 ft", []],
		["above it", "500 ft", ["well/tieback-join"]],
		["far below it", "700 ft", ["well/tieback-join"]],
	])("%s: %j", (_, to, codes) => {
		expect(told(tieback(to)).filter((code) => code.startsWith("well/"))).toEqual(codes);
	});
});

describe("a treating string", () => {
	const pipe = (to: string, packer: string): string =>
		`- base_fluid: { kind\n+ treating_string: { pipe: [{ od: 2 7/8 in, weight: 6.5 lb/ft, wall: 0.217 in, grade: L80, connection: EUE, coupling_od: 3.668 in, condition: new, ratings: { internal_yield: 10570 psi, collapse: 11170 psi, tension: 144960 lbf, source: data sheet (fictional) }, from: surface, to: ${to} }], packer: { depth: ${packer} } }\n+   base_fluid: { kind\n`;
	it.each([
		["with its packer above the openings", "4200 ft", "4150 ft", []],
		["with its packer at its end", "4200 ft", "4200 ft", []],
		["with its packer below its end", "4100 ft", "4150 ft", ["well/treating-string"]],
		["that ends in the shoe track", "4460 ft", "4150 ft", ["well/treating-string"]],
	])("%s: %j", (_, to, packer, codes) => {
		expect(told(pipe(to, packer)).filter((code) => code.startsWith("well/"))).toEqual(codes);
	});
});
