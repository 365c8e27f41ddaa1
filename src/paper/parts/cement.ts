import type { CementResults } from "../../calc/results.ts";
import type { Block, Cell, Column } from "../../document/blocks.ts";
import type { CasingString, Slurry } from "../../well/well.ts";
import { cell, type PaperContext, shown, textCell } from "../context.ts";
import { asGiven, named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";
import { contingencyTable } from "./returns-table.ts";

/** Cemented strings with what was worked of them, from the outside in. */
const cemented = (context: PaperContext): readonly (readonly [CasingString, CementResults])[] =>
	context.well.strings.flatMap((string) => {
		const cement = context.results.cement[string.id];
		return string.cement === undefined || cement === undefined ? [] : [[string, cement] as const];
	});

/** What each plan says of returns that stop, with the rules that speak of it. */
export const cementContingency: Part = (context) => contingencyTable(context, context.well.strings);

export const cementSlurries: Part = (context) =>
	table(
		context,
		"slurries",
		[
			textColumn(context, "string", { width: 1.2, rowHead: true }),
			textColumn(context, "slurry", { width: 0.8 }),
			textColumn(context, "class", { width: 0.6 }),
			quantityColumn(context, "density", "density"),
			quantityColumn(context, "yield", "slurry-yield"),
			quantityColumn(context, "water", "water-requirement"),
			quantityColumn(context, "excess", "share", { style: { decimals: 0 } }),
			quantityColumn(context, "free_fluid", "free-fluid"),
			textColumn(context, "strength", { width: 2.4 }),
		],
		cemented(context).flatMap(([string]) =>
			(string.cement?.slurries ?? []).map((slurry) =>
				row({
					string: textCell(named(context, string.id)),
					slurry: textCell(named(context, slurry.id)),
					class: textCell(slurry.cementClass),
					density: cell(context, slurry.density, { decimals: 1 }),
					yield: cell(context, slurry.yield),
					water: cell(context, slurry.water, { decimals: 1 }),
					excess: cell(context, slurry.excess),
					free_fluid: cell(context, slurry.freeFluid),
					strength: strengthCell(context, slurry),
				}),
			),
		),
		{ dense: true },
	);

const strengthCell = (context: PaperContext, { strength }: Slurry): Cell =>
	strength.length === 0
		? { kind: "none" }
		: {
				kind: "rich",
				children: strength.flatMap((point, i) => [
					...(i > 0 ? [{ kind: "text" as const, text: "; " }] : []),
					cellInline(context, point.value),
					{ kind: "text" as const, text: ` ${context.words.label("phrases.in")} ` },
					cellInline(context, point.after, { unit: "hr", decimals: 0 }),
					...(point.at
						? [
								{ kind: "text" as const, text: ` ${context.words.label("phrases.at")} ` },
								cellInline(context, point.at),
							]
						: []),
				]),
			};

const cellInline = (
	context: PaperContext,
	known: Parameters<typeof cell>[1] & object,
	style?: Parameters<typeof cell>[2],
) => {
	const made = cell(context, known, style);
	return made.kind === "quantity" ? made : { kind: "text" as const, text: "" };
};

/** Volumes of each slurry, with a total a string where there is more than one. */
export const cementVolumes: Part = (context) =>
	table(
		context,
		"cement_volumes",
		[
			textColumn(context, "string", { width: 1.2, rowHead: true }),
			textColumn(context, "slurry", { width: 0.8 }),
			quantityColumn(context, "top_md", "measured-depth"),
			quantityColumn(context, "bottom_md", "measured-depth"),
			quantityColumn(context, "open_hole", "volume"),
			quantityColumn(context, "cased", "volume"),
			quantityColumn(context, "shoe_track", "volume"),
			quantityColumn(context, "rathole", "volume"),
			quantityColumn(context, "volume", "volume"),
			quantityColumn(context, "sacks", "count"),
			quantityColumn(context, "mix_water", "volume"),
		],
		cemented(context).flatMap(([string, cement]) => [
			...cement.slurries.map((slurry) =>
				row({
					string: textCell(named(context, string.id)),
					slurry: textCell(named(context, slurry.id)),
					top_md: cell(context, slurry.top.md),
					bottom_md: cell(context, slurry.bottom.md),
					open_hole: cell(context, slurry.open_hole_volume),
					cased: cell(context, slurry.cased_volume),
					shoe_track: cell(context, slurry.shoe_track_volume),
					rathole: cell(context, slurry.rathole_volume),
					volume: cell(context, slurry.volume),
					sacks: cell(context, slurry.sacks),
					mix_water: cell(context, slurry.mix_water),
				}),
			),
			...(cement.slurries.length < 2
				? []
				: [
						row(
							{
								string: textCell(named(context, string.id)),
								slurry: textCell(context.words.label("phrases.total")),
								volume: cell(context, cement.slurry_volume),
								sacks: cell(context, cement.sacks),
								mix_water: cell(context, cement.mix_water),
							},
							"total",
						),
					]),
		]),
		{ dense: true },
	);

type Cemented = ReturnType<typeof cemented>[number];

/** One fact a row, one string a column: what is compared stands side by side. Rows that no string fills are left out. */
const sideBySide = (
	context: PaperContext,
	caption: string,
	jobs: readonly Cemented[],
	rows: readonly (readonly [fact: string, of: (...job: Cemented) => Cell])[],
): Block[] =>
	table(
		context,
		caption,
		[
			textColumn(context, "fact", { width: 1.7, rowHead: true }),
			...jobs.map(([{ id }]): Column => ({ id, head: named(context, id), kind: "text", width: 1.3 })),
		],
		rows.flatMap(([fact, of]) => {
			const cells = jobs.map((job) => [job[0].id, of(...job)] as const);
			return cells.every(([, found]) => found.kind === "none")
				? []
				: [row({ fact: textCell(context.words.label(`facts.${fact}`)), ...Object.fromEntries(cells) })];
		}),
		{ dense: true },
	);

/** From where to where, of cement that is not one column. */
const columnsCell = (context: PaperContext, { columns }: CementResults): Cell =>
	columns.length < 2
		? { kind: "none" }
		: {
				kind: "rich",
				children: columns.flatMap(({ top, bottom }, i) => [
					...(i > 0 ? [{ kind: "text" as const, text: "; " }] : []),
					shown(context, top.md),
					{ kind: "text" as const, text: ` ${context.words.label("phrases.to")} ` },
					shown(context, bottom.md),
				]),
			};

/** A row a string: where its cement ends and how that is known, what is pumped ahead, and how long it waits. */
export const cementSummary: Part = (context) =>
	table(
		context,
		"cement_summary",
		[
			textColumn(context, "string", { width: 1.2, rowHead: true }),
			textColumn(context, "toc", { width: 1.2 }),
			textColumn(context, "toc_status", { width: 1.2 }),
			textColumn(context, "toc_verified_by", { width: 1.6 }),
			textColumn(context, "volume_basis", { width: 1.5 }),
			quantityColumn(context, "annulus_volume", "volume"),
			quantityColumn(context, "spacer", "volume"),
			quantityColumn(context, "slurry_calculated", "volume"),
			quantityColumn(context, "slurry_pumped", "volume"),
			quantityColumn(context, "sacks", "count"),
			quantityColumn(context, "wait_on_cement", "duration", { style: { unit: "hr", decimals: 0 } }),
		],
		cemented(context).map(([string, cement]) =>
			row({
				string: textCell(named(context, string.id)),
				toc: cement.to_surface
					? textCell(context.words.label("phrases.surface"))
					: cell(context, cement.top.md),
				toc_status: textCell(context.words.label(`phrases.top_${cement.top_basis}`)),
				toc_verified_by: textCell(
					asGiven(context, string.cement?.actual?.top?.method ?? string.cement?.topMethod),
				),
				volume_basis: textCell(asGiven(context, string.cement?.volumeBasis)),
				annulus_volume: cell(context, cement.annulus_volume),
				spacer: cell(context, string.cement?.spacer?.volume),
				slurry_calculated: cell(context, cement.slurry_volume),
				slurry_pumped: cell(context, cement.pumped_volume),
				sacks: cell(context, cement.sacks),
				wait_on_cement: cell(context, string.cement?.waitOnCement, { unit: "hr", decimals: 0 }),
			}),
		),
		{ dense: true },
	);

/** What the summary of the attachment has no column for. */
export const cementFacts: Part = (context) =>
	sideBySide(context, "cement_facts", cemented(context), [
		["cement_columns", (_, cement) => columnsCell(context, cement)],
		["cement_top_tvd", (_, { to_surface, top }) => (to_surface ? { kind: "none" } : cell(context, top.tvd))],
		["displacement_volume", (_, { displacement_volume }) => cell(context, displacement_volume)],
		["inside_hydrostatic", (_, { inside_hydrostatic_at_shoe: inside }) => cell(context, inside)],
		["plugs", ({ cement }) => textCell(cement?.plugs.join(", "))],
		["floats", ({ floats }) => textCell(floats.map((each) => asGiven(context, each)).join(", "))],
	]);

/** Each slurry as pumped, beside what was calculated and designed. */
const slurriesAgainstPlan: Part = (context) =>
	table(
		context,
		"slurries_against_plan",
		[
			textColumn(context, "string", { width: 1.2, rowHead: true }),
			textColumn(context, "slurry", { width: 0.8 }),
			quantityColumn(context, "volume_calculated", "volume"),
			quantityColumn(context, "volume_pumped", "volume"),
			quantityColumn(context, "of_calculated", "share", { style: { decimals: 0 } }),
			quantityColumn(context, "density_designed", "density", { style: { decimals: 1 } }),
			quantityColumn(context, "density_weighed", "density", { style: { decimals: 1 } }),
			quantityColumn(context, "planned_top", "measured-depth"),
			quantityColumn(context, "top_by_volume", "measured-depth"),
			quantityColumn(context, "highest_by_volume", "measured-depth"),
			quantityColumn(context, "lowest_by_volume", "measured-depth"),
		],
		cemented(context).flatMap(([string, cement]) =>
			(cement.record?.slurries ?? []).flatMap((record) => {
				const slurry = string.cement?.slurries.find(({ id }) => id === record.id);
				const worked = cement.slurries.find(({ id }) => id === record.id);
				return record.volume === undefined && record.density === undefined
					? []
					: [
							row({
								string: textCell(named(context, string.id)),
								slurry: textCell(named(context, record.id)),
								volume_calculated: cell(context, worked?.volume),
								volume_pumped: cell(context, record.volume),
								of_calculated: cell(context, record.of_plan),
								density_designed: cell(context, slurry?.density),
								density_weighed: cell(context, record.density),
								planned_top: cell(context, worked?.top.md),
								top_by_volume: cell(context, record.top_by_volume?.md),
								highest_by_volume: cell(context, record.highest_by_volume?.md),
								lowest_by_volume: cell(context, record.lowest_by_volume?.md),
							}),
						];
			}),
		),
		{ dense: true, note: "slurries_against_plan" },
	);

export const cementRecords: Part = (context) => [...jobRecords(context), ...slurriesAgainstPlan(context)];

const jobRecords: Part = (context) => {
	const record = (string: CasingString) => string.cement?.actual;
	return sideBySide(
		context,
		"cement_record",
		cemented(context).filter(([string]) => record(string) !== undefined),
		[
			["job_date", (string) => textCell(record(string)?.date)],
			["pumped_over_calculated", (_, { pumped_over_calculated: share }) => cell(context, share)],
			["returns_to_surface", (string) => cell(context, record(string)?.returnsToSurface)],
			[
				"returns_while_pumping",
				(string) => {
					const seen = record(string)?.returnsWhilePumping;
					return textCell(seen && context.words.label(`returns_seen.${seen}`));
				},
			],
			["recorded_top", (string) => cell(context, record(string)?.top?.depth)],
			["recorded_top_method", (string) => textCell(asGiven(context, record(string)?.top?.method))],
			["calculated_lift", (string, { final_lift: lift }) => cell(context, record(string)?.lift && lift)],
			["recorded_lift", (string) => cell(context, record(string)?.lift)],
			["recorded_bump", (string) => cell(context, record(string)?.bump)],
			[
				"floats_held",
				(string) => {
					const held = record(string)?.floatsHeld;
					return held === undefined
						? { kind: "none" }
						: textCell(context.words.label(held ? "phrases.yes" : "phrases.no"));
				},
			],
			["evaluation_log", (string) => textCell(record(string)?.evaluationLog)],
			["remedial", (string) => textCell(record(string)?.remedial)],
		],
	);
};
