import { describe, expect, test } from "vitest";
import {
	riseFromHeat,
	riseFromHeatHeld,
	riseFromSwelling,
	riseFromSwellingHeld,
	totalRise,
} from "../../../src/calc/stimulation/annulus-rise.ts";
import { given } from "../given.ts";

const inch = (d: number) => given("diameter", d);
const pipes = { d: inch(4.67), D: inch(5.5), d_o: inch(8.681), D_o: inch(9.625) };
const swelling = (P: number, more = {}) =>
	riseFromSwelling.of({ P: given("pressure", P), ...pipes, ...more }).value as number;
const heat = (T_1: number, T_2: number) =>
	riseFromHeat.of({ T_1: given("temperature", T_1), T_2: given("temperature", T_2), ...pipes })
		.value as number;

describe("pressure in a closed annulus", () => {
	test("rises in step with the pressure inside, and with none there is none", () => {
		expect(swelling(0)).toBe(0);
		expect(swelling(9000)).toBeCloseTo(3 * swelling(3000), 9);
		expect(swelling(9000)).toBeLessThan(9000);
	});

	test("rises the less the wider the annulus and the thicker the pipe", () => {
		expect(swelling(9000, { d_o: inch(12.415), D_o: inch(13.375) })).toBeLessThan(swelling(9000));
		expect(swelling(9000, { d: inch(4.3) })).toBeLessThan(swelling(9000));
	});

	test("a thin pipe alone swells as the thin-wall formula says", () => {
		// u = p r² (1 − ν²) / (E t), and an outer pipe so thick and water so stiff that only water gives way is not to be
		// had, so the ratio of two thin walls stands for it: half the wall, twice the swelling.
		const of = (wall: number) => swelling(100, { d: inch(5.5 - 2 * wall) });
		const give = (wall: number) => {
			const [d, D, w] = [5.5 - 2 * wall, 5.5, 8.681];
			return ((2.6 / 30e6) * D ** 2 * (0.4 * D ** 2 + d ** 2)) / ((w ** 2 - D ** 2) * (D ** 2 - d ** 2));
		};
		const rest =
			3e-6 +
			((2.6 / 30e6) * 8.681 ** 2 * (0.4 * 8.681 ** 2 + 9.625 ** 2)) /
				((8.681 ** 2 - 5.5 ** 2) * (9.625 ** 2 - 8.681 ** 2));
		const swell = (wall: number) => of(wall) * (rest + give(wall));
		expect(swell(0.01) / swell(0.02)).toBeCloseTo(2, 1);
		const area = 8.681 ** 2 - 5.5 ** 2;
		// Change of area over area: 2 D u / (…) with u the radial swelling of the thin wall.
		const thin = (100 * 2.75 ** 2 * 0.91) / (30e6 * 0.01);
		expect(swell(0.01) / ((2 * 5.5 * 2 * thin) / area)).toBeCloseTo(1, 1);
	});

	// Lamé's displacements (thick cylinder, plane strain), written apart, and the annulus closed by halving.
	const displacement = (r: number, a: number, b: number, pi: number, po: number) =>
		(1.3 / 30e6) *
		((0.4 * (pi * a ** 2 - po * b ** 2) * r) / (b ** 2 - a ** 2) +
			((pi - po) * a ** 2 * b ** 2) / ((b ** 2 - a ** 2) * r));
	const closed = (P: number, extra: number, wall: "free" | "held") => {
		const [a, b, c, e] = [4.67, 5.5, 8.681, 9.625].map((d) => d / 2) as [number, number, number, number];
		// Area that the walls take from the annulus at a pressure in it, and that the water gives up.
		const excess = (q: number) =>
			2 * Math.PI * b * displacement(b, a, b, P, q) -
			(wall === "free" ? 2 * Math.PI * c * displacement(c, c, e, q, 0) : 0) +
			Math.PI * (c ** 2 - b ** 2) * (extra - 3e-6 * q);
		let [low, high] = [0, 100_000];
		for (let i = 0; i < 100; i++) {
			const middle = (low + high) / 2;
			if (excess(middle) > 0) low = middle;
			else high = middle;
		}
		return low;
	};

	test("is what Lamé's displacements close to, outer pipe free or held", () => {
		expect(swelling(9000)).toBeCloseTo(closed(9000, 0, "free"), 6);
		const P = given("pressure", 9000);
		const held = riseFromSwellingHeld.of({ P, ...pipes }).value;
		expect(held).toBeCloseTo(closed(9000, 0, "held"), 6);
		expect(held).toBeGreaterThan(swelling(9000));
		expect(heat(90, 110)).toBeCloseTo(closed(0, 2.5e-4 * 20, "free"), 6);
		const [T_1, T_2] = [given("temperature", 90), given("temperature", 110)];
		expect(riseFromHeatHeld.of({ T_1, T_2, ...pipes }).value).toBeCloseTo(closed(0, 2.5e-4 * 20, "held"), 6);
	});

	test("rises with warming in step, and cooling is outside the model", () => {
		expect(heat(90, 90)).toBe(0);
		expect(heat(90, 110)).toBeCloseTo(2 * heat(90, 100), 9);
		expect(heat(100, 90)).toBeNaN();
	});

	test("strings that do not nest have none; parts add", () => {
		expect(swelling(9000, { d_o: inch(5) })).toBeNaN();
		expect(totalRise.of({ Δp_i: [given("pressure", 100), given("pressure", 50)] }).value).toBe(150);
	});
});
