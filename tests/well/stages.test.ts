import { describe, expect, test } from "vitest";
import { codesOf, filesOf, resolve, smallWell, understood } from "./resolve.ts";

const LAYOUT =
	"layout: { count: 2, bottom: 4300 ft, length: 45 ft, clusters: 2, cluster_spacing: 15 ft, shots_per_cluster: 6, shot_diameter: 0.40 in, phasing: 60 deg, plug_below_bottom_cluster: 10 ft }";

const stagesOf = (text: string, files?: Parameters<typeof understood>[1]) =>
	understood(text, files).stimulation?.stages ?? [];

const depths = (text: string, files?: Parameters<typeof understood>[1]) =>
	stagesOf(text, files).map(({ bottom, top, plug, clusters }) => ({
		bottom: bottom.value,
		top: top.value,
		plug: plug?.value,
		clusters: clusters.map(({ value }) => value),
	}));

describe("a regular layout", () => {
	test("puts the bottom cluster at the bottom, the plug below it, and none below the first stage", () => {
		expect(depths(smallWell())).toEqual([
			{ bottom: 4300, top: 4255, plug: undefined, clusters: [4300, 4285] },
			{ bottom: 4255, top: 4210, plug: 4265, clusters: [4255, 4240] },
		]);
	});
	test("remembers how each depth was worked", () => {
		expect(stagesOf(smallWell())[1]?.plug?.from).toMatchObject({
			kind: "worked",
			formula: "stimulation/plug-depth",
			inputs: { a: { value: 10, from: { kind: "definition" } } },
		});
	});
	test("sets plugs midway where it is not said where, and records that", () => {
		const well = understood(smallWell([", plug_below_bottom_cluster: 10 ft", ""]));
		expect(well.stimulation?.stages[1]?.plug?.value).toBe((4255 + 4285) / 2);
		expect(well.assumptions.map(({ id }) => id)).toContain("plug-depth");
	});
	test("has no plugs where sleeves are used", () => {
		const sleeves = smallWell(["method: plug and perforate", "method: sliding sleeve"]);
		expect(stagesOf(sleeves).map(({ plug }) => plug)).toEqual([undefined, undefined]);
	});
	test("gives way to overrides, stage by stage", () => {
		const text = smallWell([
			"    treatment:",
			"    overrides: [{ stage: 2, clusters: [4232 ft, 4250 ft], rate: 25 bbl/min, why: near an old well }]\n    treatment:",
		]);
		expect(depths(text)[1]).toEqual({ bottom: 4250, top: 4205, plug: 4260, clusters: [4250, 4232] });
		const [first, second] = stagesOf(text);
		expect(second).toMatchObject({ why: "near an old well", rate: { value: 25 } });
		expect(second?.steps[0]?.rate.value).toBe(25);
		expect(first?.steps[0]?.rate.value).toBe(30);
	});
	test("of far too many stages is refused before it is laid out", () => {
		expect(codesOf(smallWell(["count: 2", "count: 2000000000"]))).toEqual(["well/stage-outside"]);
	});
	test("tells a slip of all stages once", () => {
		const text = smallWell(
			["count: 2", "count: 40"],
			["plug_below_bottom_cluster: 10 ft", "plug_below_bottom_cluster: 40 ft"],
		);
		expect(codesOf(text)).toEqual(["well/plug-place"]);
	});
});

describe("a single interval", () => {
	const single = smallWell(
		[LAYOUT, "interval: { from: 4210 ft, to: 4300 ft, shots: 90 }"],
		["method: plug and perforate", "method: single interval"],
	);
	test("is one stage without clusters", () => {
		expect(depths(single)).toEqual([{ bottom: 4300, top: 4210, plug: undefined, clusters: [] }]);
		expect(stagesOf(single)[0]?.shotsPerCluster?.value).toBe(90);
	});
});

describe("a stage file", () => {
	const rows = smallWell([LAYOUT, "rows: { file: stages.csv }"]);
	const csv = (text: string) => filesOf({ "stages.csv": text });
	const HEAD = "stage,bottom_ft,top_ft,clusters_ft,plug_ft,shots_per_cluster,rate_bbl_min\n";
	test("lists every stage, in any order", () => {
		const files = csv(`${HEAD}2,4250,4210,4230 4250,4262,6,28\n1,4300,4265,4300 4285 4270,,,\n`);
		expect(depths(rows, files)).toEqual([
			{ bottom: 4300, top: 4265, plug: undefined, clusters: [4300, 4285, 4270] },
			{ bottom: 4250, top: 4210, plug: 4262, clusters: [4250, 4230] },
		]);
		const [first, second] = stagesOf(rows, files);
		expect(second?.rate?.value).toBe(28);
		expect(first?.rate?.value).toBe(30);
		expect(second?.bottom.from).toMatchObject({ kind: "definition", file: "stages.csv" });
	});
	test("in metres is the same", () => {
		const files = csv("stage,bottom_m,top_m,clusters_m\n1,1310.64,1299.972,1310.64 1306.068\n");
		expect(depths(rows, files)[0]?.clusters[1]).toBeCloseTo(4285, 6);
	});
	test.each([
		["a gap in the numbers", `${HEAD}1,4300,4265,4300 4285,,,\n3,4250,4210,4250,4262,,\n`, "well/stage-row"],
		["no unit on the clusters", "stage,bottom_ft,top_ft,clusters\n1,4300,4265,4300\n", "well/stage-row"],
		["a stage without clusters", `${HEAD}1,4300,4265,,,,\n`, "well/stage-row"],
		["a cluster outside its stage", `${HEAD}1,4300,4265,4310,,,\n`, "well/stage-clusters"],
		["overlapping stages", `${HEAD}1,4300,4265,4300,,,\n2,4270,4210,4250,4260,,\n`, "well/stage-overlap"],
		["a plug below the first", `${HEAD}1,4300,4265,4300,4310,,\n`, "well/plug-place"],
		["a stage upside down", `${HEAD}1,4265,4300,4280,,,\n`, "well/top-below-bottom"],
	])("with %s is told", (_, text, code) => {
		expect(codesOf(rows, csv(text))).toEqual([code]);
	});
	test("is pointed into", () => {
		const text = `${HEAD}1,4300,4265,4300 x,,,\n`;
		const at = resolve(rows, csv(text)).diagnostics[0]?.at;
		expect(at?.file).toBe("stages.csv");
		expect(text.slice(...(at?.range ?? [0, 0]))).toBe("4300 x");
	});
});

describe("records of stages", () => {
	const recorded = (records: string) =>
		smallWell(
			["issued: 2026-05-04", "issued: 2026-08-30"],
			["    treatment:", `    actual: ${records}\n    treatment:`],
		);
	test("join their stages", () => {
		const text = recorded("{ records: [{ stage: 2, date: 2026-08-14, maximum_pressure: 5100 psi }] }");
		const [first, second] = stagesOf(text);
		expect(first?.actual).toBeUndefined();
		expect(second?.actual).toMatchObject({ date: "2026-08-14", maximumPressure: { value: 5100 } });
	});
	test("may come from a file", () => {
		const files = filesOf({ "r.csv": "stage,date,average_rate_bbl_min\n1,2026-08-13,29.4\n" });
		expect(stagesOf(recorded("{ file: r.csv }"), files)[0]?.actual?.averageRate?.value).toBe(29.4);
	});
	test("of a stage there is not are told", () => {
		expect(codesOf(recorded("{ records: [{ stage: 9 }] }"))).toEqual(["well/unknown-stage"]);
	});
	test("dated after the paper are told, from a file too", () => {
		const files = filesOf({ "r.csv": "stage,date\n1,2026-12-24\n" });
		expect(codesOf(recorded("{ file: r.csv }"), files)).toEqual(["well/record-after-issue"]);
	});
});

describe("the toe", () => {
	const toe = (text: string) => smallWell(["  stages:\n", `  toe: ${text}\n  stages:\n`]);
	test("at the first stage or below it is taken", () => {
		expect(codesOf(toe("{ kind: initiation valve, depth: 4440 ft, opens_at: 8000 psi }"))).toEqual([]);
	});
	test("in the shoe track is not a place for guns", () => {
		expect(codesOf(toe("{ kind: guns on coiled tubing, depth: 4460 ft }"))).toEqual(["well/toe-depth"]);
	});
});
