import type { Known } from "../../cite/known.ts";
import type { Schedule } from "../../definition/definition.ts";
import type { Well } from "../../well/well.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { LogisticsResults, Results } from "../results.ts";
import { stagesDuration, totalDuration } from "./durations.ts";
import {
	cementMass,
	loadsByMass,
	loadsByVolume,
	loadsPerDay,
	oneWayTrips,
	pipeMass,
	totalLoads,
	truckedVolume,
} from "./loads.ts";

type Before = Pick<Results, "casing" | "cement" | "stimulation">;

/** Loads down the road and days of work; nothing where neither payloads nor a schedule are given. */
export const logisticsResults = (well: Well, before: Before, gaps: Gaps): LogisticsResults | undefined => {
	if (well.logistics === undefined && (well.schedule?.length ?? 0) === 0) return undefined;
	const loads = loadsOf(well, before, gaps);
	return { ...loads, ...durations(well.schedule ?? [], before, loads.total_loads) };
};

type Loads = Pick<
	LogisticsResults,
	| "water_loads"
	| "proppant_loads"
	| "cement_loads"
	| "pipe_loads"
	| "other_loads"
	| "total_loads"
	| "one_way_trips"
>;

/** A total is given only where every kind of load that the well has could be counted. */
const loadsOf = ({ logistics }: Well, { casing, cement, stimulation }: Before, gaps: Gaps): Loads => {
	if (logistics === undefined) return {};
	const missing = (kind: string, field: string) =>
		gaps.missing(`logistics.${kind}`, `The load of a truck is not given (${field}).`, [["logistics", field]]);
	const strings = Object.values(casing);
	const sacks = Object.values(cement).map((job) => job.sacks);
	const water =
		stimulation &&
		(logistics.water_truck === undefined
			? missing("water_loads", "water_truck")
			: loadsByVolume.of({
					V: byRoad(stimulation.water_volume, logistics.water_by_pipeline),
					V_t: logistics.water_truck,
				}));
	const proppant =
		stimulation &&
		(logistics.sand_truck === undefined
			? missing("proppant_loads", "sand_truck")
			: loadsByMass.of({ m: stimulation.proppant_mass, p: logistics.sand_truck }));
	const dry =
		sacks.length === 0
			? undefined
			: logistics.cement_truck === undefined
				? missing("cement_loads", "cement_truck")
				: loadsByMass.of({ m: cementMass.of({ n_i: sacks }), p: logistics.cement_truck });
	const pipe =
		strings.length === 0
			? undefined
			: logistics.pipe_truck === undefined
				? missing("pipe_loads", "pipe_truck")
				: loadsByMass.of({
						m: pipeMass.of({ m_i: strings.map((s) => s.pipe_mass) }),
						p: logistics.pipe_truck,
					});
	const due = [stimulation && [water, proppant], sacks.length > 0 && [dry], strings.length > 0 && [pipe]];
	const parts = due.flatMap((kinds) => (kinds === undefined || kinds === false ? [] : kinds));
	const known = [...parts, logistics.other_loads].filter((n) => n !== undefined);
	const total = parts.includes(undefined) ? undefined : totalLoads.of({ n_i: known });
	return {
		...maybe("water_loads", water),
		...maybe("proppant_loads", proppant),
		...maybe("cement_loads", dry),
		...maybe("pipe_loads", pipe),
		...maybe("other_loads", logistics.other_loads),
		...maybe("total_loads", total),
		...maybe("one_way_trips", total && oneWayTrips.of({ n: total })),
	};
};

const byRoad = (water: Known<"volume">, piped: Known<"share"> | undefined): Known<"volume"> =>
	piped === undefined ? water : truckedVolume.of({ V: water, s: piped });

type Durations = Pick<LogisticsResults, "duration" | "stimulation_days" | "loads_per_day">;

const durations = (
	schedule: Schedule,
	{ stimulation }: Before,
	total: Known<"count"> | undefined,
): Durations => {
	if (schedule.length === 0) return {};
	const [low, base, high] = ([0, 1, 2] as const).map((i) =>
		totalDuration.of({ t_i: schedule.map(({ days }) => days[i] ?? days[0]) }),
	);
	const pace = schedule.find((p) => p.phase === "stimulation")?.stages_per_day;
	return {
		...(low === undefined || base === undefined || high === undefined
			? {}
			: { duration: { low, base, high } }),
		...maybe(
			"stimulation_days",
			pace && stimulation && stagesDuration.of({ N: stimulation.stage_count, r: pace }),
		),
		...maybe("loads_per_day", total && base && loadsPerDay.of({ n: total, t: base })),
	};
};
