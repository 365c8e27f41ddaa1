/**
 * Every check: what it looks at, in words, and code for the limits that are not plain comparisons.
 *
 * takes  a case and one limit
 * gives  an outcome: a verdict, a sentence, the numbers compared, and what is missing
 * may not  hold a number of any rule; those are data
 */
import type { CheckId } from "../../catalog/limits/checks.ts";
import { barrierChecks } from "./barriers.ts";
import { casingChecks } from "./casing.ts";
import { casingLoadsChecks } from "./casing-loads.ts";
import { cementChecks } from "./cement.ts";
import { cementJobChecks } from "./cement-job.ts";
import type { Check } from "./check.ts";
import { equipmentChecks } from "./equipment.ts";
import { neighboringWellChecks } from "./neighboring-wells.ts";
import { openHoleChecks } from "./open-hole.ts";
import { paperworkChecks } from "./paperwork.ts";
import { pressureChecks } from "./pressure.ts";
import { recordChecks } from "./records.ts";
import { sealChecks } from "./seal.ts";
import { shoeChecks } from "./shoe.ts";
import { siteChecks } from "./site.ts";
import { treatmentChecks } from "./treatment.ts";
import { waterChecks } from "./water.ts";

/** Every check of the vocabulary; one without code does not compile. */
export const CHECK_CODE: Readonly<Record<CheckId, Check>> = {
	...shoeChecks,
	...cementChecks,
	...pressureChecks,
	...casingChecks,
	...waterChecks,
	...siteChecks,
	...neighboringWellChecks,
	...recordChecks,
	...sealChecks,
	...paperworkChecks,
	...openHoleChecks,
	...casingLoadsChecks,
	...cementJobChecks,
	...treatmentChecks,
	...equipmentChecks,
	...barrierChecks,
};
