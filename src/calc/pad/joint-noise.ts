import type { NoiseAtPlace, SafetyResults } from "../results.ts";
import { everydaySounds } from "../safety/everyday-sounds.ts";
import { totalSoundLevel } from "../safety/noise.ts";
import type { JointPhase } from "./joint-schedule.ts";

/** Phases that the stated level of the loudest work is taken for. */
const LOUD: ReadonlySet<string> = new Set(["drilling", "stimulation"]);

/** Wells that do loud work on the same days, at most: by the likely days of their schedules. */
export const loudAtOnce = (phases: readonly JointPhase[]): number => {
	const loud = phases.filter(({ phase }) => LOUD.has(phase)).flatMap(({ of }) => of);
	return Math.max(
		1,
		...loud.map(
			({ start }) =>
				new Set(loud.filter((other) => other.start <= start && start < other.end).map(({ well }) => well))
					.size,
		),
	);
};

/** At each neighbor the level of as many wells as work at once, the loudest there; those of several are added as sound adds. */
export const jointNoise = (
	wells: readonly (SafetyResults | undefined)[],
	atOnce: number,
): SafetyResults | undefined => {
	const found = wells.flatMap((each) => each ?? []);
	const [first] = found;
	if (first === undefined) return undefined;
	const at = (id: string, places: readonly NoiseAtPlace[]): NoiseAtPlace => {
		const [loudest, ...others] = places.toSorted((a, b) => b.level.value - a.level.value);
		if (loudest === undefined) throw new RangeError(`no level at ${id}`);
		const heard = [loudest, ...others].slice(0, atOnce).map(({ level }) => level);
		if (heard.length < 2) return loudest;
		const level = totalSoundLevel.of({ L_i: heard });
		return { id, name: loudest.name, distance: loudest.distance, level, ...everydaySounds(level) };
	};
	const everywhere = found.flatMap(({ noise_at_neighbors }) => noise_at_neighbors);
	const ids = [...new Set(everywhere.map(({ id }) => id))];
	const noise_at_neighbors = ids.map((id) =>
		at(
			id,
			everywhere.filter((place) => place.id === id),
		),
	);
	const nearest = found.flatMap(({ noise_at_nearest_dwelling: place }) => place ?? []);
	return {
		...first,
		noise_at_neighbors,
		...(nearest.length === 0
			? {}
			: {
					noise_at_nearest_dwelling: noise_at_neighbors
						.filter(({ id }) => nearest.some((place) => place.id === id))
						.toSorted((a, b) => b.level.value - a.level.value)[0] as NoiseAtPlace,
				}),
	};
};
