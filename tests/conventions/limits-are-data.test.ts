import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { CHECK_IDS } from "../../src/catalog/limits/checks.ts";
import { CHECKS } from "../../src/rules/index.ts";

const rules = new URL("../../src/rules/", import.meta.url);
const files = readdirSync(rules, { recursive: true, encoding: "utf8" })
	.map((name) => name.replaceAll("\\", "/"))
	.filter((name) => name.endsWith(".ts"));

/** Code without its comments, its text and its patterns. */
const bare = (text: string): string =>
	text
		.replaceAll(/\/\*[\s\S]*?\*\//g, "")
		.replaceAll(/(?<=^|\s)\/\/[^\n]*/g, "")
		.replaceAll(/"(?:[^"\\\n]|\\.)*"/g, '""')
		.replaceAll(/`(?:[^`\\]|\\.)*`/g, (template) =>
			[...template.matchAll(/\$\{([^}]*)\}/g)].map(([, inside]) => inside).join(";"),
		)
		.replaceAll(/\/(?![/*\s])(?:[^/\\\n]|\\.)+\/[a-z]*/g, "/x/");

/** Numbers that are no law's: each with its file and what it is. */
const ALLOWED: Readonly<Record<string, readonly string[]>> = {
	// Half of a clearance on diameter.
	"formulas.ts": ["2"],
	// Milliseconds of a day, and the number of Saturday.
	"calendar.ts": ["86_400_000", "6"],
	// Minutes and hours of a day.
	"events.ts": ["1440"],
	// Hours of a day, days of a week and months of a year.
	"deadline.ts": ["24", "7", "12"],
	// Most missing things named in a sentence.
	"outcome.ts": ["3"],
	// A share written in per cent, and where the pattern keeps it.
	"measures/cement-job.ts": ["2", "100"],
};

describe("no number of law stands in the code of checks", () => {
	it("saw the code", () => {
		expect(files.length).toBeGreaterThan(30);
		expect(bare('const a = 50; // 200\nconst b = "600 ft"; /* 7 */ const c = /\\d{3}/;')).toContain("50");
		expect(bare('const a = 50; // 200\nconst b = "600 ft"; /* 7 */ const c = /\\d{3}/;')).not.toMatch(
			/200|600|7|3/,
		);
	});
	it.each(files)("%s", (name) => {
		const numbers = [
			...bare(readFileSync(new URL(name, rules), "utf8")).matchAll(
				/(?<![\w.$])\d[\d_]*(?:\.\d+)?(?:e-?\d+)?/g,
			),
		]
			.map(([number]) => number)
			.filter((number) => number !== "0" && number !== "1" && !(ALLOWED[name] ?? []).includes(number));
		expect(numbers).toEqual([]);
	});
	it("nothing is allowed that no longer stands there", () => {
		for (const [name, numbers] of Object.entries(ALLOWED)) {
			const text = bare(readFileSync(new URL(name, rules), "utf8"));
			for (const number of numbers) expect(text, `${name}: ${number}`).toContain(number);
		}
	});
	it("the words of checks hold no limit either", () => {
		for (const { explain, looksAt, title } of CHECKS)
			expect(`${title} ${looksAt} ${explain.replace("2,000 ft or less` fails at 2,000 ft", "")}`).not.toMatch(
				/\d/,
			);
	});
});

describe("every check", () => {
	it("is listed once, in the order of the vocabulary", () => {
		expect(CHECKS.map(({ id }) => id)).toEqual([...CHECK_IDS]);
	});
	it.each(CHECKS)(
		"$id has a title, says what it looks at, and is explained",
		({ title, looksAt, explain, id }) => {
			expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
			expect(title).toMatch(/^[A-Z].*[^.]$/);
			expect(looksAt).not.toBe("");
			expect(explain).toMatch(/^[A-Z].*\.$/s);
			expect(explain.length).toBeGreaterThan(50);
			expect(explain).not.toMatch(/complian/i);
		},
	);
});
