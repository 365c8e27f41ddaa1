import type { HoleMark } from "../../calc/results.ts";
import type { Cell } from "../../document/blocks.ts";
import { cell, type PaperContext, shown, textCell } from "../context.ts";
import { asGiven, facts, named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

/** The path in a few numbers, beside the key depths. */
export const trajectoryFacts: Part = (context) => {
	const { trajectory } = context.results;
	return facts(
		context,
		[
			["path_basis", textCell(context.words.label(`phrases.path_${trajectory.basis}`))],
			["vertical_section_azimuth", cell(context, trajectory.vertical_section_azimuth)],
			["lateral_length", cell(context, trajectory.lateral_length)],
			["maximum_dogleg", cell(context, trajectory.maximum_dogleg)],
			["maximum_inclination", cell(context, trajectory.maximum_inclination)],
			["closure", cell(context, trajectory.closure)],
			["closure_azimuth", cell(context, trajectory.closure_azimuth)],
		],
		{ columns: 1 },
	);
};

/** Who surveyed the hole and with what, which north it is told by, and how well it is known. */
export const surveyFacts: Part = (context) => {
	const { trajectory } = context.results;
	const survey = context.well.trajectory.survey;
	return facts(
		context,
		[
			["survey_company", textCell(survey?.company)],
			["survey_tool", textCell(survey?.tool)],
			["survey_dates", textCell(survey?.dates?.join(" – "))],
			["north_reference", textCell(asGiven(context, context.well.site.north?.reference))],
			["survey_north", textCell(asGiven(context, survey?.north))],
			["section_origin", originCell(context)],
			["survey_error_model", textCell(context.well.trajectory.errorModel?.name)],
			["survey_ellipse", ellipseCell(context)],
			["vertical_sigma", cell(context, trajectory.survey_error?.vertical_sigma)],
		],
		{ caption: "survey" },
	);
};

/** Half axes at the end of the hole, at their confidence. */
const ellipseCell = (context: PaperContext): Cell => {
	const found = context.results.trajectory.survey_error;
	if (found === undefined) return { kind: "none" };
	return {
		kind: "rich",
		children: [
			shown(context, found.semi_major),
			{ kind: "text", text: " × " },
			shown(context, found.semi_minor),
			{ kind: "text", text: ", " },
			shown(context, found.confidence, { decimals: 0 }),
		],
	};
};

/** Where the vertical section is counted from, if not the wellhead. */
const originCell = (context: PaperContext): Cell => {
	const origin = context.well.trajectory.verticalSectionOrigin;
	if (origin === undefined) return { kind: "none" };
	const label = context.words.label;
	return {
		kind: "rich",
		children: [
			shown(context, origin.north),
			{ kind: "text", text: ` ${label("compass.north")}, ` },
			shown(context, origin.east),
			{ kind: "text", text: ` ${label("compass.east")}` },
		],
	};
};

/** The stations of the path that the calculations use: of a survey every one, two abreast where there are many. */
export const pathTable: Part = (context) => {
	const { path, basis } = context.results.trajectory;
	const printed = basis === "planned" ? withoutStraights(path.rows) : path.rows;
	const column = (id: keyof typeof path.columns & string, decimals?: number) =>
		quantityColumn(context, id, path.columns[id], decimals === undefined ? {} : { style: { decimals } });
	return table(
		context,
		"path",
		[
			column("md"),
			column("inclination"),
			column("azimuth"),
			column("tvd", 1),
			column("north", 1),
			column("east", 1),
			column("vertical_section", 1),
			column("dogleg"),
		],
		printed.map((station) =>
			row(
				Object.fromEntries(
					Object.entries(path.columns).map(([id, dimension]) => [
						id,
						{ kind: "quantity", dimension, value: station[id as keyof typeof station] },
					]),
				),
			),
		),
		{
			dense: true,
			...(printed.length > ONE_COLUMN ? { abreast: 2 } : {}),
			...(printed.length < path.rows.length ? { note: "path_straight" } : {}),
		},
	);
};

/** So many stations stand in one column. */
const ONE_COLUMN = 30;

/** Stations of a planned path without those inside a straight part: between them depths and offsets run evenly. */
const withoutStraights = <T extends { readonly inclination: number; readonly azimuth: number }>(
	stations: readonly T[],
): readonly T[] => {
	const alike = (a: T, b: T | undefined): boolean =>
		b !== undefined &&
		Math.abs(a.inclination - b.inclination) < STRAIGHT &&
		(a.inclination < STRAIGHT || Math.abs(a.azimuth - b.azimuth) < STRAIGHT);
	return stations.filter(
		(station, i) => !(alike(station, stations[i - 1]) && alike(station, stations[i + 1])),
	);
};

/** Angles that print alike [°]. */
const STRAIGHT = 0.005;

/** Plan against survey, where both stand. */
export const planAgainstSurvey: Part = (context) => {
	const { planned, path } = context.results.trajectory;
	const end = path.rows.at(-1);
	const plannedEnd = planned?.rows.at(-1);
	if (!end || !plannedEnd) return [];
	const line = (label: string, station: typeof end) =>
		row({
			path: textCell(context.words.label(`phrases.${label}`)),
			md: { kind: "quantity", dimension: "measured-depth", value: station.md },
			tvd: { kind: "quantity", dimension: "true-vertical-depth", value: station.tvd },
			north: { kind: "quantity", dimension: "offset", value: station.north },
			east: { kind: "quantity", dimension: "offset", value: station.east },
			vertical_section: { kind: "quantity", dimension: "offset", value: station.vertical_section },
		});
	return table(
		context,
		"plan_against_survey",
		[
			textColumn(context, "path", { rowHead: true }),
			quantityColumn(context, "md", "measured-depth"),
			quantityColumn(context, "tvd", "true-vertical-depth"),
			quantityColumn(context, "north", "offset"),
			quantityColumn(context, "east", "offset"),
			quantityColumn(context, "vertical_section", "offset"),
		],
		[line("path_planned", plannedEnd), line("path_surveyed", end)],
	);
};

/** Shoes as planned and as set. */
export const shoesAgainstPlan: Part = (context) => {
	const moved = context.well.strings.flatMap((string) => {
		const casing = context.results.casing[string.id];
		return string.plannedShoe && casing
			? [{ string, shoe: casing.shoe as HoleMark, planned: string.plannedShoe }]
			: [];
	});
	return table(
		context,
		"shoes_against_plan",
		[
			textColumn(context, "string", { rowHead: true }),
			quantityColumn(context, "planned_md", "measured-depth"),
			quantityColumn(context, "actual_md", "measured-depth"),
			quantityColumn(context, "tvd", "true-vertical-depth"),
		],
		moved.map(({ string, shoe, planned }) =>
			row({
				string: textCell(named(context, string.id)),
				planned_md: cell(context, planned),
				actual_md: cell(context, shoe.md),
				tvd: cell(context, shoe.tvd),
			}),
		),
	);
};
