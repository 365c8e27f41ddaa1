import type { Known } from "../cite/known.ts";
import type { StimulationDefinition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";
import { inches, outside, passing, SAME_DIAMETER } from "./check-passage.ts";
import { checkRuns } from "./check-strings.ts";
import { type Desk, fault, maybe, placeOf, SAME_DEPTH } from "./desk.ts";
import { type FoundSection, resolvePipe } from "./resolve-pipe.ts";
import type { FoundString } from "./resolve-strings.ts";
import { asWritten, measured } from "./said.ts";
import type { Datum, Stage, Stimulation, TreatingString } from "./well.ts";

type Written = NonNullable<StimulationDefinition["treating_string"]>;

const AT: Path = ["stimulation", "treating_string"];

interface Around {
	readonly stimulation: Stimulation;
	readonly strings: readonly FoundString[];
	readonly datum: Datum;
}

/** The pipe that the treatment is pumped down, and whether it fits; nothing where its pipe cannot be known. */
export const resolveTreatingString = (
	written: Written,
	around: Around,
	desk: Desk,
): TreatingString | undefined => {
	const { strings, stimulation, datum } = around;
	const sections = written.pipe.map((pipe, j) => resolvePipe(pipe, [...AT, "pipe", j], j + 1, datum, desk));
	const complete = sections.filter((section) => section !== undefined);
	if (complete.length < sections.length) return undefined;
	const treated = strings.find(({ string }) => string.id === stimulation.treatedThrough);
	if (checkRuns("treating", complete, desk) && treated !== undefined) {
		checkFits(complete, treated, strings, desk);
		if (written.packer !== undefined)
			checkPacker(written.packer, complete, treated, stimulation.stages, desk);
	}
	const { packer } = written;
	return {
		sections: complete.map(({ section }) => section),
		...(packer === undefined ? {} : { packer: { depth: packer.depth, ...maybe("rating", packer.rating) } }),
	};
};

/** It passes the drift of everything it is run through, and ends above the float collar. */
const checkFits = (
	sections: readonly FoundSection[],
	treated: FoundString,
	strings: readonly FoundString[],
	desk: Desk,
): void => {
	const walls = [treated, ...outside(treated, strings)].flatMap((around) =>
		around.sections.map((wall) => ({ around, wall })),
	);
	for (const run of sections)
		for (const { around, wall } of walls) {
			const { drift, top } = wall.section;
			if (top.value >= run.section.bottom.value || passing(run) <= drift.value + SAME_DIAMETER) continue;
			fault(desk, "well/treating-string", placeOf(run.section.outsideDiameter, [...run.at, "od"]), {
				what: message("well/treating-string.what", {
					passing: inches(passing(run)),
					string: around.string.id,
				}),
				expected: message("well/pipe-passage.expected", { drift: inches(drift.value) }),
				found: inches(passing(run)),
				mend: message("well/treating-string.mend"),
				related: [
					{
						at: placeOf(wall.section.outsideDiameter, [...wall.at, "od"]),
						label: message("well/pipe-passage.label", { drift: inches(drift.value) }),
					},
				],
			});
			return;
		}
	const last = sections.at(-1);
	const collar = collarOf(treated);
	if (last === undefined || last.section.bottom.value <= collar) return;
	fault(desk, "well/treating-string", placeOf(last.section.bottom, [...last.at, "to"]), {
		what: message("well/treating-string.treating-string-ends-below-float", { string: treated.string.id }),
		expected: message("well/stage-outside.expected", {
			collar: measured("measured-depth", collar, last.section.bottom.value),
		}),
		found: asWritten(last.section.bottom),
		mend: message("well/tieback-join.correct-depth"),
	});
};

const collarOf = ({ string }: FoundString): number => string.shoe.value - (string.shoeTrack?.value ?? 0);

/** The packer is on the pipe, in the string treated through, and above every opening. */
const checkPacker = (
	{ depth }: NonNullable<Written["packer"]>,
	sections: readonly FoundSection[],
	treated: FoundString,
	stages: readonly Stage[],
	desk: Desk,
): void => {
	const openings = stages.flatMap(({ clusters, top }) => (clusters.length > 0 ? clusters : [top]));
	const [highest] = [...openings].sort((a, b) => a.value - b.value);
	const end = sections.at(-1)?.section.bottom;
	const bounds: { readonly at: Known<"measured-depth">; readonly what: Said }[] = [
		...(end === undefined ? [] : [{ at: end, what: message("well/packer-below-end") }]),
		...(highest === undefined ? [] : [{ at: highest, what: message("well/packer-below-opening") }]),
	].sort((a, b) => a.at.value - b.at.value);
	const [lowest] = bounds;
	const above = depth.value <= treated.string.top.value;
	const tooDeep =
		lowest !== undefined && depth.value > lowest.at.value + (lowest.at === end ? SAME_DEPTH : -SAME_DEPTH);
	if (!above && !tooDeep) return;
	fault(desk, "well/treating-string", placeOf(depth, [...AT, "packer", "depth"]), {
		what: above
			? message("well/treating-string.packer-is-set-above-string", { string: treated.string.id })
			: (lowest?.what ?? message("well/treating-string.packer-is-set-too-deep")),
		expected:
			lowest === undefined
				? message("well/treating-string.expected", { top: asWritten(treated.string.top) })
				: message("well/treating-string.between-and", {
						top: asWritten(treated.string.top),
						at: asWritten(lowest.at),
					}),
		found: asWritten(depth),
		mend: message("well/treating-string.correct-depth-packer"),
	});
};
