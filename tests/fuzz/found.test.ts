import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { sampleOf } from "../run/sample.ts";
import { runCase } from "./run-case.ts";

/*
 * What the long run found in the papers themselves, where no message shows it: kept here. What it found in the messages is a
 * case in `fixtures/broken/`, as is the survey that leads out of the ground (`calc-unusable-survey.upward`), which no
 * drawing could be made of.
 */

const BASE = readFileSync(new URL("../../fixtures/broken/base.yaml", import.meta.url), "utf8");

const without = (line: RegExp): string => {
	const text = BASE.replace(line, "");
	if (text === BASE) throw new Error(`${line.source} is not in the well`);
	return text;
};

const LEFT_OUT: readonly (readonly [what: string, line: RegExp])[] = [
	["its purpose", /^ {2}purpose: .*\n/m],
	["its class", /^ {2}class: .*\n/m],
	["its field", /^ {2}field: .*\n/m],
	["its permit", /^ {2}permit: .*\n/m],
	["its API number", /^ {2}api_number: .*\n/m],
	["who prepared it", /^ {2}prepared_by: .*\n/m],
	["its summary", /^ {2}summary: .*\n/m],
	["its county", /^ {2}county: .*\n/m],
	["its neighbors", /^ {2}neighbors:\n.*\n/m],
	["temperature", /^ {2}temperature: .*\n/m],
	["its water", /^ {2}water:\n.*\n/m],
	["protected water", /^ {2}protected_water: .*\n/m],
	["the wellhead", /^wellhead: .*\n/m],
	["pressure limits", /^ {2}limits: .*\n/m],
	["stimulation", /^stimulation:\n(?: .*\n)+/m],
];

describe("every paper is made of a well that leaves out", () => {
	it.each(sampleOf("left out", LEFT_OUT, 6))("%s", (_, line) => {
		const bytes = new TextEncoder().encode(without(line));
		const { faults, refused, papers } = runCase(
			{ bytes, beside: new Map() },
			{ timed: false, everyPaper: true },
		);
		expect(faults).toEqual([]);
		expect(refused).toBe(false);
		expect(papers).toBeGreaterThan(4);
	});
});
