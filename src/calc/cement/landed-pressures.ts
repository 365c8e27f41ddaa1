import type { Known } from "../../cite/known.ts";
import { message } from "../../messages/message.ts";
import type { Slurry } from "../../well/well.ts";
import { holeMark } from "../depths/marks.ts";
import { maybe } from "../gaps.ts";
import {
	annulusFrictionGradient,
	equivalentCirculatingDensity,
	frictionLoss,
	totalLoss,
} from "../pressure/bingham-flow.ts";
import { DATUM_DEPTH, equivalentMudWeight, pressureDifference } from "../pressure/hydrostatic.ts";
import type { CasingResults, CementResults } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { annulusIntervals } from "./annulus.ts";
import { boreIntervals, DATUM } from "./bore.ts";
import { pipeCapacity } from "./capacity.ts";
import { grouted, type JobContext } from "./cement-results.ts";
import { type FluidColumn, fluidWeight, netHoldDown, pressureUnder, standingColumn } from "./column.ts";
import { leastFractureMargin } from "./fracture-margin.ts";
import { fluidsOutside } from "./standing-fluids.ts";

type Depth = Known<"measured-depth">;

interface Landed {
	readonly key: string;
	/** Top of the cement column. */
	readonly top: Depth;
	readonly collar: Depth | undefined;
	/** The slurry at the shoe, if one reaches it. */
	readonly slurry: Slurry | undefined;
	readonly casing: CasingResults | undefined;
}

type PressureResults = Pick<
	CementResults,
	| "spacer_top"
	| "annulus_hydrostatic_at_shoe"
	| "equivalent_density_at_shoe"
	| "circulating_density_at_shoe"
	| "inside_hydrostatic_at_shoe"
	| "final_lift"
	| "net_hold_down"
	| "annulus_column"
	| "least_fracture_margin"
>;

/** Pressures at the moment the plug lands: the annulus full, the displacement inside down to the collar. */
export const landedPressures = (context: JobContext, landed: Landed): PressureResults => {
	const { well, path, string, job, gaps } = context;
	const { key } = landed;
	if (landed.slurry === undefined) {
		gaps.missing(`${key}.annulus_hydrostatic_at_shoe`, message("calc/no-slurry-reaches-shoe"), [
			[...context.at, "cement", "slurries"],
		]);
		return {};
	}
	const outside = fluidsOutside(well, path, string, job, landed.top);
	if (outside.unknown !== undefined) {
		gaps.missing(
			`${key}.annulus_hydrostatic_at_shoe`,
			message("calc/density-above-cement-is-not-given", { unknown: outside.unknown }),
			[
				outside.unknown === "mud"
					? [...holeOf(context), "fluid", "density"]
					: [...context.at, "cement", "spacer", "density"],
			],
		);
		return {};
	}
	const shoe = tvdAt(path, string.shoe);
	const pressure = pressureUnder(outside.columns);
	const column = standingColumn.of({
		D_top: outside.columns.map((c) => c.top),
		D_bottom: outside.columns.map((c) => c.bottom),
		ρ_i: outside.columns.map((c) => c.density),
	});
	const inside = fluidsInside(context, landed);
	const within = inside.length === 0 ? undefined : pressureUnder(inside);
	const equivalent = equivalentMudWeight.of({ p: pressure, D: shoe });
	return {
		...maybe("spacer_top", outside.spacerTop && holeMark(path, outside.spacerTop, well.datum)),
		annulus_hydrostatic_at_shoe: pressure,
		equivalent_density_at_shoe: equivalent,
		...maybe("circulating_density_at_shoe", circulating(context, outside.columns, equivalent, key)),
		...maybe("inside_hydrostatic_at_shoe", within),
		...maybe("final_lift", within && pressureDifference.of({ p_1: pressure, p_2: within })),
		...maybe("net_hold_down", holdDown(context, landed, inside, pressure)),
		annulus_column: column,
		...maybe("least_fracture_margin", leastFractureMargin(context, outside.columns, column)),
	};
};

/** Displacement down to the collar, the last slurry below it. Nothing where either is not known. */
const fluidsInside = (context: JobContext, { key, collar, slurry }: Landed): readonly FluidColumn[] => {
	const { path, string, job, gaps, at } = context;
	const density = job.displacement?.density;
	if (density === undefined || slurry === undefined) {
		if (!grouted(context))
			gaps.missing(`${key}.final_lift`, message("calc/density-displacement-is-not-given"), [
				[...at, "cement", "displacement"],
			]);
		return [];
	}
	const middle = collar ?? string.shoe;
	const pushed = {
		fluid: "displacement",
		from: DATUM,
		to: middle,
		top: DATUM_DEPTH,
		bottom: tvdAt(path, middle),
		density,
	};
	return collar === undefined
		? [pushed]
		: [
				pushed,
				{
					fluid: slurry.id,
					from: collar,
					to: string.shoe,
					top: pushed.bottom,
					bottom: tvdAt(path, string.shoe),
					density: slurry.density,
				},
			];
};

/** Weight of pipe and contents against the push on the end; only for a string of one diameter, which the form needs. */
const holdDown = (
	{ path, string }: JobContext,
	{ casing }: Landed,
	inside: readonly FluidColumn[],
	pressure: Known<"pressure">,
): Known<"force"> | undefined => {
	const [first] = string.sections;
	const sizes = new Set(string.sections.map((s) => s.outsideDiameter.value));
	// A liner hangs on its running string until its hanger is set.
	if (
		string.kind === "liner" ||
		casing === undefined ||
		inside.length === 0 ||
		first === undefined ||
		sizes.size > 1
	)
		return undefined;
	const weights = inside.flatMap(({ from, to, density }) =>
		boreIntervals(string, from, to).map((bore) =>
			fluidWeight.of({
				ρ: density,
				C: pipeCapacity.of({ d: bore.insideDiameter }),
				D_top: bore.top === DATUM ? DATUM_DEPTH : tvdAt(path, bore.top),
				D_bottom: tvdAt(path, bore.bottom),
			}),
		),
	);
	return netHoldDown.of({ W: casing.weight_in_air, W_i: weights, p: pressure, D: first.outsideDiameter });
};

/**
 * With the last of the displacement going down: friction of every fluid in the annulus at that rate, in gauge hole (the
 * narrower, so the greater loss), from the ground down.
 */
const circulating = (
	context: JobContext,
	columns: readonly FluidColumn[],
	equivalent: Known<"density">,
	key: string,
): Known<"density"> | undefined => {
	const { well, path, string, job, gaps, at } = context;
	const rate = job.displacement?.rate;
	if (rate === undefined) return undefined;
	const ground = well.datum.groundLevel;
	const moving = columns.filter((c) => c.to.value > ground.value);
	const stiff = moving.find((c) => c.plasticViscosity === undefined || c.yieldPoint === undefined);
	if (stiff !== undefined)
		return gaps.missing(
			`${key}.circulating_density_at_shoe`,
			message("calc/plastic-viscosity-and-yield-point-are", { fluid: stiff.fluid }),
			[
				stiff.fluid === "mud" || stiff.fluid === "spacer"
					? [...holeOf(context), "fluid"]
					: [...at, "cement", "slurries"],
			],
		);
	const losses = moving.flatMap(({ from, to, density: ρ, plasticViscosity: PV, yieldPoint: YP }) =>
		annulusIntervals(well, string, "gauge hole", from.value < ground.value ? ground : from, to).flatMap(
			(i) =>
				PV === undefined || YP === undefined || i.inner === undefined
					? []
					: [
							frictionLoss.of({
								G: annulusFrictionGradient.of({ ρ, Q: rate, PV, YP, D: i.outer, d: i.inner }),
								L: i.length,
							}),
						],
		),
	);
	return gaps.finite(
		`${key}.circulating_density_at_shoe`,
		equivalentCirculatingDensity.of({
			ρ: equivalent,
			ΔP: totalLoss.of({ ΔP_i: losses }),
			D: tvdAt(path, string.shoe),
		}),
		message("calc/part-annulus-is-too-wide-for"),
	);
};

/** Where the string's hole is written. */
const holeOf = ({ well, string }: JobContext): readonly (string | number)[] => [
	"holes",
	well.holes.findIndex((hole) => hole.id === string.hole.id),
];
