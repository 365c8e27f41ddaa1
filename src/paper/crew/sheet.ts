import type { Block, Cell } from "../../document/blocks.ts";
import type { CasingString } from "../../well/well.ts";
import type { PaperContext } from "../context.ts";
import { type Part, row, table, textColumn } from "../parts/part.ts";
import { brokenPairs } from "../parts/treating-pressure.ts";
import { SHEET_VALUES, type SheetLine } from "./numbers.ts";

/** A job whose sheet has this number is done under treating pressure. */
const TREATING = "maximum_treating_pressure";

interface SheetNumber {
	readonly value: string;
	readonly label: string;
	readonly critical: boolean;
	readonly large: boolean;
	readonly lines: readonly SheetLine[];
}

/** The numbers of today's job: the largest first, and whatever must not be missing said at the top. */
export const crewNumbers: Part = (context) => {
	const numbers = sheetNumbers(context);
	const missing = numbers.filter((number) => number.critical && number.lines.length === 0);
	const large = numbers.filter((number) => number.large && number.lines.length > 0);
	const rest = numbers.filter((number) => !large.includes(number));
	return [
		...missingCallout(missing, context),
		...(numbers.some(({ value }) => value === TREATING) ? brokenPairs(context) : []),
		...(large.length === 0
			? []
			: [
					{
						kind: "figures" as const,
						items: large.flatMap((n) =>
							n.lines.map((line) => ({ value: line.cell, label: `${labelOf(n, line)}${line.note ?? ""}` })),
						),
					},
				]),
		...table(
			context,
			"numbers",
			[
				textColumn(context, "what_to_know", { width: 2, rowHead: true }),
				textColumn(context, "value", { width: 3.5 }),
			],
			[
				...rest.flatMap((number) => linesOf(number, context)),
				row({
					what_to_know: { kind: "text", text: context.words.label("crew.wind_now") },
					value: { kind: "blank" },
				}),
				row({
					what_to_know: { kind: "text", text: context.words.label("crew.changed") },
					value: { kind: "blank" },
				}),
			],
		),
	];
};

/** The string that a job is done on. */
export const stringOf = (context: PaperContext): CasingString | undefined =>
	context.well.strings.find((string) => string.id === context.job?.string);

const sheetNumbers = (context: PaperContext): SheetNumber[] => {
	const job = context.jobs.find((entry) => entry.id === context.job?.id);
	const string = stringOf(context);
	return (job?.numbers ?? []).map((number) => {
		const find = SHEET_VALUES[number.value];
		if (find === undefined)
			throw new Error(`seeds/jobs/${job?.id}.yaml names no known value: "${number.value}"`);
		return {
			value: number.value,
			label: context.words.label(`crew.numbers.${number.value}`),
			critical: number.critical === true,
			large: number.large === true,
			lines: find(context, string),
		};
	});
};

const labelOf = (number: SheetNumber, line: SheetLine): string =>
	line.of === undefined ? number.label : `${number.label}: ${line.of}`;

const withNote = ({ cell, note }: SheetLine): Cell => {
	if (note === undefined) return cell;
	const tail = { kind: "text", text: note } as const;
	if (cell.kind === "rich") return { kind: "rich", children: [...cell.children, tail] };
	return cell.kind === "quantity" ? { kind: "rich", children: [cell, tail] } : cell;
};

const linesOf = (number: SheetNumber, context: PaperContext) => {
	const empty: Cell = number.critical
		? { kind: "unset", text: context.words.label("crew.not_set") }
		: { kind: "blank" };
	const lines: readonly SheetLine[] = number.lines.length > 0 ? number.lines : [{ cell: empty }];
	return lines.map((line) =>
		row({ what_to_know: { kind: "text", text: labelOf(number, line) }, value: withNote(line) }),
	);
};

const missingCallout = (missing: readonly SheetNumber[], context: PaperContext): Block[] =>
	missing.length === 0
		? []
		: [
				{
					kind: "callout",
					tone: "stop",
					title: context.words.label("crew.critical_title"),
					blocks: [
						{
							kind: "paragraph",
							children: [
								{
									kind: "text",
									text: `${context.words.label("crew.critical_missing")}: ${missing.map((number) => number.label).join("; ")}.`,
								},
							],
						},
					],
				},
			];

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
		context.words.steps(context.job.id).map((step) =>
			row({
				job_step: { kind: "text", text: step.step },
				hazard: { kind: "text", text: step.hazard },
				control: { kind: "text", text: step.control },
				stop_if: { kind: "text", text: step.stop_if },
			}),
		),
	);
};
