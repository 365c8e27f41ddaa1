import type { SheetName } from "../../document/blocks.ts";
import type { Setting } from "../../document/document.ts";
import type { Sheet } from "./layout/vocabulary.ts";

/** Type sizes [pt], line heights as multiples of the size, and rules [pt] of one setting. */
export interface Design {
	readonly setting: Setting;
	readonly body: number;
	readonly lead: number;
	readonly note: number;
	readonly table: number;
	readonly dense: number;
	readonly title: number;
	readonly h2: number;
	readonly h3: number;
	readonly h4: number;
	/** The few numbers that matter most: the size wished for, and the least allowed. */
	readonly figure: { readonly wish: number; readonly least: number };
	readonly running: number;
	readonly leading: number;
	/** Vertical grid step: space between blocks is a multiple of it. */
	readonly step: number;
	readonly cellX: number;
	readonly cellY: number;
	readonly rule: {
		readonly hair: number;
		readonly thin: number;
		readonly thick: number;
		readonly heavy: number;
	};
	/** Height of a line to write on. */
	readonly pencil: number;
}

/** A page for a job: as much room as a printer leaves, a line of head and three of foot. */
const job = (width: number, height: number): Sheet => ({
	width,
	height,
	top: 40,
	bottom: 56,
	side: 32,
	rules: { head: 33, foot: 51 },
});

/** Pages that papers are set on [pt]: US letter, letter turned, and 16:9 for a screen. and those of jobs. Margins hold head and foot. */
export const SHEETS: Readonly<Record<SheetName, Sheet>> = {
	letter: { width: 612, height: 792, top: 68, bottom: 66, side: 54 },
	"letter-landscape": { width: 792, height: 612, top: 68, bottom: 66, side: 54 },
	screen: { width: 960, height: 540, top: 26, bottom: 50, side: 48 },
	"job-letter": job(612, 792),
	"job-a4": job(595.28, 841.89),
	"job-tabloid": job(1224, 792),
	"job-a3": job(1190.55, 841.89),
};

/** Width of a page's text [pt]. */
export const measureOf = ({ width, side }: Sheet): number => width - 2 * side;

/** Width of the text of a letter page: 7 inches. */
export const MEASURE = measureOf(SHEETS.letter);

/**
 * Dark enough to survive a scan at 200 dots an inch in two tones, and no text stands on a tone. The hairlines between
 * rows are gray: they guide the eye, and nothing is lost with them. No type is set in it.
 */
export const INK = {
	text: "#000000",
	heading: "#12324a",
	rule: "#000000",
	hair: "#8c8c8c",
	stop: "#7d1212",
} as const;

const RULES = { hair: 0.5, thin: 0.75, thick: 1.25, heavy: 2.5 } as const;

export const DESIGNS: Readonly<Record<Setting, Design>> = {
	office: {
		setting: "office",
		body: 9.5,
		lead: 10.5,
		note: 8.5,
		table: 9,
		dense: 8.5,
		title: 18,
		h2: 13.5,
		h3: 11,
		h4: 10,
		figure: { wish: 18, least: 13 },
		running: 8,
		leading: 1.3,
		step: 4.5,
		cellX: 4,
		cellY: 0.9,
		rule: RULES,
		pencil: 20,
	},
	/** What is looked up and not read through: tables in the least type that an office printer and a copy of it keep. */
	reference: {
		setting: "reference",
		body: 9,
		lead: 9.5,
		note: 8,
		table: 8,
		dense: 7.5,
		title: 16,
		h2: 12.5,
		h3: 10,
		h4: 9.5,
		figure: { wish: 18, least: 13 },
		running: 8,
		leading: 1.28,
		step: 4,
		cellX: 3.5,
		cellY: 0.7,
		rule: RULES,
		pencil: 20,
	},
	public: {
		setting: "public",
		body: 12,
		lead: 14,
		note: 10.5,
		table: 11,
		dense: 10,
		title: 29,
		h2: 19,
		h3: 14.5,
		h4: 12.5,
		figure: { wish: 27, least: 18 },
		running: 8.5,
		leading: 1.42,
		step: 8,
		cellX: 5,
		cellY: 3.4,
		rule: RULES,
		pencil: 24,
	},
	/** Read standing, at an arm's length and in the light of a hall: nothing but head and foot under 11 points. */
	lectern: {
		setting: "lectern",
		body: 11.5,
		lead: 12.5,
		note: 11,
		table: 11,
		dense: 11,
		title: 20,
		h2: 15,
		h3: 12.5,
		h4: 11.5,
		figure: { wish: 18, least: 13 },
		running: 8.5,
		leading: 1.26,
		step: 5,
		cellX: 4,
		cellY: 1.4,
		rule: RULES,
		pencil: 20,
	},
	field: {
		setting: "field",
		body: 9.6,
		lead: 10.5,
		note: 8.5,
		table: 9.5,
		dense: 9,
		title: 19,
		h2: 12.5,
		h3: 10.5,
		h4: 10,
		figure: { wish: 26, least: 18 },
		running: 7.5,
		leading: 1.18,
		step: 3.4,
		cellX: 3.5,
		cellY: 1.1,
		rule: { hair: 0.5, thin: 0.75, thick: 1.5, heavy: 2.5 },
		// 9 mm.
		pencil: (9 / 25.4) * 72,
	},
	/** Nothing is smaller than 20 points: a hand's width of a screen that is seen from ten meters. */
	screen: {
		setting: "screen",
		body: 22,
		lead: 25,
		note: 21,
		table: 20,
		dense: 20,
		title: 42,
		h2: 32,
		h3: 25,
		h4: 22,
		figure: { wish: 44, least: 30 },
		running: 20,
		leading: 1.24,
		step: 8,
		cellX: 6,
		cellY: 3,
		rule: { hair: 0.75, thin: 1, thick: 2, heavy: 4 },
		pencil: 30,
	},
};

/** Sizes that a page which is to hold all of something is tried at, as shares of the design's; the last is the least. */
export const SCALES = [1.16, 1.12, 1.08, 1.04, 1, 0.97, 0.94, 0.91, 0.88, 0.86, 0.84] as const;

/** As `SCALES`, of what hangs on a wall; under 1 only where reasons to stop take its room. */
export const POSTER_SCALES = [2.6, 2.4, 2.2, 2, 1.8, 1.6, 1.45, 1.3, 1.15, 1, 0.91, 0.84] as const;

const scaled = new Map<string, Design>();

/**
 * A design with its type and spaces at a share of their size. What is written on or read from afar stays as it is: the
 * lines to sign on, the large figures, the head and foot.
 */
export const designAt = (setting: Setting, scale: number): Design => {
	if (scale === 1) return DESIGNS[setting];
	const key = `${setting} ${scale}`;
	const whole = DESIGNS[setting];
	const at = (size: number): number => Math.round(size * scale * 100) / 100;
	const { body, lead, note, table, dense, title, h2, h3, h4, step, cellX, cellY } = whole;
	const made = scaled.get(key) ?? {
		...whole,
		body: at(body),
		lead: at(lead),
		note: at(note),
		table: at(table),
		dense: at(dense),
		title: at(title),
		h2: at(h2),
		h3: at(h3),
		h4: at(h4),
		step: at(step),
		cellX: at(cellX),
		cellY: at(cellY),
		...(scale > Math.max(...SCALES)
			? { figure: { wish: at(whole.figure.wish), least: whole.figure.least } }
			: {}),
	};
	scaled.set(key, made);
	return made;
};
