import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { applyEdits, brokenCases } from "./broken/broken-case.ts";
import { baseFaults, faultsOf, printedFaults } from "./broken/broken-faults.ts";

const cases = brokenCases();
const rebase = process.env["GOLDEN"] === "write";
const HINT =
	"if the new text is better: GOLDEN=write npx vitest run --config .config/vitest.config.ts tests/broken.test.ts";

describe("broken files are told of as agreed", () => {
	it.each(cases)("$name", (each) => {
		const faults = faultsOf(each);
		const printed = printedFaults(faults);
		// One fault, one message: a case shows its own code and nothing besides.
		expect(faults.diagnostics.map(({ code }) => code)).toEqual([each.code]);
		for (const { mend, what } of faults.diagnostics) expect(what).not.toBe(mend);
		for (const line of printed.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
		if (rebase) writeFileSync(each.golden, printed);
		expect(existsSync(each.golden), `no golden text; ${HINT}`).toBe(true);
		expect(printed, HINT).toBe(readFileSync(each.golden, "utf8"));
	});

	it("the well they are made from has no fault", () => {
		expect(printedFaults(baseFaults())).toBe("");
	});

	it("there are cases", () => {
		expect(cases.length).toBeGreaterThan(20);
	});
});

describe("an edit script", () => {
	it("replaces what stands once, and adds at the end", () => {
		expect(applyEdits("# why\n- b: 2\n+ b: 3\n\n+ c: \\u0000\\t4\n", "a: 1\nb: 2\n")).toBe(
			"a: 1\nb: 3\nc: \u0000\t4\n",
		);
	});
	it("fails where it fits not once", () => {
		expect(() => applyEdits("- x\n+ y\n", "a\n")).toThrow("0 times");
		expect(() => applyEdits("- x\n+ y\n", "x x\n")).toThrow("2 times");
		expect(() => applyEdits("# nothing\n", "x\n")).toThrow("changes nothing");
	});
});
