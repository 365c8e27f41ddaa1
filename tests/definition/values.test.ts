import { describe, expect, it } from "vitest";
import type { Definition } from "../../src/definition/definition.ts";
import { validate } from "../../src/definition/validate.ts";
import type { Path } from "../../src/diagnostics/path.ts";
import { changed, type Starter, starterTree } from "./starter-trees.ts";

const read = (
	path: Path = ["well", "name"],
	value: unknown = "A",
	starter: Starter = "horizontal",
): Definition => {
	const checked = validate(changed(starterTree(starter), path, value));
	if (checked.value === undefined) throw new Error(checked.diagnostics.map(({ what }) => what).join("; "));
	return checked.value;
};

describe("what a definition becomes", () => {
	it("keeps text, and turns quantities to the trade's units", () => {
		const metric = read(["well", "name"], "A", "vertical-metric");
		const pipe = metric.casing[0]?.pipe[0];
		// 244.5 mm over the exact inch of 25.4 mm; 53.57 kg/m over the exact pound and foot (NIST SP 811, Appendix B).
		expect(pipe?.od.value).toBeCloseTo(244.5 / 25.4, 12);
		expect(pipe?.weight?.value).toBeCloseTo((53.57 / 0.45359237) * 0.3048, 10);
		expect(pipe?.od.from).toEqual({
			kind: "definition",
			at: ["casing", 0, "pipe", 0, "od"],
			text: "244.5 mm",
		});
	});

	it("tells depths apart by what they are counted from", () => {
		const { geology, site } = read();
		expect(geology.formations[1]?.top).toMatchObject({
			reference: "vertical",
			depth: { dimension: "true-vertical-depth", value: 180 },
		});
		expect(geology.protected_water?.base).toMatchObject({
			reference: "ground",
			depth: { dimension: "depth-below-ground", value: 984 },
		});
		expect(site.neighbors?.[0]?.depth).toMatchObject({ reference: "ground", depth: { value: 285 } });
		expect(geology.formations[1]?.top.depth.from).toMatchObject({ at: ["geology", "formations", 1, "top"] });
	});

	it("leaves `surface` to be understood later", () => {
		expect(read().casing[1]?.pipe[0]?.from).toEqual({ surface: true });
	});

	it("reads days as one value or three, each at the place it was written", () => {
		const { schedule } = read(["schedule", 3, "days"], 4);
		expect(schedule?.[3]?.days.map(({ value, from }) => [value, from])).toEqual([
			[4 * 1440, { kind: "definition", at: ["schedule", 3, "days"], text: "4 days" }],
		]);
		expect(schedule?.[0]?.days.map(({ value }) => value / 1440)).toEqual([18, 21, 28]);
		expect(schedule?.[0]?.days[2]?.from).toMatchObject({ at: ["schedule", 0, "days", 2] });
	});

	it("reads an angle east or west of north with its sign", () => {
		const west = read(["site", "north", "declination"], "3.9 deg west");
		expect(west.site.north?.declination?.value).toBeCloseTo(-3.9, 12);
		expect(read().site.north?.declination?.value).toBeCloseTo(3.9, 12);
	});

	it("reads `true` north, which YAML takes for a truth value", () => {
		expect(read(["site", "north", "reference"], true).site.north?.reference).toBe("true");
	});

	it("reads a flush to the top cluster, and spacings in joints", () => {
		const { stimulation, casing } = read();
		expect(stimulation?.stages.treatment.steps.at(-1)?.clean_volume).toEqual({ flush_to: "top cluster" });
		expect(casing[1]?.centralizers?.bow_spring?.[1]?.every).toMatchObject({ dimension: "count", value: 4 });
	});

	it("keeps what a permit's limit says as it was written, for the rules to read", () => {
		const limit = { at_least: "200 ft", of: { above: "shoe" } };
		expect(read(["site", "conditions", 0, "limit"], limit).site.conditions?.[0]?.limit).toEqual(limit);
	});

	it.each([
		["a vertical well", { vertical: true, to: "9000 ft" }],
		[
			"a build and hold",
			{
				kickoff: "3000 ft",
				build: "3 deg/100 ft",
				azimuth: "40 deg",
				target: { tvd: "8900 ft TVD", departure: "1800 ft" },
			},
		],
		["segments", { segments: [{ length: "9000 ft", inclination: "0 deg", azimuth: "0 deg" }] }],
	])("takes %s as a plan", (_, plan) =>
		expect(read(["trajectory", "plan"], plan).trajectory.plan).toBeDefined(),
	);

	it.each([
		["a liner", ["casing", 3, "kind"], "liner"],
		[
			"stated ratings",
			["casing", 3, "pipe", 0, "ratings"],
			{ internal_yield: "13000 psi", tension: "700 klbf", source: "data sheet" },
		],
		[
			"a survey typed in",
			["trajectory", "actual"],
			{ survey: { stations: [{ md: "0 ft", inclination: "0 deg", azimuth: "0 deg" }] } },
		],
		[
			"stages from a file",
			["stimulation", "stages"],
			{
				rows: { file: "stages.csv" },
				treatment: { rate: "70 bbl/min", steps: [{ name: "pad", clean_volume: "900 bbl" }] },
			},
		],
		[
			"a partly empty string",
			["casing", 2, "loads", "evacuation"],
			{ fluid_level: "2000 ft TVD", fluid: "9.4 ppg" },
		],
		[
			"pipe by wall",
			["casing", 0, "pipe", 0],
			{ od: "20 in", wall: "0.438 in", grade: "J55", connection: "plain end", from: "surface", to: "106 ft" },
		],
	] as const)("takes %s", (_, path, value) => expect(read(path, value)).toBeDefined());
});
