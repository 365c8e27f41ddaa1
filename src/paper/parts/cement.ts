import type { Block } from "../../document/blocks.ts";
import type { CasingString } from "../../well/well.ts";
import { cell, type PaperContext, textCell } from "../context.ts";
import { placementBlocks } from "./cement-placement.ts";
import { facts, named, type Part, quantityColumn, row, table, textColumn } from "./part.ts";
import { returnsBlocks } from "./returns-table.ts";

/** One heading a cemented string: slurries, volumes, the job's numbers, the record, and what is done if returns stop. */
export const cementJobs: Part = (context) =>
	context.well.strings.flatMap((string) =>
		string.cement === undefined || context.results.cement[string.id] === undefined
			? []
			: [
					{
						kind: "heading" as const,
						level: 2 as const,
						text: named(context, string.id),
						id: `cement-${string.id}`,
					},
					...slurryTable(context, string),
					...volumesTable(context, string),
					...jobFacts(context, string),
					...recordFacts(context, string),
					...placementBlocks(context, string),
					...returnsBlocks(context, string),
				],
	);

const slurryTable = (context: PaperContext, string: CasingString): Block[] =>
	table(
		context,
		"slurries",
		[
			textColumn(context, "slurry", { width: 1, rowHead: true }),
			textColumn(context, "class", { width: 0.6 }),
			quantityColumn(context, "density", "density"),
			quantityColumn(context, "yield", "slurry-yield"),
			quantityColumn(context, "water", "water-requirement"),
			quantityColumn(context, "excess", "share", { style: { decimals: 0 } }),
			quantityColumn(context, "free_fluid", "free-fluid"),
			textColumn(context, "strength", { width: 2.4 }),
		],
		(string.cement?.slurries ?? []).map((slurry) =>
			row({
				slurry: textCell(named(context, slurry.id)),
				class: textCell(slurry.cementClass),
				density: cell(context, slurry.density, { decimals: 1 }),
				yield: cell(context, slurry.yield),
				water: cell(context, slurry.water, { decimals: 1 }),
				excess: cell(context, slurry.excess),
				free_fluid: cell(context, slurry.freeFluid),
				strength:
					slurry.strength.length === 0
						? { kind: "none" }
						: {
								kind: "rich",
								children: slurry.strength.flatMap((point, i) => [
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
							},
			}),
		),
		{ suffix: named(context, string.id) },
	);

const cellInline = (
	context: PaperContext,
	known: Parameters<typeof cell>[1] & object,
	style?: Parameters<typeof cell>[2],
) => {
	const made = cell(context, known, style);
	return made.kind === "quantity" ? made : { kind: "text" as const, text: "" };
};

const volumesTable = (context: PaperContext, string: CasingString): Block[] => {
	const cement = context.results.cement[string.id];
	if (!cement) return [];
	const rows = cement.slurries.map((slurry) =>
		row({
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
	);
	const total = row(
		{
			slurry: textCell(context.words.label("phrases.total")),
			volume: cell(context, cement.slurry_volume),
			sacks: cell(context, cement.sacks),
			mix_water: cell(context, cement.mix_water),
		},
		"total",
	);
	return table(
		context,
		"cement_volumes",
		[
			textColumn(context, "slurry", { width: 1, rowHead: true }),
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
		[...rows, total],
		{ suffix: named(context, string.id) },
	);
};

const jobFacts = (context: PaperContext, string: CasingString): Block[] => {
	const cement = context.results.cement[string.id];
	const job = string.cement;
	if (!cement || !job) return [];
	return facts(context, [
		[
			"cement_top",
			cement.to_surface ? textCell(context.words.label("phrases.surface")) : cell(context, cement.top.md),
		],
		["cement_top_tvd", cement.to_surface ? { kind: "none" } : cell(context, cement.top.tvd)],
		["cement_top_basis", textCell(context.words.label(`phrases.top_${cement.top_basis}`))],
		["cement_top_method", textCell(job.topMethod)],
		["volume_basis", textCell(job.volumeBasis)],
		["annulus_volume", cell(context, cement.annulus_volume)],
		["spacer", cell(context, job.spacer?.volume)],
		["displacement_volume", cell(context, cement.displacement_volume)],
		["annulus_hydrostatic", cell(context, cement.annulus_hydrostatic_at_shoe)],
		["inside_hydrostatic", cell(context, cement.inside_hydrostatic_at_shoe)],
		["final_lift", cell(context, cement.final_lift)],
		["wait_on_cement", cell(context, job.waitOnCement, { unit: "hr", decimals: 0 })],
		["plugs", textCell(job.plugs.join(", "))],
		["floats", textCell(string.floats.join(", "))],
	]);
};

const recordFacts = (context: PaperContext, string: CasingString): Block[] => {
	const record = string.cement?.actual;
	const cement = context.results.cement[string.id];
	if (!record || !cement) return [];
	return facts(
		context,
		[
			["job_date", textCell(record.date)],
			["pumped_over_calculated", cell(context, cement.pumped_over_calculated)],
			["returns_to_surface", cell(context, record.returnsToSurface)],
			["recorded_top", cell(context, record.top?.depth)],
			["recorded_top_method", textCell(record.top?.method)],
			["recorded_lift", cell(context, record.lift)],
			["recorded_bump", cell(context, record.bump)],
			[
				"floats_held",
				record.floatsHeld === undefined
					? { kind: "none" }
					: textCell(context.words.label(record.floatsHeld ? "phrases.yes" : "phrases.no")),
			],
			["evaluation_log", textCell(record.evaluationLog)],
		],
		{ caption: "cement_record" },
	);
};
