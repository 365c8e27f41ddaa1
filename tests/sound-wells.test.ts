import { describe, expect, it } from "vitest";
import { sampleOf } from "./run/sample.ts";
import { starterText, understandText } from "./starters.ts";
import { told } from "./told.ts";

/*
 * The planned starter is a sound well with three findings of practice. Each case changes it as an engineer would who plans
 * another sound well: a little deeper, another pipe, another fluid, other units. None may be told of more practice than the
 * starter is. The changes are ours: common practice, no source.
 */

type Change = readonly [written: string, instead: string];

const MUD =
	"fluid: { kind: oil-based mud, density: 11.8 ppg, plastic_viscosity: 22 cP, yield_point: 10 lbf/100ft2";

const VARIATIONS: Readonly<Record<string, readonly Change[]>> = {
	"production mud a tenth heavier, spacer and lead with it": [
		[MUD, MUD.replace("11.8", "11.9")],
		["spacer: { volume: 80 bbl, density: 12.2 ppg", "spacer: { volume: 80 bbl, density: 12.3 ppg"],
		["excess: 5 %, density: 12.6 ppg", "excess: 5 %, density: 12.7 ppg"],
	],
	"production mud of lower plastic viscosity, by Bingham": [
		[
			`${MUD}, readings: { six_hundred: 54, three_hundred: 32, six: 7, three: 6 }`,
			MUD.replace("22 cP", "20 cP"),
		],
	],
	"synthetic mud in the production hole": [[MUD, MUD.replace("oil-based mud", "synthetic-based mud")]],
	"intermediate mud a tenth heavier": [
		["kind: water-based mud, density: 9.4 ppg", "kind: water-based mud, density: 9.5 ppg"],
	],
	"surface mud a tenth heavier": [
		["kind: fresh-water mud, density: 8.8 ppg", "kind: fresh-water mud, density: 8.9 ppg"],
	],
	"surface hole washed out more": [["washout: { diameter: 6 %", "washout: { diameter: 7 %"]],
	"surface hole washed out less": [["washout: { diameter: 6 %", "washout: { diameter: 5 %"]],
	"intermediate hole washed out less": [["washout: { diameter: 3 %", "washout: { diameter: 2 %"]],
	"production hole drilled 40 ft past the shoe": [
		["diameter: 8 1/2 in, to: 17260 ft", "diameter: 8 1/2 in, to: 17285 ft"],
		["lateral: 8000 ft", "lateral: 8025 ft"],
	],
	"a smaller kick designed for": [
		["kick: { intensity: 0.2 ppg, volume: 20 bbl }", "kick: { intensity: 0.2 ppg, volume: 15 bbl }"],
	],
	"slower pumps in the surface hole": [["drilling: { rate: 900 gal/min", "drilling: { rate: 850 gal/min"]],
	"slower pumps in the intermediate hole": [
		["drilling: { rate: 800 gal/min", "drilling: { rate: 750 gal/min"],
	],
	"slower pumps in the production hole": [["drilling: { rate: 500 gal/min", "drilling: { rate: 480 gal/min"]],
	"slower trips in the production hole": [
		[
			"16/32 in, 16/32 in, 16/32 in, 16/32 in, 16/32 in], trip_speed: 90 ft/min } }\n\ndrill_string",
			"16/32 in, 16/32 in, 16/32 in, 16/32 in, 16/32 in], trip_speed: 80 ft/min } }\n\ndrill_string",
		],
	],
	"longer collars": [["id: 2 13/16 in, length: 180 ft", "id: 2 13/16 in, length: 240 ft"]],
	"heavier surface casing": [
		["od: 13 3/8 in, weight: 54.5 lb/ft, grade: J55", "od: 13 3/8 in, weight: 61 lb/ft, grade: J55"],
	],
	"surface casing of K55": [
		["weight: 54.5 lb/ft, grade: J55, connection: BTC", "weight: 54.5 lb/ft, grade: K55, connection: BTC"],
	],
	"heavier intermediate casing": [["weight: 43.5 lb/ft, grade: L80", "weight: 47 lb/ft, grade: L80"]],
	"more excess of surface lead": [["excess: 30 %", "excess: 35 %"]],
	"longer wait on surface cement": [["wait_on_cement: 12 hr", "wait_on_cement: 16 hr"]],
	"longer wait on intermediate cement": [["wait_on_cement: 18 hr", "wait_on_cement: 24 hr"]],
	"longer wait on production cement": [
		[
			"wait_on_cement: 24 hr\n      top_method: calculated",
			"wait_on_cement: 36 hr\n      top_method: calculated",
		],
	],
	"more spacer ahead of surface cement": [["spacer: { volume: 60 bbl", "spacer: { volume: 70 bbl"]],
	"more spacer ahead of intermediate cement": [["spacer: { volume: 70 bbl", "spacer: { volume: 80 bbl"]],
	"more spacer ahead of production cement": [["spacer: { volume: 80 bbl", "spacer: { volume: 90 bbl"]],
	"production lead that stays thin longer": [["thickening_time: 7 hr", "thickening_time: 8 hr"]],
	"production tail that stays thin longer": [["thickening_time: 6 hr", "thickening_time: 7 hr"]],
	"one stage less": [["layout: { count: 39", "layout: { count: 38"]],
	"a lower rate of treatment": [["rate: 75 bbl/min", "rate: 70 bbl/min"]],
	"surface hole in metric": [
		["id: surface, diameter: 17 1/2 in, to: 1200 ft", "id: surface, diameter: 444.5 mm, to: 365.76 m"],
	],
	"production mud in metric": [[MUD, MUD.replace("11.8 ppg", "1413 kg/m3")]],
	"treating pressure in metric": [
		["maximum_treating_pressure: 9500 psi", "maximum_treating_pressure: 65.5 MPa"],
	],
	"production casing in metric": [["od: 5 1/2 in, weight: 23 lb/ft", "od: 139.7 mm, weight: 34.23 kg/m"]],
};

/** Findings of practice that ask something of a reader. */
const practiceIn = (text: string): readonly string[] => {
	const { findings, diagnostics } = understandText(text);
	if (findings === undefined) return diagnostics.map(({ code, what }) => `${code}: ${told(what)}`);
	return findings.judgement.findings
		.filter(
			({ cite, verdict }) => cite.kind === "practice" && verdict !== "met" && verdict !== "does not apply",
		)
		.map(({ cite, subject }) => `${cite.rule} ${told(subject)}`);
};

describe("a sound variation of the planned starter", () => {
	const starter = starterText("horizontal");
	const known = practiceIn(starter);
	it("has thirty cases at least, beside a starter with three findings at most", () => {
		expect(Object.keys(VARIATIONS).length).toBeGreaterThanOrEqual(30);
		expect(known.length).toBeLessThanOrEqual(3);
	});
	it.each(sampleOf("sound wells", Object.entries(VARIATIONS), 12))(
		"%s: no further practice is told",
		(_, changes) => {
			const text = changes.reduce((left, [written, instead]) => {
				expect(left).toContain(written);
				return left.replace(written, instead);
			}, starter);
			expect(practiceIn(text).filter((each) => !known.includes(each))).toEqual([]);
		},
	);
});
