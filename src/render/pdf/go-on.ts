import type { Block, GoesOn, Section } from "../../document/blocks.ts";

/*
 * takes  a section that is to keep to one page and does not
 * gives  what stays on its page, and what goes on behind the sheet: nothing is left out, and nothing is on both
 */

type Giving = Extract<Block, { kind: "list" | "facts" | "table" }>;

const isGiving = (block: Block): block is Giving & { readonly goesOn: GoesOn } =>
	(block.kind === "list" || block.kind === "facts" || block.kind === "table") && block.goesOn !== undefined;

/** An item leaves a block: so many are then left on the page. */
interface Move {
	readonly block: Giving & { readonly goesOn: GoesOn };
	readonly left: number;
}

const givers = (blocks: readonly Block[]): Move["block"][] =>
	blocks.flatMap((block) =>
		block.kind === "callout" || block.kind === "columns"
			? givers(block.blocks)
			: isGiving(block)
				? [block]
				: [],
	);

const countOf = (block: Giving): number => (block.kind === "table" ? block.rows.length : block.items.length);

const downTo = (block: Move["block"], from: number, to: number): readonly Move[] =>
	Array.from({ length: Math.max(from - to, 0) }, (_, i) => ({ block, left: from - 1 - i }));

/** Every item that may leave the page, in the order in which they do. */
export const movesOf = ({ blocks }: Section): readonly Move[] => {
	const inTurn = givers(blocks).toSorted((a, b) => a.goesOn.turn - b.goesOn.turn);
	return [
		...inTurn.flatMap((block) => downTo(block, countOf(block), block.goesOn.keep)),
		...inTurn.flatMap((block) => downTo(block, Math.min(block.goesOn.keep, countOf(block)), 1)),
	];
};

const cut = <T>(items: readonly T[], left: number): readonly [readonly T[], readonly T[]] => [
	items.slice(0, left),
	items.slice(left),
];

/** One block as it stays and as it goes; the part that goes is no place to link to. */
const halves = (block: Giving, left: number): readonly [Block, Block] => {
	switch (block.kind) {
		case "list": {
			const [stay, go] = cut(block.items, left);
			return [
				{ ...block, items: stay },
				{ ...block, items: go },
			];
		}
		case "facts": {
			const [stay, go] = cut(block.items, left);
			return [
				{ ...block, items: stay },
				{ ...block, items: go },
			];
		}
		case "table": {
			const [stay, go] = cut(block.rows, left);
			const { id: _, ref: __, number: ___, ...rest } = block;
			return [
				{ ...block, rows: stay },
				{ ...rest, rows: go },
			];
		}
		default:
			return block satisfies never;
	}
};

interface Parted {
	readonly stay: readonly Block[];
	readonly go: readonly Block[];
}

const part = (blocks: readonly Block[], left: ReadonlyMap<Block, number>): Parted => {
	const parts = blocks.map((block, i): Parted => {
		if (block.kind === "callout" || block.kind === "columns") {
			const inside = part(block.blocks, left);
			return {
				stay: inside.stay.length === 0 ? [] : [{ ...block, blocks: inside.stay }],
				// Two columns as high as each other are for one page: what goes on runs over as many as it takes.
				go:
					inside.go.length === 0
						? []
						: block.kind === "columns"
							? inside.go
							: [{ ...block, blocks: inside.go }],
			};
		}
		const next = blocks[i + 1];
		const kept = left.get(block);
		const heads = block.kind === "heading" && next !== undefined ? left.get(next) : undefined;
		if (heads !== undefined) return { stay: heads > 0 ? [block] : [], go: [block] };
		if (kept === undefined || !isGiving(block)) return { stay: [block], go: [] };
		const [stay, go] = halves(block, kept);
		return { stay: kept > 0 ? [stay] : [], go: [go] };
	});
	return { stay: parts.flatMap(({ stay }) => stay), go: parts.flatMap(({ go }) => go) };
};

/** Read before anything else on the page: beneath the boxes that head it. */
const withNotice = (blocks: readonly Block[], notice: Block): readonly Block[] => {
	const rest = blocks.findIndex(({ kind }) => kind !== "callout" && kind !== "paragraph");
	const at = rest < 0 ? blocks.length : rest;
	return [...blocks.slice(0, at), notice, ...blocks.slice(at)];
};

/**
 * A section after moves, as it stays on its page, with a box that says what went and to which page; and the section that what
 * went stands in.
 */
export const afterMoves = (
	section: Section,
	moves: readonly Move[],
	page: number,
): { readonly stay: Section; readonly go: Section } => {
	const { goesOn, headless: _, onePage: __, unlisted: ___, ...rest } = section;
	const left = new Map<Move["block"], number>(moves.map((move) => [move.block, move.left]));
	const { stay, go } = part(section.blocks, left);
	const told = [...left].map(([block, kept]) => {
		const gone = countOf(block) - kept;
		return (gone === 1 ? block.goesOn.more.one : block.goesOn.more.many).replaceAll("{n}", String(gone));
	});
	const notice: Block = {
		kind: "callout",
		tone: "stop",
		title: (goesOn?.readAlso ?? "").replaceAll("{page}", String(page)),
		blocks: [{ kind: "paragraph", children: [{ kind: "text", text: `${told.join("; ")}.` }] }],
	};
	return {
		stay: { ...section, blocks: withNotice(stay, notice) },
		go: {
			...rest,
			id: `${section.id}-continued`,
			title: goesOn?.title ?? section.title,
			newPage: true,
			unlisted: true,
			blocks: go,
		},
	};
};
