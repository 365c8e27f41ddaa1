import type { PlacementResults } from "../../calc/results.ts";
import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { Slurry } from "../../well/well.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import type { MissingInput } from "../finding.ts";
import { densityStep, distanceAlongHole, durationLeft } from "../formulas.ts";
import { listed } from "../reason.ts";
import { cementOf } from "./cement.ts";
import { absent, known, lacking, type Measure, type Reading } from "./reading.ts";
import { stringOf } from "./shoe.ts";

/** A reading of a job that is still to be pumped: once it is on record its plan can hurt nobody. */
const planned =
	(read: (the: Case) => Reading) =>
	(the: Case): Reading => {
		const string = stringOf(the);
		if (string.cement === undefined || string.cement.slurries.length === 0)
			return lacking(missingOf(the, string, "cement", "cement"));
		if (string.cement.actual !== undefined)
			return absent(`the cement job of the ${string.id} string is on record`);
		return read(the);
	};

/** A job with a spacer, a displacement and a plug; a string grouted from the surface has none. */
const pumped = (read: (the: Case) => Reading) =>
	planned((the) => {
		const string = stringOf(the);
		const { cement } = string;
		if (string.within === undefined && string.shoeTrack === undefined && cement?.displacement === undefined)
			return absent(`the ${string.id} string is grouted from the surface`);
		return read(the);
	});

const placements = (the: Case): readonly PlacementResults[] => {
	const cement = cementOf(the);
	return [cement?.placement, cement?.second_stage?.placement].filter((each) => each !== undefined);
};

const least = <K extends Known>(values: readonly K[]): K | undefined =>
	[...values].sort((a, b) => a.value - b.value)[0];

const friction = (the: Case): MissingInput =>
	missingOf(
		the,
		stringOf(the),
		"plastic viscosity and yield point of every fluid in the cement job",
		"cement",
	);

const hasFriction = (the: Case): boolean => placements(the).every(({ with_friction }) => with_friction);

/** Least margin to fracture, moving and in place; at rest alone it only bounds what the job comes to. */
const fracture = (pick: "margin" | "density") =>
	planned((the) => {
		const cement = cementOf(the);
		const still = cement?.least_fracture_margin;
		const moving = placements(the).flatMap(({ fracture: found }) => found ?? []);
		const value =
			pick === "margin"
				? least([...moving.map(({ margin }) => margin), ...(still === undefined ? [] : [still.margin])])
				: least([
						...moving.map(({ least_as_density }) => least_as_density),
						...(still === undefined ? [] : [still.as_density]),
					]);
		if (value !== undefined && !hasFriction(the))
			return { state: "bounded", atMost: value, missing: [friction(the)] };
		return known(
			value,
			missingAt("fracture gradient of the rock behind the cement", "geology", "formations"),
		);
	});

const where = (the: Case): string => {
	const still = cementOf(the)?.least_fracture_margin;
	const moving = placements(the).flatMap(({ fracture: found }) => found ?? []);
	const all = [
		...moving.map(({ margin, formation }) => ({ value: margin.value, formation })),
		...(still === undefined ? [] : [{ value: still.margin.value, formation: still.formation }]),
	];
	return all.sort((a, b) => a.value - b.value)[0]?.formation ?? "rock";
};

const at = (the: Case) => {
	const still = cementOf(the)?.least_fracture_margin;
	const moving = placements(the).flatMap(({ fracture: found }) => found ?? []);
	return [...moving, ...(still === undefined ? [] : [still])].sort(
		(a, b) => a.margin.value - b.margin.value,
	)[0]?.at.tvd;
};

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
		{ name: "mud", density: hole.fluid?.density },
		...(cement?.spacer === undefined ? [] : [{ name: "spacer", density: cement.spacer.density }]),
		{ name: "first slurry", density: lead },
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
	"cement margin to fracture": {
		noun: "least margin of the cement job to fracture",
		read: fracture("margin"),
		say: ({ value, size }, the) => {
			const tvd = at(the);
			return [
				`the cement job of the ${stringOf(the).id} string comes `,
				...(value.value < 0 ? [size, " above what the "] : ["within ", size, " of what the "]),
				`${where(the)} bears`,
				...(tvd === undefined ? [] : [" at ", tvd]),
			];
		},
	},
	"cement margin to fracture as density": {
		noun: "least margin of the cement job to fracture, as a density",
		read: fracture("density"),
		say: ({ part }, the) => [
			`as a density the least margin of the ${stringOf(the).id} cement job to fracture is `,
			part,
		],
	},
	"cement margin over pore": {
		noun: "least margin of the cement job over pore pressure",
		read: pumped((the) =>
			known(
				least(placements(the).flatMap(({ pore }) => pore?.margin ?? [])),
				missingAt("pore pressure of the rock behind the cement", "geology", "formations"),
			),
		),
		say: ({ value, size }, the) => [
			`the cement job of the ${stringOf(the).id} string stays `,
			size,
			` ${value.value < 0 ? "below" : "above"} the pore pressure of the rock at rest`,
		],
	},
	"plug bump pressure": {
		noun: "plug bump pressure",
		read: pumped((the) => {
			const { cement } = stringOf(the);
			if ((cement?.plugs.length ?? 0) === 0) return absent("no plug is bumped");
			if (cement?.bump === undefined)
				return lacking(
					missingOf(
						the,
						stringOf(the),
						"pressure over final circulating that the plug is bumped with",
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
		say: ({ part }, the) => [`the plug of the ${stringOf(the).id} string is bumped at `, part],
	},
	"weakest at the bump": {
		noun: "weakest of pipe, coupling and wellhead",
		read: (the) =>
			known(
				least(placements(the).flatMap(({ bump_weakest }) => bump_weakest ?? [])),
				missingOf(the, stringOf(the), "rating of the pipe", "pipe"),
			),
		say: ({ part }) => ["the weakest of pipe, coupling and wellhead is rated for ", part],
	},
	"thickening time left": {
		noun: "thickening time left when the plug lands",
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
							`thickening time of the ${id} slurry`,
							"cement",
							"slurries",
							lab.findIndex((s) => s.id === id),
							"thickening_time",
						),
					),
				);
			return known(left, missingOf(the, string, "pump rates of the cement job", "cement"));
		}),
		say: ({ value, size }, the) => {
			const first = [...thickening(the)].sort((a, b) => a.left.value - b.left.value)[0];
			return [
				`the ${first?.id ?? ""} slurry of the ${stringOf(the).id} string thickens `,
				size,
				` ${value.value < 0 ? "before" : "after"} the plug lands`,
			];
		},
	},
	"least standoff": {
		noun: "least standoff at shoe and water",
		read: planned((the) => {
			const string = stringOf(the);
			if (string.within === undefined && string.shoeTrack === undefined)
				return absent(`the ${string.id} string is grouted from the surface`);
			return known(
				standoff(the)?.value,
				missingOf(the, string, "centralizers at the shoe, joint length or mud density", "centralizers"),
			);
		}),
		say: ({ part }, the) => [
			`standoff of the ${stringOf(the).id} string is `,
			part,
			` at the ${standoff(the)?.place.at_name}`,
		],
	},
	"spacer contact time": {
		noun: "least contact time of the spacer",
		read: pumped((the) => {
			const { cement } = stringOf(the);
			if (cement?.spacer === undefined)
				return { state: "known", value: constant("duration", 0, "no spacer is planned", cite("definition")) };
			return known(
				least(contact(the)),
				missingOf(the, stringOf(the), "pump rate behind the spacer", "cement", "displacement", "rate"),
			);
		}),
		say: ({ part }, the) => [`the spacer of the ${stringOf(the).id} string passes a place in `, part],
	},
	"spacer length in annulus": {
		noun: "length of annulus that the spacer fills",
		read: pumped((the) => {
			const cement = cementOf(the);
			return cement?.spacer_top === undefined
				? absent("no spacer is left above the cement")
				: {
						state: "known",
						value: distanceAlongHole.of({ lower: cement.top.md, upper: cement.spacer_top.md }),
					};
		}),
		say: ({ part }) => ["it fills ", part, " of annulus above the cement"],
	},
	"least density step": {
		noun: "least step of density from mud to spacer to cement",
		read: pumped((the) => {
			if (stringOf(the).hole.fluid?.kind === "air") return absent("the hole holds no mud");
			return known(
				leastStep(the)?.step,
				missingOf(the, stringOf(the), "density of mud and spacer", "cement", "spacer", "density"),
			);
		}),
		say: ({ value, size }, the) => {
			const step = leastStep(the);
			return [
				`the ${step?.name} of the ${stringOf(the).id} string is `,
				size,
				` ${value.value < 0 ? "lighter" : "heavier"} than the ${step?.before} ahead of it`,
			];
		},
	},
	"gas-flow potential": {
		noun: "gas-flow potential",
		read: planned((the) => {
			const gas = the.well.geology.formations.some(({ flowZone }) => flowZone === "gas");
			const found = gasFlow(the);
			return found === undefined
				? absent(
						gas
							? `no gas zone is open behind the cement of the ${stringOf(the).id} string`
							: "no formation is marked as gas-bearing",
					)
				: { state: "known", value: found.potential };
		}),
		say: ({ part }, the) => {
			const found = gasFlow(the);
			return [
				`the gas-flow potential of the ${found?.formation} behind the ${stringOf(the).id} string is `,
				part,
				...(found === undefined
					? []
					: [" (", found.restriction, " that the gelling cement may lose, over ", found.overbalance, ")"]),
			];
		},
	},
	"hottest rock behind cement": {
		noun: "static temperature behind the cement",
		read: planned((the) =>
			known(hottest(the)?.rock, missingAt("temperature gradient", "geology", "temperature")),
		),
		say: ({ part }, the) => [`the rock at the foot of the ${hottest(the)?.id} slurry is at `, part],
	},
	"silica by weight of cement": {
		noun: "silica by weight of cement",
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
					`silica of the ${hot ?? "deepest"} slurry`,
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
				`the ${hot?.id} slurry of the ${stringOf(the).id} string has `,
				part,
				" silica by weight of cement",
				...(hot === undefined ? [] : [" against rock at ", hot.rock]),
			];
		},
	},
	"test temperature off the rock": {
		noun: "difference of strength test and rock temperature",
		read: planned((the) => {
			const string = stringOf(the);
			const strengths = (string.cement?.slurries ?? []).filter(({ strength }) => strength.length > 0);
			if (strengths.length === 0) return absent(`no strength test of the ${string.id} cement is given`);
			const found = offTest(the)?.test_off;
			return known(
				found,
				missingOf(
					the,
					string,
					`temperature of the strength tests of the ${listed(strengths.map(({ id }) => id))} slurry`,
					"cement",
					"slurries",
				),
			);
		}),
		say: ({ part }, the) => {
			const off = offTest(the);
			return [
				`the strength of the ${off?.id} slurry of the ${stringOf(the).id} string was tested `,
				part,
				" outside the range of the rock along it",
				...(off === undefined ? [] : [", which is at ", off.rock, " at its foot"]),
			];
		},
	},
} as const satisfies Readonly<Record<string, Measure>>;
