import { describe, expect, it } from "vitest";
import { type Starter, starterText, understandText } from "./starters.ts";
import { toldPlainly } from "./told.ts";

/*
 * Slips of the keyboard in a planned starter that once passed without a word. Each is told at the entry that has it, with
 * a reason: by its range, or by what it stands in relation to. The slips are ours: common practice, no source.
 */

interface Slip {
	readonly slip: string;
	/** The planned one where none is named. */
	readonly starter?: Starter;
	readonly written: string | RegExp;
	readonly instead: string;
	readonly code: string;
	/** The path of the entry begins so. */
	readonly at: string;
}

const SLIPS: readonly Slip[] = [
	{
		slip: "a friction coefficient of 20",
		written: "cased: [0.20, 0.30]",
		instead: "cased: [0.20, 20]",
		code: "well/improbable-value",
		at: "design_basis.friction.cased",
	},
	{
		slip: "collars wider than the hole",
		written: "collars: { od: 6 1/2 in",
		instead: "collars: { od: 16 1/2 in",
		code: "well/collars-too-wide",
		at: "drill_string",
	},
	{
		slip: "perforations 200 m off, in the confining shale",
		starter: "vertical-metric",
		written: "interval: { from: 1398 m, to: 1412 m",
		instead: "interval: { from: 1198 m, to: 1212 m",
		code: "calc/perforations-outside-target",
		at: "stimulation.stages",
	},
	{
		slip: "perforations in the bed above the target",
		written: "count: 39, bottom: 17110 ft",
		instead: "count: 46, bottom: 17110 ft",
		code: "well/stage-above-landing",
		at: "stimulation.stages",
	},
	{
		slip: "a gas alarm whose low is above its high",
		written: "low: 10 ppm, high: 15 ppm",
		instead: "low: 150 ppm, high: 15 ppm",
		code: "definition/low-above-high",
		at: "safety.gas_alarms",
	},
	{
		slip: "an azimuth turned round",
		written: "build: 10 deg/100 ft, azimuth: 158 deg",
		instead: "build: 10 deg/100 ft, azimuth: 338 deg",
		code: "well/improbable-value",
		at: "trajectory",
	},
	{
		slip: "a declination of the wrong sign for the place",
		written: "declination: 3.9 deg east",
		instead: "declination: 13.9 deg west",
		code: "well/improbable-value",
		at: "site.north",
	},
	{
		slip: "an additive at a hundred times its rate",
		written: "rate: 0.7 gal/1000gal",
		instead: "rate: 70 gal/1000gal",
		code: "well/improbable-value",
		at: "stimulation.additives",
	},
	{
		slip: "a pump rate at a tenth",
		written: "      rate: 75 bbl/min\n",
		instead: "      rate: 7.5 bbl/min\n",
		code: "well/improbable-value",
		at: "stimulation",
	},
	{
		slip: "a ground elevation in the wrong unit",
		written: "ground_elevation: 1482 ft",
		instead: "ground_elevation: 1482 m",
		code: "well/improbable-value",
		at: "site.ground_elevation",
	},
	{
		slip: "a neighbor one digit off",
		written: "latitude: 31.478120",
		instead: "latitude: 31.578120",
		code: "well/coordinates-astray",
		at: "site.neighbors",
	},
	{
		slip: "a surveyed neighbor a mile and a half off",
		written: "latitude: 31.478340",
		instead: "latitude: 31.498340",
		code: "well/distance-astray",
		at: "site.neighbors",
	},
	{
		slip: "a house typed at 120 ft from the pad that is a third of a mile off",
		written: "distance: 1710 ft, by: plat",
		instead: "distance: 120 ft, by: plat",
		code: "well/distance-astray",
		at: "site.neighbors",
	},
	{
		slip: "a hospital at 22 ft",
		written: "hospital_distance: 22 mi",
		instead: "hospital_distance: 22 ft",
		code: "well/improbable-value",
		at: "safety.emergency",
	},
	{
		slip: "a cement strength ten times over",
		written: "value: 1450 psi, after: 72 hr",
		instead: "value: 14500 psi, after: 72 hr",
		code: "well/improbable-value",
		at: "casing",
	},
	{
		slip: "a Young's modulus at a tenth",
		written: "youngs_modulus: 4.2e6 psi",
		instead: "youngs_modulus: 4.2e5 psi",
		code: "well/improbable-value",
		at: "geology",
	},
	{
		slip: "an emergency number of four digits",
		written: 'number: "911"',
		instead: 'number: "9111"',
		code: "definition/emergency-number",
		at: "safety.emergency",
	},
	{
		slip: "wear of two fifths",
		written: "wear: 0 %",
		instead: "wear: 40 %",
		code: "well/improbable-value",
		at: "design_basis.wear",
	},
	{
		slip: "a spud thirty years off",
		written: "spud: 2026-06-20",
		instead: "spud: 2056-06-20",
		code: "definition/date-implausible",
		at: "well.spud",
	},
];

describe("a slip of the keyboard is told where it stands, with its reason", () => {
	it.each(SLIPS)("$slip", ({ starter = "horizontal", written, instead, code, at }) => {
		const text = starterText(starter);
		expect(text.split(written).length).toBeGreaterThan(1);
		const { diagnostics } = understandText(text.replace(written, instead));
		const found = diagnostics.find((each) => each.code === code);
		expect([diagnostics.map((each) => each.code), found?.at.path.join(".").startsWith(at)]).toEqual([
			expect.arrayContaining([code]),
			true,
		]);
		// What is expected, or why, is said beside what is wrong.
		expect(`${toldPlainly(found?.expected)}${toldPlainly(found?.why)}`).not.toBe("");
	});
});
