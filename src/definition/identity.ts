import type * as z from "zod";
import { apiNumber } from "./api-number.ts";
import { EVERY, PRIVATE, PUBLIC, RECORD } from "./audience.ts";
import { date, entry, group, list, narrowing, oneOf, optional, text } from "./field.ts";
import { person } from "./person.ts";

export const WELL_STATES = ["draft", "issued for review", "for operations", "superseded"] as const;

const revision = entry("Revision", "Readers must see what changed since the copy they hold.", EVERY, {
	id: text("Revision mark", "Printed on every page, so that two copies can be told apart.", EVERY, "B"),
	date: date("Date of the revision", "Orders the revisions.", EVERY),
	by: optional(text("Made by", "The file shows who changed what.", PRIVATE)),
	why: optional(text("What changed, and why", "The first thing a second reading looks for.", RECORD)),
});

/** Who the well belongs to, what it is for, and which issue of the plan this is. */
export const identity = group(
	"Well",
	"Identifies the well and the issue of this plan on every page.",
	EVERY,
	{
		name: text("Well name and number", "Must be the name on the permit.", EVERY, "Sorrel Bench Unit 3-16H"),
		operator: text("Operator", "Who is answerable for the well.", EVERY),
		api_number: optional(
			apiNumber("API well number", "Joins this paper to every record of the well.", EVERY),
		),
		permit: optional(text("Permit number", "Joins this paper to the application.", EVERY)),
		lease: optional(text("Lease or unit", "Agencies file by lease.", RECORD)),
		field: optional(text("Field", "Agencies file by field; field rules may apply.", RECORD)),
		class: optional(
			oneOf(
				["development", "exploratory"],
				"Class of well",
				"Some rules bind exploratory wells only.",
				RECORD,
			),
		),
		purpose: optional(
			oneOf(
				["gas", "oil", "gas and oil", "injection", "monitoring"],
				"Purpose",
				"What the well is to produce or take; some rules differ by it.",
				EVERY,
			),
		),
		state: oneOf(
			WELL_STATES,
			"State of this issue",
			"Marked on every page, so that a draft is not worked from.",
			EVERY,
		),
		issued: date("Date of issue", "The date on every paper; the tool has no clock.", EVERY),
		valid_until: optional(date("Valid until", "A paper on a rig floor must say when it is void.", EVERY)),
		spud: optional(date("Date drilling began or begins", "Some rules apply from a date of spud.", RECORD)),
		revisions: optional(list("Revisions", "What changed, when and why.", EVERY, revision)),
		prepared_by: optional(person("Prepared by", "The agency asks who prepared the filing.")),
		technical_contact: optional(person("Technical contact", "Whom the reviewing engineer may ask.")),
		contractors: optional(
			list(
				"Contractors",
				"Neighbors and crews ask which company does what.",
				PUBLIC,
				entry("Contractor", "One company and its part of the work.", PUBLIC, {
					does: text("Part of the work", "What the company does here.", PUBLIC, "pressure pumping"),
					name: text("Company", "Who does it.", PUBLIC),
					papers: narrowing(PUBLIC),
				}),
			),
		),
		summary: optional(text("Summary", "One plain sentence that opens each paper.", EVERY)),
	},
);

export type Identity = z.output<typeof identity>;
