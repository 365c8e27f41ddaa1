import type { CementResults } from "../../calc/results.ts";
import type { CasingString } from "../../well/well.ts";
import type { Label } from "../label.ts";
import { compose, type Line, run, sentence } from "../line-of-text.ts";
import { stringName, withinSentence } from "../print.ts";
import type { View } from "./view.ts";
import { plannedTopOf } from "./well-part.ts";

/** A label of the well: it belongs to a measured depth, and to a place so far across the hole. */
export interface WellLabel extends Omit<Label, "anchor"> {
	readonly md: number;
	readonly across: number;
}

/** Depths nearer than this are one place to a reader [ft]. */
export const SAME_PLACE = 1;
/** A place drawn farther sideways than this is labeled under the hole, not beside it [pt]. */
export const ASIDE = 6;

export const heading = (text: string): Line => [run(text, { weight: "semibold" })];

const basisOf = ({ print: { words } }: View, cement: CementResults): string =>
	cement.top_basis === "planned" ? words.planned : words[cement.top_basis];

/** What a string is: its pipe, section by section. */
const pipeLines = ({ print }: View, string: CasingString): Line[] =>
	string.sections.map((section) =>
		compose(string.sections.length === 1 ? print.words.pipe : print.words.pipeTo, {
			size: print.value(section.outsideDiameter, { pipeSize: true }),
			weight: print.value(section.nominalWeight),
			grade: section.grade,
			connection: section.connection,
			depth: print.value(section.bottom),
		}),
	);

const cementLines = (view: View, string: CasingString): Line[] => {
	const { results, print } = view;
	const cement = results.cement[string.id];
	if (cement === undefined) return [[run(print.words.noCement)]];
	const basis = basisOf(view, cement);
	if (cement.columns.length > 1)
		return cement.columns.map(({ top, bottom }) =>
			compose(print.words.cementBetween, {
				top: print.value(top.md),
				bottom: print.value(bottom.md),
				basis,
			}),
		);
	return [
		cement.to_surface
			? compose(print.words.cementSurface, { basis })
			: compose(print.words.cementFrom, {
					depth: print.value(cement.top.md),
					basis,
				}),
	];
};

const holeLines = ({ print }: View, { hole }: CasingString): Line[] => {
	const size = print.value(hole.diameter, { pipeSize: true });
	const density = hole.fluid?.density;
	return [
		compose(print.words.hole, { size, depth: print.value(hole.bottom) }),
		...(hole.fluid === undefined || density === undefined
			? []
			: [compose(print.words.holeFluid, { density: print.value(density), fluid: hole.fluid.kind })]),
	];
};

/** How far the protecting string's shoe is from the base of protected water. */
const waterDistance = ({ results, print }: View, string: CasingString): Line[] => {
	const { protecting_string, shoe_below_protected_water: below } = results.isolation;
	if (protecting_string !== string.id || below === undefined) return [];
	const phrase = below.value < 0 ? print.words.shoeAboveWater : print.words.shoeBelowWater;
	return [compose(phrase, { distance: print.magnitude(below) })];
};

const shoeLine = ({ results, print }: View, string: CasingString): Line => {
	const shoe = results.casing[string.id]?.shoe;
	const depth = shoe === undefined ? [print.value(string.shoe)] : print.mark(shoe);
	const planned = string.plannedShoe;
	const differs = planned !== undefined && Math.abs(planned.value - string.shoe.value) > SAME_PLACE;
	return [
		...compose(print.words.shoe, { depth }),
		...(differs ? [run(", "), ...compose(print.words.plannedShoe, { depth: print.value(planned) })] : []),
	];
};

/** Where a string that ends in the curve or the lateral is named: halfway down the stretch that only it and its kin reach. */
export const bodyDepth = ({ axis, results, well }: View, string: CasingString): number => {
	const kickoff = results.trajectory.kickoff?.md.value ?? axis.level ?? string.shoe.value;
	const shallower = well.strings
		.filter((other) => other.shoe.value < kickoff)
		.map((other) => other.shoe.value);
	const from = Math.min(Math.max(string.top.value, ...shallower), kickoff);
	const stretch = axis.between(from, kickoff);
	const half = ((stretch[0]?.y ?? 0) + (stretch.at(-1)?.y ?? 0)) / 2;
	return (stretch.find((point) => point.y >= half) ?? axis.at(kickoff)).md;
};

/** One label of a string; and one more of its shoe where that lies in the curve or the lateral. */
export const stringLabels = (view: View, string: CasingString): WellLabel[] => {
	const { axis, nest, results, print } = view;
	const title = stringName(print.words, string);
	const width = nest.string(string);
	const label = {
		id: `string ${string.id}`,
		lines: [
			heading(title),
			...pipeLines(view, string),
			shoeLine(view, string),
			...waterDistance(view, string),
			...cementLines(view, string),
			...(view.detail === "full" ? holeLines(view, string) : []),
		],
		weight: 8,
		least: 2 + string.sections.length,
	};
	if (axis.level === undefined || axis.at(string.shoe.value).x - axis.at(0).x < ASIDE)
		return [{ ...label, md: string.shoe.value, across: width.outer + 3 }];
	const shoe = results.casing[string.id]?.shoe;
	return [
		{
			...label,
			md: bodyDepth(view, string),
			across: width.outer - nest.steel / 2,
		},
		{
			id: `shoe ${string.id}`,
			md: string.shoe.value,
			across: width.outer + 3,
			lines: [
				heading(sentence(print.words.shoeOf, { string: title })),
				...(shoe === undefined ? [] : print.stacked(shoe)),
			],
			weight: 8,
			least: 2,
		},
	];
};

/** The top of a cement column that does not come to surface, and where it was planned if it was recorded elsewhere. */
export const cementTopLabels = (view: View, string: CasingString): WellLabel[] => {
	const { results, print, nest } = view;
	const cement = results.cement[string.id];
	if (cement === undefined || cement.to_surface) return [];
	const planned = plannedTopOf(string);
	const top = cement.top.md.value;
	const slurry =
		cement.top_basis !== "planned" && planned !== undefined && Math.abs(planned - top) > SAME_PLACE
			? string.cement?.slurries.find((each) => each.top.value === planned)
			: undefined;
	return cement.columns.map((column, i) => ({
		id: i === 0 ? `cement ${string.id}` : `cement ${string.id} ${i + 1}`,
		md: column.top.md.value,
		across: nest.string(string).outer + 1.5,
		lines: [
			heading(
				sentence(print.words.cementTop, {
					string: withinSentence(stringName(print.words, string)),
				}),
			),
			[...print.mark(i === 0 ? cement.top : column.top), run(`, ${basisOf(view, cement)}`)],
			...(i > 0 || slurry === undefined
				? []
				: [
						compose(print.words.plannedTop, {
							depth: print.value(slurry.top),
						}),
					]),
		],
		weight: 7,
		least: 2,
	}));
};
