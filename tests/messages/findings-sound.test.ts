import { describe, expect, it } from "vitest";
import { message } from "../../src/messages/message.ts";
import { type Reader, tell } from "../../src/messages/print.ts";
import { say } from "../../src/rules/reason.ts";
import { findingsOf, STARTERS } from "../starters.ts";

/* How the sentences of findings sound, in both languages: no limit of nothing, no word of the data left in English. */

const ENGLISH: Reader = { language: "en", units: "metric" };
const SPANISH: Reader = { language: "es", units: "metric" };

const FINDINGS = STARTERS.flatMap((name) => findingsOf(name).judgement.findings);

/** The sentences without the names that a person typed, which begin with a capital letter. */
const saidIn = (reader: Reader): readonly string[] => FINDINGS.map(({ reason }) => say(reason, reader));

describe("what findings say", () => {
	it("has findings to read", () => {
		expect(FINDINGS.length).toBeGreaterThan(300);
	});
	it("is no limit of zero: the sentence itself says on which side a value lies", () => {
		const zero = /(?:at least|at most) [0.]+\u00a0?(?![\d.]*[1-9])(?:[^\d]|$)/u;
		expect(saidIn(ENGLISH).filter((line) => zero.test(line))).toEqual([]);
	});
	it("is Spanish throughout, the words of the data too", () => {
		const data =
			/\b(?:lead|tail|filler|spacer|displacement|surface|intermediate|production|float|shoe|mud|new|used|bottom|wellhead|iron)\b/;
		expect(saidIn(SPANISH).filter((line) => data.test(line))).toEqual([]);
	});
	it("runs de and el together", () => {
		expect(saidIn(SPANISH).filter((line) => /\b(?:de|a) el [a-z]/.test(line))).toEqual([]);
		expect(tell(message("rules/date-of-event", { event: message("rules/end-drilling") }), SPANISH)).toBe(
			"La fecha de: el fin de la perforación",
		);
	});
	it("chooses by the word that the definition has", () => {
		expect(tell(message("rules/well-produces", { what: "gas" }), SPANISH)).toContain("producir gas");
		expect(tell(message("rules/well-produces", { what: "oil" }), SPANISH)).toContain("producir petróleo");
	});
	it("gives the room to a temperature as a difference: 58 °C is 52 °C under 110 °C", () => {
		const silica = FINDINGS.filter(({ cite }) => cite.rule === "practice.cement.silica");
		const margins = silica.flatMap(({ margin }) => margin?.dimension ?? []);
		expect(new Set(margins)).toEqual(new Set(["temperature-difference"]));
	});
	it("gives a factor as closely as its product is checked", () => {
		expect(saidIn(ENGLISH).join("\n")).toMatch(/4\.524\skPa\/m\s×\s1,469\.4\sm/u);
	});
});
