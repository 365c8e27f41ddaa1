import { formula } from "../../cite/formula.ts";
import { cite } from "../../cite/source.ts";

/** Vertical distance from a shallower place to a deeper one; negative where the order is the other way [ft]. */
export const verticalSeparation = formula({
	id: "isolation/vertical-separation",
	name: "Vertical separation",
	expression: "TVD_lower − TVD_upper",
	source: cite("definition", "both from the same datum"),
	inputs: {
		TVD_lower: "true-vertical-depth",
		TVD_upper: "true-vertical-depth",
	},
	gives: "offset",
	compute: ({ TVD_lower, TVD_upper }) => TVD_lower - TVD_upper,
});

/** The same, when the rock opened above the perforations is taken off [ft]. */
export const separationAboveFracture = formula({
	id: "isolation/separation-above-fracture",
	name: "Vertical separation less an allowance for fracture height",
	expression: "S − g",
	source: cite("definition", "both from the same datum"),
	inputs: { S: "offset", g: "length" },
	gives: "offset",
	compute: ({ S, g }) => S - g,
});

/** Depth of the bottom of a neighbor's well from this well's datum [ft]. */
export const neighborWellBottom = formula({
	id: "isolation/neighbor-well-bottom",
	name: "Bottom of a neighbor's water well",
	expression: "TVD = D + a, D below the neighbor's own ground, a the datum above ground",
	source: cite("definition"),
	inputs: { D: "depth-below-ground", a: "length" },
	gives: "true-vertical-depth",
	validity: "the neighbor's ground taken at the elevation of this well's",
	compute: ({ D, a }) => D + a,
});

/** How many there are [count]. */
export const columnsAcross = formula({
	id: "isolation/columns-across",
	name: "Columns across a depth",
	expression: "number with TVD_top ≤ z ≤ TVD_bottom",
	source: cite("definition", "a column counts where it spans the depth"),
	inputs: {
		z: "true-vertical-depth",
		TVD_top: { many: "true-vertical-depth" },
		TVD_bottom: { many: "true-vertical-depth" },
	},
	gives: "count",
	validity: "one top for each bottom",
	compute: ({ z, TVD_top, TVD_bottom }) =>
		TVD_top.length !== TVD_bottom.length
			? Number.NaN
			: TVD_top.filter((upper, i) => upper <= z && z <= (TVD_bottom[i] ?? Number.NEGATIVE_INFINITY)).length,
});

/** Layers that cover a zone whole [count]. */
export const layersSpanning = formula({
	id: "isolation/layers-spanning",
	name: "Layers across a zone",
	expression: "number with TVD_top ≤ z_top and z_base ≤ TVD_bottom",
	source: cite("definition", "a layer counts where it spans the zone from top to base"),
	inputs: {
		z_top: "true-vertical-depth",
		z_base: "true-vertical-depth",
		TVD_top: { many: "true-vertical-depth" },
		TVD_bottom: { many: "true-vertical-depth" },
	},
	gives: "count",
	validity: "one top for each bottom; a base no shallower than the top",
	compute: ({ z_top, z_base, TVD_top, TVD_bottom }) =>
		TVD_top.length !== TVD_bottom.length || z_base < z_top
			? Number.NaN
			: TVD_top.filter((upper, i) => upper <= z_top && z_base <= (TVD_bottom[i] ?? Number.NEGATIVE_INFINITY))
					.length,
});
