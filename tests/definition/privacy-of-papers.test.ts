import { describe, expect, it } from "vitest";
import { mayAppear } from "../../src/definition/privacy.ts";
import { type Path, pathKey } from "../../src/diagnostics/path.ts";
import { PAPERS, type Paper } from "../../src/document/document.ts";
import { composeOnce } from "../run/compose-once.ts";
import { findingsOf, starterText, understandText } from "../starters.ts";
import { STARTERS, starterTree } from "./starter-trees.ts";

/** Keys of the values that stand in a document. */
const keysShown = (node: unknown, found = new Set<string>()): ReadonlySet<string> => {
	if (typeof node !== "object" || node === null) return found;
	if ("kind" in node && node.kind === "quantity" && "key" in node && typeof node.key === "string")
		found.add(node.key);
	for (const child of Object.values(node)) keysShown(child, found);
	return found;
};

/** Every text of the tree, with its place. */
const texts = (node: unknown, path: Path = []): { readonly text: string; readonly path: Path }[] => {
	if (typeof node === "string") return [{ text: node, path }];
	if (typeof node !== "object" || node === null) return [];
	return Object.entries(node).flatMap(([key, child]) =>
		texts(child, [...path, Array.isArray(node) ? Number(key) : key]),
	);
};

/** Fields whose texts are somebody's: they are told apart from the words of the trade, which any paper may use. */
const PERSONAL =
	/(^well\.(prepared_by|technical_contact)\.(name|phone|license|email)|^well\.revisions\[\d+\]\.by|\.owner|\.proof|\.witnessed_by|^safety\.(person_in_charge|emergency\.site_address|contacts\[\d+\]\.(name|phone)))$/;

const documentOf = (starter: (typeof STARTERS)[number], paper: Paper) => {
	const [document] = composeOnce(findingsOf(starter), [{ paper, language: "en", units: "field" }]).documents;
	if (document === undefined) throw new Error(`${starter} has no ${paper} paper`);
	return document.paper;
};

/** A letter says who, what and to whom, and gives no number of the well. */
const WORDS_ALONE: readonly Paper[] = ["transmittal"];

describe.each(STARTERS)("papers of %s", (starter) => {
	const tree = starterTree(starter);

	it.each(PAPERS)("%s shows no value that it is kept out of", (paper) => {
		const { byKey } = findingsOf(starter).index;
		const typed = [...keysShown(documentOf(starter, paper))].flatMap((key) => {
			const value = byKey.get(key);
			return value?.from.kind === "definition" && value.from.file === undefined ? [value.from.at] : [];
		});
		if (WORDS_ALONE.includes(paper)) expect(typed).toEqual([]);
		else expect(typed.length).toBeGreaterThan(3);
		expect(typed.filter((path) => !mayAppear(paper, path, tree)).map(pathKey)).toEqual([]);
	});

	it.each(PAPERS)("%s names no person and no place of theirs that it is kept out of", (paper) => {
		const printed = JSON.stringify(documentOf(starter, paper));
		const personal = texts(tree).filter(({ path }) => PERSONAL.test(pathKey(path)));
		const allowed = texts(tree)
			.filter(({ path }) => mayAppear(paper, path, tree))
			.map(({ text }) => text);
		const kept = personal.filter(({ text }) => !allowed.some((other) => other.includes(text)));
		expect(kept.length).toBeGreaterThan(2);
		// A paper that told nothing of the definition would keep everything to itself.
		const told = texts(tree).filter(({ text }) => printed.includes(JSON.stringify(text).slice(1, -1)));
		expect(told.length).toBeGreaterThan(5);
		const breaches = kept.filter(({ text }) => printed.includes(JSON.stringify(text).slice(1, -1)));
		expect(breaches.map(({ text, path }) => `${pathKey(path)}: ${text}`)).toEqual([]);
	});
});

describe("`papers:` on an entry", () => {
	const publicPapers = (text: string): string => {
		const { findings, diagnostics } = understandText(text);
		if (findings === undefined) throw new Error(diagnostics.map(({ what }) => what).join("; "));
		const requests = (["landowner", "handout"] as const).map(
			(paper) => ({ paper, language: "en", units: "field" }) as const,
		);
		return JSON.stringify(composeOnce(findings, requests).documents);
	};

	it("keeps a contact out of the public's papers, which show it otherwise", () => {
		const text = starterText("horizontal");
		const open = "phone: 555-0100, papers: [landowner, handout, crew]";
		expect(text.split(open).length).toBe(2);
		expect(publicPapers(text).includes("555-0100")).toBe(true);
		const closed = text.replace(open, "phone: 555-0100, papers: [crew]");
		expect(publicPapers(closed).includes("555-0100")).toBe(false);
	});
});
