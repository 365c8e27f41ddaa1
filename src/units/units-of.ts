import { DIMENSIONS, type Dimension, type DimensionDefinition, type Unit } from "./dimensions.ts";

/** The dimension's entry, seen through its interface. */
export const definitionOf = (dimension: Dimension): DimensionDefinition => DIMENSIONS[dimension];

/** True for dimensions that are written and printed as bare numbers (counts, ratios). */
export const isUnitless = (dimension: Dimension): boolean => definitionOf(dimension).field.unit === "";

/** The unit as it is written after a number; `1` itself is never written. */
export const writtenAs = (unit: Unit): string =>
	unit.symbol === "1" ? (unit.spellings?.[0] ?? "") : unit.symbol;

/** The unit as a paper prints it behind a number with decimals: a word is in the plural, `6.4 acres`. */
export const printedAs = (unit: Unit): string => unit.printed ?? writtenAs(unit);

/** Units a value of this dimension may be written in, as shown in messages. */
export const acceptedUnits = (dimension: Dimension): string[] =>
	definitionOf(dimension)
		.units.map(writtenAs)
		.filter((word) => word !== "");

/**
 * One spelling for what people write in several: `°F`, `degF`, `ft²`, `ft2`, `100 ft`, `100ft`, `lb per gal`, `lbs`,
 * `sack`, `sx`, and the typographic inch and foot marks.
 */
export const unitKey = (text: string): string =>
	text
		.trim()
		.replace(/\s+/g, " ")
		.replace(/[’′‘]/g, "'")
		.replace(/[”″“]|''/g, '"')
		.replace(/²/g, "2")
		.replace(/³/g, "3")
		.replace(/[·⋅]/g, ".")
		.replace(/°/g, "deg")
		.replace(/％/g, "%")
		.replace(/\^([23])(?![.\d])/g, "$1")
		.replace(/\blbs\b/gi, "lb")
		.replace(/\b(?:sacks?|sks|sx)\b/gi, "sk")
		.replace(/ per /gi, "/")
		.replace(/ ?([/^.]) ?/g, "$1")
		.replace(/(\d) (?=[a-z])/gi, "$1");

/** A unit found by its written form; `case` tells of a symbol whose other letter case means something else. */
type UnitMatch = { readonly unit: Unit } | { readonly case: Unit } | undefined;

interface Spellings {
	readonly exact: ReadonlyMap<string, Unit>;
	readonly anyCase: ReadonlyMap<string, Unit>;
	readonly strict: ReadonlyMap<string, Unit>;
}

const tables = new Map<Dimension, Spellings>();

const spellingsOf = (dimension: Dimension): Spellings => {
	const known = tables.get(dimension);
	if (known !== undefined) return known;
	const exact = new Map<string, Unit>();
	const anyCase = new Map<string, Unit>();
	const strict = new Map<string, Unit>();
	for (const unit of definitionOf(dimension).units) {
		for (const word of [unit.symbol, ...(unit.spellings ?? [])]) {
			if (word === "1") continue;
			const key = unitKey(word);
			exact.set(key, unit);
			const fold = unit.caseMatters && word === unit.symbol ? strict : anyCase;
			fold.set(key.toLowerCase(), unit);
		}
	}
	const table = { exact, anyCase, strict };
	tables.set(dimension, table);
	return table;
};

/** Looks a written unit up; a full stop after an abbreviation (`8 in.`) is no difference. */
export const matchUnit = (text: string, dimension: Dimension): UnitMatch => {
	const { exact, anyCase, strict } = spellingsOf(dimension);
	const key = unitKey(text);
	for (const word of [key, key.replace(/\.$/, "")]) {
		const unit = exact.get(word) ?? anyCase.get(word.toLowerCase());
		if (unit !== undefined) return { unit };
		const otherCase = strict.get(word.toLowerCase());
		if (otherCase !== undefined) return { case: otherCase };
	}
	return undefined;
};

/** The unit with exactly this symbol. Throws where a caller names a unit that the dimension does not have. */
export const unitOf = (dimension: Dimension, symbol: string): Unit => {
	const unit = definitionOf(dimension).units.find((candidate) => candidate.symbol === symbol);
	if (unit === undefined) throw new RangeError(`${dimension} has no unit "${symbol}"`);
	return unit;
};
