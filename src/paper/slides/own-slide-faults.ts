import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Path } from "../../diagnostics/path.ts";
import { message } from "../../messages/message.ts";
import type { PaperContext } from "../context.ts";
import { NAMED, type OwnSlidesFile } from "./own-slides.ts";
import { PICTURES } from "./pictures.ts";
import { inWords } from "./read-own-slides.ts";
import { slideData } from "./slides.ts";

/** What the slides of one's own say or show and this well has not: a gap in a sentence is never shown to a room. */
export const ownSlideFaults = (
	context: PaperContext,
	files: readonly OwnSlidesFile[],
): readonly Diagnostic[] => {
	const data = slideData(context);
	return files.flatMap(({ name: file, slides }) =>
		slides.flatMap(({ say, answer, picture }, i): readonly Diagnostic[] => {
			const missing = (name: string, path: Path): Diagnostic =>
				diagnose(
					"slides/value",
					{ file, path },
					{
						what: message("slides/value.missing", { name, well: context.well.identity.name }),
						expected: message("slides/value.given"),
						mend: message("slides/value.give"),
					},
				);
			const at: Path = ["slides", i];
			const named = (text: string, path: Path): readonly Diagnostic[] =>
				[...text.matchAll(NAMED)]
					.map(([, name = ""]) => name.trim())
					.filter((name) => !data[name])
					.map((name) => missing(name, path));
			const drawn =
				picture === undefined || PICTURES[picture]?.(context, PROBE) !== undefined
					? []
					: [missing(picture, [...at, "picture"])];
			return [
				...inWords(say, [...at, "say"], named),
				...(answer === undefined ? [] : inWords(answer, [...at, "answer"], named)),
				...drawn,
			];
		}),
	);
};

/** Any size: asked is only whether there is something to draw. */
const PROBE = { width: 864, height: 266, size: 20 };
