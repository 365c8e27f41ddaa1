import type { Entries } from "../entries.ts";

/** What is said of a presenter's own file of slides. */
export const SLIDES = {
	"slides/form.lacks": ['a slide lacks "{name}"', "What is wrong: form of a slide. name: of an entry."],
	"slides/form.what": [
		'"{name}" is not what a slide has there',
		"What is wrong: form of a slide. name: of an entry.",
	],
	"slides/form.mend": [
		"give each slide a title and say; the README of the slides has an example",
		"What to do about it: form of a slide.",
	],
	"slides/place.what": ['no slide is called "{name}"', "What is wrong: place of a slide. name: as written."],
	"slides/place.mend": [
		"name the slide that it stands behind, or leave it out",
		"What to do about it: place of a slide.",
	],
	"slides/value.unknown": [
		'"{name}" is no value that a slide can say',
		"What is wrong: value in a slide. name: as written.",
	],
	"slides/value.near": ['write "{name}", if that is what you mean', "What to do about it. name: of a value."],
	"slides/value.words": [
		"write one of these names, or say it in words",
		"What to do about it: value in a slide.",
	],
	"slides/value.missing": [
		'"{name}" is not known of {well}',
		"What is wrong: value or picture in a slide. name: of the value or picture; well: its name.",
	],
	"slides/value.given": [
		"what the definition gives, or what follows from it",
		"What is expected instead: value in a slide.",
	],
	"slides/value.give": [
		"give it in the definition, or take it out of the slide",
		"What to do about it: value in a slide.",
	],
	"slides/words.title": ["these words hold a value", "What is wrong: title or question of a slide."],
	"slides/words.alone": ["words alone", "What is expected instead: title or question of a slide."],
	"slides/words.below": ["put the number into say or answer", "What to do about it: title of a slide."],
	"slides/words.brace": ["a brace stands alone", "What is wrong: words of a slide."],
	"slides/words.named": [
		"the name of a value between two braces",
		"What is expected instead: words of a slide.",
	],
	"slides/words.close": ["close the brace, or leave it out", "What to do about it: words of a slide."],
	"slides/words.markdown": [
		'these words hold what a slide does not show there: "{kind}"',
		"What is wrong: words of a slide. kind: of a piece of Markdown, such as list or table.",
	],
	"slides/words.blocks": [
		"paragraphs and lists, with bold or slanted words",
		"What is expected instead: words of a slide without a picture.",
	],
	"slides/words.sentences": [
		"sentences, with bold or slanted words",
		"What is expected instead: words beside a picture, or an answer.",
	],
	"slides/words.plain": ["say it in sentences", "What to do about it: words of a slide."],
} as const satisfies Entries;
