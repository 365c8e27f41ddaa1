import type { Known } from "../../cite/known.ts";
import type { Formation } from "../../well/well.ts";
import { verticalMark } from "../depths/marks.ts";
import { fracturePressure } from "../pressure/fracture-gradient.ts";
import { hydrostaticPressure, pressureDifference } from "../pressure/hydrostatic.ts";
import { marginAsDensity } from "../pressure/open-hole.ts";
import type { AnnulusColumn, CementResults } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import type { JobContext } from "./cement-results.ts";
import { type FluidColumn, standingPressureAt } from "./column.ts";

type Tvd = Known<"true-vertical-depth">;
type Margin = NonNullable<CementResults["least_fracture_margin"]>;

/** What the shoe of the string outside was tested to, or is to be tested to, and where; nothing where it is not. */
export const testedAtShoe = ({
	well,
	path,
	string,
}: Pick<JobContext, "well" | "path" | "string">):
	| { readonly at: Tvd; readonly pressure: Known<"pressure"> }
	| undefined => {
	const outer = well.strings.find(({ id }) => id === string.within);
	const equivalent = outer?.shoeTest?.actual?.equivalent ?? outer?.shoeTest?.equivalent;
	if (outer === undefined || equivalent === undefined) return undefined;
	const at = tvdAt(path, outer.shoe);
	return { at, pressure: hydrostaticPressure.of({ ρ: equivalent, D: at }) };
};

/** Around an outermost string the ground this near the surface is dug out or loose, and bears nothing to speak of [ft]. */
const CELLAR = 10;

/** Whether the hole of a string is open at a depth, so that what stands in it presses on rock. */
export const openAt = (
	{ well, path, string }: Pick<JobContext, "well" | "path" | "string">,
	tvd: Tvd,
): boolean => {
	const outer = well.strings.find(({ id }) => id === string.within);
	return outer === undefined
		? tvd.value > well.datum.groundLevel.value + CELLAR
		: tvd.value >= tvdAt(path, outer.shoe).value - TOUCHING;
};

const TOUCHING = 1e-3;

/**
 * Where cement in place comes nearest to breaking down rock that is open to it. At the shoe of the string outside the
 * lesser of rock and shoe test counts.
 *
 * Both pressures are straight lines between the ends of a formation and the changes of fluid, so the least margin lies
 * at one of those. Formations without a fracture gradient are passed over, and so is the
 * ground around the cellar.
 */
export const leastFractureMargin = (
	context: JobContext,
	columns: readonly FluidColumn[],
	column: AnnulusColumn,
): Margin | undefined => {
	const { well, path, string } = context;
	const from = tvdAt(
		path,
		well.strings.find(({ id }) => id === string.within)?.shoe ?? well.datum.groundLevel,
	);
	const tested = testedAtShoe(context);
	// A toe may climb: the open hole then goes deeper than its shoe.
	const to = [tvdAt(path, string.shoe), ...columns.map((c) => c.bottom)].reduce((a, b) =>
		b.value > a.value ? b : a,
	);
	const margins = well.geology.formations.flatMap((formation) => {
		const [top, bottom] = openPart(formation, from, to);
		const changes = columns.map((c) => c.bottom).filter((d) => d.value > top.value && d.value < bottom.value);
		return top.value < bottom.value
			? [top, ...changes, bottom]
					.filter((at) => openAt(context, at))
					.flatMap((at) => marginAt(context, column, formation, at))
			: [];
	});
	const shoe = tested && marginTo(context, column, "shoe test", tested.at, tested.pressure);
	return [...margins, ...(shoe === undefined ? [] : [shoe])].sort(
		(a, b) => a.margin.value - b.margin.value,
	)[0];
};

/** The part of a formation between two depths; empty where the first is not above the second. */
const openPart = ({ top, base }: Formation, from: Tvd, to: Tvd): readonly [Tvd, Tvd] => [
	top.value > from.value ? top : from,
	base !== undefined && base.value < to.value ? base : to,
];

const marginAt = (
	context: JobContext,
	column: AnnulusColumn,
	{ name, fractureGradient }: Formation,
	tvd: Tvd,
): readonly Margin[] => {
	if (fractureGradient === undefined) return [];
	const { path, well } = context;
	const D = verticalMark(path, tvd, well.datum).below_ground;
	return [marginTo(context, column, name, tvd, fracturePressure.of({ F: fractureGradient, D }))];
};

const marginTo = (
	{ well, path }: JobContext,
	column: AnnulusColumn,
	formation: string,
	tvd: Tvd,
	bears: Known<"pressure">,
): Margin => {
	const margin = pressureDifference.of({ p_1: bears, p_2: standingPressureAt.of({ column, D: tvd }) });
	return {
		formation,
		at: verticalMark(path, tvd, well.datum),
		margin,
		as_density: marginAsDensity.of({ Δp: margin, D: tvd }),
	};
};
