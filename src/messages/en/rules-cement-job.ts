import type { Entries } from "../entries.ts";

/** A cement job that is planned, as findings say them. */
export const RULES_CEMENT_JOB = {
	"rules/cement-job-string-is-on-record": [
		"the cement job of the {string} string is on record",
		"Clause without a full stop: why a limit came out as it did (cement job). string: a string's short name, as typed.",
	],
	"rules/string-is-grouted-from-surface": [
		"the {string} string is grouted from the surface",
		"Clause without a full stop: why a limit came out as it did (cement job). string: a string's short name, as typed.",
	],
	"rules/plastic-viscosity-and-yield-point-every": [
		"plastic viscosity and yield point of every fluid in the cement job",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/fracture-gradient-rock-behind-cement": [
		"fracture gradient of the rock behind the cement",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/least-margin-cement-job-to-fracture": [
		"minimum margin to fracture during the cement job",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/cement-job-string-comes-bears": [
		"the cement job of the {string} string comes {detail}{where}{detail2}",
		"Clause without a full stop: why a limit came out as it did (cement job). detail: a further part of the clause, or nothing; where: the pressure that it comes near to, with its article; detail2: a further part of the clause, or nothing.",
	],
	"rules/least-margin-cement-job-to-fracture-2": [
		"minimum margin to fracture during the cement job, as a density",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/as-density-least-margin-cement-job-to": [
		"the minimum margin to fracture of the {string} cement job, as a density, is {part}",
		"Clause without a full stop: why a limit came out as it did (cement job). part: the value.",
	],
	"rules/least-margin-cement-job-over-pore": [
		"minimum margin of the cement job over pore pressure",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/pore-pressure-rock-behind-cement": [
		"pore pressure of the rock behind the cement",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/plug-bump-pressure": [
		"plug bump pressure",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/no-plug-is-bumped": [
		"no plug is bumped",
		"Clause without a full stop: why a limit came out as it did (cement job).",
	],
	"rules/pressure-over-final-circulating-that-plug": [
		"bump pressure over final circulating pressure",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/plug-string-is-bumped-at": [
		"the plug of the {string} string bumps at {part}",
		"Clause without a full stop: why a limit came out as it did (cement job). part: the value.",
	],
	"rules/weakest-pipe-coupling-and-wellhead": [
		"lowest rating of pipe, coupling and wellhead",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/rating-pipe": [
		"rating of the pipe",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/weakest-pipe-coupling-and-wellhead-is-rated": [
		"the lowest rating of pipe, coupling and wellhead is {part}",
		"Clause without a full stop: why a limit came out as it did (cement job). part: the value.",
	],
	"rules/thickening-time-left-when-plug-lands": [
		"thickening time left when the plug lands",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/thickening-time-slurry": [
		"thickening time of the {id} slurry",
		"Noun phrase without its article: what is measured or is missing (cement job). id: a short name, as typed.",
	],
	"rules/pump-rates-cement-job": [
		"pump rates of the cement job",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/least-standoff-at-shoe-and-water": [
		"minimum standoff at the shoe and across protected water",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/centralizers-at-shoe-joint-length-or": [
		"centralizers at the shoe, joint length or mud density",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/standoff-string-is-at": [
		"the standoff of the {string} string is {part} at the {at_name}",
		"Clause without a full stop: why a limit came out as it did (cement job). part: the value.",
	],
	"rules/least-contact-time-spacer": [
		"minimum spacer contact time",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/pump-rate-behind-spacer": [
		"pump rate behind the spacer",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/spacer-string-passes-place-in": [
		"the spacer contact time of the {string} string is {part}",
		"Clause without a full stop: why a limit came out as it did (cement job). part: the value.",
	],
	"rules/length-annulus-that-spacer-fills": [
		"annular length of the spacer",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/no-spacer-is-left-above-cement": [
		"no spacer remains above the cement",
		"Clause without a full stop: why a limit came out as it did (cement job).",
	],
	"rules/it-fills-annulus-above-cement": [
		"the spacer fills {part} of annulus above the cement",
		"Clause without a full stop: why a limit came out as it did (cement job). part: the value.",
	],
	"rules/least-step-density-from-mud-to": [
		"minimum density step from mud to spacer to cement",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/hole-holds-no-mud": [
		"the hole holds no mud",
		"Clause without a full stop: why a limit came out as it did (cement job).",
	],
	"rules/density-mud-and-spacer": [
		"density of mud and spacer",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/gas-flow-potential": [
		"gas-flow potential",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/no-gas-zone-is-open-behind": [
		"no gas zone is open behind the cement of the {string} string",
		"Clause without a full stop: why a limit came out as it did (cement job).",
	],
	"rules/no-formation-is-marked-as-gas": [
		"no formation is marked as gas-bearing",
		"Clause without a full stop: why a limit came out as it did (cement job).",
	],
	"rules/gas-flow-potential-behind-string-is": [
		"the gas-flow potential of the {formation} behind the {string} string is {part}{detail}",
		"Clause without a full stop: why a limit came out as it did (cement job). formation: a formation's name; part: the value; detail: a further part of the clause, or nothing.",
	],
	"rules/static-temperature-behind-cement": [
		"static temperature behind the cement",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/temperature-gradient": [
		"temperature gradient",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/rock-at-foot-slurry-is-at": [
		"the static temperature at the bottom of the {hottest} slurry is {part}",
		"Clause without a full stop: why a limit came out as it did (cement job). part: the value.",
	],
	"rules/silica-by-weight-cement": [
		"silica by weight of cement",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/silica-slurry": [
		"silica of the {detail} slurry",
		"Noun phrase without its article: what is measured or is missing (cement job). detail: a further part of the clause, or nothing.",
	],
	"rules/slurry-string-has-silica-by-weight-cement": [
		"the {hot} slurry of the {string} string has {part} silica by weight of cement{detail}",
		"Clause without a full stop: why a limit came out as it did (cement job). part: the value; detail: a further part of the clause, or nothing.",
	],
	"rules/difference-strength-test-and-rock-temperature": [
		"difference between strength-test temperature and rock temperature",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/no-strength-test-cement-is-given": [
		"no strength test of the {string} cement is given",
		"Clause without a full stop: why a limit came out as it did (cement job). string: a string's short name, as typed.",
	],
	"rules/temperature-strength-tests-slurry": [
		"temperature of the strength tests of the {strengths} slurry",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/strength-slurry-string-was-tested-within-range": [
		"the strength of the {off} slurry of the {string} string was tested within the temperature range of the rock along it{detail}",
		"Clause without a full stop: why a limit came out as it did (cement job). detail: a further part of the clause, or nothing.",
	],
	"rules/strength-slurry-string-was-tested-outside-range": [
		"the strength of the {off} slurry of the {string} string was tested {part} outside the temperature range of the rock along it{detail}",
		"Clause without a full stop: why a limit came out as it did (cement job). part: the value; detail: a further part of the clause, or nothing.",
	],
	"rules/pressure-of-shoe-test": [
		"the pressure of the shoe test",
		"Noun phrase with its article: what the rock at the shoe is known to hold (cement job).",
	],
	"rules/fracture-pressure-of": [
		"the fracture pressure of the {formation}",
		"Noun phrase with its article (cement job). formation: its name, or rock.",
	],
	"rules/above-what": [
		"{size} above ",
		"Noun phrase without its article: what is measured or is missing (cement job). size: the value without its sign.",
	],
	"rules/within-what": [
		"within {size} of ",
		"Noun phrase without its article: what is measured or is missing (cement job). size: the value without its sign.",
	],
	"rules/at": [" at {tvd}", "Noun phrase without its article: what is measured or is missing (cement job)."],
	"rules/that-gelling-cement-may-lose-over": [
		" (pressure restriction {restriction}, overbalance {overbalance})",
		"Clause without a full stop: why a limit came out as it did (cement job).",
	],
	"rules/against-rock-at": [
		" against rock at {rock}",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/which-is-at-at-its-foot": [
		" ({rock} at its bottom)",
		"Clause without a full stop: why a limit came out as it did (cement job).",
	],
	"rules/strength-when-drilled-out": [
		"strength of the cement at the shoe when it is drilled out",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/strength-tests-of-slurry": [
		"strength tests of the {slurry} slurry",
		"Noun phrase without its article: what is measured or is missing (cement job). slurry: a name, as typed.",
	],
	"rules/cement-at-shoe-has": [
		"the cement at the {string} shoe has {part} after {after}{detail}",
		"Clause without a full stop: why a limit came out as it did (cement job). string: a string's short name; part: the value; after: the wait; detail: empty, or when the strength is reached.",
	],
	"rules/it-reaches-strength-after": [
		", and reaches {wanted} after {reached}",
		"Ending of a clause (cement job). wanted: a strength; reached: a time.",
	],
	"rules/hold-down-while-cementing": [
		"net downward force on the string while cementing",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/hold-down-of-one-diameter": [
		"the force on a string of several diameters, or of a liner, is not calculated: {string}",
		"Clause without a full stop: why a limit came out as it did (cement job). string: a string's short name.",
	],
	"rules/cement-job-lifts": [
		"the cement job lifts the {string} string: the uplift exceeds the hold-down force by {size}",
		"Clause without a full stop: why a limit came out as it did (cement job). size: a force.",
	],
	"rules/cement-job-holds-down": [
		"the {string} string has at least {size} of net downward force while cementing",
		"Clause without a full stop: why a limit came out as it did (cement job). size: a force.",
	],
	"rules/recorded-cement-top-below-water-zone": [
		"distance of the recorded cement top below the top of a water zone",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/string-passes-no-water-bare": [
		"outer cement covers every water zone that the {string} string passes",
		"Clause without a full stop: why a limit came out as it did (cement job). string: a string's short name.",
	],
	"rules/cement-stops-below-water": [
		"cement behind the {string} string stops {size} below the top of the {zone}",
		"Clause without a full stop: why a limit came out as it did (cement job). zone: a name, as typed.",
	],
	"rules/cement-covers-water": [
		"cement behind the {string} string covers the {zone}",
		"Clause without a full stop: why a limit came out as it did (cement job). zone: a name, as typed.",
	],
	"rules/while-fluid-passes": [
		", while the {fluid} passes",
		"Ending of a clause (cement job). fluid: spacer, mud, or a slurry's name.",
	],
	"rules/while-fluid-is-pumped": [
		", while the {fluid} is pumped",
		"Ending of a clause (cement job). fluid: spacer, displacement, or a slurry's name.",
	],
	"rules/no-cement-returned-of": [
		"{over} times the calculated cement was pumped, and the record shows no cement returns at surface.",
		"Sentence: why a limit came out as it did (cement). over: a ratio.",
	],
	"rules/strength-wanted-at-drill-out": [
		"strength required before drill-out",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/strength-wanted-is": [
		"{part} is required before drill-out",
		"Clause without a full stop: why a limit came out as it did (cement job). part: the value.",
	],
	"rules/no-strength-is-stated-for-drilling-out": [
		"no strength is stated for drill-out of the {string} shoe",
		"Clause without a full stop: why a limit came out as it did (cement job). string: a string's short name.",
	],
	"rules/cementing-line-test": [
		"test of the cementing line",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/cementing-line-is-tested-to": [
		"the cementing line of the {string} string is tested to {part}",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/highest-cementing-pressure": [
		"highest pressure of the cement job",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/cement-job-reaches": [
		"the cement job reaches {part}",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/depth-of-shallow-cement-class": [
		"depth of class A, B or C cement",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/no-shallow-class": [
		"the {string} string has no cement of class A, B or C",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/slurry-of-class-reaches": [
		"the {slurry} slurry of the {string} string is of class {class} and reaches {part} TVD",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/float-equipment": [
		"float equipment",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/floats-named": [
		"the floats of the {string} string are named: {floats}",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/no-float-is-named": [
		"the {string} string has no {without} named (floats: {floats})",
		"Sentence without its full stop: which float is missing.",
	],
	"rules/production-packer-below-cement-top": [
		"production packer below the top of cement",
		"Noun phrase without its article: what is measured or is missing (cement job).",
	],
	"rules/no-packer": [
		"no production packer is stated in the {string} string",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/packer-above-cement": [
		"the production packer is set {size} above the top of cement behind the {string} string",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
	"rules/packer-below-cement": [
		"the production packer is set {size} below the top of cement behind the {string} string",
		"Clause without a full stop: why a limit came out as it did. part, size: the value; other facts: names, as typed.",
	],
} as const satisfies Entries;
