import { fromCanonical } from "./convert.ts";
import type { Dimension } from "./dimensions.ts";
import { practicallyEqual } from "./practically-equal.ts";
import { decimalsForSignificant, nearestMultiple, roundedDigits } from "./round-decimal.ts";
import { type SpokenLanguage, spoken } from "./spoken.ts";
import { definitionOf, isUnitless, printedAs, unitOf } from "./units-of.ts";

/** Units a paper is printed in. The calculation never changes with it. */
export type UnitSystem = "field" | "metric";

/** How a number is printed; the paper's choice, never the calculation's. */
export interface QuantityStyle {
	/**
	 * Decimals in the dimension's field unit, or in `unit` where that is named; the dimension's own default where absent.
	 * A metric paper moves them with its own default, so that `psi` without decimals becomes `MPa` with two.
	 */
	readonly decimals?: number;
	/** Round to so many significant figures instead, as `about 1,100 ft`. */
	readonly significant?: number;
	/** Print this unit whatever the paper's system (must be a unit of the dimension). */
	readonly unit?: string;
	/** Print no unit (the table's head carries it). */
	readonly bare?: boolean;
	/** `9⅝ in`: as a pipe size, with a fraction where it is one exactly. */
	readonly pipeSize?: boolean;
	/** Round to a multiple first, where the canonical unit is printed: 10 for pressures, as the trade prints ratings. */
	readonly nearest?: number;
	/** Print + on positive values of signed dimensions. */
	readonly sign?: boolean;
	/** Print the size alone: the words beside it say which way, as `34 ft below`. The value keeps its sign. */
	readonly unsigned?: boolean;
	/** As it is said to a room: `15 million gallons`. */
	readonly spoken?: boolean;
}

/** A number with what is needed to print it. */
export interface Printable {
	readonly dimension: Dimension;
	/** In the dimension's canonical unit. */
	readonly value: number;
	readonly style?: QuantityStyle;
}

export interface PrintedQuantity {
	/** Digits with thousands separators, and U+2212 for minus. */
	readonly number: string;
	/** Empty for counts, ratios and bare numbers. Spaces inside it do not break. */
	readonly unit: string;
}

const NO_BREAK_SPACE = "\u00a0";
const MINUS = "\u2212";

/** Sixteenths that have a glyph of their own; the others are written out. */
const GLYPHS: readonly string[] = ["", "", "⅛", "", "¼", "", "⅜", "", "½", "", "⅝", "", "¾", "", "⅞", ""];

const unitFor = ({ dimension, style }: Printable, system: UnitSystem): string =>
	style?.unit ?? (definitionOf(dimension)[system].unit || "1");

const decimalsFor = ({ dimension, style = {} }: Printable, system: UnitSystem, symbol: string): number => {
	if (style.unit !== undefined && style.decimals !== undefined) return style.decimals;
	const { field, [system]: own } = definitionOf(dimension);
	if (style.unit === undefined || symbol === own.unit) {
		const wish = style.unit === undefined ? (style.decimals ?? field.decimals) : field.decimals;
		return Math.max(0, wish + own.decimals - field.decimals);
	}
	const coarser = unitOf(dimension, symbol).si / unitOf(dimension, field.unit || "1").si;
	return Math.max(0, field.decimals + Math.round(Math.log10(coarser)));
};

const grouped = (digits: string): string => {
	const [whole = "", fraction] = digits.split(".");
	const separated = whole.replace(/\B(?=(\d{3})+$)/g, ",");
	return fraction === undefined ? separated : `${separated}.${fraction}`;
};

const MOST_DECIMALS_OF_TICK = 3;

/** A number without a unit, as a paper prints it: `1,185`, U+2212 for minus, zero without a sign. */
export const numberString = (
	value: number,
	decimals = 0,
	style: { readonly sign?: boolean } = {},
): string => {
	const digits = grouped(roundedDigits(value, decimals));
	if (!/[1-9]/.test(digits)) return digits;
	return `${value < 0 ? MINUS : style.sign === true ? "+" : ""}${digits}`;
};

/** The number at a tick of an axis: with no more decimals than it needs. */
export const tickString = (value: number): string => {
	for (let decimals = 0; decimals < MOST_DECIMALS_OF_TICK; decimals++)
		if (practicallyEqual(Number(roundedDigits(value, decimals)), Math.abs(value)))
			return numberString(value, decimals);
	return numberString(value, MOST_DECIMALS_OF_TICK);
};

/** Decimal degrees, to a tenth of a foot or so; with a plain hyphen, so that a map program takes what is copied. */
export const decimalDegrees = (degrees: number): string =>
	`${degrees < 0 ? "-" : ""}${roundedDigits(degrees, 6)}°`;

const asPipeSize = (magnitude: number): string | undefined => {
	const sixteenths = magnitude * 16;
	if (!Number.isInteger(sixteenths)) return undefined;
	const whole = Math.floor(magnitude);
	const part = sixteenths - whole * 16;
	if (part === 0) return grouped(String(whole));
	const glyph = GLYPHS[part] ?? "";
	const lead = whole === 0 ? "" : grouped(String(whole));
	if (glyph !== "") return lead + glyph;
	return lead === "" ? `${part}/16` : `${lead}${NO_BREAK_SPACE}${part}/16`;
};

/**
 * Number and unit as a paper prints them. The form is fixed (point for decimals, comma for thousands) whatever the
 * machine's locale, and zero never carries a sign.
 *
 * Throws a RangeError for a number that is not finite: it must never reach a reader.
 */
export const formatQuantity = (item: Printable, system: UnitSystem): PrintedQuantity => {
	const { dimension, style = {} } = item;
	if (!Number.isFinite(item.value)) throw new RangeError(`${dimension}: ${item.value} cannot be printed`);
	const bare = style.bare === true || isUnitless(dimension);
	const symbol = unitFor(item, system);
	// In another unit the multiple would move a number that was typed round there: 28 MPa is not 27.99 MPa.
	const inTrade = symbol === (definitionOf(dimension).canonical || "1");
	const rounded =
		style.nearest === undefined || !inTrade ? item.value : nearestMultiple(item.value, style.nearest);
	const value = fromCanonical(rounded, dimension, symbol);
	const decimals =
		style.significant === undefined
			? decimalsFor(item, system, symbol)
			: decimalsForSignificant(value, style.significant);
	const digits =
		(style.pipeSize === true && symbol === "in" ? asPipeSize(Math.abs(value)) : undefined) ??
		grouped(roundedDigits(value, decimals));
	const zero = !/[1-9⅛¼⅜½⅝¾⅞]/.test(digits);
	const plus = style.sign === true && definitionOf(dimension).signed === true ? "+" : "";
	const sign = zero || style.unsigned === true ? "" : value < 0 ? MINUS : plus;
	const unit = bare ? "" : printedAs(unitOf(dimension, symbol)).replaceAll(" ", NO_BREAK_SPACE);
	return { number: sign + digits, unit };
};

/** Number and unit joined: a no-break space between, none before the degree sign of an angle. */
export const joinUnit = ({ number, unit }: PrintedQuantity): string =>
	unit === "" ? number : /^°(?![CF])/.test(unit) ? number + unit : number + NO_BREAK_SPACE + unit;

/** `10,000 psi`, as running text has it. */
export const quantityString = (
	item: Printable,
	system: UnitSystem,
	language: SpokenLanguage = "en",
): string => {
	const printed = formatQuantity(item, system);
	return item.style?.spoken === true ? spoken(printed, language) : joinUnit(printed);
};

/** The unit that a table's head names for a column of such numbers. */
export const printedUnit = (dimension: Dimension, system: UnitSystem, style: QuantityStyle = {}): string =>
	formatQuantity({ dimension, value: 0, style: { ...style, bare: false } }, system).unit;
