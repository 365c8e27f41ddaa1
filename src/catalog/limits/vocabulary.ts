import type { Dimension } from "../../units/dimensions.ts";

/**
 * The words a limit may be written in: what may be measured, which facts a limit may hang on, which fields a filing may
 * ask for, and which forms each check takes. Words only: `rules/` holds the code that answers to each of them.
 */

/**
 * What one finding is made on. A *hole* is one drilled section, a *stack* the preventers mounted on one string, an *offset
 * well* one other bore near this one. Stages are judged together, by the worst of them.
 */
export const SUBJECT_KINDS = [
	"well",
	"string",
	"annulus",
	"neighbor",
	"hole",
	"stack",
	"offset well",
] as const;
export type SubjectKind = (typeof SUBJECT_KINDS)[number];

/** Further words that some measures need beside the number. */
export type Parameter = "along" | "zone" | "after" | "cured_at" | "formation" | "within" | "from";

export interface MeasureEntry {
	/** Fixes the units that a limit on it may be written in. */
	readonly dimension: Dimension;
	readonly subject: SubjectKind;
	/** Parameters that must stand beside it, and those that may. */
	readonly needs?: readonly Parameter[];
	readonly may?: readonly Parameter[];
}

export const MEASURES = {
	// Depths of a string
	"string length": { dimension: "length", subject: "string" },
	"joint length": { dimension: "length", subject: "string" },
	"shoe below ground": { dimension: "depth-below-ground", subject: "string" },
	"shoe vertical depth": {
		dimension: "true-vertical-depth",
		subject: "string",
	},
	"shoe along the hole": { dimension: "measured-depth", subject: "string" },
	"shoe below protected water": { dimension: "offset", subject: "string" },
	"shoe below formation top": {
		dimension: "offset",
		subject: "string",
		needs: ["formation"],
	},
	"shoe below formation base": {
		dimension: "offset",
		subject: "string",
		needs: ["formation"],
	},
	"shoe below top of competent rock": {
		dimension: "offset",
		subject: "string",
	},
	"shoe below nearby water wells": {
		dimension: "offset",
		subject: "string",
		needs: ["within"],
	},
	"liner lap": { dimension: "offset", subject: "string" },
	// Cement
	"cement top above shoe": {
		dimension: "offset",
		subject: "string",
		needs: ["along"],
	},
	"cement top above flow zone": {
		dimension: "offset",
		subject: "string",
		needs: ["along"],
	},
	"cement top above previous shoe": {
		dimension: "offset",
		subject: "string",
		needs: ["along"],
	},
	"cement top above perforations": {
		dimension: "offset",
		subject: "string",
		needs: ["along"],
	},
	"cement top above kickoff": {
		dimension: "offset",
		subject: "string",
		needs: ["along"],
	},
	"cement top above protected water": {
		dimension: "offset",
		subject: "string",
		needs: ["along"],
	},
	"cement top above formation top": {
		dimension: "offset",
		subject: "string",
		needs: ["along", "formation"],
	},
	"cement top above formation base": {
		dimension: "offset",
		subject: "string",
		needs: ["along", "formation"],
	},
	"cement pumped over calculated": { dimension: "ratio", subject: "string" },
	"sacks of cement": { dimension: "count", subject: "string" },
	"shoe cement length": {
		dimension: "offset",
		subject: "string",
		needs: ["along"],
	},
	"wait on cement": { dimension: "duration", subject: "string" },
	"strength wanted at drill-out": { dimension: "pressure", subject: "string" },
	"strength when drilled out": { dimension: "pressure", subject: "string" },
	"wellhead rating at the casing test": { dimension: "pressure", subject: "string" },
	"lead slurry above the treated interval": { dimension: "offset", subject: "string" },
	"spacer plastic viscosity": { dimension: "plastic-viscosity", subject: "string" },
	"cementing line test": { dimension: "pressure", subject: "string" },
	"highest cementing pressure": { dimension: "pressure", subject: "string" },
	"depth of shallow cement class": { dimension: "true-vertical-depth", subject: "string" },
	"stated maximum pull": { dimension: "force", subject: "string" },
	"allowed pull": { dimension: "force", subject: "string" },
	"production packer below cement top": { dimension: "offset", subject: "string" },
	"preventers over the hole": { dimension: "count", subject: "hole" },
	"planned shoe test over fluid below": { dimension: "density", subject: "string" },
	"planned shoe test": { dimension: "density", subject: "string" },
	"fracture gradient at the shoe": { dimension: "density", subject: "string" },
	"hold-down while cementing": { dimension: "force", subject: "string" },
	"cement top below water zone": { dimension: "offset", subject: "string" },
	"strength at drill-out": {
		dimension: "pressure",
		subject: "string",
		needs: ["zone"],
	},
	strength: {
		dimension: "pressure",
		subject: "string",
		needs: ["zone", "after"],
		may: ["cured_at"],
	},
	"free fluid": { dimension: "free-fluid", subject: "string", needs: ["zone"] },
	// Pressure
	"test pressure": { dimension: "pressure", subject: "string" },
	"test hold": { dimension: "duration", subject: "string" },
	"test fall": { dimension: "share", subject: "string" },
	"test fall in pressure": { dimension: "pressure", subject: "string" },
	"internal yield": { dimension: "pressure", subject: "string" },
	"maximum treating pressure": { dimension: "pressure", subject: "well" },
	"relief valve setting": { dimension: "pressure", subject: "well" },
	"preventer working pressure": { dimension: "pressure", subject: "string" },
	"fracture pressure at the shoe": { dimension: "pressure", subject: "string" },
	"new hole before shoe test": { dimension: "length", subject: "string" },
	"shoe test equivalent": { dimension: "density", subject: "string" },
	"heaviest fluid below the shoe": { dimension: "density", subject: "string" },
	"annulus stop pressure": { dimension: "pressure", subject: "annulus" },
	"predicted annulus rise": { dimension: "pressure", subject: "annulus" },
	"outer shoe vertical depth": { dimension: "true-vertical-depth", subject: "annulus" },
	// Records, against what was designed
	"least slurry pumped of calculated": { dimension: "share", subject: "string" },
	"slurry density off design": { dimension: "density", subject: "string" },
	"stated slurry density window": { dimension: "density", subject: "string" },
	"lift off calculated": { dimension: "share", subject: "string" },
	"cement top below plan": { dimension: "offset", subject: "string" },
	"recorded bump pressure": { dimension: "pressure", subject: "string" },
	"allowed bump pressure": { dimension: "pressure", subject: "string" },
	"planned shoe test equivalent": { dimension: "density", subject: "string" },
	"shoe test over fluid below": { dimension: "density", subject: "string" },
	"planned test pressure": { dimension: "pressure", subject: "string" },
	"planned test hold": { dimension: "duration", subject: "string" },
	"allowed test fall": { dimension: "share", subject: "string" },
	"highest recorded treating pressure": { dimension: "pressure", subject: "well" },
	"line test pressure": { dimension: "pressure", subject: "well" },
	"least element allowed": { dimension: "pressure", subject: "well" },
	"least proppant placed of plan": { dimension: "share", subject: "well" },
	"least clean volume of plan": { dimension: "share", subject: "well" },
	"greatest channel index": { dimension: "count", subject: "string" },
	"base fluid off its water": { dimension: "density", subject: "well" },
	"zones without a plug": { dimension: "count", subject: "well" },
	"chart volume apart from record": { dimension: "share", subject: "well" },
	"highest gradient at shut-in": { dimension: "pressure-gradient", subject: "well" },
	"highest recorded annulus pressure": { dimension: "pressure", subject: "annulus" },
	"longest bonded interval": { dimension: "length", subject: "string" },
	"annulus pressure rebuilt": { dimension: "pressure", subject: "annulus" },
	"protected water without a shown seal": { dimension: "count", subject: "well" },
	"recorded preventer test": { dimension: "pressure", subject: "stack" },
	"planned preventer test": { dimension: "pressure", subject: "stack" },
	// Sizes
	"clearance each side of coupling": {
		dimension: "diameter",
		subject: "string",
	},
	"clearance each side of pipe": { dimension: "diameter", subject: "string" },
	"coupling clearance on diameter": {
		dimension: "diameter",
		subject: "string",
	},
	"pipe clearance on diameter": { dimension: "diameter", subject: "string" },
	"pipe diameter": { dimension: "diameter", subject: "string" },
	// Open hole and well control
	"mud over pore pressure": { dimension: "density", subject: "hole" },
	"weakest place over circulating density": { dimension: "density", subject: "hole" },
	"weakest place over surge": { dimension: "density", subject: "hole" },
	"swabbed mud over pore pressure": { dimension: "density", subject: "hole" },
	"weakest place over mud": { dimension: "density", subject: "hole" },
	"kick tolerance": { dimension: "volume", subject: "hole" },
	"design kick": { dimension: "volume", subject: "hole" },
	"rated pressure of preventers": { dimension: "pressure", subject: "stack" },
	"anticipated surface pressure": { dimension: "pressure", subject: "stack" },
	"low-pressure test of preventers": { dimension: "pressure", subject: "stack" },
	"test of preventers on casing": { dimension: "pressure", subject: "stack" },
	"internal yield beneath preventers": { dimension: "pressure", subject: "stack" },
	// Loads of a string
	"burst factor over design factor": { dimension: "ratio", subject: "string" },
	"collapse factor over design factor": { dimension: "ratio", subject: "string" },
	"tension factor over design factor": { dimension: "ratio", subject: "string" },
	"triaxial factor over design factor": { dimension: "ratio", subject: "string" },
	"overpull left": { dimension: "force", subject: "string" },
	"slack-off at the block": { dimension: "force", subject: "string" },
	"hook load without friction": { dimension: "force", subject: "string" },
	"reach with the greatest friction": { dimension: "measured-depth", subject: "string" },
	"reach with the least friction": { dimension: "measured-depth", subject: "string" },
	"gas pressure on connections": { dimension: "pressure", subject: "string" },
	"sections unfit for sour service": { dimension: "count", subject: "string" },
	"public places within the exposure radius": { dimension: "count", subject: "well" },
	// The cement job
	"cement margin to fracture": { dimension: "pressure-difference", subject: "string" },
	"cement margin to fracture as density": { dimension: "density", subject: "string" },
	"cement margin over pore": { dimension: "pressure-difference", subject: "string" },
	"plug bump pressure": { dimension: "pressure", subject: "string" },
	"weakest at the bump": { dimension: "pressure", subject: "string" },
	"longest transition time": { dimension: "duration", subject: "string" },
	"thickening time left": { dimension: "duration", subject: "string" },
	"least standoff": { dimension: "share", subject: "string" },
	"spacer contact time": { dimension: "duration", subject: "string" },
	"spacer length in annulus": { dimension: "offset", subject: "string" },
	"least density step": { dimension: "density", subject: "string" },
	"gas-flow potential": { dimension: "ratio", subject: "string" },
	"hottest rock behind cement": { dimension: "temperature", subject: "string" },
	"silica by weight of cement": { dimension: "share", subject: "string" },
	"test temperature off the rock": { dimension: "temperature-difference", subject: "string" },
	// Treatment
	"simultaneous work not agreed": { dimension: "count", subject: "well" },
	"treatment before drilling ends": { dimension: "count", subject: "well" },
	"greatest proppant concentration": { dimension: "proppant-concentration", subject: "well" },
	"barriers short": { dimension: "count", subject: "well" },
	"factor after a single failure": { dimension: "ratio", subject: "well" },
	"treating limits out of order": { dimension: "count", subject: "well" },
	"pressure with half the friction reduction": { dimension: "pressure", subject: "well" },
	"lowest pump kickout": { dimension: "pressure", subject: "well" },
	"outer internal yield": { dimension: "pressure", subject: "annulus" },
	"next outer internal yield": { dimension: "pressure", subject: "annulus" },
	"inner collapse": { dimension: "pressure", subject: "annulus" },
	"pressure let out by a leak": { dimension: "pressure", subject: "annulus" },
	"wellhead rating for treating": { dimension: "pressure", subject: "well" },
	"wellhead rating while drilling": { dimension: "pressure", subject: "well" },
	"highest anticipated surface pressure": { dimension: "pressure", subject: "well" },
	"expected treating pressure": { dimension: "pressure", subject: "well" },
	"toe valve opening pressure": { dimension: "pressure", subject: "well" },
	"casing test of the treated string": { dimension: "pressure", subject: "well" },
	"annulus pressure without a leak": { dimension: "pressure", subject: "annulus" },
	// Rock above the target
	"confining bed thickness": { dimension: "offset", subject: "well" },
	"fracture top below confining bed": { dimension: "offset", subject: "well" },
	"protected water to fracture top": { dimension: "offset", subject: "well" },
	// The well and what lies around it
	"well depth below ground": {
		dimension: "depth-below-ground",
		subject: "well",
	},
	"protected water to perforations": { dimension: "offset", subject: "well" },
	"dissolved solids": { dimension: "dissolved-solids", subject: "well" },
	distance: { dimension: "distance", subject: "neighbor", needs: ["from"] },
	"hydrogen sulfide": { dimension: "gas-fraction", subject: "well" },
	"separation factor": { dimension: "ratio", subject: "offset well" },
	"survey interval in build and lateral": { dimension: "length", subject: "well" },
	"survey radius stated": { dimension: "distance", subject: "well" },
	"survey ellipse by the error model": { dimension: "distance", subject: "well" },
	"volume of the treatment": { dimension: "volume", subject: "well" },
	"volume of the greatest stage": { dimension: "volume", subject: "well" },
} as const satisfies Record<string, MeasureEntry>;

export type MeasureName = keyof typeof MEASURES;
export const MEASURE_NAMES = Object.keys(MEASURES) as readonly MeasureName[];

/** Kinds of value whose limits may be computed (greatest, least, held between). */
export const COMPUTED_KINDS = [
	"offset",
	"depth-below-ground",
	"measured-depth",
	"true-vertical-depth",
	"distance",
	"pressure",
	"density",
	"duration",
	"volume",
	"diameter",
] as const satisfies readonly Dimension[];
export type ComputedKind = (typeof COMPUTED_KINDS)[number];

/** Measures that a factor may be put on, by their kind: what it gives, and what the factor is. */
export const FACTORS = [
	{ of: "length", gives: "offset", factor: "ratio" },
	{ of: "depth-below-ground", gives: "depth-below-ground", factor: "ratio" },
	{ of: "pressure", gives: "pressure", factor: "ratio" },
	{ of: "volume", gives: "volume", factor: "ratio" },
	{ of: "force", gives: "force", factor: "ratio" },
	{ of: "density", gives: "density", factor: "ratio" },
	{ of: "offset", gives: "offset", factor: "ratio" },
	{ of: "depth-below-ground", gives: "offset", factor: "ratio" },
	{ of: "true-vertical-depth", gives: "offset", factor: "ratio" },
	{ of: "length", gives: "pressure", factor: "pressure-gradient" },
	{ of: "true-vertical-depth", gives: "pressure", factor: "pressure-gradient" },
] as const satisfies readonly {
	of: Dimension;
	gives: Dimension;
	factor: Dimension;
}[];

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

/** Whether a measure may be taken in a rule on such a subject: its own, or the well's. */
export const isMeasuredOn = (measure: MeasureName, subject: SubjectKind): boolean =>
	MEASURES[measure].subject === "well" || MEASURES[measure].subject === subject;

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

/** What a check may be given, for the reader of rules files. */
export interface CheckLimits {
	readonly subject: SubjectKind;
	readonly forms: readonly LimitForm[];
	/** The measures a threshold may be put on. */
	readonly measures: readonly MeasureName[];
}

const threshold = (subject: SubjectKind, ...measures: MeasureName[]): CheckLimits => ({
	subject,
	forms: ["threshold"],
	measures,
});
const form = (subject: SubjectKind, ...forms: LimitForm[]): CheckLimits => ({
	subject,
	forms,
	measures: [],
});

/** Every check, and the limits it takes. */
export const CHECK_LIMITS = {
	"surface-shoe-depth": threshold(
		"string",
		"shoe below protected water",
		"shoe below formation top",
		"shoe below formation base",
		"shoe below top of competent rock",
		"shoe below nearby water wells",
	),
	"shoe-depth": threshold("string", "shoe below ground", "shoe along the hole", "shoe vertical depth"),
	"shoe-seat": form("string", "judgement"),
	"shoe-test": threshold("string", "new hole before shoe test", "shoe test equivalent"),
	"shoe-strength": threshold("string", "fracture pressure at the shoe"),
	"liner-lap": threshold("string", "liner lap"),
	"cement-to-surface": {
		subject: "string",
		forms: ["at surface", "threshold"],
		measures: ["cement pumped over calculated", "sacks of cement"],
	},
	"cement-top": {
		subject: "string",
		forms: ["threshold", "at surface"],
		measures: [
			"cement top above shoe",
			"cement top above flow zone",
			"cement top above previous shoe",
			"cement top above perforations",
			"cement top above kickoff",
			"cement top above protected water",
			"cement top above formation top",
			"cement top above formation base",
		],
	},
	"cement-coverage": form("well", "covers"),
	"cement-class": form("string", "one of"),
	"cement-strength": threshold("string", "strength"),
	"free-fluid": threshold("string", "free fluid"),
	"critical-cement-length": threshold("string", "shoe cement length"),
	"wait-on-cement": threshold("string", "wait on cement", "strength at drill-out"),
	"cementing-plugs": form("string", "includes"),
	"casing-pressure-test": threshold(
		"string",
		"test pressure",
		"test hold",
		"test fall",
		"test fall in pressure",
	),
	"internal-yield-margin": threshold("string", "internal yield", "maximum treating pressure"),
	"relief-valve": threshold("string", "relief valve setting"),
	"relief-below-maximum": threshold("well", "relief valve setting"),
	"annulus-limit": {
		subject: "annulus",
		forms: ["threshold", "present"],
		measures: ["annulus stop pressure"],
	},
	"slurry-volume-record": threshold("string", "least slurry pumped of calculated"),
	"slurry-density-record": threshold("string", "slurry density off design"),
	"lift-record": threshold("string", "lift off calculated"),
	"cement-top-record": threshold("string", "cement top below plan"),
	"bump-record": threshold("string", "recorded bump pressure"),
	"float-record": form("string", "one of"),
	"returns-record": form("string", "one of"),
	"shoe-test-record": threshold("string", "shoe test equivalent", "shoe test over fluid below"),
	"casing-test-record": threshold("string", "test pressure", "test hold", "test fall"),
	"preventer-test-record": {
		subject: "stack",
		forms: ["threshold", "one of"],
		measures: ["recorded preventer test"],
	},
	"treating-pressure-record": threshold("well", "highest recorded treating pressure"),
	"stage-volume-record": threshold("well", "least proppant placed of plan", "least clean volume of plan"),
	"channel-index": threshold("string", "greatest channel index"),
	"water-blend": threshold("well", "base fluid off its water"),
	"abandonment-plan": threshold("well", "zones without a plug"),
	"chart-record": threshold("well", "chart volume apart from record"),
	"shut-in-gradient-record": threshold("well", "highest gradient at shut-in"),
	"annulus-record": threshold("annulus", "highest recorded annulus pressure"),
	"bonded-interval": threshold("string", "longest bonded interval"),
	"sustained-annulus-pressure": threshold("annulus", "annulus pressure rebuilt"),
	"squeeze-record": form("string", "one of"),
	"water-seal-record": threshold("well", "protected water without a shown seal"),
	"mud-over-pore": threshold("hole", "mud over pore pressure"),
	"circulating-density": threshold("hole", "weakest place over circulating density"),
	surge: threshold("hole", "weakest place over surge"),
	swab: threshold("hole", "swabbed mud over pore pressure"),
	"rock-over-mud": threshold("hole", "weakest place over mud"),
	"kick-tolerance": threshold("hole", "kick tolerance"),
	"preventer-rating": threshold("stack", "rated pressure of preventers"),
	"preventer-test": threshold("stack", "test of preventers on casing", "low-pressure test of preventers"),
	"burst-factor": threshold("string", "burst factor over design factor"),
	"collapse-factor": threshold("string", "collapse factor over design factor"),
	"tension-factor": threshold("string", "tension factor over design factor"),
	"triaxial-factor": threshold("string", "triaxial factor over design factor"),
	overpull: threshold("string", "overpull left"),
	reach: threshold("string", "reach with the greatest friction", "reach with the least friction"),
	"slack-off": threshold("string", "slack-off at the block"),
	"casing-test-limit": threshold("string", "test pressure"),
	"gas-tightness": threshold("string", "gas pressure on connections"),
	"sour-service": threshold("string", "sections unfit for sour service"),
	"exposure-radius": threshold("well", "public places within the exposure radius"),
	"cement-fracture-margin": threshold(
		"string",
		"cement margin to fracture",
		"cement margin to fracture as density",
	),
	"cement-pore-margin": threshold("string", "cement margin over pore"),
	"plug-bump": threshold("string", "plug bump pressure"),
	"transition-time": threshold("string", "longest transition time"),
	"thickening-time": threshold("string", "thickening time left"),
	standoff: threshold("string", "least standoff"),
	"spacer-contact": threshold("string", "spacer contact time", "spacer length in annulus"),
	"density-order": threshold("string", "least density step"),
	"gas-flow-potential": threshold("string", "gas-flow potential"),
	silica: threshold("string", "hottest rock behind cement", "silica by weight of cement"),
	"strength-test": threshold(
		"string",
		"strength at drill-out",
		"strength when drilled out",
		"test temperature off the rock",
	),
	"simultaneous-work": threshold("well", "simultaneous work not agreed"),
	"treatment-after-drilling": threshold("well", "treatment before drilling ends"),
	"proppant-concentration": threshold("well", "greatest proppant concentration"),
	"wellhead-at-test": threshold("string", "test pressure"),
	"lead-slurry-foot": threshold("string", "lead slurry above the treated interval"),
	"spacer-rheology": threshold("string", "spacer plastic viscosity"),
	"cementing-line-test": threshold("string", "cementing line test"),
	"cement-class-depth": threshold("string", "depth of shallow cement class"),
	"float-equipment": form("string", "includes"),
	"maximum-pull": threshold("string", "stated maximum pull"),
	"production-packer": threshold("string", "production packer below cement top"),
	"preventers-over-hole": threshold("hole", "preventers over the hole"),
	"planned-shoe-test": threshold("string", "planned shoe test over fluid below", "planned shoe test"),
	"pressure-boundary": form("well", "includes"),
	"casing-lift": threshold("string", "hold-down while cementing"),
	"water-zone-record": threshold("string", "cement top below water zone"),
	"pressure-ladder": threshold("well", "treating limits out of order", "line test pressure"),
	"friction-reduction": threshold("well", "pressure with half the friction reduction"),
	"expected-pressure": threshold("well", "expected treating pressure"),
	"toe-opening": threshold("well", "toe valve opening pressure"),
	"annulus-stop": threshold("annulus", "annulus stop pressure"),
	"annulus-rise": threshold("annulus", "annulus pressure without a leak"),
	"leak-into-annulus": threshold("annulus", "pressure let out by a leak"),
	"well-barriers": threshold("well", "barriers short"),
	"single-failure": threshold("well", "factor after a single failure"),
	"wellhead-rating": threshold("well", "wellhead rating for treating", "wellhead rating while drilling"),
	"confining-bed": threshold("well", "confining bed thickness", "fracture top below confining bed"),
	"fracture-separation": threshold("well", "protected water to fracture top"),
	"hole-clearance": threshold(
		"string",
		"clearance each side of coupling",
		"clearance each side of pipe",
		"coupling clearance on diameter",
		"pipe clearance on diameter",
	),
	"casing-condition": form("string", "one of"),
	centralizers: form("string", "pattern"),
	"drilling-fluid": form("string", "one of"),
	separation: threshold("well", "protected water to perforations"),
	"water-definition": threshold("well", "dissolved solids"),
	"water-samples": form("well", "samples within"),
	setback: { subject: "neighbor", forms: ["threshold", "consent"], measures: ["distance"] },
	"offset-wells": form("well", "evidence within"),
	"separation-factor": threshold("offset well", "separation factor"),
	"fracture-reach": form("offset well", "evidence beside"),
	"survey-interval": threshold("well", "survey interval in build and lateral"),
	"survey-radius": threshold("well", "survey radius stated"),
	"hydrogen-sulfide": threshold("well", "hydrogen sulfide"),
	"treatment-volume": threshold("well", "volume of the treatment", "volume of the greatest stage"),
	"listed-ingredients": form("well", "none of"),
	"filing-fields": form("well", "present"),
	notice: form("well", "deadline"),
	report: form("well", "deadline"),
	"string-notice": form("string", "deadline"),
	"string-report": form("string", "deadline"),
	document: form("well", "judgement"),
	judgement: form("well", "judgement"),
	"string-judgement": form("string", "judgement"),
} as const satisfies Record<string, CheckLimits>;

export type CheckId = keyof typeof CHECK_LIMITS;
export const CHECK_IDS = Object.keys(CHECK_LIMITS) as readonly CheckId[];
