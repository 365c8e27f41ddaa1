import * as z from "zod";

/*
 * Form of a presenter's own file of slides, `bind --slides`: `src/paper/slides/README.md` tells how to write one.
 */

/** Words in the languages of the room. Whoever writes in one language alone has that one shown. */
const words = z.union([z.strictObject({ en: z.string().min(1), es: z.string().min(1) }), z.string().min(1)]);

/** Pictures of this well that a slide may show. */
export const SLIDE_PICTURES = ["map", "section", "layers", "phases", "shares", "sound", "trucks"] as const;

const slide = z.strictObject({
	/** The slide that it stands behind; before the last where absent. */
	after: z.string().min(1).optional(),
	/** The claim, in words alone. */
	title: words,
	/** Markdown; `{water}` puts a value of the well into it. */
	say: words,
	picture: z.enum(SLIDE_PICTURES).optional(),
	/** For the speaker: what the room is likely to ask, and the answer. */
	ask: words.optional(),
	answer: words.optional(),
});

export const ownSlidesSchema = z.strictObject({ slides: z.array(slide).min(1) });

export type OwnSlide = z.infer<typeof slide>;
export type SlideWords = z.infer<typeof words>;
