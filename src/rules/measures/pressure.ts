import type { Known } from "../../cite/known.ts";
import type { AnnulusLimit, PressureTest, Well } from "../../well/well.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { fallInPressure } from "../formulas.ts";
import { absent, known, lacking, type Measure, type Reading } from "./reading.ts";
import { casingOf, stringOf } from "./shoe.ts";

/** The test as recorded where it was made, else as planned; never a mixture of the two. */
const testOf = (
	the: Case,
): { readonly said: string; readonly test: Partial<Omit<PressureTest, "actual">> } | undefined => {
	const { pressureTest } = stringOf(the);
	if (pressureTest === undefined) return undefined;
	const { actual } = pressureTest;
	if (actual === undefined) return { said: "planned", test: pressureTest };
	return {
		said: "recorded",
		test: {
			pressure: actual.pressure,
			...(actual.hold === undefined ? {} : { hold: actual.hold }),
			...(actual.fall === undefined ? {} : { allowedFall: actual.fall }),
		},
	};
};

/** The record calls the fall by another name than the plan does. */
const testMissing = (the: Case, what: string, planned: string, recorded: string = planned) => {
	const made = stringOf(the).pressureTest?.actual !== undefined;
	return missingOf(the, stringOf(the), what, "pressure_test", ...(made ? ["actual", recorded] : [planned]));
};

const testMeasure = (
	noun: string,
	find: (test: Partial<PressureTest>) => Known | undefined,
	what: string,
	...at: readonly [planned: string, recorded?: string]
): Measure => ({
	noun,
	read: (the) => {
		const found = testOf(the);
		return known(found && find(found.test), testMissing(the, what, ...at));
	},
	say: ({ part }, the) => [`the ${testOf(the)?.said ?? "planned"} ${noun} is `, part],
});

const pressureOf = ({ pressure }: Partial<PressureTest>) => pressure;

const stated = (
	noun: string,
	find: (well: Well) => Known | undefined,
	what: string,
	...at: string[]
): Measure => ({
	noun,
	read: ({ well }) => {
		if (well.stimulation === undefined) return absent("no stimulation is planned");
		return known(find(well), missingAt(what, ...at));
	},
	say: ({ part }) => [`the ${noun} is `, part],
});

/** The heaviest fluid the hole below a string's shoe is drilled with. */
export const heaviestBelow = (the: Case): Reading => {
	const { holes } = the.well;
	const next = holes.findIndex(({ id }) => id === stringOf(the).hole.id) + 1;
	const at = next < holes.length ? ["holes", next, "fluid", "density"] : ["holes"];
	return known(holes[next]?.fluid?.density, missingAt("density of the drilling fluid below the shoe", ...at));
};

const annulusIndex = (well: Well, limit: AnnulusLimit | undefined): number =>
	limit === undefined ? -1 : (well.stimulation?.annuli ?? []).indexOf(limit);

export const pressureMeasures = {
	"test pressure": testMeasure("test pressure", pressureOf, "test pressure", "pressure"),
	"test hold": testMeasure("hold of the test", ({ hold }) => hold, "hold of the pressure test", "hold"),
	"test fall": testMeasure(
		"fall in the test",
		({ allowedFall }) => allowedFall,
		"fall of the pressure test",
		"allowed_fall",
		"fall",
	),
	"test fall in pressure": testMeasure(
		"fall in the test",
		({ allowedFall, pressure }) =>
			allowedFall && pressure && fallInPressure.of({ share: allowedFall, pressure }),
		"fall of the pressure test",
		"allowed_fall",
		"fall",
	),
	"internal yield": {
		noun: "least internal yield pressure of the string",
		read: (the) =>
			known(
				casingOf(the)?.least_internal_yield,
				missingOf(the, stringOf(the), "internal yield pressure", "pipe"),
			),
		say: ({ part }) => ["the least internal yield pressure of the string is ", part],
	},
	"maximum treating pressure": stated(
		"maximum treating pressure",
		({ stimulation }) => stimulation?.limits?.maximumTreatingPressure,
		"maximum treating pressure",
		"stimulation",
		"limits",
		"maximum_treating_pressure",
	),
	"relief valve setting": stated(
		"relief valve's setting",
		({ stimulation }) => stimulation?.limits?.reliefValve,
		"relief valve's setting",
		"stimulation",
		"limits",
		"relief_valve",
	),
	"preventer working pressure": {
		noun: "working pressure of the preventers",
		read: (the) => {
			const string = stringOf(the);
			const stack = the.well.wellControl?.preventers?.find(({ over }) => over === string.id);
			return known(
				stack?.working_pressure,
				missingAt(`preventers on the ${string.id} string`, "well_control", "preventers"),
			);
		},
		say: ({ part }) => ["the preventers on the string are rated at ", part],
	},
	"new hole before shoe test": {
		noun: "new hole drilled before the shoe test",
		read: (the) => {
			const string = stringOf(the);
			return known(
				string.shoeTest?.newHole,
				missingOf(the, string, "new hole before the shoe test", "shoe_test", "new_hole"),
			);
		},
		say: ({ part }) => ["the shoe is tested after ", part, " of new hole"],
	},
	"shoe test equivalent": {
		noun: "equivalent density of the shoe test",
		read: (the) => {
			const string = stringOf(the);
			const value = string.shoeTest?.actual?.equivalent ?? string.shoeTest?.equivalent;
			return known(value, missingOf(the, string, "shoe test", "shoe_test", "equivalent"));
		},
		say: ({ part }, the) => [
			`the ${stringOf(the).shoeTest?.actual === undefined ? "planned" : "recorded"} shoe test is to `,
			part,
		],
	},
	"heaviest fluid below the shoe": {
		noun: "heaviest fluid planned below the shoe",
		read: heaviestBelow,
		say: ({ part }) => ["the fluid planned below the shoe weighs ", part],
	},
	"annulus stop pressure": {
		noun: "pressure at which the job stops",
		read: ({ subject, well }) => {
			if (subject.kind !== "annulus") return lacking();
			const index = annulusIndex(well, subject.limit);
			return known(subject.limit?.stopAbove, annulusMissing(subject, "stop pressure", index, "stop_above"));
		},
		say: ({ part }) => ["the job stops when the annulus reaches ", part],
	},
	"predicted annulus rise": {
		noun: "predicted rise of the annulus pressure",
		read: ({ subject, well }) => {
			if (subject.kind !== "annulus") return lacking();
			const index = annulusIndex(well, subject.limit);
			return known(
				subject.limit?.predictedRise,
				annulusMissing(subject, "predicted rise", index, "predicted_rise"),
			);
		},
		say: ({ part }) => ["the annulus pressure is predicted to rise by ", part],
	},
} as const satisfies Readonly<Record<string, Measure>>;

function annulusMissing(
	{ inner, outer }: Extract<Case["subject"], { kind: "annulus" }>,
	what: string,
	index: number,
	field: string,
) {
	const at = index < 0 ? ["stimulation", "annuli"] : ["stimulation", "annuli", index, field];
	return missingAt(`${what} of the ${inner.id} × ${outer.id} annulus`, ...at);
}
