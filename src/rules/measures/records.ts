import type { StageResults } from "../../calc/results.ts";
import type { Known } from "../../cite/known.ts";
import type { CasingString, PressureTest } from "../../well/well.ts";
import { type Case, missingAt, missingOf } from "../case.ts";
import { densityOver, distanceAlongHole } from "../formulas.ts";
import { listed } from "../reason.ts";
import { cementOf, topNoun } from "./cement.ts";
import { heaviestBelow } from "./pressure.ts";
import { absent, known, lacking, type Measure, type Reading } from "./reading.ts";
import { stringOf } from "./shoe.ts";

const recordOf = (string: CasingString) => string.cement?.actual;

/** Of a job record: absent before there is one. */
const ofJob =
	(
		find: (the: Case) => Known | undefined,
		what: string,
		...at: readonly (string | number)[]
	): Measure["read"] =>
	(the) => {
		const string = stringOf(the);
		return recordOf(string) === undefined
			? absent(`the cement job of the ${string.id} string is not recorded`)
			: known(find(the), missingOf(the, string, what, "cement", "actual", ...at));
	};

const leastSlurry = (the: Case): string => {
	const record = cementOf(the)?.record;
	return record?.slurries.find(({ of_plan }) => of_plan?.value === record.least_of_plan?.value)?.id ?? "";
};

const farthestSlurry = (the: Case) => {
	const record = cementOf(the)?.record;
	return record?.slurries.find(
		({ density_off }) => density_off?.value === record.greatest_density_off?.value,
	);
};

/** Along the hole, from the plan's top down to the one that stands for it; negative where it is higher. */
const topBelowPlan = (the: Case): Reading => {
	const string = stringOf(the);
	const cement = cementOf(the);
	const { actual, stageTool } = string.cement ?? {};
	if (actual === undefined) return absent(`the cement job of the ${string.id} string is not recorded`);
	if (cement?.planned_top !== undefined)
		return known(
			distanceAlongHole.of({ lower: cement.top.md, upper: cement.planned_top.md }),
			missingOf(the, string, "cement top", "cement", "actual", "top"),
		);
	return lacking(
		stageTool === undefined
			? missingOf(the, string, "volume pumped of each slurry", "cement", "actual", "pumped")
			: missingOf(the, string, "cement top", "cement", "actual", "top"),
	);
};

const testOf = (the: Case): PressureTest | undefined => stringOf(the).pressureTest;

const planned = (noun: string, key: string, find: (test: PressureTest) => Known | undefined): Measure => ({
	noun,
	read: (the) => {
		const test = testOf(the);
		return known(test && find(test), missingOf(the, stringOf(the), noun, "pressure_test", key));
	},
	say: ({ part }) => [`the ${noun} is `, part],
});

/** Of the treatment's records: absent before there is one. */
const treated = (the: Case, value: Known | undefined, what: string): Reading => {
	const { stimulation } = the.well;
	if (stimulation === undefined) return absent("no stimulation is planned");
	if (stimulation.stages.every(({ actual }) => actual === undefined))
		return absent("no stage is recorded as pumped");
	return known(value, missingAt(what, "stimulation", "stages", "actual"));
};

type OfPlan = "proppant_of_plan" | "clean_of_plan";

const leastStage = ({ results }: Case, key: OfPlan): StageResults | undefined =>
	(results.stimulation?.stages ?? [])
		.filter(({ as_pumped }) => as_pumped?.[key] !== undefined)
		.sort((a, b) => (a.as_pumped?.[key]?.value ?? 0) - (b.as_pumped?.[key]?.value ?? 0))[0];

const leastOfStages = (key: OfPlan, noun: string, what: string, did: string): Measure => ({
	noun: `least part of a stage's ${noun} that was ${did}`,
	read: (the) => {
		const stages = the.results.stimulation?.stages ?? [];
		const open = stages.filter(({ as_pumped }) => as_pumped !== undefined && as_pumped[key] === undefined);
		const reading = treated(the, leastStage(the, key)?.as_pumped?.[key], what);
		return reading.state === "known" && open.length > 0
			? {
					state: "bounded",
					atMost: reading.value,
					missing: [
						missingAt(
							`${what} of ${open.length > 1 ? "stages" : "stage"} ${listed(open.map(({ number }) => String(number)))}`,
							"stimulation",
							"stages",
							"actual",
						),
					],
				}
			: reading;
	},
	say: ({ part }, the) => [
		`stage ${leastStage(the, key)?.number ?? ""} was ${did === "placed" ? "given " : "pumped with "}`,
		part,
		` of its planned ${noun}`,
	],
});

export const recordMeasures = {
	"least slurry pumped of calculated": {
		noun: "least part of a slurry's calculated volume that was pumped",
		read: ofJob((the) => cementOf(the)?.record?.least_of_plan, "volume pumped of each slurry", "pumped"),
		say: ({ part }, the) => [
			`the ${leastSlurry(the)} slurry was pumped to `,
			part,
			" of its calculated volume",
		],
	},
	"slurry density off design": {
		noun: "greatest difference of a slurry's density from its design",
		read: ofJob(
			(the) => cementOf(the)?.record?.greatest_density_off,
			"density of each slurry pumped",
			"pumped",
		),
		say: ({ part }, the) => {
			const slurry = farthestSlurry(the);
			return slurry?.density === undefined
				? ["the slurries are off their design density by ", part]
				: [`the ${slurry.id} slurry was weighed at `, slurry.density, ", off its design by ", part];
		},
	},
	"stated slurry density window": {
		noun: "density window stated for the job",
		read: (the) => {
			const string = stringOf(the);
			const window = string.cement?.densityWindow;
			return window === undefined
				? absent(`no density window is stated for the cement of the ${string.id} string`)
				: known(window, missingOf(the, string, "density window", "cement", "density_window"));
		},
		say: ({ part }) => ["the density window is ", part],
	},
	"lift off calculated": {
		noun: "difference of the recorded lift pressure from the calculated one",
		read: (the) => {
			const string = stringOf(the);
			if (recordOf(string) === undefined)
				return absent(`the cement job of the ${string.id} string is not recorded`);
			if (recordOf(string)?.lift === undefined)
				return lacking(missingOf(the, string, "final lift pressure", "cement", "actual", "lift"));
			const calculated = cementOf(the)?.final_lift;
			// A column that lifts nothing shows nothing in its lift pressure.
			if (calculated !== undefined && calculated.value <= 0)
				return absent(`the cement of the ${string.id} string is no heavier than what displaces it`);
			return known(
				cementOf(the)?.record?.lift_off_calculated,
				missingOf(the, string, "calculated lift pressure", "cement"),
			);
		},
		say: ({ part }, the) => {
			const [lift, calculated] = [recordOf(stringOf(the))?.lift, cementOf(the)?.final_lift];
			return lift === undefined || calculated === undefined
				? ["the recorded lift pressure is off the calculated one by ", part]
				: [
						"the recorded lift pressure is ",
						lift,
						", the columns at rest give ",
						calculated,
						"; it is off by ",
						part,
					];
		},
	},
	"cement top below plan": {
		noun: "depth of the cement top below the planned one, along the hole",
		read: topBelowPlan,
		// A top above the plan is said without its distance, which nobody asks for.
		say: ({ value, part }, the) =>
			value.value < 0
				? [`${topNoun(the)} is above the planned one`]
				: [`${topNoun(the)} is `, part, " below the planned one, along the hole"],
	},
	"recorded bump pressure": {
		noun: "recorded bump pressure",
		read: ofJob((the) => recordOf(stringOf(the))?.bump, "bump pressure", "bump"),
		say: ({ part }) => ["the plug was bumped at ", part],
	},
	"allowed bump pressure": {
		noun: "pressure that the casing, its planned test and the wellhead allow when the plug is bumped",
		read: (the) =>
			known(
				cementOf(the)?.placement?.bump_limit?.allowed,
				missingOf(the, stringOf(the), "rating at the plug bump", "cement"),
			),
		say: ({ part }) => ["the pressure allowed at the plug bump is ", part],
	},
	"planned shoe test equivalent": {
		noun: "equivalent density that the shoe test was planned to",
		read: (the) =>
			known(
				stringOf(the).shoeTest?.equivalent,
				missingOf(the, stringOf(the), "planned shoe test", "shoe_test", "equivalent"),
			),
		say: ({ part }) => ["the shoe test was planned to ", part],
	},
	"shoe test over fluid below": {
		noun: "shoe test over the fluid that the next hole is drilled with",
		read: (the) => {
			const string = stringOf(the);
			const EMW = string.shoeTest?.actual?.equivalent;
			if (EMW === undefined) return absent(`no test of the ${string.id} shoe is recorded`);
			if (the.well.holes.at(-1)?.id === string.hole.id)
				return absent(`no hole is drilled below the ${string.id} shoe`);
			const fluid = heaviestBelow(the);
			return fluid.state === "known"
				? known(
						densityOver.of({ EMW, ρ: fluid.value as Known<"density"> }),
						missingOf(the, string, "shoe test", "shoe_test", "actual"),
					)
				: fluid;
		},
		say: (said) => [
			"the recorded shoe test is ",
			said.size,
			said.value.value < 0 ? " below" : " above",
			" the density of the fluid below the shoe",
		],
	},
	"planned test pressure": planned("planned test pressure", "pressure", ({ pressure }) => pressure),
	"planned test hold": planned("planned hold of the test", "hold", ({ hold }) => hold),
	"allowed test fall": planned(
		"fall that the test is allowed",
		"allowed_fall",
		({ allowedFall }) => allowedFall,
	),
	"highest recorded treating pressure": {
		noun: "highest treating pressure on record",
		read: (the) =>
			treated(
				the,
				the.results.stimulation?.as_pumped?.highest_pressure,
				"maximum pressure of the stages pumped",
			),
		say: ({ part }, the) => [
			`stage ${the.results.stimulation?.as_pumped?.highest_pressure_stage ?? ""} reached `,
			part,
		],
	},
	"line test pressure": {
		noun: "line test pressure",
		read: ({ well }) =>
			known(
				well.stimulation?.limits?.lineTest,
				missingAt("line test pressure", "stimulation", "limits", "line_test"),
			),
		say: ({ part }) => ["the treating line was tested to ", part],
	},
	"least element allowed": {
		noun: "pressure allowed by the weakest element of the pressure boundary",
		read: ({ results }) =>
			known(
				results.stimulation?.limiting?.allowed,
				missingAt("elements that see treating pressure", "stimulation", "pressure_boundary"),
			),
		say: ({ part }) => ["the weakest element of the pressure boundary is allowed ", part],
	},
	"least proppant placed of plan": leastOfStages(
		"proppant_of_plan",
		"proppant",
		"proppant placed in each stage",
		"placed",
	),
	"least clean volume of plan": leastOfStages(
		"clean_of_plan",
		"clean volume",
		"clean volume of each stage",
		"pumped",
	),
	"highest recorded annulus pressure": {
		noun: "highest pressure recorded in the annulus",
		read: ({ subject, well }) => {
			if (subject.kind !== "annulus") return lacking();
			const { inner, outer, limit } = subject;
			const name = `${inner.id} × ${outer.id} annulus`;
			if (well.stimulation === undefined) return absent("no stimulation is planned");
			if (well.stimulation.stages.every(({ actual }) => actual === undefined))
				return absent("no stage is recorded as pumped");
			return known(
				limit?.highest,
				missingAt(`highest pressure recorded in the ${name}`, "stimulation", "annuli"),
			);
		},
		say: ({ part }) => ["the annulus reached ", part],
	},
	"recorded preventer test": {
		noun: "recorded high-pressure test of the preventers",
		read: ({ subject, well }) => {
			if (subject.kind !== "stack") return lacking();
			const { stack } = subject;
			const i = well.wellControl?.preventers?.indexOf(stack) ?? 0;
			return stack.actual === undefined
				? absent(`no test of the preventers on the ${stack.over} string is recorded`)
				: known(stack.actual.high, missingAt("high test", "well_control", "preventers", i, "actual", "high"));
		},
		say: ({ part }) => ["the preventers were tested to ", part],
	},
	"planned preventer test": {
		noun: "planned high-pressure test of the preventers",
		read: ({ subject, well }) => {
			if (subject.kind !== "stack") return lacking();
			const i = well.wellControl?.preventers?.indexOf(subject.stack) ?? 0;
			return known(
				subject.stack.test?.high,
				missingAt("planned high test", "well_control", "preventers", i, "test", "high"),
			);
		},
		say: ({ part }) => ["the preventers are to be tested to ", part],
	},
} as const satisfies Readonly<Record<string, Measure>>;
