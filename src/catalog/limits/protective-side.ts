import type { Operator } from "./limit.ts";
import type { MeasureName } from "./measures.ts";

type Side = "least" | "most";

/**
 * Measures on which only one side of a boundary protects anybody: a fall of test pressure of *at least* 10 percent, or a lap of
 * *at most* 100 ft, is a slip of the pen. Measures left out may be bounded either way. Conditions (`if`, `when`) may be too.
 */
const PROTECTS: Readonly<Partial<Record<MeasureName, Side>>> = {
	"liner lap": "least",
	"cement top above shoe": "least",
	"cement top above flow zone": "least",
	"cement top above previous shoe": "least",
	"cement top above perforations": "least",
	"cement top above kickoff": "least",
	"cement top above protected water": "least",
	"cement top above formation top": "least",
	"cement top above formation base": "least",
	"cement pumped over calculated": "least",
	"sacks of cement": "least",
	"shoe cement length": "least",
	"wait on cement": "least",
	"strength at drill-out": "least",
	strength: "least",
	"free fluid": "most",
	"test hold": "least",
	"test fall": "most",
	"test fall in pressure": "most",
	"internal yield": "least",
	"maximum treating pressure": "most",
	"relief valve setting": "most",
	"preventer working pressure": "least",
	"shoe test equivalent": "least",
	"annulus stop pressure": "most",
	"line test pressure": "least",
	"clearance each side of coupling": "least",
	"clearance each side of pipe": "least",
	"coupling clearance on diameter": "least",
	"pipe clearance on diameter": "least",
	"protected water to perforations": "least",
	distance: "least",
	"hydrogen sulfide": "most",
	// Measures that engineering practice bounds, and a company's own rules may
	"slurry density off design": "most",
	"cement top below plan": "most",
	"recorded bump pressure": "most",
	"highest recorded treating pressure": "most",
	"highest recorded annulus pressure": "most",
	"annulus pressure rebuilt": "most",
	"chart volume apart from record": "most",
	"longest transition time": "most",
	"zones without a plug": "most",
	"base fluid off its water": "most",
	"greatest channel index": "most",
	"highest gradient at shut-in": "most",
	"protected water without a shown seal": "most",
	"longest bonded interval": "least",
	"sections unfit for sour service": "most",
	"public places within the exposure radius": "most",
	"plug bump pressure": "most",
	"gas-flow potential": "most",
	"treating limits out of order": "most",
	"barriers short": "most",
	"factor after a single failure": "least",
	"pressure let out by a leak": "most",
	"survey interval in build and lateral": "most",
	"least slurry pumped of calculated": "least",
	"recorded preventer test": "least",
	"weakest place over mud": "least",
	"kick tolerance": "least",
	"rated pressure of preventers": "least",
	"burst factor over design factor": "least",
	"collapse factor over design factor": "least",
	"tension factor over design factor": "least",
	"triaxial factor over design factor": "least",
	"overpull left": "least",
	"cement margin to fracture": "least",
	"cement margin to fracture as density": "least",
	"cement margin over pore": "least",
	"least standoff": "least",
	"spacer contact time": "least",
	"wellhead rating for treating": "least",
	"wellhead rating while drilling": "least",
	"confining bed thickness": "least",
	"protected water to fracture top": "least",
	"separation factor": "least",
	"least proppant placed of plan": "least",
	"least clean volume of plan": "least",
};

const SIDE: Readonly<Record<Operator, Side>> = {
	"at least": "least",
	"more than": "least",
	"at most": "most",
	"less than": "most",
};

/** The boundary that protects, where the operator is on the other side; nothing where it is right. */
export const wrongSide = (measure: MeasureName, operator: Operator): "at_least" | "at_most" | undefined => {
	const protects = PROTECTS[measure];
	if (protects === undefined || protects === SIDE[operator]) return undefined;
	return protects === "least" ? "at_least" : "at_most";
};
