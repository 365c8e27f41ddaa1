import type { CementResults, PlacementResults } from "../../calc/results.ts";
import type { Known } from "../../cite/known.ts";
import type { Cell } from "../../document/blocks.ts";
import type { Inline, QuantityStyle, QuantityText } from "../../document/inline.ts";
import type { AnnulusLimit, CasingString } from "../../well/well.ts";
import { type PaperContext, shown, textCell } from "../context.ts";
import { asGiven, named, titled } from "../parts/part.ts";

/** One line of a numbers sheet: what it is of, where there are several, and the value. */
export interface SheetLine {
	readonly of?: string;
	readonly cell: Cell;
	/** Where a distance is measured from and who says so; under a large figure, behind a small one. */
	readonly note?: string;
}

/** Finds a sheet's value; no lines means that the definition does not have it. */
export type SheetValue = (context: PaperContext, string: CasingString | undefined) => readonly SheetLine[];

const one = (context: PaperContext, known: Known | undefined, style?: QuantityStyle): readonly SheetLine[] =>
	known === undefined ? [] : [{ cell: shown(context, known, style) }];
const words = (value: string | undefined): readonly SheetLine[] => {
	const cell = textCell(value);
	return cell.kind === "none" ? [] : [{ cell }];
};
const measured = (
	context: PaperContext,
	zone:
		| { readonly distance: Known; readonly from?: string | undefined; readonly source?: string | undefined }
		| undefined,
): readonly SheetLine[] => {
	if (zone === undefined) return [];
	const from = zone.from === undefined ? "" : ` ${context.words.label("phrases.from")} ${zone.from}`;
	const source = zone.source === undefined ? "" : ` (${zone.source})`;
	return [{ cell: shown(context, zone.distance), note: `${from}${source}` }];
};

const casing = (context: PaperContext, string: CasingString | undefined) =>
	string === undefined ? undefined : context.results.casing[string.id];
const cement = (context: PaperContext, string: CasingString | undefined) =>
	string === undefined ? undefined : context.results.cement[string.id];
const limits = (context: PaperContext) => context.well.stimulation?.limits;
const WHOLE = { decimals: 0 } as const;
const TENTH = { decimals: 1 } as const;
const HOURS = { unit: "hr", decimals: 0 } as const;

/** Who is told, and within how many hours, where hours are set. */
const tellWithin = (context: PaperContext, annulus: AnnulusLimit) =>
	annulus.notifyWithin === undefined
		? []
		: [
				{
					kind: "text" as const,
					text: `; ${context.words.label("crew.tell")} ${annulus.tell ?? context.well.agency?.name ?? context.words.label("phrases.agency")} ${context.words.label("crew.within")} `,
				},
				shown(context, annulus.notifyWithin, HOURS),
			];

const rich = (...parts: readonly (string | QuantityText)[]): Cell => ({
	kind: "rich",
	children: parts.map((part) => (typeof part === "string" ? { kind: "text" as const, text: part } : part)),
});

/** How far a slurry's density may be off, either way. */
const window = (context: PaperContext, off: Known | undefined): readonly Inline[] =>
	off === undefined ? [] : [{ kind: "text", text: " ± " }, shown(context, off, TENTH)];

/** Lines of one stage of a job, named by it. */
const stage = (
	context: PaperContext,
	which: "first_stage" | "second_stage",
	lines: readonly SheetLine[],
): readonly SheetLine[] =>
	lines.map((line) => ({ ...line, of: titled(context.words.label(`phrases.${which}`)) }));

/** At what the plug is bumped, and what is never gone over; not set where friction could not be worked. */
const bumped = (c: PaperContext, placement: PlacementResults | undefined): readonly SheetLine[] => {
	const limit = placement?.bump_limit;
	const bump = placement?.bump_pressure;
	if (limit === undefined || bump === undefined) return [];
	return [
		{
			cell: rich(
				shown(c, bump, WHOLE),
				"; ",
				`${c.words.label("crew.never_over")} `,
				shown(c, limit.allowed, { nearest: 10 }),
				` (${c.words.label(`bump_limits.${limit.element}`)})`,
			),
		},
	];
};

/** Every value that a file of `seeds/jobs/` may name. */
export const SHEET_VALUES: Readonly<Record<string, SheetValue>> = {
	person_in_charge: (c) => words(c.well.safety?.person_in_charge),
	site_address: (c) => words(c.well.safety?.emergency?.site_address),
	exclusion: (c) => measured(c, c.well.safety?.exclusion),
	ignition: (c) => measured(c, c.well.safety?.ignition),
	radio_silence: (c) => measured(c, c.well.safety?.radio_silence),
	lightning: (c) => measured(c, c.well.safety?.lightning),
	wind_limit_crane: (c) => one(c, c.well.safety?.wind_limit?.crane),
	silica_area: (c) => words(c.well.safety?.silica?.regulated_area),
	muster_points: (c) =>
		(c.well.safety?.muster_points ?? []).map((point) => ({ of: titled(point.id), cell: textCell(point.at) })),
	gas_alarms: (c) =>
		(c.well.safety?.gas_alarms ?? []).map((alarm) => ({
			of: asGiven(c, alarm.gas) ?? alarm.gas,
			cell: {
				kind: "rich",
				children: [
					shown(c, alarm.low),
					...(alarm.high === undefined
						? []
						: [{ kind: "text" as const, text: ` ${c.words.label("crew.then")} ` }, shown(c, alarm.high)]),
				],
			},
			note: ` (${alarm.source})`,
		})),
	hydrogen_sulfide: (c) => {
		const gas = c.well.safety?.hydrogen_sulfide;
		if (gas === undefined) return [];
		return words(c.words.label(gas.expected ? "crew.expected" : "crew.not_expected"));
	},
	preventers: (c) =>
		(c.well.wellControl?.preventers ?? []).flatMap(({ over, test, working_pressure }): SheetLine[] =>
			test?.high === undefined
				? []
				: [
						{
							of: named(c, over),
							cell: {
								kind: "rich",
								children: [
									...(test.low === undefined
										? []
										: [
												shown(c, test.low),
												{ kind: "text" as const, text: ` ${c.words.label("crew.then")} ` },
											]),
									shown(c, test.high),
									{ kind: "text", text: `; ${c.words.label("crew.rated")} ` },
									shown(c, working_pressure),
								],
							},
						},
					],
		),

	string_shoe_md: (c, s) => one(c, casing(c, s)?.shoe.md),
	string_shoe_tvd: (c, s) => one(c, casing(c, s)?.shoe.tvd),
	string_length: (c, s) => one(c, casing(c, s)?.length),
	string_joints: (c, s) => one(c, casing(c, s)?.joints),
	string_weight_in_air: (c, s) => one(c, casing(c, s)?.weight_in_air, { nearest: 1000 }),
	string_drift: (c, s) =>
		(s?.sections ?? []).map((section) => ({ of: `${section.number}`, cell: shown(c, section.drift) })),
	string_body_yield: (c, s) =>
		(casing(c, s)?.sections ?? []).map((section) => ({
			...(s !== undefined && s.sections.length > 1 ? { of: `${section.number}` } : {}),
			cell: shown(c, section.body_yield, { nearest: 1000 }),
		})),
	string_floats: (_, s) => words(s?.floats.join(", ")),
	string_internal_yield: (c, s) => one(c, casing(c, s)?.least_internal_yield, { nearest: 10 }),
	string_test_pressure: (c, s) => one(c, s?.pressureTest?.pressure),
	string_test_hold: (c, s) => one(c, s?.pressureTest?.hold),
	string_test_fall: (c, s) => one(c, s?.pressureTest?.allowedFall, WHOLE),
	hole_diameter: (c, s) => one(c, s?.hole.diameter, { pipeSize: true }),
	mud_density: (c, s) => one(c, s?.hole.fluid?.density),

	cement_slurries: (c, s) =>
		(cement(c, s)?.slurries ?? []).map((slurry) => {
			const mixed = s?.cement?.slurries.find((entry) => entry.id === slurry.id);
			return {
				of: named(c, slurry.id),
				cell: {
					kind: "rich",
					children: [
						shown(c, slurry.volume, TENTH),
						{ kind: "text", text: ", " },
						shown(c, slurry.sacks),
						{ kind: "text", text: ` ${c.words.label("crew.sacks")}` },
						...(mixed === undefined
							? []
							: [
									{ kind: "text" as const, text: ` ${c.words.label("phrases.at")} ` },
									shown(c, mixed.density, TENTH),
									...window(c, s?.cement?.densityWindow),
								]),
					],
				},
			};
		}),
	cement_materials: (c, s) => {
		const job = cement(c, s);
		const spacer = s?.cement?.spacer?.volume;
		if (job === undefined) return [];
		return [
			{
				cell: rich(
					shown(c, job.sacks),
					` ${c.words.label("crew.sacks")}, `,
					shown(c, job.mix_water, TENTH),
					...(spacer === undefined ? [] : [", ", shown(c, spacer)]),
				),
			},
		];
	},
	cement_displacement: (c, s) => {
		const job = cement(c, s);
		const second = job?.second_stage;
		if (second === undefined) return one(c, job?.displacement_volume, TENTH);
		return [
			...stage(c, "first_stage", one(c, job?.displacement_volume, TENTH)),
			...stage(c, "second_stage", [
				{
					cell: shown(c, second.displacement_volume, TENTH),
					note: ` ${c.words.label("crew.to_the_stage_tool")}`,
				},
			]),
		];
	},
	cement_displacement_fluid: (c, s) => {
		const pushed = s?.cement?.displacement;
		if (pushed === undefined) return [];
		const { last } = pushed;
		const slowly =
			last === undefined
				? []
				: [
						`; ${c.words.label("crew.the_last")} `,
						shown(c, last.volume),
						` ${c.words.label("phrases.at")} `,
						shown(c, last.rate),
					];
		return [{ cell: rich(shown(c, pushed.density), ...slowly) }];
	},
	cement_landing_pressure: (c, s) => {
		const job = cement(c, s);
		const second = job?.second_stage;
		const landing = (
			of: Pick<CementResults, "final_lift" | "placement"> | undefined,
		): readonly SheetLine[] => {
			const pumping = of?.placement?.final_circulating_pressure;
			// The lift alone, without friction, would be read as the pressure to land the plug with.
			if (of?.final_lift === undefined || pumping === undefined) return [];
			return [
				{
					cell: rich(
						shown(c, pumping, WHOLE),
						"; ",
						`${c.words.label("crew.lift")} `,
						shown(c, of.final_lift),
					),
				},
			];
		};
		if (second === undefined) return landing(job);
		return [...stage(c, "first_stage", landing(job)), ...stage(c, "second_stage", landing(second))];
	},
	cement_bump_and_maximum: (c, s) => {
		const job = cement(c, s);
		const second = job?.second_stage;
		if (second !== undefined)
			return [
				...stage(c, "first_stage", bumped(c, job?.placement)),
				...stage(c, "second_stage", bumped(c, second.placement)),
			];
		return bumped(c, job?.placement);
	},
	cement_top_and_returns: (c, s) => {
		const job = cement(c, s);
		if (job === undefined) return [];
		if (!job.to_surface)
			return job.columns.length < 2
				? one(c, job.top.md)
				: job.columns.map(({ top, bottom }) => ({
						cell: rich(shown(c, top.md), ` ${c.words.label("phrases.to")} `, shown(c, bottom.md)),
					}));
		const back = job.placement?.returns_at_measure;
		const surface = c.words.label("phrases.surface");
		return back === undefined
			? words(surface)
			: [{ cell: rich(`${surface}; `, shown(c, back, WHOLE), ` ${c.words.label("crew.back_if_measured")}`) }];
	},
	cement_if_returns_stop: (_, s) => words(s?.cement?.ifReturnsStop),
	cement_wait: (c, s) => one(c, s?.cement?.waitOnCement, HOURS),

	maximum_treating_pressure: (c) => one(c, limits(c)?.maximumTreatingPressure),
	limiting_element: (c) => {
		const limiting = c.results.stimulation?.limiting;
		return limiting === undefined
			? []
			: [{ of: named(c, limiting.element), cell: shown(c, limiting.allowed, { nearest: 10 }) }];
	},
	pump_kickouts: (c) => {
		const kickouts = limits(c)?.pumpKickouts ?? [];
		if (kickouts.length === 0) return [];
		const children = kickouts.flatMap((kickout, i) => [
			...(i === 0 ? [] : [{ kind: "text" as const, text: ", " }]),
			shown(c, kickout),
		]);
		return [{ cell: { kind: "rich", children } }];
	},
	relief_valve: (c) => one(c, limits(c)?.reliefValve),
	relief_discharges_to: (c) => words(limits(c)?.reliefDischargesTo),
	line_test: (c) => one(c, limits(c)?.lineTest),
	annulus_stops: (c) =>
		(c.well.stimulation?.annuli ?? []).flatMap((annulus) =>
			annulus.stopAbove === undefined
				? []
				: [
						{
							of: annulus.between.map((id) => named(c, id)).join(" – "),
							cell: {
								kind: "rich" as const,
								children: [shown(c, annulus.stopAbove), ...tellWithin(c, annulus)],
							},
						},
					],
		),
	slurry_rate: (c) => {
		const rate = c.well.stimulation?.stages[0]?.rate;
		const steps = c.results.stimulation?.stages.flatMap((stage) => stage.steps) ?? [];
		const most = steps.reduce<Known | undefined>(
			(best, { concentration }) =>
				concentration && concentration.value > (best?.value ?? 0) ? concentration : best,
			undefined,
		);
		const expected = c.results.stimulation?.expected_treating_pressure;
		const text = (words: string) => ({ kind: "text" as const, text: words });
		const children = [
			...(rate === undefined ? [] : [shown(c, rate, WHOLE)]),
			...(expected === undefined
				? []
				: [
						text(", "),
						shown(c, expected, c.units === "field" ? { nearest: 10 } : undefined),
						text(` ${c.words.label("crew.pressure_expected")}`),
					]),
			...(most === undefined ? [] : [text(", ≤ "), shown(c, most, { decimals: 2 })]),
		];
		// Without the expected pressure the line would look whole; it is set when friction can be worked.
		return rate === undefined || expected === undefined ? [] : [{ cell: { kind: "rich", children } }];
	},
	flush_volume: (c) => {
		const stages = c.results.stimulation?.stages ?? [];
		const ends = [stages[0], stages.length > 1 ? stages.at(-1) : undefined].filter(
			(stage) => stage?.flush_volume !== undefined,
		);
		const children = ends.flatMap((stage, i) =>
			stage?.flush_volume === undefined
				? []
				: [
						...(i === 0 ? [] : [{ kind: "text" as const, text: ", " }]),
						shown(c, stage.flush_volume, TENTH),
						{
							kind: "text" as const,
							text: ` ${c.words.label("phrases.in")} ${c.words.label("phrases.stage")} ${stage.number}`,
						},
					],
		);
		return children.length === 0 ? [] : [{ cell: { kind: "rich", children } }];
	},
	first_stage: (c) => one(c, c.results.stimulation?.stages[0]?.bottom.md),
	stage_plan: (c) => one(c, c.results.stimulation?.stage_count),
	shots: (c) => one(c, c.well.stimulation?.stages[0]?.shotsPerCluster),
	plug_count: (c) => {
		const plugs = c.results.stimulation?.stages.filter((stage) => stage.plug !== undefined).length ?? 0;
		return plugs === 0 ? [] : [{ cell: { kind: "quantity", dimension: "count", value: plugs } }];
	},
	shallowest_plug: (c) =>
		one(c, c.results.stimulation?.stages.findLast((stage) => stage.plug !== undefined)?.plug?.md),
	deepest_plug: (c) =>
		one(c, c.results.stimulation?.stages.find((stage) => stage.plug !== undefined)?.plug?.md),
	string_in_well: (c) => {
		const through = c.well.stimulation?.treatedThrough;
		return through === undefined ? [] : words(named(c, through));
	},
	wellhead_drilling: (c) => one(c, c.well.wellhead?.drilling),
	wellhead_stimulation: (c) => one(c, c.well.wellhead?.stimulation),
	flowback_range: (c) =>
		(c.well.stimulation?.flowback?.returned ?? []).map((share, i) => ({
			of: c.words.label(i === 0 ? "crew.least" : "crew.most"),
			cell: shown(c, share, WHOLE),
		})),
	flowback_goes_to: (c) => words(c.well.stimulation?.flowback?.goesTo),
};
