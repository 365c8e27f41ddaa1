import { cell, textCell } from "../context.ts";
import { named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";

const DENSITY = { decimals: 2 } as const;
const PRESSURE = { nearest: 10 } as const;

/** What the pumps add to each hole's mud, with the bit at bottom, and what they need. */
export const circulatingTable: Part = (context) =>
	table(
		context,
		"circulating",
		[
			textColumn(context, "hole", { width: 1.3, rowHead: true }),
			textColumn(context, "friction_model", { width: 1.5 }),
			quantityColumn(context, "circulating_rate", "flow-rate"),
			quantityColumn(context, "ecd_at_shoe", "density", { style: DENSITY }),
			quantityColumn(context, "ecd_at_bottom", "density", { style: DENSITY }),
			quantityColumn(context, "annulus_loss", "pressure", { style: PRESSURE }),
			quantityColumn(context, "bit_loss", "pressure", { style: PRESSURE }),
			quantityColumn(context, "pump_pressure", "pressure", { style: PRESSURE }),
		],
		context.results.pressure.holes.flatMap(({ id, hydraulics: found }) =>
			found?.rate === undefined
				? []
				: [
						row({
							hole: textCell(named(context, id)),
							friction_model: textCell(found.model),
							circulating_rate: cell(context, found.rate),
							ecd_at_shoe: cell(context, found.ecd_at_shoe),
							ecd_at_bottom: cell(context, found.ecd_at_bottom),
							annulus_loss: cell(context, found.annulus_loss),
							bit_loss: cell(context, found.bit_loss),
							pump_pressure: cell(context, found.pump_pressure),
						}),
					],
		),
		{ note: "circulating" },
	);

/** What pipe run or pulled at its greatest speed does to the mud of each hole. */
export const surgeTable: Part = (context) =>
	table(
		context,
		"surge",
		[
			textColumn(context, "hole", { width: 1.3, rowHead: true }),
			textColumn(context, "moving_pipe", { width: 1.5 }),
			quantityColumn(context, "pipe_speed", "fluid-velocity"),
			quantityColumn(context, "surge_at_bottom", "density", { style: DENSITY }),
			quantityColumn(context, "surge_margin", "density", { style: DENSITY }),
			quantityColumn(context, "swab_at_bottom", "density", { style: DENSITY }),
			quantityColumn(context, "swab_margin", "density", { style: DENSITY }),
		],
		context.results.pressure.holes.flatMap(({ id, hydraulics }) =>
			(hydraulics?.moving ?? []).map((moving) =>
				row({
					hole: textCell(named(context, id)),
					moving_pipe: textCell(
						moving.by === "drill string"
							? context.words.label("phrases.drill_string")
							: named(context, moving.by),
					),
					pipe_speed: cell(context, moving.speed),
					surge_at_bottom: cell(context, moving.surge_at_bottom),
					surge_margin: cell(context, moving.weakest_over_surge?.margin),
					swab_at_bottom: cell(context, moving.swab_at_bottom),
					swab_margin: cell(context, moving.swab_over_pore?.margin),
				}),
			),
		),
		{ note: "surge" },
	);
