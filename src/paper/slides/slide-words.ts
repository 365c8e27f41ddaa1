import { dayOf } from "../../calc/logistics/phase-times.ts";
import { readerPaperOf } from "../../document/document.ts";
import { longDate } from "../../drawing/timeline/date-axis.ts";
import { DRAWING_WORDS } from "../../drawing/words/drawing-words.ts";
import type { PaperContext } from "../context.ts";
import { about, say, sayText } from "../narrative/say.ts";
import { answered } from "../parts/answers.ts";
import { asGiven } from "../parts/part.ts";

/** Entries of a list that a slide has room for. */
const ON_A_SLIDE = 6;
const CHEMICALS = 4;

/** Words that only slides have: whom to call, what stays open, and the figures that pictures are drawn from. */
export const slideWords = (context: PaperContext): Readonly<Record<string, unknown>> => {
	const { well, results, words } = context;
	const dated = (date: string | undefined): string | false =>
		date === undefined ? false : longDate(DRAWING_WORDS[words.language], dayOf(date));
	const additives = well.stimulation?.additives ?? [];
	const open = answered(context).filter((entry) => entry.words.length === 0);
	const own: Readonly<Record<string, unknown>> = well.community ?? {};
	const ownWords = (topic: string): string | false => {
		const said = own[topic];
		return typeof said === "string" ? sayText(said) : false;
	};
	return {
		contacts: (well.safety?.contacts ?? [])
			.filter(({ papers }) => papers === undefined || papers.includes(readerPaperOf(context.paper)))
			.map(({ role, name, phone }) => ({ role, name, phone })),
		chemicals: additives.slice(0, CHEMICALS).map(({ name, purpose }) => ({
			name,
			plain: words.findLabel(`purposes_plain.${purpose}`) ?? asGiven(context, purpose),
		})),
		chemicals_more: additives.length > CHEMICALS ? String(additives.length - CHEMICALS) : false,
		comments_until: dated(well.agency?.comments_until),
		issued: dated(well.identity.issued),
		some_by_night: (well.schedule ?? []).some(({ hours }) => hours === "around the clock"),
		open_questions: open.slice(0, ON_A_SLIDE).map(({ question }) => question.ask),
		open_more: open.length > ON_A_SLIDE ? String(open.length - ON_A_SLIDE) : false,
		noise_home: about(context, results.safety?.noise_at_nearest_dwelling?.level),
		noise_level: say(context, well.safety?.noise?.source_level),
		...Object.fromEntries(OWN.map((topic) => [`own_${topic}`, ownWords(topic)])),
	};
};

/** Topics of the operator's own words that slides say. */
const OWN = ["spills", "emergency", "inspections", "water_testing", "cement_shortfall"] as const;
