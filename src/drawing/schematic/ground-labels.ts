import { quantityString } from "../../units/format.ts";
import type { Label } from "../label.ts";
import { compose, type Line, run, sentence } from "../line-of-text.ts";
import { drawnWells, gapArrow, wellsByDepth, wellX } from "./ground-part.ts";
import { bedsOf, type View } from "./view.ts";

/** Distances from half a mile up are given in miles too [ft]. */
const MILE_WORTH = 2640;

/** A bed's name may stand so far from the bed, and a dimension's from its arrowheads [pt]. */
const STRAY = 36;
const HEAD = 8;

const name = (text: string): Line => [run(text, { weight: "semibold" })];

const bedLabels = (view: View): Label[] => {
	const { well, results, print, frame, scale, deepest, detail } = view;
	const { words } = print;
	return bedsOf(well, deepest).map(({ formation, top, base }): Label => {
		const given =
			results.geology.formations.find((each) => each.id === formation.id)?.top.tvd ?? formation.top;
		const traits = [
			words.rocks[formation.lithology],
			...(formation.target ? [words.target] : []),
			...(formation.confining ? [words.confining] : []),
			...(formation.flowZone === undefined ? [] : [sentence(words.flowZone, { fluid: formation.flowZone })]),
		].join(", ");
		const marked = formation.target || formation.confining;
		if (detail === "plain") {
			const [from, to] = [scale.y(Math.max(top, 0)), scale.y(base)];
			return {
				id: `formation ${formation.id}`,
				anchor: [frame.column.x - (marked ? 4 : 0), (from + to) / 2],
				...(to - from > 4 ? { span: [from + 2, to - 2] as const } : {}),
				lines: [[run(formation.name), ...(formation.target ? [run(` (${words.target})`)] : [])]],
				weight: formation.target ? 6 : 1,
				near: STRAY,
				dot: false,
			};
		}
		return {
			id: `formation ${formation.id}`,
			anchor: [frame.column.x - (marked ? 4 : 0), scale.y(Math.max(top, 0))],
			lines: [
				name(formation.name),
				[...compose(words.formationTop, { depth: print.value(given) }), run(`, ${traits}`)],
			],
			weight: marked ? 5 : 2,
			dot: false,
		};
	});
};

const waterLabels = (view: View): Label[] => {
	const { results, well, print, frame, scale, detail } = view;
	const { words } = print;
	const base = results.geology.protected_water_base;
	const zones =
		detail === "full" ? results.geology.water.filter((zone) => zone.top.tvd.value < view.deepest) : [];
	const deepest = zones.at(-1)?.id;
	return [
		...zones.map((zone): Label => {
			const [from, to] = [scale.y(zone.top.tvd.value), scale.y(Math.min(zone.base.tvd.value, view.deepest))];
			const solids = well.geology.water.find((each) => each.id === zone.id)?.dissolvedSolids;
			return {
				id: `water ${zone.id}`,
				anchor: [frame.column.x - 7.5, (from + to) / 2],
				span: [from, to],
				lines: [
					name(zone.name),
					compose(words.waterZone, {
						top: print.number(zone.top.tvd),
						base: print.value(zone.base.tvd),
					}),
					...(solids === undefined ? [] : [compose(words.waterSolids, { solids: print.value(solids) })]),
				],
				weight: zone.id === deepest ? 4 : 3,
				dot: false,
			};
		}),
		...(base === undefined
			? []
			: [
					{
						id: "protected water",
						anchor: [frame.column.x - 8, scale.y(base.tvd.value)],
						lines: [
							name(detail === "plain" ? words.plainWater : words.waterBase),
							detail === "plain"
								? print.below(base)
								: compose(words.depthVertical, { tvd: print.value(base.tvd) }),
							...(detail === "full" ? [print.below(base)] : []),
							...(detail === "full" && well.geology.protectedWater?.determinedBy !== undefined
								? [
										compose(words.waterBaseBy, {
											who: well.geology.protectedWater.determinedBy,
										}),
									]
								: []),
						],
						weight: 9,
						least: 2,
						dot: false,
					} satisfies Label,
				]),
	];
};

/** A neighbor's well as deep as its owner knows it, below its own ground. */
const ownDepth = ({ well, print }: View, place: ReturnType<typeof wellsByDepth>[number]): Line => {
	const given = well.neighbors.find((each) => each.id === place.id)?.depth?.depth ?? place.depth;
	return given === undefined
		? compose(print.words.depthVertical, { tvd: print.value(place.known) })
		: compose(print.words.depthBelowGround, { depth: print.value(given) });
};

const wellLabels = (view: View): Label[] => {
	const { results, print, frame, scale, detail } = view;
	const { words } = print;
	const all = wellsByDepth(results);
	const drawn = drawnWells(results);
	const shown = detail === "plain" ? drawn.slice(-1) : drawn;
	return shown.map((each): Label => {
		const count =
			each === drawn.at(-1) && all.length > drawn.length
				? [compose(words.deepestOf, { count: String(all.length) })]
				: [];
		return {
			id: `water well ${each.id}`,
			anchor: [wellX(frame, drawn.indexOf(each)), Math.max(scale.y(each.bottom) - 2, frame.top)],
			lines:
				detail === "plain"
					? [
							name(each.name),
							ownDepth(view, each),
							...(all.length > 1 ? [[run(words.plainWellDeepest)]] : []),
						]
					: [name(each.name), compose(words.waterWellDepth, { depth: ownDepth(view, each) }), ...count],
			weight: detail === "plain" ? 8 : 4,
			...(detail === "plain" ? { least: 2 } : {}),
		};
	});
};

/** Rock between the protected water and the nearest fractured rock: the number most asked for. */
const gapLabel = (view: View): Label[] => {
	const { results, print } = view;
	const arrow = gapArrow(view);
	const gap = results.isolation.protected_water_to_top_perforation;
	if (arrow === undefined || gap === undefined) return [];
	const miles = print.units === "field" && gap.value >= MILE_WORTH;
	const phrase = miles ? print.words.plainGapMiles : print.words.plainGap;
	const distance = { ...print.value(gap), weight: "bold" as const };
	const line = compose(
		phrase,
		{
			distance,
			miles: quantityString(
				{ dimension: "distance", value: gap.value, style: { unit: "mi", decimals: 1 } },
				"field",
			),
		},
		{ weight: "bold" },
	);
	return [
		{
			id: "gap",
			anchor: [arrow[0][0], (arrow[0][1] + arrow[1][1]) / 2],
			span: [arrow[0][1] + HEAD, arrow[1][1] - HEAD],
			lines: [line, [run(print.words.plainGapBetween)]],
			weight: 10,
			least: 2,
			dot: false,
		},
	];
};

/** Names of what nature made, and where the scale changes. */
export const groundLabels = (view: View): Label[] => [
	...(view.detail === "numbers" ? [] : bedLabels(view)),
	...waterLabels(view),
	...(view.detail === "numbers" ? [] : wellLabels(view)),
	...gapLabel(view),
];
