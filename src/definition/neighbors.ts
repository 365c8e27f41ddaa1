import type * as z from "zod";
import { PRIVATE, PUBLIC, RECORD } from "./audience.ts";
import { depth } from "./depth-field.ts";
import { date, entry, group, identifier, list, narrowing, oneOf, optional, text } from "./field.ts";
import { coordinate, q } from "./quantity-field.ts";

export const DATUMS = ["NAD83", "NAD27", "WGS84"] as const;

export const NEIGHBOR_KINDS = [
	"water well",
	"public water supply",
	"spring",
	"dwelling",
	"school",
	"hospital",
	"place of worship",
	"public building",
	"stream",
	"lake or pond",
	"wetland",
	"road",
	"railroad",
	"pipeline",
	"property line",
	"lease line",
	"unit line",
	"other",
] as const;

/** Where something lies; together with its datum. */
export const position = {
	latitude: coordinate(90, "Latitude", "Distances are computed from it.", RECORD),
	longitude: coordinate(180, "Longitude", "Distances are computed from it; west is negative.", RECORD),
};

export const datum = oneOf(
	DATUMS,
	"Horizontal datum",
	"The same figures in another datum are another place, by up to some hundred feet.",
	RECORD,
);

const surveyed = entry("Surveyed distance", "A measured distance stands before a computed one.", PUBLIC, {
	from: oneOf(
		["wellhead", "pad edge", "nearest equipment", "wellbore"],
		"Measured from",
		"Rules name the point they measure from.",
		PUBLIC,
	),
	distance: q("distance", "Distance", "Compared with setbacks, and told to the neighbor.", PUBLIC),
	by: optional(
		text("How it was measured", "A plat and a rough chain are not the same evidence.", RECORD, "plat"),
	),
});

const corner = entry("Corner", "A line runs straight from one corner to the next.", RECORD, position);

export const neighbor = entry("Neighbor", "Anything a setback, a notice or a person may ask about.", PUBLIC, {
	id: identifier("Short name", "Chooses this neighbor for a paper of their own.", RECORD),
	kind: oneOf(NEIGHBOR_KINDS, "Kind", "Setbacks differ by kind.", PUBLIC),
	name: text("Name", "What people call the place; not the owner's name.", PUBLIC, "Windmill well"),
	latitude: optional(position.latitude),
	longitude: optional(position.longitude),
	datum: optional(datum),
	corners: optional(
		list(
			"Corners of a line",
			"A road, a stream or a lease is a line: distances are to its nearest part, and maps draw it. Repeat the first corner to close it.",
			RECORD,
			corner,
		),
	),
	depth: optional(
		depth(["ground"], "Depth of a water well", "Sets the separation from the treated rock.", PUBLIC),
	),
	owner: optional(text("Owner", "Notices go to a person; the name stays in the file.", PRIVATE)),
	sampled: optional(
		date("Water sampled on", "A sample before the work is the baseline for any complaint.", RECORD),
	),
	surveyed: optional(
		list("Surveyed distances", "Measured distances stand before computed ones.", PUBLIC, surveyed),
	),
	consent: optional(
		group("Written consent", "Some setbacks give way to it.", RECORD, {
			given: date("Given on", "The day it was signed.", RECORD),
			cite: text(
				"Where it is kept",
				"A record number or the file it is in.",
				RECORD,
				"county record 2026-0114",
			),
		}),
	),
	notice: optional(date("Notice sent on", "Shows that notice was given in time.", PRIVATE)),
	papers: narrowing(PUBLIC),
});

export type Neighbor = z.output<typeof neighbor>;
