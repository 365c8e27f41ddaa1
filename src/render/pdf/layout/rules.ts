import { isBlank, type Laid } from "./laid.ts";
import type { Least } from "./vocabulary.ts";

/*
 * What a page may end between. The rules are what blocks say of themselves (see `FlowProps`); here they are weighed,
 * on nothing but those words, so that they can be tried on blocks of no content.
 */

/** What a block asks of the page. */
export interface Asks {
	/** Room and nothing else: it heads no page and ends none. */
	readonly space: boolean;
	readonly begins: boolean;
	readonly withNext: boolean;
	readonly withPrevious: boolean;
	/** Repeats on every page: it is no content of its own. */
	readonly repeats: boolean;
}

export const asksOf = (item: Laid): Asks => ({
	space: isBlank(item),
	begins: item.props.break === true,
	withNext: item.props.withNext === true,
	withPrevious: item.props.withPrevious === true,
	repeats: item.props.fixed === true,
});

export const isContent = ({ space, repeats }: Asks): boolean => !space && !repeats;

/** The blocks of a list, each told when it is asked for: a table has thousands. */
export interface Blocks {
	readonly length: number;
	readonly at: (index: number) => Asks | undefined;
}

/** Whether at least so many of the blocks from one place to another are content. */
const holds = (blocks: Blocks, from: number, to: number, wanted: number): boolean => {
	let found = 0;
	for (let i = from; i < to && found < wanted; i += 1) {
		const block = blocks.at(i);
		if (block !== undefined && isContent(block)) found += 1;
	}
	return found >= wanted;
};

/**
 * Whether a page may end before the block `at`: something stands on it, no block is parted from one it goes with, and
 * neither page has fewer of these blocks than the least. Where there are not enough for both they stay together.
 */
export const mayPart = (blocks: Blocks, at: number, least: Least = { first: 1, last: 0 }): boolean => {
	let before = at - 1;
	while (blocks.at(before)?.space === true) before -= 1;
	let after = at;
	while (blocks.at(after)?.space === true && blocks.at(after)?.begins !== true) after += 1;
	const [last, next] = [blocks.at(before), blocks.at(after)];
	if (last === undefined || !holds(blocks, 0, at, 1)) return false;
	if (next?.begins === true) return true;
	if (last.withNext || last.repeats || next?.withPrevious === true) return false;
	return holds(blocks, 0, at, least.first) && holds(blocks, at, blocks.length, least.last);
};

/** The last place at or before `limit` where a page may end; 0 where it may nowhere. */
export const lastPlace = (blocks: Blocks, limit: number, least?: Least): number => {
	for (let at = limit; at > 0; at -= 1) if (mayPart(blocks, at, least)) return at;
	return 0;
};
