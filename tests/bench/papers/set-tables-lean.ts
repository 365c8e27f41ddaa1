import PDFDocument, { type StructureContent, type StructureElement } from "pdfkit";
import type { Row } from "../../../src/document/blocks.ts";
import type { PaperDocument } from "../../../src/document/document.ts";
import { faceFor, fontBytes } from "../../../src/measure/faces.ts";
import { fontMetrics, textWidth, type Weight } from "../../../src/measure/text-width.ts";
import { PAGE } from "../../../src/render/pdf/design.ts";
import {
	alignOf,
	headHeight,
	isGroup,
	planTable,
	TABLE_LEADING,
	type TableBlock,
	type TablePlan,
	weightOf,
} from "../../../src/render/pdf/plan-table.ts";
import { sceneOf } from "../../../src/render/pdf/scene.ts";
import { wrapped } from "../../../src/render/pdf/wrapped.ts";
import { columnUnit, printCell } from "../../../src/render/print/print-text.ts";

/*
 * A trial: the tables of a paper, and nothing else of it, set by a layout of our own straight on pdfkit, with what a paper
 * cannot do without: our column plan, tags of every cell, a head repeated as an artifact, rows whole, two rows under the
 * head and two at the end. What it leaves out is in DEVELOPERS.md. It tells what such a layout would gain.
 */

interface Canvas {
	on(event: string, heard: (chunk: Uint8Array) => void): void;
	registerFont(name: string, bytes: Uint8Array): void;
	addPage(options: { size: readonly [number, number]; margin: number }): Canvas;
	font(name: Weight, size: number): Canvas;
	fillColor(color: string): Canvas;
	text(text: string, x: number, y: number, options: object): Canvas;
	lineWidth(width: number): Canvas;
	moveTo(x: number, y: number): Canvas;
	lineTo(x: number, y: number): Canvas;
	stroke(color: string): Canvas;
	struct(role: string, options?: { scope?: "Column" | "Row" }): StructureElement;
	addStructure(element: StructureElement): Canvas;
	markStructureContent(role: string): StructureContent;
	markContent(role: "Artifact", options?: { type: "Layout" }): Canvas;
	endMarkedContent(): Canvas;
	end(): void;
}

interface Cell {
	readonly lines: readonly string[];
	readonly weight: Weight;
	readonly align: "left" | "right" | "center";
	readonly role: "TH" | "TD";
	readonly scope?: "Column" | "Row";
}

/** A row measured: the lines of each cell, and its height [pt]. */
interface SetRow {
	readonly cells: readonly Cell[];
	readonly height: number;
}

const FLOOR = PAGE.height - PAGE.bottom;

const measured = (plan: TablePlan, row: Row): SetRow => {
	const { block, scene, size, widths, pad, lead } = plan;
	const whole = widths.reduce((sum, width) => sum + width, 0);
	const columns = isGroup(row) ? block.columns.slice(0, 1) : block.columns;
	const cells = columns.map((column, i): Cell => {
		const head = column.rowHead === true;
		const weight = isGroup(row) ? "bold" : head && row.emphasis === undefined ? "semibold" : weightOf(row);
		const room = (isGroup(row) ? whole : (widths[i] ?? 0)) - (lead[i] ?? pad.x) - pad.x;
		const text = printCell(row.cells[column.id], scene.printing, column);
		return {
			lines: wrapped(text, room, { size, weight }),
			weight,
			align: alignOf(column),
			...(head ? ({ role: "TH", scope: "Row" } as const) : ({ role: "TD" } as const)),
		};
	});
	const most = Math.max(1, ...cells.map(({ lines }) => lines.length));
	return { cells, height: most * size * TABLE_LEADING + 2 * pad.y + 0.6 };
};

const headOf = (plan: TablePlan): SetRow => ({
	height: headHeight(plan),
	cells: plan.block.columns.map((column, i): Cell => {
		const room = (plan.widths[i] ?? 0) - (plan.lead[i] ?? plan.pad.x) - plan.pad.x;
		const unit = columnUnit(column, plan.scene.printing);
		const lines = wrapped(column.head, room, { size: plan.size, weight: "semibold" });
		return {
			lines: unit === undefined ? lines : [...lines, unit],
			weight: "semibold",
			align: alignOf(column),
			role: "TH",
			scope: "Column",
		};
	}),
});

/** @returns the file, of the tables of a paper alone */
export const setTablesLean = async (paper: PaperDocument): Promise<Uint8Array> => {
	const scene = sceneOf(paper);
	const made: unknown = new PDFDocument({
		autoFirstPage: false,
		compress: true,
		pdfVersion: "1.7",
		subset: "PDF/A-3a",
		tagged: true,
		lang: "en-US",
		displayTitle: true,
		info: { Title: paper.imprint.title },
	});
	const canvas = made as Canvas;
	const chunks: Uint8Array[] = [];
	canvas.on("data", (chunk) => chunks.push(chunk));
	const done = new Promise<void>((resolve) => canvas.on("end", () => resolve()));
	for (const weight of ["regular", "semibold", "bold"] as const)
		canvas.registerFont(weight, fontBytes(faceFor(weight)));
	const root = canvas.struct("Document");
	canvas.addStructure(root);
	let y: number = FLOOR;

	const turn = (): void => {
		canvas.addPage({ size: [PAGE.width, PAGE.height], margin: 0 });
		y = PAGE.top;
	};
	const marked = (element: StructureElement, role: string, paint: () => void): void => {
		const content = canvas.markStructureContent(role);
		paint();
		canvas.endMarkedContent();
		element.add(content);
	};
	const asArtifact = (paint: () => void): void => {
		canvas.markContent("Artifact", { type: "Layout" });
		paint();
		canvas.endMarkedContent();
	};
	const rule = (width: number, weight: number): void =>
		asArtifact(() => {
			canvas
				.lineWidth(weight)
				.moveTo(PAGE.side, y)
				.lineTo(PAGE.side + width, y)
				.stroke("#000000");
		});
	const paint = ({ cells, height }: SetRow, plan: TablePlan, tags?: StructureElement): void => {
		const { size, widths, pad, lead } = plan;
		const { ascent } = fontMetrics({ size });
		let x: number = PAGE.side;
		for (const [i, { lines, weight, align, role, scope }] of cells.entries()) {
			const width = widths[i] ?? 0;
			const [left, right] = [x + (lead[i] ?? pad.x), x + width - pad.x];
			const write = (): void => {
				canvas.font(weight, size).fillColor("#000000");
				for (const [n, line] of lines.entries()) {
					const space = right - left - textWidth(line, { size, weight });
					const at = align === "right" ? left + space : align === "center" ? left + space / 2 : left;
					canvas.text(line, at, y + pad.y + ascent + n * size * TABLE_LEADING, {
						lineBreak: false,
						baseline: "alphabetic",
					});
				}
			};
			if (tags === undefined) asArtifact(write);
			else {
				const cell = canvas.struct(role, scope === undefined ? {} : { scope });
				tags.add(cell);
				marked(cell, role, write);
			}
			x += width;
		}
		y += height;
		rule(x - PAGE.side, 0.4);
	};

	const set = (block: TableBlock): void => {
		const plan = planTable(block, scene);
		const head = headOf(plan);
		const rows = block.rows.map((row) => measured(plan, row));
		const table = canvas.struct("Table");
		root.add(table);
		const caption = plan.size * 1.6;
		const first = rows.slice(0, 2).reduce((sum, { height }) => sum + height, 0);
		if (y + caption + head.height + first > FLOOR) turn();
		const title = canvas.struct("Caption");
		table.add(title);
		marked(title, "Caption", () => {
			canvas.font("semibold", plan.size + 0.5).text(block.caption, PAGE.side, y, { lineBreak: false });
		});
		y += caption;
		const headTags = canvas.struct("TR");
		table.add(headTags);
		paint(head, plan, headTags);
		for (const [i, row] of rows.entries()) {
			const pair = i === rows.length - 2 ? (rows[i + 1]?.height ?? 0) : 0;
			if (y + row.height + pair > FLOOR) {
				turn();
				paint(head, plan);
			}
			const tags = canvas.struct("TR");
			table.add(tags);
			paint(row, plan, tags);
		}
		y += scene.design.step * 2;
	};

	for (const { blocks } of paper.sections) for (const block of blocks) if (block.kind === "table") set(block);
	root.end();
	canvas.end();
	await done;
	return Buffer.concat(chunks);
};
