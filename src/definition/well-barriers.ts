import type * as z from "zod";
import { RECORD } from "./audience.ts";
import { measuredDepth } from "./depth-field.ts";
import { date, entry, flag, list, oneOf, optional, reference, text } from "./field.ts";
import { q } from "./quantity-field.ts";

/** Parts of a well's life in which its barriers are counted. */
const BARRIER_PHASES = ["drilling", "cementing", "treating", "producing", "shut in"] as const;

/** What a barrier is made of. */
const BARRIER_ELEMENTS = [
	"fluid column",
	"casing",
	"casing cement",
	"wellhead",
	"preventers",
	"diverter",
	"floats",
	"plug",
	"packer",
	"tubing",
	"safety valve",
	"production tree",
] as const;

const element = entry(
	"Barrier element",
	"One thing that holds the well back, and how it is known to.",
	RECORD,
	{
		phase: oneOf(BARRIER_PHASES, "Phase", "Barriers change as the well is built and used.", RECORD),
		of: optional(
			reference(
				"Hole or string",
				"Of drilling the hole, of cementing the string; every one if absent.",
				RECORD,
			),
		),
		barrier: oneOf(["primary", "secondary"], "Barrier", "The first to hold, or the one behind it.", RECORD),
		element: oneOf(BARRIER_ELEMENTS, "Element", "What holds.", RECORD),
		depth: optional(measuredDepth("Depth", "Where it is set.", RECORD)),
		test: optional(q("pressure", "Test pressure", "What it was tested to, or is to be.", RECORD)),
		date: optional(date("Date tested", "A test on record counts for more than a plan.", RECORD)),
		verified_by: optional(text("Verified by", "Who saw the test, or the record of it.", RECORD)),
		counted: optional(
			flag("Counted as a barrier", "`false` takes out an element that cannot be relied on.", RECORD),
		),
	},
);

/** What the definition does not tell of the barriers elsewhere: tubing, tree, plugs; tests, dates, who verified them. */
export const wellBarriers = list(
	"Well barriers",
	"Elements and tests beyond those that strings, cement, wellhead, packer and preventers state.",
	RECORD,
	element,
);

export type WellBarriers = z.output<typeof wellBarriers>;
