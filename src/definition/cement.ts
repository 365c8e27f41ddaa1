import * as z from "zod";
import { message } from "../messages/message.ts";
import { EVERY, RECORD, TECHNICAL } from "./audience.ts";
import { measuredDepth, measuredDepthOrSurface } from "./depth-field.ts";
import { date, entry, field, flag, group, list, oneOf, optional, text } from "./field.ts";
import { sealEvidence } from "./isolation-evidence.ts";
import { q, ratio, tally } from "./quantity-field.ts";

export const TOP_METHODS = [
	"returns seen",
	"calculated",
	"temperature survey",
	"bond log",
	"tagged",
] as const;

/** Of the annulus while cement is placed. */
const RETURNS = ["full", "partial", "none"] as const;

const strength = entry("Strength point", "Drilling out and testing wait for it.", RECORD, {
	value: q("pressure", "Compressive strength", "Compared with the rule's figure.", RECORD),
	after: q("duration", "After", "Time since placement.", RECORD),
	at: optional(q("temperature", "At", "Temperature of the test.", RECORD)),
});

const component = entry("Component", "A material blended with the cement or put into its water.", RECORD, {
	material: text(
		"Material",
		"One of the list that ships, or with a specific gravity of its own.",
		RECORD,
		"bentonite",
	),
	share: optional(q("share", "Share by weight of cement", "How dry materials are stated.", RECORD)),
	share_of_water: optional(q("share", "Share by weight of water", "How salt is stated.", RECORD)),
	volume: optional(q("water-requirement", "Volume for a sack", "How liquids are stated.", RECORD)),
	specific_gravity: optional(ratio("Specific gravity", "Where the list does not have it.", RECORD)),
});

const slurry = entry("Slurry", "One blend of cement, and the stretch of hole it fills.", EVERY, {
	role: text("Role", "Lead, tail or filler; names the slurry in results.", EVERY, "lead"),
	class: optional(text("Cement class", "With density and yield it names the blend.", TECHNICAL, "C")),
	from: measuredDepthOrSurface("Planned top", "Where the column is to end.", EVERY),
	to: measuredDepthOrSurface("Bottom", "Where the column begins.", EVERY),
	excess: q("share", "Excess", "Added to the open-hole annulus only.", TECHNICAL),
	density: optional(q("density", "Density", "Between mud and fracture; or from the components.", TECHNICAL)),
	yield: optional(
		q("slurry-yield", "Yield", "Slurry from a sack of cement; or from the components.", TECHNICAL),
	),
	water: optional(q("water-requirement", "Mix water", "Water for a sack of cement.", TECHNICAL)),
	water_by_weight: optional(
		q("share", "Mix water by weight of cement", "Where the laboratory states it so.", TECHNICAL),
	),
	components: optional(
		list("Components", "Density and yield follow from them; stated ones are compared.", RECORD, component),
	),
	sacks: optional(
		tally("Sacks ordered", "Compared with yield and volume; papers print what is calculated.", TECHNICAL),
	),
	volume: optional(
		q(
			"volume",
			"Volume ordered",
			"Compared with sacks and yield; papers print what is calculated.",
			TECHNICAL,
		),
	),
	rate: optional(q("flow-rate", "Pump rate", "Friction and mud removal.", TECHNICAL)),
	plastic_viscosity: optional(q("plastic-viscosity", "Plastic viscosity", "Friction.", TECHNICAL)),
	yield_point: optional(q("yield-point", "Yield point", "Friction.", TECHNICAL)),
	thickening_time: optional(q("duration", "Thickening time", "The job must end well before it.", TECHNICAL)),
	transition_time: optional(
		q(
			"duration",
			"Transition time",
			"From a gel strength of 100 to 500 lbf/100 ft²: gas may enter in it.",
			TECHNICAL,
		),
	),
	strength: optional(list("Strength", "From the laboratory's test of this blend.", RECORD, strength)),
	free_fluid: optional(q("free-fluid", "Free fluid", "Water that separates leaves a channel.", RECORD)),
	additives: optional(text("Additives", "Some agencies ask for the recipe.", RECORD)),
});

const pumped = entry("Fluid pumped", "One line of the job record.", TECHNICAL, {
	fluid: text("Fluid", "Spacer, or the role of a slurry.", TECHNICAL, "lead"),
	volume: q("volume", "Volume", "As metered.", TECHNICAL),
	density: optional(q("density", "Density", "As weighed.", TECHNICAL)),
});

const none = field(z.literal("none"), {
	title: "No evaluation log",
	why: "Says that none was run.",
	papers: RECORD,
	expected: "`none`",
});

const cementActual = group("Job record", "What was done, beside what was planned.", EVERY, {
	date: optional(date("Date", "Starts the wait on cement.", RECORD)),
	pumped: optional(list("Fluids pumped", "In order.", TECHNICAL, pumped)),
	returns: optional(
		group("Returns", "Cement seen at surface is evidence of the top.", EVERY, {
			to_surface: optional(
				q("volume", "Cement returned to surface", "Measured in the pit or cellar.", EVERY),
			),
			while_pumping: optional(
				oneOf(RETURNS, "Returns while pumping", "Lost returns leave the top lower than planned.", TECHNICAL),
			),
		}),
	),
	top: optional(
		group("Top of cement", "Where it ended, and how that is known.", EVERY, {
			depth: measuredDepthOrSurface("Depth", "Stands before the planned top.", EVERY),
			method: oneOf(TOP_METHODS, "Method", "Rules weigh the methods differently.", EVERY),
		}),
	),
	lift: optional(
		q(
			"pressure",
			"Final lift pressure",
			"Agrees with the column if the cement is where it should be.",
			TECHNICAL,
		),
	),
	bump: optional(q("pressure", "Plug bump pressure", "The plug landed.", TECHNICAL)),
	floats_held: optional(flag("Floats held", "Nothing flowed back.", TECHNICAL)),
	evaluation_log: optional(
		field(z.union([none, text("Evaluation log", "The log run, its date and what it showed.", RECORD)]), {
			title: "Evaluation log",
			why: "A log is stronger evidence than a calculation.",
			papers: RECORD,
			expected: message("definition/expected.cement-log"),
		}),
	),
	remedial: optional(text("Remedial work", "What was done where the job fell short.", RECORD)),
	...sealEvidence,
});

const furtherJob = entry("Further job", "A top-up or a squeeze.", RECORD, {
	kind: oneOf(["top-up", "squeeze"], "Kind", "From the surface, or under pressure.", RECORD),
	from: measuredDepthOrSurface("Top", "Of the stretch filled.", RECORD),
	to: measuredDepth("Bottom", "Of the stretch filled.", RECORD),
	excess: optional(q("share", "Excess", "Added to the annulus.", RECORD)),
	yield: q("slurry-yield", "Yield", "Slurry from a sack of cement.", RECORD),
	water: optional(q("water-requirement", "Mix water", "Water for a sack of cement.", RECORD)),
	density: optional(q("density", "Density", "On the hole below.", RECORD)),
	when: optional(text("When", "What calls for it.", RECORD, "the top is found below the surface")),
});

/** One cement job: what is pumped behind one string. */
export const cement = group("Cement", "The seal between pipe and rock.", EVERY, {
	volume_basis: optional(
		oneOf(
			["gauge hole", "washed-out hole", "caliper"],
			"Volume basis",
			"The hole that the volume fills, before excess.",
			TECHNICAL,
		),
	),
	slurries: list("Slurries", "In the order pumped: the lead first.", EVERY, slurry),
	spacer: optional(
		group("Spacer", "Keeps mud and cement apart.", TECHNICAL, {
			volume: q("volume", "Volume", "Contact time.", TECHNICAL),
			density: optional(q("density", "Density", "Between mud and cement.", TECHNICAL)),
			plastic_viscosity: optional(
				q("plastic-viscosity", "Plastic viscosity", "Friction; the mud's where it is not given.", TECHNICAL),
			),
			yield_point: optional(
				q("yield-point", "Yield point", "Friction; the mud's where it is not given.", TECHNICAL),
			),
		}),
	),
	displacement: optional(
		group("Displacement", "What pushes the cement round.", TECHNICAL, {
			density: q("density", "Density", "Sets the lift pressure.", TECHNICAL),
			rate: optional(q("flow-rate", "Rate", "Friction and mud removal.", TECHNICAL)),
			pump_output: optional(
				q("volume", "Pump output for a stroke", "The crew counts strokes and barrels both.", TECHNICAL),
			),
			plastic_viscosity: optional(
				q("plastic-viscosity", "Plastic viscosity", "Friction; the mud's where it is not given.", TECHNICAL),
			),
			yield_point: optional(
				q("yield-point", "Yield point", "Friction; the mud's where it is not given.", TECHNICAL),
			),
			last: optional(
				group("Last of it", "Pumped slowly, so that the plug lands gently.", TECHNICAL, {
					volume: q("volume", "Volume", "What is left when the pumps slow down.", TECHNICAL),
					rate: q("flow-rate", "Slow rate", "Final circulating pressure is read at it.", TECHNICAL),
				}),
			),
		}),
	),
	line_test: optional(
		q(
			"pressure",
			"Test of the cementing lines",
			"Before anything is pumped; above all that they will see.",
			TECHNICAL,
		),
	),
	bump: optional(
		q("pressure", "Bump over final circulating pressure", "Shows that the plug has landed.", TECHNICAL),
	),
	stage_tool: optional(
		measuredDepth("Stage tool", "Slurries above it are pumped through it, as a second stage.", TECHNICAL),
	),
	density_window: optional(
		q("density", "Density window, either way", "Outside it the mixing stops.", TECHNICAL),
	),
	plugs: optional(
		list(
			"Plugs",
			"Keep fluids apart in the pipe.",
			TECHNICAL,
			text("Plug", "Bottom or top.", TECHNICAL, "top"),
		),
	),
	wait_on_cement: optional(q("duration", "Wait on cement", "Nothing disturbs it until then.", EVERY)),
	drill_out: optional(
		group("Drill-out", "What the cement must have reached before it is drilled.", RECORD, {
			after: optional(q("duration", "After", "Where it is not the wait on cement.", RECORD)),
			strength: optional(q("pressure", "Strength", "Of the cement at the shoe.", RECORD)),
		}),
	),
	further: optional(
		list(
			"Further jobs",
			"Kept ready, or done, beside the main job: from the surface, or through holes in the pipe.",
			RECORD,
			furtherJob,
		),
	),
	top_method: optional(
		oneOf(TOP_METHODS, "How the top will be found", "Rules weigh the methods differently.", RECORD),
	),
	if_returns_stop: optional(
		text(
			"If returns stop",
			"Neighbors and crews both ask what is done when cement does not come back.",
			EVERY,
		),
	),
	actual: optional(cementActual),
});

export type CementDefinition = z.output<typeof cement>;
