/**
 * The stimulation: what is pumped, how long, at what pressure, and what may not be passed.
 *
 * takes  stages and their steps, the fluids, the path down the casing, ratings of every pressured element
 * gives  volumes, masses, times, pressures and horsepower; mass shares for disclosure
 * may not promise a fracture's size: geometry here is illustrative, and says so
 */
import type { AnyFormula } from "../../cite/formula.ts";
import * as stageLayout from "../../well/stage-layout.ts";
import { formulasIn } from "../formulas-in.ts";
import * as annulusRise from "./annulus-rise.ts";
import * as averages from "./averages.ts";
import * as brine from "./brine.ts";
import * as chartReadings from "./chart-readings.ts";
import * as disclosure from "./disclosure.ts";
import * as fractureHeight from "./fracture-height.ts";
import * as kgd from "./kgd.ts";
import * as leakingFracture from "./leaking-fracture.ts";
import * as leakoff from "./leakoff.ts";
import * as limitedEntry from "./limited-entry.ts";
import * as pipeFriction from "./pipe-friction.ts";
import * as pkn from "./pkn.ts";
import * as planeStrain from "./plane-strain.ts";
import * as pressureLadder from "./pressure-ladder.ts";
import * as pumped from "./pumped.ts";
import * as radial from "./radial.ts";
import * as recordedPressures from "./recorded-pressures.ts";
import * as schedule from "./schedule.ts";
import * as settling from "./settling.ts";
import * as sleeves from "./sleeves.ts";
import * as slurry from "./slurry.ts";
import * as stageCourse from "./stage-course.ts";
import * as treatingPressure from "./treating-pressure.ts";

export { stimulationResults } from "./stimulation-results.ts";

export const stimulationFormulas: readonly AnyFormula[] = formulasIn(
	stageLayout,
	sleeves,
	slurry,
	schedule,
	treatingPressure,
	pipeFriction,
	planeStrain,
	pkn,
	kgd,
	radial,
	fractureHeight,
	leakoff,
	settling,
	pumped,
	recordedPressures,
	chartReadings,
	brine,
	disclosure,
	pressureLadder,
	stageCourse,
	limitedEntry,
	averages,
	leakingFracture,
	annulusRise,
);
