import type * as z from "zod";
import { EVERY, RECORD, TECHNICAL } from "./audience.ts";
import { columnsOf } from "./columns-field.ts";
import { measuredDepth } from "./depth-field.ts";
import { date, entry, group, identifier, list, optional, text } from "./field.ts";
import { q, ratio } from "./quantity-field.ts";

/** What the hole is drilled with. */
const drillingFluid = group("Drilling fluid", "Holds the formation, and is what touches the water.", EVERY, {
	kind: text(
		"Kind",
		"Neighbors ask what is used while drilling through their water.",
		EVERY,
		"fresh-water mud",
	),
	density: optional(q("density", "Density", "Between pore pressure and fracture gradient.", TECHNICAL)),
	plastic_viscosity: optional(
		q("plastic-viscosity", "Plastic viscosity", "Friction while cementing.", TECHNICAL),
	),
	yield_point: optional(q("yield-point", "Yield point", "Friction while cementing.", TECHNICAL)),
	readings: optional(
		group("Viscometer readings", "Friction while drilling and running pipe.", TECHNICAL, {
			six_hundred: ratio("At 600 rev/min", "Degrees of the dial.", TECHNICAL),
			three_hundred: ratio("At 300 rev/min", "Degrees of the dial.", TECHNICAL),
			six: ratio("At 6 rev/min", "Yield stress comes of it.", TECHNICAL),
			three: ratio("At 3 rev/min", "Yield stress comes of it.", TECHNICAL),
		}),
	),
});

const hole = entry("Hole section", "One diameter of drilled hole.", EVERY, {
	id: identifier("Short name", "Casing refers to it.", EVERY),
	diameter: q("diameter", "Bit diameter", "Clearance and cement volume follow from it.", EVERY),
	to: measuredDepth("Drilled to", "Bottom of this section.", EVERY),
	washout: optional(
		group("Washout", "The hole is wider than the bit; cement must fill it.", TECHNICAL, {
			diameter: q("share", "Enlargement of the diameter", "Adds to the cement volume.", TECHNICAL),
			from: optional(
				text("Known from", "Offset caliper, caliper here, or judgment.", RECORD, "offset caliper"),
			),
		}),
	),
	caliper: optional(
		group(
			"Caliper",
			"The log of this hole; cement volumes on `volume_basis: caliper` are worked from it.",
			RECORD,
			{
				file: text(
					"File",
					"CSV beside the definition: md and diameter, each with its unit in the head.",
					RECORD,
					"caliper.csv",
				),
				columns: columnsOf("md", "diameter"),
			},
		),
	),
	kick: optional(
		group(
			"Design kick of this hole",
			"Where it is not the well's: known pressures ask for a smaller one.",
			TECHNICAL,
			{
				intensity: q(
					"density",
					"Kick intensity",
					"How far the kick exceeds the highest pore pressure of the open hole.",
					TECHNICAL,
				),
				volume: optional(q("volume", "Volume", "How much enters before it is seen.", TECHNICAL)),
			},
		),
	),
	fluid: optional(drillingFluid),
	drilling: optional(
		group("Drilling of this hole", "What circulating and tripping add to the mud's pressure.", TECHNICAL, {
			rate: optional(q("flow-rate", "Greatest rate", "Friction in the annulus adds to the mud.", TECHNICAL)),
			cuttings: optional(
				q("density", "Density added by cuttings", "As estimated; they are not worked here.", TECHNICAL),
			),
			nozzles: optional(
				list(
					"Nozzles",
					"Pressure lost at the bit.",
					TECHNICAL,
					q("diameter", "Nozzle", "32nds of an inch.", TECHNICAL),
				),
			),
			trip_speed: optional(
				q("fluid-velocity", "Greatest trip speed", "Pipe run surges, pipe pulled swabs.", TECHNICAL),
			),
		}),
	),
	actual: optional(
		group("As drilled", "Calculations use it where given.", RECORD, {
			to: optional(measuredDepth("Drilled to", "Depth reached.", RECORD)),
			reached: optional(date("Reached on", "For the daily record.", RECORD)),
			washout: optional(q("share", "Enlargement by caliper", "Stands before the planned washout.", RECORD)),
			fluid_density: optional(q("density", "Mud density at section end", "Stands before the plan.", RECORD)),
		}),
	),
});

/** Drilled sections from the surface down. */
export const holes = list("Holes", "Drilled sections from the surface down.", EVERY, hole);

export type HoleDefinition = z.output<typeof hole>;
