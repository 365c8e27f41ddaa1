import { withoutComma } from "./comma.ts";
import { toCanonical } from "./convert.ts";
import type { Dimension } from "./dimensions.ts";
import { plainText, readNumber } from "./parse-number.ts";
import { acceptedUnits, definitionOf, isUnitless, matchUnit, writtenAs } from "./units-of.ts";

/** Why a written quantity could not be taken. */
export type QuantityReason =
	/** A bare number where a unit is due. */
	| "no-unit"
	| "unknown-unit"
	/** The unit's symbol in a letter case that means something else (`mpa`). */
	| "letter-case"
	/** A comma in the number: thousands to one reader, decimals to another. */
	| "comma"
	/** `1 200 ft`, `1_200 ft`: a space or a mark inside the number. */
	| "digit-space"
	/** `4300 to 4500 psi`: more than one number. */
	| "several-numbers"
	/** `23 lb/ft nominal`: a unit that fits, and words after it. */
	| "words-after-unit"
	/** `95/8 in`: a fraction of one or more. */
	| "improper-fraction"
	| "not-a-number"
	| "negative"
	| "not-finite"
	/** A word after the depth that says where it is measured from, but not one that is understood. */
	| "unknown-reference";

export interface QuantityFailure {
	readonly ok: false;
	readonly reason: QuantityReason;
	/** The part that is at fault, as written. */
	readonly found: string;
	/** Units (or depth references) that would have been accepted; empty where none is due. */
	readonly accepted: readonly string[];
	/** The text as it should probably have been written. */
	readonly cure?: string;
	/** Of a comma: how it should be written if the comma marks decimals. */
	readonly alternative?: string;
}

export interface QuantitySuccess {
	readonly ok: true;
	/** In the dimension's canonical unit. */
	readonly value: number;
	/** Symbol of the unit it was written in (`1` for bare numbers). */
	readonly unit: string;
}

type QuantityRead = QuantitySuccess | QuantityFailure;

/** Thousands set apart by `_` or by an apostrophe. */
const GROUPED = /^[+-]? ?\d{1,3}(?:[_'’]\d{3})+(?!\d)/;
/** `4300-4500 psi` */
const RANGE = /^[+-]?[\d.]+ ?(?:-|\.{2,3}) ?\d/;
/** `to 4500 psi`, `± 50 psi`, after a first number. */
const SECOND_NUMBER = /^(?:to|or|and|±|\+\/-) ?\d/i;

/** What follows the longest beginning of a unit's text that is a unit itself; none where no beginning is. */
const wordsAfterUnit = (written: string, dimension: Dimension): string | undefined => {
	const words = written.split(" ");
	for (let count = words.length - 1; count > 0; count -= 1) {
		const match = matchUnit(words.slice(0, count).join(" "), dimension);
		if (match !== undefined && "unit" in match) return words.slice(count).join(" ");
	}
	return undefined;
};

/**
 * Reads a quantity as an engineer writes it: `9 5/8 in`, `9-5/8"`, `9⅝ in`, `54.5 lb/ft`, `4.2e6 psi`, `10 deg/100 ft`.
 * Every kind of space and minus is understood; letter case of units is free except where another case is another unit.
 *
 * A bare number is taken only for counts and ratios. Never throws: what cannot be taken says why.
 */
export const parseQuantity = (text: string, dimension: Dimension): QuantityRead => {
	const plain = plainText(text);
	const accepted = acceptedUnits(dimension);
	const fail = (
		reason: QuantityReason,
		found: string,
		cure?: string,
		alternative?: string,
	): QuantityFailure => ({
		ok: false,
		reason,
		found,
		accepted: isUnitless(dimension) ? [] : accepted,
		...(cure === undefined ? {} : { cure }),
		...(alternative === undefined ? {} : { alternative }),
	});
	if (GROUPED.test(plain)) return fail("digit-space", plain, plain.replace(/(\d)[_'’](?=\d{3})/g, "$1"));
	const number = readNumber(plain);
	if (!number.ok) {
		if (number.reason === "not-a-number" && RANGE.test(plain)) return fail("several-numbers", plain);
		if (number.reason === "comma") return fail("comma", plain, ...withoutComma(plain));
		if (number.reason === "improper-fraction")
			return fail("improper-fraction", plain, plain.replace(/(\d)(\d\/\d+)/, "$1 $2"));
		return fail(number.reason, plain);
	}
	const written = number.rest;
	let symbol = "1";
	if (isUnitless(dimension)) {
		if (/^\d/.test(written)) return fail("digit-space", plain, plain.replace(/(\d) (?=\d)/g, "$1"));
		if (written !== "") return fail("unknown-unit", written, plain.slice(0, -written.length).trim());
	} else {
		if (written === "") return fail("no-unit", plain);
		const match = matchUnit(written, dimension);
		if (match === undefined) {
			if (/^\d/.test(written)) return fail("digit-space", plain, plain.replace(/(\d) (?=\d)/g, "$1"));
			if (SECOND_NUMBER.test(written)) return fail("several-numbers", plain);
			const after = wordsAfterUnit(written, dimension);
			if (after === undefined) return fail("unknown-unit", written);
			return /\d/.test(after)
				? fail("several-numbers", plain)
				: fail("words-after-unit", after, plain.slice(0, -after.length).trim());
		}
		if ("case" in match)
			return fail("letter-case", written, plain.slice(0, -written.length) + writtenAs(match.case));
		symbol = match.unit.symbol;
	}
	const value = toCanonical(number.value, dimension, symbol);
	if (!Number.isFinite(value)) return fail("not-finite", plain);
	if (number.value < 0 && !definitionOf(dimension).signed) return fail("negative", plain);
	return { ok: true, value, unit: symbol };
};
