import type { Imprint, PaperDocument } from "../../document/document.ts";
import { missingGlyphs, textWidth, type Weight } from "../../measure/text-width.ts";
import { DESIGNS, INK, measureOf, SHEETS } from "./design.ts";
import type { LayoutFinding } from "./findings.ts";
import type { Sheet } from "./layout/vocabulary.ts";
import { type Pen, typefaceFor } from "./paint/pen.ts";
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

const BETWEEN = "  ·  ";
const MOST_CAUTION_LINES = 2;

/** What every page of a size says of the paper, and whether it fits. */
export const runningMatter = (document: PaperDocument, sheet: Sheet = SHEETS.letter): RunningMatter => {
	if (document.setting === "screen") return footOfSlide(document, sheet);
	const { imprint } = document;
	const measure = measureOf(sheet);
	const size = DESIGNS[document.setting].running;
	const identity = identityWithin(measure, size, imprint);
	const standing = [
		imprint.state,
		`${imprint.words.revision} ${imprint.revision}`,
		imprint.issuedAs,
		imprint.digest,
	].join(BETWEEN);
	const pageOf = (page: number, pages: number): string =>
		`${imprint.words.page} ${page} ${imprint.words.of} ${pages}`;
	const plain = (text: string): number => textWidth(text, { size });
	const strong = (text: string): number => textWidth(text, { size, weight: "semibold" });
	const caution = wrapped(imprint.caution, measure, { size });
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
		stacked: plain(identity) + strong(imprint.title) + 20 > measure,
		caution,
		standing,
		pageOf,
		findings: [
			...lines
				.filter((line) => plain(line) > measure)
				.concat(strong(imprint.title) > measure ? [imprint.title] : [])
				.map((line) => fault("too-wide", line, "running matter is wider than the page's text")),
			...(plain(standing) + strong(pageOf(999, 999)) + 10 > measure
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

/**
 * Whose well it is, in one line. Of names too long for it the operator's is left out first, then the API number, then the end
 * of the well's name; the first page has all three.
 */
const identityWithin = (measure: number, size: number, { operator, well, apiNumber }: Imprint): string => {
	const fits = (line: string): boolean => textWidth(line, { size }) <= measure;
	const number = apiNumber === undefined ? [] : [`API ${apiNumber}`];
	const whole = [[operator, well, ...number], [well, ...number], [well]]
		.map((parts) => parts.join(BETWEEN))
		.find(fits);
	if (whole !== undefined) return whole;
	const letters = [...well];
	while (letters.length > 1 && !fits(`${letters.join("").trimEnd()}…`)) letters.pop();
	return `${letters.join("").trimEnd()}…`;
};

/**
 * A slide has one line at its foot, as large as its smallest words: of which well, how far it may be relied on, which issue.
 * What does not fit is left out, the name of the well first; the first and the last slide have all of it.
 */
const footOfSlide = ({ setting, imprint }: PaperDocument, sheet: Sheet): RunningMatter => {
	const size = DESIGNS[setting].running;
	const pageOf = (page: number, pages: number): string => `${page} / ${pages}`;
	const room = measureOf(sheet) - textWidth(pageOf(999, 999), { size, weight: "semibold" }) - 20;
	const issue = [imprint.state, `${imprint.words.revision} ${imprint.revision}`, imprint.digest];
	const standing =
		[[imprint.well, ...issue], issue, [imprint.state, imprint.digest], [imprint.digest]]
			.map((parts) => parts.join(BETWEEN))
			.find((line) => textWidth(line, { size }) <= room) ?? imprint.digest;
	const missing = missingGlyphs(standing);
	return {
		size,
		identity: "",
		title: "",
		stacked: false,
		caution: [],
		standing,
		pageOf,
		findings:
			missing.length === 0
				? []
				: [
						{
							kind: "missing-glyph",
							page: 1,
							text: standing,
							detail: `not in the shipped family: ${missing.join(" ")}`,
						},
					],
	};
};

/** Rules that part head and foot from the text, where the sheet has none of its own [pt]. */
const USUAL_RULES = { head: 48, foot: 54 } as const;
const RULE = 0.5;
/** From the foot of a slide to the baseline of its one line [pt]. */
const SLIDE_FOOT = 20;

/** Draws head and foot on the current page. The caller marks them as running matter. */
export const drawRunning = (
	pen: Pen,
	matter: RunningMatter,
	{ width, height, side, rules = USUAL_RULES }: Sheet,
	page: number,
	pages: number,
): void => {
	const { size } = matter;
	if (matter.identity === "") {
		const baseline = height - SLIDE_FOOT;
		pen.text(matter.standing, typefaceFor("regular"), size, INK.text, side, baseline);
		const count = matter.pageOf(page, pages);
		const x = width - side - textWidth(count, { size, weight: "semibold" });
		pen.text(count, typefaceFor("semibold"), size, INK.text, x, baseline);
		return;
	}
	const line = size * 1.22;
	const put = (text: string, baseline: number, weight: Weight, end: boolean): void => {
		const x = end ? width - side - textWidth(text, { size, weight }) : side;
		pen.text(text, typefaceFor(weight), size, INK.text, x, baseline);
	};
	const rule = (y: number): void => pen.rectangle(side, y - RULE / 2, width - 2 * side, RULE, INK.rule);
	const head = rules.head - 5;
	put(matter.identity, matter.stacked ? head - line : head, "regular", false);
	put(matter.title, head, "semibold", !matter.stacked);
	rule(rules.head);
	rule(height - rules.foot);
	const foot = height - rules.foot + size + 2.5;
	for (const [i, text] of matter.caution.entries()) put(text, foot + i * line, "regular", false);
	const last = foot + Math.max(1, matter.caution.length) * line;
	put(matter.standing, last, "regular", false);
	put(matter.pageOf(page, pages), last, "semibold", true);
};
