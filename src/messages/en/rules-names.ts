import type { Entries } from "../entries.ts";

/** Names of fields, strings, subjects and places, as findings say them. */
export const RULES_NAMES = {
	"rules/annulus-named": [
		"{inner} × {outer} annulus",
		"Name of an annulus. inner, outer: strings' short names, as typed.",
	],
	"rules/basis-calculated": ["calculated", "Of a cement column (masculine in Spanish: cemento)."],
	"rules/basis-planned": ["planned", "Of a cement column (masculine in Spanish: cemento)."],
	"rules/basis-recorded": ["recorded", "Of a cement column (masculine in Spanish: cemento)."],
	"rules/field-of-annulus": [
		"{field} of the {name}",
		"An input that is missing. field: without its article; name: an annulus.",
	],
	"rules/field-predicted-rise": ["predicted rise", "Of the pressure of an annulus."],
	"rules/field-stop-pressure": ["stop pressure", "Of the pressure of an annulus."],
	"rules/fluid-mud": ["mud", "A fluid of a cement job."],
	"rules/fluid-spacer": ["spacer", "A fluid of a cement job."],
	"rules/fluid-first-slurry": ["first slurry", "A fluid of a cement job."],
	"rules/kind-burst": ["burst", "A way a string may fail."],
	"rules/kind-collapse": ["collapse", "A way a string may fail."],
	"rules/kind-tension": ["tension", "A way a string may fail."],
	"rules/kind-triaxial": ["triaxial", "A way a string may fail."],
	"rules/place.wellhead": ["wellhead", "A place that distances are measured from."],
	"rules/place.pad-edge": ["pad edge", "A place that distances are measured from."],
	"rules/place.nearest-equipment": ["nearest equipment", "A place that distances are measured from."],
	"rules/place.wellbore": ["wellbore", "A place that distances are measured from."],
	"rules/strings.conductor": ["conductor", "Which strings a rule picks."],
	"rules/strings.surface": ["surface", "Which strings a rule picks."],
	"rules/strings.first-surface": ["first surface", "Which strings a rule picks."],
	"rules/strings.second-surface": ["second surface", "Which strings a rule picks."],
	"rules/strings.intermediate": ["intermediate", "Which strings a rule picks."],
	"rules/strings.production": ["production", "Which strings a rule picks."],
	"rules/strings.liner": ["liner", "Which strings a rule picks."],
	"rules/strings.below-conductor": ["below conductor", "Which strings a rule picks."],
	"rules/strings.below-surface": ["below surface", "Which strings a rule picks."],
	"rules/strings.treated-through": ["treated through", "Which strings a rule picks."],
	"rules/strings.cement-recorded": ["cementing records", "Which strings a rule picks."],
	"rules/strings.shoe-test-recorded": ["shoe test records", "Which strings a rule picks."],
	"rules/strings.pressure-test-recorded": ["pressure test records", "Which strings a rule picks."],
	"rules/strings.every-string": ["every string", "Which strings a rule picks."],
	"rules/strings.every-string-but-conductor": ["every string but conductor", "Which strings a rule picks."],
	"rules/subject-well": ["well", "What a finding was made on."],
	"rules/subject-annulus": ["annulus", "What a rule is about, where the well has none."],
	"rules/subject-any-hole": ["hole", "What a rule is about, where the well has none."],
	"rules/subject-any-preventers": ["preventers", "What a rule is about, where the well has none."],
	"rules/subject-offset-well": ["offset well", "What a rule is about, where the well has none."],
	"rules/subject-hole": ["{hole} hole", "What a finding was made on. hole: a hole's short name, as typed."],
	"rules/subject-preventers": [
		"preventers on {string}",
		"What a finding was made on. string: a string's short name, as typed.",
	],
	"rules/practice": ["Engineering practice", "Whose limit it is, where it is no law."],
	"rules/permit-conditions": ["Conditions of the permit", "Whose limit it is, where the permit states it."],
	"rules/field.api-number": ["API number", "A field that a filing may be asked for, without its article."],
	"rules/field.permit-number": [
		"permit number",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.operator": ["operator", "A field that a filing may be asked for, without its article."],
	"rules/field.lease": ["lease", "A field that a filing may be asked for, without its article."],
	"rules/field.field": ["field", "A field that a filing may be asked for, without its article."],
	"rules/field.county": ["county", "A field that a filing may be asked for, without its article."],
	"rules/field.technical-contact": [
		"technical contact",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.surface-location": [
		"surface location",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.coordinate-datum": [
		"coordinate datum",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.ground-elevation": [
		"ground elevation",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.depth-datum": ["depth datum", "A field that a filing may be asked for, without its article."],
	"rules/field.directional-plan": [
		"directional plan",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.directional-survey": [
		"directional survey",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.survey-company": [
		"survey company",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.survey-dates": [
		"survey dates",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.formation-tops": [
		"formation tops",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.water-zones": ["water zones", "A field that a filing may be asked for, without its article."],
	"rules/field.protected-water-base": [
		"protected-water base",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.protected-water-letter": [
		"protected-water letter",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.confining-zone": [
		"confining zone",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.pore-pressures": [
		"pore pressures",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.fracture-gradients": [
		"fracture gradients",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.temperature-gradient": [
		"temperature gradient",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.hole-sizes": ["hole sizes", "A field that a filing may be asked for, without its article."],
	"rules/field.drilling-fluids": [
		"drilling fluids",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.pipe-condition": [
		"pipe condition",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.design-factors": [
		"design factors",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.cement-slurries": [
		"cement slurries",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.cement-class": [
		"cement class",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.cement-strengths": [
		"cement strengths",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.cement-top-method": [
		"cement top method",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.centralizers": [
		"centralizers",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.float-equipment": [
		"float equipment",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.preventers": ["preventers", "A field that a filing may be asked for, without its article."],
	"rules/field.casing-pressure-tests": [
		"casing pressure tests",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.stage-table": ["stage table", "A field that a filing may be asked for, without its article."],
	"rules/field.base-fluid": ["base fluid", "A field that a filing may be asked for, without its article."],
	"rules/field.proppants": ["proppants", "A field that a filing may be asked for, without its article."],
	"rules/field.treating-rates": [
		"treating rates",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.maximum-treating-pressure": [
		"maximum treating pressure",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.water-sources": [
		"water sources",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.recycled-water-share": [
		"recycled water share",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.additive-purposes": [
		"additive purposes",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.additive-suppliers": [
		"additive suppliers",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.ingredient-cas-numbers": [
		"ingredient CAS numbers",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.ingredient-shares": [
		"ingredient shares",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.flowback-plan": [
		"flowback plan",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.hydrogen-sulfide-statement": [
		"hydrogen sulfide statement",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.offset-wells": [
		"offset wells",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.water-wells": ["water wells", "A field that a filing may be asked for, without its article."],
	"rules/field.start-date": ["start date", "A field that a filing may be asked for, without its article."],
	"rules/field.production-string-apart-from-surface-casing": [
		"production string apart from surface casing",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.predicted-annulus-rise": [
		"predicted annulus rise",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.annulus-stop-pressure": [
		"annulus stop pressure",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.emergency-number": [
		"emergency number",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.site-address": [
		"address of the site",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.hospital": [
		"nearest hospital",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.person-in-charge": [
		"person in charge",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.crews-contacts": [
		"contacts of the crew",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.two-muster-points": [
		"second muster point, for the other wind",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.exclusion-distance": [
		"exclusion distance",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.ignition-distance": [
		"no-smoking distance",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.radio-silence-distance": [
		"radio silence distance",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.gas-alarms": [
		"gas alarm set points",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.silica-controls": [
		"silica controls",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.plan-for-a-screen-out": [
		"plan for a screen-out",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.place-of-returned-water": [
		"destination of returned water",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.eyewash": [
		"place of the eyewash",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.wind-limit": [
		"wind limit of lifting",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.lightning-distance": [
		"lightning distance",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.search-for-neighbors": [
		"statement that the area was searched",
		"A field that a filing may be asked for, without its article.",
	],
	"rules/field.way-to-open-toe": [
		"way in which the first stage is opened",
		"A field that a filing may be asked for, without its article.",
	],
} as const satisfies Entries;
