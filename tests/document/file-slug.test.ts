import { expect, it } from "vitest";
import { fileSlug } from "../../src/document/file-slug.ts";

it.each([
	["Sorrel Bench Unit 3-16H", "sorrel-bench-unit-3-16h"],
	["Ñandú #2 / A", "ñandú-2-a"],
	["N\u0303andu", "ñandu"],
	["CON", "well-con"],
	["lpt1", "well-lpt1"],
	["Con 1", "con-1"],
	["../../etc/passwd", "etc-passwd"],
	["...", "well"],
])("%s gives %s", (name, slug) => expect(fileSlug(name)).toBe(slug));

it("leaves room on any disk for what is written behind it, and keeps long names apart", () => {
	const [one, other] = [fileSlug(`${"ж".repeat(300)} 1`), fileSlug(`${"ж".repeat(300)} 2`)];
	expect(new TextEncoder().encode(one).length).toBeLessThanOrEqual(100);
	expect(one).not.toBe(other);
	expect(one).toMatch(/^ж+-[0-9a-f]{8}$/u);
	expect(fileSlug(`${"ж".repeat(300)} 1`)).toBe(one);
});
