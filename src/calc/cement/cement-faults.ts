import type { Known, KnownTable } from "../../cite/known.ts";
import { diagnose } from "../../diagnostics/diagnose.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Path } from "../../diagnostics/path.ts";
import { type Message, message } from "../../messages/message.ts";
import { measured } from "../../well/said.ts";
import type { CasingString, CementJob, Well } from "../../well/well.ts";
import { verticalMark } from "../depths/marks.ts";
import type { CementResults, PlacementResults, TightestMargin } from "../results.ts";
import { outerStrings } from "./annulus.ts";

/** Less than this is rounding, not a pressure [psi]. */
const ROUNDING = 0.5;

interface Job {
	readonly string: CasingString;
	readonly job: CementJob;
	readonly results: CementResults;
	/** Where the job is written. */
	readonly at: Path;
	/** What is told of: the job, or its second stage. */
	readonly named: Message;
	readonly plug: Message;
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
			named: message("calc/the-cement-job"),
			plug: message("calc/the-plug"),
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
					{ ...job, named: message("calc/the-second-stage"), plug: message("calc/the-closing-plug") },
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
	const depth = measured("measured-depth", found.at.md?.value ?? found.at.tvd.value);
	const row = found.steps.rows.find(({ margin }) => margin === found.margin.value);
	const rock = measured("pressure", row?.["rock"] ?? Number.NaN);
	const pressure = measured("pressure", row?.["pressure"] ?? Number.NaN);
	return [
		diagnose(
			code,
			{ path: at },
			{
				what: message(breaks ? "calc/margin.breaks-down" : "calc/margin.lets-flow", {
					fluid: found.lost?.passing ?? found.during,
					job: named,
					string: string.id,
					formation: found.formation,
					depth,
					from: found.lost?.from ?? found.at_pumped,
					by: { magnitude: found.margin },
				}),
				expected: breaks
					? message("calc/margin-fault.expected", { rock })
					: message("calc/margin-fault.at-least-there", { rock }),
				found:
					breaks && with_friction
						? message("calc/margin.moving", { pressure })
						: message("calc/margin.at-rest", { pressure }),
				mend: breaks
					? message("calc/margin-fault.mend")
					: message("calc/margin-fault.shorten-or-weight-spacer-or"),
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
				what: message("calc/lifts-casing.what", {
					string: string.id,
					least: measured("force", -least.value),
				}),
				expected: message("calc/lifts-casing.expected"),
				found:
					least === moving
						? message("calc/lifts-casing.found", {
								least: measured("force", -least.value),
								atpumped: measured("volume", placement.least_net_force?.at_pumped.value ?? 0),
							})
						: message("calc/lifts-casing.upward-when-plug-lands", { least: measured("force", -least.value) }),
				mend: message("calc/lifts-casing.mend"),
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
						what: message("calc/bump-above-limit.what", {
							plug,
							string: string.id,
							bumppressure: measured("pressure", bump_pressure.value),
							bumppressure2: measured("pressure", bump_pressure.value - bump_limit.allowed.value),
							element: bump_limit.element,
						}),
						expected: message("calc/bump-above-limit.expected", {
							allowed: measured("pressure", bump_limit.allowed.value),
						}),
						found: measured("pressure", bump_pressure.value),
						mend: message("calc/bump-above-limit.mend"),
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
							what: message("calc/sets-before-placed.what", {
								id,
								string: string.id,
								inuse: measured("duration", in_use.value - thickening_time.value),
							}),
							expected: message("calc/sets-before-placed.expected", {
								inuse: measured("duration", in_use.value),
							}),
							found: measured("duration", thickening_time.value),
							mend: message("calc/sets-before-placed.mend"),
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
				what: message("calc/drill-out-before-strength.what", {
					string: string.id,
					when: measured("duration", when.value),
					strength: measured("pressure", then.value),
				}),
				expected: measured("pressure", setting.strength_wanted.value),
				found: message("calc/drill-out-before-strength.found", {
					strength: measured("pressure", then.value),
				}),
				mend:
					reached === undefined
						? message("calc/drill-out-before-strength.mend")
						: message("calc/drill-out-before-strength.wait-or-have-laboratory-show", {
								reached: measured("duration", reached.value),
							}),
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
					what: message("calc/no-returns.what", { over: measured("share", over.value), string: string.id }),
					expected: message("calc/no-returns.expected"),
					found: message("calc/no-returns.found", {
						back: measured("volume", 0),
						pumped: measured("volume", results.pumped_volume?.value ?? 0),
					}),
					mend: message("calc/no-returns.mend"),
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
					what: message("calc/cement-short-of-water.what", {
						string: string.id,
						short: measured("length", short),
						name,
					}),
					expected: message("calc/cement-short-of-water.expected", {
						top: measured("true-vertical-depth", top.value),
					}),
					found:
						results.top_method === "returns seen"
							? message("calc/cement-short-of-water.found", {
									tvd: measured("true-vertical-depth", results.top.tvd.value),
								})
							: message("calc/cement-short-of-water.top-at-tvd-by", {
									tvd: measured("true-vertical-depth", results.top.tvd.value),
									topmethod: results.top_method,
								}),
					mend: message("calc/cement-short-of-water.mend"),
				},
			),
		);
	}
	return found;
};
