import { describe, expect, test } from "vitest";
import { REGISTER } from "../../../src/calc/register.ts";
import type { LoadCaseResults, Results } from "../../../src/calc/results.ts";
import { placeAt } from "../../../src/calc/trajectory/at-depth.ts";
import { pathStationsOf } from "../../../src/calc/trajectory/path.ts";
import type { KnownTable } from "../../../src/cite/known.ts";
import { findingsOf, STARTERS } from "../../starters.ts";
import { resultsOfWell } from "../../wells.ts";

/*
 * The least factor beside one found by looking at every foot of the string: the same load and rating, worked on a path
 * that is cut into feet. What was found may not be above the least of the feet, and no more than a part in a thousand
 * below it.
 */

const wells: readonly (readonly [string, Results])[] = [
	...STARTERS.map((starter) => [starter, findingsOf(starter).results] as const),
	["weak-string", resultsOfWell("weak-string")],
];

/** The same path with a station at every foot. */
const byTheFoot = (path: KnownTable): KnownTable => {
	const stations = pathStationsOf(path);
	const end = Math.floor(stations.at(-1)?.md ?? 0);
	const feet = Array.from({ length: end + 1 }, (_, md) => md);
	const depths = [...new Set([...feet, ...stations.map(({ md }) => md)])].sort((a, b) => a - b);
	return {
		...path,
		rows: depths.map((md) => {
			const place = placeAt(stations, md);
			if (place === undefined) throw new Error("above the path");
			const { tvd, north, east, inclination, azimuth } = place;
			const dogleg = stations.find((s) => s.md >= md)?.dogleg ?? 0;
			return { md, inclination, azimuth, tvd, north, east, vertical_section: 0, dogleg, build: 0, turn: 0 };
		}),
	};
};

const scanned = ({ line }: LoadCaseResults, feet: KnownTable): number => {
	if (line.from.kind !== "worked") throw new Error("a line is worked");
	const formula = REGISTER.get(line.from.formula);
	if (formula === undefined) throw new Error(line.from.formula);
	const again = formula.of({ ...line.from.inputs, path: feet } as never) as KnownTable;
	const ends = [again.rows[0]?.["md"], again.rows.at(-1)?.["md"]];
	const factors = again.rows.flatMap((row) => {
		const [md, load, rating] = [row["md"] ?? Number.NaN, row["load"] ?? 0, row["rating"] ?? Number.NaN];
		return (Number.isInteger(md) || ends.includes(md)) && load > 1 ? [rating / load] : [];
	});
	return Math.min(...factors);
};

/** The planned horizontal well is left out: the one as drilled has every case of it, a tapered string and real bends. */
const scannedWells = wells.filter(([name]) => name !== "horizontal");

describe.each(scannedWells)("least factors of %s", (_, { casing, trajectory }) => {
	const feet = byTheFoot(trajectory.path);

	test.each(Object.values(casing).map((string) => [string.id, string] as const))(
		"of the %s string are those of a scan by the foot",
		(id, { loads }) => {
			if (id !== "conductor") expect(loads.length).toBeGreaterThan(10);
			for (const each of loads) {
				const found = each.least_factor?.value;
				if (found === undefined) continue;
				const scan = scanned(each, feet);
				// Depths are told apart to 0.01 ft, and force steps at the end of a free stretch.
				expect(found, each.id).toBeLessThanOrEqual(scan * (1 + 1e-7));
				expect(found, each.id).toBeGreaterThan(scan * 0.999);
			}
		},
	);
});

describe("load cases", () => {
	test.each(wells)(
		"of %s stand in the order of the string's life, each with its depth, load, rating and factor",
		(_, { casing }) => {
			const order = ["running", "cementing", "testing", "drilling below", "stimulation", "production"];
			for (const { loads, situations } of Object.values(casing)) {
				const phases = loads.map(({ phase }) => order.indexOf(phase));
				expect(phases).toEqual(phases.toSorted((a, b) => a - b));
				const stood = situations.map(({ phase }) => order.indexOf(phase));
				expect(stood).toEqual(stood.toSorted((a, b) => a - b));
				expect(new Set(loads.map(({ id }) => id)).size).toBe(loads.length);
				for (const { least_factor, load, rating, required, reached, governed_by } of loads) {
					if (least_factor === undefined) continue;
					expect((rating?.value ?? 0) / (load?.value ?? 0)).toBeCloseTo(least_factor.value, 9);
					expect(reached).toBe(least_factor.value >= required.value);
					expect(governed_by).toMatch(
						/^(?:pipe|connection|yield|plastic|transition|elastic|(?:inner|outer) wall)$/,
					);
				}
			}
		},
	);
});
