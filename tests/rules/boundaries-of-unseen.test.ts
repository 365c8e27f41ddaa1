import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readJurisdictionText } from "../../src/catalog/jurisdictions.ts";
import { judge } from "../../src/rules/judge.ts";
import { type Edit, set, wellWith, without } from "./builders.ts";

/*
 * Further boundaries of jurisdictions that do not ship, written as data alone from public copies (their addresses stand in the
 * files): at the number, under it, over it, and without what it is judged on. The well is the round-numbered one: 980, 4,980 and
 * 9,980 ft of pipe below the hanger, 9,990 ft deep below ground.
 */
const SETS = ["us-la", "us-ocs", "us-ca-offshore"].map((name) => {
	const { value } = readJurisdictionText(
		readFileSync(new URL(`../../fixtures/jurisdictions/${name}.yaml`, import.meta.url), "utf8"),
		`${name}.yaml`,
	);
	if (value === undefined) throw new Error(name);
	return value;
});
const PLACE = { surface: "casing.1", intermediate: "casing.2", production: "casing.3" } as const;
type Name = keyof typeof PLACE;

const verdict = (rule: string, string: Name, edit: Edit): string => {
	const { well, results } = wellWith(edit);
	const found = judge(well, results, SETS).findings.filter(
		({ cite, subject }) => cite.rule === rule && subject === string,
	);
	expect(found, rule).toHaveLength(1);
	return found[0]?.verdict ?? "none";
};

const LEAST = ["met", "not met", "met"];
const MOST = ["met", "met", "not met"];
const PRESSURE = "pressure_test.pressure";
const HOLD = "pressure_test.hold";
const FALL = "pressure_test.allowed_fall";
const WAIT = "cement.wait_on_cement";
const MINUTES = ["30 min", "29 min", "31 min"] as const;
const SHARE = ["10 %", "9.9 %", "10.1 %"] as const;
const HOURS = ["12 hr", "11.9 hr", "12.1 hr"] as const;

describe.each([
	["us-la.surf.test", "surface", PRESSURE, ["1000 psi", "999 psi", "1001 psi"], LEAST, "pressure_test"],
	["us-la.surf.test", "surface", HOLD, MINUTES, LEAST, "pressure_test"],
	["us-la.surf.test", "surface", FALL, SHARE, MOST, FALL],
	// 0.22 psi/ft × 980 ft is under 500 psi; of the deeper strings it is 1,095.6 and 2,195.6 psi.
	["us-ocs.deeper.test", "surface", PRESSURE, ["500 psi", "499 psi", "501 psi"], LEAST, "pressure_test"],
	[
		"us-ocs.deeper.test",
		"intermediate",
		PRESSURE,
		["1095.6 psi", "1095 psi", "1096 psi"],
		LEAST,
		"pressure_test",
	],
	[
		"us-ocs.deeper.test",
		"production",
		PRESSURE,
		["2195.6 psi", "2195 psi", "2196 psi"],
		LEAST,
		"pressure_test",
	],
	["us-ocs.deeper.test", "surface", HOLD, MINUTES, LEAST, "pressure_test"],
	["us-ocs.deeper.test", "intermediate", HOLD, MINUTES, LEAST, "pressure_test"],
	["us-ocs.deeper.test", "production", HOLD, MINUTES, LEAST, "pressure_test"],
	["us-ocs.woc", "surface", WAIT, HOURS, LEAST, WAIT],
	["us-ocs.woc", "intermediate", WAIT, HOURS, LEAST, WAIT],
	["us-ocs.woc", "production", WAIT, HOURS, LEAST, WAIT],
	["us-ocs.shoe.test", "surface", "shoe_test.new_hole", ["10 ft", "9.9 ft", "10.1 ft"], LEAST, "shoe_test"],
	["us-ocs.shoe.test", "surface", "shoe_test.new_hole", ["50 ft", "49.9 ft", "50.1 ft"], MOST, "shoe_test"],
	// 1 psi/ft × 1,000 ft.
	[
		"us-ca-offshore.surf.test",
		"surface",
		PRESSURE,
		["1000 psi", "999 psi", "1001 psi"],
		LEAST,
		"pressure_test",
	],
	["us-ca-offshore.surf.test", "surface", HOLD, MINUTES, LEAST, "pressure_test"],
	["us-ca-offshore.surf.test", "surface", FALL, SHARE, MOST, FALL],
	// 0.2 psi/ft × 4,980 ft is under 1,500 psi; × 9,980 ft it is 1,996 psi.
	[
		"us-ca-offshore.deeper.test",
		"intermediate",
		PRESSURE,
		["1500 psi", "1499 psi", "1501 psi"],
		LEAST,
		"pressure_test",
	],
	[
		"us-ca-offshore.deeper.test",
		"production",
		PRESSURE,
		["1996 psi", "1995 psi", "1997 psi"],
		LEAST,
		"pressure_test",
	],
	["us-ocs.deeper.test", "surface", FALL, SHARE, MOST, FALL],
	["us-ocs.deeper.test", "intermediate", FALL, SHARE, MOST, FALL],
	["us-ocs.deeper.test", "production", FALL, SHARE, MOST, FALL],
] as const)("%s on %s, %s", (rule, string, field, values, verdicts, lacking) => {
	it("at, under and over", () => {
		expect(values.map((value) => verdict(rule, string, set(`${PLACE[string]}.${field}`, value)))).toEqual([
			...verdicts,
		]);
	});
	it("cannot be told without what it is judged on", () => {
		expect(verdict(rule, string, without(`${PLACE[string]}.${lacking}`))).toBe("cannot tell");
	});
});
