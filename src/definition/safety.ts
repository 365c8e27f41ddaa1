import * as z from "zod";
import { message } from "../messages/message.ts";
import { CREW, EVERY, RECORD, SITE } from "./audience.ts";
import { entry, field, flag, group, identifier, list, narrowing, oneOf, optional, text } from "./field.ts";
import { coordinate, q } from "./quantity-field.ts";

const JOBS = [
	"rig up",
	"preventer test",
	"casing",
	"cementing",
	"pressure test",
	"wireline and perforating",
	"pumping",
	"plug drill-out",
	"flowback",
] as const;

const source = text(
	"Whose figure",
	"Distances and set points differ between companies; the crew sees whose this is.",
	SITE,
);

const distance = (title: string, why: string) =>
	group(title, why, SITE, {
		distance: q("distance", "Distance", "How far.", SITE),
		from: optional(text("Measured from", "Wellhead, iron or tank.", SITE, "wellhead and pressured iron")),
		source,
	});

const contact = entry("Contact", "Whom to call.", EVERY, {
	role: text("Role", "What to call them about.", EVERY, "Site supervisor"),
	name: text("Name", "Who answers; a company or a desk where it is public.", EVERY),
	phone: text("Telephone", "Day and night.", EVERY),
	papers: narrowing(EVERY),
});

const alarmOf = <const G extends string, D extends "gas-fraction" | "explosive-limit" | "share">(
	gas: G,
	dimension: D,
) =>
	entry(`Alarm for ${gas}`, "What the monitors are set to.", SITE, {
		gas: field(z.literal(gas), {
			title: "Gas",
			why: "What the monitor reads.",
			papers: SITE,
			expected: `\`${gas}\``,
		}),
		low: q(dimension, "Low alarm", "Leave or mask.", SITE),
		high: optional(q(dimension, "High alarm", "Leave at once.", SITE)),
		source,
	});

const gasAlarm = field(
	z.discriminatedUnion("gas", [
		alarmOf("hydrogen sulfide", "gas-fraction"),
		alarmOf("sulfur dioxide", "gas-fraction"),
		alarmOf("carbon monoxide", "gas-fraction"),
		alarmOf("flammable", "explosive-limit"),
		alarmOf("oxygen", "share"),
	]),
	{
		title: "Gas alarm",
		why: "What the monitors are set to.",
		papers: SITE,
		expected: message("definition/expected.gas-alarm"),
	},
);

/** What the crews need; distances and set points are the company's own. A blank one stops the start. */
export const safety = group(
	"Safety",
	"What the crews need; a blank critical value prints NOT SET: DO NOT START.",
	EVERY,
	{
		person_in_charge: optional(
			text("Person in charge", "The crew must know who stops and starts the job.", CREW),
		),
		crew: optional(
			list(
				"Crew by name",
				"Each role of a job is somebody's.",
				CREW,
				entry("Role of the crew", "Who does what.", CREW, {
					role: text("Role", "As the sheet of the job has it, or another.", CREW, "Zone guard"),
					name: text("Name", "Who does it.", CREW),
					job: optional(oneOf(JOBS, "Job", "Where the role is of one job alone.", CREW)),
				}),
			),
		),
		first_aider: optional(text("First aider", "Who comes first.", CREW)),
		lessons: optional(
			list(
				"Lessons",
				"What went wrong before is told before it can again.",
				CREW,
				text("Lesson", "One line.", CREW),
			),
		),
		alongside: optional(
			list(
				"Who else works here",
				"Two jobs at once can hurt each other.",
				CREW,
				text("Work alongside", "Who, where and when.", CREW),
			),
		),
		emergency: optional(
			group("Emergency", "Read out to the dispatcher.", EVERY, {
				number: text("Emergency number", "Whom to call first.", EVERY, '"911"'),
				site_address: optional(text("Address of the site", "What the dispatcher asks first.", SITE)),
				hospital: optional(text("Hospital", "Where the injured go.", SITE)),
				hospital_distance: optional(q("distance", "Distance to the hospital", "How long it takes.", SITE)),
				landing_site: optional(
					group("Helicopter landing", "Where the helicopter comes down.", CREW, {
						latitude: coordinate(90, "Latitude", "Read to the pilot.", CREW),
						longitude: coordinate(180, "Longitude", "Read to the pilot.", CREW),
					}),
				),
			}),
		),
		contacts: optional(list("Contacts", "Whom to call.", EVERY, contact)),
		muster_points: optional(
			list(
				"Muster points",
				"One of them is always upwind.",
				SITE,
				entry("Muster point", "Where heads are counted.", SITE, {
					id: identifier("Short name", "What it is called on the radio.", SITE),
					at: text("Place", "Where it is.", SITE, "North gate"),
					route: optional(text("Way there", "Nobody looks for it in smoke.", SITE, "West side of the tanks")),
				}),
			),
		),
		radio_channel: optional(text("Radio channel", "Everybody listens to one.", CREW, '"4"')),
		exclusion: optional(distance("Exclusion zone", "Nobody inside while there is pressure.")),
		radio_silence: optional(distance("Radio silence", "A transmitter can fire a gun.")),
		ignition: optional(distance("No smoking and no flame", "Vapor travels.")),
		flame_resistant_clothing: optional(distance("Flame-resistant clothing", "Worn inside this distance.")),
		gas_alarms: optional(list("Gas alarms", "What the monitors are set to.", SITE, gasAlarm)),
		hydrogen_sulfide: optional(
			group("Hydrogen sulfide", "Kills at low concentrations.", EVERY, {
				expected: flag("Expected", "Whether this well may bring it.", EVERY),
				fraction: optional(q("gas-fraction", "Fraction of the gas", "Sets the radius of exposure.", RECORD)),
				gas_rate: optional(
					q(
						"gas-rate",
						"Gas that could escape",
						"With the fraction it gives the radius of exposure.",
						RECORD,
					),
				),
				stated_by: optional(text("Stated by", "Whose finding it is.", RECORD)),
			}),
		),
		wind_limit: optional(
			group("Wind limit", "Lifting stops above it.", SITE, {
				crane: q("speed", "Crane", "Lifting stops.", SITE),
				man_lift: optional(q("speed", "Man-lift", "People come down.", SITE)),
				source,
			}),
		),
		lightning: optional(
			group("Lightning", "Explosives and lifting stop.", SITE, {
				distance: q("distance", "Stop within", "How near a strike.", SITE),
				wait: optional(q("duration", "Wait after the last strike", "When work may go on.", SITE)),
				source,
			}),
		),
		noise: optional(
			group("Noise", "Level at neighbors is computed from it.", EVERY, {
				source_level: q("sound-level", "Level", "As measured at the distance.", EVERY),
				at: q("distance", "At a distance of", "Level falls with distance.", EVERY),
				hearing_protection: optional(
					q("sound-level", "Hearing protection above", "Where plugs are worn.", SITE),
				),
				limit: optional(
					group("Limit at a dwelling", "What is heard at the nearest house is held against it.", EVERY, {
						level: q("sound-level", "Level", "Outside the house, while pumps run.", EVERY),
						source: text("Source", "Permit, ordinance, lease or the company's promise.", EVERY),
					}),
				),
				source: text("Source", "Who measured it, on what equipment.", EVERY),
			}),
		),
		silica: optional(
			group("Silica dust", "Sand dust scars lungs.", SITE, {
				regulated_area: text("Regulated area", "Where a respirator is worn.", SITE),
				respirator: text("Respirator", "Which one.", SITE),
				source,
			}),
		),
		eyewash: optional(text("Eyewash and shower", "Seconds count.", SITE)),
		extinguishers: optional(text("Extinguishers", "Where they stand.", SITE)),
		jobs: optional(
			list("Jobs", "One crew pack for each.", SITE, oneOf(JOBS, "Job", "Chooses hazards and numbers.", SITE)),
		),
	},
);

export type Safety = z.output<typeof safety>;
