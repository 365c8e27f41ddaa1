import type { ReactElement } from "react";
import type { Column, Row } from "../../../document/blocks.ts";
import type { Weight } from "../../../measure/faces.ts";
import { columnUnit, printCell, tableCaption } from "../../print/print-text.ts";
import { abreast } from "../abreast.ts";
import { INK } from "../design.ts";
import {
	alignOf,
	HEAD_LEADING,
	isGroup,
	TABLE_LEADING as LEADING,
	planTable,
	type TableBlock,
	type TablePlan,
	weightOf,
} from "../plan-table.ts";
import { inSection, type Scene } from "../scene.ts";
import type { Tag } from "../tags.ts";
import { PencilBox, Unset, VerdictWord } from "./boxed.tsx";
import { Box, type BoxStyle, Space, type, type WordStyle, Words } from "./primitives.tsx";
import { setInline } from "./rich.tsx";

const cellBox = ({ pad, lead }: TablePlan, width: number, index = 0): BoxStyle => ({
	width,
	paddingTop: pad.y,
	paddingBottom: pad.y + 0.6,
	paddingLeft: lead[index] ?? pad.x,
	paddingRight: pad.x,
});

const Head = ({ plan, tag }: { plan: TablePlan; tag: Tag }): ReactElement => {
	const { block, scene, size, widths } = plan;
	const { rule } = scene.design;
	return (
		<Box
			fixed
			wrap={false}
			tag={tag}
			style={{
				flexDirection: "row",
				alignItems: "flex-end",
				borderTopWidth: rule.thick,
				borderBottomWidth: rule.thin,
				borderColor: INK.rule,
			}}
		>
			{block.columns.map((column, i) => {
				const unit = columnUnit(column, scene.printing);
				const textAlign = alignOf(column);
				return (
					<Box key={column.id} tag={{ role: "TH", scope: "Column" }} style={cellBox(plan, widths[i] ?? 0, i)}>
						<Words style={{ ...type(size, HEAD_LEADING, "semibold"), textAlign }}>{column.head}</Words>
						{unit === undefined ? null : (
							<Words style={{ ...type(size, HEAD_LEADING), textAlign }}>{unit}</Words>
						)}
					</Box>
				);
			})}
		</Box>
	);
};

const Body = ({
	plan,
	row,
	column,
	index,
}: {
	plan: TablePlan;
	row: Row;
	column: Column;
	index: number;
}): ReactElement => {
	const { scene, size, widths, pad } = plan;
	const cell = row.cells[column.id];
	const tag: Tag = column.rowHead === true ? { role: "TH", scope: "Row" } : { role: "TD" };
	const width = widths[index] ?? 0;
	const box = cellBox(plan, width, index);
	const weight: Weight = column.rowHead === true && row.emphasis === undefined ? "semibold" : weightOf(row);
	const words: WordStyle = { ...type(size, LEADING, weight), textAlign: alignOf(column), ...box };
	const room = width - pad.x - (plan.lead[index] ?? pad.x);
	switch (cell?.kind) {
		case "verdict":
			return (
				<Box tag={tag} style={box}>
					<VerdictWord verdict={cell.verdict} size={size} room={room} scene={scene} />
				</Box>
			);
		case "unset":
			return (
				<Box tag={tag} style={box}>
					<Unset text={cell.text} size={size} room={room} scene={scene} end={alignOf(column) === "right"} />
				</Box>
			);
		case "blank":
			return (
				<Box tag={tag} style={box}>
					<PencilBox scene={scene} width={room} />
				</Box>
			);
		case "rich":
			return (
				<Words tag={tag} style={words}>
					{setInline(cell.children, scene)}
				</Words>
			);
		default:
			return (
				<Words tag={tag} style={words}>
					{printCell(cell, scene.printing, column)}
				</Words>
			);
	}
};

/** One cell as wide as the table, and empty ones so that the row keeps its count. */
const Group = ({ plan, row }: { plan: TablePlan; row: Row }): ReactElement => {
	const { block, scene, size, widths } = plan;
	const width = widths.reduce((sum, w) => sum + w, 0);
	const [cell] = Object.values(row.cells);
	return (
		<>
			<Words
				tag={{ role: "TH", scope: "Row" }}
				style={{ ...type(size, LEADING, "bold"), ...cellBox(plan, width), paddingTop: plan.pad.y * 2 }}
			>
				{printCell(cell, scene.printing)}
			</Words>
			{block.columns.slice(1).map((column) => (
				<Box key={column.id} tag={{ role: "TD" }} style={{ width: 0 }} />
			))}
		</>
	);
};

const BodyRow = ({ plan, row, last }: { plan: TablePlan; row: Row; last: boolean }): ReactElement => {
	const { block, scene } = plan;
	const { rule } = scene.design;
	const group = isGroup(row);
	return (
		<Box
			tag={{ role: "TR" }}
			wrap={false}
			withNext={group}
			style={{
				flexDirection: "row",
				borderColor: last ? INK.rule : INK.hair,
				borderBottomWidth: last ? rule.thick : rule.hair,
				...(row.emphasis === "total" ? { borderTopWidth: rule.thin } : {}),
			}}
		>
			{group ? (
				<Group plan={plan} row={row} />
			) : (
				block.columns.map((column, i) => (
					<Body key={column.id} plan={plan} row={row} column={column} index={i} />
				))
			)}
		</Box>
	);
};

/** Rows that stand at least beneath a head, and at the end, of a table that runs over pages. */
const LEAST_ROWS = 3;

/** A table of fewer rows stands on one page, unless no page has room for it. */
const DIVIDED_FROM = 12;

/** The word for the pages that a table runs over: which table it is that goes on there. */
const Continued = ({ plan }: { plan: TablePlan }): ReactElement | null => {
	const { block, scene, size, widths } = plan;
	return (
		<Words
			fixed
			onlyAgain
			style={{
				...type(size, 1.25, "semibold"),
				width: widths.reduce((sum, w) => sum + w, 0),
				paddingBottom: 3,
				color: INK.heading,
			}}
		>
			{`${block.number ?? block.caption} ${scene.words.continued}`}
		</Words>
	);
};

/** The table down so many columns of the page, or down as many as its numbers leave room for. */
const sideBySide = (block: TableBlock, scene: Scene, columns: number): readonly TableBlock[] => {
	if (columns < 2) {
		const { abreast: _, ...plain } = block;
		return [block.abreast === undefined ? block : plain];
	}
	const chunks = abreast(block, scene, columns);
	const widest = Math.max(
		...chunks.map((chunk) => planTable(chunk, scene).widths.reduce((sum, width) => sum + width, 0)),
	);
	return widest > scene.width + 0.01 ? sideBySide(block, scene, columns - 1) : chunks;
};

/**
 * Table of any length: its head repeats on every page, no row is split, and neither caption nor head is left without
 * rows. A short one is not divided. Numbers stand right in one style per column; their unit stands in the head.
 */
export const Table = ({ block, scene }: { block: TableBlock; scene: Scene }): ReactElement => {
	const chunks = sideBySide(block, scene, block.abreast ?? 1);
	return (
		<>
			{chunks.map((chunk, i) => (
				// biome-ignore lint/suspicious/noArrayIndexKey: a paper is set once, in this order
				<OneTable key={i} block={chunk} scene={scene} again={i > 0} />
			))}
		</>
	);
};

const OneTable = ({
	block,
	scene,
	again,
}: {
	block: TableBlock;
	scene: Scene;
	/** Goes on from the page before. */
	again: boolean;
}): ReactElement => {
	const { design } = scene;
	const planned = planTable(block, scene);
	const tag: Tag = { role: "Table", ...inSection(scene) };
	const id = block.id === undefined || again ? {} : { id: block.id };
	const head: Tag = { role: "TR", once: true };
	const caption = again
		? `${block.number ?? block.caption} ${scene.words.continued}`
		: tableCaption(block, scene.printing);
	const captioned = caption !== scene.title;
	const note =
		block.note === undefined ? null : (
			<Words
				tag={{ role: "P", within: scene.sect ?? tag }}
				withPrevious
				style={{ ...type(design.note, 1.3), width: scene.width, marginTop: design.step * 0.6 }}
			>
				{setInline(block.note, scene)}
			</Words>
		);
	const whole = block.rows.length < DIVIDED_FROM || block.abreast !== undefined;
	const least = whole ? block.rows.length : LEAST_ROWS;
	return (
		<>
			<Space height={design.step * 0.6} />
			{!captioned ? null : (
				<Words
					{...id}
					tag={{ role: "Caption", within: tag }}
					withNext
					style={{ ...type(planned.size + 0.5, 1.25, "semibold"), marginBottom: 3, color: INK.heading }}
				>
					{caption}
				</Words>
			)}
			<Box
				{...(captioned ? {} : id)}
				tag={tag}
				least={{ first: least, last: least + (note === null ? 0 : 1) }}
				style={{ width: planned.widths.reduce((sum, w) => sum + w, 0) }}
			>
				<Continued plan={planned} />
				<Head plan={planned} tag={head} />
				{block.rows.map((row, i) => (
					// biome-ignore lint/suspicious/noArrayIndexKey: a paper is set once, in this order
					<BodyRow key={i} plan={planned} row={row} last={i === block.rows.length - 1} />
				))}
				{note}
			</Box>
			<Space height={design.step * 1.8} />
		</>
	);
};
