import type { CodeEntry } from "../codes.ts";

/** Faults of slurries, of the way they are placed, and of what the record of a job shows. */
export const CEMENT_CODES = {
	"well/slurry-figures": {
		severity: "error",
		title: "A slurry has neither its figures nor what it is made of",
		explain:
			"A slurry is given by its density, yield and mix water, or by its components with the mix water or the density wanted. " +
			"Without either there are no sacks, no weight and no pressure. State the laboratory's figures, or the components.",
	},
	"well/slurry-material": {
		severity: "error",
		title: "A component of a slurry cannot be worked with",
		explain:
			"The volume of a material in a slurry follows from its specific gravity. Materials of the list that ships have one; " +
			"others state it. Each has one amount: a share by weight of cement, a share by weight of water, or a volume for a sack.",
	},
	"well/caliper": {
		severity: "error",
		title: "A caliper log cannot be used",
		explain:
			"A caliper has a depth and a diameter a row, from the top down. Volumes are worked between the rows, so an order that " +
			"goes back or a diameter of nothing would give a volume that is wrong without looking wrong.",
	},
	"calc/slurry-design": {
		severity: "warning",
		title: "A slurry's figures and its components disagree",
		explain:
			"Where a slurry has both its figures and its components, the components are worked by absolute volume and compared. A " +
			"difference beyond rounding means that one of them belongs to another blend: weight, sacks or water would be wrong on the " +
			"day. The stated figures are used. Ask the laboratory which is right.",
	},
	"calc/slurry-not-designed": {
		severity: "error",
		title: "A slurry cannot be worked from its components",
		explain:
			"The components, with the mix water or the density wanted, do not make a slurry: a density below water's or above the dry " +
			"mix's, or no water at all. Correct the amounts, or state the laboratory's density, yield and water.",
	},
	"calc/fracture-correlation": {
		severity: "warning",
		title: "A correlation for the fracture gradient lacks an input",
		explain:
			"Eaton's method takes overburden, pore pressure and Poisson's ratio; Matthews and Kelly's takes overburden, pore pressure and " +
			"the coefficient of the region; Hubbert and Willis' takes pore pressure. Without them the formation has no fracture gradient, " +
			"and what depends on it cannot be told.",
	},
} as const satisfies Record<string, CodeEntry>;
