import { describe, expect, test } from "vitest";
import { loadCase } from "../../../src/calc/casing/loads/load-case.ts";
import type { StringContext } from "../../../src/calc/casing/loads/string-frame.ts";
import { notReached } from "../../../src/calc/casing/not-reached.ts";
import { openGaps } from "../../../src/calc/gaps.ts";
import type { CasingResults, LoadCaseResults } from "../../../src/calc/results.ts";
import type { CasingString } from "../../../src/well/well.ts";
import { toldPlainly } from "../../told.ts";
import { hole, md, straightDown, string, well } from "../a-well.ts";
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

describe("what is told of a string that does not reach its factors", () => {
	const load = (factor: number, more: Partial<LoadCaseResults> = {}) => ({
		kind: "burst",
		situation: "shut-in-gas",
		required: given("ratio", 1.1),
		least_factor: given("ratio", factor),
		at: { md: md(5000) },
		reached: factor >= 1.1,
		governed_by: "pipe",
		...more,
	});
	const told = (...loads: readonly object[]) =>
		notReached(production as CasingString, { loads } as unknown as CasingResults);

	test("is nothing where every factor is reached, or none could be worked", () => {
		expect(told(load(1.1), load(2))).toEqual([]);
		expect(told({ ...load(1), least_factor: undefined, reached: undefined })).toEqual([]);
	});

	test("is the worst in proportion to what is asked, with its factor, depth and weakness", () => {
		const [one, ...more] = told(
			load(1.05),
			load(1.3, {
				required: given("ratio", 1.6),
				reached: false,
				kind: "tension",
				at: { md: md(40.4) } as never,
			}),
			load(1.2),
		);
		expect(more).toEqual([]);
		expect(toldPlainly(one?.what)).toBe(
			"the production string does not reach its factor of tension shut in full of gas",
		);
		expect(toldPlainly(one?.expected)).toBe("a factor of 1.6 or more");
		expect(toldPlainly(one?.found)).toBe("1.30 at 40 ft, by its pipe");
		expect(toldPlainly(one?.why)).toBe("1 more load case falls short; the results have each");
	});

	test("counts the others, names a collapse by its kind and a triaxial stress as one", () => {
		const [two] = told(load(1), load(1.01), load(1.02));
		expect(toldPlainly(two?.why)).toBe("2 more load cases fall short; the results have each");
		const [alone] = told(load(1, { kind: "collapse", governed_by: "plastic" }));
		expect(alone?.why).toBeUndefined();
		expect(toldPlainly(alone?.found)).toContain("by its plastic collapse");
		const [triaxial] = told(load(1, { kind: "triaxial" }));
		expect(toldPlainly(triaxial?.what)).toContain("its factor of triaxial stress ");
	});
});
