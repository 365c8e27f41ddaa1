import { describe, expect, it } from "vitest";
import { isTable } from "../../src/cite/known.ts";
import { resultsLines } from "../../src/render/json/results-lines.ts";
import { DIMENSIONS } from "../../src/units/dimensions.ts";
import { resultsInFull } from "../results-in-full.ts";
import { findingsOf, STARTERS, type Starter } from "../starters.ts";

interface Told {
	readonly value?: number;
	readonly unit?: string;
	readonly rows?: readonly (readonly number[])[] | number;
	readonly formula?: string;
	readonly inputs?: Readonly<Record<string, string | readonly string[]>>;
}
interface Results {
	readonly values: Readonly<Record<string, Told | string>>;
	readonly inputs: Readonly<Record<string, Told>>;
	readonly formulas: Readonly<Record<string, string>>;
}

const linesOf = (starter: Starter, prefix = ""): string =>
	[...resultsLines(findingsOf(starter).index, { prefix })].join("");
const read = (text: string): Results => JSON.parse(text) as Results;
const referencesOf = ({ inputs = {} }: Told): readonly string[] => Object.values(inputs).flat();

describe.each(STARTERS)("results of %s", (starter) => {
	const text = linesOf(starter);
	const told = read(text);
	const { index } = findingsOf(starter);

	it("has every value on a line of its own, in the unit and to the digits promised", () => {
		expect(Object.keys(told.values)).toEqual([...index.byKey.keys()]);
		const begins = new Set(text.split("\n").map((each) => /^"(?:[^"\\]|\\.)*": (?!\{$)/u.exec(each)?.[0]));
		for (const [key, value] of index.byKey) {
			const line = told.values[key];
			if (typeof line === "string") {
				expect(index.byKey.get(line), key).toBe(value);
				continue;
			}
			if (isTable(value)) expect(line?.rows, key).toHaveLength(value.rows.length);
			else {
				expect(line?.value, key).toBe(Number(value.value.toPrecision(10)));
				expect(line?.unit, key).toBe(DIMENSIONS[value.dimension].canonical);
			}
			expect(begins.has(`${JSON.stringify(key)}: `), key).toBe(true);
		}
		expect(text.split("\n").length).toBeGreaterThan(index.byKey.size + 6);
	});

	it("leads from every value to what it was worked from, and tells the source of every formula", () => {
		const all = [...Object.values(told.values), ...Object.values(told.inputs)];
		let followed = 0;
		for (const line of all) {
			if (typeof line === "string") continue;
			for (const reference of referencesOf(line)) {
				followed += 1;
				expect(reference in told.values || reference in told.inputs, reference).toBe(true);
			}
			if (line.formula !== undefined) expect(told.formulas[line.formula], line.formula).toMatch(/\S/u);
		}
		expect(followed).toBeGreaterThan(500);
	});

	it("is complete in itself where only a part is asked for", () => {
		const part = read(linesOf(starter, "results.casing."));
		for (const line of [...Object.values(part.values), ...Object.values(part.inputs)])
			if (typeof line !== "string")
				for (const reference of referencesOf(line))
					expect(reference in part.values || reference in part.inputs, reference).toBe(true);
		for (const line of Object.values(part.values))
			if (typeof line === "string") expect(part.values).toHaveProperty([line]);
	});
});

it("tells nothing twice: less than half of what writing each input out takes", () => {
	const { index } = findingsOf("horizontal");
	const inFull = JSON.stringify(resultsInFull(index, "")).length;
	expect(linesOf("horizontal").length).toBeLessThan(inFull / 2);
	expect(linesOf("horizontal").length).toBeLessThan(300 * index.byKey.size);
});

describe("what could not be evaluated", () => {
	const notEvaluated = [
		{
			key: "logistics.water_loads",
			because: "The load of a truck is not given.",
			needs: [["logistics", "water_truck"]],
		},
		{
			key: "cement.surface.final_lift",
			because: "The density is not given.",
			needs: [["casing", 0, "cement"]],
		},
	];
	const told = (request: Partial<Parameters<typeof resultsLines>[1]>) =>
		(
			JSON.parse(
				[
					...resultsLines(findingsOf("vertical-metric").index, {
						prefix: "results.",
						notEvaluated,
						...request,
					}),
				].join(""),
			) as {
				readonly not_evaluated: unknown;
			}
		).not_evaluated;
	it("stands beside the values, with why and where it would be mended", () => {
		expect(told({})).toEqual({
			"results.logistics.water_loads": {
				because: "The load of a truck is not given.",
				needs: ["logistics.water_truck"],
			},
			"results.cement.surface.final_lift": {
				because: "The density is not given.",
				needs: ["casing[0].cement"],
			},
		});
	});
	it("is narrowed as the values are", () => {
		expect(Object.keys(told({ prefix: "results.cement." }) as object)).toEqual([
			"results.cement.surface.final_lift",
		]);
		expect(Object.keys(told({ mayShow: ([topic]) => topic !== "logistics" }) as object)).toEqual([
			"results.cement.surface.final_lift",
		]);
	});
	it("is all that a starter lists as such", () => {
		const { index, results } = findingsOf("vertical-metric");
		const lines = [...resultsLines(index, { prefix: "", notEvaluated: results.undetermined })].join("");
		const { not_evaluated: found } = JSON.parse(lines) as { readonly not_evaluated: object };
		expect(Object.keys(found)).toEqual([...new Set(results.undetermined.map(({ key }) => `results.${key}`))]);
	});
});
