import type PDFDocument from "pdfkit";
import { INK } from "../design.ts";
import type { Laid } from "../layout/laid.ts";
import type { Pen } from "./pen.ts";

/** Dash and gap of a dashed frame, as multiples of its width. */
const DASHES = [3, 2] as const;

/** Paints the ground and the frame of a block whose top left corner is at (x, y). */
export const paintFrame = (context: PDFDocument, pen: Pen, item: Laid, x: number, y: number): void => {
	const { width, height, border, style } = item;
	const color = style.borderColor ?? INK.rule;
	if (style.backgroundColor !== undefined) pen.rectangle(x, y, width, height, style.backgroundColor);
	if (style.borderStyle === "dashed" && border.top > 0) {
		const line = border.top;
		pen.apart(() => {
			context
				.lineWidth(line)
				.dash(DASHES.map((length) => length * line))
				.rect(x + line / 2, y + line / 2, width - line, height - line)
				.stroke(color);
		});
		return;
	}
	if (border.top > 0) pen.rectangle(x, y, width, border.top, color);
	if (border.bottom > 0) pen.rectangle(x, y + height - border.bottom, width, border.bottom, color);
	if (border.left > 0) pen.rectangle(x, y, border.left, height, color);
	if (border.right > 0) pen.rectangle(x + width - border.right, y, border.right, height, color);
};
