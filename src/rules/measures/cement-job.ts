import type { PlacementResults } from "../../calc/results.ts";
import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import { message } from "../../messages/message.ts";
import type { Slurry } from "../../well/well.ts";
import { type Case, missingAt, missingFor, missingOf } from "../case.ts";
import type { MissingInput } from "../finding.ts";
import { densityStep, distanceAlongHole, durationLeft } from "../formulas.ts";
import { listed } from "../reason.ts";
import { cementOf } from "./cement.ts";
import { absent, known, lacking, type Measure, type Reading } from "./reading.ts";
import { stringOf } from "./shoe.ts";

/** A reading of a job that is still to be pumped: once it is on record its plan can hurt nobody. */
export const planned =
	(read: (the: Case) => Reading) =>
	(the: Case): Reading => {
		const string = stringOf(the);
		if (string.cement === undefined || string.cement.slurries.length === 0)
			return lacking(missingOf(the, string, "cement", "cement"));
		if (string.cement.actual !== undefined)
			return absent(message("rules/cement-job-string-is-on-record", { string: string.id }));
		return read(the);
	};

/** A job with a spacer, a displacement and a plug; a string grouted from the surface has none. */
export const pumped = (read: (the: Case) => Reading) =>
	planned((the) => {
		const string = stringOf(the);
		const { cement } = string;
		if (string.within === undefined && string.shoeTrack === undefined && cement?.displacement === undefined)
			return absent(message("rules/string-is-grouted-from-surface", { string: string.id }));
		return read(the);
	});

export const placements = (the: Case): readonly PlacementResults[] => {
	const cement = cementOf(the);
	return [cement?.placement, cement?.second_stage?.placement].filter((each) => each !== undefined);
};

export const least = <K extends Known>(values: readonly K[]): K | undefined =>
	[...values].sort((a, b) => a.value - b.value)[0];

export const friction = (the: Case): MissingInput =>
	["", ".second_stage"].flatMap((stage) =>
		missingFor(the, `cement.${stringOf(the).id}${stage}.placement.friction`),
	)[0] ?? missingOf(the, stringOf(the), message("rules/plastic-viscosity-and-yield-point-every"), "cement");

export const hasFriction = (the: Case): boolean =>
	placements(the).every(({ with_friction }) => with_friction);

const SILICA = /silica/i;
const SHARE = /(\d+(?:\.\d+)?)\s*%[^,;]*silica|silica[^,;]*?(\d+(?:\.\d+)?)\s*%/i;

/** Silica of a slurry by weight of cement, by figures or by words of its recipe; undefined where it has no recipe. */
const silicaOf = ({ additives, design, id }: Slurry): Known<"share"> | undefined => {
	const share = (value: number) =>
		constant("share", value, `silica in the recipe of the ${id} slurry`, cite("definition"));
	if (design !== undefined) {
		const found = design.components.find(({ material }) => SILICA.test(material));
		return found === undefined ? share(0) : found.share;
	}
	if (additives === undefined) return undefined;
	const words = SHARE.exec(additives);
	if (words !== null) return share(Number(words[1] ?? words[2]) / 100);
	return SILICA.test(additives) ? undefined : share(0);
};

const hottest = (the: Case) =>
	[...(cementOf(the)?.temperatures ?? [])].sort((a, b) => b.rock.value - a.rock.value)[0];

const gasFlow = (the: Case) =>
	[...(cementOf(the)?.gas_flow ?? [])].sort((a, b) => b.potential.value - a.potential.value)[0];

/** Mud, spacer, then the first slurry: each step of density on the way up the annulus. */
const densitySteps = (the: Case) => {
	const { hole, cement } = stringOf(the);
	const lead = cement?.slurries[0]?.density;
	const train = [
		{ name: message("rules/fluid-mud"), density: hole.fluid?.density },
		...(cement?.spacer === undefined
			? []
			: [{ name: message("rules/fluid-spacer"), density: cement.spacer.density }]),
		{ name: message("rules/fluid-first-slurry"), density: lead },
	];
	return train.slice(1).flatMap(({ name, density }, i) => {
		const before = train[i];
		return density === undefined || before?.density === undefined
			? []
			: [{ name, before: before.name, step: densityStep.of({ ρ_2: density, ρ_1: before.density }) }];
	});
};
const leastStep = (the: Case) => [...densitySteps(the)].sort((a, b) => a.step.value - b.step.value)[0];

const contact = (the: Case): readonly Known<"duration">[] => [
	...placements(the).flatMap(({ contact: zones }) => zones.flatMap(({ spacer }) => spacer ?? [])),
	...(cementOf(the)?.spacer_contact_time === undefined
		? []
		: [cementOf(the)?.spacer_contact_time as Known<"duration">]),
];

const thickening = (the: Case) =>
	(cementOf(the)?.setting?.thickening ?? []).map(({ id, in_use, thickening_time }) => ({
		id,
		left: durationLeft.of({ t_2: thickening_time, t_1: in_use }),
	}));

const offTest = (the: Case) =>
	[...(cementOf(the)?.temperatures ?? [])]
		.filter(({ test_off }) => test_off !== undefined)
		.sort((a, b) => (b.test_off?.value ?? 0) - (a.test_off?.value ?? 0))[0];

const standoff = (the: Case) =>
	[...(cementOf(the)?.standoff ?? [])]
		.map((place) => ({
			place,
			value: place.between.value < place.at_centralizer.value ? place.between : place.at_centralizer,
		}))
		.sort((a, b) => a.value.value - b.value.value)[0];

export const cementJobMeasures = {
	"plug bump pressure": {
		noun: message("rules/plug-bump-pressure"),
		read: pumped((the) => {
			const { cement } = stringOf(the);
			if ((cement?.plugs.length ?? 0) === 0 && cement?.bump === undefined)
				return absent(message("rules/no-plug-is-bumped"));
			if (cement?.bump === undefined)
				return lacking(
					missingOf(
						the,
						stringOf(the),
						message("rules/pressure-over-final-circulating-that-plug"),
						"cement",
						"bump",
					),
				);
			return known(
				[...placements(the).flatMap(({ bump_pressure }) => bump_pressure ?? [])].sort(
					(a, b) => b.value - a.value,
				)[0],
				friction(the),
			);
		}),
		say: ({ part }, the) => [message("rules/plug-string-is-bumped-at", { string: stringOf(the).id, part })],
	},
	"weakest at the bump": {
		noun: message("rules/weakest-pipe-coupling-and-wellhead"),
		read: (the) =>
			known(
				least(placements(the).flatMap(({ bump_weakest }) => bump_weakest ?? [])),
				missingOf(the, stringOf(the), message("rules/rating-pipe"), "pipe"),
			),
		say: ({ part }) => [message("rules/weakest-pipe-coupling-and-wellhead-is-rated", { part })],
	},
	"thickening time left": {
		noun: message("rules/thickening-time-left-when-plug-lands"),
		read: pumped((the) => {
			const string = stringOf(the);
			const lab = string.cement?.slurries ?? [];
			const without = lab.filter(({ thickeningTime }) => thickeningTime === undefined);
			const left = least(thickening(the).map((each) => each.left));
			if (without.length > 0 && !(left !== undefined && left.value < 0))
				return lacking(
					...without.map(({ id }) =>
						missingOf(
							the,
							string,
							message("rules/thickening-time-slurry", { id }),
							"cement",
							"slurries",
							lab.findIndex((s) => s.id === id),
							"thickening_time",
						),
					),
				);
			return known(left, missingOf(the, string, message("rules/pump-rates-cement-job"), "cement"));
		}),
		say: ({ value, size }, the) => {
			const first = [...thickening(the)].sort((a, b) => a.left.value - b.left.value)[0];
			return [
				value.value < 0
					? message("rules/thickens-before-plug", { slurry: first?.id ?? "", string: stringOf(the).id, size })
					: message("rules/thickens-after-plug", { slurry: first?.id ?? "", string: stringOf(the).id, size }),
			];
		},
	},
	"least standoff": {
		noun: message("rules/least-standoff-at-shoe-and-water"),
		read: planned((the) => {
			const string = stringOf(the);
			if (string.within === undefined && string.shoeTrack === undefined)
				return absent(message("rules/string-is-grouted-from-surface", { string: string.id }));
			return known(
				standoff(the)?.value,
				missingOf(the, string, message("rules/centralizers-at-shoe-joint-length-or"), "centralizers"),
			);
		}),
		say: ({ part }, the) => [
			message("rules/standoff-string-is-at", {
				string: stringOf(the).id,
				part,
				at_name: standoff(the)?.place.at_name ?? "",
			}),
		],
	},
	"spacer contact time": {
		noun: message("rules/least-contact-time-spacer"),
		read: pumped((the) => {
			const { cement } = stringOf(the);
			if (cement?.spacer === undefined)
				return { state: "known", value: constant("duration", 0, "no spacer is planned", cite("definition")) };
			return known(
				least(contact(the)),
				missingOf(
					the,
					stringOf(the),
					message("rules/pump-rate-behind-spacer"),
					"cement",
					"displacement",
					"rate",
				),
			);
		}),
		say: ({ part }, the) => [
			message("rules/spacer-string-passes-place-in", { string: stringOf(the).id, part }),
		],
	},
	"spacer length in annulus": {
		noun: message("rules/length-annulus-that-spacer-fills"),
		read: pumped((the) => {
			const cement = cementOf(the);
			return cement?.spacer_top === undefined
				? absent(message("rules/no-spacer-is-left-above-cement"))
				: {
						state: "known",
						value: distanceAlongHole.of({ lower: cement.top.md, upper: cement.spacer_top.md }),
					};
		}),
		say: ({ part }) => [message("rules/it-fills-annulus-above-cement", { part })],
	},
	"least density step": {
		noun: message("rules/least-step-density-from-mud-to"),
		read: pumped((the) => {
			if (stringOf(the).hole.fluid?.kind === "air") return absent(message("rules/hole-holds-no-mud"));
			return known(
				leastStep(the)?.step,
				missingOf(the, stringOf(the), message("rules/density-mud-and-spacer"), "cement", "spacer", "density"),
			);
		}),
		say: ({ value, size }, the) => {
			const step = leastStep(the);
			return [
				value.value < 0
					? message("rules/lighter-than-ahead", {
							fluid: step?.name ?? "",
							string: stringOf(the).id,
							size,
							before: step?.before ?? "",
						})
					: message("rules/heavier-than-ahead", {
							fluid: step?.name ?? "",
							string: stringOf(the).id,
							size,
							before: step?.before ?? "",
						}),
			];
		},
	},
	"gas-flow potential": {
		noun: message("rules/gas-flow-potential"),
		read: planned((the) => {
			const gas = the.well.geology.formations.some(({ flowZone }) => flowZone === "gas");
			const found = gasFlow(the);
			return found === undefined
				? absent(
						gas
							? message("rules/no-gas-zone-is-open-behind", { string: stringOf(the).id })
							: message("rules/no-formation-is-marked-as-gas"),
					)
				: { state: "known", value: found.potential };
		}),
		say: ({ part }, the) => {
			const found = gasFlow(the);
			return [
				message("rules/gas-flow-potential-behind-string-is", {
					formation: found?.formation ?? "",
					string: stringOf(the).id,
					part,
					detail: {
						parts:
							found === undefined
								? []
								: [
										message("rules/that-gelling-cement-may-lose-over", {
											restriction: found.restriction,
											overbalance: found.overbalance,
										}),
									],
					},
				}),
			];
		},
	},
	"hottest rock behind cement": {
		noun: message("rules/static-temperature-behind-cement"),
		read: planned((the) =>
			known(hottest(the)?.rock, missingAt(message("rules/temperature-gradient"), "geology", "temperature")),
		),
		say: ({ part }, the) => [
			message("rules/rock-at-foot-slurry-is-at", { hottest: hottest(the)?.id ?? "", part }),
		],
	},
	"silica by weight of cement": {
		noun: message("rules/silica-by-weight-cement"),
		read: planned((the) => {
			const string = stringOf(the);
			const hot = hottest(the)?.id;
			const index = string.cement?.slurries.findIndex(({ id }) => id === hot) ?? -1;
			const slurry = string.cement?.slurries[index];
			return known(
				slurry && silicaOf(slurry),
				missingOf(
					the,
					string,
					message("rules/silica-slurry", { detail: hot ?? "deepest" }),
					"cement",
					"slurries",
					Math.max(0, index),
					"additives",
				),
			);
		}),
		say: ({ part }, the) => {
			const hot = hottest(the);
			return [
				message("rules/slurry-string-has-silica-by-weight-cement", {
					hot: hot?.id ?? "",
					string: stringOf(the).id,
					part,
					detail: { parts: hot === undefined ? [] : [message("rules/against-rock-at", { rock: hot.rock })] },
				}),
			];
		},
	},
	"test temperature off the rock": {
		noun: message("rules/difference-strength-test-and-rock-temperature"),
		read: planned((the) => {
			const string = stringOf(the);
			const strengths = (string.cement?.slurries ?? []).filter(({ strength }) => strength.length > 0);
			if (strengths.length === 0)
				return absent(message("rules/no-strength-test-cement-is-given", { string: string.id }));
			const found = offTest(the)?.test_off;
			return known(
				found,
				missingOf(
					the,
					string,
					message("rules/temperature-strength-tests-slurry", {
						strengths: listed(strengths.map(({ id }) => id)),
					}),
					"cement",
					"slurries",
				),
			);
		}),
		say: ({ value, part }, the) => {
			const off = offTest(the);
			const facts = {
				off: off?.id ?? "",
				string: stringOf(the).id,
				detail: {
					parts: off === undefined ? [] : [message("rules/which-is-at-at-its-foot", { rock: off.rock })],
				},
			};
			return [
				value.value === 0
					? message("rules/strength-slurry-string-was-tested-within-range", facts)
					: message("rules/strength-slurry-string-was-tested-outside-range", { ...facts, part }),
			];
		},
	},
} as const satisfies Readonly<Record<string, Measure>>;
