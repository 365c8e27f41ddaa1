import PDFDocument from "pdfkit";
import type { Block } from "../../../src/document/blocks.ts";
import type { PaperDocument } from "../../../src/document/document.ts";
import type { Drawing, Shape } from "../../../src/document/shapes.ts";
import { FACES } from "../../../src/measure/faces.ts";
import { columnUnit, printCell, printInline, printingOf } from "../../../src/render/print/print-text.ts";
import { PRINT_WORDS } from "../../../src/render/print/print-words.ts";

/*
 * A yardstick: the same words, numbers and drawings set by hand straight on pdfkit. Neither tags nor audit, one weight a
 * cell, no running text over links: less than a paper needs, and so a bound from below.
 */

type Font = "regular" | "semibold" | "bold" | "italic";

/** What pdfkit can do beside what the renderer uses of it. */
interface Canvas {
	on(event: string, heard: (chunk: Uint8Array) => void): void;
	registerFont(name: string, path: string): void;
	addPage(): Canvas;
	font(name: Font, size: number): Canvas;
	fillColor(color: string): Canvas;
	fillOpacity(share: number): Canvas;
	text(text: string, x: number, y: number, options?: object): Canvas;
	heightOfString(text: string, options: object): number;
	widthOfString(text: string): number;
	save(): Canvas;
	restore(): Canvas;
	translate(x: number, y: number): Canvas;
	rotate(degrees: number, options: object): Canvas;
	path(d: string): Canvas;
	clip(): Canvas;
	fill(color?: string, rule?: string): Canvas;
	stroke(color?: string): Canvas;
	lineWidth(width: number): Canvas;
	lineCap(cap: string): Canvas;
	lineJoin(join: string): Canvas;
	dash(length: number, options: object): Canvas;
	undash(): Canvas;
	moveTo(x: number, y: number): Canvas;
	lineTo(x: number, y: number): Canvas;
	end(): void;
}

const PAGE = { width: 612, height: 792, side: 54, top: 68, bottom: 66 } as const;
const WIDTH = PAGE.width - 2 * PAGE.side;

const draw = (canvas: Canvas, shapes: readonly Shape[]): void => {
	for (const shape of shapes) {
		canvas.save();
		if (shape.kind === "group") {
			canvas.translate(shape.dx, shape.dy);
			draw(canvas, shape.children);
		} else if (shape.kind === "text") {
			canvas
				.font(shape.italic === true ? "italic" : (shape.weight ?? "regular"), shape.size)
				.fillColor(shape.color);
			const width = canvas.widthOfString(shape.text);
			const x = shape.x - (shape.anchor === "end" ? width : shape.anchor === "middle" ? width / 2 : 0);
			if (shape.rotate !== undefined) canvas.rotate(shape.rotate, { origin: [shape.x, shape.y] });
			canvas.text(shape.text, x, shape.y, { lineBreak: false, baseline: "alphabetic" });
		} else {
			const { stroke } = shape;
			const outline = (): Canvas =>
				shape.kind === "path"
					? canvas.path(shape.d)
					: canvas.moveTo(shape.x1, shape.y1).lineTo(shape.x2, shape.y2);
			if (shape.kind === "path") {
				if (shape.clip !== undefined) canvas.path(shape.clip).clip();
				if (shape.fill !== undefined)
					outline()
						.fillOpacity(shape.fillOpacity ?? 1)
						.fill(shape.fill, shape.evenOdd === true ? "even-odd" : "non-zero");
			}
			if (stroke !== undefined) {
				canvas
					.lineWidth(stroke.width)
					.lineCap(stroke.cap ?? "butt")
					.lineJoin(stroke.join ?? "miter");
				const [on, off] = stroke.dash ?? [];
				if (on !== undefined) canvas.dash(on, { space: off ?? on });
				outline().stroke(stroke.color);
			}
		}
		canvas.restore();
	}
};

/** @returns the file */
export const setOnPdfkit = async (paper: PaperDocument): Promise<Uint8Array> => {
	const made: unknown = new PDFDocument({
		autoFirstPage: false,
		compress: true,
		size: "LETTER",
		margin: 0,
	} as unknown as ConstructorParameters<typeof PDFDocument>[0]);
	const canvas = made as Canvas;
	const chunks: Uint8Array[] = [];
	canvas.on("data", (chunk) => chunks.push(chunk));
	const done = new Promise<void>((resolve) => canvas.on("end", () => resolve()));
	for (const face of FACES)
		if (!face.italic || face.weight === "regular")
			canvas.registerFont(face.italic ? "italic" : face.weight, face.path);
	const printing = printingOf(paper);
	const words = PRINT_WORDS[paper.language];
	const { imprint } = paper;
	let page = 0;
	let y: number = PAGE.height;

	const turn = (): void => {
		page += 1;
		canvas.addPage();
		canvas.font("regular", 8).fillColor("#000000");
		canvas.text(`${imprint.operator} · ${imprint.well}`, PAGE.side, 40, { lineBreak: false });
		canvas.text(imprint.caution, PAGE.side, PAGE.height - 50, { lineBreak: false });
		canvas.text(`${imprint.words.page} ${page}`, PAGE.width - 100, PAGE.height - 40, { lineBreak: false });
		y = PAGE.top;
	};
	const room = (height: number): void => {
		if (y + height > PAGE.height - PAGE.bottom) turn();
	};
	const write = (
		text: string,
		font: Font,
		size: number,
		x: number = PAGE.side,
		width: number = WIDTH,
		gap = 5,
	): void => {
		if (text === "") return;
		canvas.font(font, size);
		const height = canvas.heightOfString(text, { width });
		room(height);
		canvas.text(text, x, y, { width });
		y += height + gap;
	};
	const grid = (
		cells: readonly { readonly text: string; readonly end: boolean; readonly font: Font }[],
		widths: readonly number[],
		size: number,
		head?: () => void,
	): void => {
		const heights = cells.map(({ text, font }, i) =>
			canvas.font(font, size).heightOfString(text, { width: (widths[i] ?? 40) - 8 }),
		);
		const height = Math.max(...heights) + 5;
		if (y + height > PAGE.height - PAGE.bottom) {
			turn();
			head?.();
		}
		let x: number = PAGE.side;
		for (const [i, { text, end, font }] of cells.entries()) {
			const width = widths[i] ?? 40;
			canvas.font(font, size).text(text, x + 4, y + 2, { width: width - 8, align: end ? "right" : "left" });
			x += width;
		}
		y += height;
		canvas.lineWidth(0.5).moveTo(PAGE.side, y).lineTo(x, y).stroke("#000000");
	};

	const picture = (drawing: Drawing): void => {
		room(drawing.height);
		canvas.save().translate(PAGE.side + (WIDTH - drawing.width) / 2, y);
		draw(canvas, drawing.shapes);
		canvas.restore();
		y += drawing.height + 6;
	};

	const set = (block: Block, x: number, width: number): void => {
		switch (block.kind) {
			case "heading":
				write(block.text, "bold", 11.5, x, width);
				break;
			case "paragraph":
				write(printInline(block.children, printing), "regular", 10, x, width);
				break;
			case "list":
				for (const [i, item] of block.items.entries()) {
					room(14);
					canvas.font("regular", 10).text(block.ordered ? `${i + 1}.` : "•", x, y, { lineBreak: false });
					for (const inner of item) set(inner, x + 16, width - 16);
				}
				break;
			case "facts":
			case "figures":
				for (const { label, value, note } of block.items)
					grid(
						[
							{ text: label, end: false, font: "regular" },
							{ text: `${printCell(value, printing)} ${note ?? ""}`, end: false, font: "semibold" },
						],
						[width * 0.4, width * 0.6],
						9.5,
					);
				y += 8;
				break;
			case "table": {
				const size = block.dense === true ? 9 : 9.5;
				const shares = block.columns.reduce((sum, column) => sum + column.width, 0);
				const widths = block.columns.map((column) => (width * column.width) / shares);
				const isEnd = block.columns.map(
					(column) => (column.align ?? (column.kind === "quantity" ? "end" : "start")) === "end",
				);
				const head = (): void =>
					grid(
						block.columns.map((column, i) => ({
							text: `${column.head}\n${columnUnit(column, printing) ?? ""}`,
							end: isEnd[i] ?? false,
							font: "semibold",
						})),
						widths,
						size,
					);
				room(80);
				write(block.caption, "semibold", 10);
				head();
				for (const row of block.rows) {
					const [only, ...others] = Object.values(row.cells);
					if (row.emphasis === "group" && others.length === 0)
						grid([{ text: printCell(only, printing), end: false, font: "bold" }], [width], size, head);
					else
						grid(
							block.columns.map((column, i) => ({
								text: printCell(row.cells[column.id], printing, column),
								end: isEnd[i] ?? false,
								font: column.rowHead === true ? "semibold" : "regular",
							})),
							widths,
							size,
							head,
						);
				}
				y += 4;
				write(printInline(block.note ?? [], printing), "regular", 9);
				break;
			}
			case "figure":
				picture(block.drawing);
				write(printInline(block.caption, printing), "semibold", 9);
				break;
			case "callout":
				write(`${words.tones[block.tone]}: ${block.title}`, "bold", 10.5, x + 8, width - 16);
				for (const inner of block.blocks) set(inner, x + 8, width - 16);
				break;
			case "columns":
				for (const inner of block.blocks) set(inner, x, width);
				break;
			case "sign-in":
				for (let line = 0; line <= block.lines; line += 1)
					grid(
						block.columns.map(({ head }) => ({ text: line === 0 ? head : " ", end: false, font: "regular" })),
						block.columns.map(() => width / block.columns.length),
						10,
					);
				break;
			case "contents":
				for (const section of paper.sections)
					write(`${section.number ?? ""} ${section.title}`, "regular", 10);
				break;
			case "beside":
				for (const each of [...block.left, ...block.right]) set(each, x, width);
				break;
			case "list-of":
				break;
			case "page-break":
				turn();
				break;
			default:
				block satisfies never;
		}
	};

	turn();
	write(imprint.title, "bold", 23);
	for (const section of paper.sections) {
		if (section.newPage === true) turn();
		room(60);
		write(`${section.number ?? ""}  ${section.title}`, "bold", 15);
		for (const block of section.blocks) set(block, PAGE.side, WIDTH);
	}
	canvas.end();
	await done;
	return Buffer.concat(chunks);
};
