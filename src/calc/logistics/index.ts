/**
 * What comes down the road, and for how long.
 *
 * takes  masses and volumes computed elsewhere, payloads and the schedule
 * gives  loads, one-way trips, durations
 * may not mix loads with trips
 */
import type { AnyFormula } from "../../cite/formula.ts";
import { formulasIn } from "../formulas-in.ts";
import * as comparisons from "./comparisons.ts";
import * as durations from "./durations.ts";
import * as loads from "./loads.ts";

export { logisticsResults } from "./logistics-results.ts";

export const logisticsFormulas: readonly AnyFormula[] = formulasIn(loads, durations, comparisons);
