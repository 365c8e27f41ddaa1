/**
 * What may be measured on a well, a string, an annulus or a neighbor.
 *
 * takes  a case: the well, what was computed of it, and the one thing measured
 * gives  a value with its origin, bounds on it, what is missing, or why it has no meaning here
 * may not  compare, or hold a number of any rule
 */
import type { MeasureName } from "../../catalog/limits/measures.ts";
import { atTheSameTimeMeasures } from "./at-the-same-time.ts";
import { barrierMeasures } from "./barriers.ts";
import { casingLoadMeasures } from "./casing-loads.ts";
import { cementHeights } from "./cement.ts";
import { cementJobMeasures } from "./cement-job.ts";
import { cementMarginMeasures } from "./cement-margins.ts";
import { drilledOutMeasures } from "./drilled-out.ts";
import { jobEquipmentMeasures } from "./job-equipment.ts";
import { neighboringWellMeasures } from "./neighboring-wells.ts";
import { noiseMeasures } from "./noise.ts";
import { openHoleMeasures } from "./open-hole.ts";
import { pressureMeasures } from "./pressure.ts";
import type { Measure } from "./reading.ts";
import { recordMeasures } from "./records.ts";
import { sealMeasures } from "./seal.ts";
import { settingMeasures } from "./setting.ts";
import { shoeMeasures } from "./shoe.ts";
import { siteMeasures } from "./site.ts";
import { sizeMeasures } from "./size.ts";
import { strengthMeasures } from "./strength.ts";
import { treatmentMeasures } from "./treatment.ts";
import { treatmentLimitMeasures } from "./treatment-limits.ts";

/** Every measure of the vocabulary; one without code does not compile. */
export const MEASURE_CODE: Readonly<Record<MeasureName, Measure>> = {
	...shoeMeasures,
	...cementHeights,
	...strengthMeasures,
	...pressureMeasures,
	...sizeMeasures,
	...siteMeasures,
	...openHoleMeasures,
	...casingLoadMeasures,
	...cementJobMeasures,
	...cementMarginMeasures,
	...treatmentMeasures,
	...treatmentLimitMeasures,
	...settingMeasures,
	...jobEquipmentMeasures,
	...drilledOutMeasures,
	...neighboringWellMeasures,
	...recordMeasures,
	...atTheSameTimeMeasures,
	...noiseMeasures,
	...sealMeasures,
	...barrierMeasures,
};
