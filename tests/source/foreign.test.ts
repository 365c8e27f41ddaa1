import { readFileSync } from "node:fs";
import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { arcStep } from "../../src/calc/trajectory/arc.ts";
import { tellSaid } from "../../src/messages/print.ts";
import { foreignTable } from "../../src/source/foreign/table-text.ts";
import { trajectoryOf } from "../well/survey-file.ts";

const FOLDER = new URL("../../fixtures/surveys/", import.meta.url);
const bytesOf = (name: string): Uint8Array => readFileSync(new URL(name, FOLDER));
const refusal = (bytes: Uint8Array): string => {
	const read = foreignTable(bytes);
	return read !== undefined && "refused" in read
		? tellSaid(read.refused, { language: "en", units: "field" })
		: "";
};
const wanted = trajectoryOf("survey.csv", bytesOf("survey.csv"));

describe("a survey that somebody else sends", () => {
	it("is read as it is where it is CSV", () => {
		expect(foreignTable(bytesOf("survey.csv"))).toBeUndefined();
		expect(wanted.stations).toHaveLength(64);
	});

	it.each([
		["workbook.xlsx", "XLSX", "md from Measured Depth, inclination from Inc and azimuth from Azm"],
		["las-2.las", "LAS 2.0", "md from DEPT (ft), inclination from INC (deg) and azimuth from AZI (deg)"],
		["las-3.las", "LAS 3.0", "md from MD (m), inclination from DEVI (deg) and azimuth from AZIM (deg)"],
		[
			"witsml-1411.xml",
			"WITSML 1.4",
			"md from md (m), inclination from incl (deg), azimuth from azi (deg) and azimuths counted from true north, as the file says",
		],
		[
			"witsml-21.xml",
			"WITSML 2",
			"md from md (ft), inclination from incl (deg), azimuth from azi (deg) and azimuths counted from true north, as the file says",
		],
	])(
		"comes in from %s with the same stations, and it is told what was taken for what",
		(name, format, columns) => {
			const { stations, errors, assumed } = trajectoryOf(name, bytesOf(name));
			expect(errors).toEqual([]);
			expect(stations).toHaveLength(wanted.stations.length);
			for (const [i, station] of stations.entries()) {
				const own = wanted.stations[i];
				// The files in meters have four decimals: 0.0002 ft; those in radians nine.
				expect(station.md).toBeCloseTo(own?.md ?? Number.NaN, 3);
				expect(station.inclination).toBeCloseTo(own?.inclination ?? Number.NaN, 5);
				expect(station.azimuth).toBeCloseTo(own?.azimuth ?? Number.NaN, 5);
			}
			expect(assumed).toEqual([`The file ${name} was read as ${format}: ${columns}.`]);
		},
	);

	it("lies where the surveying contractor has it, by minimum curvature from a vertical start at surface", () => {
		const [head, ...lines] = readFileSync(new URL("stated-positions.csv", FOLDER), "utf8").trim().split("\n");
		expect(head).toBe("md (ft),tvd (ft),north (ft),east (ft)");
		let above = { md: 0, inclination: 0, azimuth: wanted.stations[0]?.azimuth ?? 0 };
		const at = [0, 0, 0];
		for (const [i, here] of wanted.stations.entries()) {
			arcStep(above, here).forEach((step, axis) => {
				at[axis] = (at[axis] ?? 0) + step;
			});
			above = here;
			const [md, tvd = 0, north = 0, east = 0] = (lines[i] ?? "").split(",").map(Number);
			expect(md).toBe(here.md);
			// The file has two decimals, of the angles as well: 0.005° over 5,580 ft of a nearly vertical hole.
			expect(Math.abs((at[2] ?? 0) - tvd)).toBeLessThan(0.01);
			expect(Math.hypot((at[0] ?? 0) - north, (at[1] ?? 0) - east)).toBeLessThan(0.04);
		}
	});

	it("has its faults on the lines that the file has them on", () => {
		const text = readFileSync(new URL("las-2.las", FOLDER), "latin1").replace(
			/^(\s+236\.00\s+)0\.56/mu,
			"$10.5x",
		);
		const line = text.split("\r\n").findIndex((each) => each.includes("0.5x")) + 1;
		const { errors } = trajectoryOf("las-2.las", Buffer.from(text, "latin1"));
		expect(errors).toEqual([`csv/cell las-2.las:${line}`]);
	});

	it("has the value that it calls absent nowhere: where one is asked for, that is a fault", () => {
		const text = readFileSync(new URL("las-2.las", FOLDER), "latin1").replace(
			/^(\s+236\.00\s+)0\.56/mu,
			"$1-999.25",
		);
		expect(trajectoryOf("las-2.las", Buffer.from(text, "latin1")).errors).toHaveLength(1);
	});

	it("may have its rows of data over several lines", () => {
		const text = readFileSync(new URL("las-2.las", FOLDER), "latin1")
			.replace(/(WRAP\. +)NO:/u, "$1YES:")
			.replaceAll(/^( +\d+\.00 +\S+ +\S+)( .*)\r$/gmu, "$1\r\n$2\r");
		expect(trajectoryOf("las-2.las", Buffer.from(text, "latin1")).stations).toEqual(wanted.stations);
	});
});

describe("a file that cannot be read", () => {
	it("says why", () => {
		const xml = (body: string) => refusal(Buffer.from(`<?xml version="1.0"?>\n${body}`));
		const one = "<trajectory><trajectoryStation><md uom='m'>1</md></trajectoryStation></trajectory>";
		expect(xml("<well/>")).toBe("it is XML, and holds no trajectory with stations");
		expect(xml(`<trajectorys>${one}${one}</trajectorys>`)).toBe(
			"it holds 2 trajectories; keep the one that is meant",
		);
		expect(xml(`<!DOCTYPE a [<!ENTITY b "c">]><trajectorys>${one}</trajectorys>`)).toMatch(
			/declares a document type/u,
		);
		expect(
			xml(
				"<trajectory><trajectoryStation><md uom='m'>1</md></trajectoryStation><trajectoryStation><md uom='ft'>2</md></trajectoryStation></trajectory>",
			),
		).toBe("its stations give `md` in several units: m, ft");
		expect(xml("<trajectorys><trajectory>")).toMatch(/damaged|no trajectory/u);
		expect(refusal(Buffer.from("~V\nVERS. 1.2 : old\n~A\n1 2 3\n"))).toBe(
			"it is a LAS file of version 1.2; versions 2.0 and 3.0 are read",
		);
		expect(refusal(Buffer.from("~V\nVERS. 2.0 : new\n"))).toBe("it is a LAS file without curves and data");
		expect(refusal(zipSync({ "a.txt": strToU8("a") }))).toBe("it is a packed file, and no workbook (XLSX)");
		expect(refusal(bytesOf("workbook.xlsx").subarray(0, 900))).toMatch(/damaged/u);
	});
});
