import type { Known, KnownTable } from "../../cite/known.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Path } from "../../diagnostics/path.ts";
import type { CasingString, CementJob, Well } from "../../well/well.ts";
import { verticalMark } from "../depths/marks.ts";
import type { CementResults, PlacementResults, TightestMargin } from "../results.ts";
import { outerStrings } from "./annulus.ts";

const whole = (value: number): string =>
	Math.abs(value).toLocaleString("en-US", { maximumFractionDigits: 0 });
const tenth = (value: number): string => value.toFixed(1);
const hours = (minutes: number): string => {
	const value = minutes / 60;
	return `${Number.isInteger(value) ? value : value.toFixed(1)} hours`;
};

/** Less than this is rounding, not a pressure [psi]. */
const ROUNDING = 0.5;

interface Job {
	readonly string: CasingString;
	readonly job: CementJob;
	readonly results: CementResults;
	/** Where the job is written. */
	readonly at: Path;
	/** What is told of: the job, or its second stage. */
	readonly named: string;
	readonly plug: string;
}

/** What an engineer has to be told of the jobs before anybody signs; each with its number. */
export const cementFaults = (
	well: Well,
	path: KnownTable,
	cement: Readonly<Record<string, CementResults>>,
): readonly Diagnostic[] =>
	well.strings.flatMap((string, i) => {
		const results = cement[string.id];
		if (string.cement === undefined || results === undefined) return [];
		const job: Job = {
			string,
			job: string.cement,
			results,
			at: ["casing", i, "cement"],
			named: "the cement job",
			plug: "the plug",
		};
		// Once the job is on record its plan can hurt nobody.
		const planned = string.cement.actual === undefined ? plannedFaults(job) : [];
		return [...planned, ...strengthFaults(job), ...recordFaults(well, path, cement, job)];
	});

const plannedFaults = (job: Job): readonly Diagnostic[] => {
	const { placement, second_stage } = job.results;
	const second = second_stage?.placement;
	return [
		...(placement === undefined ? [] : [...liftFault(job, placement), ...stageFaults(job, placement)]),
		...(second === undefined
			? []
			: stageFaults(
					{ ...job, named: "the second stage of the cement job", plug: "the closing plug" },
					second,
				)),
		...thickeningFault(job),
	];
};

const stageFaults = (job: Job, placement: PlacementResults): readonly Diagnostic[] => [
	...marginFault(job, placement, placement.fracture, "calc/breaks-rock-while-placing"),
	...marginFault(job, placement, placement.pore, "calc/flows-while-placing"),
	...bumpFault(job, placement),
];

const marginFault = (
	{ string, at, named }: Job,
	{ with_friction }: PlacementResults,
	found: TightestMargin | undefined,
	code: "calc/breaks-rock-while-placing" | "calc/flows-while-placing",
): readonly Diagnostic[] => {
	if (found === undefined || found.margin.value >= -ROUNDING) return [];
	const breaks = code === "calc/breaks-rock-while-placing";
	const depth = whole(found.at.md?.value ?? found.at.tvd.value);
	const row = found.steps.rows.find(({ margin }) => margin === found.margin.value);
	return [
		diagnose(
			code,
			{ path: at },
			{
				what: `as the ${found.lost?.passing ?? found.during} passes, ${named} of the ${string.id} string ${breaks ? "breaks down" : "lets flow"} the ${found.formation} at ${depth} ft, from ${whole(found.lost?.from.value ?? found.at_pumped.value)} bbl on and by ${whole(found.margin.value)} psi at worst`,
				expected: `${breaks ? "at most" : "at least"} ${whole(row?.["rock"] ?? Number.NaN)} psi there`,
				found: `${whole(row?.["pressure"] ?? Number.NaN)} psi${breaks && with_friction ? ", moving" : ", at rest"}`,
				mend: breaks
					? "pump slower, lighten the slurry, shorten the column, or set a stage tool above it"
					: "shorten or weight the spacer, or hold pressure on the annulus",
			},
		),
	];
};

const liftFault = ({ string, results, at }: Job, placement: PlacementResults): readonly Diagnostic[] => {
	const moving = placement.least_net_force?.force;
	const landed = results.net_hold_down;
	const least = [moving, landed].filter((each) => each !== undefined).sort((a, b) => a.value - b.value)[0];
	if (least === undefined || least.value >= 0) return [];
	return [
		diagnose(
			"calc/lifts-casing",
			{ path: at },
			{
				what: `the cement job lifts the ${string.id} string with ${whole(least.value)} lbf more than holds it down`,
				expected: "more weight in and of the pipe than push on its end",
				found: `${whole(least.value)} lbf upward${least === moving ? `, after ${whole(placement.least_net_force?.at_pumped.value ?? 0)} bbl` : " when the plug lands"}`,
				mend: "displace with a heavier fluid, chain the string down, or lighten the slurry",
			},
		),
	];
};

const bumpFault = (
	{ string, at, plug }: Job,
	{ bump_pressure, bump_limit }: PlacementResults,
): readonly Diagnostic[] =>
	bump_pressure === undefined ||
	bump_limit === undefined ||
	bump_pressure.value <= bump_limit.allowed.value + ROUNDING
		? []
		: [
				diagnose(
					"calc/bump-above-limit",
					{ path: [...at, "bump"] },
					{
						what: `bumping ${plug} of the ${string.id} string takes ${whole(bump_pressure.value)} psi, ${whole(bump_pressure.value - bump_limit.allowed.value)} psi more than the ${bump_limit.element} is good for`,
						expected: `at most ${whole(bump_limit.allowed.value)} psi`,
						found: `${whole(bump_pressure.value)} psi`,
						mend: "slow down before the plug lands, or bump with less",
					},
				),
			];

const thickeningFault = ({ string, results, at }: Job): readonly Diagnostic[] =>
	(results.setting?.thickening ?? []).flatMap(({ id, in_use, thickening_time }) =>
		in_use.value <= thickening_time.value
			? []
			: [
					diagnose(
						"calc/sets-before-placed",
						{ path: at },
						{
							what: `the ${id} slurry of the ${string.id} string thickens ${whole(in_use.value - thickening_time.value)} min before the plug lands`,
							expected: `a thickening time of more than ${whole(in_use.value)} min`,
							found: `${whole(thickening_time.value)} min`,
							mend: "retard the slurry, or pump faster",
						},
					),
				],
	);

const strengthFaults = ({ string, job, results, at }: Job): readonly Diagnostic[] => {
	const { setting } = results;
	const [then, when] = [setting?.strength_at_drill_out, setting?.drill_out_planned];
	if (setting === undefined || then === undefined || when === undefined) return [];
	if (then.value >= setting.strength_wanted.value - ROUNDING) return [];
	const reached: Known | undefined = setting.strength_reached;
	return [
		diagnose(
			"calc/drill-out-before-strength",
			{
				path: job.drillOut?.after === undefined ? [...at, "wait_on_cement"] : [...at, "drill_out", "after"],
			},
			{
				what: `the shoe of the ${string.id} string is to be drilled after ${hours(when.value)}, when its cement has ${whole(then.value)} psi`,
				expected: `${whole(setting.strength_wanted.value)} psi`,
				found: `${whole(then.value)} psi by the laboratory's tests`,
				mend:
					reached === undefined
						? "wait for a test that shows the strength"
						: `wait ${hours(reached.value)}, or have the laboratory show the strength earlier`,
			},
		),
	];
};

/** A column within this of where it should be has come there [ft]. */
const THERE = 1;

const recordFaults = (
	well: Well,
	path: KnownTable,
	cement: Readonly<Record<string, CementResults>>,
	{ string, job, results, at }: Job,
): readonly Diagnostic[] => {
	const { actual } = job;
	if (actual === undefined) return [];
	const found: Diagnostic[] = [];
	const over = results.pumped_over_calculated;
	const toSurface = job.slurries.some(({ top }) => top.value <= well.datum.groundLevel.value + THERE);
	if (toSurface && actual.returnsToSurface?.value === 0 && over !== undefined && over.value >= 1)
		found.push(
			diagnose(
				"calc/no-returns",
				{ path: [...at, "actual", "returns"] },
				{
					what: `${Math.round(over.value * 100)} % of the calculated cement of the ${string.id} string was pumped and none came back`,
					expected: "cement at the surface",
					found: `0 bbl of ${tenth(results.pumped_volume?.value ?? 0)} bbl`,
					mend: "find the top by a survey or a log, and record it under `top`",
				},
			),
		);
	if (results.top_basis !== "recorded") return found;
	const outside = outerStrings(well.strings, string);
	for (const { name, top, base } of well.geology.water) {
		const passes =
			(verticalMark(path, base, well.datum).md?.value ?? Number.POSITIVE_INFINITY) < string.shoe.value;
		const short = results.top.tvd.value - top.value;
		// Cement outside this string, behind one further out; what stands inside it seals nothing against the water.
		const elsewhere = outside.some(({ id }) =>
			(cement[id]?.columns ?? []).some(
				(other) => other.top.tvd.value <= top.value + THERE && other.bottom.tvd.value >= base.value - THERE,
			),
		);
		if (!passes || short <= THERE || elsewhere) continue;
		found.push(
			diagnose(
				"calc/cement-short-of-water",
				{ path: [...at, "actual", "top"] },
				{
					what: `cement behind the ${string.id} string stops ${whole(short)} ft below the top of the ${name}`,
					expected: `cement from ${whole(top.value)} ft TVD or above`,
					found: `top at ${whole(results.top.tvd.value)} ft TVD, by ${results.top_method === "returns seen" ? "returns" : `the ${results.top_method}`}`,
					mend: "tell the agency, and place what is missing before drilling on",
				},
			),
		);
	}
	return found;
};
