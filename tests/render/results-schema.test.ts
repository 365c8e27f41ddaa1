import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { resultsLines } from "../../src/render/json/results-lines.ts";
import { resultsJsonSchema } from "../../src/render/json/results-schema.ts";
import { padFindings } from "../pads.ts";
import { findingsOf, STARTERS } from "../starters.ts";

const ajv = new Ajv2020({ strict: true, strictTypes: false, strictRequired: false, allErrors: false });
const accepts = ajv.compile(resultsJsonSchema());

type Results = Record<string, Record<string, unknown>>;
const resultsOf = ({ index, results }: ReturnType<typeof findingsOf>, prefix = ""): Results =>
	JSON.parse([...resultsLines(index, { prefix, notEvaluated: results.undetermined })].join("")) as Results;

describe("the JSON Schema of the results", () => {
	it.each(STARTERS)("accepts those of the starter %s, whole and in part", (starter) => {
		for (const prefix of ["", "results.casing", "no such key"]) {
			accepts(resultsOf(findingsOf(starter), prefix));
			expect(accepts.errors ?? []).toEqual([]);
		}
	});
	it("accepts those of a well of a pad", () => {
		for (const findings of padFindings().slice(0, 1)) {
			accepts(resultsOf(findings));
			expect(accepts.errors ?? []).toEqual([]);
		}
	});
	const sound = resultsOf(findingsOf("vertical-metric"), "well.site");
	const [key = "", value] =
		Object.entries(sound["values"] ?? {}).find((entry): entry is [string, Record<string, unknown>] =>
			JSON.stringify(entry[1]).includes('"written"'),
		) ?? [];
	const { unit: _unit, ...withoutUnit } = value ?? {};
	const { written: _written, ...withoutOrigin } = value ?? {};
	const { formulas: _formulas, ...withoutPart } = sound;
	const withValue = (name: string, given: unknown): Results => ({
		...sound,
		values: { ...sound["values"], [name]: given },
	});

	it("takes the results that are damaged below", () => {
		expect(accepts(withValue(key, value))).toBe(true);
	});
	it.each([
		["a value without a unit", withValue(key, withoutUnit)],
		["a value from nowhere", withValue(key, withoutOrigin)],
		["a key of no room", withValue("nowhere", value)],
		["a name that is not told", { ...sound, extra: {} }],
		["a part that is gone", withoutPart],
	] as const)("refuses %s", (_, damaged) => {
		expect(accepts(damaged)).toBe(false);
	});
});
