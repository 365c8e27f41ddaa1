import type * as z from "zod";
import { EVERY, RECORD, TECHNICAL } from "./audience.ts";
import { straightDepth } from "./depth-field.ts";
import { date, entry, flag, group, list, oneOf, optional, text } from "./field.ts";
import { LITHOLOGIES } from "./lithologies.ts";
import { q, ratio } from "./quantity-field.ts";

const mechanical = group("Rock mechanics", "The fracture height estimate rests on these.", RECORD, {
	youngs_modulus: optional(q("pressure", "Young's modulus", "Sets fracture width.", RECORD)),
	poissons_ratio: optional(ratio("Poisson's ratio", "Sets fracture width.", RECORD)),
	closure: optional(
		q("pressure-gradient", "Closure stress gradient", "The stress that shuts the fracture.", RECORD),
	),
	stress_contrast: optional(
		q("pressure", "Stress contrast to the bounding beds", "Holds the fracture in height.", RECORD),
	),
	leakoff: optional(
		q("leakoff", "Leak-off coefficient", "Fluid lost to the rock is not growing the fracture.", RECORD),
	),
});

const formation = entry("Formation", "One bed or group of beds, from its top to the next.", EVERY, {
	name: text("Name", "As the geologists of the area call it.", EVERY),
	top: straightDepth("Top", "Orders the column and ties shoes to rock.", EVERY),
	base: optional(straightDepth("Base", "Where it is not the next formation's top.", EVERY)),
	lithology: oneOf(
		LITHOLOGIES,
		"Lithology",
		"Drawn on the schematic, and judged as a place for a shoe.",
		EVERY,
	),
	pore_pressure: optional(
		q("density", "Pore pressure, as equivalent mud density", "The mud must hold at least this.", TECHNICAL),
	),
	fracture_gradient: optional(
		q("pressure-gradient", "Fracture gradient", "Mud and cement must stay below it.", TECHNICAL),
	),
	fracture_from: optional(
		group("Fracture gradient by a correlation", "Where none is measured; needs pore pressure.", TECHNICAL, {
			method: oneOf(
				["Eaton", "Hubbert-Willis lower", "Hubbert-Willis upper", "Matthews-Kelly"],
				"Method",
				"Regional; a test outranks it.",
				TECHNICAL,
			),
			poissons_ratio: optional(ratio("Poisson's ratio", "Of Eaton's method.", TECHNICAL)),
			matrix_stress_coefficient: optional(
				ratio(
					"Matrix stress coefficient",
					"Of Matthews and Kelly's, from the chart of the region.",
					TECHNICAL,
				),
			),
		}),
	),
	flow_zone: optional(
		oneOf(
			["gas", "oil", "water", "brine"],
			"Potential flow zone",
			"Rules ask for cement across and above it.",
			RECORD,
		),
	),
	competent: optional(
		flag(
			"Competent to hold a shoe",
			"Rules ask for a shoe in competent rock; only a geologist can say.",
			RECORD,
		),
	),
	mobile: optional(
		flag("Creeps onto the pipe", "Salt that flows loads the string with the weight of the rock.", RECORD),
	),
	confining: optional(flag("Confining bed", "Stands between the treated rock and the water.", EVERY)),
	target: optional(flag("Treated formation", "The rock the well is for.", EVERY)),
	mechanical: optional(mechanical),
	actual: optional(
		group("As found", "The top as drilled stands before the prognosis.", EVERY, {
			top: straightDepth("Top as found", "From logs or cuttings.", EVERY),
			by: optional(text("Picked from", "What the pick rests on.", RECORD, "gamma ray")),
		}),
	),
});

const waterZone = entry("Water zone", "Water that people use or may use.", EVERY, {
	name: text("Name", "As the groundwater agency calls it.", EVERY),
	top: straightDepth("Top", "Steel and cement must cover it.", EVERY),
	base: straightDepth("Base", "Steel and cement must cover it.", EVERY),
	dissolved_solids: optional(
		q("dissolved-solids", "Dissolved solids", "Many rules define protected water by it.", EVERY),
	),
	use: optional(text("Use", "What people do with it.", EVERY, "domestic and stock")),
});

/** Rock and water from the surface down. */
export const geology = group("Geology", "Rock, pressure and water that the well passes through.", EVERY, {
	temperature: optional(
		group("Temperature", "Cement sets by it.", TECHNICAL, {
			surface: q("temperature", "At surface", "Start of the gradient.", TECHNICAL),
			gradient: q("temperature-gradient", "Gradient", "Gives the temperature at each shoe.", TECHNICAL),
		}),
	),
	overburden: optional(
		q("pressure-gradient", "Overburden gradient", "Upper bound of any fracture gradient.", RECORD),
	),
	formations: list("Formations", "From the surface down.", EVERY, formation),
	water: optional(list("Water zones", "From the surface down.", EVERY, waterZone)),
	protected_water: optional(
		group("Protected water", "What the surface casing is for.", EVERY, {
			base: straightDepth("Base of protected water", "The surface shoe is judged against it.", EVERY),
			determined_by: optional(
				text("Determined by", "Whose finding it is.", EVERY, "groundwater protection letter"),
			),
			reference: optional(text("Reference", "Number of the letter or map.", RECORD)),
			dated: optional(date("Dated", "Findings are revised.", RECORD)),
		}),
	),
});

export type GeologyDefinition = z.output<typeof geology>;
