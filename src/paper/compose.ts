import type { Section, SheetName } from "../document/blocks.ts";
import type { PaperDocument } from "../document/document.ts";
import { composeAttachment, placesInAttachment } from "./attachment.ts";
import type { PaperContext } from "./context.ts";
import { begin, finish, sectioned } from "./fill.ts";
import { findingsFor } from "./findings-for.ts";
import { imprintOf, partOf } from "./imprint.ts";
import { noteSections } from "./slides/notes.ts";
import { slideSections } from "./slides/slides.ts";
import { withTypedLanguage } from "./typed-language.ts";

/**
 * Sets one paper: its page order, filled with the language's words and with parts made from the findings. A section
 * that comes out empty is left out, so that no heading stands over nothing.
 *
 * @throws Error for an order that names an unknown part or a template that names unknown data: faults of ours
 */
export const composePaper = (asked: PaperContext): PaperDocument =>
	withTypedLanguage(composed(asked), asked.written);

const composed = (asked: PaperContext): PaperDocument => {
	const { paper } = asked;
	if (paper === "regulator" || paper === "regulator-appendix") return composeAttachment(asked)[paper];
	const context: PaperContext = {
		...findingsFor(asked, paper),
		...(asked.pad === undefined && (paper === "answers" || paper === "notes")
			? {
					printedAt: placesInAttachment(asked),
				}
			: {}),
	};
	if (paper === "slides" || paper === "notes")
		return talkOf(context, paper === "slides" ? slideSections(context) : noteSections(context));
	const begun = begin(context);
	return {
		paper,
		...partOf(context),
		language: context.words.language,
		units: context.units,
		setting: begun.order.setting,
		...(begun.order.sheet === undefined ? {} : { sheet: jobSheet(context) }),
		imprint: imprintOf(context, begun.order),
		sections: sectioned(context, begun.order, finish(begun)),
	};
};

/** Metric readers print on A4. */
const jobSheet = ({ units }: PaperContext): SheetName => (units === "metric" ? "job-a4" : "job-letter");

/** Slides and their notes: made of claims and steps, and of no page order. */
const talkOf = (context: PaperContext, sections: readonly Section[]): PaperDocument => {
	const order = context.words.order(context.paper);
	return {
		paper: context.paper,
		language: context.words.language,
		units: context.units,
		setting: order.setting,
		...(context.paper === "slides" ? { sheet: "screen" } : {}),
		imprint: imprintOf(context, order),
		sections,
	};
};
