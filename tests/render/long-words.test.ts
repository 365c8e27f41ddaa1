import { describe, expect, it } from "vitest";
import { lineText } from "../../src/render/pdf/layout/laid.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import { textsOf } from "./laid-places.ts";
import { samplePaper } from "./sample-paper.ts";

const KEY = "results.casing.production.sections.1.connection_internal_yield_pressure_at_temperature";

const set = async (text: string) => {
	const { pages, findings } = await setPaper({
		...samplePaper(),
		sections: [
			{
				id: "s",
				title: "Keys",
				blocks: [
					{ kind: "facts", columns: 2, items: [{ label: "Where it stands", value: { kind: "text", text } }] },
				],
			},
		],
	});
	const found = textsOf(pages).filter(({ source }) => source === text);
	return { lines: found.flatMap(({ lines }) => lines.map(lineText)), findings };
};

describe("a word too long for its line", () => {
	it("breaks behind its joints without a hyphen, so that a key can be copied", async () => {
		const { lines, findings } = await set(KEY);
		expect(findings).toEqual([]);
		expect(lines.length).toBeGreaterThan(1);
		expect(lines.join("")).toBe(KEY);
		for (const line of lines.slice(0, -1)) expect(line).toMatch(/[._]$/);
	});

	it("keeps the hyphens that it has", async () => {
		const name = "Quillwort-Sedgewick-Bluestem-Ryegrass-Needlegrass-Wheatgrass-Fescue-Unit-12-4H";
		const { lines, findings } = await set(name);
		expect(findings).toEqual([]);
		expect(lines.length).toBeGreaterThan(1);
		expect(lines.join("")).toBe(name);
	});

	it("leaves the words of a label whole where a long value stands beside it in a narrow column", async () => {
		const value = "lined pit on the north side, behind the second berm and the road to it, as agreed in May";
		const label = "Relief discharges to";
		const facts = { kind: "facts", items: [{ label, value: { kind: "text", text: value } }] } as const;
		const { findings } = await setPaper({
			...samplePaper(),
			sections: [
				{
					id: "s",
					title: "Relief",
					blocks: [{ kind: "beside", share: 0.82, left: [facts], right: [facts] }],
				},
			],
		});
		expect(findings).toEqual([]);
	});
});
