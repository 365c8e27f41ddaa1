import type { Known } from "../../cite/known.ts";
import { mayAppear } from "../../definition/privacy.ts";
import type { Cell } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import { capital, tellSaid } from "../../messages/print.ts";
import { type Finding, isWell } from "../../rules/finding.ts";
import { cell, type PaperContext, readerOf, shown } from "../context.ts";
import { named, type Part, row, table, textColumn } from "../parts/part.ts";
import { frontGoesOn } from "./goes-on.ts";

/** Checks whose limits a crew can break on a job, those that matter most first. */
const OF_JOB: Readonly<Record<string, readonly string[]>> = {
	casing: ["surface-shoe-depth", "shoe-depth", "centralizers", "hole-clearance"],
	cementing: [
		"cement-to-surface",
		"cement-top",
		"critical-cement-length",
		"cementing-plugs",
		"wait-on-cement",
	],
	"pressure-test": ["wait-on-cement", "casing-pressure-test"],
	"preventer-test": ["shoe-test"],
	"wireline-and-perforating": ["annulus-limit"],
	pumping: ["internal-yield-margin", "relief-valve", "annulus-limit", "casing-pressure-test"],
	"plug-drill-out": ["annulus-limit"],
	flowback: ["annulus-limit"],
};

/** Jobs under treating pressure: the weakest element limits them. */
const UNDER_PRESSURE = ["pumping"];
/** Tests of other strings than the treated one are past when it is treated. */
const OF_TREATED: readonly string[] = ["casing-pressure-test"];
/** Told in the row of the annulus, with the stop that the crew keeps to. */
const ANNULUS = "annulus-limit";

/** What today's job may not break: the law's limits and the permit's first, then the weakest element's and the annuli's. All of it. */
export const crewLimits: Part = (context) => {
	const { job } = context;
	if (job === undefined) return [];
	const checks = OF_JOB[job.id] ?? [];
	const found = findingsOf(context, job, checks);
	const lines = [
		...ruled(context, job, found, checks),
		...(checks.includes(ANNULUS) ? annuli(context, found) : []),
		...(UNDER_PRESSURE.includes(job.id) ? boundary(context) : []),
	];
	return frontGoesOn(
		context,
		"limits",
		table(
			context,
			"crew_limits",
			[
				textColumn(context, "limit_of", { width: 3, rowHead: true }),
				textColumn(context, "limit", { width: 1.6 }),
				textColumn(context, "today", { width: 1.4 }),
				textColumn(context, "whose", { width: 3 }),
			],
			lines.map(({ what, limit, today, whose }) =>
				row({
					limit_of: { kind: "text", text: what },
					limit,
					today,
					whose: { kind: "rich", children: whose },
				}),
			),
			{ dense: true },
		),
	);
};

interface LimitLine {
	readonly what: string;
	readonly limit: Cell;
	readonly today: Cell;
	readonly whose: readonly Inline[];
}

const NONE: Cell = { kind: "none" };
const rich = (...children: readonly Inline[]): Cell => ({ kind: "rich", children });
const words = (text: string): Inline => ({ kind: "text", text });

/** The maximum of the treatment, and the weakest element where it holds less. */
const boundary = (context: PaperContext): readonly LimitLine[] => {
	const label = context.words.label;
	const limiting = context.results.stimulation?.limiting;
	const maximum = context.well.stimulation?.limits?.maximumTreatingPressure;
	return [
		...(maximum === undefined
			? []
			: [
					{
						what: label("facts.maximum_treating_pressure"),
						limit: rich(words(`${label("crew.comparison.at most")} `), shown(context, maximum)),
						today: cell(context, context.results.stimulation?.expected_treating_pressure),
						whose: [words(label("crew.company_limit"))],
					},
				]),
		// A part that holds more than the maximum is no limit to go to.
		...(limiting === undefined || (maximum !== undefined && limiting.allowed.value >= maximum.value)
			? []
			: [
					{
						what: label("crew.weakest_element"),
						limit: rich(
							words(`${label("crew.comparison.at most")} `),
							shown(context, limiting.allowed, { nearest: 10 }),
						),
						today: NONE,
						whose: [words(named(context, limiting.element))],
					},
				]),
	];
};

/** One row an annulus: the pressure at which the crew stops, and beside it the rules on that annulus. */
const annuli = (context: PaperContext, found: readonly Finding[]): readonly LimitLine[] => {
	const label = context.words.label;
	const rules = found.filter(({ check }) => check === ANNULUS);
	return (context.well.stimulation?.annuli ?? []).flatMap(
		({ between: [inner, outer], stopAbove }): LimitLine[] => {
			if (stopAbove === undefined) return [];
			const own = rules.filter(
				({ measured, subject }) => measured === stopAbove || isBetween(subject, inner, outer),
			);
			return [
				{
					what: `${label("crew.annulus_stop")}: ${named(context, inner)} × ${named(context, outer).toLowerCase()}`,
					limit: rich(words(`${label("crew.comparison.at most")} `), shown(context, stopAbove)),
					today: NONE,
					whose: [
						...own.flatMap((rule) => [...cited(context, rule, stopAbove), words("; ")]),
						words(label("crew.company_limit")),
					],
				},
			];
		},
	);
};

/** Whether a finding speaks of the annulus between two strings. */
const isBetween = (subject: Finding["subject"], inner: string, outer: string): boolean => {
	const told = JSON.stringify(subject);
	return told.includes(`"${inner}"`) && told.includes(`"${outer}"`);
};

/** A rule by its citation, with what it asks where that is another figure than the one in the row. */
const cited = (context: PaperContext, finding: Finding, printed: Known | undefined): readonly Inline[] => {
	const { required, comparison, cite } = finding;
	const said = words(tellSaid(cite.citation, readerOf(context)));
	if (required === undefined || comparison === undefined || isSame(required, printed)) return [said];
	return isAtThePlace(finding)
		? [said, words(` (${context.words.label("crew.must_reach_it")})`)]
		: [
				words(
					`${tellSaid(cite.citation, readerOf(context))} (${context.words.label(`crew.comparison.${comparison}`)} `,
				),
				shown(context, required, hours(required)),
				words(")"),
			];
};

/** A depth or height of which nothing more is asked than that the place is reached. */
const isAtThePlace = ({ required, comparison }: Finding): boolean =>
	comparison === "at least" && required?.dimension === "offset" && required.value === 0;

const isSame = (one: Known, other: Known | undefined): boolean =>
	other !== undefined && Math.abs(one.value - other.value) <= 1e-9 * Math.abs(one.value);

const findingsOf = (
	context: PaperContext,
	job: NonNullable<PaperContext["job"]>,
	checks: readonly string[],
): readonly Finding[] => {
	const treated = context.well.stimulation?.treatedThrough;
	return (
		context.judgement.findings
			.filter(({ check, verdict, subject }) => {
				const string = OF_TREATED.includes(check) && job.string === undefined ? treated : job.string;
				const here = string === undefined || subject === string || isWell(subject);
				return checks.includes(check) && here && verdict !== "does not apply" && verdict !== "cannot tell";
			})
			// A rule that only asks for a plan is no limit of today.
			.filter(({ required, check }) => required !== undefined || check === "cement-to-surface")
	);
};

/** Limits of the rules and of the permit on this job's string: of several on one thing the strictest, and the others beside it. */
const ruled = (
	context: PaperContext,
	job: NonNullable<PaperContext["job"]>,
	all: readonly Finding[],
	checks: readonly string[],
): readonly LimitLine[] => {
	const label = context.words.label;
	const groups = new Map<string, Finding[]>();
	for (const finding of all.filter(({ check }) => check !== ANNULUS)) {
		const of = tellSaid(finding.subject, readerOf(context));
		// Heights above two places are two limits: the stricter figure of one says nothing of the other.
		const from = nounOf(context, finding) ?? "";
		const key = `${finding.check} ${of} ${finding.comparison ?? ""} ${finding.required?.dimension ?? ""} ${from}`;
		groups.set(key, [...(groups.get(key) ?? []), finding]);
	}
	return [...groups.values()]
		.map((group) => group.toSorted(strictestFirst))
		.sort(([a], [b]) => checks.indexOf(a?.check ?? "") - checks.indexOf(b?.check ?? ""))
		.flatMap(([first, ...others]): LimitLine[] => {
			if (first === undefined) return [];
			const of = tellSaid(first.subject, readerOf(context));
			const subject =
				isWell(first.subject) || first.subject === job.string ? "" : `: ${named(context, of).toLowerCase()}`;
			return [
				{
					what: `${nounOf(context, first) ?? label(`crew.checks.${nameOf(first)}`)}${subject}`,
					limit: limitCell(context, first),
					today: todayCell(context, [first, ...others].find(({ verdict }) => verdict === "not met") ?? first),
					whose: [
						words(tellSaid(first.cite.citation, readerOf(context))),
						...others.flatMap((other) => [words("; "), ...cited(context, other, first.required)]),
					],
				},
			];
		});
};

/** A height of cement says above what: beside the depth of its top it would read as another top. */
const nounOf = (context: PaperContext, { check, quantity }: Finding): string | undefined =>
	check !== "cement-top" || quantity === undefined
		? undefined
		: capital(tellSaid(quantity, readerOf(context)));

const LOWEST_IS_STRICT: readonly string[] = ["at most", "less than"];

const strictestFirst = (a: Finding, b: Finding): number => {
	const [one, other] = [a.required?.value ?? 0, b.required?.value ?? 0];
	return LOWEST_IS_STRICT.includes(a.comparison ?? "") ? one - other : other - one;
};

/** A wait is kept by the clock or by the cement's strength, and a crew has to know which. */
const nameOf = ({ check, required }: Finding): string => {
	if (check === "wait-on-cement" && required?.dimension === "pressure") return "strength-at-drill-out";
	// A share without a unit says nothing under the name of the rule that asks for it.
	return check === "cement-to-surface" && required !== undefined ? "cement-over-calculated" : check;
};

const limitCell = (context: PaperContext, finding: Finding): Cell => {
	const { comparison, required } = finding;
	return required === undefined || comparison === undefined
		? { kind: "text", text: context.words.label("crew.required") }
		: isAtThePlace(finding)
			? { kind: "text", text: context.words.label("crew.must_reach_it") }
			: rich(
					words(`${context.words.label(`crew.comparison.${comparison}`)} `),
					shown(context, required, hours(required)),
				);
};

const todayCell = (context: PaperContext, { measured, verdict }: Finding): Cell => {
	const broken = verdict === "not met" ? [words(` ${context.words.label("crew.not_met")}`)] : [];
	if (measured === undefined || !isForCrew(measured)) return broken.length === 0 ? NONE : rich(...broken);
	return rich(shown(context, measured, hours(measured)), ...broken);
};

/** A value that the definition keeps for the record (a laboratory's strength) is not printed for a crew. */
const isForCrew = ({ from }: Known): boolean =>
	from.kind !== "definition" || mayAppear("crew", from.at, undefined);

/** Crews count waits in hours. */
const hours = ({ dimension, value }: { readonly dimension: string; readonly value: number }) =>
	dimension === "duration" && value >= 60 ? ({ unit: "hr", decimals: 0 } as const) : {};
