import type { Entries } from "../entries.ts";

/** Faults in what is written of strings, pipe and tallies. */
export const WELL_PIPE = {
	"well/unknown-pipe.outside-catalogue": [
		"or, for pipe outside the catalogue, state both `weight` and `wall`",
		"What to do about it, for well/unknown-pipe.",
	],
	"well/unknown-pipe.what": [
		"the catalogue has no casing of this outside diameter",
		"What is wrong, for well/unknown-pipe.",
	],
	"well/unknown-pipe.expected": [
		"a listed size; the nearest are {names}",
		"What is expected instead, for well/unknown-pipe. names: a list.",
	],
	"well/unknown-pipe.mend": [
		"correct the diameter, {outside}",
		"What to do about it, for well/unknown-pipe. outside: the clause of unknown-pipe.outside-catalogue.",
	],
	"well/unknown-pipe.catalogue-has-no-casing-this": [
		"the catalogue has no {size} casing of this weight",
		"What is wrong, for well/unknown-pipe. size: size of pipe.",
	],
	"well/unknown-pipe.listed-weight-nearest-are": [
		"a listed weight; the nearest are {weights}",
		"What is expected instead, for well/unknown-pipe. weights: a list of weights.",
	],
	"well/unknown-pipe.correct-weight": [
		"correct the weight, {outside}",
		"What to do about it, for well/unknown-pipe. outside: the clause of unknown-pipe.outside-catalogue.",
	],
	"well/unknown-pipe.catalogue-has-no-casing-this-2": [
		"the catalogue has no {size} casing of this wall",
		"What is wrong, for well/unknown-pipe. size: size of pipe.",
	],
	"well/unknown-pipe.listed-wall-nearest-are": [
		"a listed wall; the nearest are {walls}",
		"What is expected instead, for well/unknown-pipe. walls: a list of wall thicknesses.",
	],
	"well/unknown-pipe.correct-wall": [
		"correct the wall, {outside}",
		"What to do about it, for well/unknown-pipe. outside: the clause of unknown-pipe.outside-catalogue.",
	],
	"well/unknown-grade.what": [
		"the strength of this grade is not in the catalogue",
		"What is wrong, for well/unknown-grade.",
	],
	"well/unknown-grade.expected": [
		"one of: {grades}",
		"What is expected instead, for well/unknown-grade. grades: a list.",
	],
	"well/unknown-grade.mend": [
		"correct the grade, or state `minimum_yield` for a maker's own",
		"What to do about it, for well/unknown-grade.",
	],
	"well/unknown-grade.write-if-that-is-one": [
		"write {near} if that is the one meant, or state `minimum_yield` for a maker's own",
		"What to do about it, for well/unknown-grade. near: the nearest name, or a distance in degrees.",
	],
	"well/pipe-wall.what": [
		"the catalogue has another wall for {row}",
		"What is wrong, for well/pipe-wall. row: row of the catalogue, or a value of it.",
	],
	"well/pipe-wall.mend": [
		"state weight or wall alone, or correct the one that is wrong",
		"What to do about it, for well/pipe-wall.",
	],
	"well/grade-not-listed.what": [
		"{row} is not listed in {grade}",
		"What is wrong, for well/grade-not-listed. row: row of the catalogue, or a value of it; grade: grade of steel.",
	],
	"well/grade-not-listed.mend": [
		"confirm the pipe with its mill certificate, or correct the grade or the weight",
		"What to do about it, for well/grade-not-listed.",
	],
	"well/connection-unrated.what": [
		"the strength of {connection} is not known",
		"What is wrong, for well/connection-unrated. connection: as typed.",
	],
	"well/connection-unrated.expected": [
		"a connection of the standard (STC, LTC, BTC, plain end), or stated ratings",
		"What is expected instead, for well/connection-unrated.",
	],
	"well/connection-unrated.mend": [
		"state its ratings from the maker's data sheet under `ratings`",
		"What to do about it, for well/connection-unrated.",
	],
	"well/connection-size.what": [
		"there is no {standard} on {row} pipe",
		"What is wrong, for well/connection-size. standard: a standard connection, such as BTC; row: row of the catalogue, or a value of it.",
	],
	"well/connection-size.expected": [
		"STC, BTC or plain end, or a maker's own connection",
		"What is expected instead, for well/connection-size.",
	],
	"well/connection-size.mend": [
		"name the connection that the pipe has",
		"What to do about it, for well/connection-size.",
	],
	"well/connection-size.there-is-no-special-clearance": [
		"there is no special-clearance coupling on {sized} pipe",
		"What is wrong, for well/connection-size. sized: size and weight of pipe.",
	],
	"well/connection-size.btc-or-couplings-own-diameter": [
		"BTC, or the coupling's own diameter under `coupling_od`",
		"What is expected instead, for well/connection-size.",
	],
	"well/connection-size.name-connection-that-pipe-has": [
		"name the connection that the pipe has, or state the coupling's diameter",
		"What to do about it, for well/connection-size.",
	],
	"well/liner-top.what": [
		"the {string} string does not come to surface, and there is no string before it to hang in",
		"What is wrong, for well/liner-top. string: short name of a string, as typed.",
	],
	"well/liner-top.expected": [
		"`surface` for the outermost string; for a liner, a string to hang in",
		"What is expected instead, for well/liner-top.",
	],
	"well/liner-top.mend": [
		"write `from: surface`, or list the strings from the outermost inward",
		"What to do about it, for well/liner-top.",
	],
	"well/strings-nest.what": [
		"the {string} string is not narrower than the {string2} string before it",
		"What is wrong, for well/strings-nest. string: short name of a string, as typed; string2: short name of another string.",
	],
	"well/strings-nest.string-is-not-deeper-than": [
		"the {string} string is not deeper than the {string2} string before it",
		"What is wrong, for well/strings-nest. string: short name of a string, as typed; string2: short name of another string.",
	],
	"well/strings-nest.expected": [
		"less than {other}",
		"What is expected instead, for well/strings-nest. other: a value, or a name.",
	],
	"well/strings-nest.deeper-than-shoe-string-at": [
		"deeper than the shoe of the {string} string at {other}",
		"What is expected instead, for well/strings-nest. string: short name of a string, as typed; other: a value, or a name.",
	],
	"well/strings-nest.mend": [
		"write `kind: tieback` if it joins that liner, or correct the depth",
		"What to do about it, for well/strings-nest.",
	],
	"well/strings-nest.list-strings-from-outermost-inward": [
		"list the strings from the outermost inward, or correct the value",
		"What to do about it, for well/strings-nest.",
	],
	"well/strings-nest.label": [
		"the {string} string",
		"What a related place is, for well/strings-nest. string: short name of a string, as typed.",
	],
	"well/tieback-join.what": [
		"the {string} string is a tieback, and the string before it is no liner",
		"What is wrong, for well/tieback-join. string: short name of a string, as typed.",
	],
	"well/tieback-join.tieback-does-not-end-in": [
		"the {string} tieback does not end in the top of the {liner} liner",
		"What is wrong, for well/tieback-join. string: short name of a string, as typed; liner: short name of a liner.",
	],
	"well/tieback-join.expected": [
		"the liner that it joins, listed before it",
		"What is expected instead, for well/tieback-join.",
	],
	"well/tieback-join.at-liners-top-or-at": [
		"at the liner's top, {top}, or at most {longestStem} below",
		"What is expected instead, for well/tieback-join. top: a depth; longestStem: a length.",
	],
	"well/tieback-join.mend": [
		"list it after its liner, or correct its kind",
		"What to do about it, for well/tieback-join.",
	],
	"well/tieback-join.correct-depth": ["correct the depth", "What to do about it, for well/tieback-join."],
	"well/tieback-join.label": ["top of the liner", "What a related place is, for well/tieback-join."],
	"well/liner-top.top-liner-is-not-inside": [
		"the top of the {string} liner is not inside the {string2} string",
		"What is wrong, for well/liner-top. string: short name of a string, as typed; string2: short name of another string.",
	],
	"well/liner-top.between-and-shoe-at": [
		"between {top} and the shoe at {shoe}",
		"What is expected instead, for well/liner-top. top: a depth; shoe: a depth.",
	],
	"well/liner-top.hang-liner-inside-string-before": [
		"hang the liner inside the string before it",
		"What to do about it, for well/liner-top.",
	],
	"well/liner-top.label": [
		"shoe of the {string} string",
		"What a related place is, for well/liner-top. string: short name of a string, as typed.",
	],
	"well/pipe-passage.what": [
		"the coupling of the {string} string, {width}, is wider than the drift of the {string2} string",
		"What is wrong, for well/pipe-passage. string: short name of a string, as typed; width: a diameter; string2: short name of another string.",
	],
	"well/pipe-passage.pipe-string-is-wider-than": [
		"the pipe of the {string} string, {width}, is wider than the drift of the {string2} string",
		"What is wrong, for well/pipe-passage. string: short name of a string, as typed; width: a diameter; string2: short name of another string.",
	],
	"well/pipe-passage.expected": [
		"at most {drift}",
		"What is expected instead, for well/pipe-passage. drift: a diameter.",
	],
	"well/pipe-passage.mend": [
		"choose smaller or flush pipe inside, or lighter pipe outside",
		"What to do about it, for well/pipe-passage.",
	],
	"well/pipe-passage.label": [
		"drift {drift}",
		"What a related place is, for well/pipe-passage. drift: a diameter.",
	],
	"well/pipe-passage.alternate-drift": [
		"order the {row} of the {id} string drifted to {drift}, its alternate drift, and state `drift: {drift}`",
		"What a related place is, for well/pipe-passage. row: row of the catalogue, or a value of it; id: short name of a string or a hole, as typed; drift: a diameter.",
	],
	"well/pipe-hole.what": [
		"the coupling of the {string} string, {width}, does not fit the {hole} hole",
		"What is wrong, for well/pipe-hole. string: short name of a string, as typed; width: a diameter; hole: short name of a drilled section.",
	],
	"well/pipe-hole.pipe-string-does-not-fit": [
		"the pipe of the {string} string, {width}, does not fit the {hole} hole",
		"What is wrong, for well/pipe-hole. string: short name of a string, as typed; width: a diameter; hole: short name of a drilled section.",
	],
	"well/pipe-hole.expected": [
		"less than {diameter}",
		"What is expected instead, for well/pipe-hole. diameter: a diameter.",
	],
	"well/pipe-hole.mend": [
		"drill a wider hole, or run smaller pipe",
		"What to do about it, for well/pipe-hole.",
	],
	"well/pipe-hole.label": [
		"the {hole} hole",
		"What a related place is, for well/pipe-hole. hole: short name of a drilled section.",
	],
	"well/bit-drift.what": [
		"the bit of the {hole} hole is wider than the drift of the {string} string",
		"What is wrong, for well/bit-drift. hole: short name of a drilled section; string: short name of a string, as typed.",
	],
	"well/bit-drift.mend": [
		"choose a smaller bit or lighter pipe, or plan to open the hole",
		"What to do about it, for well/bit-drift.",
	],
	"well/pipe-above-hanger.what": [
		"the {string} string begins above the hanger",
		"What is wrong, for well/pipe-above-hanger. string: short name of a string, as typed.",
	],
	"well/pipe-above-hanger.expected": [
		"`surface`, which is the hanger at {casingHanger}",
		"What is expected instead, for well/pipe-above-hanger. casingHanger: a depth.",
	],
	"well/pipe-above-hanger.mend": [
		"write `from: surface`",
		"What to do about it, for well/pipe-above-hanger.",
	],
	"well/top-below-bottom.run-string-ends-at-or": [
		"run {j} of the {id} string ends at or above its top",
		"What is wrong, for well/top-below-bottom. j: number of a run, from the top; id: short name of a string or a hole, as typed.",
	],
	"well/pipe-meeting.what": [
		"runs {j} and {j2} of the {id} string leave a gap of {step}",
		"What is wrong, for well/pipe-meeting. j: number of a run, from the top; j2: number of the next run; id: short name of a string or a hole, as typed; step: a length.",
	],
	"well/pipe-meeting.runs-and-string-overlap-by": [
		"runs {j} and {j2} of the {id} string overlap by {step}",
		"What is wrong, for well/pipe-meeting. j: number of a run, from the top; j2: number of the next run; id: short name of a string or a hole, as typed; step: a length.",
	],
	"well/pipe-meeting.expected": [
		"a run that begins at {bottom}",
		"What is expected instead, for well/pipe-meeting. bottom: a depth.",
	],
	"well/pipe-meeting.mend": [
		"begin the run where the one above it ends",
		"What to do about it, for well/pipe-meeting.",
	],
	"well/pipe-meeting.label": ["the run above ends here", "What a related place is, for well/pipe-meeting."],
	"well/shoe-below-hole.what": [
		"the shoe of the {string} string is deeper than the {hole} hole",
		"What is wrong, for well/shoe-below-hole. string: short name of a string, as typed; hole: short name of a drilled section.",
	],
	"well/shoe-below-hole.mend": [
		"set the shoe higher, or drill the hole deeper",
		"What to do about it, for well/shoe-below-hole.",
	],
	"well/shoe-below-hole.label": [
		"bottom of the {hole} hole",
		"What a related place is, for well/shoe-below-hole. hole: short name of a drilled section.",
	],
	"well/shoe-above-hole.what": [
		"the {string} string ends above the {hole} hole that it names",
		"What is wrong, for well/shoe-above-hole. string: short name of a string, as typed; hole: short name of a drilled section.",
	],
	"well/shoe-above-hole.mend": [
		"name the hole that the string is run in, or correct the depth",
		"What to do about it, for well/shoe-above-hole.",
	],
	"well/shoe-track.what": [
		"the shoe track of the {string} string is longer than the string",
		"What is wrong, for well/shoe-track. string: short name of a string, as typed.",
	],
	"well/shoe-track.expected": [
		"the distance from float collar to shoe",
		"What is expected instead, for well/shoe-track.",
	],
	"well/shoe-track.mend": ["correct the length", "What to do about it, for well/shoe-track."],
	"well/top-below-bottom.stretch-centralizers-on-string-ends": [
		"an interval of centralizers on the {string} string ends at or above its top",
		"What is wrong, for well/top-below-bottom. string: short name of a string, as typed.",
	],
	"well/centralizer-range.what": [
		"an interval of centralizers extends beyond the {string} string",
		"What is wrong, for well/centralizer-range. string: short name of a string, as typed.",
	],
	"well/centralizer-range.expected": [
		"an interval between {top} and {shoe}",
		"What is expected instead, for well/centralizer-range. top: a depth; shoe: a depth.",
	],
	"well/centralizer-range.mend": [
		"end it at the shoe, or correct the depth",
		"What to do about it, for well/centralizer-range.",
	],
	"well/tally.what": [
		"the joints of the tally are not numbered without a gap or a repetition",
		"What is wrong, for well/tally.",
	],
	"well/tally.expected": [
		"joint {numbers} next",
		"What is expected instead, for well/tally. numbers: number of a joint.",
	],
	"well/tally.mend": [
		"add the missing row, or delete the repeated one",
		"What to do about it, for well/tally.",
	],
	"well/tally.tally-string-has-another-number": [
		"the tally of the {id} string has another number of joints than were run",
		"What is wrong, for well/tally. id: short name of a string or a hole, as typed.",
	],
	"well/tally.correct-number-or-complete-tally": [
		"correct the number, or complete the tally",
		"What to do about it, for well/tally.",
	],
	"well/tally.joints-tally-are-together-and": [
		"the joints of the tally add up to {total}, and the {id} string is {due} long",
		"What is wrong, for well/tally. total: a length; id: short name of a string or a hole, as typed; due: a length.",
	],
	"well/tally.joints-that-reach-from-top": [
		"joints that reach from the top of the string to its shoe, within a joint",
		"What is expected instead, for well/tally.",
	],
	"well/tally.correct-shoe-or-lengths-in": [
		"correct the shoe, or the lengths in the tally",
		"What to do about it, for well/tally.",
	],
	"well/treating-string.what": [
		"the treating string, {passing} at its couplings, is wider than the drift of the {string} string",
		"What is wrong, for well/treating-string. passing: a diameter; string: short name of a string, as typed.",
	],
	"well/treating-string.mend": ["choose smaller pipe", "What to do about it, for well/treating-string."],
	"well/treating-string.treating-string-ends-below-float": [
		"the treating string ends below the float collar of the {string} string",
		"What is wrong, for well/treating-string. string: short name of a string, as typed.",
	],
	"well/treating-string.packer-is-set-above-string": [
		"the packer is set above the {string} string",
		"What is wrong, for well/treating-string. string: short name of a string, as typed.",
	],
	"well/treating-string.packer-is-set-too-deep": [
		"the packer is set too deep",
		"What is wrong, for well/treating-string.",
	],
	"well/treating-string.expected": [
		"between {top} and the end of the pipe",
		"What is expected instead, for well/treating-string. top: a depth.",
	],
	"well/treating-string.between-and": [
		"between {top} and {at}",
		"What is expected instead, for well/treating-string. top: a depth; at: a depth.",
	],
	"well/treating-string.correct-depth-packer": [
		"correct the depth of the packer",
		"What to do about it, for well/treating-string.",
	],
	"well/shoe-too-shallow.what": [
		"{group} items on this string are below its shoe",
		"What is wrong, for well/shoe-too-shallow. group: how many.",
	],
	"well/shoe-too-shallow.expected": [
		"a shoe at or below everything on the string",
		"What is expected instead, for well/shoe-too-shallow.",
	],
	"well/shoe-too-shallow.mend": [
		"correct the shoe depth; or, if it is right, each of the depths named",
		"What to do about it, for well/shoe-too-shallow.",
	],
} as const satisfies Entries;
