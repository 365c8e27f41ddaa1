import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { ROOT } from "../broken/broken-case.ts";

const textsOf = (folder: string): ReadonlyMap<string, string> =>
	new Map(
		readdirSync(new URL(folder, ROOT), { recursive: true, encoding: "utf8" })
			.filter((file) => /\.(?:tsx?|mjs)$/u.test(file))
			.map((file) => {
				const name = `${folder}${file.replaceAll("\\", "/")}`;
				return [name, readFileSync(new URL(name, ROOT), "utf8")] as const;
			}),
	);

const sources = textsOf("src/");
const everything = new Map([...sources, ...textsOf("tests/"), ...textsOf(".config/")]);
/** How many files have a word in them. */
const files = new Map<string, number>();
for (const text of everything.values())
	for (const word of new Set(text.match(/[\p{L}_$][\p{L}\p{N}_$]*/gu)))
		files.set(word, (files.get(word) ?? 0) + 1);

/** A topic's index takes a module's formulas all together, without their names. */
const isFormula = (file: string, rest: string): boolean =>
	file.startsWith("src/calc/") && /^\s*=\s*\w+\(/u.test(rest);

/** Files that are taken whole, `import * as`, somewhere: by their path from `src/`, or from the folder they stand in. */
const takenWhole = new Set(
	[...everything.values()].flatMap((text) =>
		[...text.matchAll(/^import \* as \w+ from "([^"]+)";$/gmu)].map(([, from = ""]) =>
			from.replace(/^(?:\.\.?\/)+(?:src\/)?/u, ""),
		),
	),
);

it("nothing is exported that no other file names", () => {
	const idle = [...sources]
		.filter(([file]) => ![...takenWhole].some((name) => file.endsWith(`/${name}`)))
		.flatMap(([file, text]) =>
			[
				...text.matchAll(
					/^export (?:async )?(?:const|function|interface|type|class) ([\p{L}_$][\p{L}\p{N}_$]*)/gmu,
				),
			].flatMap(({ 0: head, 1: name = "", index }) =>
				(files.get(name) ?? 0) > 1 || isFormula(file, text.slice(index + head.length))
					? []
					: [`${file}: ${name}`],
			),
		);
	expect(sources.size).toBeGreaterThan(900);
	expect(idle).toEqual([]);
});
