import { fromCanonical } from "../units/convert.ts";
import { type QuantityStyle, quantityString, type UnitSystem } from "../units/format.ts";
import { practicallyEqual } from "../units/practically-equal.ts";
import { definitionOf } from "../units/units-of.ts";
import type { Quantified } from "./message.ts";

const MOST_DECIMALS = 6;
const MOST_FACTOR_DECIMALS = 4;

/** Times are said in hours where an hour or more is meant; everything else as its dimension prints. */
export const sentenceStyle = (known: Quantified, system: UnitSystem, extra = 0): QuantityStyle => {
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

const print = ({ dimension, value }: Quantified, system: UnitSystem, extra: number): string =>
	quantityString({ dimension, value, style: sentenceStyle({ dimension, value }, system, extra) }, system);

/** Decimals to add so that two different numbers do not print the same: 199.7 ft is not "200 ft, at least 200 ft". */
export const decimalsToTell = (a: Quantified, b: Quantified, system: UnitSystem): number => {
	if (a.dimension !== b.dimension || practicallyEqual(a.value, b.value)) return 0;
	for (let extra = 0; extra < MOST_DECIMALS; extra++)
		if (print(a, system, extra) !== print(b, system, extra)) return extra;
	return MOST_DECIMALS;
};

/** Decimals that a factor needs for its product to be checked: to within a thousandth, where it is converted. */
const NEAR = 5e-4;

export const factorStyle = ({ dimension, value }: Quantified, system: UnitSystem): QuantityStyle => {
	const { unit } = definitionOf(dimension)[system];
	const { canonical } = definitionOf(dimension);
	if (unit !== "" && unit !== canonical) {
		const here = fromCanonical(value, dimension, unit);
		for (let decimals = 0; decimals < MOST_FACTOR_DECIMALS; decimals++)
			if (Math.abs(Number(here.toFixed(decimals)) - here) <= NEAR * Math.abs(here)) return { unit, decimals };
		return { unit, decimals: MOST_FACTOR_DECIMALS };
	}
	for (let decimals = 0; decimals < MOST_FACTOR_DECIMALS; decimals++)
		if (practicallyEqual(Number(value.toFixed(decimals)), value)) return { decimals };
	return { decimals: MOST_FACTOR_DECIMALS };
};
