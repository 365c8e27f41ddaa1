import type { CementResults, PlacementResults } from "../../../calc/results.ts";
import type { Known } from "../../../cite/known.ts";
import type { Inline } from "../../../document/inline.ts";
import { isGrouted } from "../../../well/grouted.ts";
import type { CasingString } from "../../../well/well.ts";
import type { PaperContext } from "../../context.ts";
import { shown } from "../../context.ts";
import { named } from "../../parts/part.ts";
import {
	HOURS,
	NOT_APPLICABLE,
	one,
	rich,
	type SheetLine,
	type SheetValues,
	stage,
	TENTH,
	WHOLE,
	words,
} from "./line.ts";

const cementOf = (context: PaperContext, string: CasingString | undefined) =>
	string === undefined ? undefined : context.results.cement[string.id];

/** A stroke is some tenths of a barrel at most. */
const STROKE = { decimals: 4 } as const;

/** Grouted from the surface: no plug is landed, and the figures of landing one do not apply. */
const noPlug = (string: CasingString | undefined): boolean => string !== undefined && isGrouted(string);

/** How far a slurry's density may be off, either way. */
const window = (context: PaperContext, off: Known | undefined): readonly Inline[] =>
	off === undefined ? [] : [{ kind: "text", text: " ± " }, shown(context, off, TENTH)];

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
			large: [
				{ cell: shown(c, bump, WHOLE), label: c.words.label("crew.numbers.cement_bump_and_maximum") },
				{
					cell: shown(c, limit.allowed, { nearest: 10 }),
					label: `${c.words.label("crew.never_bump_over")}: ${c.words.label(`bump_limits.${limit.element}`)}`,
				},
			],
		},
	];
};

/** Cement: what is mixed, pumped and pushed, and at what pressure it ends. */
export const CEMENT_VALUES: SheetValues = {
	cement_slurries: (c, s) =>
		(cementOf(c, s)?.slurries ?? []).map((slurry) => {
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
		const job = cementOf(c, s);
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
		if (noPlug(s)) return words(c.words.label("crew.no_plug"));
		const job = cementOf(c, s);
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
		if (noPlug(s)) return NOT_APPLICABLE;
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
	cement_strokes: (c, s) => {
		if (noPlug(s)) return NOT_APPLICABLE;
		const job = cementOf(c, s);
		const output = s?.cement?.displacement?.pumpOutput;
		const counted = (strokes: Known | undefined): readonly SheetLine[] =>
			strokes === undefined || output === undefined
				? []
				: [
						{
							cell: rich(shown(c, strokes), ` ${c.words.label("phrases.at")} `, shown(c, output, STROKE)),
							large: [{ cell: shown(c, strokes), label: c.words.label("crew.numbers.cement_strokes") }],
							more: true,
						},
					];
		const second = job?.second_stage;
		return second === undefined
			? counted(job?.displacement_strokes)
			: [
					...stage(c, "first_stage", counted(job?.displacement_strokes)),
					...stage(c, "second_stage", counted(second.displacement_strokes)),
				];
	},
	cement_line_test: (c, s) => one(c, s?.cement?.lineTest),
	cement_landing_pressure: (c, s) => {
		if (noPlug(s)) return NOT_APPLICABLE;
		const job = cementOf(c, s);
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
		if (noPlug(s)) return NOT_APPLICABLE;
		const job = cementOf(c, s);
		const second = job?.second_stage;
		if (second !== undefined)
			return [
				...stage(c, "first_stage", bumped(c, job?.placement)),
				...stage(c, "second_stage", bumped(c, second.placement)),
			];
		return bumped(c, job?.placement);
	},
	cement_top_and_returns: (c, s) => {
		const job = cementOf(c, s);
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
};
