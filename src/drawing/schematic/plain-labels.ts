import { compose, run, sentence } from "../line-of-text.ts";
import { stringName } from "../print.ts";
import { ASIDE, bodyDepth, heading, type WellLabel } from "./string-labels.ts";
import { halfWidthAt, isLast, type View } from "./view.ts";

/** The few things a neighbor asks of the well itself, in everyday words, in depths below ground. */
export const plainLabels = (view: View): WellLabel[] => {
	const { well, results, print, nest, axis } = view;
	const { words } = print;
	const { stimulation } = results;
	const strings = well.strings.flatMap((string): WellLabel[] => {
		const cement = results.cement[string.id];
		const shoe = results.casing[string.id]?.shoe;
		if (shoe === undefined) return [];
		const phrase =
			cement === undefined
				? words.plainUncemented
				: cement.to_surface
					? words.plainCemented
					: words.plainPartlyCemented;
		const protects = results.isolation.protecting_string === string.id;
		const aside = axis.level !== undefined && axis.at(string.shoe.value).x - axis.at(0).x >= ASIDE;
		return [
			{
				// On a small sheet the pipes that shut off the water are named before the one that goes on.
				id: aside ? `well ${string.id}` : `string ${string.id}`,
				md: aside ? bodyDepth(view, string) : string.shoe.value,
				across: nest.string(string).outer + (aside ? 0 : 3),
				lines: [
					heading(sentence(words.plainString, { name: stringName(words, string) })),
					[run(phrase)],
					aside && isLast(well, string)
						? [run(words.plainToEnd)]
						: compose(words.plainDepth, { depth: print.below(shoe) }),
				],
				weight: protects ? 9 : aside ? 3 : 5,
				least: 3,
			},
		];
	});
	const level = axis.level !== undefined;
	const top = stimulation?.top_perforation;
	const bottom = stimulation?.bottom_perforation;
	return [
		...strings,
		...(top === undefined || bottom === undefined
			? []
			: [
					{
						id: "top perforation",
						md: level ? (top.md.value + bottom.md.value) / 2 : top.md.value,
						across: halfWidthAt(view, top.md.value) + 3,
						lines: [
							heading(words.plainTreated),
							compose(words.plainTreatedDepth, { depth: print.below(top) }),
						],
						weight: 9,
						least: 2,
						dot: !level,
					},
				]),
	];
};
