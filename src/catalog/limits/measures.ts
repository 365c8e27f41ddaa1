import type { Dimension } from "../../units/dimensions.ts";

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
	"noise at the nearest dwelling": { dimension: "sound-level", subject: "well" },
	"stated limit on noise": { dimension: "sound-level", subject: "well" },
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
/** Whether a measure may be taken in a rule on such a subject: its own, or the well's. */
export const isMeasuredOn = (measure: MeasureName, subject: SubjectKind): boolean =>
	MEASURES[measure].subject === "well" || MEASURES[measure].subject === subject;
