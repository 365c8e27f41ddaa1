import { describe, expect, it } from "vitest";
import { starterText, understandText } from "../starters.ts";

/*
 * Whoever writes a definition by hand mends what is told and runs the check again. Faults of form do not hide faults of pipe,
 * cement and stages: ten mixed ones are all told within two rounds.
 */

interface Slip {
	readonly write: readonly [right: string, wrong: string];
	readonly code: string;
}

const slip = (right: string, wrong: string, code: string): Slip => ({ write: [right, wrong], code });

const DEFINITIONS: Readonly<Record<string, readonly Slip[]>> = {
	"words, units, pipe and depths": [
		slip("class: development", "class: developement", "definition/not-one-of"),
		slip("api_number: 42-000-00005", "api_number: 42-000-0005", "definition/api-number"),
		slip("ground_elevation: 402.5 m", "ground_elevation: 402.5", "quantity/no-unit"),
		slip("grade: J55", "grade: J-56", "well/unknown-grade"),
		slip("od: 139.7 mm, weight: 25.3 kg/m", "od: 139.7 mm, weight: 26.9 kg/m", "well/unknown-pipe"),
		slip("role: tail, class: C, from: 190 m", "role: tail, class: C, from: 200 m", "well/slurry-gap"),
		slip(
			"interval: { from: 1398 m, to: 1412 m",
			"interval: { from: 1412 m, to: 1398 m",
			"well/top-below-bottom",
		),
		slip("Varde Dolomite, top: 690 m TVD", "Varde Dolomite, top: 250 m TVD", "well/formation-order"),
		slip("over: surface", "over: surfce", "well/unknown-reference"),
		slip("least: 3.5 kN-m, greatest: 5.7", "least: 3.5 kN-m, gretest: 5.7", "definition/unknown-key"),
	],
	"dates, shoes, threads and proppant": [
		slip("issued: 2026-04-15", "issued: 15.04.2026", "definition/date"),
		slip("above_ground: 4.2 m", "above_ground: 4,2 m", "syntax/comma-in-number"),
		slip("lithology: dolomite", "lithology: dolomitte", "definition/not-one-of"),
		slip("to: 302 m, washout", "to: 290 m, washout", "well/shoe-below-hole"),
		slip("connection: LTC", "connection: XYZ-9", "well/connection-unrated"),
		slip("between: [production, surface]", "between: [surface, production]", "well/annulus-strings"),
		slip(
			"proppant: 20-40, concentration: 120",
			"proppant: 40-70, concentration: 120",
			"well/unknown-reference",
		),
		slip("cas: 9000-30-0", "cas: 9000-30-1", "definition/cas-number"),
		slip("{ id: gate, at: Main gate }", "{ id: gate }", "definition/missing"),
		slip("returned: [30 %, 60 %]", "returned: [60 %, 30 %]", "definition/low-above-high"),
	],
	"keys, holes, cement and limits": [
		slip("definition: 1\n", "definition: 1\nnotes: hello\n", "definition/unknown-key"),
		slip("  operator: Fenwick Resources (fictional)\n", "", "definition/missing"),
		slip("diameter: 200.025 mm", "diameter: 120 mm", "well/collars-too-wide"),
		slip("weight: 53.57 kg/m", "weight: 53.57", "quantity/no-unit"),
		slip("shoe_track: 13 m", "shoe_track: 1500 m", "well/shoe-track"),
		slip("every: 5 joints", "every: five joints", "definition/wrong-form"),
		slip("maximum_treating_pressure: 25 MPa", "maximum_treating_pressure: 25 Mpa", "quantity/letter-case"),
		slip("returned: [30 %, 60 %]", "returned: [60 %, 30 %]", "definition/low-above-high"),
		slip("treated_through: production", "treated_through: prodction", "well/unknown-reference"),
		slip(
			"role: lead, class: G, from: surface, to: 1150 m",
			"role: lead, class: G, from: surface, to: 1100 m",
			"well/slurry-gap",
		),
	],
};

const written = (slips: readonly Slip[]): string =>
	slips.reduce((text, { write: [right, wrong] }) => {
		expect(text).toContain(right);
		return text.replace(right, wrong);
	}, starterText("vertical-metric"));

const codesOf = (text: string): readonly string[] => understandText(text).diagnostics.map(({ code }) => code);

describe("a definition written by hand", () => {
	it.each(Object.entries(DEFINITIONS))("comes clean in two rounds: %s", (_, slips) => {
		expect(slips).toHaveLength(10);
		const first = codesOf(written(slips));
		const left = slips.filter(({ code }) => !first.includes(code));
		expect(left.length).toBeLessThanOrEqual(3);
		const second = codesOf(written(left));
		expect(left.filter(({ code }) => !second.includes(code))).toEqual([]);
	});
	it("is clean where it is right", () => {
		expect(understandText(written([])).diagnostics.filter(({ severity }) => severity === "error")).toEqual(
			[],
		);
	});
});
