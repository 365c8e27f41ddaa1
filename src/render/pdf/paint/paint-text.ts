import { INK } from "../design.ts";
import type { LaidText, Line, Run } from "../layout/laid.ts";
import type { Marked, Marks } from "./marks.ts";
import { type Pen, typefaceFor } from "./pen.ts";

/** Underlines stand so far below the baseline, and are so thick, as shares of the type size. */
const UNDERLINE = { below: 0.1, thick: 0.05 } as const;

/** Languages as the catalogue of the file has them. */
const TAGS: Readonly<Record<string, string>> = { en: "en-US", es: "es-US" };

interface Corner {
	readonly x: number;
	readonly y: number;
}

const lineTop = ({ border, padding, lineHeight }: LaidText, y: number, index: number): number =>
	y + border.top + padding.top + index * lineHeight;

const lineLeft = ({ border, padding }: LaidText, x: number, line: Line): number =>
	x + border.left + padding.left + line.x;

const putRun = (pen: Pen, { text, style, width, narrowed }: Run, x: number, baseline: number): void => {
	const { typeface, size, color, underline } = style;
	pen.text(text, typeface, size, color, x, baseline, narrowed);
	if (underline) pen.rectangle(x, baseline + size * UNDERLINE.below, width, size * UNDERLINE.thick, color);
};

/** Paints a text's lines, whatever they mean. */
export const paintLines = (pen: Pen, text: LaidText, { x, y }: Corner): void => {
	for (const [i, line] of text.lines.entries())
		for (const run of line.runs)
			putRun(pen, run, lineLeft(text, x, line) + run.x, lineTop(text, y, i) + text.ascent);
};

/** Some of its words belong to an element of their own. */
export const hasParts = ({ lines }: LaidText): boolean =>
	lines.some(({ runs }) => runs.some(({ style }) => style.link !== undefined || style.lang !== undefined));

/**
 * Paints words that hold links, or words of another language, run by run, so that each of them belong to their own
 * element.
 */
export const paintParts = (
	pen: Pen,
	marks: Marks,
	of: Marked,
	text: LaidText,
	{ x, y }: Corner,
	goTo: string,
): void => {
	const links = new Map<string, Marked>();
	let spoken: { readonly lang: string; readonly span: Marked } | undefined;
	const finished: Marked[] = [];
	/** Words of one language that follow each other belong together, over as many lines as they run. */
	const spanOf = (lang: string): Marked => {
		if (spoken?.lang !== lang) {
			spoken = { lang, span: marks.within(of, "Span", TAGS[lang] ?? lang) };
			finished.push(spoken.span);
		}
		return spoken.span;
	};
	for (const [i, line] of text.lines.entries()) {
		for (const run of line.runs) {
			const left = lineLeft(text, x, line) + run.x;
			const top = lineTop(text, y, i);
			const { link: target, lang } = run.style;
			const put = (): void => putRun(pen, run, left, top + text.ascent);
			if (lang === undefined) spoken = undefined;
			if (target === undefined) {
				marks.asContent(lang === undefined ? of : spanOf(lang), put);
				continue;
			}
			const link = links.get(target) ?? marks.within(of, "Link");
			links.set(target, link);
			marks.asContent(link, put);
			const place = { x: left, y: top, width: run.width, height: text.lineHeight };
			marks.annotate(link, target, place, `${goTo} ${run.text.trim()}`);
		}
	}
	for (const part of [...links.values(), ...finished]) marks.end(part);
};

/** Paints the number of a page at the right of a text's room; a dash where the place is on none. */
export const paintPageNumber = (
	pen: Pen,
	text: LaidText,
	{ x, y }: Corner,
	page: number | undefined,
): void => {
	const words = page === undefined ? "–" : String(page);
	const typeface = typefaceFor("regular");
	const width = (typeface.widthOf(words) / typeface.unitsPerEm) * text.size;
	pen.text(words, typeface, text.size, INK.text, x + text.width - width, lineTop(text, y, 0) + text.ascent);
};
