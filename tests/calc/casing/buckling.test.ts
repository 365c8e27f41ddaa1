import { describe, expect, test } from "vitest";
import {
	compressionDepth,
	compressionOverHelical,
	compressionThere,
	helicalBucklingForce,
	helicalThere,
	slackOffCompression,
} from "../../../src/calc/casing/loads/buckling.ts";
import { loadSections } from "../../../src/calc/casing/loads/load-sections.ts";
import { uniformPressure } from "../../../src/calc/casing/loads/profiles.ts";
import { minimumCurvaturePath } from "../../../src/calc/trajectory/path.ts";
import { given, stationTable } from "../given.ts";

const [D, t, w] = [5.5, 0.415, 23];
const J = (Math.PI / 64) * (D ** 4 - (D - 2 * t) ** 4);

const helical = (I: number, r = 1.5) =>
	helicalBucklingForce.of({
		D: given("diameter", D),
		t: given("diameter", t),
		w: given("linear-weight", w),
		r: given("diameter", r),
		I: given("angle", I),
	});

describe("helical buckling", () => {
	test("level, it is 2 (2√2 − 1) / 2 = 1.83 times the sinusoidal force 2 √(E J w / r) of Dawson and Paslay", () => {
		const sinusoidal = 2 * Math.sqrt((30e6 * J * (w / 12)) / 1.5);
		expect(helical(90).value / sinusoidal).toBeCloseTo(2 * Math.SQRT2 - 1, 9);
		expect(helical(90).from).toMatchObject({ branch: "inclined hole" });
	});

	test("straight down, it is 5.55 / 1.94 of Lubinski's first buckling, and does not depend on the room", () => {
		expect(helical(0).value).toBeCloseTo(5.55 * (30e6 * J * (w / 12) ** 2) ** (1 / 3), 6);
		expect(helical(0, 4).value).toBe(helical(0).value);
		expect(helical(0).from).toMatchObject({ branch: "vertical hole" });
	});

	test("weightless pipe, or pipe as wide as its hole, has none", () => {
		expect(helical(90, 0).value).toBeNaN();
	});
});

describe("compression of a string let down", () => {
	const air = uniformPressure.of({ p: given("pressure", 0) });
	const line = (lateral: number, μ: number) =>
		slackOffCompression.of({
			path: minimumCurvaturePath.of({
				stations: stationTable([
					[0, 0, 0],
					[8000, 0, 0],
					[9000, 90, 0],
					[9000 + lateral, 90, 0],
				]),
				TD: given("measured-depth", 0),
				Avs: given("angle", 0),
			}),
			sections: loadSections.of({
				top: [given("measured-depth", 0)],
				bottom: [given("measured-depth", 9000 + lateral)],
				D: [given("diameter", D)],
				t: [given("diameter", t)],
				Y_p: [given("pressure", 110_000)],
				w: [given("linear-weight", w)],
				P_pipe: [given("pressure", 14_000)],
				P_connection: [given("pressure", 12_000)],
				P_c: [given("pressure", 14_500)],
				F_pipe: [given("force", 729_000)],
				F_connection: [given("force", 724_000)],
				wear: given("share", 0),
			}),
			inside: air,
			outside: air,
			MD_cased: given("measured-depth", 6000),
			μ_cased: given("ratio", μ),
			μ_open: given("ratio", μ),
			D_cased: given("diameter", 8.75),
			D_open: given("diameter", 8.5),
		});

	test("at the heel it is what the lateral drags; above the curve it passes the limit of a straight hole", () => {
		const found = line(6000, 0.4);
		const heel = found.rows.find(({ md }) => md === 9000);
		expect(heel?.["compression"]).toBeCloseTo(0.4 * w * 6000, -1);
		expect(heel?.["helical"]).toBeCloseTo(helical(90).value, 0);
		expect(compressionOverHelical.of({ line: found }).value).toBeGreaterThan(1);
		expect(compressionDepth.of({ line: found }).value).toBeLessThan(9000);
		expect(compressionThere.of({ line: found }).value / helicalThere.of({ line: found }).value).toBeCloseTo(
			compressionOverHelical.of({ line: found }).value,
			9,
		);
	});

	test("without friction a vertical hole presses nothing", () => {
		const found = line(1, 0);
		expect(Math.max(...found.rows.map(({ compression }) => compression))).toBeLessThan(5);
	});
});
