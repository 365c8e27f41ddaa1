import { describe, expect, it } from "vitest";
import { parseDepth } from "../../src/units/parse-depth.ts";

describe("parseDepth", () => {
	it.each([
		["1185 ft", 1185, "measured", false],
		["1185 ft MD", 1185, "measured", true],
		["1185 ft md", 1185, "measured", true],
		["1185 ft measured depth", 1185, "measured", true],
		["8850 ft TVD", 8850, "vertical", true],
		["8850ft tvd", 8850, "vertical", true],
		["8850' TVD", 8850, "vertical", true],
		["8850 ft. TVD", 8850, "vertical", true],
		["984 ft below ground", 984, "ground", true],
		["984 ft below ground level", 984, "ground", true],
		["984\u00a0ft BGL", 984, "ground", true],
	])("%s", (text, value, reference, stated) => {
		expect(parseDepth(text)).toEqual({
			ok: true,
			value,
			unit: "ft",
			reference,
			stated,
		});
	});

	it("converts metres", () => {
		const read = parseDepth("300 m TVD");
		expect(read).toMatchObject({ ok: true, unit: "m", reference: "vertical" });
		expect(read.ok && read.value).toBeCloseTo(984.252, 3);
	});

	it.each([
		["8850 ft TVDSS", "unknown-reference", "TVDSS"],
		["8850 ft subsea", "unknown-reference", "subsea"],
		["8850 ft mD", "unknown-reference", "mD"],
		["8850 ft below rotary table", "unknown-reference", "below rotary table"],
		["8850 TVD", "no-unit", "8850"],
		["8850", "no-unit", "8850"],
		["8,850 ft TVD", "comma", "8,850 ft"],
		["8 850 ft TVD", "digit-space", "8 850 ft"],
		["8850 psi", "unknown-unit", "psi"],
		["8850 mD", "unknown-unit", "mD"],
		["300 M TVD", "letter-case", "M"],
		["-5 ft TVD", "negative", "-5 ft"],
		["surface", "not-a-number", "surface"],
		["to surface", "not-a-number", "to surface"],
	])("refuses %s: %s", (text, reason, found) => {
		expect(parseDepth(text)).toMatchObject({ ok: false, reason, found });
	});

	it("names the references it knows", () => {
		expect(parseDepth("8850 ft TVDSS")).toMatchObject({
			accepted: ["MD", "TVD", "below ground"],
		});
	});
});
