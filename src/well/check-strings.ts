import type { Path } from "../diagnostics/path.ts";
import { placeOfDepth } from "./check-stages.ts";
import { asWritten, type Desk, fault, placeOf, SAME_DEPTH } from "./desk.ts";
import type { FoundString } from "./resolve-strings.ts";
import type { Datum } from "./well.ts";

/**
 * Each string by itself and in its hole: its runs join, it reaches into its hole and not below it.
 *
 * @returns the ids of strings whose shoe is at fault; whatever else is measured from it would repeat that fault
 */
export const checkStrings = (
	strings: readonly FoundString[],
	datum: Datum,
	desk: Desk,
): ReadonlySet<string> => {
	const astray = new Set<string>();
	for (const found of strings) {
		checkTop(found, datum, desk);
		const stands =
			checkRuns(found.string.id, found.sections, desk) &&
			(found.string.kind === "tieback" || checkShoe(found, desk));
		if (stands) checkAttachments(found, desk);
		else astray.add(found.string.id);
	}
	return astray;
};

/** Pipe hangs at the hanger: none of it stands above, up to the rig floor. */
const checkTop = ({ string, sections }: FoundString, datum: Datum, desk: Desk): void => {
	const { top } = string;
	if (top.value >= datum.casingHanger.value - SAME_DEPTH) return;
	fault(desk, "well/pipe-above-hanger", placeOf(top, [...(sections[0]?.at ?? []), "from"]), {
		what: `the ${string.id} string begins above the hanger`,
		expected: `\`surface\`, which is the hanger at ${asWritten(datum.casingHanger, "ft")}`,
		found: asWritten(top, "ft"),
		mend: "write `from: surface`",
	});
};

/** Runs of one string join; whether every one ends below its top. */
export const checkRuns = (id: string, sections: FoundString["sections"], desk: Desk): boolean => {
	let sound = true;
	for (const [j, { section, at }] of sections.entries()) {
		if (section.bottom.value <= section.top.value) {
			fault(desk, "well/top-below-bottom", placeOf(section.bottom, [...at, "to"]), {
				what: `run ${j + 1} of the ${id} string ends at or above its top`,
				expected: `deeper than ${asWritten(section.top, "ft")}`,
				found: asWritten(section.bottom, "ft"),
				mend: "exchange the two depths, or correct one",
				related: [{ at: placeOfDepth(section.top, [...at, "from"]), label: "its top" }],
			});
			sound = false;
			continue;
		}
		const above = sections[j - 1];
		const step = above === undefined ? 0 : section.top.value - above.section.bottom.value;
		if (above === undefined || Math.abs(step) <= SAME_DEPTH) continue;
		const gap = step > 0;
		fault(desk, gap ? "well/pipe-gap" : "well/pipe-overlap", placeOf(section.top, [...at, "from"]), {
			what: `runs ${j} and ${j + 1} of the ${id} string ${gap ? "leave a gap of" : "overlap by"} ${Number(Math.abs(step).toFixed(1))} ft`,
			expected: `a run that begins at ${asWritten(above.section.bottom, "ft")}`,
			found: asWritten(section.top, "ft"),
			mend: "let the run begin where the one above it ends",
			related: [{ at: placeOf(above.section.bottom, [...above.at, "to"]), label: "the run above ends here" }],
		});
	}
	return sound;
};

/** Whether the shoe stands in its hole. */
const checkShoe = ({ string, sections }: FoundString, desk: Desk): boolean => {
	const { hole, shoe } = string;
	// A hole that does not go down is told of already.
	if (hole.bottom.value <= hole.top.value) return false;
	const at = placeOf(shoe, [...(sections.at(-1)?.at ?? []), "to"]);
	if (shoe.value > hole.bottom.value + SAME_DEPTH) {
		fault(desk, "well/shoe-below-hole", at, {
			what: `the shoe of the ${string.id} string is deeper than the ${hole.id} hole`,
			expected: `at most ${asWritten(hole.bottom, "ft")}`,
			found: asWritten(shoe, "ft"),
			mend: "set the shoe higher, or drill the hole deeper",
			related: [{ at: placeOf(hole.bottom, ["holes"]), label: `bottom of the ${hole.id} hole` }],
		});
		return false;
	}
	if (shoe.value <= hole.top.value) {
		fault(desk, "well/shoe-above-hole", at, {
			what: `the ${string.id} string ends above the ${hole.id} hole that it names`,
			expected: `deeper than ${asWritten(hole.top, "ft")}`,
			found: asWritten(shoe, "ft"),
			mend: "name the hole that the string is run in, or correct the depth",
		});
		return false;
	}
	return true;
};

const checkAttachments = ({ string, at }: FoundString, desk: Desk): void => {
	const { top, shoe, shoeTrack } = string;
	if (shoeTrack !== undefined && shoeTrack.value >= shoe.value - top.value)
		fault(desk, "well/shoe-track", placeOf(shoeTrack, [...at, "shoe_track"]), {
			what: `the shoe track of the ${string.id} string is longer than the string`,
			expected: "the distance from float collar to shoe",
			found: asWritten(shoeTrack, "ft"),
			mend: "correct the length",
		});
	const counts = { "bow spring": 0, rigid: 0 };
	for (const run of string.centralizers) {
		const place: Path = [
			...at,
			"centralizers",
			run.kind === "rigid" ? "rigid" : "bow_spring",
			counts[run.kind]++,
			"to",
		];
		if (run.bottom.value <= run.top.value)
			fault(desk, "well/top-below-bottom", placeOf(run.bottom, place), {
				what: `a stretch of centralizers on the ${string.id} string ends at or above its top`,
				expected: `deeper than ${asWritten(run.top, "ft")}`,
				found: asWritten(run.bottom, "ft"),
				mend: "exchange the two depths, or correct one",
			});
		else if (
			run.top.value < top.value - SAME_DEPTH ||
			run.bottom.value > Math.max(shoe.value, string.plannedShoe?.value ?? 0) + SAME_DEPTH
		)
			fault(desk, "well/centralizer-range", placeOf(run.bottom, place), {
				what: `a stretch of centralizers reaches beyond the ${string.id} string`,
				expected: `a stretch between ${asWritten(top, "ft")} and ${asWritten(shoe, "ft")}`,
				found: `${asWritten(run.top, "ft")} to ${asWritten(run.bottom, "ft")}`,
				mend: "end it at the shoe, or correct the depth",
				related: [{ at: placeOf(string.plannedShoe ?? shoe, at), label: "the shoe" }],
			});
	}
};
