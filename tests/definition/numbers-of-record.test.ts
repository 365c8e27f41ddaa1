import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { apiNumber } from "../../src/definition/api-number.ts";
import { casCloses } from "../../src/definition/cas-number.ts";

describe("CAS Registry Numbers", () => {
	it.each([
		// cas.org, check digit verification: 107-07-3, sum 33 (read in a public copy).
		"107-07-3",
		// 71-23-8, sum 38 (read in a public copy of the registry's post).
		"71-23-8",
		// Water, the registry's usual example (memory).
		"7732-18-5",
		// Quartz, hydrogen chloride, glutaraldehyde: numbers of safety data sheets (memory).
		"14808-60-7",
		"7647-01-0",
		"111-30-8",
	])("%s closes", (number) => expect(casCloses(number)).toBe(true));

	it.each(["50-00-1", "107-07-4", "7732-81-5", "7732185", "1-18-5", "77321855-18-5", "7732-18-", ""])(
		"%s does not",
		(number) => expect(casCloses(number)).toBe(false),
	);

	it("notices any one digit that is wrong", () => {
		fc.assert(
			fc.property(fc.constantFrom(0, 1, 2, 3, 5, 6, 8), fc.integer({ min: 1, max: 9 }), (place, shift) => {
				const good = "7732-18-5";
				const digit = Number(good[place]);
				const wrong = `${good.slice(0, place)}${(digit + shift) % 10}${good.slice(place + 1)}`;
				// A digit's weight may share a factor with ten; then a slip by that much is not noticed.
				const weight = [6, 5, 4, 3, 0, 2, 1, 0, 1][place] ?? 0;
				const unnoticed = (weight * (((digit + shift) % 10) - digit)) % 10 === 0;
				expect(casCloses(wrong)).toBe(unnoticed);
			}),
		);
	});
});

describe("API well numbers", () => {
	const accepts = (text: string): boolean => apiNumber("A", "B.", ["regulator"]).safeParse(text).success;

	// Ten digits name a well, twelve a hole, fourteen an event in it (API bulletin D12A, from memory).
	it.each(["42-000-00000", "4200000000", "42-000-00000-00", "42-000-00000-00-00", "42000000000000"])(
		"takes %s",
		(text) => expect(accepts(text)).toBe(true),
	);

	it.each([
		"42-000-0000",
		"42-00-000000",
		"042-000-00000",
		"42-000-00000-0",
		"42-000-00000-00-00-00",
		"42 000 00000",
		"",
	])("refuses %s", (text) => expect(accepts(text)).toBe(false));
});
