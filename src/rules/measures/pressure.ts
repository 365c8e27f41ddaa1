import type { Known } from "../../cite/known.ts";
import { message, type Said } from "../../messages/message.ts";
import type { AnnulusLimit, PressureTest, Well } from "../../well/well.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { fallInPressure } from "../formulas.ts";
import { absent, known, lacking, type Measure, type Reading } from "./reading.ts";
import { casingOf, stringOf } from "./shoe.ts";

/** The test as recorded where it was made, else as planned; never a mixture of the two. */
const testOf = (
	the: Case,
): { readonly made: boolean; readonly test: Partial<Omit<PressureTest, "actual">> } | undefined => {
	const { pressureTest } = stringOf(the);
	if (pressureTest === undefined) return undefined;
	const { actual } = pressureTest;
	if (actual === undefined) return { made: false, test: pressureTest };
	return {
		made: true,
		test: {
			pressure: actual.pressure,
			...(actual.hold === undefined ? {} : { hold: actual.hold }),
			...(actual.fall === undefined ? {} : { allowedFall: actual.fall }),
		},
	};
};

/** The record calls the fall by another name than the plan does. */
const testMissing = (the: Case, what: Said, planned: string, recorded: string = planned) => {
	const made = stringOf(the).pressureTest?.actual !== undefined;
	return missingOf(the, stringOf(the), what, "pressure_test", ...(made ? ["actual", recorded] : [planned]));
};

const testMeasure = (
	noun: Said,
	find: (test: Partial<PressureTest>) => Known | undefined,
	what: Said,
	...at: readonly [planned: string, recorded?: string]
): Measure => ({
	noun,
	read: (the) => {
		const found = testOf(the);
		return known(found && find(found.test), testMissing(the, what, ...at));
	},
	say: ({ part }, the) => [
		testOf(the)?.made === true
			? message("rules/recorded-is", { noun, part })
			: message("rules/planned-is", { noun, part }),
	],
});

const pressureOf = ({ pressure }: Partial<PressureTest>) => pressure;

const stated = (
	noun: Said,
	find: (well: Well) => Known | undefined,
	what: Said,
	...at: string[]
): Measure => ({
	noun,
	read: ({ well }) => {
		if (well.stimulation === undefined) return absent(message("rules/no-stimulation-is-planned-2"));
		return known(find(well), missingAt(what, ...at));
	},
	say: ({ part }) => [message("rules/is", { noun, part })],
});

/** The heaviest fluid the hole below a string's shoe is drilled with. */
export const heaviestBelow = (the: Case): Reading => {
	const { holes } = the.well;
	const next = holes.findIndex(({ id }) => id === stringOf(the).hole.id) + 1;
	const at = next < holes.length ? ["holes", next, "fluid", "density"] : ["holes"];
	return known(
		holes[next]?.fluid?.density,
		missingAt(message("rules/density-drilling-fluid-below-shoe"), ...at),
	);
};

const annulusIndex = (well: Well, limit: AnnulusLimit | undefined): number =>
	limit === undefined ? -1 : (well.stimulation?.annuli ?? []).indexOf(limit);

export const pressureMeasures = {
	"test pressure": testMeasure(
		message("rules/test-pressure"),
		pressureOf,
		message("rules/test-pressure"),
		"pressure",
	),
	"test hold": testMeasure(
		message("rules/hold-test"),
		({ hold }) => hold,
		message("rules/hold-pressure-test"),
		"hold",
	),
	"test fall": testMeasure(
		message("rules/fall-in-test"),
		({ allowedFall }) => allowedFall,
		message("rules/fall-pressure-test"),
		"allowed_fall",
		"fall",
	),
	"test fall in pressure": testMeasure(
		message("rules/fall-in-test"),
		({ allowedFall, pressure }) =>
			allowedFall && pressure && fallInPressure.of({ share: allowedFall, pressure }),
		message("rules/fall-pressure-test"),
		"allowed_fall",
		"fall",
	),
	"internal yield": {
		noun: message("rules/least-internal-yield-pressure-string"),
		read: (the) =>
			known(
				casingOf(the)?.least_internal_yield,
				missingOf(the, stringOf(the), message("rules/internal-yield-pressure"), "pipe"),
			),
		say: ({ part }) => [message("rules/least-internal-yield-pressure-string-is", { part })],
	},
	"maximum treating pressure": stated(
		message("rules/maximum-treating-pressure"),
		({ stimulation }) => stimulation?.limits?.maximumTreatingPressure,
		message("rules/maximum-treating-pressure"),
		"stimulation",
		"limits",
		"maximum_treating_pressure",
	),
	"relief valve setting": stated(
		message("rules/relief-valves-setting"),
		({ stimulation }) => stimulation?.limits?.reliefValve,
		message("rules/relief-valves-setting"),
		"stimulation",
		"limits",
		"relief_valve",
	),
	"preventer working pressure": {
		noun: message("rules/working-pressure-preventers"),
		read: (the) => {
			const string = stringOf(the);
			const stack = the.well.wellControl?.preventers?.find(({ over }) => over === string.id);
			return known(
				stack?.working_pressure,
				missingAt(message("rules/preventers-on-string", { string: string.id }), "well_control", "preventers"),
			);
		},
		say: ({ part }) => [message("rules/preventers-on-string-are-rated-at", { part })],
	},
	"new hole before shoe test": {
		noun: message("rules/new-hole-drilled-before-shoe-test"),
		read: (the) => {
			const string = stringOf(the);
			return known(
				string.shoeTest?.newHole,
				missingOf(the, string, message("rules/new-hole-before-shoe-test"), "shoe_test", "new_hole"),
			);
		},
		say: ({ part }) => [message("rules/shoe-is-tested-after-new-hole", { part })],
	},
	"shoe test equivalent": {
		noun: message("rules/equivalent-density-shoe-test"),
		read: (the) => {
			const string = stringOf(the);
			const value = string.shoeTest?.actual?.equivalent ?? string.shoeTest?.equivalent;
			return known(value, missingOf(the, string, message("rules/shoe-test"), "shoe_test", "equivalent"));
		},
		say: ({ part }, the) => [
			stringOf(the).shoeTest?.actual === undefined
				? message("rules/planned-shoe-test-is-to", { part })
				: message("rules/recorded-shoe-test-is-to", { part }),
		],
	},
	"heaviest fluid below the shoe": {
		noun: message("rules/heaviest-fluid-planned-below-shoe"),
		read: heaviestBelow,
		say: ({ part }) => [message("rules/fluid-planned-below-shoe-weighs", { part })],
	},
	"annulus stop pressure": {
		noun: message("rules/pressure-at-which-job-stops"),
		read: ({ subject, well }) => {
			if (subject.kind !== "annulus") return lacking();
			const index = annulusIndex(well, subject.limit);
			return known(
				subject.limit?.stopAbove,
				annulusMissing(subject, message("rules/stop-pressure"), index, "stop_above"),
			);
		},
		say: ({ part }) => [message("rules/job-stops-when-annulus-reaches", { part })],
	},
	"predicted annulus rise": {
		noun: message("rules/predicted-rise-annulus-pressure"),
		read: ({ subject, well }) => {
			if (subject.kind !== "annulus") return lacking();
			const index = annulusIndex(well, subject.limit);
			return known(
				subject.limit?.predictedRise,
				annulusMissing(subject, message("rules/predicted-rise"), index, "predicted_rise"),
			);
		},
		say: ({ part }) => [message("rules/annulus-pressure-is-predicted-to-rise-by", { part })],
	},
} as const satisfies Readonly<Record<string, Measure>>;

function annulusMissing(
	{ inner, outer }: Extract<Case["subject"], { kind: "annulus" }>,
	what: Said,
	index: number,
	field: string,
) {
	const at = index < 0 ? ["stimulation", "annuli"] : ["stimulation", "annuli", index, field];
	return missingAt(
		message("rules/field-of-annulus", {
			field: what,
			name: message("rules/annulus-named", { inner: inner.id, outer: outer.id }),
		}),
		...at,
	);
}
