import { bench, describe } from "vitest";
import { casingResults } from "../../src/calc/casing/index.ts";
import { openGaps } from "../../src/calc/gaps.ts";
import { trajectoryResults } from "../../src/calc/trajectory/index.ts";
import { fourStrings, STATIONS } from "./four-strings.ts";

const well = fourStrings();
const path = trajectoryResults(well).value?.path;
if (path === undefined) throw new Error("the survey gives no path");

describe(`a survey of ${STATIONS} stations`, () => {
	bench("its path", () => void trajectoryResults(well), {
		iterations: 5,
		time: 0,
		warmupIterations: 1,
		warmupTime: 0,
	});
	bench("all load cases of four strings", () => void casingResults(well, path, openGaps()), {
		iterations: 3,
		time: 0,
		warmupIterations: 1,
		warmupTime: 0,
	});
});
