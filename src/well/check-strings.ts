import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { placeOfDepth } from "./check-stages.ts";
import { type Desk, fault, placeOf, SAME_DEPTH } from "./desk.ts";
import type { FoundString } from "./resolve-strings.ts";
import { asWritten, measured } from "./said.ts";
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
		what: message("well/pipe-above-hanger.what", { string: string.id }),
		expected: message("well/pipe-above-hanger.expected", { casingHanger: asWritten(datum.casingHanger) }),
		found: asWritten(top),
		mend: message("well/pipe-above-hanger.mend"),
	});
};

/** Runs of one string join; whether every one ends below its top. */
export const checkRuns = (id: string, sections: FoundString["sections"], desk: Desk): boolean => {
	let sound = true;
	for (const [j, { section, at }] of sections.entries()) {
		if (section.bottom.value <= section.top.value) {
			fault(desk, "well/top-below-bottom", placeOf(section.bottom, [...at, "to"]), {
				what: message("well/top-below-bottom.run-string-ends-at-or", { j: String(j + 1), id }),
				expected: message("well/top-below-bottom.expected", { top: asWritten(section.top) }),
				found: asWritten(section.bottom),
				mend: message("well/top-below-bottom.mend"),
				related: [
					{ at: placeOfDepth(section.top, [...at, "from"]), label: message("well/top-below-bottom.its-top") },
				],
			});
			sound = false;
			continue;
		}
		const above = sections[j - 1];
		const step = above === undefined ? 0 : section.top.value - above.section.bottom.value;
		if (above === undefined || Math.abs(step) <= SAME_DEPTH) continue;
		const gap = step > 0;
		fault(desk, gap ? "well/pipe-gap" : "well/pipe-overlap", placeOf(section.top, [...at, "from"]), {
			what: gap
				? message("well/pipe-meeting.what", {
						j: String(j),
						j2: String(j + 1),
						id,
						step: measured("length", step),
					})
				: message("well/pipe-meeting.runs-and-string-overlap-by", {
						j: String(j),
						j2: String(j + 1),
						id,
						step: measured("length", -step),
					}),
			expected: message("well/pipe-meeting.expected", { bottom: asWritten(above.section.bottom) }),
			found: asWritten(section.top),
			mend: message("well/pipe-meeting.mend"),
			related: [
				{ at: placeOf(above.section.bottom, [...above.at, "to"]), label: message("well/pipe-meeting.label") },
			],
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
			what: message("well/shoe-below-hole.what", { string: string.id, hole: hole.id }),
			expected: message("well/beyond-total-depth.expected", { bottom: asWritten(hole.bottom) }),
			found: asWritten(shoe),
			mend: message("well/shoe-below-hole.mend"),
			related: [
				{
					at: placeOf(hole.bottom, ["holes"]),
					label: message("well/shoe-below-hole.label", { hole: hole.id }),
				},
			],
		});
		return false;
	}
	if (shoe.value <= hole.top.value) {
		fault(desk, "well/shoe-above-hole", at, {
			what: message("well/shoe-above-hole.what", { string: string.id, hole: hole.id }),
			expected: message("well/top-below-bottom.expected", { top: asWritten(hole.top) }),
			found: asWritten(shoe),
			mend: message("well/shoe-above-hole.mend"),
		});
		return false;
	}
	return true;
};

const checkAttachments = ({ string, at }: FoundString, desk: Desk): void => {
	const { top, shoe, shoeTrack } = string;
	if (shoeTrack !== undefined && shoeTrack.value >= shoe.value - top.value)
		fault(desk, "well/shoe-track", placeOf(shoeTrack, [...at, "shoe_track"]), {
			what: message("well/shoe-track.what", { string: string.id }),
			expected: message("well/shoe-track.expected"),
			found: asWritten(shoeTrack),
			mend: message("well/shoe-track.mend"),
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
				what: message("well/top-below-bottom.stretch-centralizers-on-string-ends", { string: string.id }),
				expected: message("well/top-below-bottom.expected", { top: asWritten(run.top) }),
				found: asWritten(run.bottom),
				mend: message("well/top-below-bottom.mend"),
			});
		else if (
			run.top.value < top.value - SAME_DEPTH ||
			run.bottom.value > Math.max(shoe.value, string.plannedShoe?.value ?? 0) + SAME_DEPTH
		)
			fault(desk, "well/centralizer-range", placeOf(run.bottom, place), {
				what: message("well/centralizer-range.what", { string: string.id }),
				expected: message("well/centralizer-range.expected", { top: asWritten(top), shoe: asWritten(shoe) }),
				found: message("well/from-to", { from: asWritten(run.top), to: asWritten(run.bottom) }),
				mend: message("well/centralizer-range.mend"),
				related: [
					{ at: placeOf(string.plannedShoe ?? shoe, at), label: message("well/slurry-bottom.label") },
				],
			});
	}
};
