import { scaleLinear, scaleUtc } from "d3-scale";
import type { Shape } from "../../document/shapes.ts";
import { tickString } from "../../units/format.ts";
import { run, runWidth, sentence, setLine } from "../line-of-text.ts";
import { named } from "../named.ts";
import { INK, RULING, SECOND_INK } from "../palette.ts";
import type { DrawingWords } from "../words/words.ts";

const MILLISECONDS_A_DAY = 86_400_000;

const parts = (day: number) => {
	const date = new Date(day * MILLISECONDS_A_DAY);
	return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
};

const monthOf = (words: DrawingWords, month: number): string =>
	words.months[month as keyof DrawingWords["months"]] ?? "";

/** `Jun 1`, of days since 1970-01-01. */
const shortDate = (words: DrawingWords, at: number): string => {
	const { month, day } = parts(at);
	return sentence(words.monthDay, { month: monthOf(words, month), day: String(day) });
};

/** `Jun 1, 2026` */
export const longDate = (words: DrawingWords, at: number): string => {
	const { year, month, day } = parts(at);
	return sentence(words.fullDate, { month: monthOf(words, month), day: String(day), year: String(year) });
};

export interface DayAxis {
	readonly at: (day: number) => number;
	readonly shapes: readonly Shape[];
}

/** Days across the page: as dates where the first day is known, else counted from it. */
export const dayAxis = (
	words: DrawingWords,
	firstDay: number | undefined,
	range: readonly [number, number],
	page: readonly [number, number],
	{ edge, bottom, size }: { readonly edge: number; readonly bottom: number; readonly size: number },
): DayAxis => {
	const scale = scaleLinear()
		.domain([...range])
		.range([...page]);
	const apart = size * 5.5;
	const room = Math.abs(page[1] - page[0]);
	const at = (day: number) => scale(day);
	const ticksFor = (count: number): { day: number; text: string }[] => {
		if (firstDay === undefined) return scale.ticks(count).map((day) => ({ day, text: tickString(day) }));
		const dates = scaleUtc().domain(range.map((day) => new Date((firstDay + day) * MILLISECONDS_A_DAY)));
		return dates
			.ticks(count)
			.map((date) => date.getTime() / MILLISECONDS_A_DAY)
			.filter(Number.isInteger)
			.map((day) => ({ day: day - firstDay, text: shortDate(words, day) }));
	};
	/** Left edge of a label: centered on its day, and within the drawing at either end. */
	const startOf = ({ day, text }: { day: number; text: string }) => {
		const wide = runWidth(run(text), size);
		return Math.max(page[0] - 8, Math.min(at(day) - wide / 2, page[1] + 5 - wide));
	};
	const tooClose = (ticks: { day: number; text: string }[]) =>
		ticks.some((tick, i) => {
			const before = ticks[i - 1];
			return before !== undefined && startOf(tick) - startOf(before) < runWidth(run(before.text), size) + 4;
		});
	let count = Math.max(2, Math.floor(room / apart));
	while (count > 1 && tooClose(ticksFor(count))) count -= 1;
	const all = ticksFor(count);
	const ticks = tooClose(all) ? all.slice(0, 1) : all;
	const years = firstDay === undefined ? [] : range.map((day) => parts(Math.floor(firstDay + day)).year);
	const title = firstDay === undefined ? words.axisDays : [...new Set(years)].map(String).join("–");
	return {
		at,
		shapes: [
			...ticks.flatMap(({ day, text }): Shape[] => {
				const x = at(day);
				return [
					{
						kind: "line",
						x1: x,
						y1: edge,
						x2: x,
						y2: bottom,
						stroke: { color: RULING, width: 0.5, dash: [0.5, 2.5] },
					},
					{ kind: "line", x1: x, y1: edge - 4, x2: x, y2: edge, stroke: { color: INK, width: 0.8 } },
					named(`label day ${day}`, setLine([run(text)], { x: startOf({ day, text }), y: edge - 6, size })),
				];
			}),
			{ kind: "line", x1: page[0], y1: edge, x2: page[1], y2: edge, stroke: { color: INK, width: 0.8 } },
			named(
				"label days",
				setLine([run(title, { weight: "semibold", color: SECOND_INK })], {
					x: page[1],
					y: edge - 7 - size * 1.2,
					size,
					anchor: "end",
				}),
			),
		],
	};
};
