import { checkSeed } from "../../catalog/check-seed.ts";
import { type OwnSlide, ownSlidesSchema, type SlideWords } from "../../catalog/own-slides.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import { type Checked, type Diagnostic, hasErrors } from "../../diagnostics/diagnostic.ts";
import { nearestName } from "../../diagnostics/nearest-name.ts";
import type { Path } from "../../diagnostics/path.ts";
import type { Block } from "../../document/blocks.ts";
import { hasGlyph } from "../../measure/has-glyph.ts";
import { message } from "../../messages/message.ts";
import { printableTree } from "../../source/characters.ts";
import { readYaml } from "../../source/read-yaml.ts";
import { loadWords } from "../words/words.ts";
import { filledBlocks, NAMED, SLIDE_VALUES } from "./own-slides.ts";
import { SEQUENCE } from "./slides.ts";

/** What `after` calls the steps of the well being built, which are many slides. */
export const STEPS = "steps";

/** Names of the slides that one of one's own may stand behind. */
const placesOfSlides = (): readonly string[] =>
	loadWords("en")
		.slides()
		.map(({ id }) => (id === SEQUENCE ? STEPS : id));

/**
 * A file of slides of one's own: its form, its Markdown, and the names of values in it. Whether a well has those values is
 * asked of each well.
 */
export const readOwnSlides = (text: string, file: string): Checked<readonly OwnSlide[]> => {
	const tree = readYaml(text, file);
	if (tree.value === undefined || hasErrors(tree.diagnostics)) return { diagnostics: tree.diagnostics };
	const checked = checkSeed(ownSlidesSchema, tree.value.value, file);
	const form = checked.diagnostics.map((each) => asForm(each, file));
	const letters = printableTree(tree.value.value, file, hasGlyph).diagnostics;
	const slides = checked.value?.slides;
	const words = (slides ?? []).flatMap((slide, i) => faultsOfSlide(slide, file, ["slides", i]));
	const diagnostics = [...tree.diagnostics, ...form, ...letters, ...words];
	return slides === undefined || hasErrors(diagnostics) ? { diagnostics } : { value: slides, diagnostics };
};

const FIELDS = ["title", "say", "picture", "after", "ask", "answer"] as const;

/** The fault of a table, told of a file that somebody wrote today. */
const asForm = ({ at, expected, found }: Diagnostic, file: string): Diagnostic => {
	const name = String(at.path.at(-1) ?? file);
	return diagnose(
		"slides/form",
		{ ...at, file },
		{
			what:
				found === undefined ? message("slides/form.lacks", { name }) : message("slides/form.what", { name }),
			expected: at.key === true ? message("source/one-of", { names: FIELDS.join(", ") }) : expected,
			...(found === undefined ? {} : { found }),
			mend: message("slides/form.mend"),
		},
	);
};

const faultsOfSlide = (slide: OwnSlide, file: string, path: Path): readonly Diagnostic[] => {
	const places = placesOfSlides();
	const { after } = slide;
	const place =
		after === undefined || places.includes(after)
			? []
			: [
					diagnose(
						"slides/place",
						{ file, path: [...path, "after"] },
						{
							what: message("slides/place.what", { name: after }),
							expected: message("source/one-of", { names: places.join(", ") }),
							mend: message("slides/place.mend"),
						},
					),
				];
	return [
		...place,
		...inWords(slide.title, [...path, "title"], (text, at) => faultsOfTitle(text, { file, path: at })),
		...inWords(slide.say, [...path, "say"], (text, at) =>
			faultsOfText(
				text,
				{ file, path: at },
				slide.picture === undefined ? ["paragraph", "list"] : ["paragraph"],
			),
		),
		...[slide.ask, slide.answer].flatMap((words, i) =>
			words === undefined
				? []
				: inWords(words, [...path, i === 0 ? "ask" : "answer"], (text, at) =>
						i === 0
							? faultsOfTitle(text, { file, path: at })
							: faultsOfText(text, { file, path: at }, ["paragraph"]),
					),
		),
	];
};

/** Each language that words are given in, with its place. */
export const inWords = <T>(
	words: SlideWords,
	path: Path,
	of: (text: string, path: Path) => readonly T[],
): readonly T[] =>
	typeof words === "string"
		? of(words, path)
		: Object.entries(words).flatMap(([language, text]) => of(text, [...path, language]));

type At = Diagnostic["at"];

/** A title, and a question, is words alone. */
const faultsOfTitle = (text: string, at: At): readonly Diagnostic[] =>
	/[{}]/u.test(text)
		? [
				diagnose("slides/words", at, {
					what: message("slides/words.title"),
					expected: message("slides/words.alone"),
					mend: message("slides/words.below"),
				}),
			]
		: [];

const faultsOfText = (text: string, at: At, kinds: readonly Block["kind"][]): readonly Diagnostic[] => {
	if (/[{}]/u.test(text.replaceAll(NAMED, "")))
		return [
			diagnose("slides/words", at, {
				what: message("slides/words.brace"),
				expected: message("slides/words.named"),
				mend: message("slides/words.close"),
			}),
		];
	const unknown = [...text.matchAll(NAMED)].flatMap(([, written = ""]): Diagnostic[] => {
		const name = written.trim();
		if (SLIDE_VALUES.some((each) => each === name)) return [];
		const near = nearestName(name, SLIDE_VALUES);
		return [
			diagnose("slides/value", at, {
				what: message("slides/value.unknown", { name }),
				expected: message("source/one-of", { names: SLIDE_VALUES.join(", ") }),
				mend:
					near === undefined ? message("slides/value.words") : message("slides/value.near", { name: near }),
			}),
		];
	});
	return unknown.length > 0 ? unknown : faultsOfMarkdown(text, at, kinds);
};

const faultsOfMarkdown = (text: string, at: At, kinds: readonly Block["kind"][]): readonly Diagnostic[] => {
	const told = (kind: string): Diagnostic =>
		diagnose("slides/words", at, {
			what: message("slides/words.markdown", { kind }),
			expected: message(kinds.includes("list") ? "slides/words.blocks" : "slides/words.sentences"),
			mend: message("slides/words.plain"),
		});
	try {
		// Names stand for their values here: what a value is does not change what the Markdown is.
		const other = filledBlocks(text, {}).find(({ kind }) => !kinds.includes(kind));
		return other === undefined ? [] : [told(other.kind)];
	} catch (cause) {
		const [, kind = "Markdown"] = /"(.+)"/u.exec(cause instanceof Error ? cause.message : "") ?? [];
		return [told(kind)];
	}
};
