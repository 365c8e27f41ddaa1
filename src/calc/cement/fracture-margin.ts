import type { Known } from "../../cite/known.ts";
import type { Formation } from "../../well/well.ts";
import { verticalMark } from "../depths/marks.ts";
import { fracturePressure } from "../pressure/fracture-gradient.ts";
import { pressureDifference } from "../pressure/hydrostatic.ts";
import type { AnnulusColumn, CementResults } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import type { JobContext } from "./cement-results.ts";
import { type FluidColumn, standingPressureAt } from "./column.ts";

type Tvd = Known<"true-vertical-depth">;
type Margin = NonNullable<CementResults["least_fracture_margin"]>;

/**
 * Where cement in place comes nearest to breaking down rock that is open to it.
 *
 * Both pressures are straight lines between the ends of a formation and the changes of fluid, so the least margin lies
 * at one of those. Formations without a fracture gradient are passed over.
 */
export const leastFractureMargin = (
	context: JobContext,
	columns: readonly FluidColumn[],
	column: AnnulusColumn,
): Margin | undefined => {
	const { well, path, string } = context;
	const outer = well.strings.find((s) => s.id === string.within);
	// Loose ground around an outermost string has no fracture gradient to speak of.
	if (outer === undefined) return undefined;
	const from = tvdAt(path, outer.shoe);
	// A toe may climb: the open hole then goes deeper than its shoe.
	const to = [tvdAt(path, string.shoe), ...columns.map((c) => c.bottom)].reduce((a, b) =>
		b.value > a.value ? b : a,
	);
	const margins = well.geology.formations.flatMap((formation) => {
		const [top, bottom] = openPart(formation, from, to);
		const changes = columns.map((c) => c.bottom).filter((d) => d.value > top.value && d.value < bottom.value);
		return top.value < bottom.value
			? [top, ...changes, bottom].flatMap((at) => marginAt(context, column, formation, at))
			: [];
	});
	return margins.sort((a, b) => a.margin.value - b.margin.value)[0];
};

/** The part of a formation between two depths; empty where the first is not above the second. */
const openPart = ({ top, base }: Formation, from: Tvd, to: Tvd): readonly [Tvd, Tvd] => [
	top.value > from.value ? top : from,
	base !== undefined && base.value < to.value ? base : to,
];

const marginAt = (
	{ well, path }: JobContext,
	column: AnnulusColumn,
	{ name, fractureGradient }: Formation,
	tvd: Tvd,
): readonly Margin[] => {
	if (fractureGradient === undefined) return [];
	const at = verticalMark(path, tvd, well.datum);
	const breaks = fracturePressure.of({ F: fractureGradient, D: at.below_ground });
	const margin = pressureDifference.of({ p_1: breaks, p_2: standingPressureAt.of({ column, D: tvd }) });
	return [{ formation: name, at, margin }];
};
