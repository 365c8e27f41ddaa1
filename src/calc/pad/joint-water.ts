import type { Known } from "../../cite/known.ts";
import { maybe } from "../gaps.ts";
import { groundUnderAnInch, peopleForAYear } from "../logistics/comparisons.ts";
import type { Results } from "../results.ts";
import { countOfWells, massOfWells, volumeOfWells } from "./sums.ts";

type Stimulation = NonNullable<Results["stimulation"]>;

/** A value of each well; nothing where some well has none. */
const ofAll = <T>(
	of: readonly Stimulation[],
	pick: (each: Stimulation) => T | undefined,
): readonly T[] | undefined => {
	const values = of.flatMap((each) => pick(each) ?? []);
	return values.length === of.length ? values : undefined;
};

const volume = (V_i: readonly Known<"volume">[] | undefined): Known<"volume"> | undefined =>
	V_i && volumeOfWells.of({ V_i });

/** Shares of what is pumped are told of a pad only where every well has the same: a difference that no paper prints. */
const SAME = 5e-4;

const alike = (of: readonly Stimulation[]): boolean => {
	const shares = ({ disclosure }: Stimulation) => [
		disclosure?.base_fluid.share.value,
		disclosure?.proppant_share.value,
		disclosure?.additive_share.value,
	];
	const first = of[0] === undefined ? [] : shares(of[0]);
	return of.every((each) =>
		shares(each).every((share, i) => Math.abs((share ?? Number.NaN) - (first[i] ?? Number.NaN)) < SAME),
	);
};

/**
 * One well's treatment with the water, sand and stages of all wells of its pad. Pressures, places and models stay those of
 * the one well; what is the same in no two wells is left out.
 */
export const jointTreatment = (base: Stimulation, of: readonly Stimulation[]): Stimulation => {
	const { disclosure, recycled_water_volume: _, returned: __, as_pumped: record, ...own } = base;
	const recorded = of.every(({ as_pumped }) => as_pumped?.complete === true);
	const low = volume(ofAll(of, ({ returned }) => returned?.low));
	const high = volume(ofAll(of, ({ returned }) => returned?.high));
	return {
		...own,
		stage_count: countOfWells.of({ n_i: of.map(({ stage_count }) => stage_count) }),
		water_volume: volumeOfWells.of({ V_i: of.map(({ water_volume }) => water_volume) }),
		...maybe("recycled_water_volume", volume(ofAll(of, (each) => each.recycled_water_volume))),
		proppant_mass: massOfWells.of({ m_i: of.map(({ proppant_mass }) => proppant_mass) }),
		...(low === undefined || high === undefined ? {} : { returned: { low, high } }),
		...maybe("disclosure", alike(of) ? disclosure : undefined),
		// Until every well has its records the work is told as planned.
		...maybe("as_pumped", recorded ? record : undefined),
	};
};

/** The water of all wells beside amounts that a reader knows. */
export const waterCompared = (V: Known<"volume">) => ({
	people_for_a_year: peopleForAYear.of({ V }),
	ground_under_an_inch: groundUnderAnInch.of({ V }),
});
