import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { locate } from "../../src/diagnostics/locate.ts";
import { FOLDER } from "../broken/broken-case.ts";
import { definitionFaults } from "../broken/broken-faults.ts";

/** A change to the text of a well without a fault, and the fault it makes. */
interface Slip {
	readonly old: string;
	readonly new: string;
	readonly code: string;
	/** What stands where the message points. */
	readonly at: string;
}

/** Slips of form, of meaning and between the parts, in one file. */
const SLIPS: readonly Slip[] = [
	{ old: "42-000-00002", new: "42-000-0002", code: "definition/api-number", at: "42-000-0002" },
	{ old: "  field:", new: "  feild:", code: "definition/unknown-key", at: "feild:" },
	{ old: "state: draft", new: "state: drafft", code: "definition/not-one-of", at: "drafft" },
	{ old: "ground_elevation: 1482 ft", new: "ground_elevation: 1482", code: "quantity/no-unit", at: "1482" },
	{ old: "top: 640 ft TVD", new: "top: 640 ft", code: "quantity/depth-reference", at: "640 ft," },
	{
		old: "share: 60 %",
		new: "share: 50 %",
		code: "definition/shares-of-whole",
		at: "[{ name: Produced water",
	},
	{ old: "hold: 30 min", new: "hold: 1,030 min", code: "syntax/comma-in-number", at: "1,030 min" },
	{ old: "drilling: 5000 psi", new: "drilling: 5000 ppg", code: "quantity/unknown-unit", at: "5000 ppg" },
	{ old: "shoe_track: 40 ft", new: "shoe_track: 740 ft", code: "well/shoe-track", at: "740 ft" },
	{ old: "from: 3500 ft", new: "from: 3600 ft", code: "well/slurry-gap", at: "3600 ft" },
	{ old: "proppant: 40-70", new: "proppant: 30-50", code: "well/unknown-reference", at: "30-50" },
	{
		old: "  operator: Quillback Operating (fictional)\n",
		new: "  operator: Quillback Operating (fictional)\n  operator: Quillback\n",
		code: "syntax/duplicate-key",
		at: "operator: Quillback\n",
	},
];

const BASE = readFileSync(new URL("base.yaml", FOLDER), "utf8");

const slipped = (slips: readonly Slip[]): string =>
	slips.reduce((text, slip) => {
		const at = text.indexOf(slip.old);
		if (at < 0) throw new Error(`"${slip.old}" does not stand in the well`);
		return text.slice(0, at) + slip.new + text.slice(at + slip.old.length);
	}, BASE);

/** Every fault with the text at its line and column. */
const told = (text: string): { code: string; severity: string; rest: string }[] => {
	const { diagnostics, sources } = definitionFaults(new TextEncoder().encode(text), "well.yaml");
	const lines = text.split(/(?<=\n)/);
	return diagnostics.map(({ code, severity, at }) => {
		const { start } = locate(at, sources);
		return { code, severity, rest: (lines[(start?.line ?? 0) - 1] ?? "").slice((start?.column ?? 0) - 1) };
	});
};

const codes = (faults: readonly { readonly code: string }[]): string[] =>
	faults.map(({ code }) => code).sort();

describe("twelve faults in one file", () => {
	it("are told in one run, once each, at their line and column", () => {
		const faults = told(slipped(SLIPS));
		expect(codes(faults)).toEqual(codes(SLIPS));
		for (const { code, at } of SLIPS) {
			const rest = faults.find((each) => each.code === code)?.rest ?? "";
			expect([code, rest.slice(0, at.length)]).toEqual([code, at]);
		}
		expect(new Set(faults.map(({ severity }) => severity))).toEqual(new Set(["error"]));
	});

	it.each(SLIPS.map((slip) => [slip.code, slip] as const))(
		"%s is told alone as among the others",
		(code, slip) => {
			expect(codes(told(slipped([slip])))).toEqual([code]);
		},
	);

	it("whichever is mended, the others are still told", () => {
		for (const slip of SLIPS) {
			const others = SLIPS.filter((each) => each !== slip);
			expect(codes(told(slipped(others)))).toEqual(codes(others));
		}
	});

	it("are as many as were planted, and none where there is none", () => {
		expect(SLIPS.length).toBe(12);
		expect(told(BASE)).toEqual([]);
	});
});
