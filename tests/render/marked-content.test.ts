import { inflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { renderPdf } from "../../src/render/pdf/render-pdf.ts";
import { samplePaper } from "./sample-paper.ts";

/** Page content streams, unpacked. */
const contentsOf = (bytes: Uint8Array): readonly string[] => {
	const source = Buffer.from(bytes);
	const contents: string[] = [];
	for (let at = source.indexOf("stream\n"); at !== -1; at = source.indexOf("stream\n", at + 1)) {
		if (source.subarray(at - 3, at).toString("latin1") === "end") continue;
		const end = source.indexOf("\nendstream", at);
		try {
			const text = inflateSync(source.subarray(at + 7, end)).toString("latin1");
			if (/ (BDC|BMC)\n/.test(text)) contents.push(text);
		} catch {
			// Not a packed stream: metadata, or a font program.
		}
	}
	return contents;
};

const PAINTING = /(^|\s)(S|s|f|F|f\*|B|B\*|b|b\*|sh|Do|Tj|TJ|'|")$/;

interface Count {
	painted: number;
	outside: number;
	crossed: number;
	identifiers: string[];
}

/** ISO 32000-1, 14.6: marked content is balanced, nests with q and Q; 14.8.2.2: what is painted is content or artifact. */
const inspect = (content: string): Count => {
	const count: Count = { painted: 0, outside: 0, crossed: 0, identifiers: [] };
	const stack: ("q" | "mark")[] = [];
	for (const line of content.split("\n")) {
		const id = /^\/MCID (\d+)/.exec(line)?.[1];
		if (id !== undefined) count.identifiers.push(id);
		if (/ (BDC|BMC)$/.test(line)) stack.push("mark");
		else if (line === "EMC") count.crossed += stack.pop() === "mark" ? 0 : 1;
		else if (line === "q") stack.push("q");
		else if (line === "Q") count.crossed += stack.pop() === "q" ? 0 : 1;
		else if (PAINTING.test(line)) {
			count.painted += 1;
			if (!stack.includes("mark")) count.outside += 1;
		}
	}
	count.crossed += stack.length;
	return count;
};

describe("the content of every page", () => {
	it("is marked throughout, nests rightly, and numbers each piece once", async () => {
		const { bytes, pages } = await renderPdf(samplePaper());
		const counts = contentsOf(bytes).map(inspect);
		expect(counts).toHaveLength(pages);
		expect(counts.reduce((sum, { painted }) => sum + painted, 0)).toBeGreaterThan(800);
		expect(counts.reduce((sum, { identifiers }) => sum + identifiers.length, 0)).toBeGreaterThan(500);
		for (const { outside, crossed, identifiers } of counts) {
			expect(outside).toBe(0);
			expect(crossed).toBe(0);
			expect(new Set(identifiers).size).toBe(identifiers.length);
		}
	});

	it("would be found out if it were not", () => {
		expect(inspect("q\n/P <<\n/MCID 0\n>> BDC\nQ\nEMC\n0 0 m S")).toMatchObject({
			painted: 1,
			outside: 1,
			crossed: 2,
		});
	});
});
