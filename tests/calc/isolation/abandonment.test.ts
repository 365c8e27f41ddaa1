import { describe, expect, test } from "vitest";
import { plugsClosing, zonesUnplugged } from "../../../src/calc/isolation/abandonment.ts";
import { starterText, understandText } from "../../starters.ts";
import { given } from "../given.ts";

const tvd = (value: number) => given("true-vertical-depth", value);
const count = (value: number) => given("count", value);

describe("a plan of abandonment", () => {
	test("a zone with no plug is open", () => {
		expect(zonesUnplugged.of({ n_i: [count(0), count(1), count(2), count(0)] }).value).toBe(2);
	});

	test("a plug closes the zone that it spans or caps, and none that lies above or far below it", () => {
		const closing = (top: number, bottom: number) =>
			plugsClosing.of({ z: tvd(6400), TVD_top: [tvd(top)], TVD_bottom: [tvd(bottom)] }).value;
		expect(closing(6300, 6500)).toBe(1);
		expect(closing(6000, 6200)).toBe(1);
		expect(closing(6000, 6199)).toBe(0);
		expect(closing(6400, 6600)).toBe(0);
	});

	test("the starter's plan closes every zone, and leaves one open without its plug", () => {
		const text = starterText("horizontal-as-built");
		const verdict = (written: string) => {
			const { findings } = understandText(written);
			return findings?.judgement.findings.find(
				({ cite: { rule } }) => rule === "practice.isolation.abandonment",
			)?.verdict;
		};
		expect(verdict(text)).toBe("met");
		expect(verdict(text.replace(/ {4}- \{ what: Mirren Sand, from[^\n]*\n/u, ""))).toBe("needs judgement");
	});
});
