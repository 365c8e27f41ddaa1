import { describe, expect, test } from "vitest";
import { tellSaid } from "../../src/messages/print.ts";
import { told } from "../told.ts";
import { filesOf, resolve, smallWell, starters, starterText, stringOf, understood } from "./resolve.ts";

describe("starters", () => {
	test("are there", () => expect(starters.length).toBeGreaterThanOrEqual(3));
	test.each(starters)("%s is understood without an error", (name) => {
		const { value, diagnostics } = resolve(starterText(name));
		expect(diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
		expect(value?.strings.length).toBeGreaterThan(0);
		// Every assumption says what, why and where it may be stated instead.
		for (const { what, why, at } of value?.assumptions ?? []) {
			expect(told(what)).toMatch(/\.$/);
			expect(told(why)).toMatch(/\.$/);
			expect(at.length).toBeGreaterThan(0);
		}
		expect(new Set(value?.assumptions.map(({ id }) => id)).size).toBe(value?.assumptions.length);
	});
});

describe("the datum", () => {
	test("surface is the casing hanger for pipe and ground level for cement", () => {
		const surface = stringOf(understood(smallWell()), "surface");
		expect(surface.top.value).toBe(22);
		expect(surface.cement?.slurries[0]?.top.value).toBe(20);
		expect(surface.cement?.slurries[0]?.top.from).toMatchObject({
			kind: "worked",
			formula: "depths/ground-level",
		});
	});
	test("depths below ground are shifted to it, and remember how", () => {
		const { geology } = understood(smallWell());
		expect(geology.protectedWater?.base.value).toBe(610);
		expect(geology.protectedWater?.base.from).toMatchObject({
			kind: "worked",
			formula: "depths/tvd-of-depth-below-ground",
			inputs: { z_ground: { value: 590 }, h: { value: 20 } },
		});
	});
	test("a hanger that is not given is put at ground level, and that is recorded", () => {
		const well = understood(smallWell([", to_casing_hanger: 22 ft", ""]));
		expect(well.datum.casingHanger).toMatchObject({
			value: 20,
			from: { kind: "assumed", id: "casing-hanger" },
		});
		expect(well.assumptions.map(({ id }) => id)).toContain("casing-hanger");
	});
});

describe("what is left out is filled in and recorded", () => {
	const well = understood(smallWell());
	const assumed = new Map(well.assumptions.map((each) => [each.id, each]));
	test("the design basis", () => {
		expect(well.designBasis.designFactors.burst).toMatchObject({
			value: 1.1,
			from: { kind: "assumed", id: "design-factor.burst" },
		});
		for (const id of ["burst-backup", "wear", "temperature-derating", "overpull", "design-factor.tension"])
			expect(assumed.get(id)?.source).toBeDefined();
		expect(assumed.get("overpull")?.at).toEqual(["design_basis", "overpull"]);
	});
	test("what is given is not", () => {
		const stated = understood(
			smallWell(["wellhead:", "design_basis: { wear: 5 %, design_factors: { burst: 1.2 } }\n\nwellhead:"]),
		);
		expect(stated.designBasis.wear.value).toBeCloseTo(0.05, 12);
		expect(stated.assumptions.map(({ id }) => id)).not.toContain("wear");
		expect(stated.assumptions.map(({ id }) => id)).not.toContain("design-factor.burst");
		expect(stated.assumptions.map(({ id }) => id)).toContain("design-factor.collapse");
	});
	test("a string's own design factor stands before the well's", () => {
		const own = understood(
			smallWell(["    shoe_track: 42 ft", "    shoe_track: 42 ft\n    design_factors: { burst: 1.3 }"]),
		);
		expect(stringOf(own, "production").designFactors.burst.value).toBe(1.3);
		expect(stringOf(own, "surface").designFactors.burst.value).toBe(1.1);
	});
	test("the cement's volume basis and the way its top is found", () => {
		expect(stringOf(well, "surface").cement?.volumeBasis).toBe("washed-out hole");
		expect(assumed.get("volume-basis.surface")?.at).toEqual(["casing", 0, "cement", "volume_basis"]);
		expect(stringOf(well, "surface").cement?.topMethod).toBe("calculated");
	});
	test("the condition of pipe", () => {
		const unsaid = understood(smallWell(["connection: STC, condition: new", "connection: STC"]));
		expect(unsaid.assumptions.map(({ id }) => id)).toContain("condition.casing[0].pipe[0]");
	});
});

describe("recorded work stands before planned", () => {
	const landed = smallWell(
		["issued: 2026-05-04", "issued: 2026-08-30"],
		[
			"    shoe_track: 40 ft",
			"    shoe_track: 40 ft\n    actual: { date: 2026-06-02, shoe: 696 ft, joints: 17 }",
		],
	);
	test("the shoe, with what hangs on it", () => {
		const surface = stringOf(understood(landed), "surface");
		expect(surface.shoe).toMatchObject({ value: 696, from: { at: ["casing", 0, "actual", "shoe"] } });
		expect(surface.plannedShoe?.value).toBe(700);
		expect(surface.sections.at(-1)?.bottom.value).toBe(696);
		expect(surface.cement?.slurries.at(-1)?.bottom.value).toBe(696);
		expect(surface.jointsRun?.value).toBe(17);
	});
	test("the top of a formation", () => {
		const { geology } = understood(
			smallWell(["base: 4310 ft TVD,", "base: 4310 ft TVD, actual: { top: 4212 ft TVD, by: gamma ray },"]),
		);
		expect(geology.formations[2]).toMatchObject({ top: { value: 4212 }, plannedTop: { value: 4200 } });
		expect(geology.formations[1]?.base?.value).toBe(4212);
	});
	test("a hole", () => {
		const { holes } = understood(
			smallWell([
				"washout: { diameter: 3 % },",
				"washout: { diameter: 3 % }, actual: { to: 4496 ft, washout: 4 %, fluid_density: 9.8 ppg },",
			]),
		);
		expect(holes[1]).toMatchObject({
			bottom: { value: 4496 },
			plannedBottom: { value: 4500 },
			washout: { value: 0.04 },
			fluid: { density: { value: 9.8 } },
		});
	});
});

describe("a survey file", () => {
	const plan = "  plan: { vertical: true, to: 4500 ft }";
	const named = smallWell([plan, `${plan}\n  actual: { survey: { file: s.csv }, tool: MWD }`]);
	test("becomes a table of stations that knows its file", () => {
		const { trajectory } = understood(
			named,
			filesOf({ "s.csv": "md_m,inc_deg,azi_deg\n0,0,0\n1371.6,1.5,200\n" }),
		);
		expect(trajectory.survey?.stations.from).toMatchObject({ kind: "definition", file: "s.csv" });
		expect(trajectory.survey?.stations.rows[1]?.md).toBeCloseTo(4500, 9);
		expect(trajectory.survey?.tool).toBe("MWD");
		expect(trajectory.plan?.kind).toBe("vertical");
	});
	test("that is not there is told at its name", () => {
		const [fault] = resolve(named, filesOf({})).diagnostics;
		expect(fault).toMatchObject({
			code: "file/not-found",
			at: { path: ["trajectory", "actual", "survey", "file"] },
			found: "s.csv",
		});
	});
});

describe("what is assumed", () => {
	const metric = { language: "es", units: "metric" } as const;
	test("is told in the language and the units of the paper", () => {
		const assumed = understood(smallWell()).assumptions;
		const overpull = assumed.find(({ id }) => id === "overpull");
		// 100,000 lbf are 445 kN: 4.4482 N a pound (NIST SP 811, appendix B).
		expect(told(overpull?.what)).toContain("100,000\u00a0lbf");
		expect(tellSaid(overpull?.what ?? "", metric)).toBe(
			"La tubería debe resistir 445\u00a0kN de jalón además de su peso.",
		);
	});
});
