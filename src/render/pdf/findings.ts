export type FindingKind =
	| "lost-text"
	| "broken-word"
	| "too-wide"
	| "off-page"
	| "squeezed"
	| "missing-glyph"
	| "clipped-label"
	| "over-full";

/** A fault of the set page. Any of them makes the paper unfit to issue. */
export interface LayoutFinding {
	readonly kind: FindingKind;
	/** From 1. */
	readonly page: number;
	/** The words concerned, shortened. */
	readonly text: string;
	readonly detail: string;
}

/** Rounding of boxes and labels [pt]. */
export const TOLERANCE = 0.1;

export const short = (text: string): string => {
	const line = text.replace(/\s+/g, " ").trim();
	return line.length > 60 ? `${line.slice(0, 59)}…` : line;
};

export const points = (value: number): string => value.toFixed(1);
