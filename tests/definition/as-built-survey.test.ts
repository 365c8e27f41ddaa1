import { describe, expect, it } from "vitest";
import { validate } from "../../src/definition/validate.ts";
import { sideFile, starterTree } from "./starter-trees.ts";

/*
 * Minimum curvature, written out again here: the survey that ships as an example must be one that a hole can have,
 * whatever the calculation makes of it.
 * Source: Taylor and Mason 1972 (SPE 3362); checked on its usual worked station pair below.
 */
interface Station {
	readonly md: number;
	readonly inclination: number;
	readonly azimuth: number;
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

const tangent = ({ inclination, azimuth }: Station): readonly [number, number, number] => {
	const [i, a] = [radians(inclination), radians(azimuth)];
	return [Math.sin(i) * Math.cos(a), Math.sin(i) * Math.sin(a), Math.cos(i)];
};

const step = (from: Station, to: Station) => {
	const [u, v] = [tangent(from), tangent(to)];
	const half = Math.hypot(u[0] - v[0], u[1] - v[1], u[2] - v[2]) / 2;
	const dogleg = 2 * Math.asin(Math.min(1, half));
	const length = to.md - from.md;
	const k = (length / 2) * (dogleg < 1e-9 ? 1 : (2 / dogleg) * Math.tan(dogleg / 2));
	return {
		north: k * (u[0] + v[0]),
		east: k * (u[1] + v[1]),
		down: k * (u[2] + v[2]),
		severity: ((dogleg * 180) / Math.PI / length) * 100,
	};
};

const stations: readonly Station[] = sideFile("horizontal-as-built-survey.csv")
	.trim()
	.split("\n")
	.slice(1)
	.map((line) => {
		const [md = Number.NaN, inclination = Number.NaN, azimuth = Number.NaN] = line.split(",").map(Number);
		return { md, inclination, azimuth };
	});

const path = stations.reduce<{ at: Station; north: number; east: number; tvd: number; severity: number }[]>(
	(points, at) => {
		const last = points.at(-1);
		if (last === undefined) return [{ at, north: 0, east: 0, tvd: at.md, severity: 0 }];
		const { north, east, down, severity } = step(last.at, at);
		points.push({ at, north: last.north + north, east: last.east + east, tvd: last.tvd + down, severity });
		return points;
	},
	[],
);

describe("the survey of the as-built starter", () => {
	it("is worked with a formula that gives the published station", () => {
		// 3500 ft 15° 20°, 3600 ft 25° 45°: north 27.22, east 19.45, vertical 94.01
		// (drilling-formula page after Lapeyrouse; its ratio factor is a misprint, its positions agree).
		const { north, east, down } = step(
			{ md: 3500, inclination: 15, azimuth: 20 },
			{ md: 3600, inclination: 25, azimuth: 45 },
		);
		expect([north, east, down].map((value) => Number(value.toFixed(2)))).toEqual([27.22, 19.45, 94.01]);
	});

	it("starts at the surface, runs without gaps over 120 ft and ends at the depth drilled", () => {
		expect(stations.length).toBeGreaterThan(150);
		expect(stations[0]).toEqual({ md: 0, inclination: 0, azimuth: 0 });
		for (const [i, { md }] of stations.entries()) {
			if (i === 0) continue;
			const gap = md - (stations[i - 1]?.md ?? 0);
			expect(gap).toBeGreaterThan(0);
			expect(gap).toBeLessThanOrEqual(120);
		}
		const { value } = validate(starterTree("horizontal-as-built"));
		expect(stations.at(-1)?.md).toBe(value?.holes.at(-1)?.actual?.to?.value);
	});

	it("has the small doglegs of a real hole: gentle above the kickoff and in the lateral, near plan in the curve", () => {
		const greatest = (from: number, to: number): number =>
			Math.max(...path.filter(({ at }) => at.md > from && at.md <= to).map(({ severity }) => severity));
		expect(greatest(0, 7400)).toBeLessThan(1);
		expect(greatest(7400, 8400)).toBeLessThan(11);
		expect(greatest(8400, 16_000)).toBeLessThan(3);
		expect(path.some(({ severity }, i) => i > 0 && severity > 0.01)).toBe(true);
	});

	it("stays in the target from landing to the end, and ends near the planned place", () => {
		const target = { top: 7922, base: 8090 };
		for (const { at, tvd } of path) {
			if (at.md < 8347) continue;
			expect(tvd).toBeGreaterThan(target.top);
			expect(tvd).toBeLessThan(target.base);
		}
		const end = path.at(-1);
		// Plan: 5729.578 / 9.5 = 603.1 ft of radius, then 7500 ft on azimuth 338°.
		const planned = 5729.578 / 9.5 + 7500;
		const [north, east] = [planned * Math.cos(radians(338)), planned * Math.sin(radians(338))];
		expect(Math.hypot((end?.north ?? 0) - north, (end?.east ?? 0) - east)).toBeLessThan(100);
		expect(Math.abs((end?.tvd ?? 0) - (7400 + 5729.578 / 9.5))).toBeLessThan(10);
	});

	it("has a record for each stage, none of them above a pump kickout unless a pump stopped", () => {
		const rows = sideFile("horizontal-as-built-stages.csv")
			.trim()
			.split("\n")
			.slice(1)
			.map((line) => line.split(","));
		const { value } = validate(starterTree("horizontal-as-built"));
		const stages = value?.stimulation?.stages;
		expect(rows.map(([stage]) => Number(stage))).toEqual(
			Array.from({ length: stages?.layout?.count.value ?? 0 }, (_, i) => i + 1),
		);
		const ceiling = value?.stimulation?.limits?.relief_valve?.value ?? 0;
		for (const [, , , average, maximum] of rows) {
			expect(Number(average)).toBeLessThan(Number(maximum));
			expect(Number(maximum)).toBeLessThan(ceiling);
		}
		// Mass per stage from the treatment's steps: 42 gal/bbl × Σ(concentration × clean volume).
		const planned = (stages?.treatment.steps ?? []).reduce((sum, { concentration, clean_volume }) => {
			const volume = "flush_to" in clean_volume ? 0 : clean_volume.value;
			return sum + 42 * (concentration?.value ?? 0) * volume;
		}, 0);
		expect(planned).toBeCloseTo(264_600, 0);
		const near = rows.filter(([, , , , , , , , mass]) => Math.abs(Number(mass) / planned - 1) < 0.02);
		expect(near.length).toBe(rows.length - 1);
	});
});
