import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { annulusIntervals, annulusVolume } from "../../../src/calc/cement/annulus.ts";
import { boreIntervals, boreVolume, DATUM, pathDown } from "../../../src/calc/cement/bore.ts";
import type { Well } from "../../../src/well/well.ts";
import { hole, md, type Run, string, well } from "../a-well.ts";

/** bbl a foot and square inch, by its definition: 42 gal of 231 in³. */
const PER_FOOT = ((Math.PI / 4) * 12) / (42 * 231);

/** A well of three holes and three strings; the sizes and depths of the two inner strings are for the test to choose. */
const threeStrings = (outer: readonly Run[], inner: readonly Run[], washout = 0.05): Well => {
	const holes = [
		hole("conductor", 26, 20, 120),
		hole("surface", 17.5, 120, 2015, { washout }),
		hole("production", 12.25, 2015, 9020, { washout: washout / 2 }),
	] as const;
	return well(holes, [
		string("conductor", holes[0], 22, [[20, 19.124, 118]]),
		string("surface", holes[1], 22, outer, { within: "conductor" }),
		string("production", holes[2], 22, inner, { within: "surface" }),
	]);
};

const runs = (depth: number) =>
	fc
		.array(fc.double({ min: 0.02, max: 0.98, noNaN: true }), { maxLength: 3 })
		.map((cuts) =>
			[...[...new Set(cuts)].sort((a, b) => a - b), 1].map((cut): number => 22 + cut * (depth - 22)),
		);

const outerRuns = runs(2000).map((bottoms) =>
	bottoms.map((bottom, i): Run => [13.375, [12.615, 12.515, 12.415, 12.347][i] ?? 12.715, bottom]),
);
const innerRuns = runs(9000).map((bottoms) =>
	bottoms.map(
		(bottom, i): Run => [[9.625, 7.625, 7, 5.5][i] ?? 5, [8.681, 6.875, 6.276, 4.892][i] ?? 4.4, bottom],
	),
);

/** What surrounds the production string, asked foot by foot: the test's own reading of the well. */
const byTheFoot = ({ strings, holes }: Well, from: number, to: number, feet: number): number => {
	const [conductor, surface, production] = strings;
	const count = Math.round((to - from) / feet);
	const step = (to - from) / count;
	let volume = 0;
	for (let i = 0; i < count; i++) {
		const at = from + (i + 0.5) * step;
		const pipe = production?.sections.find((s) => at < s.bottom.value)?.outsideDiameter.value ?? Number.NaN;
		const casing =
			at < 2000 ? surface?.sections.find((s) => at < s.bottom.value)?.insideDiameter.value : undefined;
		const rock = holes.find((h) => at < h.bottom.value);
		const around = casing ?? (rock?.diameter.value ?? Number.NaN) * (1 + (rock?.washout?.value ?? 0));
		volume += PER_FOOT * (around ** 2 - pipe ** 2) * step;
	}
	expect(conductor).toBeDefined();
	return volume;
};

const volumeBetween = (of: Well, from: number, to: number): number => {
	const production = of.strings.at(-1);
	if (production === undefined) throw new Error("a well without strings");
	return annulusVolume(annulusIntervals(of, production, "washed-out hole", md(from), md(to))).value;
};

describe("annulus of tapered strings in stepped holes", () => {
	test("agrees with a count foot by foot", () => {
		fc.assert(
			fc.property(
				outerRuns,
				innerRuns,
				fc.double({ min: 0, max: 0.2, noNaN: true }),
				(outer, inner, washout) => {
					const of = threeStrings(outer, inner, washout);
					const exact = volumeBetween(of, 22, 9000);
					// One foot can lie on the wrong side of each change, at most a handful, of a ring below half a barrel.
					expect(Math.abs(exact - byTheFoot(of, 22, 9000, 1))).toBeLessThan(4);
				},
			),
			{ numRuns: 40 },
		);
	});

	test("pieces sum to the whole, wherever it is cut", () => {
		const cut = fc.double({ min: 30, max: 8990, noNaN: true });
		fc.assert(
			fc.property(outerRuns, innerRuns, fc.array(cut, { maxLength: 6 }), (outer, inner, cuts) => {
				const of = threeStrings(outer, inner);
				const ends = [22, ...cuts.sort((a, b) => a - b), 9000];
				const parts = ends.slice(1).map((end, i) => volumeBetween(of, ends[i] ?? 22, end));
				const whole = volumeBetween(of, 22, 9000);
				expect(Math.abs(parts.reduce((sum, part) => sum + part, 0) - whole)).toBeLessThan(1e-6);
			}),
		);
	});

	test("a liner outside is its pipe from its top down, and above it the casing that it hangs in", () => {
		const holes = [
			hole("surface", 17.5, 20, 2000),
			hole("drilling", 12.25, 2000, 6000),
			hole("production", 8.5, 6000, 9000),
		] as const;
		const strings = [
			string("surface", holes[0], 22, [[13.375, 12.615, 2000]]),
			string("drilling", holes[1], 1800, [[9.625, 8.681, 6000]], { kind: "liner", within: "surface" }),
			string("production", holes[2], 22, [[5.5, 4.67, 9000]], { within: "drilling" }),
		] as const;
		const around = annulusIntervals(well(holes, strings), strings[2], "gauge hole", md(22), md(9000));
		expect(
			around.map(({ top, bottom, surroundings, outer }) => [
				top.value,
				bottom.value,
				surroundings,
				outer.value,
			]),
		).toEqual([
			[22, 1800, "cased", 12.615],
			[1800, 2000, "cased", 8.681],
			[2000, 6000, "cased", 8.681],
			[6000, 9000, "open hole", 8.5],
		]);
	});

	test("grows with every foot and with washout", () => {
		const deep = fc.double({ min: 100, max: 8000, noNaN: true });
		fc.assert(
			fc.property(innerRuns, deep, fc.double({ min: 1, max: 900, noNaN: true }), (inner, from, length) => {
				const of = threeStrings([[13.375, 12.615, 2000]], inner, 0.02);
				const wide = threeStrings([[13.375, 12.615, 2000]], inner, 0.1);
				expect(volumeBetween(of, from, from + length)).toBeGreaterThan(
					volumeBetween(of, from, from + length / 2),
				);
				expect(volumeBetween(wide, 22, 9000)).toBeGreaterThan(volumeBetween(of, 22, 9000));
			}),
		);
	});

	test("the rathole under the shoe outside is still the larger hole", () => {
		const of = threeStrings([[13.375, 12.615, 2000]], [[9.625, 8.681, 9000]], 0);
		const intervals = annulusIntervals(of, of.strings[2] ?? fail(), "gauge hole", md(1990), md(2030));
		expect(intervals.map((i) => [i.surroundings, i.outer.value, i.length.value])).toEqual([
			["cased", 12.615, 10],
			["open hole", 17.5, 15],
			["open hole", 12.25, 15],
		]);
	});

	test("a gauge basis leaves washout out", () => {
		const of = threeStrings([[13.375, 12.615, 2000]], [[9.625, 8.681, 9000]], 0.1);
		const outer = (basis: "gauge hole" | "washed-out hole" | "caliper") =>
			annulusIntervals(of, of.strings[2] ?? fail(), basis, md(5000), md(6000)).map((i) => i.outer.value);
		expect(outer("gauge hole")).toEqual([12.25]);
		expect(outer("washed-out hole")[0]).toBeCloseTo(12.25 * 1.05, 12);
		expect(outer("caliper")[0]).toBeCloseTo(12.25 * 1.05, 12);
	});

	test("nothing stands between a depth and itself", () => {
		const of = threeStrings([[13.375, 12.615, 2000]], [[9.625, 8.681, 9000]]);
		expect(volumeBetween(of, 3000, 3000)).toBe(0);
	});
});

const fail = (): never => {
	throw new Error("no such string");
};

describe("a liner", () => {
	const holes = [hole("surface", 12.25, 20, 5000), hole("production", 8.5, 5000, 9000)] as const;
	const casing = string("casing", holes[0], 22, [[9.625, 8.681, 4990]]);
	const liner = string("liner", holes[1], 4700, [[5.5, 4.67, 8990]], { kind: "liner", within: "casing" });
	const of = well(holes, [casing, liner]);

	test("has a bore, not a ring, above its top", () => {
		const [above, lap] = annulusIntervals(of, liner, "gauge hole", md(4600), md(4800));
		expect(above?.inner).toBeUndefined();
		expect(above?.capacity.value).toBeCloseTo(PER_FOOT * 8.681 ** 2, 12);
		expect(lap?.capacity.value).toBeCloseTo(PER_FOOT * (8.681 ** 2 - 5.5 ** 2), 12);
	});

	test("is reached through the casing it hangs in, and through its tieback once there is one", () => {
		const down = pathDown(of.strings, "liner", md(8000));
		expect(down.map((b) => [b.insideDiameter.value, b.top.value, b.bottom.value])).toEqual([
			[8.681, 22, 4700],
			[4.67, 4700, 8000],
		]);
		const tieback = string("tieback", holes[0], 22, [[5.5, 4.778, 4700]], {
			kind: "tieback",
			within: "casing",
		});
		const tied = pathDown([casing, liner, tieback], "liner", md(8000));
		expect(tied.map((b) => b.insideDiameter.value)).toEqual([4.778, 4.67]);
	});
});

describe("the bore", () => {
	const only = hole("h", 12.25, 20, 9000);
	const tapered = string("s", only, 22, [
		[9.625, 8.535, 3000],
		[9.625, 8.681, 8990],
	]);

	test("is counted by sections, and above the hanger goes on as its first", () => {
		const volume = boreVolume(boreIntervals(tapered, DATUM, md(4000))).value;
		expect(volume).toBeCloseTo(PER_FOOT * (3000 * 8.535 ** 2 + 1000 * 8.681 ** 2), 8);
	});

	test("pieces sum to the whole", () => {
		fc.assert(
			fc.property(fc.double({ min: 1, max: 8900, noNaN: true }), (cut) => {
				const part = (a: number, b: number) => boreVolume(boreIntervals(tapered, md(a), md(b))).value;
				expect(Math.abs(part(0, cut) + part(cut, 8990) - part(0, 8990))).toBeLessThan(1e-6);
			}),
		);
	});
});
