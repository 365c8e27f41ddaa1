import { Argument, Command, Option } from "commander";
import type { ValueIndex } from "../cite/index-values.ts";
import { type Given, isTable, type Known, type KnownTable } from "../cite/known.ts";
import { CODES, type Code } from "../diagnostics/codes.ts";
import { nearestName } from "../diagnostics/nearest-name.ts";
import { pathKey } from "../diagnostics/path.ts";
import { EVERY_FORMULA } from "../rules/every-formula.ts";
import { CHECKS, limitsOfCheck } from "../rules/index.ts";
import { quantityString } from "../units/format.ts";
import { EXIT } from "./exit-codes.ts";
import type { Session } from "./program.ts";
import { readWell, rulesOption } from "./read-well.ts";
import { openShipped, type ShippedData } from "./shipped.ts";
import { terminal } from "./terminal.ts";

interface ExplainOptions {
	readonly in?: string;
	readonly rules: readonly string[];
}

/** `casebound explain`: a diagnostic's code, a check, a formula, or a computed value's whole chain. */
export const explainCommand = (session: Session): Command =>
	new Command("explain")
		.addArgument(new Argument("<what>", "a code, a check, a formula's id, or (with --in) a result's key"))
		.addOption(new Option("--in <file>", "the definition that the result is of"))
		.addOption(rulesOption())
		.addHelpText(
			"after",
			"\nExamples:\n  casebound explain quantity/no-unit\n  casebound explain results.casing.surface.shoe.tvd --in my-well.yaml",
		)
		.action((what: string, options: ExplainOptions) => {
			const shipped = openShipped();
			if (options.in === undefined) {
				const text = explainCode(what) ?? explainCheck(what) ?? explainFormula(what, shipped);
				if (text !== undefined) return terminal.out(text);
				return unknown(
					what,
					[...Object.keys(CODES), ...CHECKS.map(({ id }) => id), ...EVERY_FORMULA.keys()],
					session,
				);
			}
			const findings = readWell(options.in, options.rules, shipped, session);
			if (findings === undefined) return;
			const { index } = findings;
			const key = [what, `results.${what}`, `well.${what}`].find((candidate) => index.byKey.has(candidate));
			const value = key === undefined ? undefined : index.byKey.get(key);
			if (key === undefined || value === undefined) return unknown(what, [...index.byKey.keys()], session);
			terminal.out(chain(key, value, index, shipped).join("\n"));
		});

const unknown = (what: string, known: readonly string[], session: Session): void => {
	const near = nearestName(what, known);
	terminal.err(
		`casebound: nothing here is called "${what}"${near === undefined ? "" : `; did you mean "${near}"?`}`,
	);
	session.end(EXIT.usage);
};

const isCode = (what: string): what is Code => Object.hasOwn(CODES, what);

const explainCode = (what: string): string | undefined =>
	isCode(what)
		? `${what}  (${CODES[what].severity})\n${CODES[what].title}\n\n${CODES[what].explain}`
		: undefined;

const explainCheck = (what: string): string | undefined => {
	const check = CHECKS.find(({ id }) => id === what);
	return check === undefined
		? undefined
		: [`${check.id}  (check)`, check.title, "", check.explain, "", ...limitsOfCheck(check.id)].join("\n");
};

const explainFormula = (what: string, shipped: ShippedData): string | undefined => {
	const formula = EVERY_FORMULA.get(what);
	if (formula === undefined) return undefined;
	return [
		`${formula.id}  (formula)`,
		formula.name,
		"",
		`  ${formula.expression}`,
		`  source: ${cited(formula.source, shipped)}`,
		...(formula.validity === undefined ? [] : [`  holds: ${formula.validity}`]),
	].join("\n");
};

const cited = (
	source: { readonly key: keyof ShippedData["catalog"]["sources"]; readonly at?: string },
	{ catalog }: ShippedData,
): string => {
	const entry = catalog.sources[source.key];
	const name = [entry.authors ?? entry.publisher, entry.title, entry.year]
		.filter((part) => part !== undefined)
		.join(", ");
	return source.at === undefined ? name : `${name}, ${source.at}`;
};

const shownValue = (value: Known | KnownTable): string =>
	isTable(value)
		? `a table of ${value.rows.length} rows`
		: quantityString({ dimension: value.dimension, value: value.value, style: { decimals: 4 } }, "field");

/** A value, the formula behind it and its inputs, each input in turn, once. */
const chain = (key: string, value: Known | KnownTable, index: ValueIndex, shipped: ShippedData): string[] => {
	const lines: string[] = [];
	const told = new Set<Known | KnownTable>();
	const tell = (name: string, given: Known | KnownTable, depth: number): void => {
		const indent = "  ".repeat(depth);
		const again = told.has(given) && given.from.kind === "worked";
		told.add(given);
		lines.push(
			`${indent}${name} = ${shownValue(given)}  ${originLine(given, shipped)}${again ? " (worked above)" : ""}`,
		);
		if (given.from.kind !== "worked" || again) return;
		const formula = EVERY_FORMULA.get(given.from.formula);
		if (formula) lines.push(`${indent}  ${formula.expression}`);
		for (const [symbol, input] of Object.entries(given.from.inputs)) tellInput(symbol, input, depth + 1);
	};
	const tellInput = (symbol: string, input: Given, depth: number): void => {
		if (isSeveral(input))
			for (const [i, term] of input.entries()) tell(`${symbol}${i + 1}${named(term, index)}`, term, depth);
		else tell(`${symbol}${named(input, index)}`, input, depth);
	};
	tell(key, value, 0);
	return lines;
};

const isSeveral = (given: Given): given is readonly Known[] => Array.isArray(given);

const named = (given: Known | KnownTable, index: ValueIndex): string => {
	const key = index.keyOf(given);
	return key === undefined ? "" : ` (${key})`;
};

const originLine = ({ from }: Known | KnownTable, shipped: ShippedData): string => {
	switch (from.kind) {
		case "definition":
			return `written at ${pathKey(from.at)}${from.file === undefined ? "" : ` in ${from.file}`}`;
		case "catalogue":
			return `table ${from.table}, ${from.row}; ${cited(from.source, shipped)}`;
		case "assumed":
			return `assumed: ${from.id}`;
		case "constant":
			return `constant: ${from.name}; ${cited(from.source, shipped)}`;
		case "worked":
			return `by ${from.formula}${from.branch === undefined ? "" : ` (${from.branch})`}; ${cited(from.source, shipped)}`;
	}
};
