/**
 * One place, on every axis a reader may use.
 *
 * takes  a depth along the hole or straight down, the path and the datum
 * gives  the same place along the hole, straight down from the datum, and below ground
 * may not assume a datum
 */
import type { AnyFormula } from "../../cite/formula.ts";
import * as datum from "../../well/datum.ts";
import { formulasIn } from "../formulas-in.ts";
import * as marks from "./marks.ts";

export { geologyResults } from "./geology-results.ts";
export { holeMark, type MarkDatum, verticalMark } from "./marks.ts";

export const depthFormulas: readonly AnyFormula[] = formulasIn(marks, datum);
