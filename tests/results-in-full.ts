import type { ValueIndex } from "../src/cite/index-values.ts";
import { type Given, isTable, type Known, type KnownTable, type Origin } from "../src/cite/known.ts";
import { pathKey } from "../src/diagnostics/path.ts";
import { DIMENSIONS } from "../src/units/dimensions.ts";

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** Every value of an index whose key begins with `prefix`, with unit, origin and inputs written out: for goldens. */
export const resultsInFull = (index: ValueIndex, prefix: string): { readonly [key: string]: Json } =>
	Object.fromEntries(
		[...index.byKey]
			.filter(([key]) => key.startsWith(prefix))
			.map(([key, value]) => [key, isTable(value) ? tableJson(value, index) : knownJson(value, index)]),
	);

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
