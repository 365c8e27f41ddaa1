import type { Cell } from "../../document/blocks.ts";
import { cell, type PaperContext, textCell } from "../context.ts";
import { asGiven, named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

const TENTH = { decimals: 1 } as const;
const WHOLE = { decimals: 0 } as const;

/** Every hole that is shut in on a preventer: what its shoe stands, the kick it holds, and what gas may bring to surface. */
export const kickTable: Part = (context) =>
	table(
		context,
		"kicks",
		[
			textColumn(context, "hole", { width: 1.3, rowHead: true }),
			textColumn(context, "shoe", { width: 1.2, label: "out_of" }),
			quantityColumn(context, "shoe_strength", "density", { style: TENTH }),
			textColumn(context, "shoe_strength_basis", { width: 1.7 }),
			quantityColumn(context, "maximum_annulus", "pressure", { style: WHOLE }),
			quantityColumn(context, "kick_intensity", "density", { style: TENTH }),
			quantityColumn(context, "kick_held", "volume", { style: TENTH }),
			quantityColumn(context, "kick_design", "volume", { style: TENTH }),
			quantityColumn(context, "anticipated", "pressure", { style: WHOLE }),
			quantityColumn(context, "preventer_rating", "pressure", { style: WHOLE }),
		],
		context.results.pressure.holes
			.filter((hole) => hole.preventer_rating !== undefined)
			.map((hole) =>
				row({
					hole: textCell(named(context, hole.id)),
					shoe: textCell(hole.shoe === undefined ? undefined : named(context, hole.shoe)),
					shoe_strength: cell(context, hole.shoe_strength, TENTH),
					shoe_strength_basis: textCell(asGiven(context, hole.shoe_strength_basis)),
					maximum_annulus: cell(context, hole.maximum_annulus_pressure),
					kick_intensity: cell(context, hole.kick_intensity, TENTH),
					kick_held: cell(context, hole.kick_tolerance, TENTH),
					kick_design: cell(context, hole.design_kick, TENTH),
					anticipated: cell(context, hole.anticipated_surface_pressure),
					preventer_rating: cell(context, hole.preventer_rating),
				}),
			),
		{ note: "kicks" },
	);

/** Each preventer stack: what it is made of, the test it is given, and the test that was made. */
export const preventersTable: Part = (context) =>
	table(
		context,
		"preventers",
		[
			textColumn(context, "stack_on", { width: 1.3, rowHead: true }),
			textColumn(context, "equipment", { width: 2.2 }),
			quantityColumn(context, "preventer_rating", "pressure", { style: WHOLE }),
			quantityColumn(context, "test_low", "pressure", { style: WHOLE }),
			quantityColumn(context, "test_high", "pressure", { style: WHOLE }),
			quantityColumn(context, "hold", "duration"),
			textColumn(context, "test_plug", { width: 0.8 }),
			quantityColumn(context, "measured_low", "pressure", { style: WHOLE }),
			quantityColumn(context, "measured_high", "pressure", { style: WHOLE }),
			textColumn(context, "test_held", { width: 0.8 }),
			textColumn(context, "date", { width: 1.2 }),
		],
		(context.well.wellControl?.preventers ?? []).map(({ over, equipment, working_pressure, test, actual }) =>
			row({
				stack_on: textCell(named(context, over)),
				equipment: textCell(equipment),
				preventer_rating: cell(context, working_pressure),
				test_low: cell(context, test?.low),
				test_high: cell(context, test?.high),
				hold: cell(context, test?.hold),
				test_plug: yesOrNo(context, test?.test_plug),
				measured_low: cell(context, actual?.low),
				measured_high: cell(context, actual?.high),
				test_held: yesOrNo(context, actual?.held),
				date: textCell(actual?.date),
			}),
		),
	);

const yesOrNo = ({ words }: PaperContext, said: boolean | undefined): Cell =>
	textCell(said === undefined ? undefined : words.label(said ? "phrases.yes" : "phrases.no"));

/** The tightest places of the cement jobs, a line a string. */
export const cementPressures: Part = (context) =>
	table(
		context,
		"cement_pressures",
		[
			textColumn(context, "string", { width: 1.3, rowHead: true }),
			quantityColumn(context, "standing_at_shoe", "pressure", { style: WHOLE }),
			quantityColumn(context, "equivalent_standing", "density", { style: TENTH }),
			quantityColumn(context, "equivalent_moving", "density", { style: TENTH }),
			quantityColumn(context, "fracture_margin", "pressure-difference", { style: WHOLE }),
			quantityColumn(context, "pore_margin", "pressure-difference", { style: WHOLE }),
			quantityColumn(context, "lift", "pressure-difference", { style: WHOLE }),
			quantityColumn(context, "hold_down", "force", { style: { nearest: 100 } }),
		],
		Object.values(context.results.cement).map((cement) =>
			row({
				string: textCell(named(context, cement.id)),
				standing_at_shoe: cell(context, cement.annulus_hydrostatic_at_shoe),
				equivalent_standing: cell(context, cement.equivalent_density_at_shoe, TENTH),
				equivalent_moving: cell(context, cement.circulating_density_at_shoe, TENTH),
				fracture_margin: cell(context, cement.placement?.fracture?.margin),
				pore_margin: cell(context, cement.placement?.pore?.margin),
				lift: cell(context, cement.final_lift),
				hold_down: cell(context, cement.placement?.least_net_force?.force),
			}),
		),
		{ note: "cement_pressures" },
	);
