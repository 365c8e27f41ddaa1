import { describe, expect, test } from "vitest";
import { clearOfFractures, fractureReach } from "../../../src/calc/isolation/neighboring-wells.ts";
import { datumShift } from "../../../src/calc/site/offset-path.ts";
import { starterText, understandStarter, understandText } from "../../starters.ts";
import { toldPlainly } from "../../told.ts";
import { given } from "../given.ts";

const AS_BUILT = starterText("horizontal-as-built");

/** The as-built starter with the entry of the pad's other well written anew. */
const padWell = (entry: string) => AS_BUILT.replace(/ {4}- id: ow-2\n(?: {6}.*\n)+/u, `    - ${entry}\n`);

const understood = (text: string) => {
	const { findings, diagnostics } = understandText(text);
	if (findings === undefined) throw new Error(diagnostics.map(({ what }) => toldPlainly(what)).join("; "));
	return findings;
};
const wellsOf = (text: string) => understood(text).results.isolation.offset_wells;

const PLACE =
	"id: ow-2, name: Tamarack Draw 8-22H, status: drilled, latitude: 31.927480, longitude: -99.612700";
const RADIUS = "uncertainty: { radius: 105 ft, confidence: 95 %, source: a survey }";

describe("the wells near the as-built starter", () => {
	const { results } = understandStarter("horizontal-as-built").findings ?? {};
	const wells = results?.isolation.offset_wells ?? [];

	test("all have a path, a nearest approach and a factor", () => {
		expect(wells.map(({ id }) => id)).toEqual(["ow-1", "ow-2"]);
		for (const each of wells) {
			expect(each.in_space?.value, each.id).toBeGreaterThan(0);
			expect(each.separation_factor?.value, each.id).toBeGreaterThan(1.5);
		}
	});

	test("the pad's other well is nearest at the wellheads, and past the reach of the fractures", () => {
		const pad = wells.find(({ id }) => id === "ow-2");
		expect(pad?.in_space?.value).toBeLessThan(90);
		expect(pad?.nearest_in_space?.md.value).toBeLessThan(2500);
		expect(pad?.clear_of_fractures?.value).toBeGreaterThan(0);
	});
});

describe("a well beside this one", () => {
	test("whose hole goes straight down where this one wandered to has next to no separation", () => {
		const [, pad] = wellsOf(
			padWell(`{ ${PLACE}, total_depth: 8004 ft TVD, path: { vertical: true, ${RADIUS} } }`),
		);
		expect(pad?.in_space?.value).toBeCloseTo(0.58, 1);
		expect(pad?.separation_factor?.value).toBeLessThan(0.01);
		expect(pad?.clear_of_fractures?.value).toBeLessThan(0);
	});

	test("without a path is not evaluated, and says so", () => {
		const { results } = understood(padWell(`{ ${PLACE}, total_depth: 8004 ft TVD }`));
		const [, pad] = results.isolation.offset_wells;
		expect(pad).not.toHaveProperty("in_space");
		expect(pad).not.toHaveProperty("separation_factor");
		expect(results.undetermined).toContainEqual({
			key: "site.offset_wells.ow-2.path",
			because: {
				code: "calc/path-is-not-given-its-distance",
				facts: { entry: "Tamarack Draw 8-22H" },
			},
			needs: [["site", "offset_wells", 1, "path"]],
		});
	});

	test("whose place nobody says how well it is known has a distance and no factor", () => {
		const { results } = understood(
			padWell(`{ ${PLACE}, total_depth: 8004 ft TVD, path: { vertical: true } }`),
		);
		const [, pad] = results.isolation.offset_wells;
		expect(pad?.in_space?.value).toBeCloseTo(0.58, 1);
		expect(pad).not.toHaveProperty("separation_factor");
		expect(results.undetermined.map(({ key }) => key)).toContain(
			"isolation.offset_wells.ow-2.separation_factor",
		);
	});

	test("with a bottom-hole location is taken straight there", () => {
		const bottom = "bottom_hole: { latitude: 31.927480, longitude: -99.609000, depth: 8004 ft TVD }";
		const [, pad] = wellsOf(padWell(`{ ${PLACE}, path: { ${bottom}, ${RADIUS} } }`));
		expect(pad?.bottom?.value).toBeCloseTo(8004, 6);
		expect(pad?.in_space?.value).toBeGreaterThan(40);
	});

	test("its stations may be listed, and count from another north", () => {
		const stations =
			"stations: [{ md: 0 ft, inclination: 0 deg, azimuth: 0 deg }, { md: 1000 ft, inclination: 10 deg, azimuth: 90 deg }]";
		const at = (north: string) =>
			understood(padWell(`{ ${PLACE}, path: { ${stations}, north: ${north} } }`)).results.site
				.offset_wells[1];
		const [grid, fromTrue] = [at("grid")?.path?.rows.at(-1), at("true")?.path?.rows.at(-1)];
		expect(fromTrue?.["north"]).not.toBe(grid?.["north"]);
		// 0.37° of convergence over the way made good east, some 87 ft.
		expect((fromTrue?.["north"] ?? 0) - (grid?.["north"] ?? 0)).toBeCloseTo(
			87.3 * Math.sin((0.37 * Math.PI) / 180),
			1,
		);
	});

	test("a path says one thing, not two and not none", () => {
		const codes = (path: string) =>
			understandText(padWell(`{ ${PLACE}, path: ${path} }`)).diagnostics.map(({ code }) => code);
		expect(codes("{ north: grid }")).toContain("definition/one-of-keys");
		expect(codes("{ vertical: true, file: a.csv }")).toContain("definition/one-of-keys");
	});

	test("its depths are brought to this well's datum", () => {
		// Ground at 2,106 ft and the rotary table 25 ft above it, against a datum at 2,101 ft: 30 ft deeper here.
		const shift = datumShift.of({
			E_g: given("elevation", 2106),
			h: given("length", 25),
			E_d: given("elevation", 2101),
		});
		expect(shift.value).toBe(30);
		const [, pad] = wellsOf(
			padWell(
				`{ ${PLACE}, total_depth: 5000 ft TVD, depth_datum_elevation: 2101 ft, path: { vertical: true } }`,
			),
		);
		expect(pad?.bottom?.value).toBeCloseTo(5030, 6);
	});
});

test("the fractures reach as far as the longest model and both uncertainties", () => {
	const x = fractureReach.of({
		x_f: [given("length", 300), given("length", 570)],
		u: [given("distance", 105), given("distance", 60)],
	});
	expect(x.value).toBe(735);
	expect(clearOfFractures.of({ d: given("distance", 591), x }).value).toBe(-144);
});
