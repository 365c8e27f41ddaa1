/**
 * The words a limit may be written in: which facts it may hang on, which strings and neighbors it picks, which fields a
 * filing may ask for, which events. Beside them stand what may be measured (`measures.ts`) and which limits each check
 * takes (`checks.ts`). Words only: `rules/` holds the code that answers to each of them.
 */

/** What a limit may hang on. Each is true, false, or not to be told from the definition. */
export const FACTS = [
	"exploratory well",
	"gas well",
	"oil well",
	"stimulation planned",
	"deviated string",
	"horizontal well",
	"second surface string",
	"flow zone open above the shoe",
	"treated through this string",
	"path surveyed",
	"floats did not hold",
	"plain-end pipe",
] as const;
export type FactName = (typeof FACTS)[number];
/** Facts of a string, which have no meaning for a rule on the well. */
export const STRING_FACTS: readonly FactName[] = [
	"deviated string",
	"flow zone open above the shoe",
	"treated through this string",
	"floats did not hold",
	"plain-end pipe",
];

/** How a limit picks strings: by what the trade calls them, or by what they do. */
export const STRING_SELECTORS = [
	"conductor",
	"surface",
	"first surface",
	"second surface",
	"intermediate",
	"production",
	"liner",
	"below conductor",
	"below surface",
	"treated through",
	"cement recorded",
	"shoe test recorded",
	"pressure test recorded",
	"bond log recorded",
	"squeeze recorded",
	"every string",
	"every string but conductor",
] as const;
export type StringSelector = (typeof STRING_SELECTORS)[number];
/** Selectors that ask what a string has rather than what it is called. */
export const BY_WHAT_IT_HAS: readonly StringSelector[] = [
	"treated through",
	"cement recorded",
	"shoe test recorded",
	"pressure test recorded",
	"bond log recorded",
	"squeeze recorded",
];

/** Kinds of neighbor a setback may name: words of the definition's own list. */
export const SETBACK_KINDS = [
	"dwelling",
	"school",
	"hospital",
	"place of worship",
	"public building",
	"water well",
	"public water supply",
	"spring",
	"stream",
	"lake or pond",
	"wetland",
	"road",
	"railroad",
	"property line",
	"lease line",
] as const;
export type SetbackKind = (typeof SETBACK_KINDS)[number];

/** What a distance is taken from, in the definition's words for surveyed distances. */
export const MEASURED_FROM = ["wellhead", "pad edge", "nearest equipment", "wellbore"] as const;
export type MeasuredFrom = (typeof MEASURED_FROM)[number];

/** How a cement top was found. */
export const TOP_METHODS = [
	"returns seen",
	"calculated",
	"temperature survey",
	"bond log",
	"tagged",
] as const;
export type TopMethod = (typeof TOP_METHODS)[number];

/** What a filing may be asked to carry and a definition can. */
export const FIELDS = [
	"API number",
	"permit number",
	"operator",
	"lease",
	"field",
	"county",
	"technical contact",
	"surface location",
	"coordinate datum",
	"ground elevation",
	"depth datum",
	"directional plan",
	"directional survey",
	"survey company",
	"survey dates",
	"formation tops",
	"water zones",
	"protected-water base",
	"protected-water letter",
	"confining zone",
	"pore pressures",
	"fracture gradients",
	"temperature gradient",
	"hole sizes",
	"drilling fluids",
	"pipe condition",
	"design factors",
	"cement slurries",
	"cement class",
	"cement strengths",
	"cement top method",
	"centralizers",
	"float equipment",
	"preventers",
	"casing pressure tests",
	"stage table",
	"base fluid",
	"proppants",
	"treating rates",
	"maximum treating pressure",
	"water sources",
	"recycled water share",
	"additive purposes",
	"additive suppliers",
	"ingredient CAS numbers",
	"ingredient shares",
	"flowback plan",
	"hydrogen sulfide statement",
	"offset wells",
	"water wells",
	"start date",
	"production string apart from surface casing",
	"predicted annulus rise",
	"annulus stop pressure",
	"search for neighbors",
	"way to open the toe",
	"emergency number",
	"site address",
	"hospital",
	"person in charge",
	"crew's contacts",
	"two muster points",
	"exclusion distance",
	"ignition distance",
	"radio silence distance",
	"gas alarms",
	"silica controls",
	"eyewash",
	"wind limit",
	"lightning distance",
	"plan for a screen-out",
	"place of returned water",
] as const;
export type FieldName = (typeof FIELDS)[number];

/** What happened, or is planned to: what a notice precedes or a report follows. */
export const EVENTS = [
	"location work",
	"spud",
	"drilling ends",
	"stimulation starts",
	"stimulation ends",
	"completion",
	"permit issued",
	"water withdrawal",
	"pad rig release",
	"drilling suspended",
	"physical change",
	"pressure test failed",
	"well plugged",
	"fresh-water flow",
	"adverse communication",
	"information requested",
	"long rotation in casing",
	"well idle",
	"string set",
	"string cemented",
	"casing test",
] as const;
export type EventName = (typeof EVENTS)[number];
/** Events that most wells never see: a definition that dates none has none, and nothing is due. */
export const CONTINGENT_EVENTS: readonly EventName[] = [
	"drilling suspended",
	"physical change",
	"pressure test failed",
	"well plugged",
	"fresh-water flow",
	"adverse communication",
	"information requested",
	"long rotation in casing",
	"well idle",
];
/** Events of one string, which only a rule on a string can name. */
export const STRING_EVENTS: readonly EventName[] = ["string set", "string cemented", "casing test"];

/** What an agency's form is filled from, each a table of the papers. */
export const FORM_TOPICS = [
	"well",
	"casing",
	"holes",
	"cement",
	"slurries",
	"well path",
	"formations",
	"water zones",
	"casing tests",
	"shoe tests",
	"preventers",
	"stages",
	"additives",
	"chemicals",
	"water sources",
	"annuli",
	"neighbors",
	"offset wells",
	"exposure radii",
] as const;
export type FormTopic = (typeof FORM_TOPICS)[number];

/** What cement may be asked to cover. */
export const COVERED = ["protected water", "flow zones", "target"] as const;
export type Covered = (typeof COVERED)[number];

export const LIMIT_FORMS = [
	"threshold",
	"at surface",
	"one of",
	"none of",
	"includes",
	"present",
	"covers",
	"pattern",
	"deadline",
	"evidence within",
	"evidence beside",
	"samples within",
	"consent",
	"judgement",
] as const;
/** Forms of a single limit; `all of` and `any of` join them. */
export type LimitForm = (typeof LIMIT_FORMS)[number];
