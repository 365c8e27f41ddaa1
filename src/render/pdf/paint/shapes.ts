import type PDFDocument from "pdfkit";
import type { Shape, Stroke } from "../../../document/shapes.ts";
import { textWidth } from "../../../measure/text-width.ts";
import { type Pen, typefaceFor } from "./pen.ts";

type Kind<K extends Shape["kind"]> = Extract<Shape, { kind: K }>;

const setStroke = (context: PDFDocument, { width, cap, join, dash }: Stroke): void => {
	context
		.lineWidth(width)
		.lineCap(cap ?? "butt")
		.lineJoin(join ?? "miter");
	if (dash !== undefined && dash.length > 0) context.dash(dash);
};

const paintPath = (context: PDFDocument, shape: Kind<"path">): void => {
	const { d, clip, stroke, fillOpacity = 1 } = shape;
	const fill = fillOpacity === 0 ? undefined : shape.fill;
	if (clip !== undefined) context.path(clip).clip();
	if (stroke !== undefined) setStroke(context, stroke);
	if (fill !== undefined && fillOpacity < 1) context.fillOpacity(fillOpacity);
	const rule = shape.evenOdd === true ? "even-odd" : "non-zero";
	if (fill !== undefined && stroke !== undefined) context.path(d).fillAndStroke(fill, stroke.color, rule);
	else if (fill !== undefined) context.path(d).fill(fill, rule);
	else if (stroke !== undefined) context.path(d).stroke(stroke.color);
};

const paintText = (context: PDFDocument, pen: Pen, shape: Kind<"text">): void => {
	const { text, size, color, x, y, weight = "regular", italic = false, rotate = 0 } = shape;
	const width = textWidth(text, { size, weight, italic });
	const start = x - (shape.anchor === "end" ? width : shape.anchor === "middle" ? width / 2 : 0);
	const put = (): void => pen.text(text, typefaceFor(weight, italic), size, color, start, y);
	if (rotate === 0) put();
	else
		pen.apart(() => {
			context.rotate(rotate, { origin: [x, y] });
			put();
		});
};

/** Paints shapes, their origin where the page's is. */
export const paintShapes = (context: PDFDocument, pen: Pen, shapes: readonly Shape[]): void => {
	for (const shape of shapes) {
		switch (shape.kind) {
			case "group":
				pen.apart(() => {
					context.translate(shape.dx, shape.dy);
					paintShapes(context, pen, shape.children);
				});
				break;
			case "text":
				paintText(context, pen, shape);
				break;
			case "line":
				pen.apart(() => {
					setStroke(context, shape.stroke);
					context.moveTo(shape.x1, shape.y1).lineTo(shape.x2, shape.y2).stroke(shape.stroke.color);
				});
				break;
			case "path":
				pen.apart(() => paintPath(context, shape));
				break;
			default:
				shape satisfies never;
		}
	}
};
