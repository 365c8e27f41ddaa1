import type { Entries } from "../entries.ts";

const WRONG = "What is wrong, for well/seal-evidence.";
const EXPECTED = "What is expected instead, for well/seal-evidence.";
const MEND = "What to do about it, for well/seal-evidence.";

/** Faults in what is written of bond logs, surveys, tests and squeezes. */
export const WELL_SEAL = {
	"well/seal-evidence.no-intervals": ["the bond log has no intervals", WRONG],
	"well/seal-evidence.both-intervals-and-file": ["the bond log has both `intervals` and a `file`", WRONG],
	"well/seal-evidence.one-of-the-two": ["`intervals`, or a `file` with the same", EXPECTED],
	"well/seal-evidence.keep-one": ["list the intervals in one of the two places", MEND],
	"well/seal-evidence.full-not-below-free": [
		"the amplitude in full bond is not below the one in free pipe",
		WRONG,
	],
	"well/seal-evidence.less-than": ["less than {than}", `${EXPECTED} than: an amplitude.`],
	"well/seal-evidence.swap-amplitudes": ["swap the two amplitudes, or correct them", MEND],
	"well/seal-evidence.intervals-overlap": [
		"this interval begins above the bottom of the interval before it",
		WRONG,
	],
	"well/seal-evidence.at-or-below": ["{bottom} or deeper", `${EXPECTED} bottom: a depth.`],
	"well/seal-evidence.from-the-top-down": ["list intervals from the top down, without overlap", MEND],
	"well/seal-evidence.quality-unknown": ["the quality is not one of the grades", WRONG],
	"well/seal-evidence.write-one-of-them": ["write one of the grades", MEND],
	"well/seal-evidence.ends-above-its-top": ["the stretch ends at or above its top", WRONG],
	"well/seal-evidence.below": ["deeper than {top}", `${EXPECTED} top: a depth.`],
	"well/seal-evidence.swap-depths": ["swap the two depths, or correct them", MEND],
	"well/seal-evidence.reaches-below-shoe": ["the stretch reaches below the shoe of its string", WRONG],
	"well/seal-evidence.at-most": ["{shoe} or shallower", `${EXPECTED} shoe: a depth.`],
	"well/seal-evidence.end-at-shoe": ["end it at the shoe, or move it to the string below", MEND],
} as const satisfies Entries;
