import * as z from "zod";
import { message } from "../messages/message.ts";
import { EVERY, PRIVATE, PUBLIC, RECORD, SETTING, SITE, TECHNICAL } from "./audience.ts";
import { date, entry, field, flag, group, list, oneOf, optional, reference, text } from "./field.ts";
import { neighbor } from "./neighbors.ts";
import { northReference } from "./north-reference.ts";
import { offsetWell } from "./offset-wells.ts";
import { eastWest, q } from "./quantity-field.ts";
import { surfaceLocation } from "./surface-location.ts";

/** A limit as the rules write it; `rules/` reads its form, so that a permit and a jurisdiction share one. */
const limit = field(z.record(z.string(), z.json()), {
	title: "Limit",
	why: "What the condition requires, in the form a jurisdiction's row has.",
	papers: RECORD,
	expected: message("definition/expected.limit"),
});

const condition = entry("Permit condition", "Judged beside the rules, on a line of its own.", RECORD, {
	check: text(
		"Check",
		"Which check the condition sets a limit for; `casebound list checks` names them.",
		RECORD,
	),
	string: optional(reference("String", "The string it binds, where it binds one.", RECORD)),
	neighbors: optional(
		list(
			"Neighbors",
			"Kinds or short names of the neighbors it binds, where it binds neighbors.",
			RECORD,
			text("Kind or short name", "As the list of neighbors has it.", RECORD, "dwelling"),
		),
	),
	limit,
	requirement: optional(text("Requirement in words", "Printed beside the verdict.", RECORD)),
	cite: text("Citation", "The permit's own number for the condition.", RECORD, "permit D-20418 condition 4"),
});

const variance = entry(
	"Granted variance",
	"Printed with the rule it replaces; never applied silently.",
	RECORD,
	{
		of: text("Rule varied", "Id of the rule, as `casebound list checks` and the verdicts show it.", RECORD),
		granted: text("What was granted", "Printed beside the rule.", RECORD),
		cite: text("Citation", "The order or letter that grants it.", RECORD),
	},
);

const notice = entry("Notice", "Who was told, how and when.", RECORD, {
	to: text("To", "The party the rule names.", RECORD, "surface owner"),
	rule: optional(
		text(
			"Rule",
			"Id of the rule whose deadline this keeps, as the verdicts show it.",
			RECORD,
			"us-co.spud.notice",
		),
	),
	method: optional(text("Method", "Some rules name the way.", RECORD, "certified mail")),
	due: optional(date("Due by", "The last day by the rule.", RECORD)),
	sent: optional(date("Sent on", "The day it went.", RECORD)),
	proof: optional(text("Proof", "Receipt or return card.", PRIVATE)),
});

const compared = entry(
	"Comparison with the official text",
	"Says who laid the row of a rule beside the text in force, so that the papers can say so.",
	RECORD,
	{
		rule: text("Rule", "Id of the rule, as the verdicts show it.", RECORD, "us-tx.hf.rating"),
		by: text("Compared by", "The person who read the text.", RECORD),
		license: optional(text("License", "Of the person, where one is held.", RECORD, "PE 12345 (fictional)")),
		on: date("Compared on", "The day it was done.", RECORD),
		against: text("Against", "The text that was read.", RECORD, "certified copy of the section"),
		dated: date("Text dated", "The day to which that text is current.", RECORD),
	},
);

/** Days that no phase of the schedule has. */
const DATED_EVENTS = [
	"location work",
	"spud",
	"drilling ends",
	"stimulation starts",
	"stimulation ends",
	"completion",
	"permit issued",
	"water withdrawal",
	"pad rig release",
	"drilling suspended",
	"physical change",
	"pressure test failed",
	"well plugged",
	"fresh-water flow",
	"adverse communication",
	"information requested",
	"long rotation in casing",
	"well idle",
	"string set",
	"string cemented",
	"casing test",
] as const;

const datedEvent = entry("Dated event", "What a notice precedes or a report follows.", RECORD, {
	event: oneOf(DATED_EVENTS, "Event", "Rules count their days from it.", RECORD),
	string: optional(reference("String", "Of an event of one string: which.", RECORD)),
	on: date("On", "The day, planned or past.", RECORD),
	recorded: optional(flag("Recorded", "Says that it happened on that day.", RECORD)),
});

/** Where the well stands, what is near it, and which rules reach it. */
export const site = group("Site", "Location, depth datum, neighbors, and the rules that apply.", EVERY, {
	jurisdictions: list(
		"Jurisdictions",
		"Codes of the rule sets that apply; several apply together.",
		SETTING,
		text("Code", "`casebound list jurisdictions` names them.", SETTING, "us-tx"),
	),
	county: optional(text("County", "Where the well is filed, and what people call the place.", EVERY)),
	land: optional(
		oneOf(
			["private", "state", "federal", "tribal"],
			"Mineral ownership",
			"Federal and tribal minerals bring federal rules.",
			RECORD,
		),
	),
	legal_location: optional(
		text("Legal description", "Section, survey or tract ties as on the plat.", RECORD),
	),
	surface_location: optional(surfaceLocation),
	ground_elevation: q(
		"elevation",
		"Ground elevation",
		"Ties depths to sea level and to neighbors' wells.",
		TECHNICAL,
	),
	depth_datum: group("Depth datum", "Every depth is counted from it.", TECHNICAL, {
		name: text("Name", "Printed in the head of each depth table.", TECHNICAL, "rotary table"),
		above_ground: q("length", "Height above ground", "Turns rig depths into depths below ground.", TECHNICAL),
		to_casing_hanger: optional(
			q("measured-depth", "Depth to the casing hanger", "Where pipe that comes to surface ends.", TECHNICAL),
		),
	}),
	north: optional(
		group("North reference", "The same azimuth from another north is another direction.", TECHNICAL, {
			reference: northReference("Reference", "Which north the azimuths are from.", TECHNICAL),
			zone: optional(text("Grid", "The projection of grid north, by EPSG code.", RECORD, "EPSG:2277")),
			convergence: optional(eastWest("Grid convergence", "Turns grid azimuths to true.", RECORD)),
			declination: optional(eastWest("Magnetic declination", "Turns magnetic azimuths to true.", RECORD)),
		}),
	),
	pad: optional(
		group("Pad", "What stays on the land, and how many wells stand there.", EVERY, {
			area: optional(q("land-area", "Area during the work", "Told to neighbors.", PUBLIC)),
			area_after: optional(q("land-area", "Area afterwards", "Told to neighbors.", PUBLIC)),
			other_wells: optional(
				list(
					"Other wells on the pad",
					"Neighbors ask how many, now and later; the crew reads what is done there.",
					EVERY,
					entry("Well", "One other well of the pad.", EVERY, {
						name: text("Name", "As permitted.", EVERY),
						status: optional(text("Status", "Planned, drilled or producing.", EVERY, "planned")),
						distance: optional(
							q("distance", "Distance between the wellheads", "How near two wells start.", PUBLIC),
						),
						work: optional(
							text(
								"Work there at the same time",
								"What is done there while this well is drilled or treated.",
								SITE,
								"drilling of the intermediate hole",
							),
						),
						agreed_with: optional(
							text(
								"Agreed with",
								"Who is told, and holds the plan for both jobs.",
								SITE,
								"person in charge of the other rig",
							),
						),
					}),
				),
			),
		}),
	),
	neighbors: optional(list("Neighbors", "What is near, and how near.", PUBLIC, neighbor)),
	neighbors_complete: optional(
		flag(
			"Neighbors are complete",
			"Says that the area was searched, so that an absence means something.",
			PUBLIC,
		),
	),
	offset_wells: optional(list("Offset wells", "Old and present wells near this one.", PUBLIC, offsetWell)),
	conditions: optional(list("Permit conditions", "Limits the permit adds to the rules.", RECORD, condition)),
	variances: optional(list("Granted variances", "Printed beside the rule each replaces.", RECORD, variance)),
	notices: optional(list("Notices", "Who was told, when, and the proof.", RECORD, notice)),
	events: optional(
		list("Dated events", "Days that the schedule has no phase for, or another day for.", RECORD, datedEvent),
	),
	compared: optional(
		list("Rules compared", "Rows that a person has laid beside the official text.", RECORD, compared),
	),
});

export type Site = z.output<typeof site>;
export type PermitCondition = z.output<typeof condition>;
