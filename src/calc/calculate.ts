import { type Checked, hasErrors } from "../diagnostics/diagnostic.ts";
import type { Well } from "../well/well.ts";
import { barrierResults } from "./barriers/index.ts";
import { casingResults, drillStringResults } from "./casing/index.ts";
import { cementResults } from "./cement/index.ts";
import { geologyResults } from "./depths/index.ts";
import { maybe, openGaps } from "./gaps.ts";
import { isolationResults } from "./isolation/index.ts";
import { logisticsResults } from "./logistics/index.ts";
import { pressureResults } from "./pressure/index.ts";
import type { Results } from "./results.ts";
import { safetyResults } from "./safety/index.ts";
import { siteResults } from "./site/index.ts";
import { stimulationResults } from "./stimulation/index.ts";
import { targetFaults } from "./stimulation/target-faults.ts";
import { surveyErrorOf, trajectoryResults } from "./trajectory/index.ts";
import { validityFaults } from "./validity-faults.ts";

/**
 * Everything computed of a well, once, each topic standing on those before it:
 *
 *     trajectory → geology → casing → cement → stimulation → pressure → site → isolation → logistics, safety
 *
 * @returns  no value where the path is impossible, the survey unusable, or a pipe beyond every published formula; an
 *           error for each formula that what it was given left without a number; what merely lacks an input is in `undetermined`
 */
export const calculate = (well: Well): Checked<Results> => {
	const gaps = openGaps();
	const { value: found, diagnostics } = trajectoryResults(well);
	if (found === undefined) return { diagnostics };
	const trajectory = { ...found, ...maybe("survey_error", surveyErrorOf(well, found.path, gaps)) };
	const { path } = trajectory;
	const geology = geologyResults(well, path);
	const { value: casing, diagnostics: outside } = casingResults(well, path, gaps);
	if (hasErrors(outside)) return { diagnostics: [...diagnostics, ...outside] };
	const cement = cementResults(well, path, casing, gaps);
	const stimulation = stimulationResults(well, path, casing, gaps);
	const pressure = pressureResults(well, path, gaps, casing);
	const site = siteResults(well, path, trajectory, gaps);
	const isolation = isolationResults(
		well,
		{ trajectory, casing, cement, site, ...maybe("stimulation", stimulation) },
		gaps,
	);
	const barriers = barrierResults(well, path, {
		casing,
		cement,
		pressure,
		...maybe("stimulation", stimulation),
	});
	const logistics = logisticsResults(well, { casing, cement, ...maybe("stimulation", stimulation) }, gaps);
	const safety = safetyResults(well, site, gaps);
	const value: Results = {
		trajectory,
		geology,
		casing,
		...maybe("drill_string", drillStringResults(well)),
		cement,
		...maybe("stimulation", stimulation),
		pressure,
		isolation,
		barriers,
		site,
		...maybe("logistics", logistics),
		...maybe("safety", safety),
		undetermined: gaps.undetermined,
	};
	return {
		value,
		diagnostics: [
			...diagnostics,
			...outside,
			// A path that is at fault itself passes its beds elsewhere: told once, of the path.
			...(diagnostics.length > 0 ? [] : targetFaults(well, stimulation, trajectory.landing)),
			...validityFaults(value),
		],
	};
};
