import type { Entries } from "../entries.ts";

/** Records beside their plans, as findings say them. */
export const RULES_RECORDS = {
	"rules/cement-job-string-is-not-recorded": [
		"the cement job of the {string} string is not recorded.",
		"Sentence: why a limit came out as it did (records).",
	],
	"rules/record-whether-floats-held": [
		"record of whether the floats held",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/record-says-that-floats-held": [
		"the record shows that the floats held.",
		"Sentence: why a limit came out as it did (records).",
	],
	"rules/record-says-that-floats-did-not-hold": [
		"the record shows that the floats did not hold.",
		"Sentence: why a limit came out as it did (records).",
	],
	"rules/record-says-that-returns-were-while-pumping": [
		"the record shows {seen} returns while pumping.",
		"Sentence: why a limit came out as it did (records).",
	],
	"rules/record-says-that-there-were-no": [
		"the record shows no returns while pumping.",
		"Sentence: why a limit came out as it did (records).",
	],
	"rules/record-shows-cement-returned-to-surface-2": [
		"the record shows {cement} of cement returns at surface.",
		"Sentence: why a limit came out as it did (records).",
	],
	"rules/record-returns-while-pumping": [
		"record of returns while pumping",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/this-is-not-preventer-stack": [
		"this is not a BOP stack.",
		"Sentence: why a limit came out as it did (records).",
	],
	"rules/no-test-preventers-on-string-is-recorded": [
		"no BOP test on the {over} string is recorded.",
		"Sentence: why a limit came out as it did (records). over: a string's short name, as typed.",
	],
	"rules/record-whether-preventers-on-string-held": [
		"record of whether the BOP on the {over} string held",
		"Noun phrase without its article: what is measured or is missing (records). over: a string's short name, as typed.",
	],
	"rules/record-says-that-preventers-held-their-test": [
		"the record shows that the BOP held its test.",
		"Sentence: why a limit came out as it did (records).",
	],
	"rules/record-says-that-preventers-did-not-hold": [
		"the record shows that the BOP did not hold its test.",
		"Sentence: why a limit came out as it did (records).",
	],
	"rules/cement-job-string-is-not-recorded-2": [
		"the cement job of the {string} string is not recorded",
		"Clause without a full stop: why a limit came out as it did (records). string: a string's short name, as typed.",
	],
	"rules/volume-pumped-each-slurry": [
		"volume pumped of each slurry",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/no-stage-is-recorded-as-pumped": [
		"no stage is recorded as pumped",
		"Clause without a full stop: why a limit came out as it did (records).",
	],
	"rules/least-part-slurrys-calculated-volume-that": [
		"lowest share of a slurry's calculated volume pumped",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/slurry-was-pumped-to-its-calculated-volume": [
		"the {leastSlurry} slurry was pumped to {part} of its calculated volume",
		"Clause without a full stop: why a limit came out as it did (records). part: the value.",
	],
	"rules/greatest-difference-slurrys-density-from-its": [
		"largest deviation of slurry density from design",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/density-each-slurry-pumped": [
		"density of each slurry pumped",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/slurries-are-off-their-design-density-by": [
		"the largest deviation from the design density is {part}",
		"Clause without a full stop: why a limit came out as it did (records). part: the value.",
	],
	"rules/slurry-was-weighed-at-off-its-design": [
		"the {slurry} slurry was weighed at {density}, {part} off design",
		"Clause without a full stop: why a limit came out as it did (records). part: the value.",
	],
	"rules/density-window-stated-for-job": [
		"density window stated for the job",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/no-density-window-is-stated-for-cement": [
		"no density window is stated for the cement of the {string} string",
		"Clause without a full stop: why a limit came out as it did (records). string: a string's short name, as typed.",
	],
	"rules/density-window": [
		"density window",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/density-window-is": [
		"the density window is {part}",
		"Clause without a full stop: why a limit came out as it did (records). part: the value.",
	],
	"rules/difference-recorded-lift-pressure-from-calculated": [
		"difference between recorded and calculated lift pressure",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/final-lift-pressure": [
		"final lift pressure",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/cement-string-is-no-heavier-than-what": [
		"the cement of the {string} string is no heavier than its displacement fluid",
		"Clause without a full stop: why a limit came out as it did (records). string: a string's short name, as typed.",
	],
	"rules/calculated-lift-pressure": [
		"calculated lift pressure",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/recorded-lift-pressure-is-off-calculated-one": [
		"the recorded lift pressure differs from the calculated one by {part}",
		"Clause without a full stop: why a limit came out as it did (records). part: the value.",
	],
	"rules/recorded-lift-pressure-is-columns-at-rest": [
		"the recorded lift pressure is {lift} and the static columns give {calculated}, a difference of {part}",
		"Clause without a full stop: why a limit came out as it did (records). part: the value.",
	],
	"rules/depth-cement-top-below-planned-one": [
		"depth of the cement top below plan, along the hole",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/is-above-planned-one": [
		"{topNoun} is above plan",
		"Clause without a full stop: why a limit came out as it did (records). topNoun: whose cement top it is.",
	],
	"rules/is-below-planned-one-along-hole": [
		"{topNoun} is {part} below plan, along the hole",
		"Clause without a full stop: why a limit came out as it did (records). topNoun: whose cement top it is; part: the value.",
	],
	"rules/recorded-bump-pressure": [
		"recorded bump pressure",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/bump-pressure": [
		"bump pressure",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/plug-was-bumped-at": [
		"the plug was bumped at {part}",
		"Clause without a full stop: why a limit came out as it did (records). part: the value.",
	],
	"rules/pressure-that-casing-its-planned-test": [
		"maximum bump pressure allowed by the casing, its planned test and the wellhead",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/rating-at-plug-bump": [
		"rating at the plug bump",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/pressure-allowed-at-plug-bump-is": [
		"the maximum bump pressure is {part}",
		"Clause without a full stop: why a limit came out as it did (records). part: the value.",
	],
	"rules/equivalent-density-that-shoe-test-was": [
		"planned equivalent density of the shoe test",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/planned-shoe-test": [
		"planned shoe test",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/shoe-test-was-planned-to": [
		"the planned shoe test is {part}",
		"Clause without a full stop: why a limit came out as it did (records). part: the value.",
	],
	"rules/shoe-test-over-fluid-that-next": [
		"shoe test over the mud weight of the next hole",
		"Clause without a full stop: why a limit came out as it did (records).",
	],
	"rules/no-test-shoe-is-recorded": [
		"no test of the {string} shoe is recorded",
		"Clause without a full stop: why a limit came out as it did (records). string: a string's short name, as typed.",
	],
	"rules/no-hole-is-drilled-below-shoe": [
		"no hole is drilled below the {string} shoe",
		"Clause without a full stop: why a limit came out as it did (records). string: a string's short name, as typed.",
	],
	"rules/planned-test-pressure": [
		"planned test pressure",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/planned-hold-test": [
		"planned hold time of the test",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/fall-that-test-is-allowed": [
		"allowed pressure loss of the test",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/highest-treating-pressure-on-record": [
		"highest treating pressure on record",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/maximum-pressure-stages-pumped": [
		"maximum recorded pressure of the stages",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/greatest-channel-index": [
		"greatest channel risk index",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/no-flow-of-mud-and-spacer-is-known": [
		"flow of mud and cement is not given, or no centralizers are",
		"Clause without a full stop: why a limit came out as it did (cement).",
	],
	"rules/yield-points-of-mud-spacer-slurry": [
		"yield points of mud, spacer and slurries",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/channel-index-of-string-is": [
		"of four criteria of displacement the {string} string misses {part} ({at_name})",
		"Clause without a full stop: why a limit came out as it did (cement). string: its short name; part: a count; at_name: where.",
	],
	"rules/base-fluid-off-its-water": [
		"density of the base fluid off that of its water",
		"Noun phrase without its article: what is measured or is missing (treatment).",
	],
	"rules/dissolved-solids-of-the-water-are-not-given": [
		"the dissolved solids of the water sources are not given",
		"Clause without a full stop: why a limit came out as it did (treatment).",
	],
	"rules/base-fluid-is-off-by": [
		"the stated base fluid and the blend of its water differ by {part}",
		"Clause without a full stop: why a limit came out as it did (treatment). part: a density.",
	],
	"rules/longest-transition-time": [
		"longest transition time of the slurries",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/no-gas-zone-is-behind-the-cement": [
		"no gas zone is behind the cement",
		"Clause without a full stop: why a limit came out as it did (cement).",
	],
	"rules/transition-time-of-the-slurries": [
		"transition time of the slurries, from the laboratory",
		"Noun phrase without its article: what is measured or is missing (cement).",
	],
	"rules/slurry-is-in-transition-for": [
		"a slurry behind which gas stands is in transition for {part}",
		"Clause without a full stop: why a limit came out as it did (cement). part: a time.",
	],
	"rules/chart-volume-apart-from-record": [
		"difference of volume between treatment chart and record",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/no-chart-of-a-recorded-stage": [
		"no treatment chart of a recorded stage is given",
		"Clause without a full stop: why a limit came out as it did (records).",
	],
	"rules/charts-of-the-stages": [
		"treatment charts of the stages",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/chart-and-record-differ": [
		"chart and record of stage {stage} differ by {part}",
		"Clause without a full stop: why a limit came out as it did (records). stage: its number; part: a share.",
	],
	"rules/highest-gradient-at-shut-in": [
		"highest gradient at instantaneous shut-in",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/shut-in-pressure-of-the-stages": [
		"instantaneous shut-in pressure of the stages",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/stage-shut-in-at": [
		"stage {stage} shut in at {part}",
		"Clause without a full stop: why a limit came out as it did (records). stage: its number; part: a gradient.",
	],
	"rules/stage-reached": [
		"stage {detail} reached {part}",
		"Noun phrase without its article: what is measured or is missing (records). detail: a further part of the clause, or nothing; part: the value.",
	],
	"rules/line-test-pressure": [
		"line test pressure",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/treating-line-was-tested-to": [
		"the treating line is tested to {part}",
		"Clause without a full stop: why a limit came out as it did (records). part: the value.",
	],
	"rules/pressure-allowed-by-weakest-element-pressure": [
		"lowest allowed pressure of the elements exposed to treating pressure",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/elements-that-see-treating-pressure": [
		"elements exposed to treating pressure",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/weakest-element-pressure-boundary-is-allowed": [
		"the weakest element exposed to treating pressure is allowed {part}",
		"Clause without a full stop: why a limit came out as it did (records). part: the value.",
	],
	"rules/stage-was-given.proppant-placed-in-each": [
		"proppant placed in each stage",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/stage-was-pumped-with.clean-volume-each-stage": [
		"clean volume of each stage",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/highest-pressure-recorded-in-annulus": [
		"highest pressure recorded in the annulus",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/highest-pressure-recorded-in": [
		"highest pressure recorded in the {name}",
		"Noun phrase without its article: what is measured or is missing (records). name: a name, as typed.",
	],
	"rules/annulus-reached": [
		"the annulus reached {part}",
		"Noun phrase with its article (records). part: the value.",
	],
	"rules/recorded-high-pressure-test-preventers": [
		"recorded high-pressure BOP test",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/no-test-preventers-on-string-is-recorded-2": [
		"no BOP test on the {over} string is recorded",
		"Clause without a full stop: why a limit came out as it did (records). over: a string's short name, as typed.",
	],
	"rules/high-test": [
		"high test",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/preventers-were-tested-to": [
		"the BOP was tested to {part}",
		"Clause without a full stop: why a limit came out as it did (records). part: the value.",
	],
	"rules/planned-high-pressure-test-preventers": [
		"planned high-pressure BOP test",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/planned-high-test": [
		"planned high test",
		"Noun phrase without its article: what is measured or is missing (records).",
	],
	"rules/preventers-are-to-be-tested-to": [
		"the BOP is to be tested to {part}",
		"Clause without a full stop: why a limit came out as it did (records). part: the value.",
	],
} as const satisfies Entries;
