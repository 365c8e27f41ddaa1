import * as z from "zod";
import { message } from "../messages/message.ts";
import { EVERY, RECORD, TECHNICAL } from "./audience.ts";
import { cement } from "./cement.ts";
import { columnsOf } from "./columns-field.ts";
import { measuredDepth, measuredDepthOrSurface, verticalDepth } from "./depth-field.ts";
import { designFactors } from "./design-basis.ts";
import {
	date,
	entry,
	field,
	file,
	flag,
	group,
	identifier,
	list,
	oneOf,
	optional,
	reference,
	text,
} from "./field.ts";
import { annulusReadings } from "./isolation-evidence.ts";
import { count, part, q, typed } from "./quantity-field.ts";

const ratings = group("Ratings stated", "For pipe or connections outside the catalogue.", RECORD, {
	internal_yield: optional(
		q("pressure", "Internal yield pressure", "Of the weaker of body and connection.", RECORD),
	),
	collapse: optional(q("pressure", "Collapse resistance", "As the maker states.", RECORD)),
	tension: optional(q("force", "Tension", "Of the weaker of body and connection.", RECORD)),
	sour_service: optional(
		flag("Fit for sour service", "As the maker states, of pipe and connection together.", RECORD),
	),
	source: text("Source", "Maker's data sheet and its date.", RECORD),
});

export const pipe = entry("Pipe", "One run of equal pipe; several make a tapered string.", EVERY, {
	od: q("diameter", "Outside diameter", "Names the pipe.", EVERY),
	weight: optional(q("linear-weight", "Nominal weight", "With the diameter it names the pipe.", EVERY)),
	wall: optional(q("diameter", "Wall thickness", "Names the pipe where no weight does.", TECHNICAL)),
	grade: text("Grade", "Strength of the steel.", EVERY, "L80"),
	connection: text("Connection", "Often weaker than the pipe.", TECHNICAL, "BTC"),
	condition: optional(
		oneOf(["new", "used", "reconditioned"], "Condition", "Ratings hold for new pipe.", RECORD),
	),
	joint: optional(q("length", "Length of a joint", "Counts joints and centralizers.", TECHNICAL)),
	from: measuredDepthOrSurface("Top", "Of this run.", EVERY),
	to: measuredDepth("Bottom", "Of this run; the lowest is the shoe.", EVERY),
	drift: optional(
		q("diameter", "Special drift", "Where the pipe was drifted for more than standard.", TECHNICAL),
	),
	coupling_od: optional(
		q("diameter", "Coupling diameter", "Clearance, where it is not standard.", TECHNICAL),
	),
	minimum_yield: optional(
		q("pressure", "Minimum yield strength", "For grades outside the catalogue.", RECORD),
	),
	minimum_tensile: optional(
		q("pressure", "Minimum tensile strength", "For grades outside the catalogue.", RECORD),
	),
	ratings: optional(ratings),
});

const centralizerRun = entry("Centralizers", "One stretch at one spacing.", TECHNICAL, {
	from: measuredDepthOrSurface("From", "Top of the stretch.", TECHNICAL),
	to: measuredDepth("To", "Bottom of the stretch.", TECHNICAL),
	every: field(
		z
			.string()
			.regex(/^\s*[1-9]\d*\s+joints?\s*$/)
			.transform((text) => typed("count", Number.parseInt(text, 10), text)),
		{
			title: "Spacing",
			why: "Pipe on the wall is not sealed all round.",
			papers: TECHNICAL,
			expected: message("definition/expected.centralizers"),
			example: "4 joints",
		},
	),
	restoring_force: optional(
		q("force", "Restoring force at 67 % standoff", "The maker's test; else the standard's least.", TECHNICAL),
	),
	od: optional(
		q("diameter", "Diameter over the blades", "Of rigid ones: how far off the wall they hold.", TECHNICAL),
	),
});

const runs = (kind: string) =>
	list(kind, "Pipe off the wall is sealed all round.", TECHNICAL, centralizerRun);

const pressureTest = group("Pressure test", "Proves the pipe before anything depends on it.", EVERY, {
	pressure: q(
		"pressure",
		"Pressure at surface",
		"Compared with the rule's figure, and told to neighbors.",
		EVERY,
	),
	hold: q("duration", "Hold", "How long it is watched.", EVERY),
	allowed_fall: optional(part("Allowed fall", "More than this fails.", TECHNICAL)),
	head: optional(
		oneOf(
			["drilling", "stimulation"],
			"Wellhead that is on",
			"The test may not pass its rating. Left out: the one for drilling.",
			TECHNICAL,
		),
	),
	actual: optional(
		group("Test made", "As charted.", EVERY, {
			date: optional(date("Date", "When.", RECORD)),
			pressure: q("pressure", "Pressure at start", "As charted.", EVERY),
			hold: optional(q("duration", "Held for", "As charted.", EVERY)),
			fall: optional(part("Fall", "As charted.", EVERY)),
			witnessed_by: optional(text("Witnessed by", "Some rules ask for a witness.", RECORD)),
		}),
	),
});

const shoeTest = group("Shoe test", "Shows what the rock below the shoe stands.", TECHNICAL, {
	kind: oneOf(["FIT", "LOT"], "Kind", "To a set value, or until the rock takes fluid.", TECHNICAL),
	equivalent: q("density", "Equivalent mud density", "What the next hole needs.", TECHNICAL),
	new_hole: optional(
		q("length", "New hole drilled before the test", "The rock tested must be fresh.", TECHNICAL),
	),
	actual: optional(
		group("Test made", "As charted.", TECHNICAL, {
			date: optional(date("Date", "When.", RECORD)),
			equivalent: q("density", "Equivalent mud density reached", "As charted.", TECHNICAL),
			outcome: optional(text("Outcome", "Held, or leaked off.", TECHNICAL)),
		}),
	),
});

const full = field(z.literal("full"), {
	title: "Empty of fluid",
	why: "The worst case of collapse.",
	papers: RECORD,
	expected: "`full`",
});

const loads = group("Loads", "What the string is designed against, where not the usual.", RECORD, {
	evacuation: optional(
		field(
			z.union([
				full,
				entry("Fluid level", "Partly empty.", RECORD, {
					fluid_level: verticalDepth("Fluid level", "Empty above it.", RECORD),
					fluid: q("density", "Fluid below the level", "Helps hold the pipe open.", RECORD),
				}),
			]),
			{
				title: "Evacuation in collapse",
				why: "How empty the pipe may come to be.",
				papers: RECORD,
				expected: message("definition/expected.evacuation"),
			},
		),
	),
	burst_backup: optional(
		q("pressure-gradient", "Pressure gradient outside in burst", "Where not the design basis's.", RECORD),
	),
	wear: optional(q("share", "Wall loss by wear", "Where not the design basis's.", RECORD)),
	production: optional(
		group("Production", "How it is produced through tubing; loads of its life are worked from it.", RECORD, {
			packer: measuredDepth(
				"Packer",
				"The string sees tubing pressure above it, and the rock below.",
				RECORD,
			),
			packer_fluid: q("density", "Packer fluid", "Stands on the packer, inside the string.", RECORD),
			tubing_pressure: optional(
				q("pressure", "Shut-in tubing pressure", "What a leak near the surface brings; else worked.", RECORD),
			),
			drawn_down_to: optional(
				q(
					"pressure",
					"Least pressure below the packer",
					"How far the rock is drawn down; else to nothing.",
					RECORD,
				),
			),
			producing_temperature: optional(
				q(
					"temperature",
					"Flowing temperature at the wellhead",
					"The hot load cases are worked from it: straight from here to the rock's own at the foot of the well.",
					RECORD,
				),
			),
		}),
	),
});

/** What the crew that runs the string keeps to. */
const running = group("Running", "What the crew that runs the string keeps to.", TECHNICAL, {
	speed: optional(
		q("fluid-velocity", "Greatest running speed", "The crew keeps to it; surge breaks rock.", TECHNICAL),
	),
	maximum_pull: optional(
		q("force", "Maximum pull", "On the hook, where rig or gear take less than the pipe.", TECHNICAL),
	),
	flotation_collar: optional(
		measuredDepth(
			"Flotation collar",
			"With the shoe landed; the string is run with air below it, and drags less.",
			TECHNICAL,
		),
	),
	torque: optional(
		group("Make-up torque", "Outside the window the connection leaks or parts.", TECHNICAL, {
			least: q("torque", "Least", "Less leaves it loose.", TECHNICAL),
			greatest: q("torque", "Greatest", "More yields it.", TECHNICAL),
			source: text("Source", "Maker's sheet, or the standard's table.", TECHNICAL),
		}),
	),
});

const casingString = entry("String", "One string of pipe, with its cement and its tests.", EVERY, {
	id: identifier("Short name", "Names the string everywhere.", EVERY),
	kind: optional(
		oneOf(
			["casing", "liner", "tieback"],
			"Kind",
			"Casing reaches the hanger; a liner hangs in the string before it.",
			EVERY,
		),
	),
	hole: reference("Hole", "The section it is run in; of a tieback, that of the liner it joins.", EVERY),
	pipe: list("Pipe", "From the top down.", EVERY, pipe),
	running_string: optional(
		group("Running string", "Pipe that a liner is run and cemented through.", TECHNICAL, {
			od: q("diameter", "Outside diameter", "The annulus above the liner.", TECHNICAL),
			id: q("diameter", "Inside diameter", "The displacement goes down it.", TECHNICAL),
		}),
	),
	running: optional(running),
	shoe_track: optional(q("length", "Shoe track", "Cement left inside, from collar to shoe.", TECHNICAL)),
	floats: optional(
		list(
			"Floats",
			"Keep cement from flowing back.",
			TECHNICAL,
			text("Float", "Shoe or collar.", TECHNICAL, "float collar"),
		),
	),
	centralizers: optional(
		group("Centralizers", "Where, which and how many.", TECHNICAL, {
			bow_spring: optional(runs("Bow spring")),
			rigid: optional(runs("Rigid")),
		}),
	),
	cement: optional(cement),
	pressure_test: optional(pressureTest),
	shoe_test: optional(shoeTest),
	annulus_readings: optional(annulusReadings),
	design_factors: optional(designFactors),
	loads: optional(loads),
	actual: optional(
		group("As run", "Calculations use it where given.", EVERY, {
			date: optional(date("Date landed", "When.", RECORD)),
			shoe: measuredDepth("Shoe as landed", "Stands before the planned shoe.", EVERY),
			top: optional(measuredDepthOrSurface("Top as landed", "Of a liner.", EVERY)),
			joints: optional(count("Joints run", "Must agree with the tally.", TECHNICAL)),
			tally: optional(
				group("Tally", "Every joint in the string, from the shoe up or from the top down.", RECORD, {
					file: file("Tally file", "The length of each joint, as CSV or XLSX.", RECORD, "tally.csv"),
					columns: columnsOf("joint", "length"),
				}),
			),
		}),
	),
});

/** Strings from the outermost inward. */
export const casing = list("Casing", "Strings from the outermost inward.", EVERY, casingString);

export type CasingDefinition = z.output<typeof casingString>;
export type PipeDefinition = z.output<typeof pipe>;
export type PressureTestDefinition = z.output<typeof pressureTest>;
export type ShoeTestDefinition = z.output<typeof shoeTest>;
