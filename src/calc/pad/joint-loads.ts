import type { Known } from "../../cite/known.ts";
import { maybe } from "../gaps.ts";
import { greatestCount, loadsPerDay, oneWayTrips, totalLoads } from "../logistics/loads.ts";
import type { LogisticsResults, PhaseLoads } from "../results.ts";
import type { JointPhase } from "./joint-schedule.ts";

const KINDS = ["water", "sand", "cement", "pipe", "equipment", "returned_water"] as const;
const TOTAL_OF = {
	water: "water_loads",
	sand: "proppant_loads",
	cement: "cement_loads",
	pipe: "pipe_loads",
	equipment: "equipment_loads",
	returned_water: "returned_water_loads",
} as const;

const total = (n_i: readonly (Known<"count"> | undefined)[]): Known<"count"> | undefined => {
	const known = n_i.filter((n) => n !== undefined);
	return known.length === 0 ? undefined : totalLoads.of({ n_i: known });
};

/**
 * Truck loads of all wells of a pad. What is done once for all of them is counted once; a phase that two wells have on the
 * same days has the loads of both on its busiest day.
 *
 * @returns nothing where the loads of some well could not be counted
 */
export const jointLoads = (
	wells: readonly (LogisticsResults | undefined)[],
	phases: readonly JointPhase[],
	spans: ReadonlyMap<string, Known<"duration">>,
): Omit<LogisticsResults, "duration" | "stimulation_days" | "comparisons"> | undefined => {
	const counted = wells
		.filter((each) => each?.total_loads !== undefined)
		.map((each) => each as LogisticsResults);
	if (counted.length < wells.length) return undefined;
	const ids = [...phases.map(({ phase }) => phase as string), undefined];
	const by_phase = ids.flatMap((phase): PhaseLoads[] => {
		const joint = phases.find((each) => each.phase === phase);
		const of = counted.flatMap(({ by_phase: rows }) => rows.filter((row) => row.phase === phase));
		const [first] = of;
		if (first === undefined) return [];
		return [
			joint?.once === true ? first : together(of, joint, phase === undefined ? undefined : spans.get(phase)),
		];
	});
	const n = totalLoads.of({ n_i: by_phase.map(({ loads }) => loads) });
	return {
		by_phase,
		...Object.fromEntries(
			KINDS.flatMap((kind) => {
				const loads = total(by_phase.map((row) => row[kind]));
				return loads === undefined ? [] : [[TOTAL_OF[kind], loads]];
			}),
		),
		...maybe("other_loads", total(counted.map(({ other_loads }) => other_loads))),
		total_loads: n,
		one_way_trips: oneWayTrips.of({ n }),
	};
};

const together = (
	of: readonly PhaseLoads[],
	phase: JointPhase | undefined,
	span: Known<"duration"> | undefined,
): PhaseLoads => {
	const [first] = of;
	if (first === undefined) throw new RangeError("a phase without loads");
	const loads = totalLoads.of({ n_i: of.map((row) => row.loads) });
	const busiest = of.map(({ busiest_day }) => busiest_day);
	const known = busiest.filter((each) => each !== undefined);
	const busiest_day =
		known.length < of.length
			? undefined
			: phase?.together === true
				? totalLoads.of({ n_i: known })
				: greatestCount.of({ n_i: known });
	return {
		id: first.id,
		...maybe("phase", first.phase),
		...Object.fromEntries(
			KINDS.flatMap((kind) => {
				const sum = total(of.map((row) => row[kind]));
				return sum === undefined ? [] : [[kind, sum]];
			}),
		),
		loads,
		one_way_trips: oneWayTrips.of({ n: loads }),
		...maybe("loads_per_day", span && loadsPerDay.of({ n: loads, t: span })),
		...maybe("busiest_day", busiest_day),
		...maybe("busiest_day_trips", busiest_day && oneWayTrips.of({ n: busiest_day })),
	};
};
