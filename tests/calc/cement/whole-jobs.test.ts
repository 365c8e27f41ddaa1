import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { PlacementResults } from "../../../src/calc/results.ts";
import { loadCatalog } from "../../../src/catalog/load-catalog.ts";
import { type Understanding, understand } from "../../../src/pipeline.ts";
import { say } from "../../../src/rules/reason.ts";
import { applyEdits } from "../../broken/broken-case.ts";
import { toldPlainly } from "../../told.ts";

const fixture = (name: string): string =>
	readFileSync(new URL(`../../../fixtures/wells/${name}`, import.meta.url), "utf8");
const catalog = loadCatalog().value;

const understood = (text: string): Understanding => {
	if (catalog === undefined) throw new Error("no catalogue");
	return understand(
		{ name: "well.yaml", bytes: new TextEncoder().encode(text) },
		{
			catalog,
			version: "test",
			readFile: () => ({ refused: "no files", code: "file/not-found" }),
			ownRules: [],
		},
	);
};
const base = fixture("cementing.yaml");
const changed = (name: string) => understood(applyEdits(fixture(`cementing-${name}.edit`), base));
/** Faults of the writing, and what practice finds wrong with the cement jobs. */
const told = ({ diagnostics, findings }: Understanding) => [
	...diagnostics.map(({ code, what }) => `${code}: ${toldPlainly(what)}`),
	...(findings?.judgement.findings ?? [])
		.filter(({ cite, verdict }) => CEMENT.test(cite.rule) && verdict === "not met")
		.map(({ cite, reason }) => `${cite.rule}: ${say(reason).replaceAll("\u00a0", " ")}`),
];
const CEMENT =
	/^practice\.(cement\.(fracture-margin|pore-margin|casing-lift|strength-at-drill-out)|records\.(water-zone|returns))$/;

describe("whole cement jobs", () => {
	it("the job they are made from has no fault, and every figure", () => {
		const found = understood(base);
		expect(told(found)).toEqual([]);
		const job = found.findings?.results.cement["surface"];
		expect(job?.placement?.with_friction).toBe(true);
		expect(job?.placement?.fracture?.margin.value).toBeGreaterThan(0);
		expect(job?.placement?.bump_pressure?.value).toBeCloseTo(
			(job?.placement?.final_circulating_pressure?.value ?? 0) + 500,
			6,
		);
		expect(job?.setting?.free_from?.value).toBe(720);
	});

	it("losses at a weak zone while the job is pumped", () => {
		const [only, ...more] = told(changed("losses"));
		expect(more).toEqual([]);
		expect(only).toMatch(
			/^practice\.cement\.fracture-margin: The cement job of the surface string comes \d+ psi above the fracture pressure of the Cinder Sand at 9[06]0 ft, while the lead passes;/,
		);
		const margin = changed("losses").findings?.results.cement["surface"]?.placement?.fracture;
		// It is broken before the plug lands: while lead stands opposite the zone, not only at the end.
		const first = margin?.steps.rows.find((row) => row.margin < 0);
		expect(first?.pumped).toBeLessThan(margin?.steps.rows.at(-1)?.pumped ?? 0);
	});

	it("cement short over an aquifer", () => {
		expect(told(changed("short"))).toContain(
			"practice.records.water-zone: Cement behind the surface string stops 260 ft below the top of the Bramble aquifer; none is allowed.",
		);
	});

	it("115 % pumped and no returns", () => {
		expect(told(changed("no-returns"))).toEqual([
			"practice.records.returns: 1.15 times the calculated cement was pumped, and the record shows no cement returns at surface.",
		]);
	});

	it("light displacement behind heavy slurry lifts the casing", () => {
		const found = told(changed("lift"));
		expect(found).toHaveLength(1);
		expect(found[0]).toMatch(
			/^practice\.cement\.casing-lift: The cement job lifts the surface string: the uplift exceeds the hold-down force by [\d,]+ lbf;/,
		);
	});

	it("drill-out before strength", () => {
		// 500 psi after 8 hours, nothing at the start: 375 psi after 6.
		const [only] = told(changed("green"));
		expect(only).toContain(
			"practice.cement.strength-at-drill-out: The cement at the surface shoe has at most 375 psi after 6 hr, and reaches 500 psi after 8 hr; at least 500 psi is required.",
		);
	});
});

describe("a job in two stages", () => {
	const production = (name: string) => changed(name).findings?.results.cement["production"];

	it("in one piece the column breaks down the weak rock at the bottom, in two it does not", () => {
		const [only, ...more] = told(changed("one-stage"));
		expect(more).toEqual([]);
		expect(only).toMatch(
			/^practice\.cement\.fracture-margin: The cement job of the production string comes \d+ psi above the fracture pressure of the Target Lime at 4,990 ft, while the tail passes;/,
		);
		expect(told(changed("two-stage"))).toEqual([]);
	});

	it("each stage has its own train, through its own outlet", () => {
		const job = production("two-stage");
		const second = job?.second_stage;
		const ids = (placement: PlacementResults | undefined) => placement?.schedule.map(({ id }) => id);
		expect(ids(job?.placement)).toEqual(["spacer", "tail", "displacement", "last displacement"]);
		expect(ids(second?.placement)).toEqual(["spacer", "lead", "displacement", "last displacement"]);
		// 4.892 in is the bore of 5 1/2 in 17 lb/ft; 1029.4 from the handbook's capacity.
		expect(second?.displacement_volume.value).toBeCloseTo((4.892 ** 2 / 1029.4) * 2600, 2);
		expect(job?.displacement_volume?.value).toBeCloseTo((4.892 ** 2 / 1029.4) * 4910, 2);
		// Lead from the tool to the ground and 20 ft of spacer in the landing nipple; 8.5 lb/gal inside.
		const outside = 0.052 * (12.4 * 2580 + 9.6 * 20);
		expect(second?.annulus_hydrostatic_at_tool?.value).toBeCloseTo(outside, 6);
		expect(second?.final_lift?.value).toBeCloseTo(outside - 0.052 * 8.5 * 2600, 6);
		expect(second?.placement?.bump_pressure?.value).toBeCloseTo(
			(second?.placement?.final_circulating_pressure?.value ?? Number.NaN) + 500,
			6,
		);
		// The last pressure of the pump is the lift and what friction at the slow rate adds.
		expect(second?.placement?.final_circulating_pressure?.value).toBeGreaterThan(
			second?.final_lift?.value ?? Number.NaN,
		);
	});

	it("pumps in two stages what it pumps in one", () => {
		const [one, two] = [production("one-stage"), production("two-stage")];
		expect(two?.slurry_volume.value).toBeCloseTo(one?.slurry_volume.value ?? Number.NaN, 9);
		const cement = (placement: PlacementResults | undefined) =>
			(placement?.schedule ?? [])
				.filter(({ id }) => id === "lead" || id === "tail")
				.reduce((sum, { volume }) => sum + volume.value, 0);
		expect(cement(two?.placement) + cement(two?.second_stage?.placement)).toBeCloseTo(
			two?.slurry_volume.value ?? Number.NaN,
			9,
		);
		// What comes back is the excess of the stage that reaches the ground, and no more.
		const lead = two?.slurries.find(({ id }) => id === "lead")?.open_hole_volume.value ?? Number.NaN;
		expect(two?.second_stage?.placement?.returns_at_measure?.value).toBeCloseTo(lead - lead / 1.2, 9);
		expect(two?.placement?.returns_at_measure).toBeUndefined();
	});

	it("the second stage is held against the rock as the first is", () => {
		const weak = applyEdits(
			"- base: 960 ft TVD, lithology: sandstone\n+ base: 960 ft TVD, lithology: sandstone\n\n- lithology: shale, competent: true, pore_pressure: 8.5 ppg, fracture_gradient: 0.84 psi/ft\n+ lithology: shale, competent: true, pore_pressure: 8.5 ppg, fracture_gradient: 0.64 psi/ft\n",
			applyEdits(fixture("cementing-two-stage.edit"), base),
		);
		expect(told(understood(weak)).join("\n")).toMatch(
			/production string comes \d+ psi above the fracture pressure of the Anvil Shale at 2,600 ft, while the lead passes;/,
		);
	});

	it("a stretch that neither fills is no cement, and the rock there bears what stands over it", () => {
		const found = changed("two-stage-apart");
		const job = found.findings?.results.cement["production"];
		expect(job?.columns.map(({ top, bottom }) => [top.md.value, bottom.md.value])).toEqual([
			[20, 2600],
			[3200, 4990],
		]);
		expect(job?.to_surface).toBe(false);
		const isolation = found.findings?.results.isolation;
		expect(isolation?.gaps.map(({ top, bottom }) => [top.md.value, bottom.md.value])).toContainEqual([
			2600, 3200,
		]);
		const across = isolation?.layers.find(
			({ top, bottom }) => top.md.value <= 2900 && 2900 < bottom.md.value,
		);
		expect(across?.layers.at(-1)).toEqual({ kind: "open annulus", string: "production" });
		// 1,090 ft of uncemented shale would flow if the mud between the stages did not hold it.
		const flowing = applyEdits(
			"- lithology: shale, competent: true, pore_pressure: 8.5 ppg, fracture_gradient: 0.84 psi/ft\n+ base: 2900 ft TVD, lithology: shale, competent: true, pore_pressure: 8.5 ppg, fracture_gradient: 0.84 psi/ft }\n+     - { name: Weak Lime, top: 2900 ft TVD, base: 3200 ft TVD, lithology: limestone, pore_pressure: 8.8 ppg, fracture_gradient: 0.64 psi/ft\n",
			applyEdits(fixture("cementing-two-stage-apart.edit"), base),
		);
		const margin =
			understood(flowing).findings?.results.cement["production"]?.second_stage?.placement?.fracture;
		expect(margin?.formation).toBe("Weak Lime");
		// At rest: the second stage on the tool, and 300 ft of what the first left under it.
		expect(margin?.at.tvd.value).toBeGreaterThan(2600);
	});
});

describe("a liner", () => {
	it("is displaced through the pipe it is run on, and its plug lands against the cement's lift", () => {
		const found = changed("liner");
		expect(told(found)).toEqual([]);
		const job = found.findings?.results.cement["production"];
		// 1,300 ft of drill pipe of 3.34 in, then 5 1/2 in 17 lb/ft of 4.892 in to the collar 80 ft above the shoe.
		const volume = (3.34 ** 2 * 1300 + 4.892 ** 2 * (4910 - 1300)) / 1029.4;
		expect(job?.displacement_volume?.value).toBeCloseTo(volume, 2);
		// Outside: mud and spacer over the liner's top, slurry from there; inside 8.5 lb/gal to the collar, slurry below.
		const spacer = job?.spacer_top?.md.value ?? Number.NaN;
		const outside = 0.052 * (9.4 * spacer + 9.6 * (1300 - spacer) + 13.5 * 3690);
		expect(job?.annulus_hydrostatic_at_shoe?.value).toBeCloseTo(outside, 4);
		expect(job?.final_lift?.value).toBeCloseTo(outside - 0.052 * (8.5 * 4910 + 13.5 * 80), 4);
		expect(job?.placement?.final_circulating_pressure?.value).toBeGreaterThan(
			job?.final_lift?.value ?? Number.NaN,
		);
		// A liner hangs on its running string: its own weight against the push on its end says nothing.
		expect(job?.net_hold_down).toBeUndefined();
		expect(job?.placement?.least_net_force).toBeUndefined();
	});

	it("without its running string is not displaced, and says so", () => {
		const bare = applyEdits(
			"- running_string: { od: 4 in, id: 3.34 in }\n+ floats: [float shoe]\n",
			applyEdits(fixture("cementing-liner.edit"), base),
		);
		const found = understood(bare).findings;
		expect(found?.results.cement["production"]?.displacement_volume).toBeUndefined();
		expect(JSON.stringify(found)).toContain("calc/liner-is-displaced-through-its-running");
	});
});
