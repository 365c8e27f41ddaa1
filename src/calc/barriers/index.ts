/**
 * What holds the well back in each part of its life.
 *
 * takes  strings, cement with its evidence, mud, wellhead, preventers, packer, and elements stated apart
 * gives  primary and secondary barrier by phase, element by element; what single failures bring
 * may not call an element verified that no record shows, or fill in one that the definition does not state
 */
import type { AnyFormula } from "../../cite/formula.ts";
import { formulasIn } from "../formulas-in.ts";
import * as barrierFormulas from "./barrier-formulas.ts";

export { barrierResults } from "./barrier-results.ts";

export const barriersFormulas: readonly AnyFormula[] = formulasIn(barrierFormulas);
