import type { StageResults, StepResults, StimulationResults } from "../../calc/results.ts";
import type { Known } from "../../cite/known.ts";
import type { Stage, Well } from "../../well/well.ts";

/** A step of a stage with the time it is pumped between [min]. */
interface TimedStep {
	readonly step: StepResults;
	readonly from: number;
	readonly to: number;
}

/** A stage over its pumping time. */
export interface Treatment {
	readonly stage: StageResults;
	readonly given?: Stage;
	readonly steps: readonly TimedStep[];
	readonly time: number;
	/** Surface pressure over time, where it is worked for this stage. */
	readonly course?: NonNullable<StimulationResults["hardest_stage"]>["course"];
	readonly greatest?: Known<"pressure">;
	/** The plotted stage is the one that needs the greatest pressure. */
	readonly hardest: boolean;
}

/** The stage that needs the greatest pressure, else the first that has steps. */
export const treatmentOf = (
	well: Well,
	stimulation: StimulationResults | undefined,
): Treatment | undefined => {
	const hardest = stimulation?.hardest_stage;
	const withSteps = (stimulation?.stages ?? []).filter((stage) => stage.steps.length > 0);
	const stage = withSteps.find((each) => each.number === hardest?.number) ?? withSteps[0];
	if (stage === undefined) return undefined;
	let time = 0;
	const steps = stage.steps.map((step): TimedStep => {
		const from = time;
		time += step.time.value;
		return { step, from, to: time };
	});
	if (!(time > 0)) return undefined;
	const given = well.stimulation?.stages.find((each) => each.number === stage.number);
	const own = hardest !== undefined && hardest.number === stage.number;
	return {
		stage,
		steps,
		time,
		hardest: own,
		...(given === undefined ? {} : { given }),
		...(own && hardest.course.rows.length > 1 ? { course: hardest.course, greatest: hardest.greatest } : {}),
	};
};
