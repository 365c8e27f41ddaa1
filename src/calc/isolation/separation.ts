import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Vertical distance from a shallower place to a deeper one; negative where the order is the other way [ft]. */
export const verticalSeparation = formula({
	id: "isolation/vertical-separation",
	name: "Vertical separation",
	expression: "TVD_lower − TVD_upper",
	source: cite("definition", "both from the same datum"),
	inputs: { lower: "true-vertical-depth", upper: "true-vertical-depth" },
	gives: "offset",
	compute: ({ lower, upper }) => lower - upper,
});

/** The same, when the rock opened above the perforations is taken off [ft]. */
export const separationAboveFracture = formula({
	id: "isolation/separation-above-fracture",
	name: "Vertical separation less an allowance for fracture height",
	expression: "TVD_lower − TVD_upper − growth",
	source: cite("definition", "both from the same datum"),
	inputs: { separation: "offset", growth: "length" },
	gives: "offset",
	compute: ({ separation, growth }) => separation - growth,
});

/** Depth of the bottom of a neighbor's well from this well's datum [ft]. */
export const neighborWellBottom = formula({
	id: "isolation/neighbor-well-bottom",
	name: "Bottom of a neighbor's water well",
	expression: "TVD = depth below its own ground + datum above ground",
	source: cite("definition"),
	inputs: { depth: "depth-below-ground", datum: "length" },
	gives: "true-vertical-depth",
	validity: "the neighbor's ground taken at the elevation of this well's",
	compute: ({ depth, datum }) => depth + datum,
});

/** How many there are [count]. */
export const columnsAcross = formula({
	id: "isolation/columns-across",
	name: "Columns across a depth",
	expression: "number with top ≤ z ≤ bottom",
	source: cite("definition", "a column counts where it spans the depth"),
	inputs: {
		depth: "true-vertical-depth",
		tops: { many: "true-vertical-depth" },
		bottoms: { many: "true-vertical-depth" },
	},
	gives: "count",
	validity: "one top for each bottom",
	compute: ({ depth, tops, bottoms }) =>
		tops.length !== bottoms.length
			? Number.NaN
			: tops.filter((top, i) => top <= depth && depth <= (bottoms[i] ?? Number.NEGATIVE_INFINITY)).length,
});
