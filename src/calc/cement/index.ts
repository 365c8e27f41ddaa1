/**
 * Cement: how much, of what, how high, and what it weighs on the hole.
 *
 * takes  a string's hole, its pipe and what surrounds it, the slurries and the record of the job
 * gives  volumes, sacks, water, displacement and the pressures when the plug lands
 * may not say whether a column is good enough, or count a planned column as proved
 */
import type { AnyFormula } from "../../cite/formula.ts";
import { formulasIn } from "../formulas-in.ts";
import * as capacity from "./capacity.ts";
import * as column from "./column.ts";
import * as gasFlow from "./gas-flow.ts";
import * as marginDensity from "./margin-density.ts";
import * as mudRemoval from "./mud-removal.ts";
import * as placement from "./placement.ts";
import * as record from "./record.ts";
import * as sacks from "./sacks.ts";
import * as setting from "./setting.ts";
import * as slurryDesign from "./slurry-design.ts";
import * as standoff from "./standoff.ts";
import * as strengthTests from "./strength-tests.ts";

export { cementResults } from "./cement-results.ts";

export const cementFormulas: readonly AnyFormula[] = formulasIn(
	capacity,
	sacks,
	slurryDesign,
	column,
	marginDensity,
	gasFlow,
	strengthTests,
	placement,
	record,
	setting,
	standoff,
	mudRemoval,
);
