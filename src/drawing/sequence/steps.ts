import type { Results } from "../../calc/results.ts";
import type { CasingString, Well } from "../../well/well.ts";

/** What is done in a step; a drawing shows the well at the end of it, cement in motion and one stage as they happen. */
export type StepKind =
	| "pad"
	| "hole"
	| "pipe"
	/** Cement on its way: down the pipe, out of the shoe, up the gap. */
	| "cement"
	/** The same as it comes back at the surface. */
	| "returns"
	| "test"
	| "preventers"
	/** Hole, pipe and cement of one string, in one picture. */
	| "string"
	| "wellhead"
	| "perforate"
	| "stage"
	| "plug"
	| "stages"
	| "drill-out"
	| "flowback"
	| "producing"
	| "plugged";

export interface WellStep {
	/** `cement-surface`, `stage`: stable, unique in a well. */
	readonly id: string;
	readonly kind: StepKind;
	/** Of the string that the step is about. */
	readonly string?: string;
}

const ofString = (kind: StepKind, { id }: CasingString): WellStep => ({
	id: `${kind}-${id}`,
	kind,
	string: id,
});

/** The short pipe that holds loose soil belongs to the building of the pad. */
const conductorOf = ({ strings }: Well): CasingString | undefined =>
	strings.length > 1 ? strings.find(({ id }) => id === "conductor") : undefined;

const stepsOfString = (well: Well, results: Results, string: CasingString): readonly WellStep[] => {
	const cement = results.cement[string.id];
	const drilledOut = results.pressure.holes.some(
		({ shoe, preventer_rating }) => shoe === string.id && preventer_rating !== undefined,
	);
	return [
		// A tieback is run inside pipe that is there already.
		...(string.kind === "tieback" ? [] : [ofString("hole", string)]),
		ofString("pipe", string),
		...(cement === undefined ? [] : [ofString("cement", string)]),
		...(cement?.to_surface === true ? [ofString("returns", string)] : []),
		...(string.pressureTest === undefined && string.cement?.waitOnCement === undefined
			? []
			: [ofString("test", string)]),
		...(drilledOut && well.strings.at(-1) !== string ? [ofString("preventers", string)] : []),
	];
};

const treatmentSteps = ({ stimulation, purpose }: WellWork): readonly WellStep[] => {
	if (stimulation === undefined) return [];
	const several = stimulation.stages.length > 1;
	const plugged = stimulation.plugs.value > 0;
	const kinds: readonly StepKind[] = [
		...(purpose === "sliding sleeve" ? [] : (["perforate"] as const)),
		"stage",
		...(plugged ? (["plug"] as const) : []),
		...(several ? (["stages"] as const) : []),
		...(plugged ? (["drill-out"] as const) : []),
		"flowback",
	];
	return kinds.map((kind) => ({ id: kind, kind }));
};

interface WellWork {
	readonly stimulation: Results["stimulation"];
	readonly purpose: string | undefined;
}

const workOf = (well: Well, results: Results): WellWork => ({
	stimulation: results.stimulation,
	purpose: well.stimulation?.method,
});

const afterwards = (well: Well, results: Results): readonly WellStep[] => [
	{ id: "wellhead", kind: "wellhead" },
	...treatmentSteps(workOf(well, results)),
	{ id: "producing", kind: "producing" },
	{ id: "plugged", kind: "plugged" },
];

const padOf = (well: Well): WellStep => {
	const conductor = conductorOf(well);
	return { id: "pad", kind: "pad", ...(conductor === undefined ? {} : { string: conductor.id }) };
};

/** Every step of a well, string by string: what a crew's sheet picks its one picture from. */
export const everyStep = (well: Well, results: Results): readonly WellStep[] => {
	const conductor = conductorOf(well);
	return [
		padOf(well),
		...well.strings
			.filter((string) => string !== conductor)
			.flatMap((string) => stepsOfString(well, results, string)),
		...afterwards(well, results),
	];
};

/** Steps of the last string that the public is shown; its test is told with the wellhead. */
const OF_LAST: ReadonlySet<StepKind> = new Set(["hole", "pipe", "cement"]);

/**
 * The steps as they are told to somebody who has never seen a well built: the first string in full, because it guards the
 * water; each string between in one picture; the last in three.
 */
export const toldSteps = (well: Well, results: Results): readonly WellStep[] => {
	const conductor = conductorOf(well);
	const strings = well.strings.filter((string) => string !== conductor);
	const last = strings.length - 1;
	return [
		padOf(well),
		...strings.flatMap((string, i): readonly WellStep[] => {
			if (i > 0 && i < last) return [ofString("string", string)];
			const steps = stepsOfString(well, results, string);
			return i === 0 ? steps : steps.filter(({ kind }) => OF_LAST.has(kind));
		}),
		...afterwards(well, results),
	];
};

/** The step that shows the well as a crew finds it for a job; absent where the well has no such step. */
export const stepOfJob = (
	well: Well,
	results: Results,
	job: { readonly id: string; readonly string?: string },
): WellStep | undefined => {
	const kinds = STEP_OF_JOB[job.id] ?? [];
	const steps = everyStep(well, results);
	return (
		kinds
			.map((kind) =>
				steps.find((step) => step.kind === kind && (job.string === undefined || step.string === job.string)),
			)
			.find((step) => step !== undefined) ??
		(job.string === undefined ? undefined : steps.find(({ string }) => string === job.string))
	);
};

/** Kinds of step that a job belongs to, the fittest first. */
const STEP_OF_JOB: Readonly<Record<string, readonly StepKind[]>> = {
	"rig-up": ["pad"],
	"preventer-test": ["preventers", "pad"],
	casing: ["pipe"],
	cementing: ["cement", "pipe"],
	"pressure-test": ["test", "returns", "cement"],
	"wireline-and-perforating": ["perforate", "stage"],
	pumping: ["stage"],
	"plug-drill-out": ["drill-out"],
	flowback: ["flowback"],
};
