import type { ValueIndex } from "../../cite/index-values.ts";
import { type Given, isTable, type Known, type KnownTable, type Origin } from "../../cite/known.ts";
import { type Path, pathKey } from "../../diagnostics/path.ts";
import { DIMENSIONS } from "../../units/dimensions.ts";

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/**
 * Every value of an index whose key begins with `prefix`, by key: value, unit, and origin. An input that is itself
 * a value of the index is given by its key; any other is written out.
 *
 * @param mayShow whether what the definition says at a path may be told; a value that rests on anything else is left out
 */
export const resultsJson = (
	index: ValueIndex,
	prefix: string,
	mayShow?: (at: Path) => boolean,
): { readonly [key: string]: Json } => {
	const rests = mayShow === undefined ? () => true : restingOn(mayShow);
	return Object.fromEntries(
		[...index.byKey]
			.filter(([key, value]) => key.startsWith(prefix) && rests(value))
			.map(([key, value]) => [key, isTable(value) ? tableJson(value, index) : knownJson(value, index)]),
	);
};

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

const knownJson = (known: Known, index: ValueIndex): Json => ({
	value: known.value,
	unit: DIMENSIONS[known.dimension].canonical,
	dimension: known.dimension,
	...originJson(known.from, index),
});

const tableJson = (table: KnownTable, index: ValueIndex): Json => ({
	columns: Object.fromEntries(
		Object.entries(table.columns).map(([name, dimension]) => [
			name,
			{ unit: DIMENSIONS[dimension].canonical, dimension },
		]),
	),
	rows: table.rows.map((row) => ({ ...row })),
	...originJson(table.from, index),
});

const originJson = (from: Origin, index: ValueIndex): { readonly [key: string]: Json } => {
	switch (from.kind) {
		case "definition":
			return {
				formula: null,
				source: "definition",
				inputs: {},
				written: from.text,
				at: pathKey(from.at),
				...(from.file === undefined ? {} : { file: from.file }),
			};
		case "catalogue":
			return {
				formula: null,
				source: sourceJson(from.source),
				inputs: {},
				catalogue: `${from.table}: ${from.row}, ${from.column}`,
			};
		case "assumed":
			return {
				formula: null,
				source: from.source === undefined ? "assumed" : sourceJson(from.source),
				inputs: {},
				assumption: from.id,
			};
		case "constant":
			return { formula: null, source: sourceJson(from.source), inputs: {}, constant: from.name };
		case "worked":
			return {
				formula: from.formula,
				...(from.branch === undefined ? {} : { branch: from.branch }),
				source: sourceJson(from.source),
				inputs: Object.fromEntries(
					Object.entries(from.inputs).map(([name, given]) => [name, givenJson(given, index)]),
				),
			};
	}
};

const sourceJson = (source: { readonly key: string; readonly at?: string }): string =>
	source.at === undefined ? source.key : `${source.key}, ${source.at}`;

const givenJson = (given: Given, index: ValueIndex): Json => {
	if (isSeveral(given)) return given.map((term) => givenJson(term, index));
	const key = index.keyOf(given);
	if (key !== undefined)
		return {
			key,
			...(isTable(given) ? {} : { value: given.value, unit: DIMENSIONS[given.dimension].canonical }),
		};
	return isTable(given)
		? { rows: given.rows.length, ...originJson(given.from, index) }
		: knownJson(given, index);
};

const isSeveral = (given: Given): given is readonly Known[] => Array.isArray(given);
