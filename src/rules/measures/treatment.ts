import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { CasingString } from "../../well/well.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { verticalDistance } from "../formulas.ts";
import { listed } from "../reason.ts";
import { outerOf, rolesOf } from "../subject.ts";
import { absent, known, lacking, type Measure, type Reading } from "./reading.ts";

/** A reading of a treatment that is planned. */
const treated =
	(read: (the: Case) => Reading) =>
	(the: Case): Reading =>
		the.well.stimulation === undefined ? absent("no stimulation is planned") : read(the);

const limitsOf = (the: Case) => the.well.stimulation?.limits;

const lowestKickout = (the: Case): Known<"pressure"> | undefined =>
	[...(limitsOf(the)?.pumpKickouts ?? [])].sort((a, b) => a.value - b.value)[0];

const halfReduction = (the: Case): Known<"pressure"> | undefined =>
	the.results.stimulation?.reduction_sensitivity?.find(({ id }) => id === "half-the-reduction")
		?.treating_pressure ??
	(the.well.stimulation?.pressureModel?.frictionReduction === undefined
		? the.results.stimulation?.expected_treating_pressure
		: undefined);

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

const rungName = (the: Case, id: string): string => {
	const rung = the.results.stimulation?.ladder?.rungs.find((each) => each.id === id);
	switch (rung?.tier) {
		case "kickout":
			return `pump kickout ${rung.name}`;
		case "relief":
			return "the relief valve";
		case "maximum":
			return "the maximum treating pressure";
		case "line-test":
			return "the line test";
		case "element":
			return `what the ${rung.name} is allowed`;
		default:
			return "the expected pressure";
	}
};

const annulus = ({ subject }: Case) => {
	if (subject.kind !== "annulus") throw new TypeError(`a measure of annuli was asked of a ${subject.kind}`);
	return subject;
};

const yieldOf = (the: Case, string: CasingString): Reading => {
	const casing = the.results.casing[string.id];
	return known(
		casing?.worn_internal_yield ?? casing?.least_internal_yield,
		missingOf(the, string, "internal yield pressure", "pipe"),
	);
};

/** The treated string is not closed off from this annulus by a string of its own. */
const pumpedThrough = (the: Case): boolean => annulus(the).inner.id === the.well.stimulation?.treatedThrough;

const confining = (the: Case) =>
	[...the.results.isolation.confining].sort((a, b) => b.thickness.value - a.thickness.value)[0];

export const treatmentMeasures = {
	"treating limits out of order": {
		noun: "limits of the treatment that stand out of order",
		read: treated((the) => {
			const limits = limitsOf(the);
			const wanting = [
				...(limits?.maximumTreatingPressure === undefined
					? [["maximum treating pressure", "maximum_treating_pressure"]]
					: []),
				...(limits?.reliefValve === undefined ? [["relief valve's setting", "relief_valve"]] : []),
				...((limits?.pumpKickouts.length ?? 0) === 0 ? [["pump kickouts", "pump_kickouts"]] : []),
				...(limits?.lineTest === undefined ? [["line test", "line_test"]] : []),
			] as const;
			const n = disordered(the).length;
			if (n === 0 && wanting.length > 0)
				return lacking(
					...wanting.map(([what, key]) => missingAt(what ?? "", "stimulation", "limits", key ?? "")),
				);
			return { state: "known", value: constant("count", n, "limits out of order", cite("definition")) };
		}),
		say: (_, the) => {
			const pairs = disordered(the);
			return pairs.length === 0
				? ["kickouts, relief valve, maximum, ratings and line test stand in order"]
				: [
						listed(
							pairs.map(({ lower, upper }) =>
								upper === "line-test"
									? `${rungName(the, lower)} is above ${rungName(the, upper)}`
									: `${rungName(the, lower)} is not below ${rungName(the, upper)}`,
							),
						),
					];
		},
	},
	"pressure with half the friction reduction": {
		noun: "expected pressure with half the friction reduction",
		read: treated((the) => {
			const stages = the.well.stimulation?.stages ?? [];
			if (stages.length > 0 && stages.every(({ actual }) => actual !== undefined))
				return absent("the treatment is on record");
			return known(
				halfReduction(the),
				the.well.stimulation?.baseFluid.viscosity === undefined
					? missingAt("viscosity of the base fluid", "stimulation", "base_fluid", "viscosity")
					: missingAt("pressure model of the treatment", "stimulation", "pressure_model"),
			);
		}),
		say: ({ part }) => ["with half the stated friction reduction the treatment is expected to need ", part],
	},
	"lowest pump kickout": {
		noun: "lowest pump kickout",
		read: treated((the) =>
			known(lowestKickout(the), missingAt("pump kickouts", "stimulation", "limits", "pump_kickouts")),
		),
		say: ({ part }) => ["the first pump kickout is set to ", part],
	},
	"outer internal yield": {
		noun: "internal yield of the casing around the annulus",
		read: (the) => yieldOf(the, annulus(the).outer),
		say: ({ part }) => ["the casing around the annulus yields at ", part],
	},
	"next outer internal yield": {
		noun: "internal yield of the next casing outward",
		read: (the) => {
			const { outer } = annulus(the);
			const next = outerOf(outer, the.well);
			// A conductor is no barrier; the casing around the annulus then stands for both.
			return yieldOf(the, next === undefined || rolesOf(next, the.well).includes("conductor") ? outer : next);
		},
		say: ({ part }) => ["the next casing outward yields at ", part],
	},
	"inner collapse": {
		noun: "collapse of the string inside the annulus",
		read: (the) => {
			const { inner } = annulus(the);
			return known(
				the.results.casing[inner.id]?.least_collapse,
				missingOf(the, inner, "collapse rating", "pipe"),
			);
		},
		say: ({ part }) => ["the string inside the annulus collapses at ", part],
	},
	"pressure let out by a leak": {
		noun: "pressure that a leak of the treated string lets into the annulus",
		read: treated((the) => {
			const { limit, inner } = annulus(the);
			if (!pumpedThrough(the)) return absent(`the ${inner.id} string does not hold treating pressure`);
			if (limit?.relief !== undefined) return { state: "known", value: limit.relief };
			return known(
				limitsOf(the)?.maximumTreatingPressure ?? limitsOf(the)?.reliefValve,
				missingAt("maximum treating pressure", "stimulation", "limits", "maximum_treating_pressure"),
			);
		}),
		say: ({ part }, the) => {
			const { limit, outer } = annulus(the);
			return limit?.relief === undefined
				? [
						"a leak of the treated string lets ",
						part,
						` into the annulus inside the ${outer.id} casing, and no relief valve is stated for it`,
					]
				: ["a relief valve opens the annulus at ", part];
		},
	},
	"wellhead rating for treating": {
		noun: "rating of the wellhead for treating",
		read: treated((the) =>
			known(
				the.well.wellhead?.stimulation,
				missingAt("rating of the wellhead while treating", "wellhead", "stimulation"),
			),
		),
		say: ({ part }) => ["the wellhead is rated for ", part, " while treating"],
	},
	"wellhead rating while drilling": {
		noun: "rating of the wellhead while drilling",
		read: (the) =>
			known(
				the.well.wellhead?.drilling,
				missingAt("rating of the wellhead while drilling", "wellhead", "drilling"),
			),
		say: ({ part }) => ["the wellhead is rated for ", part, " while drilling"],
	},
	"highest anticipated surface pressure": {
		noun: "highest anticipated surface pressure while drilling",
		read: (the) => {
			const [highest] = the.results.pressure.holes
				.flatMap(({ anticipated_surface_pressure }) => anticipated_surface_pressure ?? [])
				.sort((a, b) => b.value - a.value);
			return highest === undefined
				? absent("no preventers are closed on gas while drilling")
				: { state: "known", value: highest };
		},
		say: ({ part }) => ["gas may bring ", part, " to surface while drilling"],
	},
	"confining bed thickness": {
		noun: "thickness of the confining bed",
		read: treated((the) => ({
			state: "known",
			value:
				confining(the)?.thickness ?? constant("offset", 0, "no confining bed is stated", cite("definition")),
		})),
		say: ({ part }, the) => {
			const bed = confining(the);
			return bed === undefined
				? ["no confining bed is stated between protected water and the shallowest perforation"]
				: [`the ${bed.name} is `, part, " thick between protected water and the shallowest perforation"];
		},
	},
	"fracture top below confining bed": {
		noun: "highest modeled fracture top below the top of the confining bed",
		read: treated((the) => {
			const bed = confining(the);
			const top = the.results.stimulation?.fractures?.highest_top;
			if (bed === undefined) return absent("no confining bed is stated");
			return top === undefined
				? lacking(
						missingAt(
							"mechanical properties of the treated rock, for a fracture model",
							"geology",
							"formations",
						),
					)
				: { state: "known", value: verticalDistance.of({ lower: top, upper: bed.top }) };
		}),
		say: ({ value, size }, the) => [
			"the highest modeled fracture top is ",
			size,
			` ${value.value < 0 ? "above" : "below"} the top of the ${confining(the)?.name ?? "confining bed"}`,
		],
	},
	"protected water to fracture top": {
		noun: "protected water to the highest modeled fracture top",
		read: treated((the) => {
			const top = the.results.stimulation?.fractures?.highest_top;
			const water = the.well.geology.protectedWater?.base;
			if (water === undefined)
				return lacking(missingAt("base of protected water", "geology", "protected_water", "base"));
			return top === undefined
				? lacking(
						missingAt(
							"mechanical properties of the treated rock, for a fracture model",
							"geology",
							"formations",
						),
					)
				: { state: "known", value: verticalDistance.of({ lower: top, upper: water }) };
		}),
		say: ({ value, size }) => [
			"the highest modeled fracture top is ",
			size,
			` ${value.value < 0 ? "above" : "below"} the base of protected water`,
		],
	},
} as const satisfies Readonly<Record<string, Measure>>;
