import { isTable, type Known, type KnownTable } from "../../cite/known.ts";
import type { ChangedInput } from "../../compare/changed-inputs.ts";
import { type ChangedVerdict, isWorse } from "../../compare/changed-verdicts.ts";
import type { Changes } from "../../compare/compare.ts";
import type { MovedResult } from "../../compare/moved-results.ts";
import { toldChange, toldInput, toldValue } from "../../compare/tell.ts";
import { mayAppear } from "../../definition/privacy.ts";
import type { Block, Cell, Column, Row } from "../../document/blocks.ts";
import { type Message, type MessageCode, message } from "../../messages/message.ts";
import { capital, tell, tellSaid } from "../../messages/print.ts";
import { EVERY_FORMULA } from "../../rules/every-formula.ts";
import type { Finding } from "../../rules/finding.ts";
import { type PaperContext, readerOf, saidCell, shown, textCell } from "../context.ts";
import { because, subjectText } from "../parts/rule-checks.ts";

/** What the parts of the paper of changes are made from. */
export interface ChangeContext {
	readonly paper: PaperContext;
	readonly changes: Changes;
	/** Where the regulator's paper prints a value, as `6 Hole and casing`. */
	readonly printedAt: (key: string) => string | undefined;
	/** Its sections, in their order. */
	readonly sections: readonly string[];
}

type ChangePart = (context: ChangeContext) => readonly Block[];

const said = ({ paper }: Pick<ChangeContext, "paper">, words: Message): string =>
	tell(words, readerOf(paper));

const column = (
	context: Pick<ChangeContext, "paper">,
	id: string,
	code: MessageCode & `compare/${string}`,
	width: number,
	more: Partial<Column> = {},
): Column => ({
	id,
	head: tell({ code, facts: {} }, readerOf(context.paper)),
	kind: "text",
	width,
	...more,
});

const tableOf = (
	caption: string,
	columns: readonly Column[],
	rows: readonly Row[],
	note?: string,
): Block[] => {
	if (rows.length === 0) return [];
	const used = columns.filter(({ id }) => rows.some(({ cells }) => (cells[id]?.kind ?? "none") !== "none"));
	return [
		{
			kind: "table",
			caption,
			columns: used,
			rows,
			dense: true,
			...(note === undefined ? {} : { note: [{ kind: "text", text: note }] }),
		},
	];
};

/** Whether the agency may read of an input: what either state of the definition keeps from it stays kept. */
const mayBeTold = (input: ChangedInput, { before, after }: Changes): boolean => {
	if (input.what !== "entry") return true;
	return (
		(input.before === undefined || mayAppear("regulator", input.before, before.written)) &&
		(input.after === undefined || mayAppear("regulator", input.after, after.written))
	);
};

const printedResults = ({ changes, printedAt }: ChangeContext): readonly MovedResult[] =>
	changes.results.moved.filter(({ key }) => printedAt(key) !== undefined);

const summary: ChangePart = (context) => {
	const { paper, changes } = context;
	const [old, now] = [changes.before.well.identity, changes.after.well.identity];
	const last = now.revisions?.at(-1);
	const inputs = changes.inputs.filter((input) => mayBeTold(input, changes)).length;
	const verdicts = changes.verdicts.filter(({ turn }) => turn !== "margin").length;
	const results = printedResults(context).length;
	const tally = said(context, message("compare/tally-of", { inputs, verdicts, results }));
	const items: readonly (readonly [MessageCode & `compare/${string}`, string | undefined])[] = [
		["compare/revision", `${old.revisions?.at(-1)?.id ?? "–"} → ${last?.id ?? "–"}`],
		["compare/ids", `${changes.before.digest} → ${changes.after.digest}`],
		["compare/issued", `${old.issued} → ${now.issued}`],
		["compare/why", last?.why],
		["compare/tally", tally],
	];
	return [
		{
			kind: "facts",
			columns: 2,
			items: items.flatMap(([code, text]) =>
				text === undefined
					? []
					: [{ label: tell({ code, facts: {} }, readerOf(paper)), value: textCell(text) }],
			),
		},
		...(old.name === now.name
			? []
			: [paragraph(said(context, message("compare/other-well", { before: old.name, after: now.name })))]),
	];
};

const paragraph = (text: string): Block => ({ kind: "paragraph", children: [{ kind: "text", text }] });

/** Findings that ask more of the reader than before stand on page 1, each with its sentence. */
const worse: ChangePart = (context) => {
	const found = context.changes.verdicts.filter(isWorse);
	if (found.length === 0) return [];
	return [
		{
			kind: "callout",
			tone: "caution",
			title: said(context, message("compare/worse", { count: found.length })),
			blocks: [
				{
					kind: "list",
					ordered: false,
					items: found.flatMap(({ after }) =>
						after === undefined
							? []
							: [
									[
										{
											kind: "paragraph" as const,
											children: [
												{ kind: "text" as const, text: `${ruleOf(after, context)}: ` },
												...because(after, context.paper),
											],
										},
									],
								],
					),
				},
			],
		},
	];
};

const ruleOf = ({ cite, subject }: Finding, { paper }: ChangeContext): string =>
	`${tellSaid(cite.citation, readerOf(paper))}, ${subjectText(subject, paper)}`;

/** Numbered as everywhere else, though what the agency may not read is left out of the list. */
const inputs: ChangePart = (context) => {
	const { changes } = context;
	const count = changes.inputs.filter((input) => mayBeTold(input, changes)).length;
	return inputsTable(context, said(context, message("compare/inputs", { count })));
};

/**
 * Every changed input that the agency may read of, under a caption.
 *
 * @param isShown  of those, which ones; they keep their numbers
 */
export const inputsTable = (
	context: Pick<ChangeContext, "paper" | "changes">,
	caption: string,
	isShown: (input: ChangedInput) => boolean = () => true,
): Block[] => {
	const { paper, changes } = context;
	const english = paper.words.language === "en";
	return tableOf(
		caption,
		[
			column(context, "number", "compare/number", 0.5, { rowHead: true }),
			column(context, "input", "compare/input", 3.2),
			...(english ? [column(context, "what", "compare/what", 2.2)] : []),
			column(context, "was", "compare/was", 2),
			column(context, "is", "compare/is", 2),
		],
		changes.inputs.flatMap((input, i): readonly Row[] => {
			if (!mayBeTold(input, changes) || !isShown(input)) return [];
			const { name, title, was, is, note } = toldInput(input, changes, readerOf(paper));
			const remark = note === undefined ? undefined : `(${note})`;
			const [before, after] = [was ?? (is === undefined ? undefined : remark), is ?? remark];
			const doubled = was !== undefined && is !== undefined && remark !== undefined;
			return [
				{
					cells: {
						number: textCell(String(i + 1)),
						input: textCell(name),
						what: textCell(title),
						was: textCell(before),
						is: textCell(doubled ? `${after} ${remark}` : after),
					},
				},
			];
		}),
	);
};

const verdictCell = (finding: Finding | undefined): Cell =>
	finding === undefined ? { kind: "none" } : { kind: "verdict", verdict: finding.verdict };

const findings: ChangePart = (context) => {
	const turned = context.changes.verdicts.filter(({ turn }) => turn !== "margin");
	return tableOf(
		said(context, message("compare/verdicts", { count: turned.length })),
		[
			column(context, "requirement", "compare/requirement", 2, { rowHead: true }),
			column(context, "was", "compare/was", 1.2, { kind: "verdict" }),
			column(context, "is", "compare/is", 1.2, { kind: "verdict" }),
			column(context, "because", "compare/because", 3.6),
		],
		turned.flatMap((each) => findingRow(each, context)),
	);
};

const findingRow = ({ before, after }: ChangedVerdict, context: ChangeContext): readonly Row[] => {
	const of = after ?? before;
	if (of === undefined) return [];
	return [
		{
			cells: {
				requirement: textCell(ruleOf(of, context)),
				was: verdictCell(before),
				is: verdictCell(after),
				because:
					after === undefined
						? textCell(said(context, message("compare/no-longer")))
						: { kind: "rich", children: because(after, context.paper) },
			},
		},
	];
};

const margins: ChangePart = (context) => {
	const moved = context.changes.verdicts.filter(({ turn }) => turn === "margin");
	return tableOf(
		said(context, message("compare/margins", { count: moved.length })),
		[
			column(context, "requirement", "compare/requirement", 3, { rowHead: true }),
			column(context, "was", "compare/margin-was", 1.1, { align: "end" }),
			column(context, "is", "compare/margin-is", 1.1, { align: "end" }),
			column(context, "because", "compare/because", 4),
		],
		moved.flatMap(({ before, after }): readonly Row[] =>
			before?.margin === undefined || after?.margin === undefined
				? []
				: [
						{
							cells: {
								requirement: textCell(ruleOf(after, context)),
								was: plain(before.margin),
								is: shown(context.paper, after.margin),
								because: { kind: "rich", children: because(after, context.paper) },
							},
						},
					],
		),
	);
};

/** A value of the earlier state: printed as any other, and known by no key of this one. */
const plain = ({ dimension, value }: Known): Cell => ({ kind: "quantity", dimension, value });

const missing: ChangePart = (context) =>
	tableOf(
		said(context, message("compare/gaps", { count: context.changes.gaps.length })),
		[column(context, "input", "compare/input", 1, { rowHead: true })],
		context.changes.gaps.map(({ kind, what }) => ({
			cells: {
				input: saidCell(
					context.paper,
					kind === "added"
						? message("compare/now-missing", { what })
						: message("compare/now-given", { what }),
				),
			},
		})),
	);

const deadlines: ChangePart = (context) =>
	tableOf(
		said(context, message("compare/days", { count: context.changes.days.length })),
		[
			column(context, "deadline", "compare/deadline", 4, { rowHead: true }),
			column(context, "was", "compare/was", 1),
			column(context, "is", "compare/is", 1),
		],
		context.changes.days.flatMap(({ before, after }): readonly Row[] => {
			const of = after ?? before;
			if (of === undefined) return [];
			const words = context.paper.words.requirement(of.rule, of.requirement);
			return [
				{
					cells: {
						deadline: textCell(`${tellSaid(of.citation, readerOf(context.paper))}: ${words}`),
						was: textCell(before?.due),
						is: textCell(after?.due),
					},
				},
			];
		}),
	);

/** In groups by the section of the regulator's paper that prints them first, as a reader of that paper looks them up. */
const results: ChangePart = (context) => {
	const { changes, printedAt, sections } = context;
	const printed = printedResults(context);
	const further = changes.results.moved.length - printed.length;
	const { compared } = changes.results;
	const groups = sections.flatMap((section): readonly Row[] => {
		const within = printed.filter(({ key }) => printedAt(key) === section);
		if (within.length === 0) return [];
		return [
			{ cells: { result: textCell(section) }, emphasis: "group" },
			...within.map((moved) => resultRow(moved, context)),
		];
	});
	return tableOf(
		said(context, message("compare/results", { moved: printed.length, compared })),
		[
			column(context, "result", "compare/result", 3, { rowHead: true }),
			column(context, "what", "compare/what", 2.2),
			column(context, "was", "compare/was", 1.1, { align: "end" }),
			column(context, "is", "compare/is", 1.1, { align: "end" }),
			column(context, "change", "compare/change", 1.6, { align: "end" }),
			column(context, "from", "compare/follows-from", 0.9),
		],
		groups,
		further === 0 ? undefined : said(context, message("compare/further-paper", { count: further })),
	);
};

const resultRow = (moved: MovedResult, context: ChangeContext): Row => {
	const { key, before, after, causes } = moved;
	const { paper } = context;
	const valueCell = (value: Known | KnownTable | undefined, made: (known: Known) => Cell): Cell =>
		value === undefined || isTable(value) ? textCell(toldValue(value, readerOf(paper))) : made(value);
	return {
		cells: {
			result: textCell(inWords(key)),
			what: textCell(quantityName(after ?? before, context)),
			was: valueCell(before, plain),
			is: valueCell(after, (known) => shown(paper, known)),
			change: textCell(toldChange(moved, paper.units)),
			from: textCell(causes.map((i) => String(i + 1)).join(", ")),
		},
	};
};

/** `results.casing.surface.shoe.tvd` → `Casing › surface › shoe › tvd`. */
const inWords = (key: string): string =>
	capital(
		key
			.replace(/^(?:results|well)\./u, "")
			.replaceAll(/[-_]/gu, " ")
			.split(".")
			.join(" › "),
	);

const quantityName = (
	value: Known | KnownTable | undefined,
	{ paper }: ChangeContext,
): string | undefined => {
	if (value?.from.kind !== "worked") return undefined;
	const { formula } = value.from;
	const name = EVERY_FORMULA.get(formula)?.name;
	return name === undefined ? undefined : paper.words.formulaName(formula, name);
};

/** Every part that the page order of the paper of changes may name. */
export const CHANGE_PARTS: Readonly<Record<string, ChangePart>> = {
	summary,
	worse,
	inputs,
	findings,
	margins,
	missing,
	deadlines,
	results,
};
