import type { Known, KnownTable } from "../../cite/known.ts";
import type { CasingString, Hole, Well } from "../../well/well.ts";
import { annularCapacity } from "../cement/capacity.ts";
import { holeMark } from "../depths/marks.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { CasingResults, HoleMark, HolePressureResults, PressureResults } from "../results.ts";
import { inclinationAt } from "../trajectory/at-depth.ts";
import { fracturePressure } from "./fracture-gradient.ts";
import {
	equivalentMudWeight,
	hydrostaticPressure,
	pressureDifference,
	temperatureAtDepth,
} from "./hydrostatic.ts";
import {
	kickHeight,
	kickLength,
	kickMargin,
	kickTolerance,
	kickToleranceFactor,
	kickVolumeAtBottom,
	kickVolumeAtShoe,
} from "./kick-tolerance.ts";
import { maximumAnnulusPressure } from "./shoe-strength.ts";
import { pressureWindow } from "./window.ts";

/** Pressures of each hole while it is drilled, and of the rock. */
export const pressureResults = (
	well: Well,
	path: KnownTable,
	gaps: Gaps,
	casing: Readonly<Record<string, Pick<CasingResults, "maximum_surface_pressure">>> = {},
): PressureResults => ({
	holes: well.holes.map((hole) => ({
		...holeResults(well, path, hole, gaps),
		...preventerResults(well, hole, casing),
	})),
	window: windowOf(well, path),
});

/** What gas may bring to the preventers while a hole is drilled, against what they are rated for. */
const preventerResults = (
	well: Well,
	hole: Hole,
	casing: Readonly<Record<string, Pick<CasingResults, "maximum_surface_pressure">>>,
): Pick<HolePressureResults, "anticipated_surface_pressure" | "preventer_rating" | "preventer_margin"> => {
	const above = stringAbove(well, hole);
	const anticipated = above && casing[above.id]?.maximum_surface_pressure;
	const rating = well.wellControl?.preventers?.find(({ over }) => over === above?.id)?.working_pressure;
	return {
		...maybe("anticipated_surface_pressure", anticipated),
		...maybe("preventer_rating", rating),
		...maybe(
			"preventer_margin",
			anticipated && rating && pressureDifference.of({ p_1: rating, p_2: anticipated }),
		),
	};
};

const windowOf = (well: Well, path: KnownTable): PressureResults["window"] => {
	const deepest = well.holes
		.map((h) => holeMark(path, h.bottom, well.datum).tvd)
		.sort((a, b) => b.value - a.value)[0];
	const formations = well.geology.formations.flatMap(
		({ top, base = deepest, porePressure, fractureGradient }) =>
			base === undefined ||
			base.value <= top.value ||
			porePressure === undefined ||
			fractureGradient === undefined
				? []
				: [{ top, base, porePressure, fractureGradient }],
	);
	return pressureWindow.of({
		D_top: formations.map((f) => f.top),
		D_base: formations.map((f) => f.base),
		ρ_p: formations.map((f) => f.porePressure),
		F: formations.map((f) => f.fractureGradient),
		a: well.datum.aboveGround,
	});
};

const holeResults = (well: Well, path: KnownTable, hole: Hole, gaps: Gaps): HolePressureResults => {
	const bottom = holeMark(path, hole.bottom, well.datum);
	const { surfaceTemperature: T_s, temperatureGradient: G } = well.geology;
	const density = hole.fluid?.density;
	return {
		id: hole.id,
		bottom,
		...maybe("mud_hydrostatic_at_bottom", density && hydrostaticPressure.of({ ρ: density, D: bottom.tvd })),
		...maybe("bottom_temperature", T_s && G && temperatureAtDepth.of({ T_s, G, D: bottom.below_ground })),
		...shoeResults(well, path, hole, bottom, gaps),
	};
};

/** The innermost string already set when a hole is drilled. */
const stringAbove = (well: Well, hole: Hole): CasingString | undefined =>
	well.strings
		.filter((s) => s.shoe.value < hole.bottom.value && s.hole.id !== hole.id)
		.sort((a, b) => b.shoe.value - a.shoe.value)[0];

const shoeResults = (well: Well, path: KnownTable, hole: Hole, bottom: HoleMark, gaps: Gaps) => {
	const string = stringAbove(well, hole);
	const density = hole.fluid?.density;
	const shoe = string && holeMark(path, string.shoe, well.datum);
	const strength = string && shoe && strengthOf(well, string, shoe);
	if (string === undefined || shoe === undefined || strength === undefined || density === undefined)
		return {};
	return {
		shoe: string.id,
		shoe_strength: strength.value,
		shoe_strength_basis: strength.basis,
		maximum_annulus_pressure: maximumAnnulusPressure.of({
			EMW: strength.value,
			ρ: density,
			D_shoe: shoe.tvd,
		}),
		...maybe(
			"kick_tolerance_factor",
			gaps.finite(
				`pressure.holes.${hole.id}.kick_tolerance_factor`,
				kickToleranceFactor.of({ D_shoe: shoe.tvd, D_td: bottom.tvd, ρ_max: strength.value, ρ: density }),
				"The hole ends above the shoe, vertically.",
			),
		),
		...kickResults(well, path, hole, { shoe, bottom, strength: strength.value, density }, gaps),
	};
};

/** As tested, else as the test is to show, else what the rock at the shoe is expected to stand. */
const strengthOf = (well: Well, { shoeTest }: CasingString, shoe: HoleMark) => {
	if (shoeTest?.actual !== undefined) return { value: shoeTest.actual.equivalent, basis: "tested" } as const;
	if (shoeTest !== undefined) return { value: shoeTest.equivalent, basis: "planned test" } as const;
	const F = well.geology.formations.findLast(({ top }) => top.value <= shoe.tvd.value)?.fractureGradient;
	return F === undefined
		? undefined
		: ({
				value: equivalentMudWeight.of({ p: fracturePressure.of({ F, D: shoe.below_ground }), D: shoe.tvd }),
				basis: "fracture gradient",
			} as const);
};

interface Drilled {
	readonly shoe: HoleMark;
	readonly bottom: HoleMark;
	readonly strength: Known<"density">;
	readonly density: Known<"density">;
}

/** A hole this flat gives an influx length without height, so that only the shoe limits it [°]. */
const FLAT = 80;

const kickResults = (
	well: Well,
	path: KnownTable,
	hole: Hole,
	{ shoe, bottom, strength: FG, density: ρ }: Drilled,
	gaps: Gaps,
) => {
	const kick = well.wellControl?.kick;
	const design = hole.kick ?? kick;
	const { drillString } = well;
	if (kick?.gas_gradient === undefined || design === undefined || drillString === undefined) return {};
	const [D_shoe, D_td, KI] = [shoe.tvd, bottom.tvd, design.intensity];
	const height = gaps.finite(
		`pressure.holes.${hole.id}.kick_height`,
		kickHeight.of({ FG, ρ, KI, g: kick.gas_gradient, D_shoe, D_td }),
		"The mud is lighter than the influx, or the hole ends above the shoe.",
	);
	if (height === undefined) return {};
	const beside = (inner: Known<"diameter">) => annularCapacity.of({ D: hole.diameter, d: inner });
	const atShoe = kickVolumeAtShoe.of({ h: height, C: beside(drillString.pipe.od) });
	const atBottom = kickVolumeAtBottom.of({ V_shoe: atShoe, FG, ρ, KI, D_shoe, D_td });
	const inclination = inclinationAt(path, hole.bottom);
	const tolerance =
		inclination.value >= FLAT
			? atBottom
			: kickTolerance.of({
					h: kickLength.of({ h: height, I: inclination }),
					C_bit: beside(drillString.collars?.od ?? drillString.pipe.od),
					V_td: atBottom,
				});
	const { volume } = design;
	return {
		kick_height: height,
		kick_tolerance: tolerance,
		kick_intensity: KI,
		...maybe("design_kick", volume),
		...maybe("kick_margin", volume && kickMargin.of({ V: tolerance, V_design: volume })),
	};
};
