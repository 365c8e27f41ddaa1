import type { Dimension } from "../units/dimensions.ts";
import type { QuantityStyle } from "../units/format.ts";
import type { Verdict } from "./verdict.ts";

export type { QuantityStyle };

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

export type Inline =
	/** `lang` where the words are in another language than the paper: as a person typed them. */
	| { readonly kind: "text"; readonly text: string; readonly lang?: "en" | "es" }
	| { readonly kind: "strong"; readonly children: readonly Inline[] }
	| { readonly kind: "emphasis"; readonly children: readonly Inline[] }
	| { readonly kind: "link"; readonly to: string; readonly children: readonly Inline[] }
	| { readonly kind: "verdict"; readonly verdict: Verdict }
	| QuantityText;

export const text = (value: string): Inline => ({ kind: "text", text: value });
