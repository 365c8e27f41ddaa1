import type { Results } from "../../calc/results.ts";
import type { CasingString, Formation, Well } from "../../well/well.ts";
import type { DepthScale } from "../depth-scale.ts";
import type { Nesting } from "../nesting.ts";
import type { Print } from "../print.ts";
import type { WellAxis } from "../well-axis.ts";

/** `full` for the regulator, `plain` for the public, `numbers` for a crew. */
export type Detail = "full" | "plain" | "numbers";

/** Where the parts of the schematic stand on the page [pt]. */
export interface Frame {
	readonly width: number;
	readonly height: number;
	/** Type size of labels. */
	readonly size: number;
	/** Right edge of the ruler. */
	readonly ruler: number;
	/** Right edge of the labels on the left, and their width. */
	readonly left: { readonly x: number; readonly width: number };
	/** The rock column; of no width where rock is not drawn. */
	readonly column: { readonly x: number; readonly width: number };
	/** Middle of the vertical hole. */
	readonly middle: number;
	/** Right edge of the ground beside the vertical hole, where leaders begin to slope. */
	readonly lane: number;
	readonly right: { readonly x: number; readonly width: number };
	/** Top and bottom of the drawn depths. */
	readonly top: number;
	readonly bottom: number;
	/** Room for labels under a lateral. */
	readonly row: { readonly top: number; readonly bottom: number };
	readonly notes: number;
	readonly legend: number;
}

/** Everything a part of the schematic is drawn from. */
export interface View {
	readonly well: Well;
	readonly results: Results;
	readonly detail: Detail;
	readonly print: Print;
	readonly frame: Frame;
	readonly scale: DepthScale;
	readonly axis: WellAxis;
	readonly nest: Nesting;
	/** Greatest true vertical depth drawn [ft]. */
	readonly deepest: number;
}

/** Half-width of the outermost thing drawn at a measured depth. */
export const halfWidthAt = ({ well, nest }: Pick<View, "well" | "nest">, md: number): number =>
	Math.max(
		0,
		...well.holes.filter((hole) => hole.bottom.value >= md).map(nest.hole),
		...well.strings
			.filter((string) => string.top.value <= md && string.shoe.value >= md)
			.map((string) => nest.string(string).outer),
	);

/** True of a string that no deeper hole is drilled through: its shoe track is still there. */
export const isLast = (well: Well, string: CasingString): boolean =>
	!well.strings.some((other) => other !== string && other.shoe.value > string.shoe.value) &&
	!well.holes.some((hole) => hole.top.value >= string.shoe.value);

/** Shoe of the string outside, where there is one: cement below it is against rock. */
export const shoeOutside = (well: Well, string: CasingString): number => {
	const outside = well.strings.find((other) => other.id === string.within);
	return outside?.shoe.value ?? 0;
};

/** A formation with where it is drawn [ft TVD]; the last one reaches as deep as the drawing. */
export interface Bed {
	readonly formation: Formation;
	readonly top: number;
	readonly base: number;
}

export const bedsOf = (well: Well, deepest: number): Bed[] => {
	const { formations } = well.geology;
	return formations
		.map((formation, i) => ({
			formation,
			top: formation.top.value,
			base: formation.base?.value ?? formations[i + 1]?.top.value ?? deepest,
		}))
		.filter((bed) => bed.top < deepest)
		.map((bed) => ({ ...bed, base: Math.min(bed.base, deepest) }));
};

/** Parts of a stretch of depth, one for each depth piece it reaches: top and bottom on the page. */
export const stretches = (
	scale: DepthScale,
	from: number,
	to: number,
): { readonly y: number; readonly height: number }[] =>
	scale.pieces.flatMap((piece) => {
		const [top, base] = [Math.max(from, piece.from), Math.min(to, piece.to)];
		if (base <= top) return [];
		const perFoot = (piece.bottom - piece.top) / (piece.to - piece.from);
		const y = piece.top + (top - piece.from) * perFoot;
		return [{ y, height: (base - top) * perFoot }];
	});
