/**
 * What stands between the water and the treated rock.
 *
 * takes  strings, cement columns with their evidence, water, perforations, neighbors' wells
 * gives  separations and counts at the base of protected water
 * may not count a planned column as verified, or say that anything is isolated
 */
import type { AnyFormula } from "../../cite/formula.ts";
import { formulasIn } from "../formulas-in.ts";
import * as separation from "./separation.ts";

export { isolationResults } from "./isolation-results.ts";

export const isolationFormulas: readonly AnyFormula[] = formulasIn(separation);
