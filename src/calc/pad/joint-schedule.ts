import type { Known } from "../../cite/known.ts";
import type { Schedule } from "../../definition/definition.ts";
import type { Quantity } from "../../units/quantity.ts";
import type { Well } from "../../well/well.ts";
import { daysOf, type Phase, type PhaseTimes, timetable } from "../logistics/phase-times.ts";
import { spanOfPhase } from "./sums.ts";

/** A phase as each well of a pad has it. */
export interface JointPhase {
	readonly phase: Phase["phase"];
	/** Of each well that has it: which, and when, in days since 1970-01-01. */
	readonly of: readonly {
		readonly well: number;
		readonly times: PhaseTimes;
		readonly start: number;
		readonly end: number;
	}[];
	/** The same work for all of them, such as building the site: the same days in every well. */
	readonly once: boolean;
	/** Two wells have it on the same days. */
	readonly together: boolean;
}

/** Phases of a pad in the order in which they begin; nothing where a well gives no date to count from. */
export const jointPhases = (wells: readonly Well[]): readonly JointPhase[] | undefined => {
	const tables = wells.map(({ schedule }) => timetable(schedule));
	if (tables.some(({ firstDay, phases }) => firstDay === undefined || phases.length === 0)) return undefined;
	const all = tables.flatMap(({ phases, firstDay = 0 }, well) =>
		phases.map((times) => ({ well, times, start: firstDay + times.start, end: firstDay + times.end })),
	);
	const names = [...new Set(all.map(({ times }) => times.phase.phase))];
	return names
		.map((phase): JointPhase => {
			const of = all.filter(({ times }) => times.phase.phase === phase).toSorted((a, b) => a.start - b.start);
			const [first] = of;
			const once =
				wells.length > 1 &&
				of.length === wells.length &&
				of.every(({ start, end }) => start === first?.start && end === first.end);
			const together =
				!once &&
				of.some(({ start }, i) => i > 0 && start < Math.max(...of.slice(0, i).map(({ end }) => end)));
			return { phase, of, once, together };
		})
		.toSorted((a, b) => (a.of[0]?.start ?? 0) - (b.of[0]?.start ?? 0));
};

const MINUTES_A_DAY = 1440;

/** The phases as one schedule: each from its first day in any well to its last, shortest, likely and longest. */
export const jointSchedule = (phases: readonly JointPhase[]): Schedule =>
	phases.map(({ of, once, phase }) => {
		const [first] = of;
		if (first === undefined) throw new RangeError("a phase that no well has");
		if (once) return first.times.phase;
		const started = (from: number): Known<"duration"> => ({
			dimension: "duration",
			value: (from * MINUTES_A_DAY) as Quantity<"duration">,
			from: { kind: "definition", at: ["schedule"], text: dateOf(from) },
		});
		const s_i = of.map(({ start }) => started(start));
		const days = ([0, 1, 2] as const).map((end) =>
			spanOfPhase.of({ s_i, t_i: of.map(({ times }) => daysOf(times.phase)[end] as Known<"duration">) }),
		) as [Known<"duration">, Known<"duration">, Known<"duration">];
		const hours = new Set(of.map(({ times }) => times.phase.hours));
		const [only] = hours;
		const ended = of.map(({ times }) => times.phase.actual?.ended);
		const begun = of.flatMap(({ times }) => times.phase.actual?.started ?? []).toSorted();
		const [started_on] = begun;
		return {
			phase,
			starts: dateOf(first.start),
			days,
			...(hours.size === 1 && only !== undefined ? { hours: only } : {}),
			...(started_on === undefined
				? {}
				: {
						actual: {
							started: started_on,
							...(ended.every((each) => each !== undefined) ? { ended: ended.toSorted().at(-1) ?? "" } : {}),
						},
					}),
		};
	});

const dateOf = (day: number): string => new Date(Math.round(day) * 86_400_000).toISOString().slice(0, 10);
