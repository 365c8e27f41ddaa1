import type { Known } from "../cite/known.ts";
import { type QuantityStyle, quantityString, type UnitSystem } from "../units/format.ts";
import { definitionOf } from "../units/units-of.ts";
import { practicallyEqual } from "./practically-equal.ts";

/** A sentence with its numbers still numbers, so that a paper may print them in its own units. */
export type Reason = readonly ReasonPart[];
export type ReasonPart =
	| string
	| Known
	/** Printed with as many decimals as tell it from the other. */
	| { readonly told: Known; readonly from: Known; readonly magnitude?: boolean }
	/** The size of a signed value, where the words already say on which side it lies. */
	| { readonly magnitude: Known }
	/** A factor as the rule has it: with no more decimals than it needs, and enough that the product can be checked. */
	| { readonly factor: Known };

const MOST_DECIMALS = 6;
const MOST_FACTOR_DECIMALS = 4;

/** Times are said in hours where an hour or more is meant; everything else as its dimension prints. */
const styleOf = (known: Known, system: UnitSystem, extra: number) => {
	const units = definitionOf(known.dimension).units;
	const hour = units.find((unit) => unit.symbol === "hr");
	const minute = units.find((unit) => unit.symbol === "min");
	if (known.dimension === "duration" && hour && minute && known.value * minute.si >= hour.si) {
		const whole = Number.isInteger((known.value * minute.si) / hour.si);
		return { unit: "hr", decimals: (whole ? 0 : 1) + extra };
	}
	const decimals = definitionOf(known.dimension)[system].decimals;
	return extra > 0 ? { decimals: decimals + extra } : {};
};

const print = (known: Known, system: UnitSystem, magnitude: boolean, extra = 0): string =>
	quantityString(
		{
			dimension: known.dimension,
			value: magnitude ? Math.abs(known.value) : known.value,
			style: styleOf(known, system, extra),
		},
		system,
	);

/** Decimals to add so that two different numbers do not print the same: 199.7 ft is not "200 ft, at least 200 ft". */
const decimalsToTell = (a: Known, b: Known, system: UnitSystem): number => {
	if (a.dimension !== b.dimension || practicallyEqual(a.value, b.value)) return 0;
	for (let extra = 0; extra < MOST_DECIMALS; extra++)
		if (print(a, system, false, extra) !== print(b, system, false, extra)) return extra;
	return MOST_DECIMALS;
};

const factorStyle = ({ value }: Known): QuantityStyle => {
	for (let decimals = 0; decimals < MOST_FACTOR_DECIMALS; decimals++)
		if (practicallyEqual(Number(value.toFixed(decimals)), value)) return { decimals };
	return { decimals: MOST_FACTOR_DECIMALS };
};

/** A part of a sentence as it is said: words, or a value with the style that prints it. */
export type SaidPart =
	| string
	| { readonly known: Known; readonly value: number; readonly style: QuantityStyle };

const saidPart = (part: ReasonPart, system: UnitSystem): SaidPart => {
	if (typeof part === "string") return part;
	if ("factor" in part)
		return { known: part.factor, value: part.factor.value, style: factorStyle(part.factor) };
	const known = "told" in part ? part.told : "magnitude" in part ? part.magnitude : part;
	const size = "told" in part ? part.magnitude === true : "magnitude" in part;
	const extra = "told" in part ? decimalsToTell(part.told, part.from, system) : 0;
	return { known, value: size ? Math.abs(known.value) : known.value, style: styleOf(known, system, extra) };
};

const partText = (part: ReasonPart, system: UnitSystem): string => {
	const said = saidPart(part, system);
	return typeof said === "string"
		? said
		: quantityString({ dimension: said.known.dimension, value: said.value, style: said.style }, system);
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Words and numbers joined, for use inside a sentence. */
export const phrase = (reason: Reason, system: UnitSystem = "field"): string =>
	reason.map((part) => partText(part, system)).join("");

/** The sentence as a paper of this unit system prints it. */
export const say = (reason: Reason, system: UnitSystem = "field"): string => capital(phrase(reason, system));

/** The sentence in parts, its values still values, for a paper that prints each with the key it is known by. */
export const sayParts = (reason: Reason, system: UnitSystem): readonly SaidPart[] =>
	reason.map((part, i) => {
		const said = saidPart(part, system);
		return i === 0 && typeof said === "string" ? capital(said) : said;
	});

/** Sentences one after another, none of them twice. */
export const joined = (reasons: readonly Reason[]): Reason =>
	[...new Map(reasons.map((reason) => [say(reason), reason])).values()].flatMap((reason, i): Reason => {
		const [first, ...rest] = reason;
		const begun: Reason = typeof first === "string" ? [capital(first), ...rest] : reason;
		return i === 0 ? begun : [" ", ...begun];
	});

/** `a`, `a and b`, `a, b and c`. */
export const listed = (words: readonly string[]): string =>
	words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;
