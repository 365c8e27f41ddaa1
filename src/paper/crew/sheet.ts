import type { Block, Cell } from "../../document/blocks.ts";
import { type PaperContext, textCell } from "../context.ts";
import type { Part } from "../parts/part.ts";
import { brokenPairs } from "../parts/treating-pressure.ts";
import { frontGoesOn } from "./goes-on.ts";
import { isDone, jobOf, stringOf } from "./job.ts";
import { SHEET_VALUES, type SheetLine } from "./numbers.ts";
import { NOT_APPLICABLE, withNote } from "./values/line.ts";

/** A job whose sheet has this number is done under treating pressure. */
const TREATING = "maximum_treating_pressure";
/** Stands in the head of the sheet. */
const LEADER = "person_in_charge";
/** As many as are read at arm's length. */
const LARGE = 5;

interface SheetNumber {
	readonly value: string;
	readonly label: string;
	readonly critical: boolean;
	readonly operating: boolean;
	/** Set large: each with the words under it. */
	readonly large: readonly { readonly cell: Cell; readonly label: string }[];
	/** Printed among the limits. */
	readonly limit: boolean;
	readonly lines: readonly SheetLine[];
}

/** The line of the meeting: when, led by whom, how many, what is other than last time. */
export const crewHead: Part = (context) => {
	const label = (key: string): string => context.words.label(`crew.${key}`);
	const leader = textCell(context.well.safety?.person_in_charge);
	const blank: Cell = { kind: "blank" };
	const unset: Cell = { kind: "unset", text: label("number_not_set") };
	return [
		{
			kind: "facts",
			columns: 3,
			items: [
				{ label: label("date"), value: blank },
				{ label: label("time"), value: blank },
				{ label: label("leader"), value: leader.kind !== "none" ? leader : isDone(context) ? blank : unset },
				{ label: label("heads"), value: blank },
				{ label: label("wind_now"), value: blank },
				{ label: label("changed"), value: blank },
			],
		},
	];
};

/** What must not be missing, and the five numbers of today at arm's length. */
export const crewFigures: Part = (context) => {
	const numbers = sheetNumbers(context);
	const items = numbers.flatMap(({ large }) => large).slice(0, LARGE);
	return [
		...(isDone(context) ? doneCallout(context) : missingCallouts(numbers, context)),
		...(numbers.some(({ value }) => value === TREATING) ? broken(context) : []),
		...(items.length === 0
			? []
			: [{ kind: "figures" as const, items: items.map(({ cell, label }) => ({ value: cell, label })) }]),
	];
};

/** Pressures out of order, each a reason to stop. */
const broken = (context: PaperContext): Block[] =>
	brokenPairs(context).map((block) =>
		block.kind === "callout"
			? { ...block, blocks: frontGoesOn(context, "pressures", block.blocks, 1) }
			: block,
	);

/** The other numbers of the job. */
export const crewNumbers: Part = (context) => {
	let room = LARGE;
	const items = sheetNumbers(context).flatMap((number) => {
		const isLarge = number.large.length > 0 && number.large.length <= room && number.lines.length > 0;
		room -= number.large.length;
		const whole = isLarge && number.lines.every(({ more }) => more !== true);
		return whole || number.limit || number.value === LEADER ? [] : itemsOf(number, context);
	});
	return items.length === 0 ? [] : frontGoesOn(context, "numbers", [{ kind: "facts", columns: 2, items }]);
};

const sheetNumbers = (context: PaperContext): SheetNumber[] => {
	const string = stringOf(context);
	return (jobOf(context)?.numbers ?? []).flatMap((number): SheetNumber[] => {
		const find = SHEET_VALUES[number.value];
		if (find === undefined)
			throw new Error(`the job ${context.job?.id} names no known value: "${number.value}"`);
		const lines = find(context, string);
		if (lines === NOT_APPLICABLE) return [];
		const label = context.words.label(`crew.numbers.${number.value}`);
		const large = lines.flatMap(
			(line) =>
				line.large ??
				(line.cell.kind === "text" ? [] : [{ cell: line.cell, label: underLarge(label, line) }]),
		);
		return [
			{
				value: number.value,
				label,
				critical: number.critical === true,
				operating: number.operating === true,
				large: number.large === true ? large : [],
				limit: number.limit === true,
				lines,
			},
		];
	});
};

const labelOf = (label: string, line: SheetLine): string =>
	line.of === undefined ? label : `${label}: ${line.of}`;

/** Under a large figure the label reads on from the number: `150 ft · Radios OFF this close to guns`. */
const underLarge = (label: string, line: SheetLine): string =>
	line.under ?? `${labelOf(label, line)}${line.note ?? ""}`;

/** A number that nobody set is no matter of a job that is done. */
const itemsOf = ({ label, critical, operating, lines }: SheetNumber, context: PaperContext) => {
	if (lines.length === 0 && isDone(context)) return [];
	const word = context.words.label;
	const empty: Cell = critical
		? { kind: "unset", text: word("crew.not_set") }
		: operating
			? { kind: "unset", text: word("crew.number_not_set") }
			: { kind: "blank" };
	const found: readonly SheetLine[] = lines.length > 0 ? lines : [{ cell: empty }];
	return found.map((line) => ({ label: labelOf(label, line), value: withNote(line) }));
};

const doneCallout = (context: PaperContext): Block[] => {
	const { label } = context.words;
	const on = context.job?.doneOn;
	return [
		{
			kind: "callout",
			tone: "caution",
			title: on === undefined ? label("crew.done") : label("crew.done_on").replace("{date}", on),
			blocks: [{ kind: "paragraph", children: [{ kind: "text", text: label("crew.done_means") }] }],
		},
	];
};

/** Numbers that nobody set, in a box: those without which the job must not start, and those that a step asks for. */
const missingCallouts = (numbers: readonly SheetNumber[], context: PaperContext): Block[] => {
	const missing = numbers.filter(({ lines }) => lines.length === 0);
	const box = (kind: "critical" | "operating", tone: "stop" | "caution"): Block[] => {
		const names = missing
			.filter((number) => (kind === "critical" ? number.critical : number.operating && !number.critical))
			.map(({ label }) => label);
		if (names.length === 0) return [];
		const text = `${context.words.label(`crew.${kind}_missing`)}: ${names.join("; ")}.`;
		return [
			{
				kind: "callout",
				tone,
				title: context.words.label(`crew.${kind}_title`),
				blocks: [{ kind: "paragraph", children: [{ kind: "text", text }] }],
			},
		];
	};
	return [...box("critical", "stop"), ...box("operating", "caution")];
};
