import { describe, expect, test } from "vitest";
import { collapsePressure } from "../../../src/calc/casing/collapse.ts";
import { collapseUnderTension } from "../../../src/calc/casing/collapse-under-load.ts";
import { hangingForce, heldForce } from "../../../src/calc/casing/loads/axial-force.ts";
import { forceAt } from "../../../src/calc/casing/loads/force-table.ts";
import {
	forceLoadAtLeast,
	forceRatingAtLeast,
	leastFactor,
	leastFactorDepth,
	leastFactorOfConnection,
	leastFactorOfPipe,
	pressureLoadAtLeast,
	pressureRatingAtLeast,
} from "../../../src/calc/casing/loads/least-factor.ts";
import {
	bentTensionLine,
	burstLine,
	collapseLine,
	combinedCollapseLine,
	overpullLine,
	plugTestLine,
	shockLine,
	tensionLine,
	triaxialLine,
} from "../../../src/calc/casing/loads/load-lines.ts";
import { loadSections } from "../../../src/calc/casing/loads/load-sections.ts";
import {
	pressureProfile,
	profileAt,
	temperatureProfile,
	uniformPressure,
	uniformTemperature,
} from "../../../src/calc/casing/loads/profiles.ts";
import {
	gasToSurface,
	greatestGasPressure,
	maximumSurfacePressure,
	porePressure,
	shoeLimitedPressure,
} from "../../../src/calc/casing/loads/surface-pressures.ts";
import { minimumCurvaturePath } from "../../../src/calc/trajectory/path.ts";
import { isKnownTable, type KnownTable } from "../../../src/cite/known.ts";
import { given, stationTable } from "../given.ts";

const vertical = minimumCurvaturePath.of({
	stations: stationTable([
		[0, 0, 0],
		[10_000, 0, 0],
	]),
	TD: given("measured-depth", 0),
	Avs: given("angle", 0),
});

interface Section {
	readonly top: number;
	readonly bottom: number;
	readonly D: number;
	readonly t: number;
	readonly w: number;
	readonly P_connection?: number;
	readonly F_connection?: number;
}

const sectionsOf = (sections: readonly Section[], wear = 0) =>
	loadSections.of({
		top: sections.map((s) => given("measured-depth", s.top)),
		bottom: sections.map((s) => given("measured-depth", s.bottom)),
		D: sections.map((s) => given("diameter", s.D)),
		t: sections.map((s) => given("diameter", s.t)),
		Y_p: sections.map(() => given("pressure", 80_000)),
		w: sections.map((s) => given("linear-weight", s.w)),
		P_pipe: sections.map(() => given("pressure", 6000)),
		P_connection: sections.map((s) => given("pressure", s.P_connection ?? 6000)),
		P_c: sections.map((s) =>
			collapsePressure.of({
				D: given("diameter", s.D),
				t: given("diameter", s.t),
				Y_p: given("pressure", 80_000),
			}),
		),
		F_pipe: sections.map(() => given("force", 900_000)),
		F_connection: sections.map((s) => given("force", s.F_connection ?? 900_000)),
		wear: given("share", wear),
	});

const single = sectionsOf([{ top: 0, bottom: 10_000, D: 9.625, t: 0.472, w: 47 }]);

const fluid = (ppg: number, surface = 0) =>
	pressureProfile.of({
		p_0: given("pressure", surface),
		D_0: given("true-vertical-depth", 0),
		g: [given("pressure-gradient", 0.052 * ppg)],
		D_bottom: [given("true-vertical-depth", 10_000)],
	});
const empty = fluid(0);
const air = uniformPressure.of({ p: given("pressure", 0) });
const cold = uniformTemperature.of({ T: given("temperature", 70) });
const hot = temperatureProfile.of({
	T_s: given("temperature", 70),
	G: given("temperature-gradient", 2),
	h: given("length", 0),
	D: given("true-vertical-depth", 10_000),
});
const r = given("share-per-temperature", 0.0003);
const common = { path: vertical, sections: single, temperature: cold, r };
const first = (table: KnownTable, column: string) => table.rows[0]?.[column] ?? Number.NaN;
const last = (table: KnownTable, column: string) => table.rows.at(-1)?.[column] ?? Number.NaN;

const steel = (D: number, t: number) => Math.PI * (D - t) * t;
const bore = (D: number, t: number) => (Math.PI / 4) * (D - 2 * t) ** 2;

describe("profiles", () => {
	test("columns stand one on another, and go on below at the last gradient", () => {
		const two = pressureProfile.of({
			p_0: given("pressure", 100),
			D_0: given("true-vertical-depth", 0),
			g: [given("pressure-gradient", 0.4), given("pressure-gradient", 0.6)],
			D_bottom: [given("true-vertical-depth", 1000), given("true-vertical-depth", 2000)],
		});
		const at = (tvd: number) => profileAt(two, "pressure", tvd);
		expect([at(-5), at(0), at(500), at(1000), at(1500), at(2500)]).toEqual([100, 100, 300, 500, 800, 1400]);
	});

	test("a column without a bottom is no profile", () => {
		const odd = { p_0: given("pressure", 0), D_0: given("true-vertical-depth", 0), g: [], D_bottom: [] };
		expect(pressureProfile.of(odd).rows).toEqual([]);
	});

	test("temperature rises from the ground down", () => {
		expect(profileAt(hot, "temperature", 5000)).toBe(170);
		expect(profileAt(cold, "temperature", 5000)).toBe(70);
	});
});

describe("axial force", () => {
	test("in air the string hangs its own weight, and nothing at the shoe", () => {
		const force = hangingForce.of({ path: vertical, sections: single, inside: empty, outside: empty });
		expect(first(force, "force")).toBeCloseTo(470_000, 6);
		expect(last(force, "force")).toBeCloseTo(0, 9);
	});

	test("in mud the shoe is pushed up by the pressure on its steel", () => {
		const force = hangingForce.of({
			path: vertical,
			sections: single,
			inside: fluid(10),
			outside: fluid(10),
		});
		expect(last(force, "force")).toBeCloseTo(-5200 * steel(9.625, 0.472), 6);
		expect(first(force, "force") - last(force, "force")).toBeCloseTo(470_000, 6);
	});

	test("at a change of size the pressure on the shoulder enters, and a string of one size has none", () => {
		const tapered = sectionsOf([
			{ top: 0, bottom: 4000, D: 9.625, t: 0.472, w: 47 },
			{ top: 4000, bottom: 10_000, D: 7, t: 0.362, w: 26 },
		]);
		const mud = fluid(10);
		const force = hangingForce.of({ path: vertical, sections: tapered, inside: mud, outside: mud });
		const jump =
			forceAt(force, { md: 4000, tvd: 4000, number: 1 }) - forceAt(force, { md: 4000, tvd: 4000, number: 2 });
		const shoulder = 2080 * (steel(7, 0.362) - steel(9.625, 0.472));
		expect(jump).toBeCloseTo(shoulder, 6);
		const same = sectionsOf([
			{ top: 0, bottom: 4000, D: 9.625, t: 0.472, w: 47 },
			{ top: 4000, bottom: 10_000, D: 9.625, t: 0.472, w: 47 },
		]);
		const whole = hangingForce.of({ path: vertical, sections: same, inside: mud, outside: mud });
		const plain = hangingForce.of({ path: vertical, sections: single, inside: mud, outside: mud });
		expect(first(whole, "force")).toBeCloseTo(first(plain, "force"), 6);
	});

	test("a lateral hangs nothing on the vertical hole above it", () => {
		const bent = minimumCurvaturePath.of({
			stations: stationTable([
				[0, 0, 0],
				[5000, 0, 0],
				[5900, 90, 0],
				[10_000, 90, 0],
			]),
			TD: given("measured-depth", 0),
			Avs: given("angle", 0),
		});
		const force = hangingForce.of({ path: bent, sections: single, inside: empty, outside: empty });
		expect(first(force, "force")).toBeCloseTo(47 * (5000 + 18_000 / Math.PI / 10), 4);
	});

	test("held, nothing changed, it stays as landed; pressed, it is pulled; cooled, it is pulled", () => {
		const mud = fluid(10);
		const landed = hangingForce.of({ path: vertical, sections: single, inside: mud, outside: mud });
		const held = (inside: KnownTable, temperature: KnownTable) =>
			heldForce.of({
				path: vertical,
				sections: single,
				landed,
				inside_before: mud,
				outside_before: mud,
				inside,
				outside: mud,
				temperature_before: hot,
				temperature,
				free_top: [],
				free_bottom: [],
			});
		expect(first(held(mud, hot), "force")).toBeCloseTo(first(landed, "force"), 6);
		expect(first(held(fluid(10, 3000), hot), "force") - first(landed, "force")).toBeCloseTo(
			0.56 * bore(9.625, 0.472) * 3000,
			6,
		);
		expect(last(held(mud, cold), "force") - last(landed, "force")).toBeCloseTo(
			207 * 200 * steel(9.625, 0.472),
			4,
		);
	});
});

describe("axial force of a string that hangs free above its cement", () => {
	const mud = fluid(10);
	const heldFrom = (sections: KnownTable, TOC: number, inside: KnownTable, temperature: KnownTable) => {
		const landed = hangingForce.of({ path: vertical, sections, inside: mud, outside: mud });
		const held = heldForce.of({
			path: vertical,
			sections,
			landed,
			inside_before: mud,
			outside_before: mud,
			inside,
			outside: mud,
			temperature_before: hot,
			temperature,
			free_top: [given("measured-depth", 0)],
			free_bottom: [given("measured-depth", TOC)],
		});
		const at = (md: number, number = 1) =>
			forceAt(held, { md, tvd: md, number }) - forceAt(landed, { md, tvd: md, number });
		return at;
	};

	test("cooled to one temperature, the free stretch shares the mean; below, cement keeps what is local", () => {
		const A_p = steel(9.625, 0.472);
		const change = heldFrom(single, 6000, mud, cold);
		// `hot` rises by 200 °F over 10,000 ft from `cold`: 60 °F on average over the free 6,000 ft.
		for (const md of [0, 1000, 3000, 6000]) expect(change(md)).toBeCloseTo(207 * 60 * A_p, 2);
		expect(change(6001)).toBeCloseTo(207 * 120.02 * A_p, 1);
		expect(change(10_000)).toBeCloseTo(207 * 200 * A_p, 2);
	});

	test("two sections: the thinner gives more, and the push on the shoulder between them is shared", () => {
		const thin = { D: 9.625, t: 0.395 };
		const thick = { D: 9.625, t: 0.545 };
		const two = sectionsOf([
			{ top: 0, bottom: 2000, ...thick, w: 53.5 },
			{ top: 2000, bottom: 10_000, ...thin, w: 40 },
		]);
		const change = heldFrom(two, 8000, fluid(10, 3000), hot);
		const [above, below] = [change(0), change(8000, 2)];
		// Fluid at 3,000 psi more pushes the wider bore of the lower section up against the upper one.
		const push = 3000 * (bore(thick.D, thick.t) - bore(thin.D, thin.t));
		expect(above - below).toBeCloseTo(push, 4);
		// What it gets longer above it gets shorter below.
		const [A_1, A_2] = [steel(thick.D, thick.t), steel(thin.D, thin.t)];
		const [f_1, f_2] = [0.56 * 3000 * bore(thick.D, thick.t), 0.56 * 3000 * bore(thin.D, thin.t)];
		expect((2000 * (above - f_1)) / A_1 + (6000 * (below - f_2)) / A_2).toBeCloseTo(0, 2);
	});
});

describe("load lines", () => {
	test("burst: inside less outside, against the rating at the rock's temperature", () => {
		const line = burstLine.of({ ...common, temperature: hot, inside: fluid(10, 2000), outside: fluid(9) });
		expect(first(line, "load")).toBeCloseTo(2000, 9);
		expect(last(line, "load")).toBeCloseTo(2000 + 520, 6);
		expect(first(line, "rating")).toBeCloseTo(6000, 9);
		expect(last(line, "rating")).toBeCloseTo(6000 * (1 - 0.0003 * 200), 6);
	});

	test("worn pipe is rated by the wall that is left", () => {
		const worn = sectionsOf([{ top: 0, bottom: 10_000, D: 9.625, t: 0.472, w: 47 }], 0.1);
		const line = burstLine.of({ ...common, sections: worn, inside: fluid(10, 2000), outside: fluid(10) });
		expect(first(line, "rating")).toBeCloseTo(5400, 9);
		expect(sectionsOf([{ top: 0, bottom: 10, D: 9.625, t: 0.472, w: 47 }], 1).rows).toEqual([]);
	});

	test("collapse: the published rating without tension, less under it", () => {
		const force = hangingForce.of({ path: vertical, sections: single, inside: empty, outside: empty });
		const line = collapseLine.of({ ...common, inside: empty, outside: fluid(10), force });
		expect(last(line, "rating")).toBeCloseTo(4754, 0);
		expect(last(line, "load")).toBeCloseTo(5200, 6);
		const tensed = collapseUnderTension.compute({
			D: given("diameter", 9.625).value,
			t: given("diameter", 0.472).value,
			Y_p: given("pressure", 80_000).value,
			σ_a: given("pressure-difference", 470_000 / steel(9.625, 0.472)).value,
		});
		expect(first(line, "rating")).toBeCloseTo(typeof tensed === "number" ? tensed : tensed.value, 6);
	});

	test("collapse from 2015: the historical rating without tension or pressure inside, more with both", () => {
		const force = hangingForce.of({
			path: vertical,
			sections: single,
			inside: empty,
			outside: empty,
		});
		const given2015 = { ...common, outside: fluid(10), force };
		const bare = combinedCollapseLine.of({ ...given2015, inside: empty });
		expect(last(bare, "rating")).toBeCloseTo(4754, 0);
		expect(last(bare, "load")).toBeCloseTo(5200, 6);
		const filled = combinedCollapseLine.of({ ...given2015, inside: fluid(5) });
		const historical = collapseLine.of({ ...given2015, inside: fluid(5) });
		expect(last(filled, "load")).toBeCloseTo(2600, 6);
		expect(last(filled, "rating") / last(filled, "load")).toBeGreaterThan(
			last(historical, "rating") / last(historical, "load"),
		);
	});

	test("collapse beyond the constants' validity leaves no line", () => {
		const heavy = sectionsOf([{ top: 0, bottom: 10_000, D: 9.625, t: 0.472, w: 47 * 2.2 }]);
		const force = hangingForce.of({ path: vertical, sections: heavy, inside: empty, outside: empty });
		expect(
			collapseLine.of({ ...common, sections: heavy, inside: empty, outside: fluid(10), force }).rows,
		).toEqual([]);
	});

	test("tension, overpull and a test on the plug", () => {
		const mud = fluid(10);
		const force = hangingForce.of({ path: vertical, sections: single, inside: mud, outside: mud });
		expect(first(tensionLine.of({ ...common, force }), "load")).toBeCloseTo(first(force, "force"), 9);
		const dry = hangingForce.of({ path: vertical, sections: single, inside: air, outside: air });
		const stuck = overpullLine.of({ ...common, dry, overpull: given("force", 100_000) });
		expect(first(stuck, "load")).toBeCloseTo(570_000, 6);
		expect(last(stuck, "load")).toBe(100_000);
		const bumped = plugTestLine.of({ ...common, force, P: given("pressure", 1000) });
		expect(first(bumped, "load") - first(force, "force")).toBeCloseTo(1000 * bore(9.625, 0.472), 6);
	});

	test("triaxial: hanging in air it is the tension's own stress", () => {
		const force = hangingForce.of({ path: vertical, sections: single, inside: empty, outside: empty });
		const line = triaxialLine.of({ ...common, inside: empty, outside: empty, force });
		expect(first(line, "load")).toBeCloseTo(470_000 / steel(9.625, 0.472), 4);
		expect(first(line, "rating")).toBe(80_000);
	});

	test("bent, a string is pulled by its bending too; stopped, by its shock", () => {
		const curved = minimumCurvaturePath.of({
			stations: stationTable([
				[0, 0, 0],
				[2000, 0, 0],
				[2900, 90, 0],
				[10_000, 90, 0],
			]),
			TD: given("measured-depth", 0),
			Avs: given("angle", 0),
		});
		const mud = fluid(10);
		const hung = hangingForce.of({ path: curved, sections: single, inside: mud, outside: mud });
		const bentAt = (md: number) =>
			bentTensionLine
				.of({ ...common, path: curved, force: hung })
				.rows.find((row) => Math.abs(row.md - md) < 1e-6)?.load ?? Number.NaN;
		const plainAt = (md: number) =>
			tensionLine
				.of({ ...common, path: curved, force: hung })
				.rows.find((row) => Math.abs(row.md - md) < 1e-6)?.load ?? Number.NaN;
		const stress = 218.166 * 9.625 * 10;
		expect(bentAt(1000)).toBe(plainAt(1000));
		// The bend begins at 2,000 ft and ends at 2,900 ft: at either end the pipe is bent on one side.
		for (const md of [2000, 2900])
			expect((bentAt(md) - plainAt(md)) / steel(9.625, 0.472) / stress).toBeCloseTo(1, 5);
		const shocked = shockLine.of({ ...common, path: curved, force: hung, v: given("fluid-velocity", 5) });
		expect(first(shocked, "load") - first(hung, "force")).toBeCloseTo(1780 * 5 * steel(9.625, 0.472), 4);
	});

	test("the least factor, and where", () => {
		const line = burstLine.of({ ...common, inside: fluid(10, 2000), outside: fluid(9) });
		expect(leastFactor.of({ line }).value).toBeCloseTo(6000 / 2520, 9);
		expect(leastFactorDepth.of({ line }).value).toBe(10_000);
		expect(pressureLoadAtLeast.of({ line }).value).toBeCloseTo(2520, 6);
		expect(pressureRatingAtLeast.of({ line }).value).toBeCloseTo(6000, 9);
		const unloaded = burstLine.of({ ...common, inside: fluid(9), outside: fluid(10) });
		expect(leastFactor.of({ line: unloaded }).value).toBeNaN();
		expect(isKnownTable(unloaded)).toBe(true);
	});

	test("pipe and connection are each laid beside the load, and the weaker is named", () => {
		const weak = sectionsOf([
			{ top: 0, bottom: 10_000, D: 9.625, t: 0.472, w: 47, P_connection: 5000, F_connection: 1_000_000 },
		]);
		const inside = fluid(10, 2000);
		const line = burstLine.of({ ...common, sections: weak, inside, outside: fluid(10) });
		expect(leastFactor.of({ line }).value).toBeCloseTo(2.5, 9);
		expect(leastFactor.of({ line }).from).toMatchObject({ branch: "connection" });
		expect(leastFactorOfPipe.of({ line }).value).toBeCloseTo(3, 9);
		expect(leastFactorOfConnection.of({ line }).value).toBeCloseTo(2.5, 9);
		const force = hangingForce.of({ path: vertical, sections: weak, inside: empty, outside: empty });
		const pulled = tensionLine.of({ ...common, sections: weak, force });
		expect(leastFactor.of({ line: pulled }).from).toMatchObject({ branch: "pipe" });
		expect(forceLoadAtLeast.of({ line: pulled }).value).toBeCloseTo(470_000, 6);
		expect(forceRatingAtLeast.of({ line: pulled }).value).toBeCloseTo(900_000, 6);
	});
});

describe("surface pressures", () => {
	const psi = (value: number) => given("pressure", value);
	const g = given("pressure-gradient", 0.1);

	test("gas without weight brings all of its pressure; a pressure too low brings none", () => {
		const D_res = given("true-vertical-depth", 9000);
		const weightless = given("pressure-gradient", 0);
		expect(gasToSurface.of({ P_res: psi(4500), g: weightless, D_res }).value).toBe(4500);
		expect(gasToSurface.of({ P_res: psi(4500), g, D_res }).value).toBe(3600);
		expect(gasToSurface.of({ P_res: psi(800), g, D_res }).value).toBe(0);
	});

	test("the lesser of gas and shoe governs, and is named", () => {
		const of = (gas: number, shoe: number) => maximumSurfacePressure.of({ gas: psi(gas), shoe: psi(shoe) });
		expect(of(3000, 2000)).toMatchObject({ value: 2000, from: { branch: "limited by the shoe" } });
		expect(of(1000, 2000)).toMatchObject({ value: 1000, from: { branch: "gas to surface" } });
		expect(greatestGasPressure.of({ P: [psi(1), psi(3), psi(2)] }).value).toBe(3);
		expect(greatestGasPressure.of({ P: [] }).value).toBeNaN();
	});

	test("pore pressure counts from the ground", () => {
		expect(
			porePressure.of({ ρ_pore: given("density", 10), D: given("depth-below-ground", 1000) }).value,
		).toBe(520);
	});

	test("what the shoe allows is its fracture pressure less the gas on it", () => {
		const allowed = (p_frac: number) =>
			shoeLimitedPressure.of({ p_frac: psi(p_frac), g, D_shoe: given("true-vertical-depth", 2500) }).value;
		expect(allowed(1690)).toBeCloseTo(1440, 9);
		expect(allowed(200)).toBe(0);
	});
});
