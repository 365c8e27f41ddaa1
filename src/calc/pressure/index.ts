/**
 * Pressures of fluids and rock in the hole.
 *
 * takes  densities, gradients, depths, cross-sections and rates
 * gives  hydrostatic and friction pressures, fracture gradients, shoe strength, kick tolerance, temperature
 * may not rate pipe, or judge a margin against a rule
 */
import type { AnyFormula } from "../../cite/formula.ts";
import { formulasIn } from "../formulas-in.ts";
import * as binghamFlow from "./bingham-flow.ts";
import * as fractureGradient from "./fracture-gradient.ts";
import * as herschelBulkley from "./herschel-bulkley.ts";
import * as hydrostatic from "./hydrostatic.ts";
import * as kickTolerance from "./kick-tolerance.ts";
import * as movingPipe from "./moving-pipe.ts";
import * as openHole from "./open-hole.ts";
import * as rheometer from "./rheometer.ts";
import * as shoeStrength from "./shoe-strength.ts";
import * as window from "./window.ts";

export { pressureResults } from "./pressure-results.ts";

export const pressureFormulas: readonly AnyFormula[] = formulasIn(
	hydrostatic,
	fractureGradient,
	shoeStrength,
	kickTolerance,
	openHole,
	binghamFlow,
	rheometer,
	herschelBulkley,
	movingPipe,
	window,
);
