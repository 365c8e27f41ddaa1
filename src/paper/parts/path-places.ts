import type { Cell } from "../../document/blocks.ts";
import { cell, type PaperContext, shown, textCell } from "../context.ts";
import { facts, named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

/** Six decimals of a degree are some inches on the ground. */
const PLACE = { decimals: 6 } as const;

/** Where the path lies on the map, and which north it is counted from. */
export const pathPlaces: Part = (context) => {
	const { site } = context.results;
	const { north, surface_location: home } = context.well.site;
	const place = (of: typeof site.landing): Cell =>
		of === undefined
			? { kind: "none" }
			: {
					kind: "rich",
					children: [
						{
							kind: "strong",
							children: [
								shown(context, of.latitude, PLACE),
								{ kind: "text", text: ", " },
								shown(context, of.longitude, PLACE),
							],
						},
					],
				};
	return facts(
		context,
		[
			["grid", textCell(north?.zone)],
			["grid_convergence", cell(context, north?.convergence)],
			["magnetic_declination", cell(context, north?.declination)],
			["coordinates_in", textCell(home?.datum)],
			["landing_place", place(site.landing)],
			["total_depth_place", place(site.total_depth)],
		],
		{ caption: "path_places" },
	);
};

/** From kickoff to landing. */
export const curveFacts: Part = (context) => {
	const { curve } = context.results.trajectory;
	return facts(
		context,
		[
			["curve_length", cell(context, curve?.length)],
			["curve_depth", cell(context, curve?.depth_gained)],
			["curve_departure", cell(context, curve?.departure)],
			["curve_radius", cell(context, curve?.radius)],
		],
		{ caption: "curve" },
	);
};

/** The radius that every distance to the path may be wrong by, or that none is stated. */
export const uncertaintyCell = (context: PaperContext): Cell => {
	const stated = context.well.trajectory.uncertainty;
	if (stated === undefined) return textCell(context.words.label("phrases.not_stated"));
	return {
		kind: "rich",
		children: [
			{ kind: "strong", children: [shown(context, stated.radius)] },
			...(stated.confidence === undefined
				? []
				: [{ kind: "text" as const, text: ", " }, shown(context, stated.confidence, { decimals: 0 })]),
		],
	};
};

/** Beside tables of distances. */
export const surveyUncertainty: Part = (context) =>
	facts(context, [
		["survey_uncertainty", uncertaintyCell(context)],
		["uncertainty_source", textCell(context.well.trajectory.uncertainty?.source)],
	]);

/** The string that drills each hole: joints to its bottom, and what they weigh. */
export const drillStringTable: Part = (context) => {
	const drill = context.results.drill_string;
	return table(
		context,
		"drill_string",
		[
			textColumn(context, "hole", { width: 1.4, rowHead: true }),
			quantityColumn(context, "pipe_length", "length"),
			quantityColumn(context, "joints", "count"),
			quantityColumn(context, "pipe_mass", "mass"),
			quantityColumn(context, "mass_with_collars", "mass"),
		],
		(drill?.holes ?? [])
			.filter(({ pipe_length }) => pipe_length.value > 0)
			.map((hole) =>
				row({
					hole: textCell(named(context, hole.id)),
					pipe_length: cell(context, hole.pipe_length),
					joints: cell(context, hole.joints),
					pipe_mass: cell(context, hole.pipe_mass),
					mass_with_collars: cell(context, hole.mass),
				}),
			),
		{ note: "drill_string" },
	);
};
