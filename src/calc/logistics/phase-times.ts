import type { Known } from "../../cite/known.ts";
import type { Schedule } from "../../definition/definition.ts";

export type Phase = Schedule[number];

/** Days from the first day of the schedule. */
export interface PhaseTimes {
	readonly phase: Phase;
	readonly start: number;
	/** Likely end, and the earliest and the latest; the three are one where a single duration is given. */
	readonly end: number;
	readonly earliest: number;
	readonly latest: number;
	/** As it went; without an end where that is not on record. */
	readonly actual?: { readonly start: number; readonly end?: number };
}

interface Timetable {
	readonly phases: readonly PhaseTimes[];
	/** The first day, as days since 1970-01-01, where any date is given. */
	readonly firstDay?: number;
}

const MINUTES_A_DAY = 1440;
const MILLISECONDS_A_DAY = 86_400_000;

/** Days since 1970-01-01 of an ISO date. */
export const dayOf = (date: string): number =>
	Math.round(Date.parse(`${date}T00:00:00Z`) / MILLISECONDS_A_DAY);

const inDays = (known: Known): number => known.value / MINUTES_A_DAY;

/** Low, base and high; a single value is all three. */
export const daysOf = ({ days }: Phase): readonly [Known, Known, Known] =>
	days.length === 1 ? [days[0], days[0], days[0]] : days;

/** A phase without a date begins when the one before it ends, early or late. */
export const timetable = (schedule: Schedule): Timetable => {
	const dated = schedule.findIndex((phase) => phase.starts !== undefined);
	const before = schedule
		.slice(0, Math.max(dated, 0))
		.reduce((sum, phase) => sum + inDays(daysOf(phase)[1]), 0);
	const anchor = dated === -1 ? undefined : dayOf(schedule[dated]?.starts ?? "") - before;
	let [early, likely, late] = [0, 0, 0];
	const phases = schedule.map((phase, i): PhaseTimes => {
		if (phase.starts !== undefined && anchor !== undefined && i >= dated) {
			likely = dayOf(phase.starts) - anchor;
			[early, late] = [likely, likely];
		}
		const [low, base, high] = daysOf(phase).map(inDays) as [number, number, number];
		const start = likely;
		[early, likely, late] = [early + low, likely + base, late + high];
		const actual = phase.actual;
		return {
			phase,
			start,
			end: likely,
			earliest: early,
			latest: late,
			...(actual === undefined || anchor === undefined
				? {}
				: {
						actual: {
							start: dayOf(actual.started) - anchor,
							// The last day counts whole.
							...(actual.ended === undefined ? {} : { end: dayOf(actual.ended) + 1 - anchor }),
						},
					}),
		};
	});
	return { phases, ...(anchor === undefined ? {} : { firstDay: anchor }) };
};
