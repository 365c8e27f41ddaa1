import type { Block, Cell } from "../../document/blocks.ts";
import type { CasingString } from "../../well/well.ts";
import type { PaperContext } from "../context.ts";
import { type Part, row, table, textColumn } from "../parts/part.ts";
import { brokenPairs } from "../parts/treating-pressure.ts";
import { SHEET_VALUES, type SheetLine } from "./numbers.ts";
import { NOT_APPLICABLE, withNote } from "./values/line.ts";

/** A job whose sheet has this number is done under treating pressure. */
const TREATING = "maximum_treating_pressure";

interface SheetNumber {
	readonly value: string;
	readonly label: string;
	readonly critical: boolean;
	readonly operating: boolean;
	readonly large: boolean;
	readonly lines: readonly SheetLine[];
}

/** More rows than this stand on one page in smaller type only. */
const MOST_ROWS = 12;

/** The numbers of today's job: the largest first, and whatever must not be missing said at the top. */
export const crewNumbers: Part = (context) => {
	const numbers = sheetNumbers(context);
	const missing = numbers.filter((number) => number.critical && number.lines.length === 0);
	const large = numbers.filter((number) => number.large && number.lines.length > 0);
	const rest = numbers.filter((number) => !large.includes(number));
	const rows = [
		...rest.flatMap((number) => linesOf(number, context)),
		row({
			what_to_know: { kind: "text", text: context.words.label("crew.wind_now") },
			value: { kind: "blank" },
		}),
		row({
			what_to_know: { kind: "text", text: context.words.label("crew.changed") },
			value: { kind: "blank" },
		}),
	];
	return [
		...missingCallout(missing, context),
		...(numbers.some(({ value }) => value === TREATING) ? brokenPairs(context) : []),
		...(large.length === 0
			? []
			: [
					{
						kind: "figures" as const,
						items: large.flatMap((n) =>
							n.lines.map((line) => ({ value: line.cell, label: underLarge(n, line) })),
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
			rows,
			{ dense: rows.length > MOST_ROWS },
		),
	];
};

/** The string that a job is done on. */
export const stringOf = (context: PaperContext): CasingString | undefined =>
	context.well.strings.find((string) => string.id === context.job?.string);

const sheetNumbers = (context: PaperContext): SheetNumber[] => {
	const job = context.jobs.find((entry) => entry.id === context.job?.id);
	const string = stringOf(context);
	return (job?.numbers ?? []).flatMap((number): SheetNumber[] => {
		const find = SHEET_VALUES[number.value];
		if (find === undefined)
			throw new Error(`seeds/jobs/${job?.id}.yaml names no known value: "${number.value}"`);
		const lines = find(context, string);
		if (lines === NOT_APPLICABLE) return [];
		return [
			{
				value: number.value,
				label: context.words.label(`crew.numbers.${number.value}`),
				critical: number.critical === true,
				operating: number.operating === true,
				large: number.large === true && lines.every(({ cell }) => cell.kind !== "text"),
				lines,
			},
		];
	});
};

const labelOf = (number: SheetNumber, line: SheetLine): string =>
	line.of === undefined ? number.label : `${number.label}: ${line.of}`;

/** Under a large figure the label reads on from the number: `150 ft · Radios OFF this close to guns`. */
const underLarge = (number: SheetNumber, line: SheetLine): string =>
	line.under ?? `${labelOf(number, line)}${line.note ?? ""}`;

const linesOf = (number: SheetNumber, context: PaperContext) => {
	const { label } = context.words;
	const empty: Cell = number.critical
		? { kind: "unset", text: label("crew.not_set") }
		: number.operating
			? { kind: "unset", text: label("crew.number_not_set") }
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
