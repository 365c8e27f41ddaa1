import type { PaperContext } from "../context.ts";
import { liquid, say } from "./say.ts";

/**
 * What has its record already, so that words about it stand in the past: cement and test of the string that protects the
 * water, the treatment, and the work as a whole.
 */
export const doneWords = (context: PaperContext): Record<string, unknown> => {
	const { well, results } = context;
	const protecting = well.strings.find((string) => string.id === results.isolation.protecting_string);
	const test = protecting?.pressureTest;
	const made = test?.actual;
	const cement = protecting && results.cement[protecting.id];
	const record = results.stimulation?.as_pumped;
	const highest = record?.highest_pressure;
	const maximum = well.stimulation?.limits?.maximumTreatingPressure;
	const over = highest !== undefined && maximum !== undefined && highest.value > maximum.value;
	const phases = well.schedule ?? [];
	const returned = phases.find(({ phase }) => phase === "flowback")?.actual?.ended;
	return {
		built: isBuilt(context),
		cemented: protecting?.cement?.actual !== undefined,
		protecting_tested: made !== undefined,
		protecting_test: say(context, made?.pressure ?? test?.pressure),
		protecting_test_minutes: say(context, made === undefined ? test?.hold : made.hold),
		protecting_cement_volume: liquid(context, cement?.pumped_volume ?? cement?.slurry_volume),
		pumped: record?.complete === true,
		highest_pressure: say(context, highest),
		within_maximum: highest !== undefined && maximum !== undefined && !over,
		over_maximum: over,
		flowed_back: returned !== undefined,
		finished: isFinished(context),
	};
};

/** A surveyed hole is a drilled one. */
export const isBuilt = ({ results }: PaperContext): boolean => results.trajectory.basis === "surveyed";

/** Whether every phase of the work has its last day on record. */
export const isFinished = ({ well }: PaperContext): boolean =>
	(well.schedule ?? []).length > 0 && well.schedule.every(({ actual }) => actual?.ended !== undefined);
