import { describe, expect, it } from "vitest";
import { locate } from "../../src/diagnostics/locate.ts";
import { type Starter, starterText, understandText } from "../starters.ts";

/** A change to the text of a starter, and the fault it makes. */
interface Slip {
	readonly old: string;
	readonly new: string;
	readonly code: string;
}

/** The text with every slip in it, and the place of each. */
const slipped = (starter: Starter, slips: readonly Slip[]): string => {
	let text = starterText(starter);
	for (const slip of slips) {
		const pieces = text.split(slip.old);
		if (pieces.length < 2) throw new Error(`"${slip.old}" does not stand in ${starter}`);
		text = [pieces[0], pieces.slice(1).join(slip.old)].join(slip.new);
	}
	return text;
};

const errorsOf = (text: string): { code: string; line: number | undefined; column: number | undefined }[] => {
	const { diagnostics, texts } = understandText(text);
	return diagnostics
		.filter(({ severity }) => severity === "error")
		.map(({ code, at }) => {
			const { start } = locate(at, texts);
			return { code, line: start?.line, column: start?.column };
		});
};

/** Slips of form, of meaning and between parts, in one file. */
const OF_EVERY_KIND: readonly Slip[] = [
	{ old: "api_number: 42-000-00001-00-00", new: "api_number: 42-000-0001", code: "definition/api-number" },
	{ old: "  operator:", new: "  oprator:", code: "definition/unknown-key" },
	{ old: "state: draft", new: "state: drafft", code: "definition/not-one-of" },
	{ old: "ground_elevation: 1482 ft", new: "ground_elevation: 1482", code: "quantity/no-unit" },
	{ old: "share: 60 %", new: "share: 50 %", code: "definition/shares-of-whole" },
	{ old: "length: 196 ft", new: "length: 1,196 ft", code: "syntax/comma-in-number" },
	{ old: "relief_valve: 9400 psi", new: "relief_valve: 9400 ppg", code: "quantity/unknown-unit" },
	{ old: "cas: 111-30-8", new: "cas: 111-30-9", code: "definition/cas-number" },
	{ old: "from: 885 ft", new: "from: 985 ft", code: "well/slurry-gap" },
	{ old: "weight: 43.5 lb/ft", new: "weight: 43.9 lb/ft", code: "well/unknown-pipe" },
	{ old: "fluid: acid-15", new: "fluid: acid-51", code: "well/unknown-reference" },
	{ old: "shoe_track: 42 ft", new: "shoe_track: 42 ft\n    shoe_track: 84 ft", code: "syntax/duplicate-key" },
];

describe("twelve faults in one file", () => {
	it("are all told in one run, once each, at their line", () => {
		const text = slipped("horizontal", OF_EVERY_KIND);
		const errors = errorsOf(text);
		expect(errors.map(({ code }) => code).sort()).toEqual(OF_EVERY_KIND.map(({ code }) => code).sort());
		for (const { code, line } of errors) {
			const slip = OF_EVERY_KIND.find((each) => each.code === code);
			const [last = ""] = (slip?.new ?? "").split("\n").slice(-1);
			const words = (text.split("\n")[(line ?? 0) - 1] ?? "").replace(/\s+/g, " ");
			// The shares are told at the list that they are the parts of.
			if (code === "definition/shares-of-whole") continue;
			expect([code, words]).toEqual([code, expect.stringContaining(last.trim())]);
		}
		expect(new Set(errors.map(({ line, column }) => `${line}:${column}`)).size).toBe(OF_EVERY_KIND.length);
	});

	it("are told one by one as they are told together", () => {
		for (const slip of OF_EVERY_KIND)
			expect(errorsOf(slipped("horizontal", [slip])).map(({ code }) => code)).toEqual([slip.code]);
	});

	it("brings none where there is none", () => {
		expect(errorsOf(starterText("horizontal"))).toEqual([]);
	});
});
