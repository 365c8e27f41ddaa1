import type { PublicCopy } from "../../catalog/limits/limit.ts";
import type { Row } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import { capital, tellSaid } from "../../messages/print.ts";
import type { Finding } from "../../rules/finding.ts";
import { worstFirst } from "../../rules/index.ts";
import { type PaperContext, readerOf, textCell } from "../context.ts";
import { standingWords } from "../words/not-compared.ts";
import { isSame, limitInlines, measuredInlines } from "./limit-cells.ts";
import { type Part, row, table, textColumn } from "./part.ts";
import { subjectWords } from "./review.ts";
import { because } from "./rule-checks.ts";
import { applies, byRule, type Checked, citationCell, keyBlock, requirementOf } from "./rule-table.ts";

const text = (words: string): Inline => ({ kind: "text", text: words });

/** What else a rule was checked on and meets, in a few words: `surface 13 psi`, with its limit where that is another. */
const inShort = (context: PaperContext, finding: Finding, first: Finding): readonly Inline[] => {
	const subject = subjectWords(context, finding).toLowerCase();
	const measured = measuredInlines(context, finding);
	if (measured.length === 0) return [text(subject)];
	const limit = isSame(finding.required, first.required) ? [] : limitInlines(context, finding);
	return [text(`${subject} `), ...measured, ...(limit.length === 0 ? [] : [text(" ("), ...limit, text(")")])];
};

/** Of law and permit the attachment has the requirement where it is a number or open; of practice this table alone. */
const isAskedHere = ({ verdict, margin, cite }: Finding): boolean =>
	cite.kind === "practice" || (verdict === "met" && margin === undefined);

/** The sentence of what has the least room; after it what is not met of the same rule, and the rest in short. */
const hereAndHow = (context: PaperContext, { first, findings }: Checked): readonly Inline[] => {
	const others = findings.slice(1);
	const told = others.filter(({ verdict }) => verdict !== "met");
	const short = others.filter(({ verdict }) => verdict === "met");
	// Of several alike that have no number it is enough to say whose they are.
	const once = new Map(
		short.map((finding) => {
			const said = inShort(context, finding, first);
			return [JSON.stringify(said), said] as const;
		}),
	);
	const own = JSON.stringify(because(first, context));
	const sentences = new Map(
		told.flatMap((finding) => {
			const sentence = because(finding, context);
			const key = JSON.stringify(sentence);
			return key === own ? [] : [[key, sentence] as const];
		}),
	);
	return [
		...(isAskedHere(first) ? [text(`${requirementOf(context, first)} `)] : []),
		...because(first, context),
		...[...sentences.values()].flatMap((sentence) => [text(" "), ...sentence]),
		...(first.cite.comparedBy === undefined
			? []
			: [text(` ${capital(standingWords(first.cite, context.words))}.`)]),
		...(once.size === 0
			? []
			: [
					text(` ${context.words.label("rules.also")} `),
					...[...once.values()].flatMap((said, i) => [text(i === 0 ? "" : "; "), ...said]),
					text("."),
				]),
	];
};

/** Every check that applies, a table for each set: what a person decides, then what is met, each rule in a row. */
export const rulesInFull: Part = (context) => {
	const findings = context.judgement.findings.filter(applies);
	const nameOf = ({ cite }: Finding): string => capital(tellSaid(cite.jurisdictionName, readerOf(context)));
	const rows = (rules: readonly Checked[]): readonly Row[] =>
		(["not met", "cannot tell", "needs judgement", "met"] as const).flatMap((verdict) => {
			const some = rules.filter(({ first }) => first.verdict === verdict);
			if (some.length === 0) return [];
			return [
				row(
					{ citation: textCell(`${capital(context.words.label(`verdicts.${verdict}`))}: ${some.length}`) },
					"group",
				),
				...some.map((checked) =>
					row({
						citation: citationCell(context, checked.first),
						because: { kind: "rich", children: hereAndHow(context, checked) },
					}),
				),
			];
		});
	const tables = [...new Set(findings.map(nameOf))].flatMap((name) => {
		const of = findings.filter((finding) => nameOf(finding) === name);
		return table(
			context,
			"rule_checks",
			[
				textColumn(context, "citation", { width: 1.4, rowHead: true }),
				textColumn(context, "because", { width: 7.6, label: "here_and_how" }),
			],
			rows(byRule(worstFirst(of))),
			{ dense: true, suffix: name },
		);
	});
	return tables.length === 0 ? tables : [keyBlock(context, findings), ...tables];
};

/** The copies and texts that limits were compared with, each once, and the limits that were. */
export const textsCompared: Part = (context) => {
	const byCopy = new Map<string, { readonly copy: PublicCopy; readonly of: Checked[] }>();
	for (const checked of byRule(context.judgement.findings)) {
		const { publicCopy: copy, comparedBy } = checked.first.cite;
		if (copy === undefined || comparedBy !== undefined) continue;
		const key = JSON.stringify([copy.at, copy.dated, copy.kind]);
		const some = byCopy.get(key) ?? { copy, of: [] };
		some.of.push(checked);
		byCopy.set(key, some);
	}
	const { label } = context.words;
	return table(
		context,
		"texts_compared",
		[
			textColumn(context, "copy", { width: 4, rowHead: true }),
			textColumn(context, "copy_dated", { width: 1 }),
			textColumn(context, "copy_kind", { width: 1.4 }),
			textColumn(context, "citation", { width: 3, label: "citations" }),
		],
		[...byCopy.values()].map(({ copy, of }) =>
			row({
				copy: textCell(copy.at),
				copy_dated: textCell(copy.dated === "unknown" ? label("phrases.copy_undated") : copy.dated),
				copy_kind: textCell(label(`copy_kinds.${copy.kind}`)),
				citation: { kind: "rich", children: citations(context, of) },
			}),
		),
		{ dense: true, note: "texts_compared" },
	);
};

/** Rules that ask nothing of this well: why, once, and which they are. */
export const rulesNotApplied: Part = (context) => {
	const rules = byRule(worstFirst(context.judgement.findings).filter((finding) => !applies(finding)));
	const byReason = new Map<string, Checked[]>();
	for (const checked of rules) {
		const reason = JSON.stringify(
			because(checked.first, context).map((part) => (part.kind === "text" ? part : { ...part, key: "" })),
		);
		const some = byReason.get(reason) ?? [];
		byReason.set(reason, [...some, checked]);
	}
	return table(
		context,
		"rules_not_applied",
		[
			textColumn(context, "because", { width: 5, rowHead: true }),
			textColumn(context, "citation", { width: 3.4, label: "citations" }),
		],
		[...byReason.values()]
			.flatMap((some) => (some[0] === undefined ? [] : [{ some, first: some[0].first }]))
			.toSorted((a, b) => b.some.length - a.some.length)
			.map(({ some, first }) =>
				row({
					because: { kind: "rich", children: because(first, context) },
					citation: { kind: "rich", children: citations(context, some) },
				}),
			),
		{ dense: true },
	);
};

/** Citations one after the other, each once with how many rules it stands for. */
const citations = (context: PaperContext, some: readonly Checked[]): readonly Inline[] => {
	const counted = new Map<string, { readonly children: readonly Inline[]; readonly count: number }>();
	for (const { first } of some) {
		const cell = citationCell(context, first);
		const children = cell.kind === "rich" ? cell.children : [];
		const key = JSON.stringify(children);
		counted.set(key, { children, count: (counted.get(key)?.count ?? 0) + 1 });
	}
	return [...counted.values()].flatMap(({ children, count }, i) => [
		text(i === 0 ? "" : "; "),
		...children,
		text(count === 1 ? "" : ` (${count})`),
	]);
};
