import type { Entries } from "../entries.ts";

/** Faults in what is written of cement jobs. */
export const WELL_CEMENT = {
	"well/slurry-figures.what": [
		"the {role} slurry lacks: {missing}",
		"What is wrong, for well/slurry-figures. role: role of a slurry, such as lead; missing: a list of figures.",
	],
	"well/slurry-figures.expected": [
		"density, yield and water; or components, with the mix water or the density wanted",
		"What is expected instead, for well/slurry-figures.",
	],
	"well/slurry-figures.mend": [
		"add the laboratory's figures, or `components: []` where the cement is mixed neat",
		"What to do about it, for well/slurry-figures.",
	],
	"well/slurry-material.what": [
		"{material} is not a known material, and its specific gravity is not given",
		"What is wrong, for well/slurry-material. material: as typed.",
	],
	"well/slurry-material.has-no-amount": [
		"{material} has no amount",
		"What is wrong, for well/slurry-material. material: as typed.",
	],
	"well/slurry-material.has-more-than-one-amount": [
		"{material} has more than one amount",
		"What is wrong, for well/slurry-material. material: as typed.",
	],
	"well/slurry-material.expected": [
		"a `specific_gravity`, or one of: {cementAdditives}",
		"What is expected instead, for well/slurry-material. cementAdditives: a list.",
	],
	"well/slurry-material.one-share-share-water-and": [
		"one of `share`, `share_of_water` and `volume`",
		"What is expected instead, for well/slurry-material.",
	],
	"well/slurry-material.mend": [
		"state the specific gravity from its data sheet",
		"What to do about it, for well/slurry-material.",
	],
	"well/slurry-material.leave-one-amount": [
		"give one amount",
		"What to do about it, for well/slurry-material.",
	],
	"well/cement-class.what": [
		"this class of cement is not known here",
		"What is wrong, for well/cement-class.",
	],
	"well/cement-class.expected": [
		"one of: {cementClasses}",
		"What is expected instead, for well/cement-class. cementClasses: a list.",
	],
	"well/cement-class.mend": [
		"correct the class; the slurry's own density, yield and water are used in any case",
		"What to do about it, for well/cement-class.",
	],
	"well/top-below-bottom.slurry-string-ends-at-or": [
		"the {role} slurry of the {string} string ends at or above its top",
		"What is wrong, for well/top-below-bottom. role: role of a slurry, such as lead; string: short name of a string, as typed.",
	],
	"well/top-below-bottom.its-top": ["its top", "What a related place is, for well/top-below-bottom."],
	"well/stage-tool.what": [
		"the stage tool of the {string} string is not in the string",
		"What is wrong, for well/stage-tool. string: short name of a string, as typed.",
	],
	"well/stage-tool.expected": [
		"between {top} and the float collar at {collar}",
		"What is expected instead, for well/stage-tool. top: a depth; collar: a depth.",
	],
	"well/stage-tool.mend": ["correct the depth of the tool", "What to do about it, for well/stage-tool."],
	"well/stage-tool.slurry-string-reaches-across-stage": [
		"the {role} slurry of the {string} string spans the stage tool",
		"What is wrong, for well/stage-tool. role: role of a slurry, such as lead; string: short name of a string, as typed.",
	],
	"well/stage-tool.slurry-that-begins-at-tool": [
		"a slurry that begins at the tool, {tool}, or ends at it or below",
		"What is expected instead, for well/stage-tool. tool: a depth.",
	],
	"well/stage-tool.part-slurry-at-tool-or": [
		"split the slurry at the tool, or correct its depths",
		"What to do about it, for well/stage-tool.",
	],
	"well/stage-tool.label": ["the stage tool", "What a related place is, for well/stage-tool."],
	"well/stage-tool.no-slurry-string-begins-at": [
		"no slurry of the {string} string begins at its stage tool",
		"What is wrong, for well/stage-tool. string: short name of a string, as typed.",
	],
	"well/stage-tool.second-stage-that-begins-at": [
		"a second stage that begins at the tool and goes up from it",
		"What is expected instead, for well/stage-tool.",
	],
	"well/stage-tool.add-slurry-second-stage-or": [
		"add the slurry of the second stage, or correct the depth of the tool",
		"What to do about it, for well/stage-tool.",
	],
	"well/stage-tool.nearest-begins-here": [
		"the nearest begins here",
		"What a related place is, for well/stage-tool.",
	],
	"well/slurry-meeting.what": [
		"the {role} and {role2} slurries of the {string} string leave a gap of {step}",
		"What is wrong, for well/slurry-meeting. role: role of a slurry, such as lead; role2: role of the other slurry; string: short name of a string, as typed; step: a length.",
	],
	"well/slurry-meeting.and-slurries-string-overlap-by": [
		"the {role} and {role2} slurries of the {string} string overlap by {step}",
		"What is wrong, for well/slurry-meeting. role: role of a slurry, such as lead; role2: role of the other slurry; string: short name of a string, as typed; step: a length.",
	],
	"well/slurry-meeting.expected": [
		"a slurry that ends at {bottom}",
		"What is expected instead, for well/slurry-meeting. bottom: a depth.",
	],
	"well/slurry-meeting.mend": [
		"make the two meet at one depth",
		"What to do about it, for well/slurry-meeting.",
	],
	"well/slurry-meeting.label": [
		"the {role} slurry begins here",
		"What a related place is, for well/slurry-meeting. role: role of a slurry, such as lead.",
	],
	"well/slurry-bottom.what": [
		"the cement column of the {string} string does not begin at its shoe",
		"What is wrong, for well/slurry-bottom. string: short name of a string, as typed.",
	],
	"well/slurry-bottom.mend": [
		"begin the deepest slurry at the shoe",
		"What to do about it, for well/slurry-bottom.",
	],
	"well/slurry-bottom.label": ["the shoe", "What a related place is, for well/slurry-bottom."],
	"well/slurry-top.what": [
		"the {role} slurry of the {string} string ends above ground level",
		"What is wrong, for well/slurry-top. role: role of a slurry, such as lead; string: short name of a string, as typed.",
	],
	"well/slurry-top.slurry-string-ends-above-top": [
		"the {role} slurry of the {string} string ends above the top of the string",
		"What is wrong, for well/slurry-top. role: role of a slurry, such as lead; string: short name of a string, as typed.",
	],
	"well/slurry-top.expected": [
		"`surface`, or a depth below ground level",
		"What is expected instead, for well/slurry-top.",
	],
	"well/slurry-top.at-least": [
		"at least {ceiling}",
		"What is expected instead, for well/slurry-top. ceiling: a depth.",
	],
	"well/slurry-top.mend": [
		"write `surface` for cement that comes to ground level",
		"What to do about it, for well/slurry-top.",
	],
	"well/slurry-top.end-column-at-top-string": [
		"end the column at the top of the string; what is pumped beyond it belongs in the excess",
		"What to do about it, for well/slurry-top.",
	],
	"well/no-caliper.what": [
		"volumes are set to the caliper, but the {hole} hole has none",
		"What is wrong, for well/no-caliper. hole: short name of a drilled section.",
	],
	"well/no-caliper.expected": [
		"`caliper` or `actual.washout` of that hole",
		"What is expected instead, for well/no-caliper.",
	],
	"well/no-caliper.mend": [
		"name the log, record the enlargement, or write `washed-out hole`",
		"What to do about it, for well/no-caliper.",
	],
	"well/sacks-volume.what": [
		"sacks and yield of the {role} slurry do not give the stated volume",
		"What is wrong, for well/sacks-volume. role: role of a slurry, such as lead.",
	],
	"well/sacks-volume.expected": [
		"about {mixed}, which is {sacks} sacks of {slurryYield}",
		"What is expected instead, for well/sacks-volume. mixed: a volume; sacks: how many; slurryYield: yield of a sack.",
	],
	"well/sacks-volume.mend": [
		"correct the one that is wrong, or state only sacks or volume",
		"What to do about it, for well/sacks-volume.",
	],
	"well/sacks-volume.label": ["the sacks", "What a related place is, for well/sacks-volume."],
	"well/neat-slurry.what": [
		"{others} of the {role} slurry are those of neat class {row}, but its {odd} is not",
		"What is wrong, for well/neat-slurry. others: a list of figures of a slurry; role: role of a slurry, such as lead; row: row of the catalogue, or a value of it; odd: a figure of a slurry.",
	],
	"well/neat-slurry.expected": [
		"about {row}",
		"What is expected instead, for well/neat-slurry. row: row of the catalogue, or a value of it.",
	],
	"well/neat-slurry.mend": [
		"correct the {odd}, or list what else is in the blend under `additives`",
		"What to do about it, for well/neat-slurry. odd: a figure of a slurry.",
	],
} as const satisfies Entries;
