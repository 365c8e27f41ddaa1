import { type Typed, typedIn, workingText } from "../definition/typed-prose.ts";
import { LANGUAGES, type Language, type PaperDocument } from "../document/document.ts";
import type { Inline } from "../document/inline.ts";

/*
 * takes  a composed paper, and the texts that a person typed into the definition
 * gives  the same paper with each text in the reader's language, where it was given; one that was not is marked with its own
 * may not  change a word that the program says
 */

interface InPaper {
	/** As the parts printed it. */
	readonly working: string;
	readonly text: string;
	/** Where it is not the paper's. */
	readonly lang?: Language;
}

const known = new WeakMap<object, readonly Typed[]>();

const typedOf = (written: unknown): readonly Typed[] => {
	if (typeof written !== "object" || written === null) return [];
	const found = known.get(written) ?? typedIn(written);
	known.set(written, found);
	return found;
};

/** A sentence or a phrase: a name, which is the same in every language, begins each of its words with a capital. */
const isPhrase = (text: string): boolean =>
	/\p{L}{2,}/u.test(text) && /\s\p{Ll}{2,}.*\s|\s.*\s\p{Ll}{2,}/u.test(text);

/** What a typed text is in a paper of a language; nothing where it stands there as it is. */
const inPaper = (typed: Typed, language: Language): InPaper | undefined => {
	const working = workingText(typed);
	const own = typed[language]?.trim();
	if (own !== undefined) return own === working ? undefined : { working, text: own };
	const lang = LANGUAGES.find((each) => typed[each]?.trim() === working);
	return lang === undefined || !isPhrase(working) ? undefined : { working, text: working, lang };
};

const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/gu, "\\$&");

/** A typed text stands in a paper as it is, or as a sentence: with a capital, without its full stop. */
const patternOf = (texts: readonly InPaper[]): RegExp =>
	new RegExp(
		`(?<![\\p{L}\\p{N}])(?:${texts
			.map(({ working }) => working)
			.sort((a, b) => b.length - a.length)
			.map((text) => escaped(text.replace(/\.$/u, "")).replaceAll(/\s+/gu, "\\s+"))
			.join("|")})(?![\\p{L}\\p{N}])`,
		"giu",
	);

const bare = (text: string): string => text.replace(/\.$/u, "").replaceAll(/\s+/gu, " ").toLowerCase();

/** The words that a sentence begins with keep its capital. */
const likewise = (found: string, text: string): string =>
	/^\p{Lu}/u.test(found) ? text.charAt(0).toUpperCase() + text.slice(1) : text;

const isWords = (node: object): node is { readonly kind: "text"; readonly text: string } => {
	const { kind, text } = node as { readonly kind?: unknown; readonly text?: unknown };
	return kind === "text" && typeof text === "string" && Object.keys(node).length === 2;
};

/** The paper, with what a person typed in the reader's language or marked with its own. */
export const withTypedLanguage = (document: PaperDocument, written: unknown): PaperDocument => {
	const texts = typedOf(written).flatMap((typed) => inPaper(typed, document.language) ?? []);
	if (texts.length === 0) return document;
	const byWorking = new Map(texts.map((each) => [bare(each.working), each]));
	const pattern = patternOf(texts);

	const split = (text: string): readonly Inline[] => {
		const pieces: Inline[] = [];
		let from = 0;
		for (const { 0: found, index } of text.matchAll(pattern)) {
			const typed = byWorking.get(bare(found));
			if (typed === undefined) continue;
			if (index > from) pieces.push({ kind: "text", text: text.slice(from, index) });
			pieces.push(
				typed.lang === undefined
					? { kind: "text", text: likewise(found, typed.text.replace(/\.$/u, "")) }
					: { kind: "text", text: found, lang: typed.lang },
			);
			from = index + found.length;
		}
		if (pieces.length === 0) return [{ kind: "text", text }];
		if (from < text.length) pieces.push({ kind: "text", text: text.slice(from) });
		return pieces;
	};

	/** Words in running text become several; a cell of them becomes running text. Shapes and titles are strings apart. */
	const walk = (node: unknown): unknown => {
		if (Array.isArray(node))
			return node.flatMap((item: unknown): readonly unknown[] =>
				typeof item === "object" && item !== null && isWords(item) ? split(item.text) : [walk(item)],
			);
		if (typeof node !== "object" || node === null || "shapes" in node) return node;
		if (isWords(node)) {
			const pieces = split(node.text);
			const [only] = pieces;
			if (pieces.length === 1 && only?.kind === "text" && only.lang === undefined) return only;
			return { kind: "rich", children: pieces };
		}
		return Object.fromEntries(Object.entries(node).map(([key, child]) => [key, walk(child)]));
	};
	return { ...document, sections: walk(document.sections) as PaperDocument["sections"] };
};
