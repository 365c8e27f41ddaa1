import { describe, expect, it } from "vitest";
import { readCsv } from "../../src/source/csv.ts";
import { type Column, readColumns } from "../../src/source/csv-columns.ts";
import { told as tellIt } from "../told.ts";

const SURVEY = {
	md: { dimension: "measured-depth", aliases: ["measured depth"] },
	inclination: { dimension: "angle", aliases: ["inc"] },
	azimuth: { dimension: "angle" },
	remark: { dimension: "text", optional: true },
	dogleg: { dimension: "dogleg", optional: true },
} as const satisfies Record<string, Column>;

const read = (text: string) => {
	const { value } = readCsv(text, "survey.csv");
	if (value === undefined) throw new Error("the table could not be read");
	return readColumns(value, SURVEY);
};
const numbers = (text: string) => read(text).value?.rows.map((row) => row.numbers);
const told = (text: string): string[] =>
	read(text).diagnostics.map(({ code, found }) => `${code} ${tellIt(found)}`.trim());

describe("readColumns", () => {
	it.each([
		"md_ft,inclination_deg,azimuth_deg\n100,1.5,158\n",
		"MD (ft),Inclination (deg),Azimuth (°)\n100,1.5,158\n",
		"azimuth [deg],inc_deg,measured depth [ft]\n158,1.5,100\n",
		"md ft,inclination deg,azimuth degrees\n100,1.5,158\n",
		"MEASURED_DEPTH_FT,INC_DEG,AZIMUTH_DEG\n100,1.5,158\n",
	])("%j", (text) => {
		expect(read(text).diagnostics).toEqual([]);
		expect(numbers(text)).toEqual([{ md: 100, inclination: 1.5, azimuth: 158 }]);
	});

	it("converts", () => {
		const [row] = numbers("md_m,inc_deg,azimuth_deg,dogleg_deg/30m\n30.48,1,2,3\n") ?? [];
		expect(row?.md).toBeCloseTo(100, 10);
		expect(row?.dogleg).toBeCloseTo(3.048, 10);
		expect(numbers("md_ft,inc_deg,azimuth_deg,dogleg_deg_100ft\n1,1,2,3\n")?.[0]?.dogleg).toBe(3);
	});

	it("keeps texts and the place of each cell", () => {
		const text = "md_ft,inc_deg,azimuth_deg,remark\n100,1,2,tie-in\n200,1,2,\n";
		const [first, second] = read(text).value?.rows ?? [];
		expect(first?.texts).toEqual({ remark: "tie-in" });
		expect(second?.texts).toEqual({});
		const [start, end] = first?.at.md?.range ?? [0, 0];
		expect(text.slice(start, end)).toBe("100");
		expect(first?.at.md?.file).toBe("survey.csv");
	});

	it.each([
		["md_ft,inc_deg\n1,2\n", ["csv/missing-column md_ft, inc_deg"]],
		["md,inc_deg,azimuth_deg\n1,2,3\n", ["csv/column-unit md"]],
		["md_psi,inc_deg,azimuth_deg\n1,2,3\n", ["csv/column-unit md_psi"]],
		["md_ft,inc_deg,azimuth_deg,tvd_ft\n1,2,3,1\n", ["csv/unknown-column tvd_ft"]],
		["md_ft,inc_deg,azimuth_deg,tvd_ft,ns_ft\n1,2,3,1,0\n", ["csv/unknown-column tvd_ft, ns_ft"]],
		["a,b\n1,2\n", ["csv/missing-column a, b"]],
		// A head that is misspelled is missing, and not strange besides.
		["md_ft,inc_deg,azimut_deg\n1,2,3\n", ["csv/missing-column md_ft, inc_deg, azimut_deg"]],
		['md_ft,inc_deg,azimuth_deg\n"1,185",2,3\n', ["csv/cell 1,185"]],
		["md_ft,inc_deg,azimuth_deg\n1 ft,2,3\n", ["csv/cell 1 ft"]],
		["md_ft,inc_deg,azimuth_deg\n,2,3\n", ["csv/cell nothing"]],
		["md_ft,inc_deg,azimuth_deg\n-5,2,3\n", ["csv/cell -5"]],
		["md_ft,inc_deg,azimuth_deg\nNaN,x,3\n1e999,2,3\n", ["csv/cell NaN", "csv/cell x", "csv/cell 1e999"]],
	])("%j: %j", (text, expected) => {
		expect(told(text)).toEqual(expected);
	});

	it.each([
		["a line of units below the heads", "md,inc,azimuth\nft,deg,deg\n100,1.5,158\n"],
		["the same in brackets", "md,inc,azimuth\n(ft),(deg),(deg)\n100,1.5,158\n"],
		["remarks above the heads", "# exported by hand\n# in feet\nmd_ft,inc_deg,azimuth_deg\n100,1.5,158\n"],
		["a comma at the end of each line", "md_ft,inc_deg,azimuth_deg,\n100,1.5,158,\n"],
		["some lines without it", "md_ft,inc_deg,azimuth_deg,\n100,1.5,158\n"],
	])("understands %s", (_, text) => {
		expect(read(text).diagnostics).toEqual([]);
		expect(numbers(text)).toEqual([{ md: 100, inclination: 1.5, azimuth: 158 }]);
	});

	it("keeps a first column headed with a number sign", () => {
		const table = readCsv("#,length_ft\n1,40\n", "tally.csv").value;
		expect(table?.header.map(({ text }) => text)).toEqual(["#", "length_ft"]);
	});

	describe("with heads that are stated", () => {
		const at = ["trajectory", "actual", "survey", "columns", "md"];
		const FOREIGN = "DEPT,INC (deg),azimuth_deg\n30.48,1.5,158\n";
		const readStated = (text: string, md: { readonly head: string; readonly unit?: string }) => {
			const { value } = readCsv(text, "survey.csv");
			if (value === undefined) throw new Error("the table could not be read");
			return readColumns(value, SURVEY, { md: { ...md, at } });
		};

		it("takes the unit that is stated", () => {
			const { value, diagnostics } = readStated(FOREIGN, { head: "dept", unit: "m" });
			expect(diagnostics).toEqual([]);
			expect(value?.rows[0]?.numbers.md).toBeCloseTo(100, 10);
		});

		it("takes the unit of the foreign head", () => {
			const { value } = readStated("Tiefe [m],inc_deg,azimuth_deg\n30.48,1.5,158\n", { head: "Tiefe [m]" });
			expect(value?.rows[0]?.numbers.md).toBeCloseTo(100, 10);
		});

		it.each([
			[{ head: "DEPT" }, "csv/column-unit", false],
			[{ head: "DEPT", unit: "psi" }, "csv/column-unit", true],
			[{ head: "DEPTH", unit: "m" }, "csv/missing-column", false],
		] as const)("%j: %s", (stated, code, inDefinition) => {
			const { diagnostics } = readStated(FOREIGN, stated);
			expect(diagnostics.map((each) => each.code)).toEqual([code]);
			// A unit that is stated wrong is told where it is stated, the rest in the table.
			expect(diagnostics[0]?.at).toEqual(
				inDefinition ? { path: at } : { file: "survey.csv", path: [], range: expect.anything() },
			);
		});
	});

	it("leaves out the row with a bad cell, and only that", () => {
		expect(numbers("md_ft,inc_deg,azimuth_deg\nx,2,3\n7,2,3\n")).toEqual([
			{ md: 7, inclination: 2, azimuth: 3 },
		]);
	});
});
