import { constant, type Known } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { CasingString, PipeSection, Well } from "../../well/well.ts";
import { intervalLength, intervalVolume, pipeCapacity, totalVolume } from "./capacity.ts";
import { middleOf, piecesBetween } from "./cuts.ts";

type Depth = Known<"measured-depth">;

/** The depth datum, where pipe that is pumped through at the rig floor begins. */
export const DATUM = constant("measured-depth", 0, "pumping starts at the depth datum", cite("definition"));

/** A length of one bore. */
export interface BoreInterval {
	readonly top: Depth;
	readonly bottom: Depth;
	readonly insideDiameter: Known<"diameter">;
	readonly length: Known<"length">;
	readonly volume: Known<"volume">;
}

/** A length of one bore, with its length and volume. */
export const boreInterval = (top: Depth, bottom: Depth, insideDiameter: Known<"diameter">): BoreInterval => {
	const length = intervalLength.of({ MD_top: top, MD_bottom: bottom });
	return {
		top,
		bottom,
		insideDiameter,
		length,
		volume: intervalVolume.of({ C: pipeCapacity.of({ d: insideDiameter }), L: length }),
	};
};

/**
 * The bore of a string between two depths, by sections. Above its uppermost section that section's bore goes on: the
 * landing joint it is pumped through.
 */
export const boreIntervals = (
	string: Pick<CasingString, "sections">,
	top: Depth,
	bottom: Depth,
): readonly BoreInterval[] => {
	const { sections } = string;
	const changes = sections.flatMap((s) => [s.top, s.bottom]);
	return piecesBetween(top, bottom, changes).flatMap((piece) => {
		const section = sectionAt(sections, middleOf(piece));
		return section === undefined ? [] : [boreInterval(piece[0], piece[1], section.insideDiameter)];
	});
};

/** The section at a depth; above the first it is the first, below the last the last. */
export const sectionAt = (sections: readonly PipeSection[], md: number): PipeSection | undefined =>
	sections.find((s) => md < s.bottom.value) ?? sections.at(-1);

export const boreVolume = (intervals: readonly BoreInterval[]): Known<"volume"> =>
	totalVolume.of({ V_i: intervals.map((i) => i.volume) });

/** The strings that are pumped through to reach the bottom of one: itself, and above a liner what leads to it. */
export const pathStrings = (strings: readonly CasingString[], id: string): readonly CasingString[] => {
	const string = strings.find((s) => s.id === id);
	if (string === undefined) return [];
	const tieback = strings.find((s) => s.kind === "tieback" && s.within === string.within && s !== string);
	return string.kind === "liner"
		? [...pathStrings(strings, tieback?.id ?? string.within ?? ""), string]
		: [string];
};

/**
 * The bores that a treatment is pumped down to a depth: those of the treating string, where there is one, and below its
 * end those of the string treated through.
 */
export const treatedPath = (well: Well, to: Depth): readonly BoreInterval[] => {
	const { treatedThrough = "", treatingString } = well.stimulation ?? {};
	const down = pathDown(well.strings, treatedThrough, to);
	const [first] = treatingString?.sections ?? [];
	const end = treatingString?.sections.at(-1)?.bottom;
	if (treatingString === undefined || first === undefined || end === undefined) return down;
	const inside = end.value < to.value ? end : to;
	const below = down
		.filter(({ bottom }) => bottom.value > inside.value)
		.map((bore) =>
			bore.top.value < inside.value ? boreInterval(inside, bore.bottom, bore.insideDiameter) : bore,
		);
	return [...boreIntervals(treatingString, first.top, inside), ...below];
};

/**
 * The bores from the top of the path to a depth in a string. A liner begins where it hangs; above it stands its tieback,
 * else the string that it hangs in.
 */
export const pathDown = (
	strings: readonly CasingString[],
	id: string,
	to: Depth,
): readonly BoreInterval[] => {
	const path = pathStrings(strings, id);
	return path.flatMap((string, i) => boreIntervals(string, string.top, path[i + 1]?.top ?? to));
};
