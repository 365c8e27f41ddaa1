import type { CodeEntry } from "../codes.ts";

/** Faults of a presenter's own file of slides. */
export const SLIDES_CODES = {
	"slides/form": {
		severity: "error",
		title: "A slide of your own is not laid out as it must be",
		explain:
			"A slide has a title and words to say; it may name a picture of the well, the slide that it stands behind, and for " +
			"the speaker a question with its answer. Nothing else is shown, so what else stands there would be lost.",
	},
	"slides/place": {
		severity: "error",
		title: "A slide of your own stands behind one that does not exist",
		explain:
			"Slides stand in the order of the talk, and each of your own may name the one that it follows. " +
			"Leave `after` out and it stands before the last.",
	},
	"slides/value": {
		severity: "error",
		title: "A slide of your own names a value that is not there",
		explain:
			"A name in braces is filled with this well's number, as the other papers say it. A name that is not known, or one " +
			"that this well has no value for, would leave a gap in the sentence in front of a room. What is said of the water's " +
			"protection follows the verdicts and cannot be named.",
	},
	"slides/words": {
		severity: "error",
		title: "The words of a slide of your own cannot be shown",
		explain:
			"A slide shows paragraphs and lists, with bold and slanted words, and beside a picture sentences alone. " +
			"Titles and questions are words without values. Tables, headings, pictures by address and HTML are not shown.",
	},
} as const satisfies Record<string, CodeEntry>;
