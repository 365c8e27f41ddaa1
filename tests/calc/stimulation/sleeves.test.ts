import { describe, expect, test } from "vitest";
import { ballBearing, ballRoom } from "../../../src/calc/stimulation/sleeves.ts";
import { inches } from "../a-well.ts";
import { planned, results } from "./a-stimulation.ts";

describe("sleeves", () => {
	test("a ball bears on its seat by the difference, and has the narrowest seat above to pass", () => {
		expect(ballBearing.of({ D_b: inches(2.25), D_s: inches(2) }).value).toBeCloseTo(0.25, 12);
		expect(ballBearing.of({ D_b: inches(2), D_s: inches(2) }).value).toBeNaN();
		expect(ballRoom.of({ D_b: inches(2.25), D_s: [inches(3), inches(2.5)] }).value).toBeCloseTo(0.25, 12);
		expect(ballRoom.of({ D_b: inches(2.25), D_s: [inches(2.25)] }).value).toBeNaN();
		expect(ballRoom.of({ D_b: inches(2.25), D_s: [] }).value).toBeNaN();
	});

	test("stand with their stage; the uppermost has nothing above it", () => {
		const sleeves = [
			{ stage: 1, seat: inches(2), ball: inches(2.25) },
			{ stage: 2, seat: inches(2.5), ball: inches(2.75) },
		];
		const { found } = results(planned({ method: "sliding sleeve", sleeves }));
		expect(
			found?.sleeves?.map(({ number, uppermost, room }) => [number, uppermost.md.value, room?.value]),
		).toEqual([
			[1, 8810, 0.25],
			[2, 8610, undefined],
		]);
		expect(results(planned()).found).not.toHaveProperty("sleeves");
	});
});
