import { formula } from "../../cite/formula.ts";
import type { Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { Stimulation } from "../../well/well.ts";
import type { PressureLadder, StimulationResults } from "../results.ts";

/** By how much a pressure that must be the lower passes the higher [psi]. */
export const pressureOver = formula({
	id: "stimulation/pressure-over",
	name: "Pressure above the next limit",
	expression: "Δp = p_lower − p_upper",
	source: cite("definition", "expected < kick-outs < relief ≤ maximum ≤ each rating × factor"),
	inputs: { p_lower: "pressure", p_upper: "pressure" },
	gives: "pressure-difference",
	compute: ({ p_lower, p_upper }) => p_lower - p_upper,
});

type Rung = PressureLadder["rungs"][number];
type Tier = Rung["tier"];

/** From the lowest up. Equal pressures break the order only where the lower must be the less. */
const TIERS: readonly { readonly tier: Tier; readonly mayEqualNext: boolean }[] = [
	{ tier: "expected", mayEqualNext: false },
	{ tier: "kickout", mayEqualNext: false },
	{ tier: "relief", mayEqualNext: true },
	{ tier: "maximum", mayEqualNext: true },
	{ tier: "element", mayEqualNext: true },
];
const height = (tier: Tier): number => TIERS.findIndex((t) => t.tier === tier);

/** A line test stands apart: it proves the iron for the maximum, and may pass no rating. */
const mustBeBelow = (lower: Rung, upper: Rung): boolean => {
	if (lower.tier === "line-test") return false;
	if (upper.tier === "line-test") return lower.tier === "maximum";
	return height(lower.tier) < height(upper.tier);
};

const mayEqual = (lower: Rung): boolean => TIERS[height(lower.tier)]?.mayEqualNext ?? true;

/**
 * Every pressure that limits the job, from the lowest due to the highest, and every pair that stands the wrong way
 * round. Nothing where fewer than two are known.
 */
export const pressureLadder = (
	{ limits }: Stimulation,
	boundary: StimulationResults["boundary"],
	expected: Known<"pressure"> | undefined,
): PressureLadder | undefined => {
	const rung = (
		tier: Tier,
		pressure: Known<"pressure"> | undefined,
		id: string = tier,
		name?: string,
	): Rung[] =>
		pressure === undefined ? [] : [{ id, tier, pressure, ...(name === undefined ? {} : { name }) }];
	const kickouts = limits?.pumpKickouts ?? [];
	const rungs: readonly Rung[] = [
		...rung("expected", expected),
		...kickouts.flatMap((kickout, i) => rung("kickout", kickout, `kickout-${i + 1}`, `${i + 1}`)),
		...rung("relief", limits?.reliefValve),
		...rung("maximum", limits?.maximumTreatingPressure),
		...boundary.flatMap((b) => rung("element", b.allowed, b.id, b.element)),
		...rung("line-test", limits?.lineTest),
	];
	if (rungs.length < 2) return undefined;
	const broken = rungs.flatMap((lower) =>
		rungs
			.filter((upper) => mustBeBelow(lower, upper))
			.filter(({ pressure }) =>
				mayEqual(lower) ? lower.pressure.value > pressure.value : lower.pressure.value >= pressure.value,
			)
			.map((upper) => ({
				id: `${lower.id}-above-${upper.id}`,
				lower: lower.id,
				upper: upper.id,
				over: pressureOver.of({ p_lower: lower.pressure, p_upper: upper.pressure }),
			})),
	);
	return { rungs, broken };
};
