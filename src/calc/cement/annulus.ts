import type { Known } from "../../cite/known.ts";
import type { CasingString, CementJob, Hole, Well } from "../../well/well.ts";
import { sectionAt } from "./bore.ts";
import {
	annularCapacity,
	caliperDiameter,
	intervalLength,
	intervalVolume,
	pipeCapacity,
	totalVolume,
	washedOutDiameter,
} from "./capacity.ts";
import { middleOf, piecesBetween } from "./cuts.ts";

type Depth = Known<"measured-depth">;
type Basis = CementJob["volumeBasis"];

/** A length of annulus of one cross-section. */
export interface AnnulusInterval {
	readonly top: Depth;
	readonly bottom: Depth;
	readonly surroundings: "open hole" | "cased";
	/** Hole, washed out if the volume basis is, or the bore of the string outside. */
	readonly outer: Known<"diameter">;
	/** The string itself; absent above a liner, where the hole is a bore. */
	readonly inner?: Known<"diameter">;
	readonly length: Known<"length">;
	readonly capacity: Known<"capacity">;
	/** Without excess. */
	readonly volume: Known<"volume">;
}

/**
 * The annulus of a string between two depths, cut wherever the pipe, the pipe outside it or the hole changes.
 *
 * Pipe is counted at its body; couplings and centralizers take no room. Below the shoe outside, the hole is the one that
 * was drilled there: in the rathole under that shoe it is still the earlier, larger hole.
 */
export const annulusIntervals = (
	well: Pick<Well, "strings" | "holes">,
	string: CasingString,
	basis: Basis,
	top: Depth,
	bottom: Depth,
): readonly AnnulusInterval[] => {
	const outside = outerStrings(well.strings, string);
	const changes = [
		string.top,
		...string.sections.map((s) => s.bottom),
		...outside.flatMap((o) => [o.top, o.shoe, ...o.sections.map((s) => s.bottom)]),
		...well.holes.flatMap((hole) => [hole.top, hole.bottom]),
	];
	return piecesBetween(top, bottom, changes).flatMap((piece) => {
		const at = middleOf(piece);
		const around = surroundingsAt(well, outside, basis, piece);
		return around === undefined ? [] : [interval(piece, around, pipeAt(string, at))];
	});
};

const interval = (
	[top, bottom]: readonly [Depth, Depth],
	around: Pick<AnnulusInterval, "surroundings" | "outer">,
	inner: Known<"diameter"> | undefined,
): AnnulusInterval => {
	const length = intervalLength.of({ MD_top: top, MD_bottom: bottom });
	const capacity =
		inner === undefined
			? pipeCapacity.of({ d: around.outer })
			: annularCapacity.of({ D: around.outer, d: inner });
	return {
		top,
		bottom,
		...around,
		...(inner === undefined ? {} : { inner }),
		length,
		capacity,
		volume: intervalVolume.of({ C: capacity, L: length }),
	};
};

/** The strings around a string, the nearest first. */
export const outerStrings = (
	strings: readonly CasingString[],
	string: CasingString,
): readonly CasingString[] => {
	const next = strings.find((s) => s.id === string.within);
	return next === undefined ? [] : [next, ...outerStrings(strings, next)];
};

/** Above a liner there is the string it is run on, where that is given; above a hanger the landing joint goes on. */
const pipeAt = (string: CasingString, at: number): Known<"diameter"> | undefined =>
	string.kind === "liner" && at < string.top.value
		? string.runningString?.outsideDiameter
		: sectionAt(string.sections, at)?.outsideDiameter;

const surroundingsAt = (
	well: Pick<Well, "holes">,
	outside: readonly CasingString[],
	basis: Basis,
	piece: readonly [Depth, Depth],
): Pick<AnnulusInterval, "surroundings" | "outer"> | undefined => {
	const at = middleOf(piece);
	const cased = outside.find((o) => at < o.shoe.value && (o.kind !== "liner" || at >= o.top.value));
	const section = cased && sectionAt(cased.sections, at);
	if (section !== undefined) return { surroundings: "cased", outer: section.insideDiameter };
	const hole = holeAt(well.holes, at);
	return (
		hole && {
			surroundings: "open hole",
			outer: holeDiameter(hole, basis, piece),
		}
	);
};

/** The hole drilled at a depth; above the first it is the first. */
export const holeAt = (holes: readonly Hole[], at: number): Hole | undefined =>
	holes.find((hole) => at < hole.bottom.value);

/**
 * The diameter that volumes are counted with, over a stretch. By caliper it is the one of equal volume; without a log the
 * caliper's mean enlargement is written as the hole's washout.
 */
export const holeDiameter = (
	hole: Hole,
	basis: Basis,
	[top, bottom]: readonly [Depth, Depth],
): Known<"diameter"> => {
	if (basis === "gauge hole") return hole.diameter;
	if (basis === "caliper" && hole.caliper !== undefined)
		return caliperDiameter.of({
			log: hole.caliper,
			MD_top: top,
			MD_bottom: bottom,
		});
	return hole.washout === undefined
		? hole.diameter
		: washedOutDiameter.of({ D: hole.diameter, w: hole.washout });
};

export const annulusVolume = (intervals: readonly AnnulusInterval[]): Known<"volume"> =>
	totalVolume.of({ V_i: intervals.map((i) => i.volume) });
