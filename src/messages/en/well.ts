import type { Entries } from "../entries.ts";

/** Parts that several sentences on a well share. */
export const WELL = {
	"well/value": ["{value}", "A value alone, as what was found or is expected."],
	"well/true-vertical-depth": ["{depth} TVD", "A depth counted straight down. depth: a length."],
	"well/from-to": ["{from} to {to}", "A stretch of hole. from and to: depths."],
	"well/any-of": ["{choices}", "What is expected. choices: a list of clauses, all told."],
	"well/thing.string": ["casing string", "What a name should refer to, without its article."],
	"well/thing.hole": ["hole", "What a name should refer to: a drilled section."],
	"well/thing.proppant": ["proppant", "What a name should refer to."],
	"well/thing.additive": ["additive", "What a name should refer to: of the treating fluid."],
	"well/figure.density": ["density", "A figure of a slurry, inside a sentence."],
	"well/figure.yield": ["yield", "A figure of a slurry, inside a sentence: volume made by one sack."],
	"well/figure.water": ["water", "A figure of a slurry, inside a sentence: mix water for one sack."],
	"well/the-wellhead": ["the wellhead", "A place on the surface, as the subject of a sentence."],
	"well/the-landing-site": [
		"the landing site",
		"A place on the surface, as the subject of a sentence: where a helicopter lands in an emergency.",
	],
	"well/api-state.for": [
		"{number} for {state}",
		"The first two digits of an API number that a state has. number: two digits; state: its name.",
	],
	"well/coordinates-astray.box": [
		"{name} lies between {south} and {north} north, {west} and {east} east",
		"Limits of a state in degrees. name: of the state; the others: degrees as numbers.",
	],
	"well/tally.as-many": [
		"{count, plural, one {# joint} other {# joints}}, as the tally has",
		"What is expected, for well/tally. count: rows of the tally.",
	],
	"well/stage-row.date": [
		"{count, plural, one {the date of a record is} other {the dates of # records are}} not written year-month-day",
		"What is wrong, for well/stage-row. count: records whose date is not YYYY-MM-DD.",
	],
	"well/coupling-near.what": [
		"{what} is at a coupling{others, plural, =0 {} one {, and # more plug or cluster is} other {, and # more plugs or clusters are}}",
		"What is wrong, for well/coupling-near. what: a plug or a cluster of a stage, with its article; others: how many more.",
	],
	"well/rate-per-perforation.expected": [
		"{least} to {greatest} through {count, plural, one {the one perforation} other {each of # perforations}}",
		"What is expected, for well/improbable-value. least and greatest: rates; count: perforations of a stage.",
	],
	"well/design-factor.burst": [
		"The design factor in burst is {factor}.",
		"An assumption, printed as a sentence. factor: a plain number.",
	],
	"well/design-factor.collapse": [
		"The design factor in collapse is {factor}.",
		"An assumption, printed as a sentence. factor: a plain number.",
	],
	"well/design-factor.tension": [
		"The design factor in tension is {factor}.",
		"An assumption, printed as a sentence. factor: a plain number.",
	],
	"well/design-factor.bending": [
		"The design factor in tension with bending is {factor}.",
		"An assumption, printed as a sentence. factor: a plain number.",
	],
	"well/design-factor.overpull": [
		"The design factor for stuck-pipe overpull is {factor}.",
		"An assumption, printed as a sentence. factor: a plain number.",
	],
	"well/design-factor.triaxial": [
		"The triaxial design factor is {factor}.",
		"An assumption, printed as a sentence. factor: a plain number.",
	],
	"well/design-factor.usual": [
		"None is given; this is the usual value; regulators and operators set their own.",
		"Why a design factor is assumed.",
	],
	"well/design-factor.upper-collapse": [
		"None is given; this is the upper end of the usual range of 1.0 to 1.125.",
		"Why the design factor in collapse is assumed.",
	],
	"well/design-factor.usual-deviated": [
		"None is given; this is the usual value for a deviated well, without bending.",
		"Why the design factor in tension is assumed.",
	],
	"well/design-factor.usual-bending": [
		"None is given; this is the usual value where bending is counted in.",
		"Why the design factor in tension with bending is assumed.",
	],
	"well/design-factor.usual-overpull": [
		"None is given; this is the usual value for a string pulled once.",
		"Why the design factor of a stuck string is assumed.",
	],
	"well/design-factor.upper-triaxial": [
		"None is given; this is the upper end of the usual range of 1.2 to 1.25.",
		"Why the triaxial design factor is assumed.",
	],
	"well/friction.inside-casing": [
		"The friction coefficient of pipe inside casing is {least} to {greatest}.",
		"An assumption, printed as a sentence. least and greatest: plain numbers.",
	],
	"well/friction.in-open-hole": [
		"The friction coefficient of pipe in open hole is {least} to {greatest}.",
		"An assumption, printed as a sentence. least and greatest: plain numbers.",
	],
	"calc/outside-target.expected": [
		"{beds}",
		"Where stages should be opened. beds: a list of clauses, one for each target bed.",
	],
	"calc/outside-target.below": [
		"within the {name}: {top} and below",
		"A bed without a known base. name: of the bed; top: a depth.",
	],
	"calc/outside-target.between": [
		"within the {name}: {top} to {base}",
		"A bed. name: of the bed; top and base: depths.",
	],
	"well/its-shoe-track": [
		"its shoe track",
		"What a related place is: joints between float collar and shoe of the string.",
	],
	"well/packer-below-end": [
		"the packer is set below the end of the treating string",
		"What is wrong, for well/treating-string.",
	],
	"well/packer-below-opening": [
		"the packer is set at or below the uppermost opening",
		"What is wrong, for well/treating-string. An opening: perforations or a sleeve.",
	],
	"calc/outside-target.what": [
		"stage {number} is opened {by} outside the target",
		"What is wrong, for calc/perforations-outside-target. number: of a stage; by: a length.",
	],
	"calc/outside-target.in-bed": [
		"stage {number} is opened {by} outside the target, in the {bed}",
		"What is wrong, for calc/perforations-outside-target. number: of a stage; by: a length; bed: name of a formation.",
	],
	"calc/outside-target.mend": [
		"correct the depths of the stages, the path, or the formations",
		"What to do about it, for calc/perforations-outside-target.",
	],
	"calc/outside-target.formations": [
		"the formations",
		"What a related place is, for calc/perforations-outside-target.",
	],
} as const satisfies Entries;
