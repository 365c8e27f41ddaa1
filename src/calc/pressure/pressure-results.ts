import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { message } from "../../messages/message.ts";
import type { CasingString, Hole, Well } from "../../well/well.ts";
import { annularCapacity } from "../cement/capacity.ts";
import { holeMark, verticalMark } from "../depths/marks.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { CasingResults, HoleMark, HolePressureResults, PressureResults } from "../results.ts";
import { inclinationAt } from "../trajectory/at-depth.ts";
import { fracturePressure } from "./fracture-gradient.ts";
import { hydraulicsOf } from "./hydraulics-results.ts";
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
	kickOverMud,
	kickTolerance,
	kickToleranceFactor,
	kickVolumeAtBottom,
	kickVolumeAtShoe,
} from "./kick-tolerance.ts";
import { densityMargin, highestPore, type RockDensity, rockBetween } from "./open-hole.ts";
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
		...maybe("hydraulics", hydraulicsIn(well, path, hole)),
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
	const pore = highestPore(well, path, shoe?.tvd ?? GROUND(well), hole);
	const against = {
		...maybe("highest_pore", pore),
		...maybe(
			"mud_over_pore",
			pore && density && densityMargin.of({ ρ_upper: density, ρ_lower: pore.density }),
		),
	};
	const strength = string && shoe && strengthOf(well, string, shoe);
	if (string === undefined || shoe === undefined || strength === undefined || density === undefined)
		return against;
	const weakest = [
		{ formation: string.id, density: strength.value },
		...rockBetween(well, path, shoe.tvd, bottom.tvd),
	].sort((a, b) => a.density.value - b.density.value)[0];
	return {
		...against,
		shoe: string.id,
		shoe_strength: strength.value,
		shoe_strength_basis: strength.basis,
		...maybe(
			"weakest_over_mud",
			weakest && {
				place: weakest.formation,
				density: weakest.density,
				margin: densityMargin.of({ ρ_upper: weakest.density, ρ_lower: density }),
			},
		),
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
				message("calc/hole-ends-above-shoe-vertically"),
			),
		),
		...kickResults(well, path, hole, { shoe, bottom, strength: strength.value, density, pore }, gaps),
	};
};

const hydraulicsIn = (well: Well, path: KnownTable, hole: Hole) => {
	const above = stringAbove(well, hole);
	const strength = above && strengthOf(well, above, holeMark(path, above.shoe, well.datum))?.value;
	return hydraulicsOf({ well, path, hole, above, strength });
};

const GROUND = ({ datum }: Well): Known<"true-vertical-depth"> =>
	constant("true-vertical-depth", datum.groundLevel.value, "ground level", cite("definition"));

/**
 * As tested, else the lesser of what the test is to show and of what the rock at the shoe is expected to stand: a test
 * cannot be made to more than the rock bears.
 */
const strengthOf = (well: Well, { shoeTest }: CasingString, shoe: HoleMark) => {
	if (shoeTest?.actual !== undefined) return { value: shoeTest.actual.equivalent, basis: "tested" } as const;
	const F = well.geology.formations.findLast(({ top }) => top.value <= shoe.tvd.value)?.fractureGradient;
	const rock =
		F && equivalentMudWeight.of({ p: fracturePressure.of({ F, D: shoe.below_ground }), D: shoe.tvd });
	if (shoeTest !== undefined && (rock === undefined || shoeTest.equivalent.value <= rock.value))
		return { value: shoeTest.equivalent, basis: "planned test" } as const;
	return rock && ({ value: rock, basis: "fracture gradient" } as const);
};

interface Drilled {
	readonly shoe: HoleMark;
	readonly bottom: HoleMark;
	readonly strength: Known<"density">;
	readonly density: Known<"density">;
	readonly pore: RockDensity | undefined;
}

/** A hole this flat gives an influx length without height, so that only the shoe limits it [°]. */
const FLAT = 80;

/**
 * A kick comes with the highest pore pressure of the open hole and the stated intensity over it, from where that rock is
 * deepest; from the mud's own density where no pore pressure is given. The weakest place above it, shoe or rock, limits it.
 */
const kickResults = (
	well: Well,
	path: KnownTable,
	hole: Hole,
	{ shoe, bottom, strength, density: ρ, pore }: Drilled,
	gaps: Gaps,
) => {
	const kick = well.wellControl?.kick;
	const design = hole.kick ?? kick;
	const { drillString } = well;
	if (kick?.gas_gradient === undefined || design === undefined || drillString === undefined) return {};
	const g = kick.gas_gradient;
	const from = pore === undefined || pore.at.tvd.value <= shoe.tvd.value ? bottom.tvd : pore.at.tvd;
	const KI =
		pore === undefined ? design.intensity : kickOverMud.of({ ρ_p: pore.density, KI: design.intensity, ρ });
	const places = [
		{ name: hole.id, D_shoe: shoe.tvd, FG: strength },
		...rockBetween(well, path, shoe.tvd, from).map(({ formation, at, density }) => ({
			name: formation,
			D_shoe: at.tvd,
			FG: density,
		})),
	].map((place) => ({
		...place,
		height: kickHeight.of({ FG: place.FG, ρ, KI, g, D_shoe: place.D_shoe, D_td: from }),
	}));
	const least = places
		.filter(({ height }, i) => i === 0 || !isWhole(height))
		.reduce((a, b) => (b.height.value < a.height.value ? b : a));
	const height = gaps.finite(
		`pressure.holes.${hole.id}.kick_height`,
		least.height,
		message("calc/mud-is-lighter-than-influx-or"),
	);
	if (height === undefined) return {};
	const { FG, D_shoe } = least;
	const beside = (inner: Known<"diameter">) => annularCapacity.of({ D: hole.diameter, d: inner });
	const atShoe = kickVolumeAtShoe.of({ h: height, C: beside(drillString.pipe.od) });
	const atBottom = kickVolumeAtBottom.of({ V_shoe: atShoe, FG, ρ, KI, D_shoe, D_td: from });
	const inclination =
		from === bottom.tvd ? inclinationAt(path, hole.bottom) : inclinationOf(well, path, from, hole);
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
		kick_intensity: design.intensity,
		kick_over_mud: KI,
		...maybe("kick_limited_by", least.name === hole.id ? undefined : least.name),
		...maybe("design_kick", volume),
		...maybe("kick_margin", volume && kickMargin.of({ V: tolerance, V_design: volume })),
	};
};

/** The open hole itself ends the bubble, not the strength of any place. */
const isWhole = ({ from }: Known): boolean => from.kind === "worked" && from.branch === "the whole open hole";

const inclinationOf = (well: Well, path: KnownTable, tvd: Known<"true-vertical-depth">, hole: Hole) =>
	inclinationAt(path, verticalMark(path, tvd, well.datum).md ?? hole.bottom);
