import type { Known } from "../../cite/known.ts";
import { message } from "../../messages/message.ts";
import { rolesOf } from "../../well/roles.ts";
import type { Well } from "../../well/well.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { CementResults, IsolationResults, Results } from "../results.ts";
import { maximumTvd } from "../trajectory/path-summary.ts";
import { zonesUnsealed } from "./bond.ts";
import { endOfLifeResults } from "./end-of-life-results.ts";
import { cementEvidence } from "./evidence.ts";
import { annulusGaps, layerIntervals } from "./layers.ts";
import { neighboringWells } from "./neighboring-wells.ts";
import { annulusSeals, bondLogs } from "./seal.ts";
import {
	columnsAcross,
	neighborWellBottom,
	separationAboveFracture,
	verticalSeparation,
} from "./separation.ts";
import { zoneIsolation } from "./zones.ts";

type Tvd = Known<"true-vertical-depth">;
type Before = Pick<Results, "casing" | "cement" | "stimulation" | "site"> & {
	readonly trajectory: Pick<Results["trajectory"], "path" | "total_depth" | "survey_error">;
};

/**
 * What stands between the inside of the well and the rock, all the way down; what stands across each zone while drilling,
 * treating and producing; the rock between protected water and the shallowest perforation; and the wells nearby.
 */
export const isolationResults = (well: Well, before: Before, gaps: Gaps): IsolationResults => {
	const topPerforation = before.stimulation?.top_perforation.tvd;
	const { path, total_depth } = before.trajectory;
	const bare = annulusGaps(well, path, before);
	const logs = bondLogs(well, path, before);
	const across = zoneIsolation(well, path, before, {
		deepest: maximumTvd.of({ path, MD: total_depth.md }),
		gaps: bare,
		logs,
		topPerforation,
	});
	const base = well.geology.protectedWater?.base;
	const water = across.zones.filter(
		({ kind, base: end }) =>
			base !== undefined &&
			(kind === "base of protected water" || (kind === "water" && end.value <= base.value)),
	);
	return {
		...waterResults(well, before, topPerforation, gaps),
		layers: layerIntervals(well, path, before, total_depth.md),
		...across,
		...(water.length === 0
			? {}
			: {
					unsealed_water: zonesUnsealed.of({
						n_i: water.flatMap(({ phases }) => phases.at(-1)?.verified_cement ?? []),
					}),
				}),
		bond_logs: logs,
		annulus_readings: annulusSeals(well),
		...maybe("end_of_life", endOfLifeResults(well, path, across.zones)),
		strings: stringsAgainstWater(well, before),
		confining: confiningBeds(well, topPerforation),
		neighbor_wells: neighborWells(well, topPerforation),
		offset_wells: neighboringWells(well, before, gaps),
	};
};

const stringsAgainstWater = (well: Well, { casing, cement }: Before): IsolationResults["strings"] => {
	const base = well.geology.protectedWater?.base;
	return well.strings.map(({ id }) => {
		const [shoe, top] = [casing[id]?.shoe.tvd, cement[id]?.top.tvd];
		return {
			id,
			...maybe(
				"shoe_below_protected_water",
				base && shoe && verticalSeparation.of({ TVD_lower: shoe, TVD_upper: base }),
			),
			...maybe(
				"cement_top_above_protected_water",
				base && top && verticalSeparation.of({ TVD_lower: base, TVD_upper: top }),
			),
		};
	});
};

/** Beds stated to confine, as far as they lie between protected water and the shallowest perforation. */
const confiningBeds = ({ geology }: Well, topPerforation: Tvd | undefined): IsolationResults["confining"] => {
	const water = geology.protectedWater?.base;
	if (water === undefined || topPerforation === undefined) return [];
	return geology.formations.flatMap(({ id, name, lithology, confining, top, base = topPerforation }) => {
		const upper = top.value > water.value ? top : water;
		const lower = base.value < topPerforation.value ? base : topPerforation;
		return confining && upper.value < lower.value
			? [
					{
						id,
						name,
						lithology,
						top,
						base,
						thickness: verticalSeparation.of({
							TVD_lower: lower,
							TVD_upper: upper,
						}),
					},
				]
			: [];
	});
};

const waterResults = (well: Well, before: Before, topPerforation: Tvd | undefined, gaps: Gaps) => {
	const base = well.geology.protectedWater?.base;
	if (base === undefined) {
		gaps.missing("isolation.protecting_string", message("calc/base-protected-water-is-not-given"), [
			["geology", "protected_water"],
		]);
		return {};
	}
	const must = well.strings.find((string) => rolesOf(string, well).includes("surface"));
	const protecting =
		must === undefined
			? protectingString(well, before, base)
			: covers(must.id, before, base)
				? must.id
				: undefined;
	if (protecting === undefined)
		gaps.missing(
			"isolation.protecting_string",
			must === undefined
				? message("calc/no-string-has-both-its-shoe")
				: message("calc/string-which-has-to-protect-water", { must: must.id }),
			[["casing"]],
		);
	const shoe = protecting === undefined ? undefined : before.casing[protecting]?.shoe.tvd;
	const strings = Object.values(before.casing);
	const separation = topPerforation && verticalSeparation.of({ TVD_lower: topPerforation, TVD_upper: base });
	return {
		...maybe("protecting_string", protecting),
		...maybe(
			"shoe_below_protected_water",
			shoe && verticalSeparation.of({ TVD_lower: shoe, TVD_upper: base }),
		),
		...maybe("protected_water_to_top_perforation", separation),
		...maybe("protected_water_to_illustrative_fracture", toFracture(well, before, base)),
		steel_at_protected_water: columnsAcross.of({
			z: base,
			TVD_top: strings.map((s) => s.top.tvd),
			TVD_bottom: strings.map((s) => s.shoe.tvd),
		}),
		cement_at_protected_water: cementAcross(well, before, base),
	};
};

/** Whether cement stands across a true vertical depth [ft]; a stretch between two stages that neither fills is no cement. */
export const cementSpans = (job: CementResults | undefined, tvd: number): boolean =>
	(job?.columns ?? []).some(({ top, bottom }) => top.tvd.value <= tvd && tvd <= bottom.tvd.value);

const covers = (id: string, { casing, cement }: Before, base: Tvd): boolean => {
	const pipe = casing[id];
	return pipe !== undefined && pipe.shoe.tvd.value > base.value && cementSpans(cement[id], base.value);
};

/** Where no string is called surface casing: the outermost whose shoe lies below the water and whose cement spans its base. */
const protectingString = (well: Well, before: Before, base: Tvd): string | undefined =>
	well.strings.find(({ id }) => covers(id, before, base))?.id;

const cementAcross = (well: Well, { cement }: Before, base: Tvd) =>
	well.strings.flatMap(({ id, cement: job }) =>
		cementSpans(cement[id], base.value) ? [{ string: id, evidence: cementEvidence(job?.actual) }] : [],
	);

/** From the water to where a simple model lets the fracture reach: the top of the pay less the growth. */
const toFracture = (well: Well, { stimulation }: Before, base: Tvd): Known<"offset"> | undefined => {
	const model = stimulation?.illustrative_height;
	const formation = well.geology.formations.find((f) => f.name === model?.formation);
	return model === undefined || formation === undefined
		? undefined
		: separationAboveFracture.of({
				S: verticalSeparation.of({ TVD_lower: formation.top, TVD_upper: base }),
				g: model.growth_above,
			});
};

const DRINKING = new Set(["water well", "public water supply"]);

const neighborWells = (well: Well, topPerforation: Tvd | undefined): IsolationResults["neighbor_wells"] =>
	well.neighbors
		.filter(({ kind }) => DRINKING.has(kind))
		.map(({ id, name, depth }) => {
			const bottom = depth && neighborWellBottom.of({ D: depth.depth, a: well.datum.aboveGround });
			const above =
				bottom && topPerforation && verticalSeparation.of({ TVD_lower: topPerforation, TVD_upper: bottom });
			return {
				id,
				name,
				...maybe("depth", depth?.depth),
				...maybe("bottom", bottom),
				...maybe("above_top_perforation", above),
			};
		});
