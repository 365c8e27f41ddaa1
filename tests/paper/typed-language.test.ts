import { describe, expect, it } from "vitest";
import { inOneLanguage, typedIn } from "../../src/definition/typed-prose.ts";
import { validate } from "../../src/definition/validate.ts";
import type { Language, Paper, PaperDocument } from "../../src/document/document.ts";
import { renderHtml } from "../../src/render/html/render-html.ts";
import { renderPdf } from "../../src/render/pdf/render-pdf.ts";
import { renderText } from "../../src/render/text/render-text.ts";
import { readYaml } from "../../src/source/read-yaml.ts";
import { composeOnce } from "../run/compose-once.ts";
import { findingsOf, starterText, understandText } from "../starters.ts";
import { told } from "../told.ts";

/* What a person typed is read in the reader's language where they gave it, and marked with its own where they did not. */

const STARTER = "vertical-metric";

/** The starter with one answer to its neighbors given in other words. */
const withAnswer = (words: string): string => {
	const text = starterText(STARTER);
	const line = /^( *)road_damage: .*$/mu;
	expect(text).toMatch(line);
	return text.replace(line, `$1road_damage: ${words}`);
};

const ENGLISH = "We mend what our trucks break and walk the road each spring.";
const SPANISH = "Reparamos lo que rompen los camiones y recorremos el camino cada primavera.";

const paperOf = (text: string, paper: Paper, language: Language): PaperDocument => {
	const { findings, diagnostics } = understandText(text);
	if (findings === undefined) throw new Error(diagnostics.map(({ what }) => told(what)).join("\n"));
	const [made] = composeOnce(findings, [{ paper, language, units: "metric" }]).documents;
	if (made === undefined) throw new Error("no paper");
	return made.paper;
};

const plain = (text: string): string => text.replaceAll(/\s+/gu, " ");

interface Marked {
	readonly text: string;
	readonly lang: string;
}

const markedIn = (node: unknown): readonly Marked[] => {
	if (typeof node !== "object" || node === null) return [];
	if ("lang" in node) return [node as unknown as Marked];
	return Object.values(node).flatMap(markedIn);
};

describe("words typed in both languages", () => {
	const text = withAnswer(`{ en: "${ENGLISH}", es: "${SPANISH}" }`);
	it.each([
		["en", ENGLISH, SPANISH],
		["es", SPANISH, ENGLISH],
	] as const)("are read in %s", (language, read, other) => {
		const said = plain(renderText(paperOf(text, "answers", language)));
		expect(said).toContain(read.replace(/\.$/u, ""));
		expect(said).not.toContain(other.replace(/\.$/u, ""));
	});
});

describe("words typed in one language", () => {
	it.each([
		["English alone, in a Spanish paper", `"${ENGLISH}"`, "es", "en", ENGLISH],
		["Spanish alone, in an English paper", `{ es: "${SPANISH}" }`, "en", "es", SPANISH],
	] as const)("%s, carry the mark of it", async (_, words, language, lang, typed) => {
		const paper = paperOf(withAnswer(words), "answers", language);
		const bare = typed.replace(/\.$/u, "");
		expect(markedIn(paper.sections)).toContainEqual(
			expect.objectContaining({ lang, text: expect.stringContaining(bare) }),
		);
		expect(plain(renderHtml(paper))).toContain(`<span lang="${lang}">${bare}`);
		const pdf = Buffer.from((await renderPdf(paper)).bytes).toString("latin1");
		expect(pdf).toMatch(
			new RegExp(`/S /Span[^>]*/Lang \\(${lang}-US\\)|/Lang \\(${lang}-US\\)[^>]*/S /Span`, "u"),
		);
	});
	it("are left alone in a paper of that language", () => {
		expect(markedIn(paperOf(withAnswer(`"${ENGLISH}"`), "answers", "en").sections)).toEqual([]);
	});
	it("are marked in every Spanish paper of the starter, and names are not", () => {
		const { documents } = composeOnce(
			findingsOf("horizontal"),
			(["regulator", "landowner", "answers"] as const).map((paper) => ({
				paper,
				language: "es",
				units: "field",
			})),
		);
		for (const { paper } of documents) {
			const marked = markedIn(paper.sections);
			expect(marked.length, paper.paper).toBeGreaterThan(0);
			expect(new Set(marked.map(({ lang }) => lang))).toEqual(new Set(["en"]));
			expect(marked.filter(({ text }) => !/ \p{Ll}/u.test(text))).toEqual([]);
		}
	});
});

describe("a block of languages", () => {
	const treeOf = (text: string) => readYaml(text, "well.yaml").value?.value;
	it("is one text to everything behind the definition", () => {
		const tree = treeOf(withAnswer(`{ en: "${ENGLISH}", es: "${SPANISH}" }`));
		expect(JSON.stringify(inOneLanguage(tree))).toBe(JSON.stringify(treeOf(withAnswer(`"${ENGLISH}"`))));
		expect(typedIn(tree)).toContainEqual({ en: ENGLISH, es: SPANISH });
	});
	it.each([
		["another language", '{ en: "a b", fr: "c d" }'],
		["a number", "{ en: 3 }"],
		["nothing", '{ en: "" }'],
	])("with %s in it is a fault, and the message says what is due", (_, words) => {
		const { value, diagnostics } = validate(inOneLanguage(treeOf(withAnswer(words))));
		expect(value).toBeUndefined();
		expect(diagnostics.map(({ expected }) => told(expected ?? "")).join()).toContain("{ en: …, es: … }");
	});
	it("is none where a quantity or a name of the program is due", () => {
		const text = starterText(STARTER).replace(/density: 1130 kg\/m3/u, "density: { en: 1130 kg/m3 }");
		expect(validate(inOneLanguage(treeOf(text))).value).toBeUndefined();
	});
});
