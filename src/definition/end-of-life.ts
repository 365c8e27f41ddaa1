import type * as z from "zod";
import { EVERY, PUBLIC, RECORD } from "./audience.ts";
import { measuredDepth, measuredDepthOrSurface } from "./depth-field.ts";
import { date, entry, flag, group, list, optional, text } from "./field.ts";
import { count, q } from "./quantity-field.ts";

const plug = entry("Plug", "Cement inside the well when it is abandoned.", EVERY, {
	what: text("What it closes", "Says why it is there.", EVERY, "base of protected water"),
	from: measuredDepthOrSurface("Top", "Of the cement.", EVERY),
	to: measuredDepth("Bottom", "Of the cement.", EVERY),
	on: optional(text("Set on", "What the cement stands on.", RECORD, "bridge plug")),
	excess: optional(q("share", "Excess", "Against mixing with the mud.", RECORD)),
	tagged: optional(flag("Tagged", "Whether its top is felt for afterwards.", RECORD)),
	rule: optional(text("Rule", "Which rule asks for it.", RECORD)),
});

const care = entry("Visit", "What is looked after once the well is treated, and when.", EVERY, {
	what: text("What", "What is done.", EVERY, "water samples from wells within half a mile"),
	first: date("First", "When it is first done.", EVERY),
	every_months: optional(count("Months between", "Absent where it is done once.", EVERY)),
	times: optional(count("Times", "How often in all.", EVERY)),
	by: optional(text("By", "Who does it.", EVERY)),
});

/** What becomes of the well: after-care while it stands, and its abandonment. */
export const endOfLife = group("End of life", "Neighbors ask what stays behind, and who pays.", EVERY, {
	plugs: optional(list("Plugs", "From the bottom up.", EVERY, plug)),
	slurry: optional(
		group("Plugging slurry", "Turns volumes into sacks.", RECORD, {
			density: optional(q("density", "Density", "As mixed.", RECORD)),
			yield: q("slurry-yield", "Yield", "Slurry from a sack.", RECORD),
		}),
	),
	cut_below_ground: optional(q("length", "Pipe cut below ground", "So that a plow passes.", EVERY)),
	restoration: optional(text("Restoration", "What the ground is put back to.", PUBLIC)),
	paid_by: optional(text("Paid by", "Who pays for it.", PUBLIC)),
	bond: optional(text("Bond", "What secures it.", PUBLIC, "state blanket bond of 250,000 dollars")),
	after_care: optional(list("After-care", "Annulus readings and water samples, as a calendar.", EVERY, care)),
});

export type EndOfLifeDefinition = z.output<typeof endOfLife>;
