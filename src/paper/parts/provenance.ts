import type { Given, Known } from "../../cite/known.ts";
import { isTable } from "../../cite/known.ts";
import type { SourceRef } from "../../cite/source.ts";
import type { SourceKey } from "../../cite/source-keys.ts";
import type { Inline } from "../../document/inline.ts";
import { declaredText } from "../../messages/print.ts";
import { EVERY_FORMULA } from "../../rules/every-formula.ts";
import { type PaperContext, shown, textCell } from "../context.ts";
import { type Part, row, table, textColumn } from "./part.ts";

/** Each formula that stands behind a printed number, once: as published, its source, and one line worked with it. */
export const formulasTable: Part = (context) => {
	const first = firstUses(context);
	return table(
		context,
		"formulas",
		[
			textColumn(context, "formula", { width: 2.1, rowHead: true }),
			textColumn(context, "expression", { width: 3.6 }),
			textColumn(context, "worked_line", { width: 3.2 }),
		],
		[...first].flatMap(([id, use]) => {
			const formula = EVERY_FORMULA.get(id);
			return formula === undefined
				? []
				: [
						row({
							formula: textCell(context.words.formulaName(id, formula.name)),
							expression: textCell(
								`${declaredText(formula.expression, context.words)} ${sourceMark(formula.source, context)}`,
							),
							worked_line: { kind: "rich", children: workedLine(use, context) },
						}),
					];
		}),
		{ dense: true, note: "formulas" },
	);
};

/** Formula id → the first value, in the order of the results, that used it. */
const firstUses = (context: PaperContext): Map<string, { key: string; value: Known }> => {
	const first = new Map<string, { key: string; value: Known }>();
	for (const [key, value] of context.index.byKey)
		if (!isTable(value) && value.from.kind === "worked" && !first.has(value.from.formula))
			first.set(value.from.formula, { key, value });
	return first;
};

const MOST_TERMS = 3;

const workedLine = ({ key, value }: { key: string; value: Known }, context: PaperContext): Inline[] => {
	if (value.from.kind !== "worked") return [];
	const inputs = Object.entries(value.from.inputs).flatMap(([symbol, given], i): Inline[] => [
		{ kind: "text", text: `${i === 0 ? " ← " : "; "}${declaredText(symbol, context.words)} = ` },
		...givenText(given, context),
	]);
	return [{ kind: "text", text: `${key} = ` }, shown(context, value), ...inputs];
};

const givenText = (given: Given, context: PaperContext): Inline[] => {
	if (isSeveral(given)) {
		const terms = given
			.slice(0, MOST_TERMS)
			.flatMap((term, i): Inline[] => [
				...(i === 0 ? [] : [{ kind: "text" as const, text: ", " }]),
				shown(context, term),
			]);
		return given.length > MOST_TERMS
			? [...terms, { kind: "text", text: ` … (${given.length} ${context.words.label("phrases.terms")})` }]
			: terms;
	}
	if (isTable(given))
		return [{ kind: "text", text: `${given.rows.length} ${context.words.label("phrases.rows")}` }];
	return [shown(context, given)];
};

const isSeveral = (given: Given): given is readonly Known[] => Array.isArray(given);

/** `· api-5c3, § 3`: a key of the list of sources at the end. */
const sourceMark = ({ key, at }: SourceRef, { words }: PaperContext): string =>
	`· ${key}${at === undefined ? "" : `, ${declaredText(at, words)}`}`;

const sourceText = (key: SourceKey, context: PaperContext): string => {
	const { authors, publisher, title, year } = context.sources[key];
	return [authors ?? publisher, title, year].filter((part) => part !== undefined).join(", ");
};

/** Every source that a formula, a catalogue value or a constant of this paper was taken from. */
export const dataSources: Part = (context) => {
	const keys = new Set<SourceKey>();
	// Values share their inputs, so that walking each path to them would take time without end.
	const seen = new Set<Given>();
	const visit = (given: Given): void => {
		if (seen.has(given)) return;
		seen.add(given);
		if (isSeveral(given)) {
			for (const term of given) visit(term);
			return;
		}
		const { from } = given;
		if (from.kind === "catalogue" || from.kind === "constant" || from.kind === "worked")
			keys.add(from.source.key);
		if (from.kind === "worked") for (const input of Object.values(from.inputs)) visit(input);
	};
	for (const value of context.index.byKey.values()) visit(value);
	return table(
		context,
		"data_sources",
		[
			textColumn(context, "source_key", { width: 1.6, rowHead: true }),
			textColumn(context, "source", { width: 3.6 }),
			textColumn(context, "source_note", { width: 3.2 }),
		],
		[...keys].toSorted().map((key) =>
			row({
				source_key: textCell(key),
				source: textCell(sourceText(key, context)),
				source_note: textCell(
					[context.words.label(`how_known.${context.sources[key].howKnown}`), context.sources[key].note]
						.filter((part) => part !== undefined)
						.join(" "),
				),
			}),
		),
		{ dense: true },
	);
};
