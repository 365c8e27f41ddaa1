import type { Known } from "../../cite/known.ts";
import type { Schedule } from "../../definition/definition.ts";
import { message } from "../../messages/message.ts";
import type { Well } from "../../well/well.ts";
import { type Gaps, maybe } from "../gaps.ts";
import type { LogisticsResults, Results } from "../results.ts";
import { groundUnderAnInch, peopleForAYear } from "./comparisons.ts";
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
import { type Hauled, phaseLoads } from "./phase-loads.ts";

type Before = Pick<Results, "casing" | "cement" | "stimulation">;

/** Loads down the road and days of work; nothing where neither payloads nor a schedule are given. */
export const logisticsResults = (well: Well, before: Before, gaps: Gaps): LogisticsResults | undefined => {
	if (well.logistics === undefined && (well.schedule?.length ?? 0) === 0) return undefined;
	const loads = loadsOf(well, before, gaps);
	const schedule = well.schedule ?? [];
	const { stimulation } = before;
	return {
		...loads,
		...durations(schedule, before, loads.total_loads),
		by_phase: phaseLoads(hauledOf(well, loads), schedule, stimulation?.stage_count),
		...maybe(
			"comparisons",
			stimulation && {
				people_for_a_year: peopleForAYear.of({ V: stimulation.water_volume }),
				ground_under_an_inch: groundUnderAnInch.of({ V: stimulation.water_volume }),
			},
		),
	};
};

/** Water and sand come for the stimulation; pipe and cement while strings are run, which is a phase of its own or part of drilling. */
const hauledOf = ({ schedule = [], logistics }: Well, loads: Loads): readonly Hauled[] => {
	const running = schedule.some(({ phase }) => phase === "casing and cementing")
		? "casing and cementing"
		: "drilling";
	const equipment = new Map<Hauled["phase"], Known<"count">[]>();
	for (const { phase, loads: n } of logistics?.equipment ?? [])
		equipment.set(phase, [...(equipment.get(phase) ?? []), n]);
	return [
		{ kind: "pipe", phase: running, loads: loads.pipe_loads },
		{ kind: "cement", phase: running, loads: loads.cement_loads },
		{ kind: "water", phase: "stimulation", loads: loads.water_loads },
		{ kind: "sand", phase: "stimulation", loads: loads.proppant_loads },
		{ kind: "returned_water", phase: "flowback", loads: loads.returned_water_loads },
		...[...equipment].map(
			([phase, n_i]): Hauled => ({
				kind: "equipment",
				...maybe("phase", phase),
				loads: totalLoads.of({ n_i }),
			}),
		),
		{ kind: "other", loads: loads.other_loads },
	];
};

type Loads = Pick<
	LogisticsResults,
	| "water_loads"
	| "proppant_loads"
	| "cement_loads"
	| "pipe_loads"
	| "equipment_loads"
	| "returned_water_loads"
	| "other_loads"
	| "total_loads"
	| "one_way_trips"
>;

/** A total is given only where every kind of load that the well has could be counted. */
const loadsOf = ({ logistics }: Well, { casing, cement, stimulation }: Before, gaps: Gaps): Loads => {
	if (logistics === undefined) return {};
	const missing = (kind: string, field: string) =>
		gaps.missing(`logistics.${kind}`, message("calc/load-truck-is-not-given", { field }), [
			["logistics", field],
		]);
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
	const equipment =
		logistics.equipment && totalLoads.of({ n_i: logistics.equipment.map(({ loads }) => loads) });
	const back = returnedLoads(logistics, stimulation);
	const known = [...parts, equipment, back, logistics.other_loads].filter((n) => n !== undefined);
	const total = parts.includes(undefined) ? undefined : totalLoads.of({ n_i: known });
	return {
		...maybe("water_loads", water),
		...maybe("proppant_loads", proppant),
		...maybe("cement_loads", dry),
		...maybe("pipe_loads", pipe),
		...maybe("equipment_loads", equipment),
		...maybe("returned_water_loads", back),
		...maybe("other_loads", logistics.other_loads),
		...maybe("total_loads", total),
		...maybe("one_way_trips", total && oneWayTrips.of({ n: total })),
	};
};

/** Hauled away at the greater share, so that no neighbor counts more; nothing where the pipeline's part is not stated. */
const returnedLoads = (
	{ water_truck: truck, returned_water_by_pipeline: piped }: NonNullable<Well["logistics"]>,
	stimulation: Before["stimulation"],
): Known<"count"> | undefined => {
	const most = stimulation?.returned?.high;
	return truck && piped && most && loadsByVolume.of({ V: byRoad(most, piped), V_t: truck });
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
