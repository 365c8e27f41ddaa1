import { describe, expect, test } from "vitest";
import {
	helicalBucklingForce,
	helicalContactLoad,
	lockUpForce,
	sinusoidalBucklingForce,
} from "../../../src/calc/casing/loads/buckling.ts";
import { loadSections } from "../../../src/calc/casing/loads/load-sections.ts";
import { uniformPressure } from "../../../src/calc/casing/loads/profiles.ts";
import {
	compressionDepth,
	compressionOverHelical,
	compressionThere,
	greatestReach,
	helicalThere,
	slackOffAtReach,
	slackOffCompression,
	slackOffHookLoad,
} from "../../../src/calc/casing/loads/slack-off.ts";
import { minimumCurvaturePath } from "../../../src/calc/trajectory/path.ts";
import { given, stationTable } from "../given.ts";

const [D, t, w, r] = [5.5, 0.415, 23, 1.5];
const EJ = 30e6 * (Math.PI / 64) * (D ** 4 - (D - 2 * t) ** 4);
const perInch = w / 12;

const pipe = (w_c: number, room = r) => ({
	D: given("diameter", D),
	t: given("diameter", t),
	w: given("linear-weight", w),
	w_c: given("linear-weight", w_c),
	r: given("diameter", room),
});
const helical = (w_c: number, room = r) => helicalBucklingForce.of(pipe(w_c, room));
const sinusoidal = (w_c: number) => sinusoidalBucklingForce.of(pipe(w_c)).value;

describe("buckling", () => {
	test("level, the helical force is 2 √2 − 1 = 1.83 times the sinusoidal 2 √(E J w / r)", () => {
		expect(sinusoidal(w)).toBeCloseTo(2 * Math.sqrt((EJ * perInch) / r), 6);
		expect(helical(w).value / sinusoidal(w)).toBeCloseTo(2 * Math.SQRT2 - 1, 9);
		expect(helical(w).from).toMatchObject({ branch: "lying on the wall" });
	});

	test("straight down, they are 1.94 and 5.55 (E J w²)^⅓, and do not depend on the room", () => {
		expect(sinusoidal(0)).toBeCloseTo(1.94 * (EJ * perInch ** 2) ** (1 / 3), 6);
		expect(helical(0).value).toBeCloseTo(5.55 * (EJ * perInch ** 2) ** (1 / 3), 6);
		expect(helical(0, 4).value).toBe(helical(0).value);
		expect(helical(0).from).toMatchObject({ branch: "vertical hole" });
	});

	test("in a build the push holds the pipe down: (2 E J κ / r) (1 + √(1 + w sin I r / (E J κ²)))", () => {
		const κ = (10 * Math.PI) / 180 / 1200;
		const F = ((2 * EJ * κ) / r) * (1 + Math.sqrt(1 + (perInch * 0.5 * r) / (EJ * κ ** 2)));
		expect(sinusoidal(w * 0.5 + 12 * F * κ)).toBeCloseTo(F, 3);
	});

	test("weightless pipe, or pipe as wide as its hole, has none", () => {
		expect(helical(w, 0).value).toBeNaN();
	});

	test("at lock-up the drag of the coil is the weight of the pipe", () => {
		const lock = lockUpForce.of({ ...pipe(0), μ: given("ratio", 0.4) });
		const load = helicalContactLoad.of({ ...pipe(0), F: lock });
		expect(0.4 * load.value).toBeCloseTo(w, 9);
	});
});

const air = uniformPressure.of({ p: given("pressure", 0) });

const string = (bottom: number) =>
	loadSections.of({
		top: [given("measured-depth", 0)],
		bottom: [given("measured-depth", bottom)],
		D: [given("diameter", D)],
		t: [given("diameter", t)],
		Y_p: [given("pressure", 110_000)],
		w: [given("linear-weight", w)],
		P_pipe: [given("pressure", 9400)],
		P_connection: [given("pressure", 12_000)],
		P_c: [given("pressure", 14_500)],
		F_pipe: [given("force", 729_000)],
		F_connection: [given("force", 724_000)],
		wear: given("share", 0),
	});

const run = (stations: readonly (readonly [number, number, number])[], μ: number, hole = 8.5) => ({
	path: minimumCurvaturePath.of({
		stations: stationTable(stations),
		TD: given("measured-depth", 0),
		Avs: given("angle", 0),
	}),
	sections: string(stations.at(-1)?.[0] ?? 0),
	inside: air,
	outside: air,
	MD_cased: given("measured-depth", 0),
	MD_collar: [],
	μ_cased: given("ratio", μ),
	μ_open: given("ratio", μ),
	D_cased: given("diameter", hole),
	D_open: given("diameter", hole),
});

const horizontal = (lateral: number, μ: number, hole?: number) =>
	run(
		[
			[0, 0, 0],
			[8000, 0, 0],
			[9000, 90, 0],
			[9000 + lateral, 90, 0],
		],
		μ,
		hole,
	);

describe("a string let down", () => {
	const pressed = (lateral: number, μ: number) =>
		slackOffCompression.of({
			...horizontal(lateral, μ),
			MD_shoe: given("measured-depth", 9000 + lateral),
		});

	test("at the heel it is pressed by what the lateral drags; above the curve it passes the limit of straight hole", () => {
		const found = pressed(4000, 0.3);
		const heel = found.rows.find(({ md }) => md === 9000);
		expect(heel?.compression).toBeCloseTo(0.3 * w * 4000, -1);
		expect(compressionOverHelical.of({ line: found }).value).toBeGreaterThan(1);
		expect(compressionDepth.of({ line: found }).value).toBeLessThan(9000);
		expect(compressionThere.of({ line: found }).value / helicalThere.of({ line: found }).value).toBeCloseTo(
			compressionOverHelical.of({ line: found }).value,
			9,
		);
	});

	test("coiled in the level hole, the push grows as the tangent that the drag of the helix gives", () => {
		// dF/dx = μ (w + r F²/4EJ): F = F* tan(μ x √(w r / 4EJ) + arctan(F_0 / F*)), F* = √(4 E J w / r), per inch.
		const μ = 0.6;
		const found = slackOffCompression.of({
			...run(
				[
					[0, 90, 0],
					[9400, 90, 0],
				],
				μ,
			),
			MD_shoe: given("measured-depth", 9400),
		});
		const star = Math.sqrt((4 * EJ * perInch) / r);
		const rate = Math.sqrt((perInch * r) / (4 * EJ));
		const limit = helical(w).value;
		const onset = 9400 - limit / (μ * w);
		for (const { md, compression } of found.rows.filter((row) => row.md < onset - 200)) {
			const x = 12 * (onset - md);
			const F = star * Math.tan(μ * rate * x + Math.atan(limit / star));
			// The onset is met to within an element of 25 ft.
			expect((compression ?? 0) / F).toBeCloseTo(1, 1);
		}
		expect(found.rows.filter((row) => row.md < onset - 200).length).toBeGreaterThan(20);
	});

	test("in vertical hole no more than the lock-up force gets down: weight makes up the drag of the coil", () => {
		const lock = lockUpForce.of({ ...pipe(0), μ: given("ratio", 0.4) }).value;
		const line = slackOffHookLoad.of(horizontal(9000, 0.4));
		const reach = greatestReach.of({ line }).value;
		expect(reach).toBeLessThan(18_000);
		const found = slackOffCompression.of({
			...horizontal(9000, 0.4),
			MD_shoe: given("measured-depth", reach),
		});
		const kickoff = found.rows.find(({ md }) => md >= 8000)?.compression ?? 0;
		expect(kickoff).toBeLessThan(lock);
		expect(kickoff).toBeGreaterThan(0.95 * lock);
	});

	test("stops where the hook load comes to nothing; with less friction, or less room to coil, it goes on", () => {
		const stops = slackOffHookLoad.of(horizontal(9000, 0.4));
		expect(slackOffAtReach.of({ line: stops }).value).toBeGreaterThanOrEqual(0);
		expect(slackOffAtReach.of({ line: stops }).value).toBeLessThan(3000);
		for (const goes of [horizontal(9000, 0.2), horizontal(9000, 0.3, 5.6)])
			expect(greatestReach.of({ line: slackOffHookLoad.of(goes) }).value).toBe(18_000);
	});

	test("floated in, with air below a collar, it drags by its lesser weight in mud", () => {
		const level = run(
			[
				[0, 90, 0],
				[5000, 90, 0],
			],
			0.3,
		);
		const mud = {
			columns: { tvd: "true-vertical-depth", pressure: "pressure" },
			rows: [
				{ tvd: 0, pressure: 0 },
				{ tvd: 20_000, pressure: 0.052 * 11.8 * 20_000 },
			],
			from: air.from,
		} as const;
		const full = Math.PI * (D / 2) ** 2;
		const MD_shoe = given("measured-depth", 5000);
		const floated = slackOffCompression.of({
			...level,
			inside: mud,
			outside: mud,
			MD_collar: [given("measured-depth", 0)],
			MD_shoe,
		});
		expect(floated.rows[0]?.compression).toBeCloseTo(0.3 * 5000 * Math.abs(w - 0.052 * 11.8 * full), 0);
	});

	test("without friction a vertical hole presses nothing", () => {
		expect(Math.max(...pressed(1, 0).rows.map(({ compression }) => compression))).toBeLessThan(5);
	});
});
