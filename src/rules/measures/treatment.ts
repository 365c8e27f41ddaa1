import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { message, type Said } from "../../messages/message.ts";
import type { CasingString } from "../../well/well.ts";
import { type Case, missingAt, missingFor, missingOf } from "../case.ts";
import type { MissingInput } from "../finding.ts";
import { verticalDistance } from "../formulas.ts";
import { listed } from "../reason.ts";
import { outerOf, rolesOf } from "../subject.ts";
import { absent, belowOrAbove, known, knownOr, lacking, type Measure, type Reading } from "./reading.ts";

/** A reading of a treatment that is planned. */
export const treated =
	(read: (the: Case) => Reading) =>
	(the: Case): Reading =>
		the.well.stimulation === undefined ? absent(message("rules/no-stimulation-is-planned-2")) : read(the);

const limitsOf = (the: Case) => the.well.stimulation?.limits;

const lowestKickout = (the: Case): Known<"pressure"> | undefined =>
	[...(limitsOf(the)?.pumpKickouts ?? [])].sort((a, b) => a.value - b.value)[0];

const halfReduction = (the: Case): Known<"pressure"> | undefined =>
	the.results.stimulation?.reduction_sensitivity?.find(({ id }) => id === "half-the-reduction")
		?.treating_pressure ??
	(the.well.stimulation?.pressureModel?.frictionReduction === undefined
		? the.results.stimulation?.expected_treating_pressure
		: undefined);

/** What the expected pressure lacks. */
export const pressureNeeds = (the: Case): readonly MissingInput[] =>
	missingFor(
		the,
		"stimulation.expected_treating_pressure",
		missingAt(message("rules/pressure-model-treatment"), "stimulation", "pressure_model"),
	);

/** What the fracture models lack. */
export const fractureNeeds = (the: Case): readonly MissingInput[] =>
	missingFor(
		the,
		"stimulation.fractures",
		missingAt(message("rules/mechanical-properties-treated-rock-for-fracture"), "geology", "formations"),
	);

/** Pairs of limits that stand the wrong way round; what is expected is judged apart. */
const disordered = (the: Case) => {
	const ladder = the.results.stimulation?.ladder;
	const tier = (id: string) => ladder?.rungs.find((rung) => rung.id === id)?.tier;
	// Whether the relief valve opens below the maximum is a limit of its own.
	return (ladder?.broken ?? []).filter(
		({ lower, upper }) =>
			tier(lower) !== "expected" && !(tier(lower) === "relief" && tier(upper) === "maximum"),
	);
};

const rungOf = (the: Case, id: string) =>
	the.results.stimulation?.ladder?.rungs.find((rung) => rung.id === id);

/** Kickouts have to lie below what comes next; the other limits may equal it. */
const strict = (the: Case, id: string): boolean => rungOf(the, id)?.tier === "kickout";

const rungPressure = (the: Case, id: string): Known<"pressure"> | string => rungOf(the, id)?.pressure ?? "";

const rungName = (the: Case, id: string): Said => {
	const rung = rungOf(the, id);
	switch (rung?.tier) {
		case "kickout":
			return message("rules/pump-kickout", { rung: rung.name ?? "" });
		case "relief":
			return message("rules/relief-valve");
		case "maximum":
			return message("rules/maximum-treating-pressure-2");
		case "line-test":
			return message("rules/line-test");
		case "element":
			return message("rules/what-is-allowed", { rung: rung.name ?? "" });
		default:
			return message("rules/expected-pressure");
	}
};

export const annulus = ({ subject }: Case) => {
	if (subject.kind !== "annulus") throw new TypeError(`a measure of annuli was asked of a ${subject.kind}`);
	return subject;
};

const yieldOf = (the: Case, string: CasingString): Reading => {
	const casing = the.results.casing[string.id];
	return known(
		casing?.worn_internal_yield ?? casing?.least_internal_yield,
		missingOf(the, string, message("rules/internal-yield-pressure"), "pipe"),
	);
};

/** The treated string is not closed off from this annulus by a string of its own. */
const pumpedThrough = (the: Case): boolean => annulus(the).inner.id === the.well.stimulation?.treatedThrough;

const confining = (the: Case) =>
	[...the.results.isolation.confining].sort((a, b) => b.thickness.value - a.thickness.value)[0];

export const treatmentMeasures = {
	"treating limits out of order": {
		noun: message("rules/limits-treatment-that-stand-out-order"),
		read: treated((the) => {
			const limits = limitsOf(the);
			const wanting: readonly (readonly [Said, string])[] = [
				...(limits?.maximumTreatingPressure === undefined
					? [[message("rules/maximum-treating-pressure"), "maximum_treating_pressure"] as const]
					: []),
				...(limits?.reliefValve === undefined
					? [[message("rules/relief-valve-setting"), "relief_valve"] as const]
					: []),
				...((limits?.pumpKickouts.length ?? 0) === 0
					? [[message("rules/pump-kickouts"), "pump_kickouts"] as const]
					: []),
				...(limits?.lineTest === undefined
					? [[message("rules/test-of-the-line"), "line_test"] as const]
					: []),
			];
			const n = disordered(the).length;
			if (n === 0 && wanting.length > 0)
				return lacking(...wanting.map(([what, key]) => missingAt(what, "stimulation", "limits", key)));
			return { state: "known", value: constant("count", n, "limits out of order", cite("definition")) };
		}),
		say: (_, the) => {
			const pairs = disordered(the);
			return pairs.length === 0
				? [message("rules/kickouts-relief-valve-maximum-ratings-and-line")]
				: [
						message("rules/limits-out-of-order", {
							count: pairs.length,
							list: listed(
								pairs.map(({ lower, upper }) =>
									message(strict(the, lower) ? "rules/rung-is-not-below" : "rules/rung-is-above", {
										lower: rungName(the, lower),
										at: rungPressure(the, lower),
										upper: rungName(the, upper),
										limit: rungPressure(the, upper),
									}),
								),
							),
						}),
					];
		},
	},
	"pressure with half the friction reduction": {
		noun: message("rules/expected-pressure-with-half-friction-reduction"),
		read: treated((the) => {
			const stages = the.well.stimulation?.stages ?? [];
			if (stages.length > 0 && stages.every(({ actual }) => actual !== undefined))
				return absent(message("rules/treatment-is-on-record"));
			return knownOr(halfReduction(the), ...pressureNeeds(the));
		}),
		say: ({ part }) => [message("rules/with-half-stated-friction-reduction-treatment-is", { part })],
	},
	"lowest pump kickout": {
		noun: message("rules/lowest-pump-kickout"),
		read: treated((the) =>
			known(
				lowestKickout(the),
				missingAt(message("rules/pump-kickouts"), "stimulation", "limits", "pump_kickouts"),
			),
		),
		say: ({ part }) => [message("rules/first-pump-kickout-is-set-to", { part })],
	},
	"outer internal yield": {
		noun: message("rules/internal-yield-casing-around-annulus"),
		read: (the) => yieldOf(the, annulus(the).outer),
		say: ({ part }) => [message("rules/casing-around-annulus-yields-at", { part })],
	},
	"outer shoe vertical depth": {
		noun: message("rules/vertical-depth-of-the-shoe-around-annulus"),
		read: (the) => {
			const { outer } = annulus(the);
			const missing = missingOf(the, outer, message("rules/shoe-depth-of-casing-around-annulus"), "shoe");
			return known(the.results.casing[outer.id]?.shoe.tvd, missing);
		},
		say: ({ part }) => [message("rules/shoe-around-annulus-is-at", { part })],
	},
	"next outer internal yield": {
		noun: message("rules/internal-yield-next-casing-outward"),
		read: (the) => {
			const { outer } = annulus(the);
			const next = outerOf(outer, the.well);
			// A conductor is no barrier; the casing around the annulus then stands for both.
			return yieldOf(the, next === undefined || rolesOf(next, the.well).includes("conductor") ? outer : next);
		},
		say: ({ part }) => [message("rules/next-casing-outward-yields-at", { part })],
	},
	"inner collapse": {
		noun: message("rules/collapse-string-inside-annulus"),
		read: (the) => {
			const { inner } = annulus(the);
			return known(
				the.results.casing[inner.id]?.least_collapse,
				missingOf(the, inner, message("rules/collapse-rating"), "pipe"),
			);
		},
		say: ({ part }) => [message("rules/string-inside-annulus-collapses-at", { part })],
	},
	"pressure let out by a leak": {
		noun: message("rules/pressure-that-leak-treated-string-lets"),
		read: treated((the) => {
			const { limit, inner } = annulus(the);
			if (!pumpedThrough(the))
				return absent(message("rules/string-does-not-hold-treating-pressure", { inner: inner.id }));
			if (limit?.relief !== undefined) return { state: "known", value: limit.relief };
			return known(
				limitsOf(the)?.maximumTreatingPressure ?? limitsOf(the)?.reliefValve,
				missingAt(
					message("rules/maximum-treating-pressure"),
					"stimulation",
					"limits",
					"maximum_treating_pressure",
				),
			);
		}),
		say: ({ part }, the) => {
			const { limit, outer } = annulus(the);
			return limit?.relief === undefined
				? [message("rules/leak-treated-string-lets-into-annulus-inside", { part, outer: outer.id })]
				: [message("rules/relief-valve-opens-annulus-at", { part })];
		},
	},
	"wellhead rating for treating": {
		noun: message("rules/rating-wellhead-for-treating"),
		read: treated((the) =>
			known(
				the.well.wellhead?.stimulation,
				missingAt(message("rules/rating-wellhead-while-treating"), "wellhead", "stimulation"),
			),
		),
		say: ({ part }) => [message("rules/wellhead-is-rated-for-while-treating", { part })],
	},
	"wellhead rating while drilling": {
		noun: message("rules/rating-wellhead-while-drilling"),
		read: (the) =>
			known(
				the.well.wellhead?.drilling,
				missingAt(message("rules/rating-wellhead-while-drilling"), "wellhead", "drilling"),
			),
		say: ({ part }) => [message("rules/wellhead-is-rated-for-while-drilling", { part })],
	},
	"highest anticipated surface pressure": {
		noun: message("rules/highest-anticipated-surface-pressure-while-drilling"),
		read: (the) => {
			const [highest] = the.results.pressure.holes
				.flatMap(({ anticipated_surface_pressure }) => anticipated_surface_pressure ?? [])
				.sort((a, b) => b.value - a.value);
			return highest === undefined
				? absent(message("rules/no-preventers-are-closed-on-gas-while"))
				: { state: "known", value: highest };
		},
		say: ({ part }) => [message("rules/gas-may-bring-to-surface-while-drilling", { part })],
	},
	"confining bed thickness": {
		noun: message("rules/thickness-confining-bed"),
		read: treated((the) => ({
			state: "known",
			value:
				confining(the)?.thickness ?? constant("offset", 0, "no confining bed is stated", cite("definition")),
		})),
		say: ({ part }, the) => {
			const bed = confining(the);
			return bed === undefined
				? [message("rules/no-confining-bed-is-stated-between-protected")]
				: [message("rules/is-thick-between-protected-water-and-shallowest", { bed: bed.name, part })];
		},
	},
	"fracture top below confining bed": {
		noun: message("rules/highest-modeled-fracture-top-below-top"),
		read: treated((the) => {
			const bed = confining(the);
			const top = the.results.stimulation?.fractures?.highest_top;
			if (bed === undefined) return absent(message("rules/no-confining-bed-is-stated"));
			return top === undefined
				? lacking(...fractureNeeds(the))
				: { state: "known", value: verticalDistance.of({ lower: top, upper: bed.top }) };
		}),
		say: (said, the) =>
			belowOrAbove(
				message("rules/highest-modeled-fracture-top"),
				message("rules/top-of-bed", { bed: confining(the)?.name ?? message("rules/confining-bed") }),
				said,
			),
		side: "below",
	},
	"protected water to fracture top": {
		noun: message("rules/protected-water-to-highest-modeled-fracture"),
		read: treated((the) => {
			const top = the.results.stimulation?.fractures?.highest_top;
			const water = the.well.geology.protectedWater?.base;
			if (water === undefined)
				return lacking(
					missingAt(message("rules/base-protected-water"), "geology", "protected_water", "base"),
				);
			return top === undefined
				? lacking(...fractureNeeds(the))
				: { state: "known", value: verticalDistance.of({ lower: top, upper: water }) };
		}),
		say: (said) =>
			belowOrAbove(
				message("rules/highest-modeled-fracture-top"),
				message("rules/base-of-protected-water"),
				said,
			),
		side: "below",
	},
} as const satisfies Readonly<Record<string, Measure>>;
