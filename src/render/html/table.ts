import type { Column, Row } from "../../document/blocks.ts";
import { columnUnit, tableCaption } from "../print/print-text.ts";
import { escaped } from "./escape.ts";
import { cellHtml, classOf, idOf, inline, type Kind, type Scene } from "./inline.ts";

const alignOf = (column: Column): string | undefined => {
	const align = column.align ?? (column.kind === "quantity" ? "end" : "start");
	return align === "start" ? undefined : align;
};

const isGroup = (row: Row): boolean => row.emphasis === "group" && Object.keys(row.cells).length === 1;

const rowHtml = (row: Row, columns: readonly Column[], scene: Scene): string => {
	if (isGroup(row)) {
		const [cell] = Object.values(row.cells);
		return `<tr class="group"><th scope="rowgroup" colspan="${columns.length}">${cellHtml(cell, scene)}</th></tr>`;
	}
	// A row that goes on with the one above has no head of its own.
	const cells = columns.map((column) => {
		const inside = cellHtml(row.cells[column.id], scene, column);
		return column.rowHead === true && inside !== ""
			? `<th scope="row"${classOf(alignOf(column))}>${inside}</th>`
			: `<td${classOf(alignOf(column))}>${inside}</td>`;
	});
	return `<tr${classOf(row.emphasis)}>${cells.join("")}</tr>`;
};

/** Rows with the subhead that they stand under: a body of the table each. */
const bodies = (rows: readonly Row[]): readonly (readonly Row[])[] =>
	rows.reduce<Row[][]>((all, row) => {
		const last = all.at(-1);
		if (last === undefined || isGroup(row)) all.push([row]);
		else last.push(row);
		return all;
	}, []);

/** A wide table scrolls within its own box, which the keyboard reaches. */
const scrolling = (id: string, table: string): string =>
	`<div class="wide" role="group" tabindex="0" aria-labelledby="${id}">\n${table}\n</div>`;

export const table = (block: Kind<"table">, scene: Scene): string => {
	const id = `t-${scene.next()}`;
	const unseen = tableCaption(block, scene.printing) === scene.title ? "unseen" : undefined;
	const heads = block.columns.map((column) => {
		const unit = columnUnit(column, scene.printing);
		return `<th scope="col"${classOf(alignOf(column))}>${escaped(column.head)}${
			unit === undefined ? "" : ` <span class="unit">${escaped(unit)}</span>`
		}</th>`;
	});
	const rows = bodies(block.rows).map(
		(body) => `<tbody>\n${body.map((row) => rowHtml(row, block.columns, scene)).join("\n")}\n</tbody>`,
	);
	const note = block.note === undefined ? "" : `\n<p class="note">${inline(block.note, scene)}</p>`;
	return `${scrolling(
		id,
		`<table${idOf(block.id)}${classOf(block.dense === true ? "dense" : undefined)}>
<caption id="${id}"${classOf(unseen)}>${escaped(tableCaption(block, scene.printing))}</caption>
<thead><tr>${heads.join("")}</tr></thead>
${rows.join("\n")}
</table>`,
	)}${note}`;
};

export const signIn = (block: Kind<"sign-in">, scene: Scene): string => {
	const id = `t-${scene.next()}`;
	const heads = block.columns.map((column) => `<th scope="col">${escaped(column.head)}</th>`).join("");
	const line = `<tr class="line">${block.columns.map(() => "<td></td>").join("")}</tr>`;
	return scrolling(
		id,
		`<table class="sign">
<caption id="${id}" class="unseen">${escaped(`${scene.title}: ${scene.words.toFillIn}`)}</caption>
<thead><tr>${heads}</tr></thead>
<tbody>
${Array.from({ length: block.lines * (block.abreast ?? 1) }, () => line).join("\n")}
</tbody>
</table>`,
	);
};
