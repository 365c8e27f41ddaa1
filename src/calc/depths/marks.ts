import { formula } from "../../cite/formula.ts";
import type { Known, KnownTable } from "../../cite/known.ts";
import { cite } from "../../cite/source.ts";
import type { Datum } from "../../well/well.ts";
import type { DepthMark, HoleMark } from "../results.ts";
import { tvdAt } from "../trajectory/at-depth.ts";
import { mdAtTvd } from "../trajectory/md-at-tvd.ts";

/** Negative above the ground: the rotary table itself. */
export const depthBelowGround = formula({
	id: "depths/below-ground",
	name: "Depth below ground",
	expression: "TVD − height of the depth datum above ground",
	source: cite("definition"),
	inputs: { TVD: "true-vertical-depth", height: "length" },
	gives: "depth-below-ground",
	compute: ({ TVD, height }) => TVD - height,
});

/** The datum that depths are counted from, as far as marks need it. */
export type MarkDatum = Pick<Datum, "aboveGround">;

const belowGround = (tvd: Known<"true-vertical-depth">, datum: MarkDatum): Known<"depth-below-ground"> =>
	depthBelowGround.of({ TVD: tvd, height: datum.aboveGround });

/**
 * A place in the hole, given along it.
 *
 * @param md  at or below the path's first station; past the last one the hole is taken straight
 */
export const holeMark = (path: KnownTable, md: Known<"measured-depth">, datum: MarkDatum): HoleMark => {
	const tvd = tvdAt(path, md);
	return { md, tvd, below_ground: belowGround(tvd, datum) };
};

/** A place given vertically. `md` is where the hole first passes it; absent where the hole does not reach so deep. */
export const verticalMark = (
	path: KnownTable,
	tvd: Known<"true-vertical-depth">,
	datum: MarkDatum,
): DepthMark => {
	const { md, passes } = mdAtTvd(path, tvd);
	return {
		...(md === undefined ? {} : { md }),
		tvd,
		below_ground: belowGround(tvd, datum),
		...(passes === undefined ? {} : { passes }),
	};
};
