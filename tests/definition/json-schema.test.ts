import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { definitionJsonSchema } from "../../src/definition/json-schema.ts";
import { changed, STARTERS, starterTree } from "./starter-trees.ts";

/* Judged by a validator that shares nothing with the schemas it was made from. */
const ajv = new Ajv2020({ strict: true, strictTypes: false, allErrors: true, validateFormats: false });
const accepts = ajv.compile(definitionJsonSchema());

describe("the JSON Schema for editors", () => {
	it("is a schema of the draft it claims", () => {
		expect(definitionJsonSchema()["$schema"]).toBe("https://json-schema.org/draft/2020-12/schema");
	});

	it.each(STARTERS)("accepts the shape of the starter %s", (starter) => {
		accepts(starterTree(starter));
		expect(accepts.errors ?? []).toEqual([]);
	});

	it.each([
		["an unknown name", ["well", "nmae"], "x"],
		["a missing block", ["geology"], undefined],
		["a number where a quantity is due", ["casing", 1, "shoe_track"], 42],
		["a word that is not one of the list", ["well", "state"], "final"],
		["a list that is too short", ["stimulation", "flowback", "returned"], ["10 %"]],
		["another version", ["definition"], 2],
	] as const)("refuses %s", (_, path, value) => {
		expect(accepts(changed(starterTree("horizontal"), path, value))).toBe(false);
	});

	it("tells an editor what each entry is for, and its units", () => {
		const text = JSON.stringify(definitionJsonSchema());
		expect(text).toContain("Compared with the rule's figure, and told to neighbors.");
		expect(text).toContain("Units: psi, kPa, MPa, GPa, bar, ksi.");
		expect(text).toContain('"title":"Outside diameter"');
	});
});
