import type {
	CementResults,
	PlacementResults,
	SecondStageResults,
	TightestMargin,
} from "../../calc/results.ts";
import type { Block, Cell } from "../../document/blocks.ts";
import type { CasingString } from "../../well/well.ts";
import { cell, type PaperContext, shown, textCell } from "../context.ts";
import { facts, named, quantityColumn, row, table, textColumn, titled } from "./part.ts";

const TENTH = { decimals: 1 } as const;
const WHOLE = { decimals: 0 } as const;
const HOURS = { unit: "hr", decimals: 0 } as const;

/** The job from the first spacer to the plug: what is pumped, what it presses, how long it touches the water zones. */
export const placementBlocks = (context: PaperContext, string: CasingString): Block[] => {
	const cement = context.results.cement[string.id];
	if (cement === undefined) return [];
	const { placement, second_stage } = cement;
	const [first, second] = ["first_stage", "second_stage"].map((stage) =>
		context.words.label(`phrases.${stage}`),
	);
	const name = named(context, string.id);
	return [
		...(placement === undefined
			? []
			: stageBlocks(context, placement, second_stage === undefined ? name : `${name}, ${first}`)),
		...(second_stage === undefined ? [] : secondStageFacts(context, second_stage)),
		...(second_stage?.placement === undefined
			? []
			: stageBlocks(context, second_stage.placement, `${name}, ${second}`, true)),
		...settingFacts(context, cement),
		...thickeningTable(context, cement, name),
		...componentsTable(context, cement, string),
		...furtherTable(context, cement, string),
		...standoffTable(context, cement, string),
	];
};

const stageBlocks = (
	context: PaperContext,
	placement: PlacementResults,
	name: string,
	atTool = false,
): Block[] => [
	...pumpSchedule(context, placement, name),
	...placementFacts(context, placement, atTool),
	...contactTable(context, placement, name),
];

const secondStageFacts = (context: PaperContext, stage: SecondStageResults): Block[] =>
	facts(
		context,
		[
			["stage_tool", cell(context, stage.tool.md)],
			["tool_displacement", cell(context, stage.displacement_volume)],
			["tool_outside", cell(context, stage.annulus_hydrostatic_at_tool)],
			["tool_inside", cell(context, stage.inside_hydrostatic_at_tool)],
			["tool_lift", cell(context, stage.final_lift)],
			["before_second_stage", textCell(context.words.label("phrases.before_second_stage"))],
		],
		{ caption: "second_stage" },
	);

const fluidName = (context: PaperContext, id: string): string =>
	id === "spacer" || id === "displacement" || id === "last displacement"
		? context.words.label(`pumped_fluids.${id.replace(" ", "_")}`)
		: named(context, id);

const pumpSchedule = (context: PaperContext, placement: PlacementResults, name: string): Block[] =>
	table(
		context,
		"pump_schedule",
		[
			textColumn(context, "pumped_fluid", { width: 1.6, rowHead: true }),
			quantityColumn(context, "density", "density", { style: TENTH }),
			quantityColumn(context, "pumped_volume", "volume"),
			quantityColumn(context, "cumulative", "volume"),
			quantityColumn(context, "rate", "flow-rate", { label: "pump_rate" }),
			quantityColumn(context, "time", "duration", { style: WHOLE }),
			quantityColumn(context, "elapsed", "duration", { style: WHOLE }),
		],
		placement.schedule.map((fluid) =>
			row({
				pumped_fluid: textCell(fluidName(context, fluid.id)),
				density: cell(context, fluid.density, TENTH),
				pumped_volume: cell(context, fluid.volume),
				cumulative: cell(context, fluid.cumulative),
				rate: cell(context, fluid.rate),
				time: cell(context, fluid.time),
				elapsed: cell(context, fluid.elapsed),
			}),
		),
		{ suffix: name },
	);

/** `1,200 psi in the Cinder Sand at 900 ft, with the lead going down`. */
const marginCell = (context: PaperContext, found: TightestMargin | undefined): Cell => {
	if (found === undefined) return { kind: "none" };
	const say = (key: string) => ({
		kind: "text" as const,
		text: ` ${context.words.label(`phrases.${key}`)} `,
	});
	return {
		kind: "rich",
		children: [
			shown(context, found.margin, WHOLE),
			{ kind: "text", text: `, ${found.formation},` },
			say("at"),
			shown(context, found.at.md ?? found.at.tvd),
			{
				kind: "text",
				text: `, ${context.words.label("phrases.while_pumping")} ${fluidName(context, found.during).toLowerCase()}`,
			},
		],
	};
};

const placementFacts = (context: PaperContext, placement: PlacementResults, atTool: boolean): Block[] =>
	facts(
		context,
		[
			[
				"job_pressures",
				textCell(
					context.words.label(`phrases.${placement.with_friction ? "with_friction" : "at_rest_only"}`),
				),
			],
			["tightest_fracture", marginCell(context, placement.fracture)],
			["tightest_pore", marginCell(context, placement.pore)],
			[atTool ? "cement_at_tool" : "cement_at_shoe", cell(context, placement.cement_at_shoe)],
			["free_fall_from", cell(context, placement.free_fall?.from)],
			["most_empty", cell(context, placement.free_fall?.most_empty)],
			["greatest_pump", cell(context, placement.greatest_pump_pressure, WHOLE)],
			["final_circulating", cell(context, placement.final_circulating_pressure, WHOLE)],
			["bump", cell(context, placement.bump_pressure, WHOLE)],
			["bump_limit", bumpCell(context, placement)],
			["least_net_force", cell(context, placement.least_net_force?.force, { nearest: 100 })],
			["returns_at_measure", cell(context, placement.returns_at_measure, WHOLE)],
		],
		{ columns: 1, caption: "placement" },
	);

const bumpCell = (context: PaperContext, { bump_limit: limit }: PlacementResults): Cell =>
	limit === undefined
		? { kind: "none" }
		: {
				kind: "rich",
				children: [
					shown(context, limit.allowed, WHOLE),
					{ kind: "text", text: ` (${context.words.label(`bump_limits.${limit.element}`)})` },
				],
			};

const contactTable = (context: PaperContext, { contact }: PlacementResults, name: string): Block[] =>
	table(
		context,
		"contact",
		[
			textColumn(context, "zone", { width: 2, rowHead: true }),
			quantityColumn(context, "zone_base_md", "measured-depth"),
			quantityColumn(context, "spacer_time", "duration", { style: WHOLE }),
			quantityColumn(context, "cement_time", "duration", { style: WHOLE }),
		],
		contact.map((zone) =>
			row({
				zone: textCell(zone.name),
				zone_base_md: cell(context, zone.at.md),
				spacer_time: cell(context, zone.spacer),
				cement_time: cell(context, zone.cement),
			}),
		),
		{ suffix: name },
	);

const settingFacts = (context: PaperContext, { setting, fall_back }: CementResults): Block[] =>
	setting === undefined
		? []
		: facts(
				context,
				[
					["fall_back", cell(context, fall_back)],
					[
						"strength_wanted",
						setting.strength_reached ? cell(context, setting.strength_wanted) : { kind: "none" },
					],
					["strength_reached", cell(context, setting.strength_reached, HOURS)],
					["strength_at_drill_out", cell(context, setting.strength_at_drill_out, WHOLE)],
					["free_from", cell(context, setting.free_from, HOURS)],
					[
						"temperature_at_shoe",
						setting.strength_reached ? cell(context, setting.temperature_at_shoe, WHOLE) : { kind: "none" },
					],
				],
				{ caption: "setting" },
			);

/** Of each slurry with a thickening time: how long it is pumped, and how long it stays pumpable. */
const thickeningTable = (context: PaperContext, { setting }: CementResults, string: string): Block[] =>
	table(
		context,
		"thickening",
		[
			textColumn(context, "slurry", { width: 1, rowHead: true }),
			quantityColumn(context, "in_use", "duration", { style: WHOLE }),
			quantityColumn(context, "thickening_time", "duration", { style: WHOLE }),
		],
		(setting?.thickening ?? []).map(({ id, in_use, thickening_time }) =>
			row({
				slurry: textCell(named(context, id)),
				in_use: cell(context, in_use, WHOLE),
				thickening_time: cell(context, thickening_time, WHOLE),
			}),
		),
		{ suffix: string },
	);

const componentsTable = (context: PaperContext, { slurries }: CementResults, string: CasingString): Block[] =>
	table(
		context,
		"components",
		[
			textColumn(context, "slurry", { width: 1, rowHead: true }),
			textColumn(context, "material", { width: 2 }),
			quantityColumn(context, "mass", "mass", { style: WHOLE, label: "to_load" }),
		],
		slurries.flatMap((slurry) =>
			slurry.components.map(({ material, mass }) =>
				row({
					slurry: textCell(named(context, slurry.id)),
					material: textCell(titled(material)),
					mass: cell(context, mass),
				}),
			),
		),
		{ suffix: named(context, string.id) },
	);

const furtherTable = (context: PaperContext, { further }: CementResults, string: CasingString): Block[] =>
	table(
		context,
		"further_jobs",
		[
			textColumn(context, "job", { width: 1, rowHead: true }),
			textColumn(context, "when", { width: 2.4 }),
			quantityColumn(context, "top_md", "measured-depth"),
			quantityColumn(context, "bottom_md", "measured-depth"),
			quantityColumn(context, "volume", "volume"),
			quantityColumn(context, "sacks", "count"),
			quantityColumn(context, "mix_water", "volume"),
		],
		further.map((job) =>
			row({
				job: textCell(titled(job.kind)),
				when: textCell(job.when),
				top_md: cell(context, job.top.md),
				bottom_md: cell(context, job.bottom.md),
				volume: cell(context, job.volume),
				sacks: cell(context, job.sacks),
				mix_water: cell(context, job.mix_water),
			}),
		),
		{ suffix: named(context, string.id) },
	);

const standoffTable = (context: PaperContext, { standoff }: CementResults, string: CasingString): Block[] =>
	table(
		context,
		"standoff",
		[
			textColumn(context, "place", { width: 2, rowHead: true }),
			quantityColumn(context, "md", "measured-depth"),
			quantityColumn(context, "spacing", "length"),
			quantityColumn(context, "side_load", "force", { style: WHOLE }),
			quantityColumn(context, "at_centralizer", "share", { style: WHOLE }),
			quantityColumn(context, "between_centralizers", "share", { style: WHOLE }),
		],
		standoff.map((place) =>
			row({
				place: textCell(titled(place.at_name)),
				md: cell(context, place.at.md),
				spacing: cell(context, place.spacing),
				side_load: cell(context, place.side_load),
				at_centralizer: cell(context, place.at_centralizer),
				between_centralizers: cell(context, place.between),
			}),
		),
		{ suffix: named(context, string.id), note: "standoff" },
	);
