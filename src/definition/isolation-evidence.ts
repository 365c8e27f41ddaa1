import { EVERY, RECORD } from "./audience.ts";
import { columnsOf } from "./columns-field.ts";
import { measuredDepth, measuredDepthOrSurface } from "./depth-field.ts";
import { date, entry, file, flag, group, list, oneOf, optional, text } from "./field.ts";
import { part, q } from "./quantity-field.ts";

/** How a log analyst grades the bond of a stretch. */
export const BOND_QUALITIES = ["good", "fair", "poor", "none"] as const;

/** Surveys that find where cement is, or where fluid moves behind pipe. */
export const SEAL_SURVEYS = ["temperature survey", "tracer", "noise log"] as const;

/** What a pressure test of the seal is made through. */
export const SEAL_TESTS = ["liner top", "shoe", "perforations", "annulus"] as const;

const loggedInterval = entry("Interval", "One stretch over which the log reads alike.", EVERY, {
	from: measuredDepthOrSurface("From", "Top of the stretch.", EVERY),
	to: measuredDepth("To", "Bottom of the stretch.", EVERY),
	amplitude: optional(
		q("sonic-amplitude", "Amplitude", "Low where cement is bonded; the index is worked from it.", RECORD),
	),
	bond_index: optional(part("Bond index", "As the log states it; stands before the worked one.", EVERY)),
	quality: optional(oneOf(BOND_QUALITIES, "Quality", "As the analyst grades it.", EVERY)),
});

/** A bond log by interval. */
export const bondLog = group("Bond log", "What the log showed, stretch by stretch.", EVERY, {
	date: date("Date", "Cement gains strength for days; the log is read with its age.", EVERY),
	run_by: optional(text("Run by", "Whose log it is.", RECORD, "wireline company")),
	stated_by: optional(text("Graded by", "Quality is a judgment; papers name whose.", EVERY, "log analyst")),
	free_pipe: optional(q("sonic-amplitude", "Amplitude in free pipe", "No cement: index 0.", RECORD)),
	full_bond: optional(q("sonic-amplitude", "Amplitude in full bond", "Best cement: index 100 %.", RECORD)),
	intervals: optional(list("Intervals", "From the top down.", EVERY, loggedInterval)),
	file: optional(file("Interval file", "The same as CSV, a row a stretch.", RECORD, "bond-log.csv")),
	columns: columnsOf("from", "to", "amplitude", "bond_index", "quality"),
});

const survey = entry("Survey", "A survey that shows where cement is, or where fluid moves.", RECORD, {
	kind: oneOf(SEAL_SURVEYS, "Kind", "Each sees something else.", RECORD),
	date: date("Date", "When.", RECORD),
	from: measuredDepthOrSurface("From", "Top of what it covers.", RECORD),
	to: measuredDepth("To", "Bottom of what it covers.", RECORD),
	shows_cement: flag("Shows cement", "Over the whole stretch.", RECORD),
	stated_by: optional(text("Stated by", "Whose reading it is.", RECORD)),
});

const sealTest = entry("Test of the seal", "Pressure put on the cement itself, not on the pipe.", EVERY, {
	through: oneOf(SEAL_TESTS, "Through", "Where the pressure reaches the cement.", EVERY),
	date: date("Date", "When.", RECORD),
	from: measuredDepthOrSurface("From", "Top of the cement that it tests.", RECORD),
	to: measuredDepth("To", "Bottom of the cement that it tests.", RECORD),
	pressure: q("pressure", "Pressure at surface", "As charted.", EVERY),
	hold: optional(q("duration", "Held for", "As charted.", EVERY)),
	held: flag("Held", "Whether the test passed.", EVERY),
	witnessed_by: optional(text("Witnessed by", "Some rules ask for a witness.", RECORD)),
});

const squeeze = entry("Squeeze", "Cement put in under pressure where the job fell short.", EVERY, {
	date: date("Date", "When.", EVERY),
	why: text("Why", "What fell short, and how it was found.", RECORD, "shoe test leaked off"),
	from: measuredDepth("From", "Top of what it was to seal.", EVERY),
	to: measuredDepth("To", "Bottom of what it was to seal.", EVERY),
	volume: optional(q("volume", "Slurry behind pipe", "As metered.", RECORD)),
	pressure: optional(q("pressure", "Final squeeze pressure", "As charted.", RECORD)),
	held: optional(flag("Test after it held", "A squeeze that was not tested has shown nothing.", EVERY)),
	tested_by: optional(text("Tested by", "Which test.", RECORD, "shoe test to 13.8 ppg")),
});

/** Evidence of isolation under `cement: actual:`. */
export const sealEvidence = {
	bond_log: optional(bondLog),
	surveys: optional(list("Surveys", "Temperature, tracer or noise.", RECORD, survey)),
	seal_tests: optional(list("Tests of the seal", "In the order made.", EVERY, sealTest)),
	squeezes: optional(list("Squeezes", "In the order done.", EVERY, squeeze)),
};

const annulusReading = entry("Reading", "One visit to the annulus valve.", RECORD, {
	date: date("Date", "When.", RECORD),
	pressure: q("pressure", "Pressure found", "Before anything is bled.", RECORD),
	bled_to: optional(q("pressure", "Bled to", "Zero, or what is left.", RECORD)),
	bled_in: optional(q("duration", "Bled in", "A long bleed shows a large supply.", RECORD)),
	rebuilt_to: optional(q("pressure", "Rebuilt to", "Pressure that comes back is fed by something.", RECORD)),
	rebuilt_in: optional(q("duration", "Watched for", "After the bleed.", RECORD)),
});

/** Readings of the annulus outside a string. */
export const annulusReadings = list(
	"Annulus readings",
	"Of the annulus outside this string: pressure that comes back after a bleed is sustained.",
	RECORD,
	annulusReading,
);
