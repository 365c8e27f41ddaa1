import type { Cell, Column, Row } from "../../document/blocks.ts";
import { TABLE_LEADING, type TableBlock } from "./plan-table.ts";
import type { Scene } from "./scene.ts";

/** What a page holds beside the rows [pt]: a caption and two lines of head; on the first also a section's title and words. */
const HEAD = 58;
/** As much beside the rows of half a page. */
const HALF_HEAD = 48;
/** Pages from which a table is set in halves of them. */
const LONG = 2;
const FIRST = 150;

/** Lengths of the rows' cells are those of one line; a long table of words is no table to set abreast. */
const rowHeight = (block: TableBlock, { design }: Scene): number =>
	(block.dense === true ? design.dense : design.table) * TABLE_LEADING +
	2 * design.cellY +
	0.6 +
	design.rule.hair;

const suffixed = (columns: readonly Column[], i: number): readonly Column[] =>
	i === 0
		? columns
		: columns.map((column) => ({
				...column,
				id: `${column.id}.${i}`,
				rowHead: false,
			}));

/**
 * A long narrow table, its rows running down several columns of it: read down the first, then down the next. One that
 * takes more than two pages is set in halves of them, so that it begins wherever half a page is left. The columns of the
 * last part are as long as each other.
 */
export const abreast = (block: TableBlock, scene: Scene, columns: number): readonly TableBlock[] => {
	const { sheet } = scene;
	const room = sheet.height - sheet.top - sheet.bottom;
	const tall = rowHeight(block, scene);
	const chunks: TableBlock[] = [];
	const whole = Math.ceil(block.rows.length / columns);
	const onFirst = Math.floor((room - FIRST) / tall);
	const inHalf = Math.max(4, Math.floor((room / 2 - HALF_HEAD) / tall));
	// Parts alike in length: none is left with a row or two.
	const halves = Math.ceil(whole / Math.ceil(whole / inHalf));
	const onPage = () => Math.max(4, chunks.length === 0 ? onFirst : Math.floor((room - HEAD) / tall));
	let at = 0;
	while (at < block.rows.length) {
		const most = whole > LONG * onFirst ? halves : onPage();
		const left = block.rows.length - at;
		const down = Math.min(most, Math.ceil(left / columns));
		const rows = Array.from({ length: down }, (_, i): Row => {
			const cells: Record<string, Cell> = {};
			for (let c = 0; c < columns; c += 1) {
				const row = block.rows[at + c * down + i];
				if (at + c * down + i >= at + left) continue;
				for (const [id, cell] of Object.entries(row?.cells ?? {})) cells[c === 0 ? id : `${id}.${c}`] = cell;
			}
			return { cells };
		});
		at += down * columns;
		const { note, ...rest } = block;
		chunks.push({
			...rest,
			columns: Array.from({ length: columns }, (_, c) => suffixed(block.columns, c)).flat(),
			rows,
			...(at >= block.rows.length && note !== undefined ? { note } : {}),
		});
	}
	return chunks;
};
