import * as z from "zod";
import { message } from "../messages/message.ts";
import { EVERY, RECORD, TECHNICAL } from "./audience.ts";
import { columnsOf } from "./columns-field.ts";
import { measuredDepth, verticalDepth } from "./depth-field.ts";
import { entry, field, file, group, list, oneOf, optional, text } from "./field.ts";
import { northReference } from "./north-reference.ts";
import { part, q } from "./quantity-field.ts";

const kickoff = measuredDepth("Kickoff", "Where the hole leaves vertical.", EVERY);
const build = q("dogleg", "Build rate", "How fast it turns; sets the bending of pipe.", TECHNICAL);
const azimuth = q("angle", "Azimuth", "Direction, from the north reference.", TECHNICAL);

const vertical = entry("Vertical well", "Straight down.", EVERY, {
	vertical: field(z.literal(true), {
		title: "Vertical",
		why: "Says that the plan is a straight hole.",
		papers: EVERY,
		expected: "`true`",
	}),
	to: measuredDepth("Total depth", "End of the plan.", EVERY),
});

const buildAndLand = entry("Build and land", "Vertical, one arc to the landing, then straight.", EVERY, {
	kickoff,
	build,
	azimuth,
	landing_inclination: q("angle", "Inclination at landing", "90 degrees is level.", TECHNICAL),
	lateral: q("length", "Length after landing", "How far it goes sideways.", EVERY),
});

const buildAndHold = entry("Build and hold", "Vertical, one arc, then straight to a target.", EVERY, {
	kickoff,
	build,
	azimuth,
	target: group("Target", "The point the straight part goes through.", TECHNICAL, {
		tvd: verticalDepth("Depth of the target", "With the departure it fixes the angle held.", TECHNICAL),
		departure: q("length", "Horizontal distance of the target", "From the wellhead.", TECHNICAL),
	}),
});

const segment = entry(
	"Segment",
	"From the end of the one before, an arc or a straight to these angles.",
	TECHNICAL,
	{
		length: q("length", "Length along the hole", "Adds up to the measured depth.", TECHNICAL),
		inclination: q("angle", "Inclination at its end", "0 is straight down.", TECHNICAL),
		azimuth: q("angle", "Azimuth at its end", "From the north reference.", TECHNICAL),
	},
);

const segments = entry("Segments", "Any other plan, piece by piece from the surface.", EVERY, {
	segments: list("Segments", "In order from the surface.", TECHNICAL, segment),
});

export const station = entry("Survey station", "One measurement of the hole's direction.", RECORD, {
	md: measuredDepth("Measured depth", "Where it was taken.", RECORD),
	inclination: q("angle", "Inclination", "0 is straight down.", RECORD),
	azimuth: q("angle", "Azimuth", "From the north reference.", RECORD),
});

const survey = group("Survey", "Stations in a file, or listed here; the first is the tie-in.", RECORD, {
	file: optional(
		file("Survey file", "Stations as CSV, XLSX, LAS 2.0 or 3.0, or WITSML.", RECORD, "survey.csv"),
	),
	columns: columnsOf("md", "inclination", "azimuth"),
	stations: optional(list("Stations", "In order of depth.", RECORD, station)),
});

/** The planned path, and the surveyed one once there is one. */
export const trajectory = group("Trajectory", "Every depth and distance follows from the path.", EVERY, {
	plan: optional(
		field(z.union([vertical, buildAndLand, buildAndHold, segments]), {
			title: "Planned path",
			why: "Measured and vertical depths are tied by it.",
			papers: EVERY,
			expected: message("definition/expected.plan"),
		}),
	),
	vertical_section_azimuth: optional(
		q("angle", "Azimuth of the vertical section", "The plane that the section view is drawn in.", RECORD),
	),
	vertical_section_origin: optional(
		group(
			"Origin of the vertical section",
			"Where the section is counted from, if not the wellhead.",
			RECORD,
			{
				north: q("offset", "North of the wellhead", "A pad's slots often share one origin.", RECORD),
				east: q("offset", "East of the wellhead", "A pad's slots often share one origin.", RECORD),
			},
		),
	),
	uncertainty: optional(
		group("Survey uncertainty", "How far from its stated place the hole may be.", EVERY, {
			radius: q(
				"distance",
				"Radius at the end of the hole",
				"Stands beside distances to the path and is not deducted from them; it goes into the separation factor.",
				EVERY,
			),
			confidence: optional(part("Confidence", "How often the hole is inside it.", RECORD)),
			source: text("Source", "Whose error model, and for which tool.", RECORD),
		}),
	),
	error_model: optional(
		group("Survey tool", "Where the hole is is worked from what its survey tool errs by.", RECORD, {
			tool: oneOf(["MWD"], "Error model", "The committee's, by the name of the tool.", RECORD),
			magnetic_field: q(
				"magnetic-field",
				"Total magnetic field",
				"A weak one steers a compass less.",
				RECORD,
			),
			dip: q("angle", "Dip of the magnetic field", "A steep one steers a compass less.", RECORD),
		}),
	),
	actual: optional(
		group("As drilled", "Calculations use the survey where there is one.", RECORD, {
			survey,
			north: optional(
				northReference("North of the survey", "Turned to the well's own north where it is another.", RECORD),
			),
			company: optional(text("Survey company", "Asked for in directional filings.", RECORD)),
			tool: optional(text("Tool", "Its error model bounds every distance.", RECORD, "MWD")),
			dates: optional(
				field(z.tuple([z.iso.date(), z.iso.date()]), {
					title: "First and last day of the survey",
					why: "Asked for in directional filings.",
					papers: RECORD,
					expected: message("definition/expected.two-dates"),
				}),
			),
		}),
	),
});

export type TrajectoryDefinition = z.output<typeof trajectory>;
