import type { StimulationDefinition } from "../definition/definition.ts";
import type { Path } from "../diagnostics/path.ts";
import { inches, outside, passing, SAME_DIAMETER } from "./check-passage.ts";
import { checkRuns } from "./check-strings.ts";
import { asWritten, type Desk, fault, maybe, placeOf, SAME_DEPTH } from "./desk.ts";
import { type FoundSection, resolvePipe } from "./resolve-pipe.ts";
import type { FoundString } from "./resolve-strings.ts";
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
				what: `the treating string, ${inches(passing(run))} at its couplings, is wider than the drift of the ${around.string.id} string`,
				expected: `at most ${inches(drift.value)}`,
				found: inches(passing(run)),
				mend: "choose smaller pipe",
				related: [
					{
						at: placeOf(wall.section.outsideDiameter, [...wall.at, "od"]),
						label: `drift ${inches(drift.value)}`,
					},
				],
			});
			return;
		}
	const last = sections.at(-1);
	const collar = collarOf(treated);
	if (last === undefined || last.section.bottom.value <= collar) return;
	fault(desk, "well/treating-string", placeOf(last.section.bottom, [...last.at, "to"]), {
		what: `the treating string ends below the float collar of the ${treated.string.id} string`,
		expected: `at most ${Number(collar.toFixed(1))} ft`,
		found: asWritten(last.section.bottom, "ft"),
		mend: "correct the depth",
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
	const bounds = [
		...(end === undefined ? [] : [{ at: end, what: "below the end of the treating string" }]),
		...(highest === undefined ? [] : [{ at: highest, what: "at or below the uppermost opening" }]),
	].sort((a, b) => a.at.value - b.at.value);
	const [lowest] = bounds;
	const above = depth.value <= treated.string.top.value;
	const tooDeep =
		lowest !== undefined && depth.value > lowest.at.value + (lowest.at === end ? SAME_DEPTH : -SAME_DEPTH);
	if (!above && !tooDeep) return;
	fault(desk, "well/treating-string", placeOf(depth, [...AT, "packer", "depth"]), {
		what: above
			? `the packer is set above the ${treated.string.id} string`
			: `the packer is set ${lowest?.what ?? "too deep"}`,
		expected: `between ${asWritten(treated.string.top, "ft")} and ${lowest === undefined ? "the end of the pipe" : asWritten(lowest.at, "ft")}`,
		found: asWritten(depth, "ft"),
		mend: "correct the depth of the packer",
	});
};
