import { Document, G, Line, Link, Page, Path, Svg, Text, View } from "@react-pdf/primitives";
import * as renderer from "@react-pdf/renderer";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, it } from "vitest";
import type { PaperDocument } from "../../src/document/document.ts";
import { renderReference } from "../../src/render/pdf/reference/render-reference.ts";
import { documentOf, ONE_OF_EACH } from "../run/editions.ts";
import { setOnce } from "../run/set-once.ts";

/** Letters, figures and signs of a paper in the order they are painted in, without head, foot and repeated heads. */
const lettersOf = async (bytes: Uint8Array): Promise<string> => {
	const task = getDocument({ data: Uint8Array.from(bytes), verbosity: 0 });
	const document = await task.promise;
	let letters = "";
	try {
		for (let number = 1; number <= document.numPages; number += 1) {
			const page = await document.getPage(number);
			const { items } = await page.getTextContent({ includeMarkedContent: true, disableNormalization: true });
			const open: boolean[] = [];
			for (const item of items) {
				if ("str" in item) letters += open.includes(true) ? "" : item.str;
				else if (item.type === "endMarkedContent") open.pop();
				else open.push("tag" in item && item.tag === "Artifact");
			}
		}
	} finally {
		await task.destroy();
	}
	return letters.normalize("NFKC").replaceAll(/[\s\u00ad-]+/gu, "");
};

/** Without lists that give pages, of sections, tables or figures: react-pdf knows no page of a place. Those of another file give none. */
const withoutContents = (paper: PaperDocument): PaperDocument => ({
	...paper,
	sections: paper.sections.map((section) => ({
		...section,
		blocks: section.blocks.filter(
			(block) => block.kind !== "contents" && (block.kind !== "list-of" || block.elsewhere !== undefined),
		),
	})),
});

describe("the reference engine", () => {
	it("has the primitives that the components are made of", () => {
		const ours = { Document, G, Line, Link, Page, Path, Svg, Text, View };
		expect(renderer).toMatchObject(ours);
	});

	it.each(ONE_OF_EACH.map((edition) => [edition.title, edition] as const))(
		"sets the words of %s as our own layout does, in the same order",
		{ timeout: 300_000 },
		async (_, edition) => {
			const plain = withoutContents(documentOf(edition));
			const ours = await lettersOf((await setOnce(plain)).bytes);
			const theirs = await lettersOf(await renderReference(plain, { plain: true }));
			expect(ours.length).toBeGreaterThan(500);
			const apart = [...ours].findIndex((letter, i) => letter !== theirs[i]);
			const around = (text: string): string => text.slice(Math.max(0, apart - 40), apart + 40);
			expect(apart === -1 ? "" : around(theirs)).toBe(apart === -1 ? "" : around(ours));
			expect(theirs.length).toBe(ours.length);
		},
	);
});
