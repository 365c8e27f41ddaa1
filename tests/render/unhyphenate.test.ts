import { describe, expect, it } from "vitest";
import { setPaper } from "../../src/render/pdf/layout.ts";
import { type LayoutNode, sourceText } from "../../src/render/pdf/layout-node.ts";
import { samplePaper } from "./sample-paper.ts";

const KEY = "results.casing.production.sections.1.connection_internal_yield_pressure_at_temperature";

/** Lines of the texts that print `wanted`. */
const linesOf = (node: LayoutNode, wanted: string): readonly string[] =>
	node.type === "TEXT"
		? sourceText(node) === wanted
			? (node.lines ?? []).map((line) => line.string)
			: []
		: (node.children ?? []).flatMap((child) => linesOf(child, wanted));

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
	return { lines: pages.flatMap((page) => page.children.flatMap((node) => linesOf(node, text))), findings };
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
});
