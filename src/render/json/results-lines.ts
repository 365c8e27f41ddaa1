import type { ValueIndex } from "../../cite/index-values.ts";
import { type Given, isTable, type Known, type KnownTable, type Origin } from "../../cite/known.ts";
import { type Path, pathKey } from "../../diagnostics/path.ts";
import type { Said } from "../../messages/message.ts";
import { ENGLISH_READER, tellSaid } from "../../messages/print.ts";
import { DIMENSIONS } from "../../units/dimensions.ts";

/*
 * Every value with where it comes from, as JSON of one line a value: it can be searched, compared and read as it is
 * written. The form is told in README.md beside this file.
 */

/** A result that could not be had: why, and which paths of the definition would mend it. */
export interface NotEvaluated {
	readonly key: string;
	readonly because: Said;
	readonly needs: readonly Path[];
}

interface ResultsRequest {
	/** Only keys that begin so. */
	readonly prefix: string;
	/** Whether what the definition says at a path may be told; a value that rests on anything else is left out. */
	readonly mayShow?: (at: Path) => boolean;
	/** What could not be evaluated; its keys begin without `results.`, as where they were found missing. */
	readonly notEvaluated?: readonly NotEvaluated[];
}

/** The lines of the results, each with its line end. Together they are one JSON object. */
export function* resultsLines(
	index: ValueIndex,
	{ prefix, mayShow, notEvaluated = [] }: ResultsRequest,
): Generator<string> {
	const rests = mayShow === undefined ? () => true : restingOn(mayShow);
	const book = new Book(index, (key) => key.startsWith(prefix));
	yield '{\n"values": {\n';
	let first = true;
	for (const [key, value] of index.byKey) {
		if (!key.startsWith(prefix) || !rests(value)) continue;
		yield entry(first, key, book.entry(key, value));
		first = false;
	}
	yield first ? '},\n"inputs": {\n' : '\n},\n"inputs": {\n';
	first = true;
	// Telling an input may call for further ones: the list grows while it is walked.
	for (const [reference, value] of book.inputs) {
		yield entry(first, reference, book.input(reference, value));
		first = false;
	}
	yield first ? '},\n"formulas": {\n' : '\n},\n"formulas": {\n';
	first = true;
	for (const [id, source] of [...book.formulas].sort(([a], [b]) => (a < b ? -1 : 1))) {
		yield entry(first, id, source);
		first = false;
	}
	yield first ? '},\n"not_evaluated": {\n' : '\n},\n"not_evaluated": {\n';
	first = true;
	for (const [key, gaps] of byKey(notEvaluated)) {
		const shown = gaps.filter(({ needs }) => needs.every((at) => mayShow?.(at) ?? true));
		if (!key.startsWith(prefix) || shown.length === 0) continue;
		const because = shown.map((gap) => tellSaid(gap.because, ENGLISH_READER)).join(" ");
		yield entry(first, key, { because, needs: shown.flatMap(({ needs }) => needs.map(pathKey)) });
		first = false;
	}
	yield first ? "}\n}\n" : "\n}\n}\n";
}

/** One key may lack more than one thing. */
const byKey = (gaps: readonly NotEvaluated[]): ReadonlyMap<string, readonly NotEvaluated[]> => {
	const found = new Map<string, readonly NotEvaluated[]>();
	for (const gap of gaps) {
		const key = `results.${gap.key}`;
		found.set(key, [...(found.get(key) ?? []), gap]);
	}
	return found;
};

const entry = (first: boolean, key: string, value: Json): string =>
	`${first ? "" : ",\n"}${JSON.stringify(key)}: ${JSON.stringify(value)}`;

type Json = string | number | readonly Json[] | { readonly [key: string]: Json };

/** Whether everything of the definition that a value rests on may be shown; each value is asked once. */
const restingOn = (mayShow: (at: Path) => boolean): ((given: Known | KnownTable) => boolean) => {
	const known = new Map<Known | KnownTable, boolean>();
	const rests = (given: Known | KnownTable): boolean => {
		const before = known.get(given);
		if (before !== undefined) return before;
		const { from } = given;
		const found =
			from.kind === "definition"
				? from.file !== undefined || mayShow(from.at)
				: from.kind !== "worked" ||
					Object.values(from.inputs).every((input) => (isSeveral(input) ? input.every(rests) : rests(input)));
		known.set(given, found);
		return found;
	};
	return rests;
};

/** More digits than any input has, and fewer than two machines might differ in. */
const DIGITS = 10;
const number = (value: number): number => Number(value.toPrecision(DIGITS));

/** What has been told, so that nothing is told twice: values without a key get a number, formulas stand once. */
class Book {
	/** What is referred to and not told as a value of its own: by its key, or by a number where it has none. */
	readonly inputs = new Map<string, Known | KnownTable>();
	/** Id of each formula used, with its source. */
	readonly formulas = new Map<string, string>();
	readonly #index: ValueIndex;
	readonly #isTold: (key: string) => boolean;
	readonly #numbers = new Map<Known | KnownTable, string>();
	readonly #alike = new Map<string, string>();

	constructor(index: ValueIndex, isTold: (key: string) => boolean) {
		this.#index = index;
		this.#isTold = isTold;
	}

	/** A value under its key; where it is the same one as under another key, the origin stands there. */
	entry(key: string, value: Known | KnownTable): Json {
		const own = this.#index.keyOf(value);
		return own === key || own === undefined || !this.#isTold(own) ? this.#told(value) : own;
	}

	/**
	 * An input: one that has a key is a value of its own, whose origin is told where all values are. Of a table that
	 * stands only between others, the origin and not the rows.
	 */
	input(reference: string, value: Known | KnownTable): Json {
		const shown = isTable(value) ? { rows: value.rows.length } : amount(value);
		return this.#index.keyOf(value) === reference ? shown : { ...shown, ...this.#origin(value.from) };
	}

	#told(value: Known | KnownTable): Json {
		return { ...(isTable(value) ? table(value) : amount(value)), ...this.#origin(value.from) };
	}

	#origin(from: Origin): { readonly [key: string]: Json } {
		switch (from.kind) {
			case "definition":
				return {
					written: from.text,
					at: pathKey(from.at),
					...(from.file === undefined ? {} : { file: from.file }),
				};
			case "catalogue":
				return { catalogue: `${from.table}: ${from.row}, ${from.column}`, source: cited(from.source) };
			case "assumed":
				return {
					assumption: from.id,
					...(from.source === undefined ? {} : { source: cited(from.source) }),
				};
			case "constant":
				return { constant: from.name, source: cited(from.source) };
			case "worked":
				this.formulas.set(from.formula, cited(from.source));
				return {
					formula: from.formula,
					...(from.branch === undefined ? {} : { branch: from.branch }),
					inputs: Object.fromEntries(
						Object.entries(from.inputs).map(([name, given]) => [
							name,
							isSeveral(given) ? given.map((term) => this.#reference(term)) : this.#reference(given),
						]),
					),
				};
		}
	}

	/** The key of a value, or its number among the inputs. */
	#reference(value: Known | KnownTable): string {
		const key = this.#index.keyOf(value);
		if (key !== undefined) {
			if (!this.#isTold(key)) this.inputs.set(key, value);
			return key;
		}
		const known = this.#numbers.get(value);
		if (known !== undefined) return known;
		// What is made anew for each use, such as a constant, is one input as long as its figure and origin are the same.
		const alike = JSON.stringify([isTable(value) ? value.rows : amount(value), this.#origin(value.from)]);
		const reference = this.#alike.get(alike) ?? `#${this.#alike.size + 1}`;
		if (!this.#alike.has(alike)) this.inputs.set(reference, value);
		this.#alike.set(alike, reference);
		this.#numbers.set(value, reference);
		return reference;
	}
}

const amount = ({ value, dimension }: Known): { readonly [key: string]: Json } => ({
	value: number(value),
	unit: DIMENSIONS[dimension].canonical,
});

const table = ({ columns, rows }: KnownTable): { readonly [key: string]: Json } => {
	const names = Object.keys(columns);
	return {
		columns: Object.fromEntries(
			Object.entries(columns).map(([name, dimension]) => [name, DIMENSIONS[dimension].canonical]),
		),
		rows: rows.map((row) => names.map((name) => number(row[name] ?? Number.NaN))),
	};
};

const cited = (source: { readonly key: string; readonly at?: string }): string =>
	source.at === undefined ? source.key : `${source.key}, ${source.at}`;

const isSeveral = (given: Given): given is readonly Known[] => Array.isArray(given);
