import type { DepthMark } from "../calc/results.ts";
import type { Known } from "../cite/known.ts";
import { fromCanonical } from "../units/convert.ts";
import { printedUnit, type QuantityStyle, quantityString, type UnitSystem } from "../units/format.ts";
import { compose, type Line, type Run, run, sentence } from "./line-of-text.ts";
import type { DrawingWords } from "./words/words.ts";

/** Key of a value in the index of values, where it has one. */
export type KeyOf = (value: Known) => string | undefined;

/** Prints values into labels, each with its key. */
export interface Print {
	readonly units: UnitSystem;
	readonly words: DrawingWords;
	readonly value: (known: Known, style?: QuantityStyle) => Run;
	/** Without its sign: for words that say which way. */
	readonly magnitude: (known: Known, style?: QuantityStyle) => Run;
	/** Digits without the unit. */
	readonly number: (known: Known, style?: QuantityStyle) => Run;
	/** `1,185 ft MD · 1,185 ft TVD`; the vertical depth alone for a place the hole does not reach. */
	readonly mark: (mark: DepthMark) => Line;
	/** The same, one under the other, for narrow labels. */
	readonly stacked: (mark: DepthMark) => Line[];
	readonly below: (mark: DepthMark) => Line;
	/** Unit of depth, and how many of it a foot has: 1 for feet, 0.3048 for metres. */
	readonly depthUnit: string;
	readonly perFoot: number;
}

export const printer = (
	units: UnitSystem,
	words: DrawingWords,
	keyOf?: KeyOf,
	/** Of units that are said in words. */
	language: "en" | "es" = "en",
): Print => {
	const keyed = (known: Known, text: string): Run => {
		const key = keyOf?.(known);
		return key === undefined ? run(text, { whole: true }) : run(text, { key });
	};
	const value = (known: Known, style?: QuantityStyle): Run =>
		keyed(
			known,
			quantityString(
				{
					dimension: known.dimension,
					value: known.value,
					...(style ? { style } : {}),
				},
				units,
				language,
			),
		);
	const depthUnit = printedUnit("true-vertical-depth", units);
	return {
		units,
		words,
		value,
		magnitude: (known, style) => {
			const printed = value(known, style);
			return { ...printed, text: printed.text.replace(/^\u2212/u, "") };
		},
		number: (known, style) => value(known, { ...style, bare: true }),
		mark: (mark) =>
			mark.md === undefined
				? compose(words.depthVertical, { tvd: value(mark.tvd) })
				: compose(words.depthBoth, {
						md: value(mark.md),
						tvd: value(mark.tvd),
					}),
		stacked: (mark) => [
			...(mark.md === undefined ? [] : [compose(words.depthMeasured, { md: value(mark.md) })]),
			compose(words.depthVertical, { tvd: value(mark.tvd) }),
		],
		below: (mark) => compose(words.depthBelowGround, { depth: value(mark.below_ground) }),
		depthUnit,
		perFoot: fromCanonical(1, "true-vertical-depth", depthUnit),
	};
};

/** A name within a sentence: `surface casing`. */
export const withinSentence = (name: string): string =>
	/^\p{Lu}\p{Ll}/u.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name;

/** `Surface hole`, from a hole's id. */
export const holeName = (words: DrawingWords, id: string): string => {
	const known = words.holes[id];
	if (known !== undefined) return known;
	const plain = id.replaceAll(/[-_]/gu, " ");
	return sentence(words.holeNamed, { name: plain.charAt(0).toUpperCase() + plain.slice(1) });
};

/** `Surface casing`, from a string's id and kind. */
export const stringName = (
	words: DrawingWords,
	string: { readonly id: string; readonly kind: string },
): string => {
	const known = string.kind === "casing" ? words.strings[string.id] : undefined;
	if (known !== undefined) return known;
	const plain = string.id.replaceAll(/[-_]/gu, " ");
	const name = plain.charAt(0).toUpperCase() + plain.slice(1);
	if (plain.toLowerCase().includes(string.kind)) return name;
	const phrase =
		string.kind === "liner" ? words.liner : string.kind === "tieback" ? words.tieback : words.casing;
	return sentence(phrase, { name });
};
