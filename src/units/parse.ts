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
	/** `1 200 ft`: a space inside the number. */
	| "digit-space"
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

export type QuantityRead = QuantitySuccess | QuantityFailure;

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
	const number = readNumber(plain);
	if (!number.ok) {
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
		if (match === undefined)
			return /^\d/.test(written)
				? fail("digit-space", plain, plain.replace(/(\d) (?=\d)/g, "$1"))
				: fail("unknown-unit", written);
		if ("case" in match)
			return fail("letter-case", written, plain.slice(0, -written.length) + writtenAs(match.case));
		symbol = match.unit.symbol;
	}
	const value = toCanonical(number.value, dimension, symbol);
	if (!Number.isFinite(value)) return fail("not-finite", plain);
	if (number.value < 0 && !definitionOf(dimension).signed) return fail("negative", plain);
	return { ok: true, value, unit: symbol };
};
