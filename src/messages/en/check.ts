import type { Entries } from "../entries.ts";

/** What `check` prints around the findings. */
export const CHECK = {
	"check/closing": [
		"Results are arithmetic on limits as we know them, not an opinion on whether a law is satisfied.",
		"Last line of the report on the terminal.",
	],
	"check/unknown-jurisdiction": [
		"No rules for “{code}” are known here: nothing was checked against them.",
		"A jurisdiction the definition names and the tool has no rules for. code: as typed, such as us-ut.",
	],
	"check/margin": [
		"Margin {margin}.",
		"After the sentence of a finding. margin: room to the limit, negative when missed.",
	],
	"check/stops": [
		"Stops: {jobs}.",
		"After a finding. jobs: names of jobs that must not start until it is settled.",
	],
	"check/practice": ["practice", "Whose limit it is, where it is engineering practice and not law."],
	"check/at": ["At {places}.", "After a finding. places: paths in the definition."],
	"check/asked": ["required but not given ({count})", "Head of a list, printed in capitals."],
	"check/write-it": [
		"{what}: enter it at {place} ({rules})",
		"One missing input. what: noun phrase; place: path in the definition; rules: who asks for it.",
	],
} as const satisfies Entries;
