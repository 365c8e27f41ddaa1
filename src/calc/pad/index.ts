/**
 * The wells of one pad as one piece of work.
 *
 * takes  wells of one site, each calculated beside the others
 * gives  their schedule, truck loads, noise, water and sand together, for papers that speak of all of them
 * may not mix what belongs to one well: pipe, cement and depths are those of one, and it is told which
 */
import type { AnyFormula } from "../../cite/formula.ts";
import { formulasIn } from "../formulas-in.ts";
import * as sums from "./sums.ts";

export { governing, jointResults, type Member } from "./joint-results.ts";

export const padFormulas: readonly AnyFormula[] = formulasIn(sums);
