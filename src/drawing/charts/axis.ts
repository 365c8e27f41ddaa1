import { scaleLinear } from "d3-scale";
import { fromCanonical } from "../../units/convert.ts";
import type { Dimension } from "../../units/dimensions.ts";
import { printedUnit, type UnitSystem } from "../../units/format.ts";

/** A round value on an axis, in the paper's unit. */
interface Tick {
	readonly value: number;
	readonly text: string;
	readonly at: number;
}

/** Values of one dimension along one edge of a chart. */
export interface Axis {
	/** From the canonical unit to the page [pt]. */
	readonly at: (value: number) => number;
	readonly ticks: readonly Tick[];
	/** Bare ticks between the numbered ones [pt]. */
	readonly fine: readonly number[];
	readonly unit: string;
	/** Ends on the page. */
	readonly from: number;
	readonly to: number;
}

/**
 * A linear axis.
 *
 * @param range  values at its two ends, in the dimension's canonical unit
 * @param page   the same two ends on the page [pt]
 * @param apart  least distance of numbered ticks [pt]
 */
export const axisOf = (
	dimension: Dimension,
	units: UnitSystem,
	range: readonly [number, number],
	page: readonly [number, number],
	apart: number,
	unit: string = printedUnit(dimension, units),
): Axis => {
	const shown = (value: number) => fromCanonical(value, dimension, unit);
	const scale = scaleLinear()
		.domain([shown(range[0]), shown(range[1])])
		.range([page[0], page[1]]);
	const length = Math.abs(page[1] - page[0]);
	let count = Math.max(1, Math.floor(length / apart));
	// The library may give more than it was asked for.
	while (count > 1 && closest(scale.ticks(count).map((value) => scale(value))) < apart) count -= 1;
	const format = scale.tickFormat(count, ",f");
	return {
		at: (value) => scale(shown(value)),
		ticks: scale.ticks(count).map((value) => ({ value, text: format(value), at: scale(value) })),
		fine: scale.ticks(count * 5).map((value) => scale(value)),
		unit,
		from: page[0],
		to: page[1],
	};
};

const closest = (places: readonly number[]): number =>
	Math.min(
		Number.POSITIVE_INFINITY,
		...places.slice(1).map((place, i) => Math.abs(place - (places[i] ?? place))),
	);
