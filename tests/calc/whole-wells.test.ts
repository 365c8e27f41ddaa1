import { describe, expect, test } from "vitest";
import type { Results } from "../../src/calc/results.ts";
import type { CasingString, Well } from "../../src/well/well.ts";
import { findingsOf, STARTERS } from "../starters.ts";

/*
 * The starters' volumes, masses and pressures by the plainest arithmetic there is: foot by foot and step by step, with
 * constants of its own, and none of the calculation's code.
 */

/** π/4 in² a foot long, in barrels of 9702 in³. */
const PER_FOOT = ((Math.PI / 4) * 12) / 9702;
const CUBIC_FEET = 9702 / 1728;
const STEP = 0.25;

const pipeAt = (string: CasingString, at: number) =>
	string.sections.find((s) => at < s.bottom.value) ?? string.sections.at(-1);

/** What is around a string at a depth: the pipe outside it, else the hole, washed out if the job counts so. */
const around = (
	well: Well,
	string: CasingString,
	at: number,
): { readonly diameter: number; readonly open: boolean } => {
	const outer = well.strings.find((s) => s.id === string.within);
	if (outer !== undefined && at < outer.shoe.value)
		return { diameter: pipeAt(outer, at)?.insideDiameter.value ?? Number.NaN, open: false };
	const hole = well.holes.find((h) => at < h.bottom.value);
	const washout = string.cement?.volumeBasis === "gauge hole" ? 0 : (hole?.washout?.value ?? 0);
	return { diameter: (hole?.diameter.value ?? Number.NaN) * (1 + washout), open: true };
};

/** Open-hole and cased barrels between two depths, by quarter feet. */
const counted = (
	well: Well,
	string: CasingString,
	from: number,
	to: number,
): readonly [open: number, cased: number] => {
	const steps = Math.max(1, Math.round((to - from) / STEP));
	const feet = (to - from) / steps;
	let [open, cased] = [0, 0];
	for (let i = 0; i < steps; i++) {
		const at = from + (i + 0.5) * feet;
		const { diameter, open: isOpen } = around(well, string, at);
		const ring = PER_FOOT * (diameter ** 2 - (pipeAt(string, at)?.outsideDiameter.value ?? 0) ** 2) * feet;
		if (isOpen) open += ring;
		else cased += ring;
	}
	return [open, cased];
};

const inside = (string: CasingString, from: number, to: number): number =>
	string.sections.reduce((sum, s, i) => {
		const top = Math.max(from, i === 0 ? 0 : s.top.value);
		const bottom = Math.min(to, s.bottom.value);
		return sum + (bottom > top ? PER_FOOT * s.insideDiameter.value ** 2 * (bottom - top) : 0);
	}, 0);

const wells = STARTERS.map((starter): readonly [string, Well, Results] => {
	const { well, results } = findingsOf(starter);
	return [starter, well, results];
});

describe.each(wells)("starter %s", (_, well, results) => {
	const cemented = well.strings.filter((s) => s.cement !== undefined && s.kind === "casing");

	test.each(cemented.map((s) => [s.id, s] as const))(
		"cement of the %s string, counted by the foot",
		(id, string) => {
			const found = results.cement[id];
			const job = string.cement;
			if (found === undefined || job === undefined) throw new Error("no results");
			const near = (a: number, b: number | undefined) =>
				expect(Math.abs(a - (b ?? Number.NaN))).toBeLessThan(0.15);
			const track = string.shoeTrack?.value ?? 0;
			let [total, sacks] = [0, 0];
			for (const [i, slurry] of job.slurries.entries()) {
				const each = found.slurries[i];
				const [open, cased] = counted(well, string, slurry.top.value, slurry.bottom.value);
				const excess = open * (1 + slurry.excess.value);
				const atShoe = Math.abs(slurry.bottom.value - string.shoe.value) < 0.5;
				const below = Math.max(0, string.hole.bottom.value - string.shoe.value);
				const rathole = atShoe
					? PER_FOOT * around(well, string, string.shoe.value + 0.01).diameter ** 2 * below
					: 0;
				const shoe = atShoe ? inside(string, string.shoe.value - track, string.shoe.value) : 0;
				near(excess, each?.open_hole_volume.value);
				near(cased, each?.cased_volume.value);
				near(excess + cased + shoe + rathole, each?.volume.value);
				const exact = ((each?.volume.value ?? 0) * CUBIC_FEET) / slurry.yield.value;
				expect(each?.sacks.value).toBe(Math.ceil(exact - 1e-6));
				expect(each?.mix_water.value).toBeCloseTo(((each?.sacks.value ?? 0) * slurry.water.value) / 42, 9);
				total += each?.volume.value ?? 0;
				sacks += each?.sacks.value ?? 0;
			}
			expect(found.slurry_volume.value).toBeCloseTo(total, 9);
			expect(found.sacks.value).toBe(sacks);
			if (track > 0) near(inside(string, 0, string.shoe.value - track), found.displacement_volume?.value);
		},
	);

	test("water, sand and time, added up step by step", () => {
		const { stimulation } = well;
		if (stimulation === undefined) return;
		let [water, mass, minutes] = [0, 0, 0];
		for (const stage of stimulation.stages) {
			const top = Math.min(stage.top.value, ...stage.clusters.map((c) => c.value));
			const upper = stage.clusters.length > 0 ? Math.min(...stage.clusters.map((c) => c.value)) : top;
			const string = well.strings.find((s) => s.id === stimulation.treatedThrough);
			// Of a stage on record the record counts, less the acid, which it counts in and which stays as planned.
			const { cleanVolume, proppantMass, averageRate } = stage.actual ?? {};
			const recorded = cleanVolume !== undefined && proppantMass !== undefined && averageRate !== undefined;
			const planned = new Map<string, { mass: number; grains: number }>();
			if (cleanVolume !== undefined) water += cleanVolume.value;
			if (proppantMass !== undefined) mass += proppantMass.value;
			for (const step of stage.steps) {
				const flush = string === undefined ? 0 : inside(string, string.top.value, upper);
				const clean = step.cleanVolume?.value ?? flush;
				const c = step.concentration?.value ?? 0;
				const grains = stimulation.proppants.find((p) => p.id === step.proppant)?.specificGravity.value ?? 1;
				if (cleanVolume === undefined && step.fluid === undefined) water += clean;
				if (cleanVolume !== undefined && step.fluid !== undefined) water -= clean;
				if (proppantMass === undefined) mass += 42 * clean * c;
				if (!recorded) minutes += (clean + (clean * c) / (8.33 * grains)) / step.rate.value;
				if (step.proppant !== undefined)
					planned.set(step.proppant, {
						mass: (planned.get(step.proppant)?.mass ?? 0) + 42 * clean * c,
						grains,
					});
			}
			if (recorded) {
				// The one mass on record is divided between the kinds as the plan divides them.
				const whole = [...planned.values()].reduce((sum, kind) => sum + kind.mass, 0);
				const solid = [...planned.values()].reduce(
					(sum, kind) => sum + (proppantMass.value * kind.mass) / whole / (42 * 8.33 * kind.grains),
					0,
				);
				minutes += (cleanVolume.value + solid) / averageRate.value;
			}
		}
		expect(results.stimulation?.water_volume.value).toBeCloseTo(water, 4);
		expect(results.stimulation?.proppant_mass.value).toBeCloseTo(mass, 3);
		expect(results.stimulation?.pumping_time.value).toBeCloseTo(minutes, 6);
	});

	test("the limit is the least of every rating times its factor", () => {
		const allowed = results.stimulation?.boundary.map((b) => b.allowed.value) ?? [];
		const elements = well.stimulation?.boundary.length ?? 0;
		expect(allowed).toHaveLength(elements);
		if (elements > 0) expect(results.stimulation?.limiting?.allowed.value).toBe(Math.min(...allowed));
	});
});
