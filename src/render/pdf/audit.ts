import { isUnseen } from "../../measure/typeface.ts";
import { auditDrawing } from "./audit-drawing.ts";
import { type FindingKind, type LayoutFinding, points, short, TOLERANCE } from "./findings.ts";
import { placesIn } from "./layout/arrange.ts";
import { type Laid, type LaidPage, type LaidText, type Line, lineText, roomAcross } from "./layout/laid.ts";
import type { FlowProps, Sheet } from "./layout/vocabulary.ts";

const squash = (text: string): string => text.replace(/[\s\u00ad\u2028\u2029\u2060]+/g, "");

/** A word may be parted behind these. */
const JOINT = /[._/=·\-–—]/u;

/** Words that a line ends inside of, as `letters|`. */
const brokenWords = (lines: readonly string[], source: string): readonly string[] => {
	if (lines.length < 2) return [];
	// A line that ends between words ends in the space that parts them, or where the writer ended it.
	const inside = lines.slice(0, -1).filter((text) => !/\s$/u.test(text) && !JOINT.test(text.slice(-1)));
	return inside.filter((text) => !source.includes(`${text}\n`)).map((text) => `${text.slice(-12)}|`);
};

/** Whether two texts have the same letters in the same order, however they are spaced. */
const sameLetters = (got: string, wanted: string): boolean =>
	got === wanted || squash(got) === squash(wanted);

const missingIn = (text: string, { glyphOf }: Line["runs"][number]["style"]["typeface"]): string => {
	let missing = "";
	for (const character of text) {
		const codePoint = character.codePointAt(0) ?? 0;
		if (!isUnseen(codePoint) && glyphOf(codePoint) === 0 && !missing.includes(character))
			missing += character;
	}
	return missing;
};

const wordsOf = (item: Laid): string =>
	item.kind === "text"
		? item.source
		: item.kind === "drawing"
			? item.drawing.title
			: item.flow.map(wordsOf).join(" ");

/** Letters of one text that were found, on however many pages. */
interface Pieces {
	readonly page: number;
	readonly wanted: string;
	got: string;
}

/**
 * Examines laid-out pages, without trust in what laid them: every text is there in full and unaltered, no line ends
 * inside a word, everything stands inside its box and the page's text area, and has its glyphs in the shipped family.
 */
export const auditPages = (pages: readonly LaidPage[]): readonly LayoutFinding[] => {
	const findings: LayoutFinding[] = [];
	const texts = new Map<FlowProps, Pieces>();
	const report = (kind: FindingKind, page: number, text: string, detail: string): void => {
		findings.push({ kind, page, text: short(text), detail });
	};

	const auditLine = (line: Line, room: number, page: number): void => {
		if (line.width > room + TOLERANCE)
			report("too-wide", page, lineText(line), `${points(line.width)} pt in a space of ${points(room)} pt`);
		for (const { text, style } of line.runs) {
			const missing = missingIn(text, style.typeface);
			if (missing !== "")
				report("missing-glyph", page, text, `not in the shipped family: ${[...missing].join(" ")}`);
		}
	};

	const auditText = (item: LaidText, page: number): void => {
		const { lines, source, props, piece, lineHeight, height } = item;
		const room = roomAcross(item);
		for (const line of lines) auditLine(line, room, page);
		const told = lines.map(lineText);
		for (const word of brokenWords(told, source))
			report("broken-word", page, word, "a line ends inside a word");
		const needed = lines.length * lineHeight;
		if (needed > height + TOLERANCE)
			report("squeezed", page, source, `lines ${points(needed)} pt high in ${points(height)} pt`);
		const got = told.join("");
		// Whole texts may recur (a repeated table head) and are judged one by one; pieces of a divided one together.
		if (piece !== true) {
			if (!sameLetters(got, source)) report("lost-text", page, source, `set as "${short(got)}"`);
			return;
		}
		const pieces = texts.get(props);
		if (pieces === undefined) texts.set(props, { page, wanted: source, got });
		else pieces.got += got;
	};

	const walk = (item: Laid, page: number, sheet: Sheet, x: number, y: number, floor: number): void => {
		const { width, height } = item;
		const [right, bottom] = [x + width, y + height];
		if (
			x < sheet.side - TOLERANCE ||
			right > sheet.width - sheet.side + TOLERANCE ||
			y < sheet.top - TOLERANCE ||
			bottom > sheet.height - sheet.bottom + TOLERANCE
		) {
			report(
				"off-page",
				page,
				wordsOf(item),
				`${points(width)} × ${points(height)} pt at ${points(x)}, ${points(y)} leaves the text area`,
			);
			return;
		}
		if (bottom > floor + TOLERANCE)
			report("squeezed", page, wordsOf(item), `reaches ${points(bottom - floor)} pt below its box`);
		if (item.kind === "text") auditText(item, page);
		else if (item.kind === "drawing") findings.push(...auditDrawing(item.drawing, page));
		else for (const child of placesIn(item)) walk(child.item, page, sheet, x + child.x, y + child.y, bottom);
	};

	for (const [i, { sheet, children }] of pages.entries())
		for (const { x, y, item } of children) walk(item, i + 1, sheet, x, y, sheet.height);
	for (const { page, wanted, got } of texts.values())
		if (!sameLetters(got, wanted)) report("lost-text", page, wanted, `set as "${short(got)}"`);
	return findings;
};
