/**
 * What stands between the water and the treated rock.
 *
 * takes  the path, strings, cement columns with their evidence, water, flow zones, perforations, wells nearby
 * gives  layers at any depth, counts across each zone in each part of the well's life, gaps, separations, confining beds,
 *        how near other wells come, and whether the fractures may reach them
 * may not count a planned column as verified, or say that anything is isolated
 */
import type { AnyFormula } from "../../cite/formula.ts";
import { formulasIn } from "../formulas-in.ts";
import * as abandonment from "./abandonment.ts";
import * as bond from "./bond.ts";
import * as neighboringWells from "./neighboring-wells.ts";
import * as separation from "./separation.ts";

export { cementSpans, isolationResults } from "./isolation-results.ts";
export { layersAt } from "./layers.ts";

export const isolationFormulas: readonly AnyFormula[] = formulasIn(
	separation,
	bond,
	neighboringWells,
	abandonment,
);
