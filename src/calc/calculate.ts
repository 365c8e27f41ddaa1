import type { Checked } from "../diagnostics/diagnostic.ts";
import type { Well } from "../well/well.ts";
import { casingResults } from "./casing/index.ts";
import { cementResults } from "./cement/index.ts";
import { geologyResults } from "./depths/index.ts";
import { openGaps } from "./gaps.ts";
import type { Results } from "./results.ts";
import { trajectoryResults } from "./trajectory/index.ts";

/**
 * Everything computed of a well, once, each topic standing on those before it:
 *
 *     trajectory → geology → casing → cement → stimulation → isolation → logistics, safety
 *
 * @returns  no value where the path is impossible, the survey unusable, or a pipe beyond every published formula; what
 *           merely lacks an input is in `undetermined`
 */
export const calculate = (well: Well): Checked<Results> => {
	const gaps = openGaps();
	const { value: trajectory, diagnostics } = trajectoryResults(well);
	if (trajectory === undefined) return { diagnostics };
	const { path } = trajectory;
	const geology = geologyResults(well, path);
	const { value: casing, diagnostics: outside } = casingResults(well, path, gaps);
	if (outside.length > 0) return { diagnostics: [...diagnostics, ...outside] };
	const cement = cementResults(well, path, casing, gaps);
	return {
		value: {
			trajectory,
			geology,
			casing,
			cement,
			undetermined: gaps.undetermined,
		} as Results,
		diagnostics,
	};
};
