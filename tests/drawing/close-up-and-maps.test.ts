import { describe, expect, it } from "vitest";
import { isolationCloseUp } from "../../src/drawing/close-up/isolation-close-up.ts";
import { layersAt } from "../../src/drawing/close-up/layers.ts";
import { planView } from "../../src/drawing/maps/plan-view.ts";
import { sectionView } from "../../src/drawing/maps/section-view.ts";
import { nesting } from "../../src/drawing/nesting.ts";
import { ENGLISH } from "../../src/drawing/words/en/index.ts";
import { findingsOf, starterText, understandText } from "../starters.ts";
import { groupsOf, labelsOf, outside, overlaps, textsOf } from "./boxes.ts";
import { LATERAL, syntheticWell } from "./synthetic-well.ts";

const options = { units: "field", width: 500, words: ENGLISH } as const;

describe("layers across the protected water", () => {
	const { well, results } = syntheticWell(LATERAL);
	const nest = nesting(well, { bore: 7, steel: 2.4, clearance: 1.2, step: 14.5, most: 66 });

	it("are found from the rock inward, cement only where it reaches", () => {
		const at = (tvd: number) =>
			layersAt(well, results, tvd, nest).map(({ kind, string }) => `${kind} ${string.id}`);
		expect(at(1010)).toEqual([
			"cement surface",
			"steel surface",
			"cement intermediate",
			"steel intermediate",
			"fluid production",
			"steel production",
		]);
		expect(at(60)[0]).toBe("cement conductor");
		expect(at(6000)).toEqual([
			"cement intermediate",
			"steel intermediate",
			"cement production",
			"steel production",
		]);
		expect(at(7000)).toEqual(["cement production", "steel production"]);
	});

	it("touch each other without gap or overlap", () => {
		const layers = layersAt(well, results, 1010, nest);
		layers.slice(1).forEach((layer, i) => {
			expect(layer.far).toBeCloseTo(layers[i]?.near ?? 0, 9);
			expect(layer.near).toBeLessThan(layer.far);
		});
	});

	it("are all listed, each with the number it has in the drawing", () => {
		const drawing = isolationCloseUp(well, results, { ...options, height: 440 });
		const listed = labelsOf(drawing).filter(({ name }) => /cement outside|steel,|fluid outside/.test(name));
		expect(listed).toHaveLength(6);
		const numbers = textsOf(drawing.shapes).filter((text) => /^[1-6]$/.test(text.text));
		expect(numbers.map((text) => text.text).sort()).toEqual([..."112233445566"]);
	});
});

describe("section", () => {
	it("is at one scale both ways", () => {
		const { well, results } = syntheticWell(LATERAL);
		const drawing = sectionView(well, results, { ...options, height: 480 });
		const ends = (name: string) =>
			groupsOf(drawing).find((group) => group.name === `leader ${name}`)?.shape.children[0];
		const start = (name: string): readonly [number, number] => {
			const line = ends(name);
			const [, x = "0", y = "0"] =
				line?.kind === "path" ? (/^M(-?[\d.]+)[, ](-?[\d.]+)/.exec(line.d) ?? []) : [];
			return [Number(x), Number(y)];
		};
		const [landing, total, kickoff] = [start("landing"), start("total depth"), start("kickoff")];
		const { landing: a, total_depth: b, kickoff: c } = results.trajectory;
		const across = (total[0] - landing[0]) / ((b.md.value ?? 0) - (a?.md.value ?? 0));
		const down = (landing[1] - kickoff[1]) / ((a?.tvd.value ?? 0) - (c?.tvd.value ?? 0));
		expect(across).toBeCloseTo(down, 3);
	});
});

describe("a neighbor that lies across the county", () => {
	const starter = starterText("horizontal");
	const moved = starter.replace("latitude: 31.484902", "latitude: 31.884902");
	const { findings } = understandText(moved);

	it("is named as left out, with how far it is, and not drawn", () => {
		expect(moved).not.toBe(starter);
		if (findings === undefined) throw new Error("the well has faults");
		const { well, results } = findings;
		const as = findingsOf("horizontal");
		for (const view of [sectionView, planView]) {
			const drawn = view(well, results, { ...options, height: 300 });
			expect(drawn.undrawn?.map(({ name }) => name)).toContain("Windmill well");
			expect(textsOf(drawn.shapes).map(({ text }) => text)).not.toContain("Windmill well");
			const near = view(as.well, as.results, { ...options, height: 300 });
			expect(textsOf(near.shapes).map(({ text }) => text)).toContain("Windmill well");
		}
	});
});

describe("a map with more places than its list has room for", () => {
	const many = (count: number, name: string) => {
		const entries = Array.from(
			{ length: count },
			(_, i) =>
				`    - { id: farm-${i}, kind: dwelling, name: ${name} ${i}, latitude: ${(31.49 + i * 0.0002).toFixed(4)}, longitude: -98.7715 }`,
		).join("\n");
		const { findings } = understandText(
			starterText("horizontal").replace(
				"  neighbors_complete: true",
				`${entries}\n  neighbors_complete: true`,
			),
		);
		if (findings === undefined) throw new Error("the changed starter has errors");
		return findings;
	};
	it.each(["full", "plain"] as const)(
		"keeps its room, draws the nearest and names the rest (%s)",
		(detail) => {
			const { well, results } = many(120, "House");
			const drawing = planView(well, results, { ...options, height: 400, detail });
			const scaleBar = groupsOf(drawing).find(({ name }) => name === "label scale bar");
			expect(scaleBar?.bounds.top).toBeGreaterThan(0.4 * 400);
			const drawn = drawing.undrawn?.map(({ name }) => name) ?? [];
			expect(drawn).toContain("House 119");
			expect(drawn).not.toContain("House 0");
			expect(outside(drawing)).toEqual([]);
			expect(overlaps(drawing)).toEqual([]);
		},
	);
	it.each(["full", "plain"] as const)("holds a name that is wider than its list (%s)", (detail) => {
		const { well, results } = many(2, "The House of the Long Name ".repeat(7).trim());
		expect(outside(planView(well, results, { ...options, height: 400, detail }))).toEqual([]);
	});
});

describe("the close-up in words", () => {
	it.each(["plain", "full"] as const)("%s: tells the base of protected water from the ground", (detail) => {
		const { well, results } = findingsOf("horizontal");
		const drawing = isolationCloseUp(well, results, { ...options, height: 440, detail });
		const told = drawing.alternative.replaceAll("\u00a0", " ");
		expect(told).toContain("984 ft below ground");
		// The same base from the rotary table, 26 ft above the ground.
		expect(told.includes("1,010 ft")).toBe(detail === "full");
	});
});

describe("names of places longer than the map is wide", () => {
	// No length is set by the schema: a name of several lines, one without a space, and all places at once.
	const long = (length: number, separator: string) =>
		Array.from({ length }, (_, i) => `Farmstead${i}`).join(separator);
	const { well, results } = findingsOf("horizontal");
	const named = <T extends { readonly name: string }>(entries: readonly T[], names: readonly string[]): T[] =>
		entries.map((entry, i) => ({ ...entry, name: names[i] ?? entry.name }));

	it.each([
		["of 60 letters", [long(6, " ")]],
		["of 200 letters", [long(20, " ")]],
		["of 1,000 letters without a space", [long(100, "")]],
		["of four places", Array.from({ length: 4 }, (_, i) => `${long(12, " ")} ${i}`)],
	])("%s keep within the frame, and each still tells how far it is", (_, names) => {
		const neighbors = named(results.site.neighbors, names);
		expect(neighbors.length).toBeGreaterThanOrEqual(names.length);
		const renamed = { ...results, site: { ...results.site, neighbors } };
		for (const detail of ["full", "plain"] as const) {
			const drawing = planView({ ...well, neighbors: named(well.neighbors, names) }, renamed, {
				...options,
				width: 504,
				height: 400,
				detail,
			});
			expect(outside(drawing)).toEqual([]);
			expect(overlaps(drawing)).toEqual([]);
			const printed = textsOf(drawing.shapes)
				.map(({ text }) => text)
				.join(" ")
				.replaceAll(/\s+/gu, " ");
			expect(printed.match(/from the well path/gu)?.length).toBe(neighbors.length);
		}
	});
});
