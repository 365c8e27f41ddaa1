/**
 * The pipe: what it withstands, and what acts on it.
 *
 * takes  sections with their dimensions, grades and threads; the path they hang in
 * gives  ratings, loads and the margins between them
 * may not round, or compare with a rule
 */
import type { AnyFormula } from "../../cite/formula.ts";
import { formulasIn } from "../formulas-in.ts";
import * as axial from "./axial.ts";
import * as collapse from "./collapse.ts";
import * as collapseConstants from "./collapse-constants.ts";
import * as collapseUnderLoad from "./collapse-under-load.ts";
import * as drillString from "./drill-string.ts";
import * as internalYield from "./internal-yield.ts";
import * as jointStrength from "./joint-strength.ts";
import * as axialForce from "./loads/axial-force.ts";
import * as buckling from "./loads/buckling.ts";
import * as hookLoads from "./loads/hook-loads.ts";
import * as leastFactor from "./loads/least-factor.ts";
import * as loadLines from "./loads/load-lines.ts";
import * as loadSections from "./loads/load-sections.ts";
import * as profiles from "./loads/profiles.ts";
import * as slackOff from "./loads/slack-off.ts";
import * as softString from "./loads/soft-string.ts";
import * as steppedProfiles from "./loads/stepped-profiles.ts";
import * as surfacePressures from "./loads/surface-pressures.ts";
import * as whyLeast from "./loads/why-least.ts";
import * as pipeBody from "./pipe-body.ts";
import * as sourService from "./sour-service.ts";
import * as tally from "./tally.ts";
import * as triaxial from "./triaxial.ts";

export { casingResults } from "./casing-results.ts";
export { drillStringResults } from "./drill-string.ts";

export const casingFormulas: readonly AnyFormula[] = formulasIn(
	pipeBody,
	internalYield,
	collapse,
	collapseConstants,
	collapseUnderLoad,
	jointStrength,
	tally,
	drillString,
	triaxial,
	axial,
	profiles,
	surfacePressures,
	loadSections,
	axialForce,
	loadLines,
	leastFactor,
	softString,
	buckling,
	slackOff,
	hookLoads,
	steppedProfiles,
	whyLeast,
	sourService,
);
