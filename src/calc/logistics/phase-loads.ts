import type { Known } from "../../cite/known.ts";
import type { Schedule } from "../../definition/definition.ts";
import { maybe } from "../gaps.ts";
import type { LogisticsResults, PhaseLoads } from "../results.ts";
import { totalDuration } from "./durations.ts";
import {
	busiestDay,
	busiestDayOfStages,
	greatestCount,
	loadsPerDay,
	oneWayTrips,
	totalLoads,
} from "./loads.ts";

type Phase = Schedule[number]["phase"];

/** Loads of one kind, and the phase that brings them; nowhere in the schedule where it is of no one phase. */
export interface Hauled {
	readonly kind: keyof Omit<PhaseLoads, "id" | "phase" | "loads" | "one_way_trips"> | "other";
	readonly phase?: Phase;
	readonly loads: Known<"count"> | undefined;
}

/** Each phase with what it brings, in the order of the schedule; phases that bring nothing are left out. */
export const phaseLoads = (
	hauled: readonly Hauled[],
	schedule: Schedule,
	stages: Known<"count"> | undefined,
): LogisticsResults["by_phase"] => {
	const known = hauled.filter((each) => each.loads !== undefined && each.loads.value > 0);
	const order = [...schedule.map(({ phase }) => phase), ...known.map(({ phase }) => phase), undefined];
	return [...new Set(order)].flatMap((phase) => {
		const here = known.filter((each) => each.phase === phase);
		return here.length === 0 ? [] : [ofPhase(phase, here, schedule, stages)];
	});
};

const ofPhase = (
	phase: Phase | undefined,
	here: readonly Hauled[],
	schedule: Schedule,
	stages: Known<"count"> | undefined,
): PhaseLoads => {
	const times = schedule.filter((each) => each.phase === phase);
	const lasting = (end: 0 | 1) =>
		times.length === 0 ? undefined : totalDuration.of({ t_i: times.map(({ days }) => days[end] ?? days[0]) });
	const n = totalLoads.of({ n_i: here.flatMap(({ loads }) => loads ?? []) });
	const [shortest, likely] = [lasting(0), lasting(1)];
	const busiest = busiestOf(here, n, shortest, {
		stages,
		pace: times.find(({ stages_per_day }) => stages_per_day !== undefined)?.stages_per_day,
	});
	return {
		id: phase?.replaceAll(" ", "-") ?? "no-one-phase",
		...maybe("phase", phase),
		...Object.fromEntries(here.flatMap(({ kind, loads }) => (kind === "other" ? [] : [[kind, loads]]))),
		loads: n,
		one_way_trips: oneWayTrips.of({ n }),
		...maybe("loads_per_day", likely && loadsPerDay.of({ n, t: likely })),
		...maybe("busiest_day", busiest),
		...maybe("busiest_day_trips", busiest && oneWayTrips.of({ n: busiest })),
	};
};

/** By the shortest time; where a pace of stages is stated, by the stages that begin in a day if that is more. */
const busiestOf = (
	here: readonly Hauled[],
	n: Known<"count">,
	shortest: Known<"duration"> | undefined,
	by: { readonly stages: Known<"count"> | undefined; readonly pace: Known<"count"> | undefined },
): Known<"count"> | undefined => {
	if (shortest === undefined) return undefined;
	const evenly = busiestDay.of({ n, t: shortest });
	const ofStages = here.flatMap(({ kind, loads }) =>
		kind === "water" || kind === "sand" ? (loads ?? []) : [],
	);
	if (by.pace === undefined || by.stages === undefined || ofStages.length === 0) return evenly;
	const staged = busiestDayOfStages.of({
		n: totalLoads.of({ n_i: ofStages }),
		N: by.stages,
		r: by.pace,
	});
	return greatestCount.of({ n_i: [evenly, staged] });
};
