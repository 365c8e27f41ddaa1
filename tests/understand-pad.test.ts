import { describe, expect, it, test } from "vitest";
import { separationByModel, separationByTwoModels } from "../src/calc/site/separation-factor.ts";
import { datumElevation } from "../src/calc/site/wells-of-pad.ts";
import { constant, type KnownTable } from "../src/cite/known.ts";
import { cite } from "../src/cite/source.ts";
import { locate } from "../src/diagnostics/locate.ts";
import type { Dimension } from "../src/units/dimensions.ts";
import { padFindings, padStarter, understandChangedPad } from "./pads.ts";

const [WEST, MIDDLE, EAST] = [
	"Bristle Creek Unit 1-21H",
	"Bristle Creek Unit 2-21H",
	"Bristle Creek Unit 3-21H",
];

describe("the wells of a pad", () => {
	it("are whole definitions without a fault, each with what is its own and what they share", () => {
		expect(padStarter().diagnostics).toEqual([]);
		const wells = padFindings();
		expect(wells.map(({ well }) => well.identity.name)).toEqual([WEST, MIDDLE, EAST]);
		expect(new Set(wells.map(({ well }) => well.identity.operator)).size).toBe(1);
		expect(new Set(wells.map(({ well }) => well.identity.permit)).size).toBe(3);
		expect(wells.every(({ judgement: { counts } }) => counts["not met"] + counts["cannot tell"] === 0)).toBe(
			true,
		);
	});

	it("are neighbors of each other with their own paths; how near two come is the same from both sides", () => {
		const wells = padFindings();
		const apart = (from: number, to: string | undefined) =>
			wells[from]?.results.isolation.offset_wells.find(({ name }) => name === to);
		for (const well of wells) expect(well.results.isolation.offset_wells).toHaveLength(2);
		// Wellheads in a row, 30 ft and 60 ft apart, and laterals 1,320 ft apart, as the plans were drawn.
		expect(apart(0, MIDDLE)?.in_space?.value).toBeCloseTo(30, 0);
		expect(apart(0, EAST)?.in_space?.value).toBeCloseTo(60, 0);
		expect(apart(0, MIDDLE)?.in_space?.value).toBeCloseTo(apart(1, WEST)?.in_space?.value ?? 0, 3);
		expect(apart(0, MIDDLE)?.treated_in_plan?.value).toBeGreaterThan(1300);
		expect(apart(0, MIDDLE)?.separation_factor?.value).toBeCloseTo(
			apart(1, WEST)?.separation_factor?.value ?? 0,
			1,
		);
		expect(wells[0]?.well.site.pad?.other_wells?.map(({ name }) => name)).toEqual([MIDDLE, EAST]);
	});

	/** One well higher, one without an error model and under another permit. */
	const changed = understandChangedPad({
		"bristle-creek-1-21h.yaml": (text) => text.replace("site:\n", "site:\n  ground_elevation: 1477 ft\n"),
		"bristle-creek-3-21h.yaml": (text) =>
			text
				.replace("permit: D-20613", "permit: D-20614")
				.replace(/^ {2}error_model.*\n/mu, "")
				.replace(/^ {2}uncertainty.*\n/mu, ""),
	}).wells.map(({ understanding }) => understanding.findings);

	it("stand in each other's fingerprint: a change of one is seen in the papers of all", () => {
		for (const [i, { digest }] of padFindings().entries()) expect(changed[i]?.digest).not.toBe(digest);
	});

	test("each well stands at the elevation of its own datum", () => {
		const ground = constant("elevation", 1467, "given", cite("definition"));
		const height = constant("length", 26, "given", cite("definition"));
		expect(datumElevation.of({ E_g: ground, h: height }).value).toBe(1493);
		const from = (i: number, name: string | undefined) =>
			changed[i]?.results.site.offset_wells.find((each) => each.name === name)?.path?.rows[0]?.["tvd"];
		expect(from(0, MIDDLE)).toBeCloseTo(10, 9);
		expect(from(1, WEST)).toBeCloseTo(-10, 9);
		expect(from(1, EAST)).toBeCloseTo(0, 9);
	});

	it("that lack an error model are still told apart, and said to be not evaluated", () => {
		const east = changed[0]?.results.isolation.offset_wells.find(({ name }) => name === EAST);
		expect(east?.in_space?.value).toBeGreaterThan(50);
		expect(east?.separation_factor).toBeUndefined();
		const open = changed[0]?.judgement.findings.filter(({ verdict }) => verdict === "cannot tell");
		expect(open?.some(({ check, subject }) => check === "separation-factor" && subject === EAST)).toBe(true);
	});
});

describe("a fault of a pad", () => {
	const told = (changes: Parameters<typeof understandChangedPad>[0]) => {
		const { diagnostics, texts, wells } = understandChangedPad(changes);
		expect(wells.every(({ understanding }) => understanding.findings === undefined)).toBe(true);
		return diagnostics.map(({ code, at }) => {
			const { file, line } = locate(at, texts);
			return [code, file, line?.text.slice(line.from, line.to)];
		});
	};

	it("is told once, in the file that it stands in: the pad's or the well's", () => {
		expect(
			told({
				"pad.yaml": (text) => text.replace("area: 8.9 acre", "area: 8.9"),
				"bristle-creek-3-21h.yaml": (text) => text.replace("radius: 200 ft", "radius: 200"),
			}),
		).toEqual([
			["quantity/no-unit", "pad.yaml", "8.9"],
			["quantity/no-unit", "bristle-creek-3-21h.yaml", "200"],
		]);
	});

	it("is a well's own, where what is missing belongs to an entry of its own", () => {
		expect(told({ "bristle-creek-2-21h.yaml": (text) => text.replace(", datum: NAD83 }", " }") })).toEqual([
			["definition/missing", "bristle-creek-2-21h.yaml", "surface_location"],
		]);
	});

	it("is the pad file's own: a strange name, a well twice, a well that is not there, two of one name", () => {
		expect(told({ "pad.yaml": (text) => text.replace("\nname:", "\nnmae:") })).toEqual([
			["definition/unknown-key", "pad.yaml", "nmae"],
		]);
		expect(told({ "pad.yaml": (text) => text.replace("creek-2-21h.yaml", "creek-1-21h.yaml") })).toEqual([
			["definition/duplicate-id", "pad.yaml", "bristle-creek-1-21h.yaml"],
		]);
		expect(told({ "pad.yaml": (text) => text.replace("creek-2-21h.yaml", "creek-9-21h.yaml") })).toEqual([
			["file/not-found", "pad.yaml", "bristle-creek-9-21h.yaml"],
		]);
		expect(
			told({ "bristle-creek-2-21h.yaml": (text) => text.replace("2-21H\n  api", "1-21H\n  api") }),
		).toEqual([["definition/duplicate-id", "bristle-creek-2-21h.yaml", WEST]]);
	});
});

describe("separation by the error models of two wells", () => {
	const given = <D extends Dimension>(dimension: D, value: number) =>
		constant(dimension, value, "given", cite("definition"));
	const table = (columns: Readonly<Record<string, Dimension>>, rows: KnownTable["rows"]): KnownTable => ({
		columns,
		rows,
		from: { kind: "constant", name: "given", source: cite("definition") },
	});
	const path = (east: number) =>
		table(
			{
				md: "measured-depth",
				inclination: "angle",
				azimuth: "angle",
				tvd: "true-vertical-depth",
				north: "offset",
				east: "offset",
			},
			[0, 5000].map((md) => ({ md, inclination: 0, azimuth: 0, tvd: md, north: 0, east })),
		);
	const covariance = (ee: number) =>
		table(
			{ md: "measured-depth", nn: "ratio", ee: "ratio", vv: "ratio", ne: "ratio", nv: "ratio", ev: "ratio" },
			[0, 5000].map((md) => ({ md, nn: 1, ee, vv: 1, ne: 0, nv: 0, ev: 0 })),
		);
	const common = {
		path: path(0),
		other: path(100),
		turn: given("angle", 0),
		R_r: given("length", 0.5),
		R_o: given("length", 0.5),
		σ_w: given("distance", 0),
	};
	const sigmas = ({ rows }: KnownTable) => rows.map((row) => row["standard_deviation"]);

	test("errs by both wells: as by one where the other has no error, and by √2 where both have the same", () => {
		const one = separationByModel.of({ ...common, covariance: covariance(16), σ_o: given("distance", 0) });
		const other = (ee: number) =>
			separationByTwoModels.of({ ...common, covariance: covariance(16), other_covariance: covariance(ee) });
		expect(sigmas(other(0))).toEqual(sigmas(one));
		for (const sigma of sigmas(other(16))) expect(sigma).toBeCloseTo(4 * Math.SQRT2, 12);
		for (const sigma of sigmas(other(9))) expect(sigma).toBeCloseTo(5, 12);
	});
});
