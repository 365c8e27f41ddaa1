import type { Known } from "../../../cite/known.ts";
import type { AnnulusLimit } from "../../../well/well.ts";
import type { PaperContext } from "../../context.ts";
import { shown } from "../../context.ts";
import { named } from "../../parts/part.ts";
import { HOURS, NOT_APPLICABLE, one, type SheetValues, TENTH, WHOLE, words } from "./line.ts";

const limits = (context: PaperContext) => context.well.stimulation?.limits;

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

/** Guns, pumps, plugs and what comes back. */
export const TREATMENT_VALUES: SheetValues = {
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
		const [first] = kickouts.toSorted((a, b) => a.value - b.value);
		return [
			{
				cell: { kind: "rich", children },
				...(first === undefined
					? {}
					: { large: [{ cell: shown(c, first), label: c.words.label("crew.first_kickout") }] }),
				...(kickouts.length > 1 ? { more: true } : {}),
			},
		];
	},
	/** At the surface, while the hardest stage is pumped as planned. */
	expected_treating_pressure: (c) => one(c, c.results.stimulation?.expected_treating_pressure),
	relief_valve: (c) => one(c, limits(c)?.reliefValve),
	relief_discharges_to: (c) => words(limits(c)?.reliefDischargesTo),
	if_it_screens_out: (c) => words(c.well.stimulation?.ifItScreensOut),
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
				: [text(", "), shown(c, expected), text(` ${c.words.label("crew.pressure_expected")}`)]),
			...(most === undefined ? [] : [text(", ≤\u00a0"), shown(c, most, { decimals: 2 })]),
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
	/** A head that holds less than the test is told beside its rating: no test is to be made against it. */
	wellhead_drilling: (c, s) => {
		const rating = c.well.wellhead?.drilling;
		const test = s?.pressureTest?.pressure;
		// With the treating head stated to be on, the drilling head sees no test.
		if (s?.pressureTest?.head === "stimulation") return NOT_APPLICABLE;
		const weaker = rating !== undefined && test !== undefined && rating.value < test.value;
		return one(c, rating).map((line) =>
			weaker ? { ...line, note: `: ${c.words.label("crew.below_the_test")}` } : line,
		);
	},
	/** Of the string that is treated: the head that it is treated through may be on when it is tested. */
	wellhead_treated: (c, s) =>
		s === undefined ||
		s.id !== c.well.stimulation?.treatedThrough ||
		c.well.wellhead?.stimulation === undefined
			? NOT_APPLICABLE
			: one(c, c.well.wellhead.stimulation).map((line) =>
					s.pressureTest?.head === "stimulation"
						? { ...line, note: `: ${c.words.label("crew.on_in_the_test")}` }
						: line,
				),
	wellhead_stimulation: (c) => one(c, c.well.wellhead?.stimulation),
	flowback_range: (c) =>
		(c.well.stimulation?.flowback?.returned ?? []).map((share, i) => ({
			of: c.words.label(i === 0 ? "crew.least" : "crew.most"),
			cell: shown(c, share, WHOLE),
		})),
	flowback_goes_to: (c) => words(c.well.stimulation?.flowback?.goesTo),
};
