import type { Block, Cell, Section } from "../document/blocks.ts";
import type { Inline } from "../document/inline.ts";

/*
 * Tables and figures are counted when a paper is whole, and only then can one part speak of another: a reference is
 * written `[see @](#ref:casing)` and becomes `see Table 4`, or nothing where there is no such thing in the papers.
 */

/** What a reference leads to: an id of a paper, and its name there. */
export interface Place {
	readonly id: string;
	readonly name: string;
}
export type Places = ReadonlyMap<string, Place>;

/** Words that a number follows. */
export interface CountingWords {
	readonly table: string;
	readonly figure: string;
	readonly section: string;
}

/** Every block of a list, each made anew by `change` after what lies inside it. */
const changed = (blocks: readonly Block[], change: (block: Block) => Block): readonly Block[] =>
	blocks.map((block): Block => {
		switch (block.kind) {
			case "callout":
				return change({ ...block, blocks: changed(block.blocks, change) });
			case "list":
				return change({
					...block,
					items: block.items.map((item) => changed(item, change)),
				});
			case "beside":
				return change({
					...block,
					left: changed(block.left, change),
					right: changed(block.right, change),
				});
			default:
				return change(block);
		}
	});

/**
 * Counts the tables and figures of a paper through, or in each section by its letter.
 *
 * @param lettered `Table B-2`, counted anew in each section; else `Table 2`, through the paper
 */
export const counted = (
	sections: readonly Section[],
	words: CountingWords,
	lettered: boolean,
): { readonly sections: readonly Section[]; readonly places: Places } => {
	const places = new Map<string, Place>();
	const note = (ref: string, place: Place): void => {
		if (!places.has(ref)) places.set(ref, place);
	};
	const count = { table: 0, figure: 0 };
	const numbered = sections.map((section): Section => {
		if (section.number !== undefined)
			note(section.id, {
				id: section.id,
				name: `${words.section} ${section.number}`,
			});
		if (lettered) {
			count.table = 0;
			count.figure = 0;
		}
		const next = (kind: "table" | "figure"): { readonly id: string; readonly number: string } => {
			count[kind] += 1;
			const of =
				lettered && section.number !== undefined ? `${section.number}-${count[kind]}` : `${count[kind]}`;
			return {
				id: `${kind}-${of.toLowerCase()}`,
				number: `${words[kind]} ${of}`,
			};
		};
		const blocks = changed(section.blocks, (block) => {
			if (block.kind !== "table" && block.kind !== "figure") return block;
			if (block.kind === "table" && block.counted === false) return block;
			const { id, number } = next(block.kind);
			const own = block.id ?? id;
			const ref = block.kind === "table" ? block.ref : block.drawing.id;
			if (ref !== undefined) note(ref, { id: own, name: number });
			return { ...block, id: own, number };
		});
		return { ...section, blocks };
	});
	return { sections: numbered, places };
};

const REFERENCE = /^#ref:(.+)$/u;

/** Leads references to where they go: into the paper itself, else into its companion's file. */
export const referred = (
	sections: readonly Section[],
	own: Places,
	companion: { readonly file: string; readonly places: Places },
): readonly Section[] => {
	const inlines = (children: readonly Inline[]): readonly Inline[] => children.flatMap(inline);
	const inline = (each: Inline): readonly Inline[] => {
		if (each.kind === "strong" || each.kind === "emphasis")
			return [{ ...each, children: inlines(each.children) }];
		if (each.kind !== "link") return [each];
		const ref = REFERENCE.exec(each.to)?.[1];
		if (ref === undefined) return [each];
		const here = own.get(ref);
		const there = companion.places.get(ref);
		const place = here ?? there;
		if (place === undefined) return [];
		const to = here === undefined ? `${companion.file}#${place.id}` : `#${place.id}`;
		return named(each.children, {
			kind: "link",
			to,
			children: [{ kind: "text", text: place.name }],
		});
	};
	const cell = (each: Cell): Cell =>
		each.kind === "rich" ? { ...each, children: inlines(each.children) } : each;
	const block = (each: Block): Block => {
		switch (each.kind) {
			case "paragraph":
				return { ...each, children: inlines(each.children) };
			case "table":
				return {
					...each,
					rows: each.rows.map((row) => ({
						...row,
						cells: Object.fromEntries(Object.entries(row.cells).map(([id, found]) => [id, cell(found)])),
					})),
					...(each.note === undefined ? {} : { note: inlines(each.note) }),
				};
			case "facts":
				return {
					...each,
					items: each.items.map((item) => ({
						...item,
						value: cell(item.value),
					})),
				};
			default:
				return each;
		}
	};
	return sections.map((section) => ({
		...section,
		blocks: changed(section.blocks, block),
	}));
};

/** Words around a reference stay words; the sign `@` in them is the link. */
const named = (children: readonly Inline[], link: Inline): readonly Inline[] =>
	children.flatMap((child): readonly Inline[] => {
		if (child.kind !== "text") return [child];
		const [before = "", ...after] = child.text.split("@");
		if (after.length === 0) return [child];
		const rest = after.join("@");
		return [
			...(before === "" ? [] : [{ kind: "text" as const, text: before }]),
			link,
			...(rest === "" ? [] : [{ kind: "text" as const, text: rest }]),
		];
	});

const plainText = (children: readonly Inline[]): string =>
	children.map((child) => (child.kind === "text" ? child.text : "")).join("");

/** The numbered tables or figures of a paper, for the list that another paper has of them. */
const listed = (
	blocks: readonly Block[],
	of: "tables" | "figures",
): readonly { readonly id: string; readonly number: string; readonly title: string }[] =>
	blocks.flatMap((block) => {
		if (block.kind === "callout") return listed(block.blocks, of);
		if (block.kind === "beside") return listed([...block.left, ...block.right], of);
		if (block.kind !== (of === "tables" ? "table" : "figure")) return [];
		const { id, number } = block as Extract<Block, { kind: "table" | "figure" }>;
		if (id === undefined || number === undefined) return [];
		const title =
			block.kind === "table" ? block.caption : block.kind === "figure" ? plainText(block.caption) : "";
		return [{ id, number, title }];
	});

/** Fills the lists that a paper has of its companion's tables and figures. */
export const withLists = (
	sections: readonly Section[],
	companion: { readonly file: string; readonly sections: readonly Section[] },
): readonly Section[] =>
	sections.map((section) => ({
		...section,
		blocks: changed(section.blocks, (block) =>
			block.kind !== "list-of" || block.elsewhere === undefined
				? block
				: {
						...block,
						elsewhere: listed(
							companion.sections.flatMap((each) => each.blocks),
							block.of,
						).map(({ id, number, title }) => ({ number, title, to: `${companion.file}#${id}` })),
					},
		),
	}));
