import { describe, expect, it } from "vitest";
import type { Shape } from "../../src/document/shapes.ts";
import { contrast, TARGET_TINT, VERMILLION } from "../../src/drawing/palette.ts";
import type { Detail } from "../../src/drawing/schematic/view.ts";
import { wellboreSchematic } from "../../src/drawing/schematic/wellbore-schematic.ts";
import { ENGLISH } from "../../src/drawing/words/en/index.ts";
import { findingsOf } from "../starters.ts";
import { boundsOf, groupsOf, pathPoints, textsOf } from "./boxes.ts";
import { LATERAL, syntheticWell, type WellSpec } from "./synthetic-well.ts";

const DETAILS: readonly Detail[] = ["full", "plain", "numbers"];

const draw = (spec: WellSpec, detail: Detail, units: "field" | "metric" = "field") => {
	const { well, results } = syntheticWell(spec);
	return {
		well,
		results,
		drawing: wellboreSchematic(well, results, { units, width: 500, height: 640, detail, words: ENGLISH }),
	};
};

describe("wellbore schematic of a two-mile lateral", () => {
	const { drawing } = draw(LATERAL, "full");
	const said = (name: string): string =>
		groupsOf(drawing)
			.filter((group) => group.name === `label ${name}`)
			.flatMap(({ shape }) => textsOf(shape.children))
			.map((text) => text.text)
			.join(" ")
			.replaceAll("\u00a0", " ");

	it("names each string with its pipe, its shoe and its cement", () => {
		expect(said("string surface")).toContain(
			"Surface casing 13⅜ in · 40.00 lb/ft · L80 · BTC Shoe 1,185 ft MD · 1,185 ft TVD",
		);
		expect(said("string surface")).toContain("175 ft below the base of protected water");
		expect(said("cement production")).toContain("5,400 ft MD · 5,400 ft TVD, planned");
		expect(said("total depth")).toBe("Total depth 17,260 ft MD 8,933 ft TVD");
		expect(said("stages")).toBe("39 stages, 234 clusters, 38 plugs not drawn");
	});

	it("has measured depths along the lateral, headed by their unit and in their places", () => {
		expect(said("measured")).toBe("MD, ft");
		const marks = groupsOf(drawing).flatMap(({ name, bounds }) => {
			const value = /^label measured (\d+)$/u.exec(name)?.[1];
			return value === undefined ? [] : [{ value: Number(value), x: (bounds.left + bounds.right) / 2 }];
		});
		expect(marks.map(({ value }) => value)).toEqual([12_000, 14_000, 16_000]);
		const steps = marks.slice(1).map(({ x }, i) => x - (marks[i]?.x ?? 0));
		expect(Math.max(...steps) - Math.min(...steps)).toBeLessThan(0.5);
		const metric = groupsOf(draw(LATERAL, "full", "metric").drawing).map(({ name }) => name);
		expect(metric).toContain("label measured 4000");
	});

	it("has a wellhead over the ground with a hanger for each string inside another, but not for the public", () => {
		const wellhead = (detail: Detail) => {
			const { well, drawing: drawn } = draw(LATERAL, detail);
			const [found] = groupsOf(drawn).filter(({ name }) => name === "wellhead");
			return { inside: well.strings.filter(({ within }) => within !== undefined).length, found };
		};
		for (const detail of ["full", "numbers"] as const) {
			const { inside, found } = wellhead(detail);
			const wedges = found?.shape.children.filter(
				(shape) => shape.kind === "path" && shape.stroke === undefined,
			);
			expect(wedges).toHaveLength(2 * inside);
		}
		expect(wellhead("plain").found?.shape.children ?? []).toEqual([]);
	});

	it("says where its scale changes and that widths are not to scale", () => {
		expect(said("break 1")).toMatch(/^scale break, \d\.\d × smaller below$/);
		expect(said("break 2")).toMatch(/× larger below$/);
		expect(drawing.scale).toContain("not to scale");
		expect(said("note 1")).toBe(drawing.scale);
	});

	it("tells the same to a reader who cannot see it", () => {
		const told = drawing.alternative.replaceAll("\u00a0", " ");
		expect(told).toContain(
			"Production casing, 5½ in, shoe at 17,245 ft MD · 8,933 ft TVD; cement top at 5,400 ft MD",
		);
		expect(told).toContain("The surface casing shoe is 175 ft below it.");
		expect(told).not.toMatch(/undefined|NaN|\{/);
	});

	it("sets words in colors that can be read on white, and marks lines that survive a scan", () => {
		for (const detail of DETAILS)
			for (const text of textsOf(draw(LATERAL, detail).drawing.shapes)) {
				expect(contrast(text.color, "#ffffff"), text.text).toBeGreaterThanOrEqual(4.5);
				expect(text.size).toBeGreaterThanOrEqual(7);
			}
	});

	it("keys the values it prints", () => {
		const { well, results } = syntheticWell(LATERAL);
		const total = results.trajectory.total_depth.md;
		const keyed = wellboreSchematic(well, results, {
			units: "field",
			width: 500,
			height: 640,
			detail: "full",
			words: ENGLISH,
			keyOf: (value) => (value === total ? "results.trajectory.total_depth.md" : undefined),
		});
		const [text] = textsOf(keyed.shapes).filter((each) => each.key !== undefined);
		expect(text).toMatchObject({ key: "results.trajectory.total_depth.md", text: "17,260\u00a0ft" });
	});

	it("draws the public's figure at one scale", () => {
		const { drawing: plain } = draw(LATERAL, "plain");
		expect(groupsOf(plain).some(({ name }) => name.startsWith("label break"))).toBe(false);
		expect(plain.scale).toMatch(/^Depth is to scale\./);
	});
});

describe("the public's drawing of a lateral", () => {
	it.each(["horizontal", "horizontal-as-built"] as const)(
		"%s: draws no opening beyond the bed that is treated, up into the bed that is to hold the fluid",
		(starter) => {
			const { well, results } = findingsOf(starter);
			const drawing = wellboreSchematic(well, results, {
				units: "field",
				width: 500,
				height: 640,
				detail: "plain",
				words: ENGLISH,
			});
			const inGroup = (name: string) =>
				groupsOf(drawing).flatMap((group) => (group.name === name ? group.shape.children : []));
			const bed = tintOf(inGroup("ground"));
			const strokes = inGroup("well").flatMap((shape) =>
				shape.kind === "path" && shape.stroke?.color === VERMILLION ? pathPoints(shape.d) : [],
			);
			expect(strokes.length).toBeGreaterThan(20);
			for (const [, y] of strokes) {
				expect(y).toBeGreaterThanOrEqual(bed.top - 0.02);
				expect(y).toBeLessThanOrEqual(bed.bottom + 0.02);
			}
		},
	);

	it("says that the well is drawn wider than it is", () => {
		expect(draw(LATERAL, "plain").drawing.scale).toContain("the well is drawn far wider than it is");
	});
});

/** Where the target is tinted: as high and as low as the bed goes. */
const tintOf = (shapes: readonly Shape[]): { readonly top: number; readonly bottom: number } => {
	const boxes = shapes.flatMap((shape) =>
		shape.kind === "path" && shape.fill === TARGET_TINT ? boundsOf(shape) : [],
	);
	expect(boxes.length).toBeGreaterThan(0);
	return {
		top: Math.min(...boxes.map(({ top }) => top)),
		bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
	};
};
