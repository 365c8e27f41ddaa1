import { Argument, Command, Option } from "commander";
import type { ValueIndex } from "../cite/index-values.ts";
import { type Given, isTable, type Known, type KnownTable } from "../cite/known.ts";
import { CODES, type Code } from "../diagnostics/codes.ts";
import { nearestName } from "../diagnostics/nearest-name.ts";
import { pathKey } from "../diagnostics/path.ts";
import { LANGUAGES, type Language } from "../document/document.ts";
import { EXPLAINED_CHECKS, EXPLAINED_CODES, explainedIn } from "../messages/explained.ts";
import { type Message, message } from "../messages/message.ts";
import { declaredText, type Reader, tellPhrase } from "../messages/print.ts";
import { loadWords } from "../paper/words/words.ts";
import { EVERY_FORMULA } from "../rules/every-formula.ts";
import { CHECKS, limitsOfCheck } from "../rules/index.ts";
import { quantityString } from "../units/format.ts";
import { EXIT } from "./exit-codes.ts";
import type { Session } from "./program.ts";
import { readDefinition, rulesOption } from "./read-well.ts";
import { openShipped, type ShippedData } from "./shipped.ts";
import { terminal } from "./terminal.ts";

interface ExplainOptions {
	readonly in?: string;
	readonly rules: readonly string[];
	readonly lang: Language;
}

/** `casebound explain`: a diagnostic's code, a check, a formula, or a computed value's whole chain. */
export const explainCommand = (session: Session): Command =>
	new Command("explain")
		.addArgument(new Argument("<what>", "a code, a check, a formula's id, or (with --in) a result's key"))
		.addOption(new Option("--in <file>", "the definition that the result is of"))
		.addOption(new Option("--lang <language>", "en or es").choices(LANGUAGES).default("en"))
		.addOption(rulesOption())
		.addHelpText(
			"after",
			"\nExamples:\n  casebound explain quantity/no-unit\n  casebound explain results.casing.surface.shoe.tvd --in my-well.yaml",
		)
		.action((what: string, options: ExplainOptions) => {
			const shipped = openShipped();
			const { lang: language } = options;
			if (options.in === undefined) {
				const text = explained(what, shipped, language);
				if (text !== undefined) return terminal.tell(text);
				const known = [...Object.keys(CODES), ...CHECKS.map(({ id }) => id), ...EVERY_FORMULA.keys()];
				return unknown(what, known, language, session);
			}
			const { findings, units } = readDefinition(options.in, options.rules, shipped, session, language);
			if (findings === undefined) return;
			const { index } = findings;
			const key = [what, `results.${what}`, `well.${what}`].find((candidate) => index.byKey.has(candidate));
			const value = key === undefined ? undefined : index.byKey.get(key);
			if (key === undefined || value === undefined)
				return unknown(what, [...index.byKey.keys()], language, session);
			terminal.tell(chain(key, value, index, { shipped, reader: { language, units } }).join("\n"));
		});

const unknown = (what: string, known: readonly string[], language: Language, session: Session): void => {
	const near = nearestName(what, known);
	const said =
		near === undefined
			? message("explain/unknown", { what })
			: message("explain/did-you-mean", { what, near });
	terminal.err(`casebound: ${tellPhrase(said, { language, units: "field" })}`);
	session.end(EXIT.usage);
};

/** Of a code, a check or a formula: what it means, how it is used, where it comes from. */
export const explained = (what: string, shipped: ShippedData, language: Language): string | undefined => {
	const reader: Reader = { language, units: "field" };
	return explainCode(what, reader) ?? explainCheck(what, reader) ?? explainFormula(what, { shipped, reader });
};

const isCode = (what: string): what is Code => Object.hasOwn(CODES, what);

/** The line that a thing is headed with: its name, and in brackets what kind of thing it is. */
const headed = (name: string, kind: Message, reader: Reader): string =>
	`${name}  (${tellPhrase(kind, reader)})`;

const explainCode = (what: string, reader: Reader): string | undefined => {
	if (!isCode(what)) return undefined;
	const { title, explain } = explainedIn(CODES[what], EXPLAINED_CODES[what], reader);
	const kind = CODES[what].severity === "error" ? message("explain/error") : message("explain/warning");
	return `${headed(what, kind, reader)}\n${title}\n\n${explain}`;
};

const explainCheck = (what: string, reader: Reader): string | undefined => {
	const check = CHECKS.find(({ id }) => id === what);
	if (check === undefined) return undefined;
	const { title, explain } = explainedIn(check, EXPLAINED_CHECKS[check.id], reader);
	const head = headed(check.id, message("explain/check"), reader);
	return [head, title, "", explain, "", ...limitsOfCheck(check.id, reader)].join("\n");
};

/** The data that sources are in, and who reads. */
interface Telling {
	readonly shipped: ShippedData;
	readonly reader: Reader;
}

const explainFormula = (what: string, telling: Telling): string | undefined => {
	const formula = EVERY_FORMULA.get(what);
	if (formula === undefined) return undefined;
	const { reader } = telling;
	const source = message("explain/source", { source: cited(formula.source, telling) });
	return [
		headed(formula.id, message("explain/formula"), reader),
		loadWords(reader.language).formulaName(formula.id, formula.name),
		"",
		`  ${declaredText(formula.expression, reader)}`,
		`  ${tellPhrase(source, reader)}`,
		...(formula.validity === undefined
			? []
			: [`  ${tellPhrase(message("explain/holds", { range: { declared: formula.validity } }), reader)}`]),
	].join("\n");
};

/** Titles stand in the language they were published in. */
const cited = (
	source: { readonly key: keyof ShippedData["catalog"]["sources"]; readonly at?: string },
	{ shipped: { catalog }, reader }: Telling,
): string => {
	const entry = catalog.sources[source.key];
	const name = [entry.authors ?? entry.publisher, entry.title, entry.year]
		.filter((part) => part !== undefined)
		.join(", ");
	return source.at === undefined ? name : `${name}, ${declaredText(source.at, reader)}`;
};

const shownValue = (value: Known | KnownTable, reader: Reader): string =>
	isTable(value)
		? tellPhrase(message("explain/rows", { count: value.rows.length }), reader)
		: quantityString(
				{ dimension: value.dimension, value: value.value, style: { decimals: 4 } },
				reader.units,
			);

/** A value, the formula behind it and its inputs, each input in turn, once. */
const chain = (key: string, value: Known | KnownTable, index: ValueIndex, telling: Telling): string[] => {
	const { reader } = telling;
	const lines: string[] = [];
	const told = new Set<Known | KnownTable>();
	const tell = (name: string, given: Known | KnownTable, depth: number): void => {
		const indent = "  ".repeat(depth);
		const again = told.has(given) && given.from.kind === "worked";
		told.add(given);
		const above = again ? ` (${tellPhrase(message("explain/worked-above"), reader)})` : "";
		const origin = tellPhrase(originOf(given, telling), reader);
		lines.push(`${indent}${name} = ${shownValue(given, reader)}  ${origin}${above}`);
		if (given.from.kind !== "worked" || again) return;
		const formula = EVERY_FORMULA.get(given.from.formula);
		if (formula) lines.push(`${indent}  ${declaredText(formula.expression, reader)}`);
		for (const [symbol, input] of Object.entries(given.from.inputs)) tellInput(symbol, input, depth + 1);
	};
	const tellInput = (symbol: string, input: Given, depth: number): void => {
		const shown = declaredText(symbol, reader);
		if (isSeveral(input))
			for (const [i, term] of input.entries()) tell(`${shown}${i + 1}${named(term, index)}`, term, depth);
		else tell(`${shown}${named(input, index)}`, input, depth);
	};
	tell(key, value, 0);
	return lines;
};

const isSeveral = (given: Given): given is readonly Known[] => Array.isArray(given);

const named = (given: Known | KnownTable, index: ValueIndex): string => {
	const key = index.keyOf(given);
	return key === undefined ? "" : ` (${key})`;
};

/** From where a value is: a line of the definition, a table, an assumption, a constant, or a formula. */
export const originOf = ({ from }: Known | KnownTable, telling: Telling): Message => {
	switch (from.kind) {
		case "definition": {
			const place = pathKey(from.at);
			return from.file === undefined
				? message("explain/written", { place })
				: message("explain/written-in", { place, file: from.file });
		}
		case "catalogue":
			return message("explain/from-table", {
				table: from.table,
				row: from.row,
				source: cited(from.source, telling),
			});
		case "assumed":
			return message("explain/assumed", { id: from.id });
		case "constant":
			return message("explain/constant", {
				what: { declared: from.name },
				source: cited(from.source, telling),
			});
		case "worked": {
			const by = { formula: from.formula, source: cited(from.source, telling) };
			return from.branch === undefined
				? message("explain/by", by)
				: message("explain/by-branch", { ...by, branch: { declared: from.branch } });
		}
	}
};
