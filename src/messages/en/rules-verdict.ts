import type { Entries } from "../entries.ts";

/** Verdicts, limits, days and deadlines, as findings say them. */
export const RULES_VERDICT = {
	"rules/searched.what": [
		"the statement that the list of neighbors is complete",
		"Clause without a full stop: why a limit came out as it did (distances).",
	],
	"rules/distance-from-to": [
		"distance from the {placeWords} to {neighbor}",
		"Noun phrase without its article: what is measured or is missing (distances). placeWords: the place measured from; neighbor: a neighbor's name, as typed.",
	],
	"rules/well-has-no-part-that-these-fields": [
		"these fields do not apply to this well.",
		"Sentence: why a limit came out as it did (paperwork).",
	],
	"rules/rule-is-in-force-counted-by-whose": [
		"the rule is in force{span}, counted by {counted}, whose date is not given.",
		"Sentence: why a limit came out as it did (judge).",
	],
	"rules/rule-is-in-force-from": [
		"the rule is in force from {from}; {words} {date}.",
		"Sentence: why a limit came out as it did (judge). words: words of the rule; date: a date.",
	],
	"rules/rule-was-in-force-until": [
		"the rule was in force until {to}; {words} {date}.",
		"Sentence: why a limit came out as it did (judge). words: words of the rule; date: a date.",
	],
	"rules/rule-says-so-person-decides": [
		'The rule says "{soft}", so an engineer must decide.',
		"Sentence: why a limit came out as it did (judge).",
	],
	"rules/rule-allows-it-only-where": [
		"The rule allows it only where {unless}.",
		"Sentence: why a limit came out as it did (judge).",
	],
	"rules/person-has-to-see-to-what-rule": [
		"An engineer must decide what follows.",
		"Sentence: why a limit came out as it did (judge).",
	],
	"rules/variance-from-this-rule-is-recorded-person": [
		"A variance from this rule is recorded; an engineer must confirm that the well complies with it.",
		"Sentence: why a limit came out as it did (judge).",
	],
	"rules/a-field-of": [
		"a {field} of {value}",
		"Part of a list. field: what is given, without an article; value: a pressure.",
	],
	"rules/along-hole": [", along the hole", "After a distance: measured along the hole."],
	"rules/vertically": [", vertically", "After a distance: measured vertically."],
	"rules/annulus-has": [
		"the {name} has {said}.",
		"Sentence. name: an annulus; said: a list of what is given for it.",
	],
	"rules/at-least": ["at least {bound}", "In place of a value of which only a lower bound is known."],
	"rules/at-most": ["at most {bound}", "In place of a value of which only an upper bound is known."],
	"rules/between": ["between {low} and {high}", "In place of a value of which only bounds are known."],
	"rules/at-least-required": ["at least {limit} is required", "Clause: what the limit asks."],
	"rules/at-least-above-required": [
		"at least {limit} above that is required",
		"Clause: what the limit asks, after a clause that something is below a place.",
	],
	"rules/at-least-below-required": [
		"at least {limit} below that is required",
		"Clause: what the limit asks, after a clause that something is above a place.",
	],
	"rules/has-to-be-at-or-above": [
		"it has to be at or above that",
		"Clause: what the limit asks, after a clause that something is below a place.",
	],
	"rules/has-to-be-at-or-below": [
		"it has to be at or below that",
		"Clause: what the limit asks, after a clause that something is above a place.",
	],
	"rules/more-than-required": ["more than {limit} is required", "Clause: what the limit asks."],
	"rules/at-most-allowed": ["at most {limit} is allowed", "Clause: what the limit asks."],
	"rules/less-than-required": ["less than {limit} is required", "Clause: what the limit asks."],
	"rules/operator-at-least": ["at least", "Before a value, in a clause on what a rule names."],
	"rules/operator-more-than": ["more than", "Before a value, in a clause on what a rule names."],
	"rules/operator-at-most": ["at most", "Before a value, in a clause on what a rule names."],
	"rules/operator-less-than": ["less than", "Before a value, in a clause on what a rule names."],
	"rules/base-of-protected-water": ["the base of protected water", "A place that a depth is compared with."],
	"rules/bears-less-than-mud": [
		"the {place} holds {size} less than the static mud weight of the {hole} hole",
		"Clause. place: the weakest place, a shoe or a formation; size: a density; hole: a hole's short name, as typed.",
	],
	"rules/bears-more-than-mud": [
		"the {place} holds {size} more than the static mud weight of the {hole} hole",
		"Clause. place: the weakest place, a shoe or a formation; size: a density; hole: a hole's short name, as typed.",
	],
	"rules/recorded-cement-top": [
		"the recorded cement top",
		"Whose top it is, so that a plan is never read as a record.",
	],
	"rules/calculated-cement-top": [
		"the cement top calculated from pumped volumes",
		"Whose top it is, so that a plan is never read as a record.",
	],
	"rules/planned-cement-top": [
		"the planned cement top",
		"Whose top it is, so that a plan is never read as a record.",
	],
	"rules/cement-of-strings": [
		"the {basis} {count, plural, one {cement of the {ids} string} other {cement of the {ids} strings}}",
		"Noun phrase. basis: planned, recorded or calculated; ids: a list of strings' short names.",
	],
	"rules/cement-stays-above-pore": [
		"the static column of the {string} cement job stays {size} above the pore pressure of the {formation}{detail}",
		"Clause. size: a pressure; formation: a name, as typed; detail: a depth and the fluid that passes.",
	],
	"rules/cement-stays-below-pore": [
		"the static column of the {string} cement job falls {size} below the pore pressure of the {formation}{detail}",
		"Clause. size: a pressure; formation: a name, as typed; detail: a depth and the fluid that passes.",
	],
	"rules/competence-not-stated": [
		"it is not stated whether it is competent",
		"Clause on the rock at a shoe.",
	],
	"rules/stated-competent": ["it is stated to be competent", "Clause on the rock at a shoe."],
	"rules/stated-not-competent": ["it is stated to be incompetent", "Clause on the rock at a shoe."],
	"rules/confining-bed": ["confining bed", "A bed of rock that has no name."],
	"rules/pipe-of": [", pipe {pipe}", "After the diameter of the hole. pipe: a diameter."],
	"rules/coupling-of": [", coupling {pipe}", "After the diameter of the hole. pipe: a diameter."],
	"rules/lighter-than-ahead": [
		"the {fluid} of the {string} string is {size} lighter than the {before} ahead of it",
		"Clause. fluid, before: fluids of a cement job; size: a density.",
	],
	"rules/heavier-than-ahead": [
		"the {fluid} of the {string} string is {size} heavier than the {before} ahead of it",
		"Clause. fluid, before: fluids of a cement job; size: a density.",
	],
	"rules/lighter-than-pore": [
		"lighter than the pore pressure of the {formation}",
		"After the difference of two densities. formation: its name.",
	],
	"rules/heavier-than-pore": [
		"heavier than the pore pressure of the {formation}",
		"After the difference of two densities. formation: its name.",
	],
	"rules/greatest-of": [
		"the {count, plural, =2 {greater of} other {greatest of}} {among}",
		"How a limit came about. among: a list of values.",
	],
	"rules/least-of": [
		"the {count, plural, =2 {lesser of} other {least of}} {among}",
		"How a limit came about. among: a list of values.",
	],
	"rules/plus": ["plus", "Between two values of a sum."],
	"rules/highest-modeled-fracture-top": [
		"the highest modeled fracture top",
		"A place of which a depth is told.",
	],
	"rules/hole-with-fluid": [
		"the {hole} hole with {fluid}",
		"Part of a list. hole: a hole's short name; fluid: kind of drilling fluid, as typed.",
	],
	"rules/in-the-connection": [", in the connection", "Where the least factor lies."],
	"rules/ingredient-in": [
		"{ingredient} ({cas}) in {name}",
		"Part of a list. ingredient, name: as typed; cas: a registry number.",
	],
	"rules/is-from-place": [
		"{name} is {part} from the {place}",
		"Clause. name: a neighbor, as typed; part: a distance; place: wellhead, pad edge, …",
	],
	"rules/least-proppant-of-stage": [
		"lowest share of planned proppant placed in a stage",
		"What is measured, without its article.",
	],
	"rules/least-clean-volume-of-stage": [
		"lowest share of planned clean volume pumped in a stage",
		"What is measured, without its article.",
	],
	"rules/stage-was-given": [
		"stage {stage} received {part} of its planned proppant",
		"Clause. part: a share.",
	],
	"rules/stage-was-pumped-with": [
		"stage {stage} was pumped with {part} of its planned clean volume",
		"Clause. part: a share.",
	],
	"rules/of-stages": [
		"{what} {count, plural, one {of stage {stages}} other {of stages {stages}}}",
		"An input that is missing. stages: a list of numbers.",
	],
	"rules/listed": ["{listed}", "A list by itself."],
	"rules/nothing-loads": [
		"no {kind} load applies to the {string} string",
		"Clause: why a rule does not apply. kind: burst, collapse, …",
	],
	"rules/no-mud-loads": [
		"no {kind} load applies to the {string} string: its hole holds no mud",
		"Clause: why a rule does not apply. kind: burst, collapse, …",
	],
	"rules/noun-is-as-asked": [
		"the {noun} is {measured}, {operator} {required}",
		"Clause: why a condition holds. noun: what is measured, without its article.",
	],
	"rules/noun-is-not-as-asked": [
		"the {noun} is {measured}, not {operator} {required}",
		"Clause: why a condition does not hold. noun: what is measured, without its article.",
	],
	"rules/on-rules-list": [
		"{found} {count, plural, one {is on} other {are on}} the rule's list.",
		"Sentence. found: a list of ingredients.",
	],
	"rules/pipe-is-stated": [
		"the {string} pipe is stated to be {found}",
		"Clause. found: conditions of pipe, as typed.",
	],
	"rules/places-within": [
		"{places} {count, plural, one {is within} other {are within}}{where}",
		"Clause. places: a list of names; where: a radius with its words.",
	],
	"rules/planned-is": [
		"the planned {noun} is {part}",
		"Clause. noun: what a pressure test states, without its article.",
	],
	"rules/recorded-is": [
		"the recorded {noun} is {part}",
		"Clause. noun: what a pressure test states, without its article.",
	],
	"rules/planned-shoe-test-is-to": ["the planned shoe test is {part}", "Clause. part: a density."],
	"rules/recorded-shoe-test-is-to": ["the recorded shoe test is {part}", "Clause. part: a density."],
	"rules/recorded-shoe-test-below-fluid": [
		"the recorded shoe test is {size} below the density of the fluid below the shoe",
		"Clause. size: a density.",
	],
	"rules/recorded-shoe-test-above-fluid": [
		"the recorded shoe test is {size} above the density of the fluid below the shoe",
		"Clause. size: a density.",
	],
	"rules/plugs-named": ["plugs: {plugs}", "Clause. plugs: as typed."],
	"rules/pore-pressures": ["pore pressures", "An input that is missing, without its article."],
	"rules/relief-valve-setting": ["relief valve setting", "An input that is missing, without its article."],
	"rules/rock": ["rock", "A formation that has no name."],
	"rules/rung-is-above": [
		"{lower} ({at}) is above {upper} ({limit})",
		"Part of a list. lower, upper: limits of the treating pressure, with their articles; at, limit: what they are set to.",
	],
	"rules/rung-is-not-below": [
		"{lower} ({at}) is not below {upper} ({limit})",
		"Part of a list. lower, upper: limits of the treating pressure, with their articles; at, limit: what they are set to.",
	],
	"rules/sampled-on": [
		"{name} was sampled on {sampled}",
		"Clause. name: a source of water; sampled: a date.",
	],
	"rules/sampled-days-before": [
		"{said}, more than {count, plural, one {# day} other {# days}} before {event}, planned for {date}.",
		"Sentence. said: that it was sampled, and when.",
	],
	"rules/sampled-months-before": [
		"{said}, more than {count, plural, one {# month} other {# months}} before {event}, planned for {date}.",
		"Sentence. said: that it was sampled, and when.",
	],
	"rules/sampled-days-before-recorded": [
		"{said}, more than {count, plural, one {# day} other {# days}} before {event}, which was on {date}.",
		"Sentence. said: that it was sampled, and when.",
	],
	"rules/sampled-months-before-recorded": [
		"{said}, more than {count, plural, one {# month} other {# months}} before {event}, which was on {date}.",
		"Sentence. said: that it was sampled, and when.",
	],
	"rules/shoe-of": ["{string} shoe", "A place. string: a string's short name, as typed."],
	"rules/slurries-of-other-class": [
		"{outside}; the rule names {words}.",
		"Sentence. outside: a list of clauses; words: cement classes, as the rule has them.",
	],
	"rules/slurry-is-of-class": [
		"the {id} slurry is of class {found}",
		"Part of a list. id: a slurry's short name, as typed.",
	],
	"rules/strength-after": [
		"the strength of the {string} string's {id} slurry after {after}",
		"An input that is missing. after: a time.",
	],
	"rules/strength-after-cured": [
		"the strength of the {string} string's {id} slurry after {after}, cured at {curedAt}",
		"An input that is missing. after: a time; curedAt: a temperature.",
	],
	"rules/strength-of-slurries": [
		"{count, plural, one {of the {ids} slurry} other {of the {ids} slurries}}, {zone},",
		'After "the strength". ids: slurries\' short names; zone: where along the string.',
	],
	"rules/the-uppermost-perforation": ["the uppermost perforation", "A place of which a depth is told."],
	"rules/thickens-before-plug": [
		"the {slurry} slurry of the {string} string reaches its thickening time {size} before the plug lands",
		"Clause. size: a time.",
	],
	"rules/thickens-after-plug": [
		"the {slurry} slurry of the {string} string reaches its thickening time {size} after the plug lands",
		"Clause. size: a time.",
	],
	"rules/top-of-bed": ["the top of the {bed}", "A place that a depth is compared with. bed: its name."],
	"rules/top-of-formation": [
		"top of the {formation}",
		"An input that is missing. formation: as the rule names it.",
	],
	"rules/base-of-formation": [
		"base of the {formation}",
		"An input that is missing. formation: as the rule names it.",
	],
	"rules/zone-is-covered": [
		"{columns} covers the {name}.",
		"Sentence. columns: cement of one or more strings; name: a zone.",
	],
	"rules/zones-open-above": [
		"{names} {count, plural, one {is open} other {are open}} above the {string} shoe",
		"Clause. names: formations.",
	],
	"rules/a-string-called": ['a string called "{string}"', "An input that is missing. string: as typed."],
	"rules/test-of-the-line": ["line test", "An input that is missing, without its article."],
	"rules/name-of-string": [
		"a name that tells what the {id} string is (conductor, surface, intermediate, production)",
		"An input that is missing. id: a string's short name, as typed; the words in brackets are words of the definition.",
	],
} as const satisfies Entries;
