/**
 * What can reach people: gas, noise, dust, pressured iron.
 *
 * takes  release rates, levels, concentrations and times, as stated by whoever measured them
 * gives  radii, levels and averages, each by its own published method
 * may not call any distance safe
 */
import type { AnyFormula } from "../../cite/formula.ts";
import { formulasIn } from "../formulas-in.ts";
import * as hydrogenSulfide from "./hydrogen-sulfide.ts";
import * as lineTest from "./line-test.ts";
import * as noise from "./noise.ts";
import * as silica from "./silica.ts";

export { safetyResults } from "./safety-results.ts";

export const safetyFormulas: readonly AnyFormula[] = formulasIn(hydrogenSulfide, noise, silica, lineTest);
