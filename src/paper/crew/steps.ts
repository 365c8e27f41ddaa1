import type { Block, Cell } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import { isGrouted } from "../../well/grouted.ts";
import type { PaperContext } from "../context.ts";
import { type Part, row, table, textColumn } from "../parts/part.ts";
import { SHEET_VALUES } from "./numbers.ts";
import { stringOf } from "./sheet.ts";
import { NOT_APPLICABLE } from "./values/line.ts";

/** Whether a value has a meaning in this job: of a string that lands no plug, the pressure of landing one has none. */
const applies = (context: PaperContext, value: string): boolean =>
	SHEET_VALUES[value]?.(context, stringOf(context)) !== NOT_APPLICABLE;

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
		if (lines.length === 0) return [{ kind: "text", text: context.words.label("crew.number_not_set") }];
		return lines.flatMap(({ of, cell }, k) => [
			...(k === 0 ? [] : [{ kind: "text", text: "; " } as const]),
			...(of === undefined ? [] : [{ kind: "text", text: `${of} ` } as const]),
			...inlineOf(cell),
		]);
	});
	return { kind: "rich", children: joined(children) };
};

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

/** Questions asked back. Each has its answer on the first page: a job's data names which values those are. */
export const crewAskBack: Part = (context) => {
	const job = context.jobs.find((entry) => entry.id === context.job?.id);
	if (job === undefined) return [];
	const questions = job.ask.filter(({ answers }) => answers.some((value) => applies(context, value)));
	return [
		{ kind: "heading", level: 3, text: context.words.label("crew.ask_back") },
		{
			kind: "list",
			ordered: true,
			items: questions.map(({ question }): readonly Block[] => [
				{
					kind: "paragraph",
					children: [{ kind: "text", text: context.words.label(`crew.ask.${question}`) }],
				},
			]),
		},
	];
};

export const crewSteps: Part = (context) => {
	if (context.job === undefined) return [];
	return table(
		context,
		"steps",
		[
			textColumn(context, "job_step", { width: 2.2, rowHead: true }),
			textColumn(context, "hazard", { width: 1.8 }),
			textColumn(context, "control", { width: 2.8 }),
			textColumn(context, "stop_if", { width: 1.8 }),
		],
		context.words
			.steps(context.job.id)
			.filter(({ needs }) => needs !== "plug" || landsPlug(context))
			.map((step) =>
				row({
					job_step: withNumbers(context, step.step),
					hazard: withNumbers(context, step.hazard),
					control: withNumbers(context, step.control),
					stop_if: withNumbers(context, step.stop_if),
				}),
			),
	);
};
