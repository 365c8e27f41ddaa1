import { readerPaperOf } from "../../document/document.ts";
import type { PaperContext } from "../context.ts";
import { answered } from "../parts/answers.ts";
import { asGiven } from "../parts/part.ts";

/** Entries of a list that a slide has room for. */
const ON_A_SLIDE = 6;
const CHEMICALS = 4;

/** Words that only slides have: whom to call, what stays open, and the figures that pictures are drawn from. */
export const slideWords = (context: PaperContext): Readonly<Record<string, unknown>> => {
	const { well, words } = context;
	const additives = well.stimulation?.additives ?? [];
	const open = answered(context).filter((entry) => entry.words.length === 0);
	return {
		contacts: (well.safety?.contacts ?? [])
			.filter(({ papers }) => papers === undefined || papers.includes(readerPaperOf(context.paper)))
			.map(({ role, name, phone }) => ({ role, name, phone })),
		chemicals: additives.slice(0, CHEMICALS).map(({ name, purpose }) => ({
			name,
			plain: words.findLabel(`purposes_plain.${purpose}`) ?? asGiven(context, purpose),
		})),
		chemicals_more: additives.length > CHEMICALS ? String(additives.length - CHEMICALS) : false,
		some_by_night: (well.schedule ?? []).some(({ hours }) => hours === "around the clock"),
		open_questions: open.slice(0, ON_A_SLIDE).map(({ question }) => question.ask),
		open_more: open.length > ON_A_SLIDE ? String(open.length - ON_A_SLIDE) : false,
	};
};
