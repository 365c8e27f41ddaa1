import type { Known } from "../../cite/known.ts";
import { mayAppear } from "../../definition/privacy.ts";
import type { Cell } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import { tellSaid } from "../../messages/print.ts";
import { type Finding, isWell } from "../../rules/finding.ts";
import { cell, type PaperContext, readerOf, shown } from "../context.ts";
import { named, type Part, row, table, textColumn } from "../parts/part.ts";

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

/** Jobs under treating pressure: the weakest element and the annuli limit them. */
const UNDER_PRESSURE = ["pumping"];

/** The list of what today's job may not break: by rule and permit, by the weakest element, by the annuli. All of it. */
export const crewLimits: Part = (context) => {
	const { job } = context;
	if (job === undefined) return [];
	const lines = [...(UNDER_PRESSURE.includes(job.id) ? boundary(context) : []), ...ruled(context, job)];
	return table(
		context,
		"crew_limits",
		[
			textColumn(context, "may_not_break", { width: 3, rowHead: true }),
			textColumn(context, "limit", { width: 2 }),
			textColumn(context, "today", { width: 1.6 }),
			textColumn(context, "whose", { width: 2.4 }),
		],
		lines.map(({ what, limit, today, whose }) =>
			row({
				may_not_break: { kind: "text", text: what },
				limit,
				today,
				whose: { kind: "text", text: whose },
			}),
		),
		{ dense: true },
	);
};

interface LimitLine {
	readonly what: string;
	readonly limit: Cell;
	readonly today: Cell;
	readonly whose: string;
}

const NONE: Cell = { kind: "none" };
const rich = (...children: readonly Inline[]): Cell => ({ kind: "rich", children });
const words = (text: string): Inline => ({ kind: "text", text });

/** The weakest element under treating pressure, and the stop of each annulus. */
const boundary = (context: PaperContext): readonly LimitLine[] => {
	const label = context.words.label;
	const limiting = context.results.stimulation?.limiting;
	const annuli = context.well.stimulation?.annuli ?? [];
	const maximum = context.well.stimulation?.limits?.maximumTreatingPressure;
	return [
		...(maximum === undefined
			? []
			: [
					{
						what: label("facts.maximum_treating_pressure"),
						limit: rich(words(`${label("crew.comparison.at most")} `), shown(context, maximum)),
						today: cell(context, context.results.stimulation?.expected_treating_pressure),
						whose: label("crew.company_limit"),
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
						whose: named(context, limiting.element),
					},
				]),
		...annuli.flatMap(({ between: [inner, outer], stopAbove }) =>
			stopAbove === undefined
				? []
				: [
						{
							what: `${label("crew.annulus_stop")}: ${named(context, inner)} × ${named(context, outer).toLowerCase()}`,
							limit: rich(words(`${label("crew.comparison.at most")} `), shown(context, stopAbove)),
							today: NONE,
							whose: label("crew.company_limit"),
						},
					],
		),
	];
};

/** Limits of the rules and of the permit on this job's string; the same limit of several rules is one line. */
const ruled = (context: PaperContext, job: NonNullable<PaperContext["job"]>): readonly LimitLine[] => {
	const checks = OF_JOB[job.id] ?? [];
	const label = context.words.label;
	const found = context.judgement.findings
		.filter(({ check, verdict, subject }) => {
			const here = job.string === undefined || subject === job.string || isWell(subject);
			return checks.includes(check) && here && verdict !== "does not apply" && verdict !== "cannot tell";
		})
		// A rule that only asks for a plan is no limit of today.
		.filter(({ required, check }) => required !== undefined || check === "cement-to-surface")
		.sort((a, b) => checks.indexOf(a.check) - checks.indexOf(b.check));
	const lines = new Map<string, LimitLine>();
	for (const finding of found) {
		const of = tellSaid(finding.subject, readerOf(context));
		const key = `${finding.check} ${of} ${finding.comparison ?? ""} ${finding.required?.value ?? ""}`;
		const before = lines.get(key);
		const whose = [before?.whose, tellSaid(finding.cite.citation, readerOf(context))]
			.filter((part) => part !== undefined)
			.join("; ");
		const subject =
			isWell(finding.subject) || finding.subject === job.string
				? ""
				: `: ${named(context, of).toLowerCase()}`;
		lines.set(key, {
			what: `${label(`crew.checks.${nameOf(finding)}`)}${subject}`,
			limit: limitCell(context, finding),
			today: todayCell(context, finding),
			whose,
		});
	}
	return [...lines.values()];
};

/** A wait is kept by the clock or by the cement's strength, and a crew has to know which. */
const nameOf = ({ check, required }: Finding): string =>
	check === "wait-on-cement" && required?.dimension === "pressure" ? "strength-at-drill-out" : check;

const limitCell = (context: PaperContext, { comparison, required }: Finding): Cell =>
	required === undefined || comparison === undefined
		? { kind: "text", text: context.words.label("crew.required") }
		: rich(
				words(`${context.words.label(`crew.comparison.${comparison}`)} `),
				shown(context, required, hours(required)),
			);

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
