import { cell, textCell } from "../context.ts";
import { asGiven, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

export const formationsTable: Part = (context) => {
	const marks = new Map(context.results.geology.formations.map((f) => [f.id, f]));
	return table(
		context,
		"formations",
		[
			textColumn(context, "formation", { width: 1.8, rowHead: true }),
			textColumn(context, "lithology", { width: 1 }),
			quantityColumn(context, "top_tvd", "true-vertical-depth", { width: 0.8 }),
			quantityColumn(context, "top_below_ground", "depth-below-ground", { width: 0.8 }),
			quantityColumn(context, "pore_pressure", "density", { width: 1.2 }),
			quantityColumn(context, "fracture_gradient", "pressure-gradient", { width: 0.8 }),
			textColumn(context, "role", { width: 3.2 }),
		],
		context.well.geology.formations.map((formation) => {
			const mark = marks.get(formation.id);
			const roles = [
				formation.target ? context.words.label("phrases.target") : undefined,
				formation.confining ? context.words.label("phrases.confining") : undefined,
				formation.competent === true ? context.words.label("phrases.stated_competent") : undefined,
				formation.mobile === true ? context.words.label("phrases.creeps") : undefined,
				formation.flowZone ? `${context.words.label("phrases.flow_zone")}: ${formation.flowZone}` : undefined,
			];
			return row({
				formation: textCell(formation.name),
				lithology: textCell(asGiven(context, formation.lithology)),
				top_tvd: cell(context, mark?.top.tvd),
				top_below_ground: cell(context, mark?.top.below_ground),
				pore_pressure: cell(context, formation.porePressure, { decimals: 1 }),
				fracture_gradient: cell(context, formation.fractureGradient, { decimals: 2 }),
				role: textCell(roles.filter((r) => r).join(", ")),
			});
		}),
		{ dense: true, note: "formations" },
	);
};

export const waterTable: Part = (context) => {
	const marks = new Map(context.results.geology.water.map((zone) => [zone.id, zone]));
	return table(
		context,
		"water",
		[
			textColumn(context, "zone", { width: 2, rowHead: true }),
			quantityColumn(context, "top_tvd", "true-vertical-depth"),
			quantityColumn(context, "base_tvd", "true-vertical-depth"),
			quantityColumn(context, "base_below_ground", "depth-below-ground"),
			quantityColumn(context, "dissolved_solids", "dissolved-solids", { width: 1.2 }),
			textColumn(context, "use", { width: 1.6 }),
		],
		context.well.geology.water.map((zone) => {
			const mark = marks.get(zone.id);
			return row({
				zone: textCell(zone.name),
				top_tvd: cell(context, mark?.top.tvd),
				base_tvd: cell(context, mark?.base.tvd),
				base_below_ground: cell(context, mark?.base.below_ground),
				dissolved_solids: cell(context, zone.dissolvedSolids),
				use: textCell(zone.use),
			});
		}),
	);
};
