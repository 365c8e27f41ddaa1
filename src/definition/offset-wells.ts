import * as z from "zod";
import { apiNumber } from "./api-number.ts";
import { PUBLIC, RECORD } from "./audience.ts";
import { columnsOf } from "./columns-field.ts";
import { depth, verticalDepth } from "./depth-field.ts";
import { entry, field, file, group, identifier, list, narrowing, optional, text } from "./field.ts";
import { datum, position } from "./neighbors.ts";
import { northReference } from "./north-reference.ts";
import { part, q } from "./quantity-field.ts";
import { station } from "./trajectory.ts";

/** Ways to say where the other hole goes; a path gives exactly one of them. */
export const PATH_GIVEN_BY = ["vertical", "bottom_hole", "file", "stations"] as const;

const path = group(
	"Path",
	"Where the other hole goes. Without it no distance in space is worked out and the pair is not evaluated.",
	RECORD,
	{
		vertical: optional(
			field(z.literal(true), {
				title: "Vertical",
				why: "States that the hole goes straight down from its wellhead to its total depth.",
				papers: RECORD,
				expected: "`true`",
			}),
		),
		bottom_hole: optional(
			group("Bottom-hole location", "The hole is taken straight from its wellhead to here.", RECORD, {
				...position,
				depth: verticalDepth("Depth at the bottom", "With the place it fixes the path.", RECORD),
			}),
		),
		file: optional(
			file("Survey file", "Stations as CSV, XLSX, LAS 2.0 or 3.0, or WITSML.", RECORD, "offset-survey.csv"),
		),
		columns: columnsOf("md", "inclination", "azimuth"),
		stations: optional(list("Stations", "In order of depth.", RECORD, station)),
		north: optional(
			northReference("North of the survey", "Turned to this well's own north where it is another.", RECORD),
		),
		uncertainty: optional(
			group("Survey uncertainty", "How far from its stated place the other hole may be.", RECORD, {
				radius: q(
					"distance",
					"Radius at the bottom",
					"Grows from nothing at the wellhead with depth.",
					RECORD,
				),
				confidence: optional(part("Confidence", "How often the hole is inside it.", RECORD)),
				source: text("Source", "Whose error model, and for which tool.", RECORD),
			}),
		),
	},
);

const barrier = entry(
	"Barrier",
	"Cement or a plug that shuts the other hole off, and what shows it.",
	PUBLIC,
	{
		top: verticalDepth("Top", "How far up it shuts the hole.", RECORD),
		bottom: verticalDepth("Bottom", "How far down it shuts the hole.", RECORD),
		what: text("What it is", "A cement plug and a bridge plug do not hold alike.", PUBLIC, "cement plug"),
		shown_by: text("Shown by", "A barrier without a record is a hope.", RECORD, "plugging record, tagged"),
	},
);

export const offsetWell = entry(
	"Offset well",
	"An old hole may be the way past every barrier of this one.",
	PUBLIC,
	{
		id: identifier("Short name", "Names the well in results.", RECORD),
		name: text("Name", "As the agency's records have it.", PUBLIC),
		api_number: optional(apiNumber("API well number", "Finds the well's records.", RECORD)),
		operator: optional(text("Operator", "Whom to notify before treating nearby.", RECORD)),
		status: text("Status", "Producing, idle or plugged decides what may come up it.", PUBLIC, "plugged 1981"),
		latitude: optional(position.latitude),
		longitude: optional(position.longitude),
		datum: optional(datum),
		total_depth: optional(
			depth(["vertical", "measured"], "Total depth", "Shows whether it reaches the treated rock.", PUBLIC),
		),
		depth_datum_elevation: optional(
			q(
				"elevation",
				"Elevation of its depth datum",
				"Its depths are counted from there; without it, from the elevation of this well's datum.",
				RECORD,
			),
		),
		path: optional(path),
		hole_diameter: optional(
			q(
				"diameter",
				"Hole diameter",
				"Its radius is taken off the distance in the separation factor.",
				RECORD,
			),
		),
		position_uncertainty: optional(
			q(
				"distance",
				"Uncertainty of its wellhead",
				"An old location may be some hundred feet off; it goes into the separation factor.",
				RECORD,
			),
		),
		barriers: optional(
			list("Barriers", "What shuts it off where the fractures may reach it.", PUBLIC, barrier),
		),
		evidence: optional(
			text("Evidence of its condition", "What the status rests on.", RECORD, "plugging record on file"),
		),
		papers: narrowing(PUBLIC),
	},
);

export type OffsetWell = z.output<typeof offsetWell>;
