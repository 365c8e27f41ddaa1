import type { CasingString, Well } from "../../../well/well.ts";
import type { LoadPhase, LoadSituation } from "../../results.ts";

/** Situations in the order that a string meets them. */
const ORDER: readonly (readonly [situation: LoadSituation, phase: LoadPhase])[] = [
	["running", "running"],
	["bending", "running"],
	["shock", "running"],
	["overpull", "running"],
	["cementing", "cementing"],
	["bumped-plug", "cementing"],
	["pressure-test", "testing"],
	["gas-kick", "drilling below"],
	["evacuation", "drilling below"],
	["stimulation", "stimulation"],
	["shut-in-gas", "production"],
	["tubing-leak", "production"],
	["drawdown", "production"],
	["producing-hot", "production"],
	["shut-in-hot", "production"],
	["tubing-leak-hot", "production"],
	["mobile-salt", "production"],
];

export const SITUATIONS: readonly LoadSituation[] = ORDER.map(([situation]) => situation);

/** A string that no hole is drilled out of stands empty when it is produced, not when the hole below loses its mud. */
export const phaseOf = (situation: LoadSituation, well: Well, string: CasingString): LoadPhase => {
	const drilledOut = well.holes.some((hole) => hole.bottom.value > string.hole.bottom.value);
	if (situation === "evacuation" && !drilledOut) return "production";
	return ORDER.find(([each]) => each === situation)?.[1] ?? "production";
};

/** For sorting: the phase first, then the situation. */
export const placeInLife = (situation: LoadSituation, phase: LoadPhase): number => {
	const phases = [...new Set(ORDER.map(([, each]) => each))];
	return phases.indexOf(phase) * ORDER.length + SITUATIONS.indexOf(situation);
};
