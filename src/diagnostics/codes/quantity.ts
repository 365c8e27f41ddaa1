import type { CodeEntry } from "../codes.ts";

/** Faults of a written number and its unit. */
export const QUANTITY_CODES = {
	"quantity/comma": {
		severity: "error",
		title: "A comma in a number",
		explain:
			"To one reader a comma marks thousands and to another decimals; inside { } and [ ] YAML even cuts the " +
			"number in two there. Write 3250 ft, not 3,250 ft.",
	},
	"quantity/depth-reference": {
		severity: "error",
		title: "A depth counted from the wrong place",
		explain:
			"Depth along the hole, depth straight down from the datum (TVD) and depth below ground differ, in a " +
			"horizontal well by thousands of feet. Each field takes only those that make sense for it; the value " +
			"says which it is.",
	},
	"quantity/digit-space": {
		severity: "error",
		title: "A space or a mark inside a number",
		explain:
			"1 200 ft may be 1200 ft or a slip of the finger, and 1_200 ft and 1'200 ft are read so by some programs and not by " +
			"others. Write the digits together.",
	},
	"quantity/improper-fraction": {
		severity: "error",
		title: "A fraction of one or more",
		explain:
			"95/8 in is nearly always 9 5/8 in with its space lost. Write the whole number, a space and the " +
			"fraction.",
	},
	"quantity/letter-case": {
		severity: "error",
		title: "A unit in letters of another case",
		explain:
			"mPa is a thousandth of a pascal and MPa a million of them. Where the case changes the meaning, it " +
			"must be right.",
	},
	"quantity/negative": {
		severity: "error",
		title: "A value below zero",
		explain:
			"This quantity has no meaning below zero. " +
			"A minus that slipped in would turn a volume or a depth around, so it is not dropped in silence. Take it out.",
	},
	"quantity/no-unit": {
		severity: "error",
		title: "A number without its unit",
		explain:
			"Numbers without units are how feet become meters. Every quantity carries its unit; the message lists " +
			"those it may have.",
	},
	"quantity/not-a-number": {
		severity: "error",
		title: "Not a quantity",
		explain:
			"A quantity begins with a number and goes on with its unit: 54.5 lb/ft, 9 5/8 in, 10 deg/100 ft. " +
			"Words such as `about` or `max` before it are no part of a value; put them in a remark.",
	},
	"quantity/not-finite": {
		severity: "error",
		title: "Not a finite number",
		explain:
			"The number is too large to be one, or is written as infinity. " +
			"Look at its exponent: 4.2e6 is 4,200,000.",
	},
	"quantity/several-numbers": {
		severity: "error",
		title: "More than one number",
		explain:
			"A value is one number and its unit: a range (4300 to 4500 psi) or a tolerance (4300 psi ± 50) would leave open which one " +
			"is calculated with. Write the value that the plan is to be held to; where a field takes a list, put each in its place.",
	},
	"quantity/unknown-unit": {
		severity: "error",
		title: "A unit that does not measure this",
		explain:
			"The unit is not known, or it measures something else: bbl is no pressure. The message lists those " +
			"that fit.",
	},
} as const satisfies Record<string, CodeEntry>;
