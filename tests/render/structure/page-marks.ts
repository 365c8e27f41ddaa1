import { AnnotationMode, OPS, type PDFPageProxy } from "pdfjs-dist/legacy/build/pdf.mjs";

/** Operators that put ink on a page: ISO 32000-1, tables 60 (paths), 77 (shading), 92 (images), 87 (forms), 109 (text). */
const PAINTING: ReadonlySet<number> = new Set([
	OPS.stroke,
	OPS.closeStroke,
	OPS.fill,
	OPS.eoFill,
	OPS.fillStroke,
	OPS.eoFillStroke,
	OPS.closeFillStroke,
	OPS.closeEOFillStroke,
	OPS.shadingFill,
	OPS.showText,
	OPS.showSpacedText,
	OPS.nextLineShowText,
	OPS.nextLineSetSpacingShowText,
	OPS.paintXObject,
	OPS.paintImageXObject,
	OPS.paintInlineImageXObject,
	OPS.paintImageMaskXObject,
	OPS.paintFormXObjectBegin,
]);

/** What one page paints, and how it is marked. */
export interface PageMarks {
	readonly painted: number;
	/** Painting operators that are neither content nor artifact. */
	readonly outside: number;
	/** Marked content that does not nest with saved graphics states, or is not closed: ISO 32000-1, 14.6.1. */
	readonly crossed: number;
	/** Artifacts within content, or content within artifacts: ISO 14289-1, 7.1. */
	readonly mixed: number;
	/** Identifiers of marked content, in order. */
	readonly ids: readonly number[];
}

interface Mark {
	readonly artifact: boolean;
	readonly id?: number;
}

/** Tags come as text where they have properties, and as a name object where not. */
const isArtifact = (tag: unknown): boolean =>
	tag === "Artifact" || (typeof tag === "object" && tag !== null && "name" in tag && tag.name === "Artifact");

const paints = (operator: number, given: unknown): boolean => {
	if (operator !== OPS.constructPath) return PAINTING.has(operator);
	// pdf.js joins a path with the operator that ends it; `endPath` paints nothing.
	const [ending] = Array.isArray(given) ? given : [];
	return ending !== OPS.endPath;
};

/** Reads a page's operators, as pdf.js understands them. */
export const marksOf = async (page: PDFPageProxy): Promise<PageMarks> => {
	const { fnArray, argsArray } = await page.getOperatorList({ annotationMode: AnnotationMode.DISABLE });
	const stack: ("state" | Mark)[] = [];
	const ids: number[] = [];
	let [painted, outside, crossed, mixed] = [0, 0, 0, 0];
	for (const [i, operator] of fnArray.entries()) {
		const given: unknown = argsArray[i];
		if (operator === OPS.save) stack.push("state");
		else if (operator === OPS.restore) crossed += stack.pop() === "state" ? 0 : 1;
		else if (operator === OPS.endMarkedContent) crossed += typeof stack.pop() === "object" ? 0 : 1;
		else if (operator === OPS.beginMarkedContent || operator === OPS.beginMarkedContentProps) {
			const [tag, id] = Array.isArray(given) ? given : [];
			const mark: Mark = { artifact: isArtifact(tag), ...(typeof id === "number" ? { id } : {}) };
			const around = stack.filter((item) => typeof item === "object");
			if (around.some((other) => other.artifact !== mark.artifact)) mixed += 1;
			if (mark.id !== undefined) ids.push(mark.id);
			stack.push(mark);
		} else if (paints(operator, given)) {
			painted += 1;
			if (!stack.some((item) => typeof item === "object" && (item.artifact || item.id !== undefined)))
				outside += 1;
		}
	}
	return { painted, outside, crossed: crossed + stack.length, mixed, ids };
};
