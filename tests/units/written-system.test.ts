import { describe, expect, it } from "vitest";
import { readYaml } from "../../src/source/read-yaml.ts";
import { writtenSystem } from "../../src/units/written-system.ts";
import { starterText } from "../starters.ts";

const of = (starter: Parameters<typeof starterText>[0]) =>
	writtenSystem(readYaml(starterText(starter), "well.yaml").value?.value);

describe("the unit system a definition is written in", () => {
	it("is that of most of its quantities", () => {
		expect(of("horizontal")).toBe("field");
		expect(of("vertical-metric")).toBe("metric");
	});
	it("is told by units that only one system prints, whatever follows them", () => {
		expect(writtenSystem({ a: "2400 m TVD", b: [{ c: "9 5/8 in" }, "35 MPa"] })).toBe("metric");
		expect(writtenSystem(["8850 ft below ground", "10 deg", "30 min"])).toBe("field");
	});
	it("is the field's where nothing tells", () => {
		expect(writtenSystem({ name: "Sorrel 1", note: "12 bar stools, 3 m of them" })).toBe("field");
		expect(writtenSystem(undefined)).toBe("field");
	});
});
