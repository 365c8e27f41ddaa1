import { describe, expect, test } from "vitest";
import { findingsOf } from "../starters.ts";
import { told } from "../told.ts";
import { codesOf, resolve, smallWell, stringOf, understood } from "./resolve.ts";

const PIPE = "od: 5 1/2 in, weight: 17 lb/ft, grade: L80, connection: LTC, condition: new";

const sectionOf = (text: string) => stringOf(understood(text), "production").sections[0];

/** With ordinary blanks. */
const spoken = (said: Parameters<typeof told>[0]): string => told(said).replaceAll("\u00a0", " ");

describe("pipe of the catalogue", () => {
	/* 5 1/2 in 17 lb/ft: wall 0.304, inside 4.892, drift 4.767, coupling 6.050 in (API 5CT Tables E.1, E.32; memory). */
	test("is joined with its dimensions and strengths, each from its row", () => {
		const section = sectionOf(smallWell());
		expect(section).toMatchObject({
			wall: { value: 0.304, from: { kind: "catalogue", row: "5 1/2 in 17 lb/ft", column: "wall" } },
			drift: { value: 4.767 },
			couplingDiameter: { value: 6.05 },
			minimumYield: { value: 80_000 },
			minimumTensile: { value: 95_000 },
			threads: { kind: "round", L4: { value: 3.5 } },
		});
		expect(section?.insideDiameter.value).toBeCloseTo(4.892, 9);
		expect(section?.insideDiameter.from).toMatchObject({ kind: "worked", formula: "casing/inside-diameter" });
	});
	test("in metric is the same pipe", () => {
		const metric = smallWell([
			PIPE,
			"od: 139.7 mm, weight: 25.3 kg/m, grade: L-80, connection: long thread, condition: new",
		]);
		expect(sectionOf(metric)).toMatchObject({
			wall: { value: 0.304, from: { row: "5 1/2 in 17 lb/ft" } },
			grade: "L80",
			connection: "LTC",
		});
	});
	test("in metric is worked with the catalogue's figures, not the label's rounding", () => {
		// 244.5 mm is 9.626 in; the pipe is 9 5/8 in.
		const surface = understood(
			smallWell([
				"od: 8 5/8 in, weight: 24 lb/ft, grade: J55, connection: STC",
				"od: 244.5 mm, weight: 53.57 kg/m, grade: J55, connection: STC",
			]),
		).strings[0]?.sections[0];
		expect(surface).toMatchObject({
			outsideDiameter: { value: 9.625, from: { kind: "catalogue" } },
			nominalWeight: { value: 36 },
		});
		expect(surface?.insideDiameter.value).toBeCloseTo(8.921, 9);
	});
	test("may be named by its wall", () => {
		expect(sectionOf(smallWell(["weight: 17 lb/ft,", "wall: 0.304 in,"]))?.nominalWeight.value).toBe(17);
	});
	test("with special-clearance couplings has the buttress threads and a smaller coupling", () => {
		const plain = sectionOf(smallWell([PIPE, PIPE.replace("LTC", "BTC")]));
		for (const written of ["BTC special clearance", "special-clearance", "buttress special clearance"]) {
			const section = sectionOf(smallWell([PIPE, PIPE.replace("LTC", written)]));
			expect(section).toMatchObject({
				connection: "BTC special clearance",
				couplingDiameter: {
					value: 5.875,
					from: { kind: "catalogue", column: "coupling_diameter_special_clearance" },
				},
			});
			expect(section?.threads).toEqual(plain?.threads);
			expect(plain?.couplingDiameter?.value).toBe(6.05);
		}
	});
	test("of a size that has no special-clearance coupling is told", () => {
		const surface = "od: 8 5/8 in, weight: 24 lb/ft, grade: J55, connection: STC";
		const large = "od: 13 3/8 in, weight: 54.5 lb/ft, grade: J55, connection: BTC special clearance";
		expect(codesOf(smallWell([surface, large]))).toContain("well/connection-size");
	});
	test("keeps a drift that is stated", () => {
		expect(sectionOf(smallWell([PIPE, `${PIPE}, drift: 4.80 in`]))?.drift).toMatchObject({
			value: 4.8,
			from: { kind: "definition" },
		});
	});
});

describe("pipe outside the catalogue", () => {
	test("is taken with its wall and a maker's grade and ratings; what it lacks is worked or recorded", () => {
		const own = smallWell([
			PIPE,
			"od: 5 1/2 in, weight: 24.2 lb/ft, wall: 0.44 in, grade: Quill 130 (fictional), minimum_yield: 130000 psi, connection: Quill Lock (fictional), coupling_od: 6.2 in, condition: new, ratings: { internal_yield: 18000 psi, collapse: 17000 psi, tension: 850000 lbf, source: fictional sheet 2026 }",
		]);
		const section = sectionOf(own);
		expect(section).toMatchObject({
			wall: { value: 0.44, from: { kind: "definition" } },
			couplingDiameter: { value: 6.2 },
			minimumYield: { value: 130_000 },
			minimumTensile: { value: 130_000, from: { kind: "assumed", id: "tensile.casing[1].pipe[0]" } },
			stated: { tension: { value: 850_000 }, source: "fictional sheet 2026" },
		});
		// Drift by the rule of API 5CT for 8 5/8 in and smaller: inside diameter less 1/8 in.
		expect(section?.drift.value).toBeCloseTo(5.5 - 0.88 - 0.125, 9);
		expect(section?.drift.from).toMatchObject({ kind: "worked", formula: "casing/drift" });
		expect(section?.threads).toBeUndefined();
	});
	test("without a wall is told, with the nearest weights", () => {
		const [fault, ...rest] = resolve(smallWell(["weight: 17 lb/ft", "weight: 19 lb/ft"])).diagnostics;
		expect(rest).toEqual([]);
		expect(fault).toMatchObject({
			code: "well/unknown-pipe",
			at: { path: ["casing", 1, "pipe", 0, "weight"] },
		});
		expect(spoken(fault?.expected)).toContain("15.50 lb/ft, 17.00 lb/ft, 20.00 lb/ft and 23.00 lb/ft");
	});
	test("of an unknown grade is told, with the nearest", () => {
		const [fault] = resolve(smallWell([PIPE, PIPE.replace("L80", "P111")])).diagnostics;
		expect(fault).toMatchObject({ code: "well/unknown-grade" });
		expect(spoken(fault?.mend)).toContain("P110");
	});
});

describe("a string left out for one fault", () => {
	test("raises no second one", () => {
		expect(codesOf(smallWell(["weight: 24 lb/ft", "weight: 25 lb/ft"]))).toEqual(["well/unknown-pipe"]);
	});
});

describe("liners and tiebacks", () => {
	const LINER = `
  - id: liner
    hole: production
    pipe: [{ od: 5 1/2 in, weight: 17 lb/ft, grade: L80, connection: BTC, condition: new, from: 600 ft, to: 4490 ft }]`;
	const casing = (rest: string) => {
		const text = smallWell();
		const start = text.indexOf("  - id: production");
		return `${text.slice(0, start).trimEnd()}${rest}\n\n${text.slice(text.indexOf("wellhead:"))}`.replace(
			"treated_through: production",
			"treated_through: liner",
		);
	};
	test("a string that does not come to surface is a liner in the string before it", () => {
		const liner = stringOf(understood(casing(LINER)), "liner");
		expect(liner).toMatchObject({ kind: "liner", within: "surface", top: { value: 600 } });
	});
	test("a tieback is inside what is outside its liner", () => {
		const tieback = `
  - id: tieback
    kind: tieback
    hole: production
    pipe: [{ od: 5 1/2 in, weight: 17 lb/ft, grade: L80, connection: BTC, condition: new, from: surface, to: 600 ft }]`;
		const well = understood(casing(LINER + tieback));
		expect(stringOf(well, "tieback")).toMatchObject({ kind: "tieback", within: "surface" });
	});
});

describe("what must pass", () => {
	/* 7 5/8 in coupling 8.500 in; 9 5/8 in 53.5 lb/ft: drift 8.379 in, alternate drift 8.500 in (API 5CT, memory). */
	const through = (outer: string) =>
		smallWell(
			["od: 8 5/8 in, weight: 24 lb/ft, grade: J55, connection: STC", `${outer}, connection: BTC`],
			[PIPE, "od: 7 5/8 in, weight: 29.7 lb/ft, grade: L80, connection: LTC, condition: new"],
			["diameter: 7 7/8 in", "diameter: 8 3/4 in"],
		);
	test("names the alternate drift that would do", () => {
		const [fault, ...rest] = resolve(through("od: 9 5/8 in, weight: 53.5 lb/ft, grade: L80")).diagnostics;
		expect(fault?.code).toBe("well/pipe-passage");
		expect([spoken(fault?.found), spoken(fault?.expected)]).toEqual(["8.500 in", "at most 8.379 in"]);
		expect(spoken(fault?.mend)).toContain("`drift: 8.500 in`");
		expect(rest).toEqual([]);
	});
	test("is content with it once it is stated", () => {
		expect(codesOf(through("od: 9 5/8 in, weight: 53.5 lb/ft, grade: L80, drift: 8.5 in"))).toEqual([
			"well/bit-drift",
		]);
	});
	test("measures only the runs that are passed", () => {
		const tapered = smallWell([
			`{ ${PIPE}, joint: 42 ft, from: surface, to: 4490 ft }`,
			`{ ${PIPE}, from: surface, to: 2000 ft }, { od: 5 in, weight: 18 lb/ft, grade: L80, connection: LTC, condition: new, from: 2000 ft, to: 4490 ft }`,
		]);
		expect(codesOf(tapered)).toEqual([]);
	});
});

describe("the strength of a grade", () => {
	test("is traced to the string that has it, however many strings are of that grade", () => {
		const { well, index } = findingsOf("horizontal-as-built");
		for (const { id, sections } of well.strings)
			for (const { minimumYield, minimumTensile } of sections)
				for (const value of [minimumYield, minimumTensile])
					expect(index.keyOf(value), id).toContain(`well.strings.${id}.`);
	});
});
