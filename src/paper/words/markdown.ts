import type { PhrasingContent, RootContent } from "mdast";
import { fromMarkdown } from "mdast-util-from-markdown";
import type { Block } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import type { Vault } from "./vault.ts";

/**
 * Markdown, with sealed values, to blocks. Only what the document knows is allowed: headings of level 2 and 3,
 * paragraphs, lists, emphasis, links, and a block quote whose first paragraph is its title in bold (`> **Caution**`),
 * which becomes a callout.
 */
export const blocksFromMarkdown = (markdown: string, vault: Vault): Block[] =>
	fromMarkdown(markdown).children.map((node) => blockOf(node, vault));

const blockOf = (node: RootContent, vault: Vault): Block => {
	switch (node.type) {
		case "heading":
			return { kind: "heading", level: node.depth <= 2 ? 2 : 3, text: plain(node.children, vault) };
		case "paragraph":
			return { kind: "paragraph", children: inlines(node.children, vault) };
		case "list":
			return {
				kind: "list",
				ordered: node.ordered === true,
				items: node.children.map((item) => item.children.map((child) => blockOf(child, vault))),
			};
		case "blockquote": {
			const [first, ...rest] = node.children;
			const strong = first?.type === "paragraph" ? first.children[0] : undefined;
			if (first?.type !== "paragraph" || strong?.type !== "strong")
				throw new Error("a quote needs a **title** first");
			const words = plain(strong.children, vault);
			const [tone, title] = toneOf(words);
			const remainder = first.children.slice(1);
			const opening: Block[] =
				remainder.length > 0 ? [{ kind: "paragraph", children: inlines(remainder, vault) }] : [];
			return {
				kind: "callout",
				tone,
				title,
				blocks: [...opening, ...rest.map((child) => blockOf(child, vault))],
			};
		}
		default:
			throw new Error(`no block for Markdown "${node.type}"`);
	}
};

/** `stop: …` and `note: …` choose a callout's tone; anything else is a caution. */
const toneOf = (title: string): ["stop" | "caution" | "note", string] => {
	const match = /^(stop|caution|note):\s*(.+)$/su.exec(title);
	return match ? [match[1] as "stop" | "caution" | "note", match[2] as string] : ["caution", title];
};

const inlines = (nodes: readonly PhrasingContent[], vault: Vault): Inline[] =>
	trimmed(nodes.flatMap((node) => inlineOf(node, vault)));

const inlineOf = (node: PhrasingContent, vault: Vault): Inline[] => {
	switch (node.type) {
		case "text":
			// Where a condition between two sentences says nothing, its two spaces are one.
			return vault.open(node.value.replaceAll(/\s*\n\s*| {2,}/gu, " "));
		case "inlineCode":
			return vault.open(node.value);
		case "strong":
			return [{ kind: "strong", children: inlines(node.children, vault) }];
		case "emphasis":
			return [{ kind: "emphasis", children: inlines(node.children, vault) }];
		case "break":
			return [{ kind: "text", text: " " }];
		case "link":
			return [{ kind: "link", to: node.url, children: inlines(node.children, vault) }];
		default:
			throw new Error(`no inline for Markdown "${node.type}"`);
	}
};

/** A callout's title is cut off its paragraph; the space behind it goes too. */
const trimmed = (children: Inline[]): Inline[] => {
	const [first, ...rest] = children;
	return first?.kind === "text" && /^\s/u.test(first.text)
		? [{ kind: "text", text: first.text.trimStart() }, ...rest]
		: children;
};

const plain = (nodes: readonly PhrasingContent[], vault: Vault): string =>
	inlines(nodes, vault)
		.map((inline) => (inline.kind === "text" ? inline.text : ""))
		.join("");
