import { type LayoutNode, type PageNode, sourceText, type TextLine } from "./layout-node.ts";

/**
 * Takes away the hyphens that the engine puts wherever it breaks inside a word. The papers hyphenate nothing: a key, a
 * formula or a number broken with a hyphen would read as another one. Without it the break stays and the word reads on.
 */
export const unhyphenated = (pages: readonly PageNode[]): readonly PageNode[] =>
	pages.map((page) => ({ ...page, children: page.children.map(inNode) }));

const inNode = (node: LayoutNode): LayoutNode => {
	if (node.type === "SVG") return node;
	if (node.type === "TEXT" && node.lines !== undefined)
		return { ...node, lines: inLines(node.lines, squash(sourceText(node))) };
	return node.children === undefined ? node : { ...node, children: node.children.map(inNode) };
};

const squash = (text: string): string => text.replace(/[\s\u00ad]+/gu, "");

/** Enough of the next line to tell where it goes on. */
const AHEAD = 12;

const inLines = (lines: readonly TextLine[], source: string): readonly TextLine[] =>
	lines.map((line, i) => {
		const next = lines[i + 1];
		if (next === undefined || !line.string.endsWith("-")) return line;
		const bare = squash(line.string.slice(0, -1));
		const ahead = squash(next.string).slice(0, AHEAD);
		const asWritten = source.includes(`${bare}-${ahead}`);
		// A number parted from what it is joined to stays a fault, for the audit to find.
		const parted = /\d-$/u.test(line.string) && /^\p{L}/u.test(next.string);
		return !asWritten && !parted && source.includes(bare + ahead) ? withoutLastGlyph(line) : line;
	});

const withoutLastGlyph = (line: TextLine): TextLine => {
	const last = line.runs.at(-1);
	const width = last?.positions?.at(-1)?.xAdvance ?? 0;
	const runs =
		last === undefined
			? line.runs
			: [
					...line.runs.slice(0, -1),
					{
						...last,
						end: last.end - 1,
						...(last.glyphs === undefined ? {} : { glyphs: last.glyphs.slice(0, -1) }),
						...(last.positions === undefined ? {} : { positions: last.positions.slice(0, -1) }),
						...(last.xAdvance === undefined ? {} : { xAdvance: last.xAdvance - width }),
					},
				];
	return {
		...line,
		string: line.string.slice(0, -1),
		runs,
		...(line.xAdvance === undefined ? {} : { xAdvance: line.xAdvance - width }),
	};
};
