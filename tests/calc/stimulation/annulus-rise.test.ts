import { describe, expect, test } from "vitest";
import { riseFromHeat, riseFromSwelling, totalRise } from "../../../src/calc/stimulation/annulus-rise.ts";
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
