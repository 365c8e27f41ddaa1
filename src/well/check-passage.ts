import { type Message, message, type Said } from "../messages/message.ts";
import { type Desk, fault, placeOf } from "./desk.ts";
import type { FoundSection } from "./resolve-pipe.ts";
import type { FoundString } from "./resolve-strings.ts";
import { asWritten, measured } from "./said.ts";
import type { Hole } from "./well.ts";

/** Figures are of three decimals; less is no difference [in]. */
export const SAME_DIAMETER = 0.0005;

/** What must pass: the coupling where there is one, else the pipe. */
export const passing = ({ section }: FoundSection): number =>
	Math.max(section.outsideDiameter.value, section.couplingDiameter?.value ?? 0);

export const inches = (value: number): Message => measured("diameter", value);

/** Pipe passes the drift of every string it is run through and fits its hole; bits pass the strings they drill out of. */
export const checkPassage = (
	strings: readonly FoundString[],
	loose: ReadonlySet<string>,
	holes: readonly Hole[],
	desk: Desk,
): void => {
	const drilled = new Set<string>();
	for (const found of strings) {
		if (loose.has(found.string.id)) continue;
		const around = outside(found, strings);
		const tight = new Set(around.filter((outer) => !checkThrough(found, outer, desk)));
		if (found.string.kind === "tieback") continue;
		checkInHole(found, desk);
		const { hole } = found.string;
		if (drilled.has(hole.id)) continue;
		drilled.add(hole.id);
		const [tightest] = around
			.flatMap((outer) => outer.sections.map((section) => ({ outer, section })))
			.sort((a, b) => a.section.section.drift.value - b.section.section.drift.value);
		if (tightest !== undefined && !tight.has(tightest.outer))
			checkBit(hole, tightest.outer, tightest.section, holes, desk);
	}
};

/** Every string outside this one, the nearest first. */
export const outside = ({ string }: FoundString, strings: readonly FoundString[]): FoundString[] => {
	const next = strings.find((each) => each.string.id === string.within);
	return next === undefined ? [] : [next, ...outside(next, strings)];
};

/** Whether the inner string passes the outer one. */
const checkThrough = (inner: FoundString, outer: FoundString, desk: Desk): boolean => {
	for (const run of inner.sections)
		for (const wall of outer.sections) {
			const width = passing(run);
			const { drift } = wall.section;
			if (wall.section.top.value >= run.section.bottom.value || width <= drift.value + SAME_DIAMETER)
				continue;
			const coupled = width > run.section.outsideDiameter.value;
			fault(desk, "well/pipe-passage", placeOf(run.section.outsideDiameter, [...run.at, "od"]), {
				what: coupled
					? message("well/pipe-passage.what", {
							string: inner.string.id,
							width: inches(width),
							string2: outer.string.id,
						})
					: message("well/pipe-passage.pipe-string-is-wider-than", {
							string: inner.string.id,
							width: inches(width),
							string2: outer.string.id,
						}),
				expected: message("well/pipe-passage.expected", { drift: inches(drift.value) }),
				found: inches(width),
				mend: alternate(wall, width, outer.string.id) ?? message("well/pipe-passage.mend"),
				related: [
					{
						at: placeOf(wall.section.outsideDiameter, [...wall.at, "od"]),
						label: message("well/pipe-passage.label", { drift: inches(drift.value) }),
					},
				],
				source: "api-5ct",
			});
			return false;
		}
	return true;
};

/** The catalogue's larger drift, where it would let the width pass. */
const alternate = ({ row, section }: FoundSection, width: number, id: string): Said | undefined => {
	const drift = row?.alternateDrift;
	if (
		row === undefined ||
		drift === undefined ||
		section.drift.from.kind === "definition" ||
		width > drift.value + SAME_DIAMETER
	)
		return undefined;
	return message("well/pipe-passage.alternate-drift", {
		row: row.id,
		id,
		drift: inches(drift.value),
	});
};

const checkInHole = (found: FoundString, desk: Desk): void => {
	const { hole } = found.string;
	for (const run of found.sections) {
		const width = passing(run);
		if (run.section.bottom.value <= hole.top.value || width < hole.diameter.value - SAME_DIAMETER) continue;
		const coupled = width > run.section.outsideDiameter.value;
		fault(desk, "well/pipe-hole", placeOf(run.section.outsideDiameter, [...run.at, "od"]), {
			what: coupled
				? message("well/pipe-hole.what", { string: found.string.id, width: inches(width), hole: hole.id })
				: message("well/pipe-hole.pipe-string-does-not-fit", {
						string: found.string.id,
						width: inches(width),
						hole: hole.id,
					}),
			expected: message("well/pipe-hole.expected", { diameter: asWritten(hole.diameter) }),
			found: inches(width),
			mend: message("well/pipe-hole.mend"),
			related: [
				{ at: placeOf(hole.diameter, ["holes"]), label: message("well/pipe-hole.label", { hole: hole.id }) },
			],
		});
		return;
	}
};

const checkBit = (
	hole: Hole,
	outer: FoundString,
	wall: FoundSection,
	holes: readonly Hole[],
	desk: Desk,
): void => {
	const { drift } = wall.section;
	// A hole wider than the one above it is told of already.
	if (
		hole.diameter.value <= drift.value + SAME_DIAMETER ||
		hole.diameter.value > outer.string.hole.diameter.value
	)
		return;
	fault(
		desk,
		"well/bit-drift",
		placeOf(hole.diameter, ["holes", holes.findIndex(({ id }) => id === hole.id), "diameter"]),
		{
			what: message("well/bit-drift.what", { hole: hole.id, string: outer.string.id }),
			expected: message("well/pipe-passage.expected", { drift: inches(drift.value) }),
			found: asWritten(hole.diameter),
			mend: alternate(wall, hole.diameter.value, outer.string.id) ?? message("well/bit-drift.mend"),
			related: [
				{
					at: placeOf(wall.section.outsideDiameter, [...wall.at, "od"]),
					label: message("well/pipe-passage.label", { drift: inches(drift.value) }),
				},
			],
			source: "api-5ct",
		},
	);
};
