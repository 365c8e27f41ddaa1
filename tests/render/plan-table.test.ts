import { describe, expect, it } from "vitest";
import type { Column, Row } from "../../src/document/blocks.ts";
import { textWidth } from "../../src/measure/text-width.ts";
import { DESIGNS, MEASURE } from "../../src/render/pdf/design.ts";
import { planTable, type TableBlock } from "../../src/render/pdf/plan-table.ts";
import { sceneOf } from "../../src/render/pdf/scene.ts";
import { q, samplePaper } from "./sample-paper.ts";

const text = (id: string, head = id): Column => ({ id, head, width: 1, kind: "text" });
const row = (cells: Row["cells"]): Row => ({ cells });
const plan = (columns: readonly Column[], rows: readonly Row[], setting: "office" | "field" = "office") =>
	planTable(
		{ kind: "table", caption: "Planned", columns, rows } satisfies TableBlock,
		sceneOf(samplePaper(setting)),
	);
const total = (widths: readonly number[]): number => widths.reduce((sum, width) => sum + width, 0);
const t = (value: string) => ({ kind: "text", text: value }) as const;

describe("planTable", () => {
	const short = [row({ a: t("Windmill"), b: t("8,600") })];

	it("sets a table of few words on half the width, but one for the field or for writing on all of it", () => {
		expect(total(plan([text("a"), text("b")], short).widths)).toBeCloseTo(MEASURE / 2, 6);
		expect(total(plan([text("a"), text("b")], short, "field").widths)).toBeCloseTo(MEASURE, 6);
		expect(
			total(plan([text("a"), text("b")], [row({ a: t("Wind"), b: { kind: "blank" } })]).widths),
		).toBeCloseTo(MEASURE, 6);
	});

	it("takes the whole width where cells would have to break", () => {
		const long = [
			row({
				a: t("The well lies far below the water that people drink."),
				b: t("It is tested before it is used at all."),
			}),
		];
		expect(total(plan([text("a"), text("b")], long).widths)).toBeCloseTo(MEASURE, 6);
	});

	it("takes smaller type where words do not fit beside each other, and none smaller than 7 pt", () => {
		const columns = Array.from({ length: 8 }, (_, i) => text(`c${i}`));
		const words = (count: number) =>
			plan(columns, [row(Object.fromEntries(columns.map(({ id }) => [id, t("8".repeat(count))])))]);
		expect(words(8).size).toBe(DESIGNS.office.table);
		const tight = words(12);
		expect(tight.size).toBeLessThan(DESIGNS.office.table);
		expect(tight.size).toBeGreaterThan(7);
		expect(total(tight.widths)).toBeLessThanOrEqual(MEASURE + 1e-6);
		expect(words(16).size).toBe(7);
	});

	it("breaks a word as wide as a quarter of the page at its joints, rather than give it the page", () => {
		const key = "results.casing.surface.loads.tension-running.pipe_factor";
		const { widths } = plan(
			[text("a"), { ...text("b"), width: 4 }],
			[row({ a: t(key), b: t("Eight words ".repeat(20)) })],
		);
		expect(widths[0]).toBeLessThan(textWidth(key, { size: DESIGNS.office.table }));
	});

	it("parts text from the text or the numbers before it", () => {
		const columns: readonly Column[] = [
			text("a"),
			text("b"),
			{ id: "c", head: "c", width: 1, kind: "quantity" },
			text("d"),
		];
		const { lead, pad } = plan(columns, short);
		expect(lead[0]).toBe(pad.x);
		expect(lead[1]).toBeGreaterThan(pad.x);
		expect(lead[2]).toBe(pad.x);
		expect(lead[3]).toBeGreaterThan(lead[1] ?? 0);
	});

	it("keeps a number, its head and a verdict's words whole", () => {
		const columns: readonly Column[] = [
			{ ...text("a"), width: 40 },
			{ id: "n", head: "Depth", width: 1, kind: "quantity", dimension: "measured-depth" },
			{ id: "v", head: "Check", width: 1, kind: "verdict" },
		];
		const words = "The cement stands from the shoe to the ground. ".repeat(4);
		const { widths, size } = plan(columns, [
			row({
				a: t(words),
				n: q("measured-depth", 18_640),
				v: { kind: "verdict", verdict: "needs judgement" },
			}),
		]);
		expect(widths[1]).toBeGreaterThan(textWidth("18,640", { size }));
		expect(widths[2]).toBeGreaterThan(textWidth("engineer to confirm", { size, weight: "bold" }) + 10);
	});
});
