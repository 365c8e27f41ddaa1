import type { HoleMark } from "../../calc/results.ts";
import type { Known } from "../../cite/known.ts";
import { compose, type Line, run, sentence } from "../line-of-text.ts";
import { stringName, withinSentence } from "../print.ts";
import { heading, SAME_PLACE, type WellLabel } from "./string-labels.ts";
import { halfWidthAt, isLast, type View } from "./view.ts";
import { plugsDrawn } from "./well-part.ts";

/** Depths on one line beside a vertical hole, stacked under a lateral. */
const depths = ({ print, axis }: View, mark: HoleMark): Line[] =>
	axis.level === undefined ? [print.mark(mark)] : print.stacked(mark);

/** Places of the hole itself: kickoff, landing, float collar, liner tops, total depth. */
export const placeLabels = (view: View): WellLabel[] => {
	const { results, print, well, nest, detail, axis } = view;
	const { words } = print;
	const { kickoff, landing, total_depth: total } = results.trajectory;
	const last = well.strings.find((string) => isLast(well, string));
	const shoe = last?.shoe.value ?? 0;
	const collar = last?.shoeTrack === undefined ? undefined : shoe - last.shoeTrack.value;
	const liners = well.strings.flatMap((string): WellLabel[] => {
		const top = results.casing[string.id]?.top;
		if (string.kind !== "liner" || top === undefined) return [];
		return [
			{
				id: `liner top ${string.id}`,
				md: string.top.value,
				across: nest.string(string).outer + 1.5,
				lines: [
					heading(
						sentence(words.linerTop, {
							string: withinSentence(stringName(words, string)),
						}),
					),
					print.mark(top),
				],
				weight: 8,
				least: 2,
			},
		];
	});
	return [
		...liners,
		...completionLabels(view),
		{
			id: "ground level",
			md: well.datum.groundLevel.value,
			across: nest.widest + 6,
			lines: [
				heading(words.groundLevel),
				compose(words.groundDepth, {
					depth: print.value(well.datum.groundLevel),
					datum: well.datum.name,
				}),
			],
			weight: 6,
			dot: false,
		},
		...(kickoff === undefined || detail !== "full"
			? []
			: [
					{
						id: "kickoff",
						md: kickoff.md.value,
						across: 0,
						lines: [heading(words.kickoff), print.mark(kickoff)],
						weight: 4,
					},
				]),
		...(landing === undefined || axis.level === undefined
			? []
			: [
					{
						id: "landing",
						md: landing.md.value,
						across: halfWidthAt(view, landing.md.value),
						lines: [heading(words.landing), ...depths(view, landing)],
						weight: 3,
					},
				]),
		...(collar === undefined || detail !== "full"
			? []
			: [
					{
						id: "float collar",
						md: collar,
						across: 0,
						lines: [
							heading(words.floatCollar),
							...(last?.shoeTrack === undefined
								? []
								: [compose(words.aboveShoe, { length: print.value(last.shoeTrack) })]),
						],
						weight: 1,
					},
				]),
		{
			id: "total depth",
			md: total.md.value,
			across: 0,
			lines: [heading(words.totalDepth), ...depths(view, total)],
			weight: 9,
			least: 2,
			dot: total.md.value - shoe > SAME_PLACE,
		},
	];
};

/** Stage tools, packers, and the foot of the treating string; of the public's drawing none. */
const completionLabels = ({ well, nest, print }: View): WellLabel[] => {
	const { words } = print;
	const along = (md: Known<"measured-depth">): Line => compose(words.depthMeasured, { md: print.value(md) });
	const treating = well.stimulation?.treatingString;
	const foot = treating?.sections.at(-1);
	return [
		...well.strings.flatMap((string): WellLabel[] => {
			const tool = string.cement?.stageTool;
			const packer = string.production?.packer;
			const { outer } = nest.string(string);
			return [
				...(tool === undefined
					? []
					: [
							{
								id: `stage tool ${string.id}`,
								md: tool.value,
								across: outer + 3.4,
								lines: [heading(words.stageTool), along(tool)],
								weight: 5,
							},
						]),
				...(packer === undefined
					? []
					: [
							{
								id: `packer ${string.id}`,
								md: packer.value,
								across: 0,
								lines: [heading(words.productionPacker), along(packer)],
								weight: 5,
							},
						]),
			];
		}),
		...(treating?.packer === undefined
			? []
			: [
					{
						id: "treating packer",
						md: treating.packer.depth.value,
						across: 0,
						lines: [heading(words.packer), along(treating.packer.depth)],
						weight: 5,
					},
				]),
		...(foot === undefined
			? []
			: [
					{
						id: "treating string",
						md: foot.bottom.value,
						across: 0,
						lines: [
							heading(words.treatingString),
							[print.value(foot.outsideDiameter, { pipeSize: true }), run(", "), ...along(foot.bottom)],
						],
						weight: 5,
					},
				]),
	];
};

/** `39 stages, 234 clusters`, and how many plugs are not drawn. */
export const stagesLine = (view: View): Line => {
	const { results, print } = view;
	const stages = results.stimulation?.stages ?? [];
	const count = results.stimulation?.stage_count;
	if (count === undefined || stages.length === 0) return [];
	const clusters = stages.reduce((sum, stage) => sum + stage.clusters.length, 0);
	const [one, several] =
		clusters === 0
			? [print.words.stageAlone, print.words.stagesAlone]
			: [print.words.stage, print.words.stages];
	const plugs = stages.filter((stage) => stage.plug !== undefined).length;
	return [
		...compose(count.value === 1 ? one : several, { count: print.value(count), clusters: String(clusters) }),
		...(plugs === 0 || plugsDrawn(view)
			? []
			: [run(", "), ...compose(print.words.plugs, { count: String(plugs) })]),
	];
};

/** The perforated interval. */
export const perforationLabels = (view: View): WellLabel[] => {
	const { results, print, axis } = view;
	if (results.stimulation === undefined) return [];
	const { words } = print;
	const { top_perforation: top, bottom_perforation: bottom } = results.stimulation;
	const gap = results.isolation.protected_water_to_top_perforation;
	const reach = (mark: HoleMark) => halfWidthAt(view, mark.md.value) + 3;
	const ends: WellLabel[] = [
		{
			id: "top perforation",
			md: top.md.value,
			across: reach(top),
			lines: [
				heading(words.topPerforation),
				...depths(view, top),
				...(gap === undefined || gap.value < 0
					? []
					: [compose(words.shoeBelowWater, { distance: print.value(gap) })]),
			],
			weight: 8,
			least: 2,
		},
	];
	if (Math.abs(top.md.value - bottom.md.value) > SAME_PLACE)
		ends.push({
			id: "bottom perforation",
			md: bottom.md.value,
			across: reach(bottom),
			lines: [heading(words.bottomPerforation), ...depths(view, bottom)],
			weight: 7,
			least: 2,
		});
	if (axis.level !== undefined) return ends;
	const middle = (top.md.value + bottom.md.value) / 2;
	const line = stagesLine(view).map((part) => ({
		...part,
		weight: "semibold" as const,
	}));
	return [
		...ends,
		{
			id: "stages",
			md: middle,
			across: reach(bottom),
			lines: [line],
			weight: 5,
			dot: false,
		},
	];
};
