import { dayOf } from "../../calc/logistics/phase-times.ts";
import type { Known } from "../../cite/known.ts";
import type { QuantityStyle } from "../../document/inline.ts";
import type { Drawing } from "../../document/shapes.ts";
import { compose, type Line, run } from "../../drawing/line-of-text.ts";
import { printer } from "../../drawing/print.ts";
import { type BarRow, barDrawing } from "../../drawing/talk/bars.ts";
import { talkLayers } from "../../drawing/talk/talk-layers.ts";
import { talkMap } from "../../drawing/talk/talk-map.ts";
import type { TalkOptions } from "../../drawing/talk/talk-options.ts";
import { talkSection } from "../../drawing/talk/talk-section.ts";
import { longDate } from "../../drawing/timeline/date-axis.ts";
import { DRAWING_WORDS } from "../../drawing/words/drawing-words.ts";
import type { PaperContext } from "../context.ts";
import { isFinished } from "../narrative/done.ts";
import { titled } from "../parts/part.ts";
import { isWaterShownProtected } from "../water-verdict.ts";

export interface PictureSize {
	readonly width: number;
	readonly height: number;
	readonly size: number;
}

type Picture = (context: PaperContext, size: PictureSize) => Drawing | undefined;

const optionsOf = (context: PaperContext, size: PictureSize): TalkOptions => ({
	units: context.units,
	language: context.words.language,
	words: DRAWING_WORDS[context.words.language],
	keyOf: context.index.keyOf,
	...size,
});

const printOf = ({ units, words, index }: PaperContext) =>
	printer(units, DRAWING_WORDS[words.language], index.keyOf, words.language);

const bars = (
	context: PaperContext,
	size: PictureSize,
	id: string,
	title: string,
	rows: readonly BarRow[],
	names?: number,
): Drawing | undefined =>
	rows.length === 0
		? undefined
		: barDrawing(rows, {
				id: `talk-${id}`,
				title,
				scale: DRAWING_WORDS[context.words.language].talkBars,
				...size,
				...(names === undefined ? {} : { names }),
			});

const DAYS: QuantityStyle = { unit: "d", decimals: 0, spoken: true };

const phases: Picture = (context, size) => {
	const print = printOf(context);
	const { label, findLabel } = context.words;
	const schedule = context.well.schedule ?? [];
	const words = DRAWING_WORDS[context.words.language];
	// Of work that is done the room is told when it was, not how long it was to take.
	const finished = isFinished(context);
	const rows = schedule.flatMap(({ phase, days, hours, actual }): BarRow[] => {
		if (finished && actual?.started !== undefined && actual.ended !== undefined) {
			const [first, last] = [dayOf(actual.started), dayOf(actual.ended)];
			return [
				{
					name: findLabel(`phases.${phase}`) ?? titled(phase),
					value: last - first + 1,
					says: sentenceLine(label("slides.phase_dates"), longDate(words, first), longDate(words, last)),
					strong: hours === "around the clock",
				},
			];
		}
		const [low, base, high] = days.length === 1 ? [undefined, days[0], undefined] : days;
		if (base === undefined) return [];
		const ranged = low !== undefined && high !== undefined;
		return [
			{
				name: findLabel(`phases.${phase}`) ?? titled(phase),
				value: base.value,
				...(ranged ? { range: [low.value, high.value] as const } : {}),
				says: ranged
					? compose(label("slides.phases"), {
							days: print.value(base, DAYS),
							low: print.value(low, { ...DAYS, bare: true, spoken: false }),
							high: print.value(high, { ...DAYS, bare: true, spoken: false }),
						})
					: [print.value(base, DAYS)],
				strong: hours === "around the clock",
			},
		];
	});
	return bars(context, size, "phases", label("captions.schedule"), rows, 0.4);
};

const sentenceLine = (pattern: string, started: string, ended: string): Line => [
	run(pattern.replace("{started}", started).replace("{ended}", ended)),
];

const shares: Picture = (context, size) => {
	const disclosure = context.results.stimulation?.disclosure;
	if (disclosure === undefined) return undefined;
	const print = printOf(context);
	const { label } = context.words;
	const row = (name: string, share: Known, decimals: number): BarRow => ({
		name: label(`slides.share_${name}`),
		value: share.value,
		says: [print.value(share, { decimals })],
		strong: name !== "additives",
	});
	return bars(context, size, "shares", label("slides.share_water"), [
		row("water", disclosure.base_fluid.share, 1),
		row("sand", disclosure.proppant_share, 1),
		row("additives", disclosure.additive_share, 2),
	]);
};

const sound: Picture = (context, size) => {
	const at = context.results.safety?.noise_at_nearest_dwelling;
	if (at === undefined) return undefined;
	const print = printOf(context);
	const { label } = context.words;
	const everyday = (sound: typeof at.as_loud_as): BarRow[] =>
		sound === undefined
			? []
			: [
					{
						name: titled(label(`sounds.${sound.id}`)),
						value: sound.level.value,
						says: [print.value(sound.level, { decimals: 0, spoken: true })],
						strong: false,
					},
				];
	return bars(context, size, "sound", label("captions.noise"), [
		...everyday(at.as_loud_as),
		{
			name: label("slides.sound_home").replace("{name}", at.name),
			value: at.level.value,
			says: [print.value(at.level, { significant: 2, spoken: true })],
			strong: true,
		},
		...everyday(at.softer_than),
	]);
};

const trucks: Picture = (context, size) => {
	const print = printOf(context);
	const { label, findLabel } = context.words;
	const found = (context.results.logistics?.by_phase ?? []).flatMap(({ phase, busiest_day_trips }) =>
		phase === undefined || busiest_day_trips === undefined ? [] : [{ phase, trips: busiest_day_trips }],
	);
	const most = Math.max(...found.map(({ trips }) => trips.value));
	return bars(
		context,
		size,
		"trucks",
		label("captions.loads"),
		found.map(
			({ phase, trips }): BarRow => ({
				name: findLabel(`phases.${phase}`) ?? titled(phase),
				value: trips.value,
				says: compose(label("slides.trips"), { trips: print.value(trips) }),
				strong: trips.value === most,
			}),
		),
		0.3,
	);
};

/** Pictures by the name that a slide gives. */
export const PICTURES: Readonly<Record<string, Picture>> = {
	map: (context, size) => talkMap(context.well, context.results, optionsOf(context, size)),
	section: (context, size) => talkSection(context.well, context.results, optionsOf(context, size)),
	layers: (context, size) =>
		isWaterShownProtected(context)
			? talkLayers(context.well, context.results, optionsOf(context, size))
			: undefined,
	phases,
	shares,
	sound,
	trucks,
};
