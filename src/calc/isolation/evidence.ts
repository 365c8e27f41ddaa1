import type { CasingString, CementActual } from "../../well/well.ts";
import type { CementEvidence, SteelEvidence } from "../results.ts";

/**
 * What a column's top rests on. Pumping alone proves no top: without a recorded one, or cement seen at surface, it is
 * calculated from what was pumped, and planned where not even that is recorded.
 */
export const cementEvidence = (actual: CementActual | undefined): CementEvidence => {
	if (actual === undefined) return "planned";
	const { top, returnsToSurface, evaluationLog, pumped } = actual;
	const seen =
		top?.method === "returns seen" || (returnsToSurface !== undefined && returnsToSurface.value > 0);
	if (top === undefined && !seen) return pumped.length > 0 ? "calculated" : "planned";
	if (evaluationLog !== undefined && evaluationLog !== "none") return "logged";
	if (top?.method === "temperature survey" || top?.method === "bond log" || top?.method === "tagged")
		return "logged";
	return seen ? "returns seen" : "calculated";
};

/** A test that fell further than the plan allows proves nothing. */
const passed = ({ pressureTest }: CasingString): boolean => {
	const { actual, allowedFall } = pressureTest ?? {};
	if (actual === undefined) return false;
	return actual.fall === undefined || allowedFall === undefined || actual.fall.value <= allowedFall.value;
};

/** What a string rests on: run where the record says so, tested where a pressure test is recorded and held. */
export const steelEvidence = (string: CasingString): SteelEvidence => {
	if (passed(string)) return "tested";
	const run = string.landed ?? string.plannedShoe ?? string.jointsRun ?? string.cement?.actual;
	return run === undefined ? "planned" : "run";
};

/** Neither a planned column nor one that is only calculated is a verified one. */
export const isVerified = (evidence: CementEvidence | SteelEvidence): boolean =>
	evidence !== "planned" && evidence !== "run" && evidence !== "calculated";
