import type { Dimension } from "../units/dimensions.ts";
import type { Verdict } from "./verdict.ts";

/** A number on its way to a reader: still a number, with what is needed to print it and to trace it. */
export interface QuantityText {
	readonly kind: "quantity";
	readonly dimension: Dimension;
	/** In the dimension's canonical unit. */
	readonly value: number;
	/** Key of the result or definition line it is; papers agree by this key. */
	readonly key?: string;
	readonly style?: QuantityStyle;
}

/** How a number is printed; the paper's choice, never the calculation's. */
export interface QuantityStyle {
	/** Decimals in the unit printed; the dimension's own default where absent. */
	readonly decimals?: number;
	/** Round to so many significant figures instead, as `about 1,100 ft`. */
	readonly significant?: number;
	/** Print this unit whatever the paper's system (must be a unit of the dimension). */
	readonly unit?: string;
	/** Print no unit (the table's head carries it). */
	readonly bare?: boolean;
	/** `9⅝ in`: as a pipe size, with a fraction where it is one exactly. */
	readonly pipeSize?: boolean;
	/** Round pressures to the nearest 10 psi, as the trade prints ratings. */
	readonly nearest?: number;
	/** Print + on positive values of signed dimensions. */
	readonly sign?: boolean;
}

export type Inline =
	| { readonly kind: "text"; readonly text: string }
	| { readonly kind: "strong"; readonly children: readonly Inline[] }
	| { readonly kind: "emphasis"; readonly children: readonly Inline[] }
	| { readonly kind: "link"; readonly to: string; readonly children: readonly Inline[] }
	| { readonly kind: "verdict"; readonly verdict: Verdict }
	| QuantityText;

export const text = (value: string): Inline => ({ kind: "text", text: value });
