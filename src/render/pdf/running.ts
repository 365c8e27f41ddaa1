import type PDFDocument from "pdfkit";
import type { PaperDocument } from "../../document/document.ts";
import { missingGlyphs, textWidth } from "../../measure/text-width.ts";
import type { LayoutFinding } from "./audit.ts";
import { DESIGNS, INK, PAGE } from "./design.ts";
import { runningFont } from "./pins.ts";
import { wrapped } from "./wrapped.ts";

/** The running head and foot, broken into lines. */
export interface RunningMatter {
	readonly size: number;
	readonly identity: string;
	readonly title: string;
	/** The title has a line of its own: both do not fit on one. */
	readonly stacked: boolean;
	readonly caution: readonly string[];
	readonly standing: string;
	readonly pageOf: (page: number, pages: number) => string;
	readonly findings: readonly LayoutFinding[];
}

const MEASURE = PAGE.width - 2 * PAGE.side;
const BETWEEN = "  ·  ";
const MOST_CAUTION_LINES = 2;

/** What every page says of the paper, and whether it fits. */
export const runningMatter = (document: PaperDocument): RunningMatter => {
	const { imprint } = document;
	const size = DESIGNS[document.setting].running;
	const identity = [
		imprint.operator,
		imprint.well,
		...(imprint.apiNumber === undefined ? [] : [`API ${imprint.apiNumber}`]),
	].join(BETWEEN);
	const standing = [
		imprint.state,
		`${imprint.words.revision} ${imprint.revision}`,
		imprint.issued,
		imprint.digest,
	].join(BETWEEN);
	const pageOf = (page: number, pages: number): string =>
		`${imprint.words.page} ${page} ${imprint.words.of} ${pages}`;
	const plain = (text: string): number => textWidth(text, { size });
	const strong = (text: string): number => textWidth(text, { size, weight: "semibold" });
	const caution = wrapped(imprint.caution, MEASURE, { size });
	const fault = (kind: LayoutFinding["kind"], text: string, detail: string): LayoutFinding => ({
		kind,
		page: 1,
		text,
		detail,
	});
	const lines = [identity, standing, ...caution];
	return {
		size,
		identity,
		title: imprint.title,
		stacked: plain(identity) + strong(imprint.title) + 20 > MEASURE,
		caution,
		standing,
		pageOf,
		findings: [
			...lines
				.filter((line) => plain(line) > MEASURE)
				.concat(strong(imprint.title) > MEASURE ? [imprint.title] : [])
				.map((line) => fault("too-wide", line, "running matter is wider than the page's text")),
			...(plain(standing) + strong(pageOf(999, 999)) + 10 > MEASURE
				? [fault("too-wide", standing, "the running foot leaves no room for the page number")]
				: []),
			...(caution.length > MOST_CAUTION_LINES
				? [
						fault(
							"too-wide",
							imprint.caution,
							`the caution needs ${caution.length} lines of the foot; there is room for ${MOST_CAUTION_LINES}`,
						),
					]
				: []),
			...[...lines, imprint.title]
				.map((line) => ({ line, missing: missingGlyphs(line) }))
				.filter(({ missing }) => missing.length > 0)
				.map(({ line, missing }) =>
					fault("missing-glyph", line, `not in the shipped family: ${missing.join(" ")}`),
				),
		],
	};
};

const RULE_BELOW_HEAD = 48;
const RULE_ABOVE_FOOT = PAGE.height - 54;

/** Draws head and foot on the current page. The caller marks them as running matter. */
export const drawRunning = (
	context: PDFDocument,
	matter: RunningMatter,
	page: number,
	pages: number,
): void => {
	const { size } = matter;
	const line = size * 1.22;
	const put = (text: string, baseline: number, weight: 400 | 600, end: boolean): void => {
		const width = textWidth(text, { size, weight: weight === 600 ? "semibold" : "regular" });
		const x = end ? PAGE.width - PAGE.side - width : PAGE.side;
		context
			.font(runningFont(weight), size)
			.fillColor(INK.text)
			.text(text, x, baseline, { lineBreak: false, baseline: "alphabetic" });
	};
	const rule = (y: number): void => {
		context
			.save()
			.lineWidth(0.5)
			.moveTo(PAGE.side, y)
			.lineTo(PAGE.width - PAGE.side, y)
			.stroke(INK.rule)
			.restore();
	};
	const head = RULE_BELOW_HEAD - 5;
	put(matter.identity, matter.stacked ? head - line : head, 400, false);
	put(matter.title, head, 600, !matter.stacked);
	rule(RULE_BELOW_HEAD);
	rule(RULE_ABOVE_FOOT);
	const foot = RULE_ABOVE_FOOT + 11;
	for (const [i, text] of matter.caution.entries()) put(text, foot + i * line, 400, false);
	const last = foot + Math.max(1, matter.caution.length) * line;
	put(matter.standing, last, 400, false);
	put(matter.pageOf(page, pages), last, 600, true);
};
