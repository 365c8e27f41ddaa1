import { isTable } from "../../cite/known.ts";
import type { Block } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import { EVERY_FORMULA } from "../../rules/every-formula.ts";
import type { PaperContext } from "../context.ts";
import { narrative } from "../narrative/narrative.ts";
import { ownWords } from "../own-words.ts";
import { keysIn } from "../places.ts";
import { aloud } from "../sequence/frames.ts";
import type { Question } from "../words/questions.ts";
import { type Part, row, table, textColumn } from "./part.ts";

interface Answered {
	readonly question: Question;
	readonly number: number;
	readonly group: string;
	readonly words: readonly Inline[];
	readonly keys: readonly string[];
}

/** What neighbors ask, with this well's answers as far as there are any. */
export const answered = (context: PaperContext): readonly Answered[] => {
	const data = narrative(context);
	let number = 0;
	return context.words.questions().flatMap(({ title, questions }) =>
		questions.map((question): Answered => {
			number += 1;
			const ready = question.answer !== undefined && question.needs.every((need) => truthy(data[need]));
			const blocks = ready && question.answer !== undefined ? question.answer(data) : [];
			const said = question.own === undefined ? undefined : ownWords(context, question.own);
			return {
				question,
				number,
				group: title,
				keys: keysIn(blocks),
				// They are read out.
				words: [
					...inlinesOf(blocks).map(aloud),
					...(said !== undefined ? [{ kind: "text" as const, text: ` ${said}` }] : []),
				],
			};
		}),
	);
};

const truthy = (value: unknown): boolean => (Array.isArray(value) ? value.length > 0 : Boolean(value));

const inlinesOf = (blocks: readonly Block[]): readonly Inline[] =>
	blocks.flatMap((block) => (block.kind === "paragraph" ? block.children : []));

/** Question, this well's answer, and behind it how the numbers were worked and where the regulator's copy prints them. */
export const answersTable: Part = (context) => {
	const entries = answered(context).filter((entry) => entry.words.length > 0);
	const groups = [...new Set(entries.map((entry) => entry.group))];
	const behind = ({ keys }: Answered): string =>
		[
			...formulaNames(keys, context),
			...[...new Set(keys.flatMap((key) => context.printedAt?.(key) ?? []))],
		].join("; ");
	return table(
		context,
		"answers",
		[
			textColumn(context, "number", { width: 0.5 }),
			textColumn(context, "question", { width: 2.3, rowHead: true }),
			textColumn(context, "answer", { width: 4.4 }),
			textColumn(context, "behind", { width: 2.2 }),
		],
		groups.flatMap((group) => [
			row({ question: { kind: "text", text: group } }, "group"),
			...entries
				.filter((entry) => entry.group === group)
				.map((entry) =>
					row({
						number: { kind: "text", text: String(entry.number) },
						question: { kind: "text", text: entry.question.ask },
						answer: { kind: "rich", children: entry.words },
						behind: textOrNone(behind(entry)),
					}),
				),
		]),
	);
};

const textOrNone = (words: string) =>
	words === "" ? ({ kind: "none" } as const) : ({ kind: "text", text: words } as const);

/** What the numbers of some keys were worked by, or that they are as given. */
export const formulaNames = (keys: readonly string[], context: PaperContext): string[] => [
	...new Set(
		keys.flatMap((key) => {
			const value = context.index.byKey.get(key);
			if (value === undefined || isTable(value)) return [];
			if (value.from.kind !== "worked") return context.words.label("phrases.as_given");
			const { formula } = value.from;
			const declared = EVERY_FORMULA.get(formula)?.name;
			return declared === undefined ? [] : context.words.formulaName(formula, declared);
		}),
	),
];

/** Questions that neither the calculation nor the operator answers. */
export const openQuestions: Part = (context) => {
	const open = answered(context).filter((entry) => entry.words.length === 0);
	return table(
		context,
		"open_questions",
		[
			textColumn(context, "number", { width: 0.5 }),
			textColumn(context, "question", { width: 4, rowHead: true }),
			textColumn(context, "at", { width: 3 }),
		],
		open.map((entry) =>
			row({
				number: { kind: "text", text: String(entry.number) },
				question: { kind: "text", text: entry.question.ask },
				at: textOrNone(
					[entry.question.own === undefined ? undefined : `community › ${entry.question.own}`]
						.filter((s) => s)
						.join(""),
				),
			}),
		),
	);
};
