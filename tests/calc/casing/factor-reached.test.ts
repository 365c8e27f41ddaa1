import { describe, expect, test } from "vitest";
import { loadCase } from "../../../src/calc/casing/loads/load-case.ts";
import type { StringContext } from "../../../src/calc/casing/loads/string-frame.ts";
import { openGaps } from "../../../src/calc/gaps.ts";
import type { LoadCaseResults } from "../../../src/calc/results.ts";
import { hole, straightDown, string, well } from "../a-well.ts";
import { given } from "../given.ts";

const only = hole("production", 8.5, 20, 9000, { mud: 9 });
const production = string("production", only, 20, [
	[7, 6.094, 4000],
	[7, 6.184, 9000],
]);

/** A line of one depth. */
const line = (load: number, rating: number): LoadCaseResults["line"] => ({
	columns: { md: "measured-depth", tvd: "true-vertical-depth", load: "pressure", rating: "pressure" },
	rows: [{ md: 5000, tvd: 5000, load, rating }],
	from: { kind: "constant", name: "given by a test", source: { key: "definition" } },
});

describe("a factor beside the one that is asked for", () => {
	const context = {
		well: well([only], [production]),
		path: straightDown,
		string: production,
		gaps: openGaps(),
	} as unknown as StringContext;
	const reached = (rating: number) =>
		loadCase(context, {
			kind: "burst",
			situation: "evacuation",
			line: line(1000, rating),
			required: given("ratio", 1.25),
		})[0]?.reached;

	test("is reached at, missed under, reached over it", () => {
		expect([reached(1250), reached(1249), reached(1251)]).toEqual([true, false, true]);
	});
});
