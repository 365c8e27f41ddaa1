import type { Well } from "../../well/well.ts";
import { maybe } from "../gaps.ts";
import type { PlaceResults, Results } from "../results.ts";
import { jointLoads } from "./joint-loads.ts";
import { jointNoise, loudAtOnce } from "./joint-noise.ts";
import { type JointPhase, jointPhases, jointSchedule } from "./joint-schedule.ts";
import { jointTreatment, waterCompared } from "./joint-water.ts";

/** A well of a pad as it was calculated. */
export interface Member {
	readonly well: Well;
	readonly results: Results;
}

/**
 * The member of which what belongs to one well alone is told: the one with the least rock between water and openings, of
 * those that are not drilled yet where there is one, so that no plan is told as a record.
 */
export const governing = <M extends Member>(members: readonly [M, ...M[]]): M => {
	const rock = ({ results }: M): number =>
		results.isolation.protected_water_to_top_perforation?.value ?? Number.NEGATIVE_INFINITY;
	const open = members.filter(({ results }) => results.trajectory.basis === "planned");
	const [first = members[0], ...others] = open.length > 0 ? open : members;
	return others.reduce<M>((least, each) => (rock(each) < rock(least) ? each : least), first);
};

/** Additives of any well, each once. */
const jointAdditives = (members: readonly Member[]): NonNullable<Well["stimulation"]>["additives"] => [
	...new Map(
		members.flatMap(({ well }) =>
			(well.stimulation?.additives ?? []).map((each) => [each.id, each] as const),
		),
	).values(),
];

/**
 * The wells of a pad as one piece of work, for papers that speak of all of them. Schedule, loads, noise, water and sand are
 * those of all wells; of every neighbor the nearest well counts. What only one well can have, its pipe, cement and depths,
 * is that of the governing one.
 *
 * @param members  of one site, each judged beside the others
 */
export const jointResults = (members: readonly [Member, ...Member[]]): Member => {
	const base = governing(members);
	const phases = jointPhases(members.map(({ well }) => well));
	const treated = members.flatMap(({ results }) => results.stimulation ?? []);
	const stimulation =
		base.results.stimulation === undefined ? undefined : jointTreatment(base.results.stimulation, treated);
	const { schedule: _, stimulation: plan, ...well } = base.well;
	const { stimulation: __, logistics: ___, safety: ____, ...rest } = base.results;
	return {
		well: {
			...well,
			schedule: phases === undefined ? [] : jointSchedule(phases),
			...maybe("stimulation", plan && { ...plan, additives: jointAdditives(members) }),
		},
		results: {
			...rest,
			...maybe("stimulation", stimulation),
			...maybe("logistics", logisticsOf(members, phases ?? [], stimulation)),
			...maybe(
				"safety",
				jointNoise(
					members.map(({ results }) => results.safety),
					loudAtOnce(phases ?? []),
				),
			),
			site: {
				...rest.site,
				neighbors: rest.site.neighbors.map((place) =>
					nearest(
						place,
						members.flatMap(({ results }) => results.site.neighbors.filter(({ id }) => id === place.id)),
					),
				),
			},
			isolation: { ...rest.isolation, neighbor_wells: leastAbove(members, rest.isolation) },
		},
	};
};

const logisticsOf = (
	members: readonly Member[],
	phases: readonly JointPhase[],
	stimulation: Results["stimulation"],
): Results["logistics"] => {
	const spans = new Map(
		jointSchedule(phases).flatMap(({ phase, days }) => {
			const likely = days.length === 1 ? days[0] : days[1];
			return [[phase as string, likely]];
		}),
	);
	const loads = jointLoads(
		members.map(({ results }) => results.logistics),
		phases,
		spans,
	);
	if (loads === undefined && stimulation === undefined) return undefined;
	return {
		by_phase: [],
		...loads,
		...maybe("comparisons", stimulation && waterCompared(stimulation.water_volume)),
	};
};

const least = <K extends { readonly value: number }>(values: readonly (K | undefined)[]): K | undefined =>
	values.flatMap((value) => value ?? []).toSorted((a, b) => a.value - b.value)[0];

/** Where a neighbor lies is told from the governing well; how near the work comes to it, from the nearest. */
const nearest = (place: PlaceResults, of: readonly PlaceResults[]): PlaceResults => {
	const path = least(of.map(({ from_path }) => from_path));
	const nearestOf = of.find(({ from_path }) => from_path === path)?.nearest ?? place.nearest;
	return {
		...place,
		...maybe("from_wellhead", least(of.map(({ from_wellhead }) => from_wellhead))),
		...maybe("from_path", path),
		...maybe("nearest", nearestOf),
	};
};

const leastAbove = (
	members: readonly Member[],
	{ neighbor_wells }: Results["isolation"],
): Results["isolation"]["neighbor_wells"] =>
	neighbor_wells.map((entry) => ({
		...entry,
		...maybe(
			"above_top_perforation",
			least(
				members.map(
					({ results }) =>
						results.isolation.neighbor_wells.find(({ id }) => id === entry.id)?.above_top_perforation,
				),
			),
		),
	}));
