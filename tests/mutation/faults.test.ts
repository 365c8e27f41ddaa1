import { readFileSync } from "node:fs";
import { parseAst } from "rolldown/parseAst";
import { describe, expect, it } from "vitest";
import { faultsIn, withFault } from "./faults.ts";

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");

describe("faults that are put into the sources", () => {
	it("are one small change each, wherever letters of more than one byte stand", () => {
		const source = "const f = (ρ: number, n: 1): number => (ρ >= 0.052 && !n ? Math.min(ρ * 2, 7) : n);\n";
		const made = faultsIn(source).map((fault) => [fault.what, withFault(source, fault).slice(39, -2)]);
		expect(made).toEqual([
			["ρ >= 0.052 && !n ? → true ?", "(true ? Math.min(ρ * 2, 7) : n)"],
			["ρ >= 0.052 && !n ? → false ?", "(false ? Math.min(ρ * 2, 7) : n)"],
			[">= → >", "(ρ > 0.052 && !n ? Math.min(ρ * 2, 7) : n)"],
			[">= → <", "(ρ < 0.052 && !n ? Math.min(ρ * 2, 7) : n)"],
			["0.052 → 0.05252", "(ρ >= 0.05252 && !n ? Math.min(ρ * 2, 7) : n)"],
			["&& → ||", "(ρ >= 0.052 || !n ? Math.min(ρ * 2, 7) : n)"],
			["! left out", "(ρ >= 0.052 && n ? Math.min(ρ * 2, 7) : n)"],
			["min → max", "(ρ >= 0.052 && !n ? Math.max(ρ * 2, 7) : n)"],
			["* → /", "(ρ >= 0.052 && !n ? Math.min(ρ / 2, 7) : n)"],
			["2 → 3", "(ρ >= 0.052 && !n ? Math.min(ρ * 3, 7) : n)"],
			["7 → 8", "(ρ >= 0.052 && !n ? Math.min(ρ * 2, 8) : n)"],
		]);
	});

	it("leave a source that can be read", () => {
		for (const path of [
			"src/calc/cement/annulus.ts",
			"src/calc/casing/collapse-under-load.ts",
			"src/rules/compare.ts",
		]) {
			const source = read(path);
			const faults = faultsIn(source);
			expect(faults.length, path).toBeGreaterThan(3);
			for (const fault of faults) {
				expect(withFault(source, fault), fault.what).not.toBe(source);
				expect(() => parseAst(withFault(source, fault), { lang: "ts" }), fault.what).not.toThrow();
			}
		}
	});
});
