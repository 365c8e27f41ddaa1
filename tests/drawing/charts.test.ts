import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { dayOf, timetable } from "../../src/calc/logistics/phase-times.ts";
import { axisOf } from "../../src/drawing/charts/axis.ts";
import { RING, ringSpots } from "../../src/drawing/charts/ring.ts";
import { pressureLadderView } from "../../src/drawing/ladder/pressure-ladder-view.ts";
import { casesOf, tightness } from "../../src/drawing/load-lines/load-cases.ts";
import { loadLines } from "../../src/drawing/load-lines/load-lines.ts";
import { asDensity, windowLines } from "../../src/drawing/pressure-window/window-lines.ts";
import { stageRows } from "../../src/drawing/stage-plan/stage-rows.ts";
import { timeline } from "../../src/drawing/timeline/timeline.ts";
import { DRAWING_WORDS } from "../../src/drawing/words/drawing-words.ts";
import { ENGLISH } from "../../src/drawing/words/en/index.ts";
import { findingsOf, STARTERS } from "../starters.ts";
import { groupsOf, textsOf } from "./boxes.ts";
import { known, LATERAL, syntheticWell } from "./synthetic-well.ts";

const options = { units: "field", width: 504, words: ENGLISH } as const;

describe("axis", () => {
	it("puts each round value where it belongs, in the paper's unit", () => {
		const axis = axisOf("pressure", "metric", [0, 10_000], [40, 240], 30);
		expect(axis.unit).toBe("MPa");
		expect(axis.at(0)).toBe(40);
		expect(axis.at(10_000)).toBeCloseTo(240, 9);
		// 1 psi is 6894.757 Pa (NIST SP 811, Appendix B.8), so 20 MPa is 2900.755 psi.
		const twenty = axis.ticks.find((tick) => tick.value === 20);
		expect(twenty?.at).toBeCloseTo(axis.at(2900.755), 3);
	});

	it("keeps numbered ticks as far apart as asked, or shows few", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0.01, max: 1e6, noNaN: true }),
				fc.integer({ min: 40, max: 400 }),
				(most, length) => {
					const { ticks } = axisOf("pressure", "field", [0, most], [0, length], 30);
					const apart = ticks.slice(1).map((tick, i) => tick.at - (ticks[i]?.at ?? 0));
					if (ticks.length > 3) for (const gap of apart) expect(gap).toBeGreaterThan(29);
				},
			),
		);
	});
});

describe("numbers on lines", () => {
	it("stand on their own lines, none on another", () => {
		const box = { left: 0, right: 140, top: 0, bottom: 180 };
		const line = fc
			.tuple(fc.integer({ min: 10, max: 130 }), fc.integer({ min: 10, max: 130 }))
			.map(([a, b]) => [[a, 0] as const, [b, 180] as const]);
		fc.assert(
			fc.property(fc.array(line, { minLength: 1, maxLength: 9 }), (lines) => {
				const spots = ringSpots(lines, box);
				spots.forEach((spot, i) => {
					expect(spot).toBeDefined();
					if (spot === undefined) return;
					const [a = [0, 0], b = [0, 0]] = lines[i] ?? [];
					expect(spot[0]).toBeCloseTo(a[0] + ((b[0] - a[0]) * spot[1]) / 180, 6);
					for (const other of spots.slice(0, i))
						if (other !== undefined)
							expect(Math.hypot(other[0] - spot[0], other[1] - spot[1])).toBeGreaterThan(2 * RING);
				});
			}),
		);
	});
});

describe("pressure window", () => {
	it.each(STARTERS)("draws the pressures that were worked, in %s", (starter) => {
		const { well, results } = findingsOf(starter);
		const lines = windowLines(well, results);
		for (const hole of results.pressure.holes) {
			const line = lines.find((each) => each.kind === "mud" && each.hole?.id === hole.id);
			expect(line?.points.at(-1)?.pressure).toBe(hole.mud_hydrostatic_at_bottom?.value);
			// A fluid that fills the hole from the datum has its own density for an equivalent one all along.
			const density = well.holes.find(({ id }) => id === hole.id)?.fluid?.density?.value;
			if (line === undefined || density === undefined) continue;
			for (const point of asDensity(line.points, 0)) expect(point.density).toBeCloseTo(density, 9);
		}
		for (const string of well.strings) {
			const line = lines.find((each) => each.kind === "cement" && each.string?.id === string.id);
			const atShoe = results.cement[string.id]?.equivalent_density_at_shoe?.value;
			if (line === undefined || atShoe === undefined) continue;
			expect(asDensity(line.points, 0).at(-1)?.density).toBeCloseTo(atShoe, 2);
		}
		const rows = results.pressure.window.rows.length;
		const drawn = lines
			.filter(({ kind }) => kind === "pore")
			.reduce((sum, { points }) => sum + points.length, 0);
		expect(drawn).toBe(rows);
	});
});

describe("load lines", () => {
	it.each(STARTERS)("number the loads from the tightest, each with its factor, in %s", (starter) => {
		const { well, results } = findingsOf(starter);
		const drawings = loadLines(well, results, { ...options, height: 290 });
		expect(drawings.length).toBeGreaterThan(0);
		for (const string of well.strings) {
			const cases = casesOf(results.casing[string.id]?.loads ?? [], "burst");
			const order = cases.map(tightness);
			expect(order).toEqual([...order].sort((a, b) => a - b));
			const drawing = drawings.find(({ id }) => id === `load-lines-${string.id}`);
			expect(drawing === undefined).toBe(
				(["burst", "collapse", "tension"] as const).every(
					(kind) => casesOf(results.casing[string.id]?.loads ?? [], kind).length === 0,
				),
			);
			const [first] = cases;
			if (drawing === undefined || first === undefined) continue;
			const said = groupsOf(drawing)
				.filter(({ name }) => name === "label burst case 1")
				.flatMap(({ shape }) => textsOf(shape.children).map(({ text }) => text))
				.join(" ");
			expect(said).toContain(ENGLISH.situations[first.situation]);
			expect(said).toContain(first.least_factor.value.toFixed(2));
		}
	});

	it("say so of a factor that is not reached", () => {
		const { well, results } = findingsOf("horizontal");
		const casing = results.casing["surface"];
		const loads = casing?.loads.map((each) => ({ ...each, required: known("ratio", 99), reached: false }));
		const changed = { ...results, casing: { ...results.casing, surface: { ...casing, loads } } };
		const [drawing] = loadLines(well, changed as typeof results, { ...options, height: 290 });
		expect(drawing?.alternative).toContain("less than the 99.00 required");
	});
});

describe("stage plan", () => {
	it("cuts the hole into rows that meet, with every stage whole in one of them", () => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 120 }), fc.integer({ min: 0, max: 12 }), (count, clusters) => {
				const { results } = syntheticWell({
					...LATERAL,
					stages: { count, clusters, bottom: 17_110, length: 7600 / count },
				});
				const stages = results.stimulation?.stages ?? [];
				const rows = stageRows(stages, 17_260);
				rows.slice(1).forEach((row, i) => {
					expect(row.from).toBeCloseTo(rows[i]?.to ?? 0, 6);
				});
				expect(rows.flatMap((row) => row.stages.map(({ number }) => number)).sort((a, b) => a - b)).toEqual(
					stages.map(({ number }) => number),
				);
				for (const row of rows)
					for (const stage of row.stages) {
						expect(stage.bottom.md.value).toBeLessThanOrEqual(row.to + 1e-6);
						expect(stage.top.md.value).toBeGreaterThanOrEqual(row.from - 1e-6);
					}
				expect(rows.length).toBeLessThanOrEqual(8);
			}),
			{ numRuns: 60 },
		);
	});
});

describe("timeline", () => {
	const day = (days: number) => known("duration", days * 1440);
	const phase = (name: "location" | "drilling" | "stimulation", low: number, base: number, high: number) => ({
		phase: name,
		days: [day(low), day(base), day(high)] as const,
	});

	it("begins a phase without a date when the one before ends, early or late", () => {
		const { phases, firstDay } = timetable([phase("location", 8, 10, 14), phase("drilling", 20, 25, 40)]);
		expect(firstDay).toBeUndefined();
		expect(phases.map(({ start, end, earliest, latest }) => [start, end, earliest, latest])).toEqual([
			[0, 10, 8, 14],
			[10, 35, 28, 54],
		]);
	});

	it("takes a date as it stands, and counts days over the end of a month and a year", () => {
		const { phases, firstDay } = timetable([
			{ ...phase("location", 8, 10, 14), starts: "2027-12-25" },
			{ ...phase("drilling", 20, 25, 40), starts: "2028-03-01" },
		]);
		expect(firstDay).toBe(dayOf("2027-12-25"));
		// 2028 is a leap year: 6 days left of December, 31 of January, 29 of February, and one.
		expect(phases[1]?.start).toBe(67);
		expect(phases[1]?.earliest).toBe(87);
	});

	it("names phases as the papers' tables do", () => {
		for (const language of ["en", "es"] as const) {
			const file = new URL(`../../templates/${language}/labels.yaml`, import.meta.url);
			const labels = parse(readFileSync(file, "utf8")) as { phases: Record<string, string> };
			expect(DRAWING_WORDS[language].phases, language).toEqual(labels.phases);
		}
	});

	it("shows how it went beside the plan", () => {
		const { well } = findingsOf("horizontal-as-built");
		const drawing = timeline(well, { ...options, height: 300, detail: "full" });
		const said = textsOf(drawing?.shapes ?? []).map(({ text }) => text);
		expect(said).toContain("done Oct 6, 2025 to Oct 26, 2025");
		expect(said).toContain(ENGLISH.legendWent);
	});
});

describe("pressure ladder", () => {
	it.each(STARTERS)("names every rung, in order down the page, in %s", (starter) => {
		const { well, results } = findingsOf(starter);
		const drawing = pressureLadderView(well, results, { ...options, height: 320 });
		if (drawing === undefined) throw new Error("there is no ladder");
		const rungs = results.stimulation?.ladder?.rungs ?? [];
		const y = (id: string) => groupsOf(drawing).find(({ name }) => name === `label ${id}`)?.bounds.top;
		for (const side of [
			["element", "line-test"],
			["expected", "kickout", "relief", "maximum"],
		]) {
			const own = rungs
				.filter(({ tier }) => side.includes(tier))
				.sort((a, b) => b.pressure.value - a.pressure.value);
			const heights = own.map(({ id }) => y(id) ?? Number.NaN);
			expect(heights.every(Number.isFinite)).toBe(true);
			own.slice(1).forEach((rung, i) => {
				if (rung.pressure.value < (own[i]?.pressure.value ?? 0))
					expect(heights[i + 1]).toBeGreaterThan(heights[i] ?? 0);
			});
		}
		const said = textsOf(drawing.shapes).map(({ text }) => text.trim());
		expect(said.filter((text) => text.includes(ENGLISH.ladderLimits))).toHaveLength(1);
	});
});
