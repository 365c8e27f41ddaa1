import { describe, expect, it } from "vitest";
import { type Given, isTable, type Known, type KnownTable } from "../../src/cite/known.ts";
import { valuesOf } from "../../src/compare/causes.ts";
import { changedEntries } from "../../src/compare/changed-entries.ts";
import { type Changes, compare } from "../../src/compare/compare.ts";
import { toldChange } from "../../src/compare/tell.ts";
import { pathKey } from "../../src/diagnostics/path.ts";
import { composePaper } from "../../src/paper/compose.ts";
import type { Findings } from "../../src/paper/context.ts";
import { placeOf } from "../../src/paper/places.ts";
import { loadWords } from "../../src/paper/words/words.ts";
import { composeChangesPaper, printedByRegulator } from "../../src/pipeline.ts";
import { quantityString } from "../../src/units/format.ts";
import { findingsOf, type Starter, starterText, understandText } from "../starters.ts";
import { told } from "../told.ts";

type Edit = readonly [from: string, to: string];

const revised = (starter: Starter, ...edits: readonly Edit[]): Findings => {
	const text = edits.reduce((whole, [from, to]) => {
		expect(whole, from).toContain(from);
		return whole.replace(from, to);
	}, starterText(starter));
	const { findings, diagnostics } = understandText(text, `${starter}.yaml`);
	if (findings === undefined) throw new Error(diagnostics.map((d) => told(d.what)).join("\n"));
	return findings;
};

const changesOf = (starter: Starter, ...edits: readonly Edit[]): Changes =>
	compare({ before: findingsOf(starter), after: revised(starter, ...edits), units: "field" });

/** The shoe alone: the pipe ends deeper, in the same hole. */
const DEEPER: Edit = ["joint: 40 ft, from: surface, to: 1185 ft", "joint: 40 ft, from: surface, to: 1190 ft"];
const TAIL: Edit = ["          to: 1185 ft", "          to: 1190 ft"];

/** Whether a value was worked from what was typed at a place, found anew by another way than the tool's. */
const restsOn = (value: Known | KnownTable, at: string, seen = new Map<Given, boolean>()): boolean => {
	const known = seen.get(value);
	if (known !== undefined) return known;
	const { from } = value;
	const found =
		(from.kind === "definition" && pathKey(from.at) === at) ||
		(from.kind === "worked" &&
			Object.values(from.inputs)
				.flatMap(valuesOf)
				.some((input) => restsOn(input, at, seen)));
	seen.set(value, found);
	return found;
};

const text = (value: Known | KnownTable): string =>
	isTable(value)
		? JSON.stringify(value.rows.map((row) => Object.values(row).map((cell) => cell.toFixed(9))))
		: quantityString({ dimension: value.dimension, value: value.value, style: { decimals: 9 } }, "field");

describe("a revision that sets one shoe deeper", () => {
	const changes = changesOf("horizontal", DEEPER, TAIL);
	const { moved } = changes.results;
	const keys = new Set(moved.map(({ key }) => key));

	it("names the entries that were typed anew, and no others", () => {
		expect(
			changes.inputs.map((input) =>
				input.what === "entry" ? [pathKey(input.after ?? []), input.from, input.to] : input,
			),
		).toEqual([
			["casing[1].pipe[0].to", "1185 ft", "1190 ft"],
			["casing[1].cement.slurries[1].to", "1185 ft", "1190 ft"],
		]);
	});

	it("lists only values that were worked from them", () => {
		const at = ["casing[1].pipe[0].to", "casing[1].cement.slurries[1].to"];
		expect(moved.length).toBeGreaterThan(100);
		for (const { key, after, causes } of moved) {
			expect(after, key).toBeDefined();
			const rests = at.flatMap((place, i) => (after !== undefined && restsOn(after, place) ? [i] : []));
			expect(causes, key).toEqual(rests);
			expect(rests, key).not.toEqual([]);
		}
	});

	it("misses none: what it does not list is the same to the last printed digit", () => {
		const { before, after } = changes;
		const told = new Set(moved.map((each) => each.after));
		let equal = 0;
		for (const [key, value] of after.index.byKey) {
			const old = before.index.byKey.get(key);
			if (key.startsWith("findings.") || told.has(value) || value.from.kind === "definition") continue;
			expect(old, key).toBeDefined();
			if (old === undefined) continue;
			if (text(value) === text(old)) equal++;
			else if (!isTable(value) && !isTable(old))
				expect(quantityString({ ...value, style: {} }, "field"), key).toBe(
					quantityString({ ...old, style: {} }, "field"),
				);
		}
		expect(equal).toBeGreaterThan(3000);
	});

	it("has the shoe, its cement and the string run through it, and nothing of strings beside it", () => {
		for (const key of [
			"results.casing.surface.shoe.tvd",
			"results.casing.surface.weight_in_air",
			"results.cement.surface.displacement_volume",
			"results.cement.surface.slurries.tail.sacks",
			"results.cement.intermediate.slurries.lead.cased_volume",
			"results.isolation.shoe_below_protected_water",
		])
			expect(keys, key).toContain(key);
		for (const key of keys)
			expect(key).not.toMatch(
				/^results\.(?:casing\.(?:conductor|production)|stimulation|logistics|trajectory)\b/u,
			);
	});

	it("tells the agency what moved in the appendices of the attachment too", () => {
		const asked = { language: "en", units: "field" } as const;
		const [before, after] = [findingsOf("horizontal"), revised("horizontal", DEEPER, TAIL)];
		const printed = printedByRegulator(after, asked);
		const appendix = composePaper({
			...after,
			words: loadWords("en"),
			units: "field",
			paper: "regulator-appendix",
		});
		const inAppendix = new Set(appendix.sections.map(placeOf));
		expect(moved.some(({ key }) => !printed(key))).toBe(true);
		const groups = composeChangesPaper(before, after, asked).sections.flatMap(({ blocks }) =>
			blocks.flatMap((block) =>
				block.kind === "table" ? block.rows.filter(({ emphasis }) => emphasis === "group") : [],
			),
		);
		const places = groups.map(({ cells: { result } }) => (result?.kind === "text" ? result.text : ""));
		expect(places.filter((place) => inAppendix.has(place)).length).toBeGreaterThan(1);
		expect(printed("results.casing.surface.weight_in_air")).toBe(true);
	});

	it("tells by how much, as the printed numbers differ", () => {
		const shoe = moved.find(({ key }) => key === "results.isolation.shoe_below_protected_water");
		expect(shoe === undefined ? "" : toldChange(shoe, "field")).toBe("+5\u00a0ft");
		const tvd = moved.find(({ key }) => key === "results.casing.surface.shoe.tvd");
		expect(tvd === undefined ? "" : toldChange(tvd, "field")).toBe("+5\u00a0ft, +0.4 %");
	});
});

describe("two states of a well", () => {
	it("that are the same differ in nothing", () => {
		const { inputs, results, verdicts, gaps, days } = changesOf("horizontal");
		expect([inputs, results.moved, verdicts, gaps, days]).toEqual([[], [], [], [], []]);
		expect(results.smaller).toBe(0);
	});

	it("an amount written in another unit is the same amount, and moves nothing", () => {
		const { inputs, results } = changesOf("horizontal", [
			"working_pressure: 5000 psi",
			"working_pressure: 34.47378646584 MPa",
		]);
		expect(inputs).toMatchObject([{ sameAmount: true, to: "34.47378646584 MPa" }]);
		expect(results.moved).toEqual([]);
	});

	it("a grade is a choice: what it moves is told with the row of the table that it picks", () => {
		const { inputs, results } = changesOf("horizontal", [
			"grade: J55, connection: BTC",
			"grade: K55, connection: BTC",
		]);
		expect(inputs).toHaveLength(1);
		const strength = results.moved.find(
			({ key }) => key === "results.casing.surface.sections.1.joint_strength",
		);
		expect(strength).toMatchObject({ causes: [0], byChoice: true });
		expect(strength?.rows).toContain("grades: K55, minimum_tensile");
	});

	it("the worst finding comes first", () => {
		const { verdicts } = changesOf(
			"horizontal",
			[
				"pressure_test: { pressure: 1000 psi, hold: 30 min",
				"pressure_test: { pressure: 100 psi, hold: 30 min",
			],
			["density: 9.4 ppg, plastic_viscosity: 14 cP", "density: 9.5 ppg, plastic_viscosity: 14 cP"],
		);
		expect(verdicts[0]).toMatchObject({
			turn: "worse",
			before: { verdict: "met" },
			after: { verdict: "not met" },
		});
		const turns = verdicts.map(({ turn }) => turn);
		expect(turns.lastIndexOf("worse")).toBeLessThan(turns.indexOf("margin"));
	});

	it("plan and record are two states like any others", () => {
		const { inputs, results } = compare({
			before: findingsOf("horizontal"),
			after: findingsOf("horizontal-as-built"),
			units: "field",
		});
		expect(inputs.length).toBeGreaterThan(100);
		expect(results.moved.filter(({ causes, rows }) => causes.length + rows.length === 0)).toEqual([]);
	});
});

describe("entries of two definitions", () => {
	it("one more item of a named list is one entry added", () => {
		const before = {
			layers: [
				{ name: "a", top: 1 },
				{ name: "b", top: 2 },
			],
		};
		const after = {
			layers: [
				{ name: "new", top: 0 },
				{ name: "a", top: 1 },
				{ name: "b", top: 3 },
			],
		};
		expect(changedEntries(before, after)).toEqual([
			{ kind: "added", after: ["layers", 0], to: { name: "new", top: 0 } },
			{ kind: "changed", before: ["layers", 1, "top"], after: ["layers", 2, "top"], from: 2, to: 3 },
		]);
	});
	it("one more item of a list without names is one entry added", () => {
		expect(changedEntries([1, 2, 4], [1, 2, 3, 4])).toEqual([{ kind: "added", after: [2], to: 3 }]);
		expect(changedEntries([1, 2, 3], [2, 3])).toEqual([{ kind: "removed", before: [0], from: 1 }]);
	});
	it("the order of a block's entries says nothing", () => {
		expect(changedEntries({ a: 1, b: 2 }, { b: 2, a: 1 })).toEqual([]);
	});
});
