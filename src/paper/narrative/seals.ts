import { dayOf } from "../../calc/logistics/phase-times.ts";
import type { ZoneSeal } from "../../calc/results.ts";
import { longDate } from "../../drawing/timeline/date-axis.ts";
import { DRAWING_WORDS } from "../../drawing/words/drawing-words.ts";
import type { PaperContext } from "../context.ts";
import { namedInWords } from "../parts/part.ts";
import { about, say } from "./say.ts";

/** What shows the seal of one string's cement, in the words of the paper: `checked with a bond log on …`. */
export const sealWords = (context: PaperContext, seal: ZoneSeal): string =>
	context.words
		.label(`${isTechnical(context) ? "seals" : "seals_public"}.${sealKey(seal)}`)
		.replace("{date}", dateWords(context, seal.date))
		.replace("{by}", context.words.findLabel(`seal_by.${seal.by}`) ?? seal.by ?? "");

const isTechnical = ({ paper }: PaperContext): boolean =>
	paper === "regulator" || paper === "regulator-appendix" || paper === "crew";

/** The trade reads 2026-03-09; a neighbor reads Mar 9, 2026. */
const dateWords = (context: PaperContext, date: string | undefined): string =>
	date === undefined
		? ""
		: isTechnical(context)
			? date
			: longDate(DRAWING_WORDS[context.words.language], dayOf(date));

/** What is said: of a log how much of the zone is bonded, of a test what it was made through. */
const sealKey = ({ state, by, bond, covers, logged }: ZoneSeal): string => {
	if (!covers && state === "planned") return "planned_in_part";
	if (state === "measured" && logged === undefined && bond === "throughout") return "measured_there";
	if (state === "measured") return `measured_${(bond ?? "nowhere").replaceAll(" ", "_")}`;
	if (state === "tested") return by === "squeeze" ? "squeezed" : "tested";
	return state === "inferred" ? (by === "returns seen" ? "returns_seen" : "inferred") : state;
};

/**
 * Each zone of protected water with what is between it and the treated rock, and how that is known: steel across it,
 * cement of each string, and the rock down to the shallowest opening.
 */
export const sealedZones = (context: PaperContext): readonly Readonly<Record<string, unknown>>[] => {
	const { isolation, geology } = context.results;
	const base = geology.protected_water_base?.tvd.value;
	if (base === undefined) return [];
	return isolation.zones
		.filter(({ kind, base: end }) => kind === "water" && end.value <= base)
		.map((zone) => {
			const done = zone.phases.at(-1);
			const mark = geology.water.find(({ id }) => id === zone.id);
			return {
				zone: zone.name,
				top: say(context, mark?.top.below_ground),
				base: say(context, mark?.base.below_ground),
				steel: say(context, done?.steel),
				steel_is_one: done?.steel.value === 1,
				steel_tested: say(context, done?.verified_steel),
				all_tested: done !== undefined && done.verified_steel.value >= done.steel.value,
				none_tested: (done?.verified_steel.value ?? 0) === 0,
				sheaths: zone.seals.map((seal) => ({
					string: namedInWords(context, seal.string),
					planned: seal.state === "planned",
					state: context.words.label(`seal_states.${seal.state}`),
					how: sealWords(context, seal),
					bonded: say(context, seal.bonded),
					logged: say(context, seal.logged),
					returned: say(context, seal.returns),
					test: say(context, seal.pressure),
					shoe_test: say(context, seal.shoe_test, { decimals: 1 }),
				})),
				no_sheath: zone.seals.length === 0,
				rock: say(context, zone.above_perforations),
				rock_about: about(context, zone.above_perforations),
			};
		});
};
