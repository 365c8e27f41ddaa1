import type { Block, Cell } from "../document/blocks.ts";
import type { Inline } from "../document/inline.ts";

/** The running words of blocks: prose, labels and cells, without numbers and drawings. */
export const wordsIn = (blocks: readonly Block[]): string[] => blocks.flatMap(wordsOfBlock);

const wordsOfBlock = (block: Block): string[] => {
	switch (block.kind) {
		case "heading":
			return [block.text];
		case "paragraph":
			return block.children.flatMap(wordsOfInline);
		case "list":
			return block.items.flatMap(wordsIn);
		case "facts":
		case "figures":
			return block.items.flatMap((item) => [item.label, ...wordsOfCell(item.value)]);
		case "table":
			return [
				block.caption,
				...(block.constants ?? []).flatMap(wordsOfInline),
				...block.columns.map((column) => column.head),
				...block.rows.flatMap((row) => Object.values(row.cells).flatMap(wordsOfCell)),
			];
		case "callout":
			return [block.title, ...wordsIn(block.blocks)];
		case "columns":
			return wordsIn(block.blocks);
		case "beside":
			return wordsIn([...block.left, ...block.right]);
		case "list-of":
		case "figure":
		case "sign-in":
		case "contents":
		case "page-break":
			return [];
	}
};

const wordsOfInline = (inline: Inline): string[] => {
	if (inline.kind === "text") return [inline.text];
	return "children" in inline ? inline.children.flatMap(wordsOfInline) : [];
};

const wordsOfCell = (cell: Cell): string[] => {
	if (cell.kind === "text") return [cell.text];
	return cell.kind === "rich" ? cell.children.flatMap(wordsOfInline) : [];
};

/** Whether a word, or its plural, stands in a text as a word of its own, in any letter case. */
export const saidIn = (text: string): ((word: string) => boolean) => {
	const lower = ` ${text.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, " ")} `;
	return (word) => {
		const bare = word
			.toLowerCase()
			.replaceAll(/[^\p{L}\p{N}]+/gu, " ")
			.trim();
		return lower.includes(` ${bare} `) || lower.includes(` ${bare}s `);
	};
};
