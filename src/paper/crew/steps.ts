import type { Cell } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import { isGrouted } from "../../well/grouted.ts";
import type { PaperContext } from "../context.ts";
import { type Part, row, table, textColumn } from "../parts/part.ts";
import { frontGoesOn } from "./goes-on.ts";
import { inPaperWords, isDone, jobOf, stringOf } from "./job.ts";
import { SHEET_VALUES } from "./numbers.ts";

const landsPlug = (context: PaperContext): boolean => {
	const string = stringOf(context);
	return string === undefined || !isGrouted(string);
};

/** A step's words with the numbers of the sheet in their places: `Land the string at {string_shoe_md}`. */
const withNumbers = (context: PaperContext, text: string): Cell => {
	const parts = text.split(/\{([a-z_]+)\}/u);
	if (parts.length === 1) return { kind: "text", text };
	const children = parts.flatMap((part, i): readonly Inline[] => {
		if (i % 2 === 0) return part === "" ? [] : [{ kind: "text", text: part }];
		const find = SHEET_VALUES[part];
		if (find === undefined) throw new Error(`a step of ${context.job?.id} names no known value: "${part}"`);
		const lines = find(context, stringOf(context));
		const { label } = context.words;
		if (lines.length === 0)
			return [{ kind: "text", text: label(isDone(context) ? "crew.as_recorded" : "crew.number_not_set") }];
		return lines.flatMap(({ of, cell }, k) => [
			...(k === 0 ? [] : [{ kind: "text", text: "; " } as const]),
			...(of === undefined ? [] : [{ kind: "text", text: `${of} ` } as const]),
			...inlineOf(cell).map(bold),
		]);
	});
	return { kind: "rich", children: joined(children) };
};

/** What a hand looks for in a step is its number. */
const bold = (inline: Inline): Inline =>
	inline.kind === "quantity" ? { kind: "strong", children: [inline] } : inline;

/** Words that follow each other as one run: a line may end between two runs, and would part a full stop from its word. */
const joined = (children: readonly Inline[]): readonly Inline[] => {
	const runs: Inline[] = [];
	for (const each of children) {
		const last = runs.at(-1);
		if (each.kind === "text" && last?.kind === "text")
			runs[runs.length - 1] = { kind: "text", text: last.text + each.text };
		else runs.push(each);
	}
	return runs;
};

const inlineOf = (cell: Cell): readonly Inline[] => {
	if (cell.kind === "rich") return cell.children;
	if (cell.kind === "quantity") return [cell];
	return cell.kind === "text" ? [{ kind: "text", text: cell.text }] : [];
};

/** What is done, what can hurt us, what we do about it, and when we stop. */
export const crewSteps: Part = (context) => {
	const said = (words: Parameters<typeof inPaperWords>[1]): Cell =>
		withNumbers(context, inPaperWords(context, words));
	return frontGoesOn(
		context,
		"steps",
		table(
			context,
			"steps",
			[
				textColumn(context, "job_step", { width: 2, rowHead: true }),
				textColumn(context, "hazard", { width: 1.7 }),
				textColumn(context, "control", { width: 3.2 }),
				textColumn(context, "stop_if", { width: 2 }),
			],
			(jobOf(context)?.steps ?? [])
				.filter(({ needs }) => needs !== "plug" || landsPlug(context))
				.map((step, i) =>
					row({
						job_step: numbered(i, said(step.step)),
						hazard: said(step.hazard),
						control: said(step.control),
						stop_if: said(step.stop_if),
					}),
				),
			{ id: "steps" },
		),
	);
};

const numbered = (i: number, cell: Cell): Cell =>
	cell.kind === "text"
		? { kind: "text", text: `${i + 1}. ${cell.text}` }
		: { kind: "rich", children: [{ kind: "text", text: `${i + 1}. ` }, ...inlineOf(cell)] };
