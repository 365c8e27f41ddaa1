import type { StageResults } from "../../calc/results.ts";
import { greatestApart } from "../../calc/stimulation/chart-readings.ts";
import type { Known } from "../../cite/known.ts";
import { message, type Said } from "../../messages/message.ts";
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
		what: Said,
		...at: readonly (string | number)[]
	): Measure["read"] =>
	(the) => {
		const string = stringOf(the);
		return recordOf(string) === undefined
			? absent(message("rules/cement-job-string-is-not-recorded-2", { string: string.id }))
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
	if (actual === undefined)
		return absent(message("rules/cement-job-string-is-not-recorded-2", { string: string.id }));
	if (cement?.planned_top !== undefined)
		return known(
			distanceAlongHole.of({ lower: cement.top.md, upper: cement.planned_top.md }),
			missingOf(the, string, message("rules/cement-top"), "cement", "actual", "top"),
		);
	return lacking(
		stageTool === undefined
			? missingOf(the, string, message("rules/volume-pumped-each-slurry"), "cement", "actual", "pumped")
			: missingOf(the, string, message("rules/cement-top"), "cement", "actual", "top"),
	);
};

const testOf = (the: Case): PressureTest | undefined => stringOf(the).pressureTest;

const planned = (noun: Said, key: string, find: (test: PressureTest) => Known | undefined): Measure => ({
	noun,
	read: (the) => {
		const test = testOf(the);
		return known(test && find(test), missingOf(the, stringOf(the), noun, "pressure_test", key));
	},
	say: ({ part }) => [message("rules/is", { noun, part })],
});

/** Of the treatment's records: absent before there is one. */
const treated = (the: Case, value: Known | undefined, what: Said): Reading => {
	const { stimulation } = the.well;
	if (stimulation === undefined) return absent(message("rules/no-stimulation-is-planned-2"));
	if (stimulation.stages.every(({ actual }) => actual === undefined))
		return absent(message("rules/no-stage-is-recorded-as-pumped"));
	return known(value, missingAt(what, "stimulation", "stages", "actual"));
};

/** Charts whose stage has a volume on record. */
const chartsOf = ({ results }: Case) =>
	(results.stimulation?.stages ?? []).flatMap(({ number, chart }) =>
		chart?.apart === undefined ? [] : [{ stage: String(number), apart: chart.apart }],
	);

const steepest = ({ results }: Case) =>
	(results.stimulation?.stages ?? [])
		.flatMap(({ number, recorded_pressure: found }) =>
			found === undefined ? [] : [{ stage: String(number), gradient: found.gradient }],
		)
		.sort((a, b) => b.gradient.value - a.gradient.value)[0];

type OfPlan = "proppant_of_plan" | "clean_of_plan";

const leastStage = ({ results }: Case, key: OfPlan): StageResults | undefined =>
	(results.stimulation?.stages ?? [])
		.filter(({ as_pumped }) => as_pumped?.[key] !== undefined)
		.sort((a, b) => (a.as_pumped?.[key]?.value ?? 0) - (b.as_pumped?.[key]?.value ?? 0))[0];

const leastOfStages = (
	key: OfPlan,
	noun: Said,
	what: Said,
	stageWas: "rules/stage-was-given" | "rules/stage-was-pumped-with",
): Measure => ({
	noun,
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
							message("rules/of-stages", {
								what,
								count: open.length,
								stages: listed(open.map(({ number }) => String(number))),
							}),
							"stimulation",
							"stages",
							"actual",
						),
					],
				}
			: reading;
	},
	say: ({ part }, the) => [message(stageWas, { stage: String(leastStage(the, key)?.number ?? ""), part })],
});

export const recordMeasures = {
	"least slurry pumped of calculated": {
		noun: message("rules/least-part-slurrys-calculated-volume-that"),
		read: ofJob(
			(the) => cementOf(the)?.record?.least_of_plan,
			message("rules/volume-pumped-each-slurry"),
			"pumped",
		),
		say: ({ part }, the) => [
			message("rules/slurry-was-pumped-to-its-calculated-volume", { leastSlurry: leastSlurry(the), part }),
		],
	},
	"slurry density off design": {
		noun: message("rules/greatest-difference-slurrys-density-from-its"),
		read: ofJob(
			(the) => cementOf(the)?.record?.greatest_density_off,
			message("rules/density-each-slurry-pumped"),
			"pumped",
		),
		say: ({ part }, the) => {
			const slurry = farthestSlurry(the);
			return slurry?.density === undefined
				? [message("rules/slurries-are-off-their-design-density-by", { part })]
				: [
						message("rules/slurry-was-weighed-at-off-its-design", {
							slurry: slurry.id,
							density: slurry.density,
							part,
						}),
					];
		},
	},
	"stated slurry density window": {
		noun: message("rules/density-window-stated-for-job"),
		read: (the) => {
			const string = stringOf(the);
			const window = string.cement?.densityWindow;
			return window === undefined
				? absent(message("rules/no-density-window-is-stated-for-cement", { string: string.id }))
				: known(window, missingOf(the, string, message("rules/density-window"), "cement", "density_window"));
		},
		say: ({ part }) => [message("rules/density-window-is", { part })],
	},
	"lift off calculated": {
		noun: message("rules/difference-recorded-lift-pressure-from-calculated"),
		read: (the) => {
			const string = stringOf(the);
			if (recordOf(string) === undefined)
				return absent(message("rules/cement-job-string-is-not-recorded-2", { string: string.id }));
			if (recordOf(string)?.lift === undefined)
				return lacking(
					missingOf(the, string, message("rules/final-lift-pressure"), "cement", "actual", "lift"),
				);
			const calculated = cementOf(the)?.final_lift;
			// A column that lifts nothing shows nothing in its lift pressure.
			if (calculated !== undefined && calculated.value <= 0)
				return absent(message("rules/cement-string-is-no-heavier-than-what", { string: string.id }));
			return known(
				cementOf(the)?.record?.lift_off_calculated,
				missingOf(the, string, message("rules/calculated-lift-pressure"), "cement"),
			);
		},
		say: ({ part }, the) => {
			const [lift, calculated] = [recordOf(stringOf(the))?.lift, cementOf(the)?.final_lift];
			return lift === undefined || calculated === undefined
				? [message("rules/recorded-lift-pressure-is-off-calculated-one", { part })]
				: [message("rules/recorded-lift-pressure-is-columns-at-rest", { lift, calculated, part })];
		},
	},
	"cement top below plan": {
		noun: message("rules/depth-cement-top-below-planned-one"),
		read: topBelowPlan,
		// A top above the plan is said without its distance, which nobody asks for.
		say: ({ value, part }, the) =>
			value.value < 0
				? [message("rules/is-above-planned-one", { topNoun: topNoun(the) })]
				: [message("rules/is-below-planned-one-along-hole", { topNoun: topNoun(the), part })],
	},
	"recorded bump pressure": {
		noun: message("rules/recorded-bump-pressure"),
		read: ofJob((the) => recordOf(stringOf(the))?.bump, message("rules/bump-pressure"), "bump"),
		say: ({ part }) => [message("rules/plug-was-bumped-at", { part })],
	},
	"allowed bump pressure": {
		noun: message("rules/pressure-that-casing-its-planned-test"),
		read: (the) =>
			known(
				cementOf(the)?.placement?.bump_limit?.allowed,
				missingOf(the, stringOf(the), message("rules/rating-at-plug-bump"), "cement"),
			),
		say: ({ part }) => [message("rules/pressure-allowed-at-plug-bump-is", { part })],
	},
	"planned shoe test equivalent": {
		noun: message("rules/equivalent-density-that-shoe-test-was"),
		read: (the) =>
			known(
				stringOf(the).shoeTest?.equivalent,
				missingOf(the, stringOf(the), message("rules/planned-shoe-test"), "shoe_test", "equivalent"),
			),
		say: ({ part }) => [message("rules/shoe-test-was-planned-to", { part })],
	},
	"shoe test over fluid below": {
		noun: message("rules/shoe-test-over-fluid-that-next"),
		read: (the) => {
			const string = stringOf(the);
			const EMW = string.shoeTest?.actual?.equivalent;
			if (EMW === undefined) return absent(message("rules/no-test-shoe-is-recorded", { string: string.id }));
			if (the.well.holes.at(-1)?.id === string.hole.id)
				return absent(message("rules/no-hole-is-drilled-below-shoe", { string: string.id }));
			const fluid = heaviestBelow(the);
			return fluid.state === "known"
				? known(
						densityOver.of({ EMW, ρ: fluid.value as Known<"density"> }),
						missingOf(the, string, message("rules/shoe-test"), "shoe_test", "actual"),
					)
				: fluid;
		},
		say: (said) => [
			said.value.value < 0
				? message("rules/recorded-shoe-test-below-fluid", { size: said.size })
				: message("rules/recorded-shoe-test-above-fluid", { size: said.size }),
		],
	},
	"planned test pressure": planned(
		message("rules/planned-test-pressure"),
		"pressure",
		({ pressure }) => pressure,
	),
	"planned test hold": planned(message("rules/planned-hold-test"), "hold", ({ hold }) => hold),
	"allowed test fall": planned(
		message("rules/fall-that-test-is-allowed"),
		"allowed_fall",
		({ allowedFall }) => allowedFall,
	),
	"highest recorded treating pressure": {
		noun: message("rules/highest-treating-pressure-on-record"),
		read: (the) =>
			treated(
				the,
				the.results.stimulation?.as_pumped?.highest_pressure,
				message("rules/maximum-pressure-stages-pumped"),
			),
		say: ({ part }, the) => [
			message("rules/stage-reached", {
				detail: the.results.stimulation?.as_pumped?.highest_pressure_stage ?? "",
				part,
			}),
		],
	},
	"line test pressure": {
		noun: message("rules/line-test-pressure"),
		read: ({ well }) =>
			known(
				well.stimulation?.limits?.lineTest,
				missingAt(message("rules/line-test-pressure"), "stimulation", "limits", "line_test"),
			),
		say: ({ part }) => [message("rules/treating-line-was-tested-to", { part })],
	},
	"least element allowed": {
		noun: message("rules/pressure-allowed-by-weakest-element-pressure"),
		read: ({ results }) =>
			known(
				results.stimulation?.limiting?.allowed,
				missingAt(message("rules/elements-that-see-treating-pressure"), "stimulation", "pressure_boundary"),
			),
		say: ({ part }) => [message("rules/weakest-element-pressure-boundary-is-allowed", { part })],
	},
	"least proppant placed of plan": leastOfStages(
		"proppant_of_plan",
		message("rules/least-proppant-of-stage"),
		message("rules/stage-was-given.proppant-placed-in-each"),
		"rules/stage-was-given",
	),
	"least clean volume of plan": leastOfStages(
		"clean_of_plan",
		message("rules/least-clean-volume-of-stage"),
		message("rules/stage-was-pumped-with.clean-volume-each-stage"),
		"rules/stage-was-pumped-with",
	),
	"base fluid off its water": {
		noun: message("rules/base-fluid-off-its-water"),
		read: ({ results, well }) => {
			const blend = results.stimulation?.water_blend;
			if (well.stimulation === undefined) return absent(message("rules/no-stimulation-is-planned-2"));
			return blend === undefined
				? absent(message("rules/dissolved-solids-of-the-water-are-not-given"))
				: known(blend.off, missingAt(message("rules/base-fluid-off-its-water"), "stimulation", "base_fluid"));
		},
		say: ({ part }) => [message("rules/base-fluid-is-off-by", { part })],
	},
	"chart volume apart from record": {
		noun: message("rules/chart-volume-apart-from-record"),
		read: (the) => {
			const apart = chartsOf(the).map(({ apart: share }) => share);
			return apart.length === 0
				? absent(message("rules/no-chart-of-a-recorded-stage"))
				: treated(the, greatestApart.of({ s_i: apart }), message("rules/charts-of-the-stages"));
		},
		say: ({ part }, the) => [
			message("rules/chart-and-record-differ", {
				stage: chartsOf(the).sort((a, b) => b.apart.value - a.apart.value)[0]?.stage ?? "",
				part,
			}),
		],
	},
	"highest gradient at shut-in": {
		noun: message("rules/highest-gradient-at-shut-in"),
		read: (the) => treated(the, steepest(the)?.gradient, message("rules/shut-in-pressure-of-the-stages")),
		say: ({ part }, the) => [message("rules/stage-shut-in-at", { stage: steepest(the)?.stage ?? "", part })],
	},
	"highest recorded annulus pressure": {
		noun: message("rules/highest-pressure-recorded-in-annulus"),
		read: ({ subject, well }) => {
			if (subject.kind !== "annulus") return lacking();
			const { inner, outer, limit } = subject;
			const name = message("rules/annulus-named", { inner: inner.id, outer: outer.id });
			if (well.stimulation === undefined) return absent(message("rules/no-stimulation-is-planned-2"));
			if (well.stimulation.stages.every(({ actual }) => actual === undefined))
				return absent(message("rules/no-stage-is-recorded-as-pumped"));
			return known(
				limit?.highest,
				missingAt(message("rules/highest-pressure-recorded-in", { name }), "stimulation", "annuli"),
			);
		},
		say: ({ part }) => [message("rules/annulus-reached", { part })],
	},
	"recorded preventer test": {
		noun: message("rules/recorded-high-pressure-test-preventers"),
		read: ({ subject, well }) => {
			if (subject.kind !== "stack") return lacking();
			const { stack } = subject;
			const i = well.wellControl?.preventers?.indexOf(stack) ?? 0;
			return stack.actual === undefined
				? absent(message("rules/no-test-preventers-on-string-is-recorded-2", { over: stack.over }))
				: known(
						stack.actual.high,
						missingAt(message("rules/high-test"), "well_control", "preventers", i, "actual", "high"),
					);
		},
		say: ({ part }) => [message("rules/preventers-were-tested-to", { part })],
	},
	"planned preventer test": {
		noun: message("rules/planned-high-pressure-test-preventers"),
		read: ({ subject, well }) => {
			if (subject.kind !== "stack") return lacking();
			const i = well.wellControl?.preventers?.indexOf(subject.stack) ?? 0;
			return known(
				subject.stack.test?.high,
				missingAt(message("rules/planned-high-test"), "well_control", "preventers", i, "test", "high"),
			);
		},
		say: ({ part }) => [message("rules/preventers-are-to-be-tested-to", { part })],
	},
} as const satisfies Readonly<Record<string, Measure>>;
