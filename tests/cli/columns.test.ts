import fc from "fast-check";
import { expect, it } from "vitest";
import { withinColumns } from "../../src/cli/terminal.ts";

it("keeps lines within a terminal, their words in order, and a table's last column under its head", () => {
	expect(withinColumns("us-tx   Texas   47 rules", 60)).toBe("us-tx   Texas   47 rules");
	expect(withinColumns("annulus-stop  Annulus stop against allowable pressure", 40)).toBe(
		"annulus-stop  Annulus stop against\n              allowable pressure",
	);
	expect(withinColumns("  casebound draw my-well.yaml --out papers --png", 40)).toBe(
		"  casebound draw my-well.yaml --out\n    papers --png",
	);
	const word = fc.stringMatching(/^[a-z]{1,12}$/u);
	fc.assert(
		fc.property(fc.array(word, { minLength: 1 }), fc.integer({ min: 0, max: 8 }), (words, indent) => {
			const text = `${" ".repeat(indent)}${words.join(" ")}`;
			const lines = withinColumns(text, 30).split("\n");
			for (const line of lines) expect(line.length).toBeLessThanOrEqual(30);
			expect(lines.join(" ").trim().split(/ +/u)).toEqual(words);
		}),
	);
});
