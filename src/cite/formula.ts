import type { Dimension } from "../units/dimensions.ts";
import type { Quantity } from "../units/quantity.ts";
import type { Given, Known, KnownTable } from "./known.ts";
import type { SourceRef } from "./source.ts";

/** What an input of a formula may be: a dimension, several values of one (`many`), or a table. */
export type InputKind =
	| Dimension
	| { readonly many: Dimension }
	| { readonly table: string };

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

type Inputs = Readonly<Record<string, InputKind>>;
type GivenInputs<I extends Inputs> = { readonly [N in keyof I]: GivenOf<I[N]> };
type NumberInputs<I extends Inputs> = {
	readonly [N in keyof I]: NumberOf<I[N]>;
};

/** A computed number, with the branch of the method that gave it where the method has branches. */
export type Computed =
	| number
	| { readonly value: number; readonly branch: string };

export interface FormulaDefinition<I extends Inputs, D extends Dimension> {
	/** Permanent id, `topic/name`. */
	readonly id: string;
	/** The field's name for the quantity, as a paper prints it. */
	readonly name: string;
	/** The formula as its source prints it, in the source's symbols. */
	readonly expression: string;
	readonly source: SourceRef;
	/** Symbol → what it is; the symbols of `expression`. */
	readonly inputs: I;
	readonly gives: D;
	/** Where the formula holds, in words; checked by `compute`, which returns NaN outside it. */
	readonly validity?: string;
	// Methods, so that formulas of any inputs fit one list (`readonly Formula[]`): the register and the published checks need it.
	compute(inputs: NumberInputs<I>): Computed;
}

export interface Formula<
	I extends Inputs = Inputs,
	D extends Dimension = Dimension,
> extends FormulaDefinition<I, D> {
	/** Works the formula on values that know their origin. */
	of(inputs: GivenInputs<I>): Known<D>;
}

const numberOf = (given: Given): unknown =>
	Array.isArray(given)
		? given.map((g: Known) => g.value)
		: "rows" in given
			? given
			: (given as Known).value;

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
		const numbers = Object.fromEntries(
			Object.entries(inputs).map(([name, given]) => [
				name,
				numberOf(given as Given),
			]),
		);
		const computed = definition.compute(numbers as NumberInputs<I>);
		const value = typeof computed === "number" ? computed : computed.value;
		return {
			dimension: definition.gives,
			value: value as Quantity<D>,
			from: {
				kind: "worked",
				formula: definition.id,
				source: definition.source,
				inputs: inputs as Readonly<Record<string, Given>>,
				...(typeof computed === "number" ? {} : { branch: computed.branch }),
			},
		};
	},
});
