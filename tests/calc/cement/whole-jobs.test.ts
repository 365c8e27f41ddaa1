import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { loadCatalog } from "../../../src/catalog/load-catalog.ts";
import { type Understanding, understand } from "../../../src/pipeline.ts";
import { applyEdits } from "../../broken/broken-case.ts";

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
const told = (found: Understanding) => found.diagnostics.map(({ code, what }) => `${code}: ${what}`);

describe("whole cement jobs", () => {
	it("the job they are made from has no fault, and every figure", () => {
		const found = understood(base);
		expect(told(found)).toEqual([]);
		const job = found.findings?.results.cement["surface"];
		expect(job?.placement?.with_friction).toBe(true);
		expect(job?.placement?.fracture?.margin.value).toBeGreaterThan(0);
		expect(job?.placement?.bump_pressure?.value).toBeCloseTo(
			(job?.placement?.final_circulating_pressure.value ?? 0) + 500,
			6,
		);
		expect(job?.setting?.free_from?.value).toBe(720);
	});

	it("losses at a weak zone while the job is pumped", () => {
		const [only, ...more] = told(changed("losses"));
		expect(more).toEqual([]);
		expect(only).toMatch(
			/^calc\/breaks-rock-while-placing: as the lead passes, the cement job of the surface string breaks down the Cinder Sand at 9[06]0 ft, from \d+ bbl on and by \d+ psi at worst$/,
		);
		const margin = changed("losses").findings?.results.cement["surface"]?.placement?.fracture;
		// It is broken before the plug lands: while lead stands opposite the zone, not only at the end.
		const first = margin?.steps.rows.find((row) => row.margin < 0);
		expect(first?.pumped).toBeLessThan(margin?.steps.rows.at(-1)?.pumped ?? 0);
	});

	it("cement short over an aquifer", () => {
		expect(told(changed("short"))).toContain(
			"calc/cement-short-of-water: cement behind the surface string stops 260 ft below the top of the Bramble aquifer",
		);
	});

	it("115 % pumped and no returns", () => {
		expect(told(changed("no-returns"))).toEqual([
			"calc/no-returns: 115 % of the calculated cement of the surface string was pumped and none came back",
		]);
	});

	it("light displacement behind heavy slurry lifts the casing", () => {
		const found = told(changed("lift"));
		expect(found).toHaveLength(1);
		expect(found[0]).toMatch(
			/^calc\/lifts-casing: the cement job lifts the surface string with [\d,]+ lbf more than holds it down$/,
		);
	});

	it("drill-out before strength", () => {
		// 500 psi after 8 hours, nothing at the start: 375 psi after 6.
		expect(told(changed("green"))).toEqual([
			"calc/drill-out-before-strength: the shoe of the surface string is to be drilled after 6 hours, when its cement has 375 psi",
		]);
	});
});
