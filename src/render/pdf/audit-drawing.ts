import type { Drawing, Shape } from "../../document/shapes.ts";
import { missingGlyphs, textWidth } from "../../measure/text-width.ts";
import { type LayoutFinding, points, short, TOLERANCE } from "./findings.ts";

/** Labels that the drawing cuts off, and signs that the family lacks. */
export const auditDrawing = (drawing: Drawing, page: number): readonly LayoutFinding[] =>
	labelsOf(drawing.shapes, 0, 0).flatMap((label) => auditLabel(label, drawing, page));

type TextShape = Extract<Shape, { kind: "text" }>;

const labelsOf = (shapes: readonly Shape[], dx: number, dy: number): readonly TextShape[] =>
	shapes.flatMap((shape) => {
		if (shape.kind === "group") return labelsOf(shape.children, dx + shape.dx, dy + shape.dy);
		return shape.kind === "text" ? [{ ...shape, x: shape.x + dx, y: shape.y + dy }] : [];
	});

/** A label outside its drawing is cut off; one in an unknown sign is misread. */
const auditLabel = (label: TextShape, drawing: Drawing, page: number): readonly LayoutFinding[] => {
	const { size, weight = "regular", italic = false } = label;
	const missing = missingGlyphs(label.text, weight, italic);
	if (missing.length > 0) {
		const detail = `in drawing ${drawing.id}: not in the shipped family: ${missing.join(" ")}`;
		return [{ kind: "missing-glyph", page, text: short(label.text), detail }];
	}
	const width = textWidth(label.text, { size, weight, italic });
	const start = label.anchor === "end" ? -width : label.anchor === "middle" ? -width / 2 : 0;
	const turn = ((label.rotate ?? 0) * Math.PI) / 180;
	const outside = [start, start + width].some((along) => {
		const x = label.x + along * Math.cos(turn);
		const y = label.y + along * Math.sin(turn);
		return x < -TOLERANCE || x > drawing.width + TOLERANCE || y < 0 || y > drawing.height + TOLERANCE;
	});
	if (!outside) return [];
	const detail = `in drawing ${drawing.id}: the label leaves its ${points(drawing.width)} × ${points(drawing.height)} pt`;
	return [{ kind: "clipped-label", page, text: short(label.text), detail }];
};
