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
	"calc/breaks-rock-while-placing": {
		severity: "warning",
		title: "The cement job breaks rock down before it is done",
		explain:
			"The pressure outside the pipe is worked at every depth of open hole and at steps through the whole job, moving fluid " +
			"included. Where it passes what the rock stands, cement is lost into it and the column ends lower than planned. Pump slower, " +
			"lighten the slurry, shorten the column, or set a stage tool above the weak zone.",
	},
	"calc/flows-while-placing": {
		severity: "warning",
		title: "The cement job lets rock flow before it is done",
		explain:
			"At some step the fluids at rest in the annulus weigh less than the rock's own pressure, often while a light spacer passes. " +
			"What flows in then channels the cement. Shorten or weight the spacer, or hold pressure on the annulus.",
	},
	"calc/lifts-casing": {
		severity: "warning",
		title: "The cement job lifts the casing",
		explain:
			"Heavy slurry outside pushes on the end of the string; light fluid inside does not hold it down. Where the push is the greater " +
			"the string moves up the hole unless it is held. Displace with a heavier fluid, chain the string down, or lighten the slurry.",
	},
	"calc/sets-before-placed": {
		severity: "warning",
		title: "A slurry thickens before the plug lands",
		explain:
			"The time from mixing a slurry to the landing of the plug is longer than its thickening time. It would set in the pipe. Pump " +
			"faster or retard the slurry; the laboratory's test has to be longer than the job with time to spare.",
	},
	"calc/bump-above-limit": {
		severity: "warning",
		title: "Bumping the plug passes a limit",
		explain:
			"The pressure at which the plug is to be bumped lies above what the casing, its test or the wellhead is good for. Slow down " +
			"before the plug lands, or bump with less.",
	},
	"calc/drill-out-before-strength": {
		severity: "warning",
		title: "Drill-out is planned before the cement is strong enough",
		explain:
			"The cement at the shoe is drilled at a time at which its tested strength lies below the figure stated, or below the 500 psi " +
			"that are common practice. A shoe drilled green loses its seal. Wait longer, or have the laboratory show an earlier strength.",
	},
	"calc/cement-short-of-water": {
		severity: "warning",
		title: "Recorded cement stops short of a water zone",
		explain:
			"The top of cement on record lies below the top of a water zone that the string passes, and no cement of another string is " +
			"there. Steel alone stands between the well and that water. Find the top, tell the agency, and place what is missing.",
	},
	"calc/no-returns": {
		severity: "warning",
		title: "More cement was pumped than calculated, and none came back",
		explain:
			"The record shows at least the calculated volume pumped for a column planned to the surface, and no cement at the surface. It " +
			"has gone somewhere else. The planned top cannot be taken as reached: find the top by a survey or a log before relying on it.",
	},
	"calc/kick-not-held": {
		severity: "warning",
		title: "A shoe does not hold the design kick",
		explain:
			"With its top at the shoe, a single bubble of the design kick's volume breaks the rock there. Set the shoe deeper, test it " +
			"to more, drill the hole in shorter steps, or state a smaller kick for a hole whose pressures are known.",
	},
	"calc/preventers-too-weak": {
		severity: "warning",
		title: "Gas may bring more to surface than the preventers are rated for",
		explain:
			"The anticipated surface pressure of the hole below is compared with the rated working pressure of the preventers on the string " +
			"it is drilled out of. Preventers rated for less cannot be relied on to hold it. Fit stronger ones, or show a lower pressure.",
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
