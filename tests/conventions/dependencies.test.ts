import { readFileSync } from "node:fs";
import { expect, it } from "vitest";

const read = (name: string): string => readFileSync(new URL(`../../${name}`, import.meta.url), "utf8");

it("says of every dependency, pinned exactly, why it is there", () => {
	const { dependencies, devDependencies } = JSON.parse(read("package.json")) as Record<
		string,
		Record<string, string>
	>;
	const all = Object.entries({ ...dependencies, ...devDependencies });
	expect(all.length).toBeGreaterThan(20);
	const reasons = read("DEVELOPERS.md").split("## Dependencies")[1] ?? "";
	for (const [name, version] of all) {
		expect(version, name).toMatch(/^\d+\.\d+\.\d+$/u);
		expect(
			name.startsWith("@types/") ? reasons.includes("`@types/*`") : reasons.includes(`\`${name}\``),
			name,
		).toBe(true);
	}
});
