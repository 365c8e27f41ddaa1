import type { Drawing, Shape } from "../../document/shapes.ts";
import { missingGlyphs, textWidth } from "../../measure/text-width.ts";
import { PAGE } from "./design.ts";
import { type LayoutNode, type PageNode, sourceText, type TextLine } from "./layout-node.ts";

export type FindingKind =
	| "lost-text"
	| "inserted-hyphen"
	| "broken-word"
	| "too-wide"
	| "off-page"
	| "squeezed"
	| "missing-glyph"
	| "clipped-label"
	| "library-warning";

/** A fault of the set page. Any of them makes the paper unfit to issue. */
export interface LayoutFinding {
	readonly kind: FindingKind;
	/** From 1; 0 where no page can be named. */
	readonly page: number;
	/** The words concerned, shortened. */
	readonly text: string;
	readonly detail: string;
}

/** Rounding of the engine's boxes [pt]. */
const TOLERANCE = 0.6;

/** The engine breaks lines as if spaces could give way a little, and then sets them full: a line of words may stand over. */
const SHRINK = 0.015;
const hasSpaces = (line: TextLine): boolean => /\S\s+\S/u.test(line.string);

/** Rounding of the heights of lines [pt]: a page whose content is pressed together is wrong, however little it shows. */
const GIVE = 0.05;

const squash = (text: string): string => text.replace(/[\s\u00ad\u2028\u2029\u2060]+/g, "");
const short = (text: string): string => {
	const line = text.replace(/\s+/g, " ").trim();
	return line.length > 60 ? `${line.slice(0, 59)}…` : line;
};
const points = (value: number): string => value.toFixed(1);

interface At {
	readonly page: number;
	readonly left: number;
	readonly top: number;
}

/** Pieces of one text, on however many pages. */
interface Pieces {
	readonly page: number;
	readonly wanted: string;
	got: string;
}

/** A word may be parted behind these, and a formula at its Greek letters, where the engine changes script. */
const JOINT = /[._/=·\-–—]/u;
const GREEK = /\p{Script=Greek}/u;

/** What the glyphs of a line spell; signs that share a glyph, as the two forms of mu, are one to the eye. */
const spelled = ({ runs }: TextLine): string =>
	runs
		.flatMap(({ glyphs = [] }) => glyphs.flatMap(({ codePoints }) => [...codePoints]))
		.map((point) => String.fromCodePoint(point))
		.join("");

/** Words that a line ends inside of, as `letters|after`. */
const brokenWords = (lines: readonly TextLine[], source: string): readonly string[] => {
	const words = source.split(/[\s\u00ad\u2028\u2029\u2060]+/u).filter((word) => word !== "");
	const ends = new Set<number>();
	let end = 0;
	for (const word of words) {
		end += word.length;
		ends.add(end);
	}
	const text = words.join("");
	// A part of a text that pages divide begins somewhere inside it.
	let at = text.indexOf(squash(lines.map((line) => line.string).join("")));
	if (at < 0) return [];
	return lines.slice(0, -1).flatMap((line) => {
		at += squash(line.string).length;
		const joint = JOINT.test(text.charAt(at - 1)) || GREEK.test(text.slice(at - 1, at + 1));
		return ends.has(at) || joint
			? []
			: [`${text.slice(Math.max(0, at - 12), at)}|${text.slice(at, at + 12)}`];
	});
};

/** Width of a line without the spaces it ends in. */
const inkWidth = (line: TextLine): number => {
	const spaces = line.string.length - line.string.trimEnd().length;
	const positions = line.runs.at(-1)?.positions ?? [];
	const trailing = spaces === 0 ? [] : positions.slice(-spaces);
	return (line.xAdvance ?? 0) - trailing.reduce((sum, position) => sum + position.xAdvance, 0);
};

/**
 * Examines laid-out pages: every text is there in full and unaltered, stands inside its box and the text area, and has
 * its glyphs in the shipped family. The engine reports none of this itself.
 */
export const auditPages = (pages: readonly PageNode[]): readonly LayoutFinding[] => {
	const findings: LayoutFinding[] = [];
	const texts = new Map<unknown, Pieces>();
	const report = (kind: FindingKind, page: number, text: string, detail: string): void => {
		findings.push({ kind, page, text: short(text), detail });
	};

	const auditLine = (line: TextLine, node: LayoutNode, at: At): void => {
		const { box } = node;
		if (box !== undefined) {
			const room = box.width - (box.paddingLeft ?? 0) - (box.paddingRight ?? 0);
			const width = inkWidth(line);
			if (width > room + (hasSpaces(line) ? Math.max(TOLERANCE, room * SHRINK) : TOLERANCE)) {
				report("too-wide", at.page, line.string, `${points(width)} pt in a space of ${points(room)} pt`);
			}
		}
		if (squash(spelled(line)).normalize("NFKC") !== squash(line.string).normalize("NFKC"))
			report("lost-text", at.page, line.string, `painted as "${short(spelled(line))}"`);
		for (const run of line.runs) {
			const font = run.attributes.font?.[0];
			const missing = font?.type === "STANDARD" || (run.glyphs ?? []).some((glyph) => glyph.id === 0);
			if (missing) {
				const text = line.string.slice(run.start, run.end);
				report("missing-glyph", at.page, text, `not in the shipped family: ${missingGlyphs(text).join(" ")}`);
			}
		}
	};

	const auditText = (node: LayoutNode, at: At): void => {
		const lines = node.lines ?? [];
		const got = squash(lines.map((line) => line.string).join(""));
		// Whole texts may recur (a repeated table head) and are judged one by one; pieces of a split one together.
		const identity = node.wasSplit === true ? node.props : node;
		const pieces = texts.get(identity);
		if (pieces === undefined) texts.set(identity, { page: at.page, wanted: squash(sourceText(node)), got });
		else pieces.got += got;
		for (const line of lines) auditLine(line, node, at);
		for (const word of brokenWords(lines, sourceText(node)))
			report("broken-word", at.page, word, "a line ends inside a word");
		const first = lines[0]?.box;
		const last = lines.at(-1)?.box;
		if (first === undefined || last === undefined || node.box === undefined) return;
		const height = last.y + last.height - first.y;
		if (height > node.box.height + GIVE) {
			report(
				"squeezed",
				at.page,
				sourceText(node),
				`lines ${points(height)} pt high in ${points(node.box.height)} pt`,
			);
		}
	};

	const walk = (node: LayoutNode, parent: At, floor: number): void => {
		const { box } = node;
		if (box === undefined) return;
		const at: At = { page: parent.page, left: parent.left + box.left, top: parent.top + box.top };
		const right = at.left + box.width;
		const bottom = at.top + box.height;
		if (
			at.left < PAGE.side - TOLERANCE ||
			right > PAGE.width - PAGE.side + TOLERANCE ||
			at.top < PAGE.top - TOLERANCE ||
			bottom > PAGE.height - PAGE.bottom + TOLERANCE
		) {
			report(
				"off-page",
				at.page,
				sourceText(node),
				`${points(box.width)} × ${points(box.height)} pt at ${points(at.left)}, ${points(at.top)} leaves the text area`,
			);
			return;
		}
		if (bottom > floor + TOLERANCE) {
			report("squeezed", at.page, sourceText(node), `reaches ${points(bottom - floor)} pt below its box`);
		}
		if (node.type === "TEXT") auditText(node, at);
		else if (node.type === "SVG") findings.push(...auditDrawing(node, at.page));
		else for (const child of node.children ?? []) walk(child, at, bottom);
	};

	for (const [i, page] of pages.entries()) {
		for (const node of page.children) walk(node, { page: i + 1, left: 0, top: 0 }, PAGE.height);
	}
	for (const { page, wanted, got } of texts.values()) {
		if (got === wanted) continue;
		const kind = got.length > wanted.length ? "inserted-hyphen" : "lost-text";
		report(kind, page, wanted, `set as "${short(got)}"`);
	}
	return findings;
};

const auditDrawing = (node: LayoutNode, page: number): readonly LayoutFinding[] => {
	const drawing = node.props?.drawing;
	return drawing === undefined
		? []
		: labelsOf(drawing.shapes, 0, 0).flatMap((label) => auditLabel(label, drawing, page));
};

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
