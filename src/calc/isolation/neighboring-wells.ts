import { formula } from "../../cite/formula.ts";
import { constant, type Known, type KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { OffsetWell } from "../../definition/definition.ts";
import { message, type Said } from "../../messages/message.ts";
import type { Well } from "../../well/well.ts";
import { depthBelowGround, holeMark } from "../depths/marks.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { OffsetWellResults, Results } from "../results.ts";
import {
	holeRadius,
	leastSeparationDepth,
	leastSeparationDistance,
	leastSeparationFactor,
	oneSigma,
	separationAlong,
	separationByModel,
	separationByTwoModels,
} from "../site/separation-factor.ts";
import {
	deepestOfPath,
	deepStretchApproachInPlan,
	nearestApproach,
	nearestApproachDepth,
	nearestApproachOtherDepth,
	stretchApproach,
	stretchApproachInPlan,
} from "../trajectory/approach.ts";
import { verticalSeparation } from "./separation.ts";

type Before = Pick<Results, "stimulation" | "site"> & {
	readonly trajectory: Pick<Results["trajectory"], "path" | "survey_error">;
};

/** How far the fractures may come towards another well, with both holes as near as their uncertainty lets them [ft]. */
export const fractureReach = formula({
	id: "isolation/fracture-reach",
	name: "Reach of the fractures and of both uncertainties",
	expression: "x_f,max + Σ u",
	source: cite(
		"definition",
		"the longest half-length of the models; each uncertainty as stated, all the near way",
	),
	inputs: { x_f: { many: "length" }, u: { many: "distance" } },
	gives: "distance",
	compute: ({ x_f, u }) => Math.max(...x_f) + u.reduce<number>((sum, each) => sum + each, 0),
});

/** Negative where the fractures may reach the other well [ft]. */
export const clearOfFractures = formula({
	id: "isolation/clear-of-fractures",
	name: "Distance of the other well past the reach of the fractures",
	expression: "d − x",
	source: cite("definition", "d horizontal, from the treated interval"),
	inputs: { d: "distance", x: "distance" },
	gives: "offset",
	compute: ({ d, x }) => d - x,
});

/**
 * How each other well lies to this one: nearest approach along both paths, separation factor, and whether the fractures
 * may reach it. What needs the other path is left out where the path is not known.
 */
export const neighboringWells = (well: Well, before: Before, gaps: Gaps): IsolationWells =>
	well.offsetWells.map((entry) => neighboringWell(well, before, entry, gaps));

type IsolationWells = readonly OffsetWellResults[];

const neighboringWell = (well: Well, before: Before, entry: OffsetWell, gaps: Gaps): OffsetWellResults => {
	const { id, name, total_depth } = entry;
	const { stimulation } = before;
	const { path } = before.trajectory;
	const other = before.site.offset_wells.find((each) => each.id === id)?.path;
	const stated = total_depth?.reference === "vertical" ? total_depth.depth : undefined;
	const bottom = other === undefined ? stated : deepestOfPath.of({ path: other });
	const top = stimulation?.top_perforation;
	return {
		id,
		name,
		...maybe("bottom", bottom),
		...maybe(
			"bottom_below_ground",
			bottom && depthBelowGround.of({ TVD: bottom, height: well.datum.aboveGround }),
		),
		...maybe(
			"above_top_perforation",
			bottom && top && verticalSeparation.of({ TVD_lower: top.tvd, TVD_upper: bottom }),
		),
		...(other === undefined
			? {}
			: {
					in_space: nearestApproach.of({ path, other }),
					nearest_in_space: holeMark(path, nearestApproachDepth.of({ path, other }), well.datum),
					nearest_in_other: nearestApproachOtherDepth.of({ path, other }),
					...separation(well, before, entry, other, gaps),
					...reach(well, before, entry, other),
				}),
	};
};

/** The wellhead itself, where its place was surveyed. */
const NO_ERROR = constant("distance", 0, "no uncertainty of the wellhead is stated", cite("definition"));

const separation = (
	well: Well,
	before: Before,
	entry: OffsetWell,
	other: KnownTable,
	gaps: Gaps,
): Pick<OffsetWellResults, "separation" | "separation_factor" | "separation_at" | "separation_distance"> => {
	const own = well.trajectory.uncertainty;
	const { path, survey_error: model } = before.trajectory;
	const theirs = entry.path?.uncertainty;
	const theirModel = modelOf(well, entry);
	const at = ["site", "offset_wells", well.offsetWells.indexOf(entry)] as const;
	const key = `isolation.offset_wells.${entry.id}.separation_factor`;
	if (own === undefined && model === undefined)
		return lacking(gaps, key, message("calc/survey-uncertainty-this-well-is-not"), [
			"trajectory",
			"uncertainty",
		]);
	const isKnown =
		theirs !== undefined ||
		entry.position_uncertainty !== undefined ||
		(model !== undefined && theirModel !== undefined);
	if (!isKnown)
		return lacking(gaps, key, message("calc/how-well-place-is-known-is", { entry: entry.name }), [
			...at,
			"path",
			"uncertainty",
		]);
	const sigma = (stated: { readonly radius: Known<"distance">; readonly confidence?: Known<"share"> }) => {
		const p = stated.confidence ?? well.offsetPaths.confidence;
		return p === undefined ? undefined : oneSigma.of({ r: stated.radius, p });
	};
	const widest = well.holes.reduce<Known<"diameter"> | undefined>(
		(most, { diameter }) => (most === undefined || diameter.value > most.value ? diameter : most),
		undefined,
	);
	const [σ_r, σ_o, σ_w] = [
		own && sigma(own),
		theirs === undefined ? NO_ERROR : sigma(theirs),
		entry.position_uncertainty === undefined ? NO_ERROR : sigma({ radius: entry.position_uncertainty }),
	];
	if (widest === undefined || σ_o === undefined || σ_w === undefined) return {};
	const R_r = holeRadius.of({ d: widest });
	const R_o = holeRadius.of({ d: entry.hole_diameter ?? widest });
	const { covariance, turn } = model ?? {};
	const both = { path, other, R_r, R_o, σ_w };
	const table =
		covariance === undefined || turn === undefined
			? σ_r && separationAlong.of({ ...both, σ_r, σ_o })
			: theirModel === undefined
				? separationByModel.of({ ...both, covariance, turn, σ_o })
				: separationByTwoModels.of({ ...both, covariance, other_covariance: theirModel, turn });
	if (table === undefined) return {};
	return {
		separation: table,
		separation_factor: leastSeparationFactor.of({ separation: table }),
		separation_at: holeMark(path, leastSeparationDepth.of({ separation: table }), well.datum),
		separation_distance: leastSeparationDistance.of({ separation: table }),
	};
};

/** What the survey tool of a well of the same pad errs by. */
const modelOf = ({ offsetPaths }: Well, { id }: OffsetWell): KnownTable | undefined => {
	const path = offsetPaths.paths.find((each) => each.id === id);
	return path?.kind === "surveyed" ? path.covariance : undefined;
};

const lacking = (gaps: Gaps, key: string, because: Said, need: readonly (string | number)[]) => {
	gaps.missing(key, because, [need]);
	return {};
};

/** Fractures stand upright, so that reach is judged on the map, against what of the other hole goes as deep as they may rise. */
const reach = (
	{ trajectory }: Well,
	{ stimulation, trajectory: { path } }: Before,
	entry: OffsetWell,
	other: KnownTable,
): Partial<OffsetWellResults> => {
	const [top, bottom] = [stimulation?.top_perforation, stimulation?.bottom_perforation];
	if (stimulation === undefined || top === undefined || bottom === undefined) return {};
	const treated = { path, other, MD_top: top.md, MD_bottom: bottom.md };
	const found = {
		treated_in_space: stretchApproach.of(treated),
		treated_in_plan: stretchApproachInPlan.of(treated),
	};
	const { fractures } = stimulation;
	if (fractures === undefined) return found;
	const u = [
		trajectory.uncertainty?.radius,
		entry.path?.uncertainty?.radius,
		entry.position_uncertainty,
	].filter((each) => each !== undefined);
	const x = fractureReach.of({ x_f: fractures.models.map(({ half_length }) => half_length), u });
	const above = verticalSeparation.of({
		TVD_lower: fractures.highest_top,
		TVD_upper: deepestOfPath.of({ path: other }),
	});
	const d =
		above.value > 0
			? undefined
			: deepStretchApproachInPlan.of({ ...treated, TVD_top: fractures.highest_top });
	return {
		...found,
		fracture_reach: x,
		above_fractures: above,
		...maybe("treated_in_plan_at_depth", d),
		...maybe("clear_of_fractures", d && clearOfFractures.of({ d, x })),
		...(d === undefined ? {} : { shut_off_beside_fractures: isShutOff(entry, fractures, other) }),
	};
};

/** Whether the barriers shown cover the fractures from their highest top to their lowest bottom, or to the hole's own. */
const isShutOff = (
	{ barriers = [] }: OffsetWell,
	{ highest_top, models }: NonNullable<NonNullable<Before["stimulation"]>["fractures"]>,
	other: KnownTable,
): boolean => {
	const lowest = Math.max(...models.map(({ top, height }) => top.value + height.value));
	const end = Math.min(lowest, deepestOfPath.of({ path: other }).value);
	const covered = barriers
		.toSorted((a, b) => a.top.value - b.top.value)
		.reduce<number>(
			(down, { top, bottom }) => (top.value <= down ? Math.max(down, bottom.value) : down),
			highest_top.value,
		);
	return covered >= end && barriers.some(({ top }) => top.value <= highest_top.value);
};
