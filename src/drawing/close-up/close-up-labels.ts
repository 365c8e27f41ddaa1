import type { Shape } from "../../document/shapes.ts";
import type { Label } from "../label.ts";
import { compose, lineWidth, sentence } from "../line-of-text.ts";
import { dimensionLine } from "../marks/lines.ts";
import { stringName } from "../print.ts";
import { cementTopLabels, heading } from "../schematic/string-labels.ts";
import type { View } from "../schematic/view.ts";

/** Where the distances are drawn: right of the well, in the ground. */
const dimensionX = ({ frame, nest }: View): number => frame.middle + nest.widest + 12;

const protecting = ({ well, results }: View) =>
	well.strings.find((string) => string.id === results.isolation.protecting_string);

/** From ground to the base of protected water, and from there to the shoe below it. */
export const dimensions = (view: View): Shape[] => {
	const { well, results, scale } = view;
	const base = results.geology.protected_water_base?.tvd.value;
	if (base === undefined) return [];
	const x = dimensionX(view);
	const string = protecting(view);
	const shoe = string === undefined ? undefined : results.casing[string.id]?.shoe.tvd.value;
	return [
		...dimensionLine([x, scale.y(well.datum.groundLevel.value)], [x, scale.y(base)]),
		...(shoe === undefined ? [] : dimensionLine([x + 9, scale.y(base)], [x + 9, scale.y(shoe)])),
	];
};

/** Ground level, shoes and cement tops that are shown, and the distances. */
export const closeUpLabels = (view: View): Label[] => {
	const { well, results, print, scale, axis, nest, frame, deepest } = view;
	const { words } = print;
	const base = results.geology.protected_water_base;
	const x = dimensionX(view);
	const ground = well.datum.groundLevel;
	const string = protecting(view);
	const below = results.isolation.shoe_below_protected_water;
	const common = { weight: 9, least: 2, dot: false } as const;
	const shoes = well.strings.flatMap((each): Label[] => {
		const shoe = results.casing[each.id]?.shoe;
		if (shoe === undefined || shoe.tvd.value > deepest || each.kind === "tieback") return [];
		const at = axis.at(each.shoe.value);
		const mark = print.mark(shoe);
		const depth =
			view.detail === "plain"
				? [compose(words.plainDepth, { depth: print.below(shoe) })]
				: lineWidth(mark, frame.size) <= frame.right.width
					? [mark]
					: print.stacked(shoe);
		const distance =
			each !== string || below === undefined
				? []
				: [
						compose(below.value < 0 ? words.gapShoeAbove : words.gapShoeBelow, {
							distance: { ...print.magnitude(below), weight: "semibold" },
						}),
					];
		return [
			{
				id: `string ${each.id}`,
				anchor: [at.x + nest.string(each).outer + 3, at.y],
				lines: [heading(sentence(words.shoeOf, { string: stringName(words, each) })), ...depth, ...distance],
				weight: 8,
				least: 1 + depth.length + (each === string ? 1 : 0),
			},
		];
	});
	const columns = Object.values(results.cement).flatMap((job) => job.columns);
	const tops = well.strings
		.flatMap((each) => cementTopLabels(view, each))
		.filter(({ md }) => (columns.find(({ top }) => top.md.value === md)?.top.tvd.value ?? 0) < deepest)
		.map(
			({ md, across, ...label }): Label => ({ ...label, anchor: [axis.at(md).x + across, axis.at(md).y] }),
		);
	return [
		{
			id: "ground level",
			anchor: [frame.lane - 2, scale.y(ground.value)],
			lines: [
				heading(words.groundLevel),
				...(view.detail === "plain"
					? []
					: [compose(words.groundDepth, { depth: print.value(ground), datum: well.datum.name })]),
			],
			...common,
		},
		...shoes,
		...tops,
		...(base === undefined
			? []
			: [
					{
						id: "depth of base",
						anchor: [x, (scale.y(ground.value) + scale.y(base.tvd.value)) / 2],
						span: [scale.y(ground.value) + 8, scale.y(base.tvd.value) - 8],
						lines: [
							compose(words.gapGround, {
								distance: { ...print.value(base.below_ground), weight: "semibold" },
							}),
						],
						...common,
						least: 1,
					} satisfies Label,
				]),
	];
};
