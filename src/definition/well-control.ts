import type * as z from "zod";
import { RECORD, TECHNICAL } from "./audience.ts";
import { date, entry, flag, group, list, optional, reference, text } from "./field.ts";
import { q } from "./quantity-field.ts";

const preventer = entry(
	"Preventer stack",
	"The barrier at surface while the next hole is drilled.",
	TECHNICAL,
	{
		over: reference("On top of string", "The string it is mounted on.", TECHNICAL),
		working_pressure: q(
			"pressure",
			"Rated working pressure",
			"Must exceed what the next hole can bring.",
			TECHNICAL,
		),
		equipment: optional(
			text("Equipment", "Rams and annular, top down.", RECORD, "annular, pipe rams, blind rams"),
		),
		test: optional(
			group("Test", "Low first, then high.", TECHNICAL, {
				low: optional(q("pressure", "Low test", "Finds leaks that a high pressure seals.", TECHNICAL)),
				high: q("pressure", "High test", "Not above the lowest-rated part.", TECHNICAL),
				hold: optional(q("duration", "Hold", "How long each test is watched.", TECHNICAL)),
				test_plug: optional(
					flag("Test plug", "Whether a plug or cup tester keeps the test off the casing.", TECHNICAL),
				),
			}),
		),
		actual: optional(
			group("Test made", "The record the inspector asks for.", TECHNICAL, {
				date: optional(date("Date", "When it was tested.", TECHNICAL)),
				low: optional(q("pressure", "Low test", "As charted.", TECHNICAL)),
				high: q("pressure", "High test", "As charted.", TECHNICAL),
				held: optional(flag("Held", "Whether the test passed.", TECHNICAL)),
			}),
		),
	},
);

/** Preventers and the kick the shoes are sized for. */
export const wellControl = group(
	"Well control",
	"Barriers while drilling, and the kick they are sized for.",
	TECHNICAL,
	{
		preventers: optional(list("Preventers", "One for each string drilled out of.", TECHNICAL, preventer)),
		kick: optional(
			group("Design kick", "Shoes and preventers are sized for it.", TECHNICAL, {
				intensity: q(
					"density",
					"Kick intensity",
					"How far the kick exceeds the highest pore pressure of the open hole.",
					TECHNICAL,
				),
				volume: optional(q("volume", "Volume", "How much enters before it is seen.", TECHNICAL)),
				gas_gradient: optional(q("pressure-gradient", "Gas gradient", "Weight of the influx.", TECHNICAL)),
			}),
		),
	},
);

export type WellControl = z.output<typeof wellControl>;
