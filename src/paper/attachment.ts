import type { PaperDocument } from "../document/document.ts";
import type { PaperContext } from "./context.ts";
import { type Begun, begin, finish, sectioned } from "./fill.ts";
import { findingsFor } from "./findings-for.ts";
import { imprintOf } from "./imprint.ts";
import { type CountingWords, counted, referred, withLists } from "./numbering.ts";
import { paperName } from "./paper-name.ts";
import { placesIn } from "./places.ts";

/** The regulator's attachment: what is read, and the file of appendices that it is looked up in. */
export interface Attachment {
	readonly regulator: PaperDocument;
	readonly "regulator-appendix": PaperDocument;
}

/** What an attachment was made from: another one is made where any of it is another. */
type From = Pick<PaperContext, "well" | "judgement" | "written" | "units" | "words" | "changes">;

const KEYS = ["well", "judgement", "written", "units", "words", "changes"] as const;

/** Made together, for each leads into the other; once for all who ask for either of them. */
const made = new WeakMap<
	PaperContext["results"],
	{ readonly from: From; readonly attachment: Attachment }[]
>();

/** Composes both files of the regulator's attachment. */
export const composeAttachment = (asked: PaperContext): Attachment => {
	const shelf = made.get(asked.results) ?? [];
	made.set(asked.results, shelf);
	const { well, judgement, written, units, words, changes } = asked;
	const from: From = {
		well,
		judgement,
		written,
		units,
		words,
		...(changes === undefined ? {} : { changes }),
	};
	const same = (other: From): boolean => KEYS.every((each) => other[each] === from[each]);
	const found = shelf.find((each) => same(each.from));
	if (found !== undefined) return found.attachment;
	const attachment = compose(asked);
	shelf.push({ from, attachment });
	return attachment;
};

/** Where the attachment has a number: in its body if it stands there, else in its appendices. */
export const placesInAttachment = (
	asked: Omit<PaperContext, "paper">,
): ((key: string) => string | undefined) => {
	const { regulator, "regulator-appendix": appendix } = composeAttachment({ ...asked, paper: "regulator" });
	return placesIn(regulator, appendix);
};

const compose = (asked: PaperContext): Attachment => {
	const of = (paper: "regulator" | "regulator-appendix"): Begun =>
		begin({ ...findingsFor(asked, paper), paper });
	const [body, appendix] = [of("regulator"), of("regulator-appendix")];
	const numbered = (begun: Begun, beside: Begun) =>
		counted(
			sectioned(begun.context, begun.order, finish(begun, [beside])),
			countingWords(begun),
			begun.order.numbered === "letters",
		);
	const [front, back] = [numbered(body, appendix), numbered(appendix, body)];
	const document = (
		begun: Begun,
		own: typeof front,
		companion: typeof front,
		beside: Begun,
	): PaperDocument => {
		const { context, order } = begun;
		const file = paperName(context, {
			paper: beside.context.paper,
			language: context.words.language,
			units: context.units,
		});
		return {
			paper: context.paper,
			companion: file,
			language: context.words.language,
			units: context.units,
			setting: order.setting,
			imprint: imprintOf(context, order),
			sections: withLists(referred(own.sections, own.places, { file, places: companion.places }), {
				file,
				sections: companion.sections,
			}),
		};
	};
	return {
		regulator: document(body, front, back, appendix),
		"regulator-appendix": document(appendix, back, front, body),
	};
};

const countingWords = ({ context, order }: Begun): CountingWords => {
	const { label } = context.words;
	return {
		table: label("counting.table"),
		figure: label("counting.figure"),
		section: label(order.numbered === "letters" ? "counting.appendix" : "counting.section"),
	};
};
