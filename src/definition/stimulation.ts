import * as z from "zod";
import { message } from "../messages/message.ts";
import { EVERY, PUBLIC, RECORD, TECHNICAL } from "./audience.ts";
import { pipe } from "./casing.ts";
import { measuredDepth } from "./depth-field.ts";
import { entry, field, flag, group, list, oneOf, optional, reference, text } from "./field.ts";
import { additive, proppant } from "./materials.ts";
import { fraction, part, partSpan, q, tally } from "./quantity-field.ts";
import { stages } from "./stages.ts";

const waterSource = entry("Water source", "Neighbors ask where the water comes from.", PUBLIC, {
	name: text("Name", "What the source is called.", PUBLIC, "Pond water"),
	share: part("Share of the water", "The shares add up to the whole.", PUBLIC),
	recycled: optional(flag("Used before", "Water from other wells spares fresh water.", PUBLIC)),
	dissolved_solids: optional(
		q("dissolved-solids", "Dissolved solids", "Salt makes the water heavier; the blend follows.", RECORD),
	),
});

const pressureModel = group(
	"Pressure model",
	"What the expected treating pressure is computed with.",
	RECORD,
	{
		net: optional(q("pressure", "Net pressure", "Above closure, inside the fracture.", RECORD)),
		near_wellbore: optional(q("pressure", "Near-wellbore loss", "Bends between hole and fracture.", RECORD)),
		friction_reduction: optional(
			part("Friction reduction", "By the friction reducer, against water.", RECORD),
		),
		roughness: optional(q("diameter", "Pipe roughness", "Friction in the pipe.", RECORD)),
		discharge: optional(
			field(
				z.tuple([
					fraction("Discharge coefficient, fresh", "Before sand has rounded the hole.", RECORD),
					fraction("Discharge coefficient, worn", "After sand has rounded the hole.", RECORD),
				]),
				{
					title: "Perforation discharge coefficients",
					why: "Pressure lost through the perforations, before and after wear.",
					papers: RECORD,
					expected: message("definition/expected.discharge"),
				},
			),
		),
		cluster_stress: optional(
			list(
				"Stress of each cluster above the easiest",
				"Deepest first; the rate that each cluster takes is solved against them.",
				RECORD,
				q("pressure", "Stress difference", "0 psi for the cluster that opens easiest.", RECORD),
			),
		),
	},
);

const pumps = group("Pumps", "How many there must be on location.", TECHNICAL, {
	horsepower_each: q("hydraulic-power", "Hydraulic horsepower of one pump", "By its maker.", TECHNICAL),
	load: part("Share of it to be used", "Pumps that run flat out fail.", TECHNICAL),
	spare: optional(tally("Spare pumps", "On line, to take over.", TECHNICAL)),
});

const boundaryElement = entry("Element under treating pressure", "The weakest limits the job.", TECHNICAL, {
	element: text("Element", "What it is; `casing` and `casing test` are found from the strings.", TECHNICAL),
	rating: optional(
		q("pressure", "Rating", "From its data plate; absent where the pipe or a test sets it.", TECHNICAL),
	),
	factor: fraction("Share of the rating to be used", "Company rule or regulation.", TECHNICAL),
});

const limits = group("Pressure limits", "The crew's numbers: none of them may be passed.", EVERY, {
	maximum_treating_pressure: optional(q("pressure", "Maximum treating pressure", "Stops the job.", EVERY)),
	pump_kickouts: optional(
		list(
			"Pump kickouts",
			"Staggered, so that not all pumps stop at once.",
			EVERY,
			q("pressure", "Kickout", "Of one pump.", EVERY),
		),
	),
	relief_valve: optional(q("pressure", "Relief valve set point", "Opens if the kickouts fail.", EVERY)),
	relief_discharges_to: optional(text("Relief discharges to", "Must be away from people.", TECHNICAL)),
	line_test: optional(q("pressure", "Line test", "Before pumping, with nobody near.", TECHNICAL)),
});

const annulus = entry(
	"Annulus",
	"A pressure rise outside the treated string is the first sign of a leak.",
	TECHNICAL,
	{
		between: field(
			z.tuple([
				reference("Inner string", "Short name.", TECHNICAL),
				reference("Outer string", "Short name.", TECHNICAL),
			]),
			{
				title: "Between",
				why: "The two strings it lies between, the inner first; pipe pumped down inside the casing is `treating-string`.",
				papers: TECHNICAL,
				expected: message("definition/expected.annulus"),
			},
		),
		predicted_rise: optional(
			q("pressure", "Predicted rise", "From heat and squeeze of the string.", TECHNICAL),
		),
		warming: optional(
			group("Warming of the fluid in it", "A closed annulus that warms gains pressure.", TECHNICAL, {
				from: q("temperature", "From", "Before the job.", TECHNICAL),
				to: q("temperature", "To", "The warmest it will be.", TECHNICAL),
			}),
		),
		relief: optional(
			q("pressure", "Relief valve set at", "An annulus that is not shut in rises no further.", TECHNICAL),
		),
		stop_above: optional(q("pressure", "Stop above", "The job stops.", TECHNICAL)),
		tell: optional(text("Who is told", "The agency, where nobody is named.", TECHNICAL)),
		notify_within: optional(q("duration", "Notify the agency within", "Some rules set hours.", TECHNICAL)),
		actual: optional(
			group("As recorded", "The highest seen on the job.", TECHNICAL, {
				highest: q("pressure", "Highest pressure", "Compared with the stop value.", TECHNICAL),
			}),
		),
	},
);

const toe = group("Toe", "How the first stage gets its way into the rock.", TECHNICAL, {
	// Guns cannot be pumped down before there is injection, so that way is not on the list.
	kind: oneOf(
		["guns on coiled tubing", "guns on wireline tractor", "initiation valve"],
		"Kind",
		"Guns cannot be pumped down before fluid can go into the rock; each other way brings its own hazards.",
		TECHNICAL,
	),
	depth: measuredDepth("Depth", "Deepest opening.", TECHNICAL),
	opens_at: optional(q("pressure", "Opens at", "Of an initiation valve; above the casing test.", TECHNICAL)),
	opens_at_measured: optional(
		oneOf(
			["surface", "valve"],
			"Opening pressure measured at",
			"The two differ by the fluid column.",
			TECHNICAL,
		),
	),
});

const treatingString = group(
	"Treating string",
	"Pipe that the treatment is pumped down, where it is not the casing itself.",
	EVERY,
	{
		pipe: list("Pipe", "From the top down, inside the string treated through.", EVERY, pipe),
		packer: optional(
			group("Packer", "Keeps treating pressure from the casing above it.", TECHNICAL, {
				depth: measuredDepth("Depth", "Above every opening, in the string treated through.", TECHNICAL),
				rating: optional(q("pressure", "Rating", "Pressure across it, from its data sheet.", TECHNICAL)),
			}),
		),
	},
);

/** What is pumped into the rock, how hard, and what may not be passed. */
export const stimulation = group(
	"Stimulation",
	"What is pumped into the rock, and what may not be passed.",
	EVERY,
	{
		method: oneOf(
			["plug and perforate", "sliding sleeve", "single interval"],
			"Method",
			"How the rock is opened stage by stage.",
			EVERY,
		),
		treated_through: reference("Treated through", "The string that holds treating pressure.", TECHNICAL),
		treating_string: optional(treatingString),
		base_fluid: group("Base fluid", "Most of what is pumped.", EVERY, {
			kind: text("Kind", "Told to neighbors.", EVERY, "slickwater"),
			density: q("density", "Density", "Hydrostatic pressure.", TECHNICAL),
			viscosity: optional(q("plastic-viscosity", "Viscosity", "Friction.", RECORD)),
		}),
		water_sources: optional(list("Water sources", "Where the water comes from.", PUBLIC, waterSource)),
		pressure_model: optional(pressureModel),
		pressure_boundary: optional(
			list("Pressure boundary", "Every element that sees treating pressure.", TECHNICAL, boundaryElement),
		),
		limits: optional(limits),
		pumps: optional(pumps),
		toe: optional(toe),
		stages,
		proppants: optional(list("Proppants", "What holds the fractures open.", EVERY, proppant)),
		additives: optional(list("Additives", "For disclosure.", EVERY, additive)),
		annuli: optional(list("Annuli watched", "Pressure outside the treated string.", TECHNICAL, annulus)),
		flowback: optional(
			group("Flowback", "What comes back, and where it goes.", EVERY, {
				returned: optional(partSpan("Share of the water that returns", "Tank and truck counts.", EVERY)),
				goes_to: optional(text("Goes to", "Neighbors ask.", EVERY, "reuse on the next well")),
			}),
		),
		if_it_screens_out: optional(
			text(
				"If a stage screens out",
				"Proppant in the pipe has to come out again before the next plug goes in.",
				["crew", "answers"],
			),
		),
	},
);

export type StimulationDefinition = z.output<typeof stimulation>;
