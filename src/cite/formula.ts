import type { Dimension } from "../units/dimensions.ts";
import type { Quantity } from "../units/quantity.ts";
import type { Given, Known, KnownTable } from "./known.ts";
import type { SourceRef } from "./source.ts";

/** What an input of a formula may be: a dimension, several values of one (`many`), or a table. */
type InputKind = Dimension | { readonly many: Dimension } | { readonly table: string };

type GivenOf<K extends InputKind> = K extends Dimension
	? Known<K>
	: K extends { readonly many: infer D extends Dimension }
		? readonly Known<D>[]
		: KnownTable;

type NumberOf<K extends InputKind> = K extends Dimension
	? Quantity<K>
	: K extends { readonly many: infer D extends Dimension }
		? readonly Quantity<D>[]
		: KnownTable;

export type Inputs = Readonly<Record<string, InputKind>>;
type GivenInputs<I extends Inputs> = { readonly [N in keyof I]: GivenOf<I[N]> };
type NumberInputs<I extends Inputs> = {
	readonly [N in keyof I]: NumberOf<I[N]>;
};

/** A computed number, with the branch of the method that gave it where the method has branches. */
export type Computed = number | { readonly value: number; readonly branch: string };

/** What every declaration says of itself, whatever it gives. */
export interface Declaration<I extends Inputs = Inputs> {
	/** Permanent id, `topic/name`. */
	readonly id: string;
	/** The field's name for the quantity, as a paper prints it. */
	readonly name: string;
	/** The formula as its source prints it, in the source's symbols. */
	readonly expression: string;
	readonly source: SourceRef;
	/** Symbol → what it is; the symbols of `expression`. */
	readonly inputs: I;
	/** Where the formula holds, in words; checked by `compute`, which returns NaN outside it. */
	readonly validity?: string;
}

interface FormulaDefinition<I extends Inputs, D extends Dimension> extends Declaration<I> {
	readonly gives: D;
	readonly compute: (inputs: NumberInputs<I>) => Computed;
}

interface Formula<I extends Inputs = Inputs, D extends Dimension = Dimension>
	extends FormulaDefinition<I, D> {
	/** Works the formula on values that know their origin. */
	readonly of: (inputs: GivenInputs<I>) => Known<D>;
}

type Columns = Readonly<Record<string, Dimension>>;
type Row<C extends Columns> = { readonly [N in keyof C]: number };

interface TableFormulaDefinition<I extends Inputs, C extends Columns> extends Declaration<I> {
	readonly gives: C;
	readonly compute: (inputs: NumberInputs<I>) => readonly Row<C>[];
}

/** A method whose result is a table: a path's stations, a load over depth. */
interface TableFormula<I extends Inputs = Inputs, C extends Columns = Columns>
	extends TableFormulaDefinition<I, C> {
	readonly of: (inputs: GivenInputs<I>) => KnownTable<keyof C & string>;
}

/** Any formula, as the register keeps it: what it says of itself, and arithmetic on inputs checked elsewhere. */
export interface AnyFormula extends Declaration {
	readonly gives: Dimension | Columns;
	readonly compute: (inputs: never) => Computed | readonly Readonly<Record<string, number>>[];
	readonly of: (inputs: never) => Known | KnownTable;
}

const numberOf = (given: Given): unknown =>
	Array.isArray(given) ? given.map((g: Known) => g.value) : "rows" in given ? given : (given as Known).value;

const numbersOf = <I extends Inputs>(inputs: GivenInputs<I>): NumberInputs<I> =>
	Object.fromEntries(
		Object.entries(inputs).map(([name, given]) => [name, numberOf(given as Given)]),
	) as NumberInputs<I>;

const originOf = <I extends Inputs>(definition: Declaration<I>, inputs: GivenInputs<I>, branch?: string) => ({
	kind: "worked" as const,
	formula: definition.id,
	source: definition.source,
	inputs: inputs as Readonly<Record<string, Given>>,
	...(branch === undefined ? {} : { branch }),
});

/**
 * Declares a published formula once: its words, its source, and its arithmetic. `compute` is the bare arithmetic (what
 * the published checks run); `of` is the same on values with an origin, and its result remembers the formula and inputs.
 *
 * A result outside the formula's validity is NaN; whoever asked must turn that into a diagnostic or a *cannot tell*.
 */
export const formula = <const I extends Inputs, D extends Dimension>(
	definition: FormulaDefinition<I, D>,
): Formula<I, D> => ({
	...definition,
	of: (inputs) => {
		const computed = definition.compute(numbersOf(inputs));
		const [value, branch] =
			typeof computed === "number" ? [computed, undefined] : [computed.value, computed.branch];
		return {
			dimension: definition.gives,
			value: value as Quantity<D>,
			from: originOf(definition, inputs, branch),
		};
	},
});

/** Declares a method whose result is a table. No rows means that the inputs lie outside its validity. */
export const tableFormula = <const I extends Inputs, const C extends Columns>(
	definition: TableFormulaDefinition<I, C>,
): TableFormula<I, C> => ({
	...definition,
	of: (inputs) => ({
		columns: definition.gives as Readonly<Record<keyof C & string, Dimension>>,
		rows: definition.compute(numbersOf(inputs)) as readonly Readonly<Record<keyof C & string, number>>[],
		from: originOf(definition, inputs),
	}),
});
