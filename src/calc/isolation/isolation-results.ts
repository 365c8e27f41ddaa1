import type { Known } from "../../cite/known.ts";
import type { CementActual, Well } from "../../well/well.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { IsolationResults, Results } from "../results.ts";
import {
	columnsAcross,
	neighborWellBottom,
	separationAboveFracture,
	verticalSeparation,
} from "./separation.ts";

type Tvd = Known<"true-vertical-depth">;
type Before = Pick<Results, "casing" | "cement" | "stimulation">;

/** What stands across the base of protected water, and the rock between it and the shallowest perforation. */
export const isolationResults = (well: Well, before: Before, gaps: Gaps): IsolationResults => {
	const topPerforation = before.stimulation?.top_perforation.tvd;
	return {
		...waterResults(well, before, topPerforation, gaps),
		neighbor_wells: neighborWells(well, topPerforation),
		offset_wells: offsetWells(well, topPerforation),
	};
};

const waterResults = (well: Well, before: Before, topPerforation: Tvd | undefined, gaps: Gaps) => {
	const base = well.geology.protectedWater?.base;
	if (base === undefined) {
		gaps.missing("isolation.protecting_string", "The base of protected water is not given.", [
			["geology", "protected_water"],
		]);
		return {};
	}
	const protecting = protectingString(well, before, base);
	if (protecting === undefined)
		gaps.missing(
			"isolation.protecting_string",
			"No string has both its shoe below the base of protected water and cement across it.",
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

const spans = (top: Tvd, bottom: Tvd, z: Tvd): boolean => top.value <= z.value && z.value <= bottom.value;

/** The outermost string whose shoe lies below the water and whose cement spans its base. */
const protectingString = (well: Well, { casing, cement }: Before, base: Tvd): string | undefined =>
	well.strings.find(({ id }) => {
		const [pipe, column] = [casing[id], cement[id]];
		return (
			pipe !== undefined &&
			column !== undefined &&
			pipe.shoe.tvd.value > base.value &&
			spans(column.top.tvd, column.bottom.tvd, base)
		);
	})?.id;

type Evidence = NonNullable<IsolationResults["cement_at_protected_water"]>[number]["evidence"];

const cementAcross = (well: Well, { cement }: Before, base: Tvd) =>
	well.strings.flatMap(({ id, cement: job }) => {
		const column = cement[id];
		return column !== undefined && spans(column.top.tvd, column.bottom.tvd, base)
			? [{ string: id, evidence: evidenceOf(job?.actual) }]
			: [];
	});

/**
 * What a column's top rests on. Pumping alone proves no top: without a recorded one, or cement seen at surface, the
 * column is still only planned.
 */
const evidenceOf = (actual: CementActual | undefined): Evidence => {
	if (actual === undefined) return "planned";
	const { top, returnsToSurface, evaluationLog } = actual;
	const seen =
		top?.method === "returns seen" || (returnsToSurface !== undefined && returnsToSurface.value > 0);
	if (top === undefined && !seen) return "planned";
	if (evaluationLog !== undefined && evaluationLog !== "none") return "logged";
	if (top?.method === "temperature survey" || top?.method === "bond log" || top?.method === "tagged")
		return "logged";
	return seen ? "returns seen" : "calculated";
};

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
			return { id, name, ...maybe("bottom", bottom), ...maybe("above_top_perforation", above) };
		});

/** Old and present wells nearby whose vertical depth is given. */
const offsetWells = (well: Well, topPerforation: Tvd | undefined): IsolationResults["offset_wells"] =>
	well.offsetWells.map(({ id, name, total_depth }) => {
		const bottom = total_depth?.reference === "vertical" ? total_depth.depth : undefined;
		const above =
			bottom && topPerforation && verticalSeparation.of({ TVD_lower: topPerforation, TVD_upper: bottom });
		return { id, name, ...maybe("bottom", bottom), ...maybe("above_top_perforation", above) };
	});
