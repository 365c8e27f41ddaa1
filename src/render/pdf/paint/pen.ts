import type PDFDocument from "pdfkit";
import type { Weight } from "../../../measure/faces.ts";
import { faceFor } from "../../../measure/faces.ts";
import { settingFont } from "../../../measure/setting-font.ts";
import { type Typeface, typefaceOf } from "../../../measure/typeface.ts";

/** Puts text and rectangles onto the current page. All text of a paper goes through `text`. */
export interface Pen {
	/** `x` and `baseline` from the top left corner of what is current [pt]. */
	readonly text: (
		words: string,
		typeface: Typeface,
		size: number,
		color: string,
		x: number,
		baseline: number,
		narrowed?: number,
	) => void;
	readonly rectangle: (x: number, y: number, width: number, height: number, color: string) => void;
	/** Whatever is set inside ends with it. */
	readonly apart: (paint: () => void) => void;
	readonly newPage: (width: number, height: number) => void;
}

const nameOf = ({ face }: Typeface): string => `${face.css}${face.italic ? "i" : ""}`;

export const typefaceFor = (weight: Weight, italic = false): Typeface => typefaceOf(faceFor(weight, italic));

export const makePen = (context: PDFDocument): Pen => {
	const registered = new Set<string>();
	/** Fill color of the page as it stands: writing it anew for each word would double the page. */
	let ink: string | undefined;
	const inked = (color: string): void => {
		if (color === ink) return;
		context.fillColor(color);
		ink = color;
	};
	return {
		text: (words, typeface, size, color, x, baseline, narrowed = 1) => {
			const name = nameOf(typeface);
			if (!registered.has(name)) {
				registered.add(name);
				context.registerFont(name, settingFont(typeface.face));
			}
			inked(color);
			context.font(name, size).text(words, x, baseline, {
				lineBreak: false,
				baseline: "alphabetic",
				...(narrowed === 1 ? {} : { horizontalScaling: 100 * narrowed }),
			});
		},
		rectangle: (x, y, width, height, color) => {
			context.rect(x, y, width, height).fill(color);
			ink = color;
		},
		apart: (paint) => {
			const before = ink;
			context.save();
			paint();
			context.restore();
			ink = before;
		},
		newPage: (width, height) => {
			context.addPage({ size: [width, height], margin: 0 });
			ink = undefined;
		},
	};
};
