import type {
	CementResults,
	PlacementResults,
	SecondStageResults,
	TightestMargin,
} from "../../calc/results.ts";
import type { Block, Cell, Column, Row } from "../../document/blocks.ts";
import type { CasingString } from "../../well/well.ts";
import { cell, type PaperContext, shown, textCell } from "../context.ts";
import { gasFlowTable } from "./gas-flow.ts";
import { mudRemovalTable, standoffProfile } from "./mud-removal.ts";
import { named, quantityColumn, row, table, textColumn, titled } from "./part.ts";
import { returnsTable } from "./returns-table.ts";

const TENTH = { decimals: 1 } as const;
const WHOLE = { decimals: 0 } as const;
const HOURS = { unit: "hr", decimals: 0 } as const;

/** One pumping of cement: a string's, or one of its two stages. What is compared stands side by side, a column a job. */
interface Job {
	readonly id: string;
	readonly name: string;
	readonly string: CasingString;
	readonly cement: CementResults;
	readonly placement: PlacementResults | undefined;
	/** Of a second stage, what holds at its tool; what holds of the whole job is told with the first. */
	readonly second?: SecondStageResults;
}

const jobsOf = (context: PaperContext): readonly Job[] =>
	context.well.strings.flatMap((string): readonly Job[] => {
		const cement = context.results.cement[string.id];
		if (string.cement === undefined || cement === undefined) return [];
		const { placement, second_stage: second } = cement;
		const name = named(context, string.id);
		if (second === undefined) return [{ id: string.id, name, string, cement, placement }];
		const stage = (key: string) => `${name}, ${context.words.label(`phrases.${key}`)}`;
		return [
			{ id: string.id, name: stage("first_stage"), string, cement, placement },
			{
				id: `${string.id}.second`,
				name: stage("second_stage"),
				string,
				cement,
				placement: second.placement,
				second,
			},
		];
	});

/** The jobs from the first spacer to the plug: what is pumped, what it presses, how it sets, how well it is centered. */
export const cementPlacement = (context: PaperContext): Block[] => {
	const jobs = jobsOf(context);
	return [
		...pumpSchedule(context, jobs),
		...jobFacts(context, jobs),
		...contactTable(context, jobs),
		...thickeningTable(context, jobs),
		...gasFlowTable(context),
		...standoffTable(context, jobs),
		...standoffProfile(context),
		...mudRemovalTable(context),
		...componentsTable(context, jobs),
		...furtherTable(context, jobs),
		...returnsTable(context),
	];
};

/** Rows of each string under its name. */
const grouped = (
	jobs: readonly Job[],
	column: string,
	rowsOf: (job: Job) => readonly Row[],
): readonly Row[] =>
	jobs.flatMap((job) => {
		const rows = rowsOf(job);
		return rows.length === 0 ? [] : [row({ [column]: textCell(job.name) }, "group"), ...rows];
	});

/** Jobs without the second stages, whose slurries and pipe are told of with the first. */
const wholes = (context: PaperContext, jobs: readonly Job[]): readonly Job[] =>
	jobs
		.filter(({ second }) => second === undefined)
		.map((job) => ({ ...job, name: named(context, job.string.id) }));

const fluidName = (context: PaperContext, id: string): string =>
	id === "spacer" || id === "displacement" || id === "last displacement"
		? context.words.label(`pumped_fluids.${id.replace(" ", "_")}`)
		: named(context, id);

const pumpSchedule = (context: PaperContext, jobs: readonly Job[]): Block[] =>
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
		grouped(jobs, "pumped_fluid", ({ placement }) =>
			(placement?.schedule ?? []).map((fluid) =>
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
		),
		{ dense: true },
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

/** A fact of a job; nothing where the job has none. */
type Fact = readonly [label: string, of: (job: Job) => Cell];

const NONE: Cell = { kind: "none" };

const factsOf = (context: PaperContext): readonly Fact[] => {
	const placed =
		(of: (placement: PlacementResults) => Cell) =>
		({ placement }: Job): Cell =>
			placement === undefined ? NONE : of(placement);
	const atTool =
		(of: (stage: SecondStageResults) => Cell) =>
		({ second }: Job): Cell =>
			second === undefined ? NONE : of(second);
	const set =
		(of: (setting: NonNullable<CementResults["setting"]>) => Cell) =>
		({ cement: { setting }, second }: Job): Cell =>
			setting === undefined || second !== undefined ? NONE : of(setting);
	return [
		["stage_tool", atTool(({ tool }) => cell(context, tool.md))],
		["tool_displacement", atTool(({ displacement_volume }) => cell(context, displacement_volume))],
		["tool_outside", atTool((stage) => cell(context, stage.annulus_hydrostatic_at_tool))],
		["tool_inside", atTool((stage) => cell(context, stage.inside_hydrostatic_at_tool))],
		["tool_lift", atTool(({ final_lift }) => cell(context, final_lift))],
		["before_second_stage", atTool(() => textCell(context.words.label("phrases.before_second_stage")))],
		[
			"job_pressures",
			placed(({ with_friction }) =>
				textCell(context.words.label(`phrases.${with_friction ? "with_friction" : "at_rest_only"}`)),
			),
		],
		["tightest_fracture", placed(({ fracture }) => marginCell(context, fracture))],
		["tightest_pore", placed(({ pore }) => marginCell(context, pore))],
		[
			"cement_at_shoe",
			({ placement, second }) => (second === undefined ? cell(context, placement?.cement_at_shoe) : NONE),
		],
		[
			"cement_at_tool",
			({ placement, second }) => (second === undefined ? NONE : cell(context, placement?.cement_at_shoe)),
		],
		["free_fall_from", placed(({ free_fall }) => cell(context, free_fall?.from))],
		["most_empty", placed(({ free_fall }) => cell(context, free_fall?.most_empty))],
		["greatest_pump", placed((found) => cell(context, found.greatest_pump_pressure, WHOLE))],
		["final_circulating", placed((found) => cell(context, found.final_circulating_pressure, WHOLE))],
		["bump", placed((found) => cell(context, found.bump_pressure, WHOLE))],
		["bump_limit", placed((found) => bumpCell(context, found))],
		["least_net_force", placed((found) => cell(context, found.least_net_force?.force, { nearest: 100 }))],
		["returns_at_measure", placed((found) => cell(context, found.returns_at_measure, WHOLE))],
		["fall_back", ({ cement, second }) => (second === undefined ? cell(context, cement.fall_back) : NONE)],
		[
			"strength_wanted",
			set((found) => (found.strength_reached ? cell(context, found.strength_wanted) : NONE)),
		],
		["strength_reached", set(({ strength_reached }) => cell(context, strength_reached, HOURS))],
		["strength_at_drill_out", set((found) => cell(context, found.strength_at_drill_out, WHOLE))],
		["free_from", set(({ free_from }) => cell(context, free_from, HOURS))],
		[
			"temperature_at_shoe",
			set((found) => (found.strength_reached ? cell(context, found.temperature_at_shoe, WHOLE) : NONE)),
		],
	];
};

/** Pressures during the jobs and how the cement sets: a fact a row, a job a column. */
const jobFacts = (context: PaperContext, jobs: readonly Job[]): Block[] =>
	table(
		context,
		"placement",
		[
			textColumn(context, "fact", { width: 1.7, rowHead: true }),
			...jobs.map(({ id, name }): Column => ({ id, head: name, kind: "text", width: 1.3 })),
		],
		factsOf(context).flatMap(([label, of]) => {
			const cells = jobs.map((job) => [job.id, of(job)] as const);
			return cells.every(([, found]) => found.kind === "none")
				? []
				: [row({ fact: textCell(context.words.label(`facts.${label}`)), ...Object.fromEntries(cells) })];
		}),
		{ dense: true },
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

/** Where a limit is held against it, a whole minute may read as met: 9.8 under 10. */
const TENTHS = { decimals: 1 } as const;

const contactTable = (context: PaperContext, jobs: readonly Job[]): Block[] =>
	table(
		context,
		"contact",
		[
			textColumn(context, "string", { width: 1.4, rowHead: true }),
			textColumn(context, "zone", { width: 2 }),
			quantityColumn(context, "zone_base_md", "measured-depth"),
			quantityColumn(context, "spacer_time", "duration", { style: TENTHS }),
			quantityColumn(context, "cement_time", "duration", { style: TENTHS }),
		],
		jobs.flatMap(({ name, placement }) =>
			(placement?.contact ?? []).map((zone) =>
				row({
					string: textCell(name),
					zone: textCell(zone.name),
					zone_base_md: cell(context, zone.at.md),
					spacer_time: cell(context, zone.spacer),
					cement_time: cell(context, zone.cement),
				}),
			),
		),
		{ dense: true },
	);

/** Of each slurry with a thickening time: how long it is pumped, and how long it stays pumpable. */
const thickeningTable = (context: PaperContext, jobs: readonly Job[]): Block[] =>
	table(
		context,
		"thickening",
		[
			textColumn(context, "string", { width: 1.4, rowHead: true }),
			textColumn(context, "slurry", { width: 1 }),
			quantityColumn(context, "in_use", "duration", { style: WHOLE }),
			quantityColumn(context, "thickening_time", "duration", { style: WHOLE }),
		],
		wholes(context, jobs).flatMap(({ name, cement }) =>
			(cement.setting?.thickening ?? []).map(({ id, in_use, thickening_time }) =>
				row({
					string: textCell(name),
					slurry: textCell(named(context, id)),
					in_use: cell(context, in_use, WHOLE),
					thickening_time: cell(context, thickening_time, WHOLE),
				}),
			),
		),
		{ dense: true },
	);

const componentsTable = (context: PaperContext, jobs: readonly Job[]): Block[] =>
	table(
		context,
		"components",
		[
			textColumn(context, "string", { width: 1.4, rowHead: true }),
			textColumn(context, "slurry", { width: 1 }),
			textColumn(context, "material", { width: 2 }),
			quantityColumn(context, "mass", "mass", { style: WHOLE, label: "to_load" }),
		],
		wholes(context, jobs).flatMap(({ name, cement }) =>
			cement.slurries.flatMap((slurry) =>
				slurry.components.map(({ material, mass }) =>
					row({
						string: textCell(name),
						slurry: textCell(named(context, slurry.id)),
						material: textCell(titled(material)),
						mass: cell(context, mass),
					}),
				),
			),
		),
		{ dense: true },
	);

const furtherTable = (context: PaperContext, jobs: readonly Job[]): Block[] =>
	table(
		context,
		"further_jobs",
		[
			textColumn(context, "string", { width: 1.2, rowHead: true }),
			textColumn(context, "job", { width: 1 }),
			textColumn(context, "when", { width: 2.4 }),
			quantityColumn(context, "top_md", "measured-depth"),
			quantityColumn(context, "bottom_md", "measured-depth"),
			quantityColumn(context, "volume", "volume"),
			quantityColumn(context, "sacks", "count"),
			quantityColumn(context, "mix_water", "volume"),
		],
		wholes(context, jobs).flatMap(({ name, cement }) =>
			cement.further.map((job) =>
				row({
					string: textCell(name),
					job: textCell(titled(job.kind)),
					when: textCell(job.when),
					top_md: cell(context, job.top.md),
					bottom_md: cell(context, job.bottom.md),
					volume: cell(context, job.volume),
					sacks: cell(context, job.sacks),
					mix_water: cell(context, job.mix_water),
				}),
			),
		),
		{ dense: true },
	);

const standoffTable = (context: PaperContext, jobs: readonly Job[]): Block[] =>
	table(
		context,
		"standoff",
		[
			textColumn(context, "string", { width: 1.2, rowHead: true }),
			textColumn(context, "place", { width: 2 }),
			quantityColumn(context, "md", "measured-depth"),
			quantityColumn(context, "spacing", "length"),
			quantityColumn(context, "side_load", "force", { style: WHOLE }),
			quantityColumn(context, "at_centralizer", "share", { style: WHOLE }),
			quantityColumn(context, "between_centralizers", "share", { style: TENTHS }),
		],
		wholes(context, jobs).flatMap(({ name, cement }) =>
			cement.standoff.map((place) =>
				row({
					string: textCell(name),
					place: textCell(titled(place.at_name)),
					md: cell(context, place.at.md),
					spacing: cell(context, place.spacing),
					side_load: cell(context, place.side_load),
					at_centralizer: cell(context, place.at_centralizer),
					between_centralizers: cell(context, place.between),
				}),
			),
		),
		{ dense: true, note: "standoff" },
	);
