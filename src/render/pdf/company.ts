import type { Block } from "../../document/blocks.ts";
import { headHeight, lineHeight, planTable } from "./plan-table.ts";
import type { Scene } from "./scene.ts";

type Paragraph = Extract<Block, { kind: "paragraph" }>;

/** Characters that surely fill more than one line of body type. */
const LONG_PARAGRAPH = 110;
/** A table's caption, with the space below it, as a multiple of its type. */
const CAPTION = 1.6;
/** Rows that must stand below it. */
const LEAST_ROWS = 2;
/** Lines of a callout that must stand with its title. */
const CALLOUT_LINES = 3;

/**
 * Height that must stand on a page below a heading [pt], so that the heading is never the last thing there: the least
 * that its first block needs. Never more than that block has, for the engine counts on into the blocks behind it, and a
 * chain of headings with short texts would be dealt out a page each.
 */
export const company = (blocks: readonly Block[], scene: Scene): number => {
	const { design } = scene;
	const [first, ...rest] = blocks;
	const line = design.body * design.leading;
	switch (first?.kind) {
		case undefined:
		case "page-break":
			return 0;
		case "heading":
			return design.h3 * 1.22 + design.step * 2.6 + company(rest, scene);
		case "paragraph":
			return lengthOf(first.children) > LONG_PARAGRAPH
				? 2 * line
				: line + (leadsIn(first, rest) ? scene.gap + company(rest, scene) : 0);
		case "table": {
			const plan = planTable(first, scene);
			const caption = first.caption === scene.title ? 0 : plan.size * CAPTION;
			return (
				design.step * 0.6 +
				caption +
				headHeight(plan) +
				Math.min(LEAST_ROWS, first.rows.length) * lineHeight(plan)
			);
		}
		case "figure":
			return first.drawing.height;
		case "facts":
			return (
				(first.caption === undefined ? 0 : line) +
				Math.min(2, first.items.length) * (design.table * 1.28 + 2 * design.cellY)
			);
		case "callout":
			return CALLOUT_LINES * line;
		case "list":
			return line;
		case "figures":
			return design.figure.wish * 2 + design.note * 2;
		case "sign-in":
			return design.pencil * 2;
		case "contents":
			return 2 * line;
	}
};

const LED_IN: readonly (Block["kind"] | undefined)[] = ["list", "table", "sign-in"];

/** Whether a paragraph says in a line what the list, table or form behind it is, so that it must not be left without it. */
export const leadsIn = (block: Paragraph, following: readonly Block[]): boolean =>
	LED_IN.includes(following[0]?.kind) && lengthOf(block.children) <= LONG_PARAGRAPH;

const lengthOf = (children: Paragraph["children"]): number =>
	children.reduce((sum, child) => {
		if (child.kind === "text") return sum + child.text.length;
		return "children" in child ? sum + lengthOf(child.children) : sum + 8;
	}, 0);
