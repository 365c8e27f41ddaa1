import { describe, expect, it } from "vitest";
import type { Block, Cell, Column } from "../../src/document/blocks.ts";
import { PAPERS, type PaperDocument } from "../../src/document/document.ts";
import type { Inline, QuantityText } from "../../src/document/inline.ts";
import { jobName, jobsOfWell } from "../../src/paper/jobs.ts";
import type { PaperRequest } from "../../src/pipeline.ts";
import { formatQuantity, type UnitSystem } from "../../src/units/format.ts";
import { composeOnce } from "../run/compose-once.ts";
import { findingsOf, STARTERS, type Starter } from "../starters.ts";

/*
 * One quantity, one rounding: a number with a key is printed by the same digits wherever a paper prints it in one unit.
 * Told roundly ("about 7,900 ft", as to a room) it is one round number.
 */

const inlines = (some: readonly Inline[]): readonly QuantityText[] =>
	some.flatMap((each): readonly QuantityText[] =>
		each.kind === "quantity" ? [each] : "children" in each ? inlines(each.children) : [],
	);

const ofCell = (cell: Cell | undefined, column?: Column): readonly QuantityText[] => {
	if (cell?.kind === "rich") return inlines(cell.children);
	if (cell?.kind !== "quantity") return [];
	return column?.dimension === cell.dimension
		? [{ ...cell, style: { ...cell.style, ...column.style } }]
		: [cell];
};

const numbersOf = (blocks: readonly Block[]): readonly QuantityText[] =>
	blocks.flatMap((block): readonly QuantityText[] => {
		switch (block.kind) {
			case "paragraph":
				return inlines(block.children);
			case "list":
				return block.items.flatMap(numbersOf);
			case "facts":
			case "figures":
				return block.items.flatMap(({ value }) => ofCell(value));
			case "table":
				return block.rows.flatMap(({ cells }) =>
					block.columns.flatMap((column) => ofCell(cells[column.id], column)),
				);
			case "callout":
			case "columns":
				return numbersOf(block.blocks);
			case "beside":
				return numbersOf([...block.left, ...block.right]);
			default:
				return [];
		}
	});

const unitsOf = (starter: Starter): UnitSystem => (starter === "vertical-metric" ? "metric" : "field");

/** Every paper of a well, with the sheet of each of its jobs. */
const allPapers = (starter: Starter): readonly PaperDocument[] => {
	const findings = findingsOf(starter);
	const common = { language: "en", units: unitsOf(starter) } as const;
	const requests: readonly PaperRequest[] = [
		...PAPERS.filter((paper) => paper !== "crew").map((paper) => ({ paper, ...common })),
		...jobsOfWell(findings.well).map((job) => ({ paper: "crew" as const, job: jobName(job), ...common })),
	];
	return composeOnce(findings, requests).documents.map(({ paper }) => paper);
};

const isRound = ({ style }: QuantityText): boolean =>
	style?.significant !== undefined || style?.spoken === true;

/** By key and unit, the digits printed, and the papers that print them. */
const printedBy = (
	starter: Starter,
	keep: (quantity: QuantityText) => boolean,
): ReadonlyMap<string, ReadonlyMap<string, ReadonlySet<string>>> => {
	const units = unitsOf(starter);
	const found = new Map<string, Map<string, Set<string>>>();
	for (const paper of allPapers(starter))
		for (const quantity of paper.sections.flatMap(({ blocks }) => numbersOf(blocks))) {
			if (quantity.key === undefined || !keep(quantity)) continue;
			const { number, unit } = formatQuantity(
				{ ...quantity, style: { ...quantity.style, bare: false, unsigned: true } },
				units,
			);
			const key = `${quantity.key} [${unit}]`;
			const digits = found.get(key) ?? new Map<string, Set<string>>();
			digits.set(number, (digits.get(number) ?? new Set()).add(paper.paper));
			found.set(key, digits);
		}
	return found;
};

/** Printed more coarsely in one place on purpose. Anything else is a fault. */
const COARSER: readonly (readonly [key: RegExp, why: string])[] = [
	[
		/hook_load\.|least_net_force\.force|surface_pressure/u,
		"tables of loads round; a finding has what is compared",
	],
	[/fracture\.margin/u, "a margin is told in whole psi; a finding on it, as it is compared"],
	[/stages\.\d+\.(?:clean_volume|steps\.\d+\.clean_volume)/u, "the pump schedule is in whole barrels"],
	[/standoff\.\d+\.between|gas_flow\./u, "an appendix has it in whole numbers; a finding, as it is compared"],
	[/additives\.[\w-]+\.density/u, "the pump schedule has every fluid to 0.1 lb/gal"],
	[/stimulation\.returned\./u, "an estimate is told to 100 bbl"],
	[/neighbors\.[\w-]+\.from_wellhead/u, "the public's table of noise is in tens of feet"],
	[/disclosure\./u, "the registry of ingredients takes five decimals"],
];

const FRACTIONS: Readonly<Record<string, number>> = {
	"⅛": 1 / 8,
	"¼": 1 / 4,
	"⅜": 3 / 8,
	"½": 1 / 2,
	"⅝": 5 / 8,
	"¾": 3 / 4,
	"⅞": 7 / 8,
};

/** The number that digits say: 13⅜ and 13.375 are one, and so are 1.1 and 1.10. */
const numberOf = (digits: string): number => {
	const sixteenths = digits.match(/(?:(\d+)\u00a0)?(\d+)\/16$/u);
	if (sixteenths !== null) return Number(sixteenths[1] ?? 0) + Number(sixteenths[2]) / 16;
	const glyph = FRACTIONS[digits.at(-1) ?? ""];
	return (
		Number((glyph === undefined ? digits : digits.slice(0, -1) || "0").replaceAll(",", "")) + (glyph ?? 0)
	);
};

const differing = (starter: Starter, keep: (quantity: QuantityText) => boolean): readonly string[] =>
	[...printedBy(starter, keep)]
		.filter(([key, digits]) => {
			const said = new Set([...digits.keys()].map(numberOf));
			return said.size > 1 && !COARSER.some(([pattern]) => pattern.test(key));
		})
		.map(
			([key, digits]) =>
				`${key}: ${[...digits].map(([n, on]) => `${n} (${[...on].join(", ")})`).join(" / ")}`,
		);

describe.each(STARTERS)("a quantity of %s", (starter) => {
	it("is in many papers", () => {
		const shared = [...printedBy(starter, () => true).values()].filter(
			(digits) => new Set([...digits.values()].flatMap((on) => [...on])).size > 2,
		);
		expect(shared.length).toBeGreaterThan(10);
	});

	it("has no exception that is not needed", () => {
		const all = STARTERS.flatMap((each) => [...printedBy(each, (quantity) => !isRound(quantity))]);
		const more = all.filter(([, digits]) => new Set([...digits.keys()].map(numberOf)).size > 1);
		for (const [pattern, why] of COARSER)
			expect([why, more.some(([key]) => pattern.test(key))]).toEqual([why, true]);
	});

	it("is printed by the same digits in one unit, wherever it is printed", () => {
		expect(differing(starter, (quantity) => !isRound(quantity))).toEqual([]);
	});
});
