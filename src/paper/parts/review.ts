import type { Block, Cell, Row } from "../../document/blocks.ts";
import type { Inline } from "../../document/inline.ts";
import { tellSaid } from "../../messages/print.ts";
import type { Finding } from "../../rules/finding.ts";
import { marginBetween } from "../../rules/formulas.ts";
import { type cell, type PaperContext, readerOf, shown, textCell } from "../context.ts";
import { nearestOffsetWell, nearestToFactor } from "../governing.ts";
import { figures, TO_SCALE } from "./figures.ts";
import { identityFacts } from "./identity.ts";
import { limitCell, marginCell, tightness } from "./limit-cells.ts";
import { asGiven, named, type Part, row, table, textColumn } from "./part.ts";

/*
 * The first page: what a reviewer looks for, each with its number, its limit and its margin, beside the well to scale.
 */

const text = (words: string): Inline => ({ kind: "text", text: words });
const rich = (...children: readonly (Inline | readonly Inline[])[]): Cell => {
	const all = children.flat();
	return all.length === 0 ? { kind: "none" } : { kind: "rich", children: all };
};
const value = (context: PaperContext, known: Parameters<typeof cell>[1]): readonly Inline[] =>
	known === undefined ? [] : [shown(context, known)];

interface Answer {
	readonly what: string;
	readonly here: Cell;
	readonly finding?: Finding | undefined;
	/** In place of the finding's. */
	readonly limit?: Cell;
	readonly margin?: Cell;
}

const answerRow = (context: PaperContext, { what, here, finding, limit, margin }: Answer): Row => {
	const none: Cell = { kind: "none" };
	const verdict: Cell = finding === undefined ? none : { kind: "verdict", verdict: finding.verdict };
	const found = finding === undefined ? none : marginCell(context, finding);
	return row({
		sought: textCell(what),
		this_well: here.kind === "none" ? textCell(context.words.label("phrases.not_evaluated")) : here,
		limit: limit ?? (finding === undefined ? none : limitCell(context, finding)),
		margin: margin ?? (found.kind === "none" ? verdict : found),
	});
};

/** Of the findings of a check, the one that asks most: open ones first, then the least room. */
const asksMost = (
	{ judgement }: PaperContext,
	checks: readonly string[],
	keep: (finding: Finding) => boolean = () => true,
): Finding | undefined =>
	judgement.findings
		.filter((each) => checks.includes(each.check) && each.verdict !== "does not apply" && keep(each))
		.toSorted((a, b) => tightness(a) - tightness(b))[0];

/** The six things, and what is pumped; each a row or a few. */
export const reviewAnswers: Part = (context) => {
	const label = (key: string): string => context.words.label(`review.${key}`);
	return table(
		context,
		"review",
		[
			textColumn(context, "sought", { width: 1.9, rowHead: true }),
			textColumn(context, "this_well", { width: 4.6 }),
			textColumn(context, "limit", { width: 1.5, label: "limit_here" }),
			textColumn(context, "margin", { width: 0.9 }),
		],
		[
			...water(context, label),
			...strings(context, label),
			...pressures(context, label),
			...wells(context, label),
		].map((answer) => answerRow(context, answer)),
		{ dense: true },
	);
};

/** The well to scale beside whose it is. */
export const reviewHead: Part = (context) => {
	const [drawing] = figures["well-to-scale"]?.(context) ?? [];
	const facts = identityFacts(context);
	return drawing === undefined
		? facts
		: [
				{
					kind: "beside",
					share: TO_SCALE / 490,
					left: [drawing],
					right: facts,
				} satisfies Block,
			];
};

type Label = (key: string) => string;

const water = (context: PaperContext, label: Label): readonly Answer[] => {
	const { isolation, geology, casing, stimulation } = context.results;
	const base = geology.protected_water_base;
	const protecting = isolation.protecting_string;
	const shoe = protecting === undefined ? undefined : casing[protecting]?.shoe;
	const evidence = isolation.cement_at_protected_water ?? [];
	const verified = evidence.filter((each) => each.evidence !== "planned").length;
	const cement = asksMost(context, ["cement-to-surface", "cement-coverage"]);
	const count = (n: number): Inline => ({
		kind: "quantity",
		dimension: "count",
		value: n,
	});
	return [
		{
			what: label("shoe"),
			here:
				base === undefined
					? textCell(label("base_not_stated"))
					: rich(
							value(context, isolation.shoe_below_protected_water),
							text(
								isolation.shoe_below_protected_water === undefined
									? label("no_string_covers")
									: ` ${label("below_base")}`,
							),
							...(shoe === undefined
								? []
								: [text(` (${label("shoe_at")} `), shown(context, shoe.below_ground), text("; ")]),
							...(shoe === undefined ? [text(" (")] : []),
							text(`${label("base_at")} `),
							shown(context, base.below_ground),
							text(")"),
						),
			finding: asksMost(
				context,
				["surface-shoe-depth"],
				({ comparison, measured }) =>
					measured === undefined || comparison === "at least" || comparison === "more than",
			),
		},
		{
			what: label("cement"),
			here: rich(
				count(evidence.length),
				text(` ${label("sheaths")} `),
				count(evidence.length - verified),
				text(` ${label("planned")}, `),
				count(verified),
				text(` ${label("verified")}. `),
				cementTops(context, label),
				...(cement?.measured?.dimension === "ratio"
					? [text(`. ${label("cement_over_calculated")} `), shown(context, cement.measured, FACTOR)]
					: []),
			),
			finding: cement,
		},
		{
			what: label("separation"),
			here: rich(
				value(context, isolation.protected_water_to_top_perforation),
				text(` ${label("to_perforation")}`),
			),
			finding: asksMost(context, ["separation"]),
		},
		...(stimulation?.fractures === undefined
			? []
			: [
					{
						what: label("fracture_separation"),
						here: rich(
							value(context, stimulation.fractures.least_below_protected_water),
							text(` ${label("to_fracture")}`),
						),
						finding: asksMost(context, ["fracture-separation"]),
					},
				]),
	];
};

/** `Surface to surface, planned; production at 5,400 ft MD, planned.` */
const cementTops = (context: PaperContext, label: Label): readonly Inline[] =>
	context.well.strings
		.filter(({ id }) => id !== "conductor" && context.results.cement[id] !== undefined)
		.flatMap(({ id }, i): readonly Inline[] => {
			const cement = context.results.cement[id];
			if (cement === undefined) return [];
			const name = named(context, id);
			const basis = context.words.label(`phrases.top_${cement.top_basis}`);
			const lead = text(`${i === 0 ? "" : "; "}${i === 0 ? name : name.toLowerCase()} `);
			return cement.to_surface
				? [lead, text(`${label("to_surface")} (${basis})`)]
				: [lead, shown(context, cement.top.md), text(` MD (${basis})`)];
		});

const FACTOR = { decimals: 2 } as const;

const strings = (context: PaperContext, label: Label): readonly Answer[] =>
	context.well.strings.flatMap(({ id }): readonly Answer[] => {
		const [load] = nearestToFactor(context.results.casing[id]?.loads ?? [], (each) => each);
		if (load?.least_factor === undefined) return [];
		const { words } = context;
		const test = context.well.strings.find((string) => string.id === id)?.pressureTest;
		return [
			{
				what: label("factor").replace("{string}", named(context, id).toLowerCase()),
				here: rich(
					shown(context, load.least_factor, FACTOR),
					text(
						` ${words.label(`load_kinds.${load.kind}`)}, ${words.label(`situations.${load.situation}`).toLowerCase()}`,
					),
					...(test?.pressure === undefined
						? []
						: [
								text(`. ${label("tested")} `),
								shown(context, test.actual?.pressure ?? test.pressure),
								...(test.hold === undefined
									? []
									: [text(", "), shown(context, test.actual?.hold ?? test.hold)]),
							]),
				),
				limit: rich(text("≥ "), shown(context, load.required, factorStyle(load.required.value))),
				// Of the two numbers beside it, as in every other row.
				margin: shown(
					context,
					marginBetween(load.required.dimension, load.least_factor, load.required),
					FACTOR,
				),
			},
		];
	});

const factorStyle = (factor: number): { readonly decimals: number } => ({
	decimals: Math.abs(factor * 100 - Math.round(factor * 100)) < 1e-9 ? 2 : 3,
});

const pressures = (context: PaperContext, label: Label): readonly Answer[] => {
	const totals = context.results.stimulation;
	const limits = context.well.stimulation?.limits;
	if (totals === undefined) return [];
	const annuli = context.well.stimulation?.annuli ?? [];
	const highest = totals.as_pumped?.highest_pressure;
	return [
		{
			what: label("pressure"),
			here: rich(
				value(context, limits?.maximumTreatingPressure),
				...(limits?.maximumTreatingPressure === undefined ? [] : [text(` ${label("maximum")}; `)]),
				...(totals.expected_treating_pressure === undefined
					? []
					: [
							shown(context, totals.expected_treating_pressure, {
								decimals: 0,
							}),
							text(` ${label("expected")}; `),
						]),
				...(highest === undefined ? [] : [shown(context, highest), text(` ${label("highest_recorded")}; `)]),
				...(limits?.reliefValve === undefined
					? []
					: [shown(context, limits.reliefValve), text(` ${label("relief")}`)]),
				...annuli.flatMap(({ between, stopAbove }, i): readonly Inline[] =>
					stopAbove === undefined
						? []
						: [
								text(
									`${i === 0 ? `. ${label("annulus_stop")} ` : "; "}${between.map((id) => named(context, id).toLowerCase()).join(" × ")} `,
								),
								shown(context, stopAbove),
							],
				),
			),
			limit:
				totals.limiting === undefined
					? { kind: "none" }
					: rich(
							text("≤ "),
							shown(context, totals.limiting.allowed, { nearest: 10 }),
							text(` (${asGiven(context, totals.limiting.element) ?? ""})`),
						),
			finding: asksMost(context, ["casing-pressure-test"], ({ governing }) => governing === true),
		},
		{
			what: label("treatment"),
			here: rich(
				shown(context, totals.stage_count),
				text(
					` ${context.words.label(totals.stage_count.value === 1 ? "phrases.stage" : "phrases.stages")}: `,
				),
				shown(context, totals.water_volume, { decimals: 0 }),
				text(` ${label("of_water")}, `),
				shown(context, totals.proppant_mass),
				text(` ${label("of_proppant")}, ${asGiven(context, context.well.stimulation?.baseFluid.kind) ?? ""}`),
			),
			limit: { kind: "none" },
			margin: { kind: "none" },
		},
	];
};

const wells = (context: PaperContext, label: Label): readonly Answer[] => {
	const { site } = context.results;
	const offset = nearestOffsetWell(context.results);
	const waterWell = site.neighbors
		.filter(({ id, from_path }) => isWaterWell(context, id) && from_path !== undefined)
		.toSorted((a, b) => (a.from_path?.value ?? 0) - (b.from_path?.value ?? 0))[0];
	const unplaced = context.well.offsetWells.length > 0 && offset === undefined;
	return [
		{
			what: label("nearest_well"),
			here:
				offset === undefined
					? textCell(label(unplaced ? "wells_not_placed" : "no_well_listed"))
					: rich(
							text(`${offset.name}: `),
							value(context, offset.in_space),
							text(` ${label("hole_to_hole")}`),
							...(offset.separation_factor === undefined
								? []
								: [text(`, ${label("separation_factor")} `), shown(context, offset.separation_factor)]),
						),
			finding: asksMost(context, ["separation-factor"]),
		},
		...(waterWell === undefined
			? []
			: [
					{
						what: label("nearest_water_well"),
						here: rich(
							text(`${nameOf(context, waterWell.id)}: `),
							value(context, waterWell.from_path),
							text(` ${label("from_path")}`),
						),
						limit: { kind: "none" as const },
						margin: { kind: "none" as const },
					},
				]),
	];
};

const isWaterWell = (context: PaperContext, id: string): boolean =>
	context.well.neighbors.some((neighbor) => neighbor.id === id && neighbor.kind === "water well");
const nameOf = (context: PaperContext, id: string): string =>
	context.well.neighbors.find((neighbor) => neighbor.id === id)?.name ?? id;

/** The name of what a finding was made on, as the paper's reader says it. */
export const subjectWords = (context: PaperContext, { subject }: Finding): string =>
	typeof subject === "string" ? named(context, subject) : tellSaid(subject, readerOf(context));
