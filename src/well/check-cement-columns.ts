import type { Known } from "../cite/known.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { placeOfDepth } from "./check-stages.ts";
import { type Desk, fault, placeOf, SAME_DEPTH } from "./desk.ts";
import type { FoundString } from "./resolve-strings.ts";
import { asWritten, measured } from "./said.ts";
import type { Datum, Slurry } from "./well.ts";

interface Placed {
	readonly slurry: Slurry;
	readonly at: Path;
}

/**
 * Slurries of each job fill one column, from the shoe up, without gap or overlap. Of a job in stages the second fills
 * one from the stage tool up, and the first ends at the tool or below it.
 */
export const checkCementColumns = (
	strings: readonly FoundString[],
	astray: ReadonlySet<string>,
	datum: Datum,
	desk: Desk,
): void => {
	for (const found of strings) {
		const { cement } = found.string;
		if (cement === undefined) continue;
		const placed = cement.slurries.map(
			(slurry, i): Placed => ({ slurry, at: [...found.at, "cement", "slurries", i] }),
		);
		// A slurry that follows a shoe which is itself at fault says nothing of its own.
		const own = placed.filter(
			({ slurry }) => !(astray.has(found.string.id) && slurry.bottom === found.string.shoe),
		);
		const upsideDown = own.filter(({ slurry }) => slurry.bottom.value <= slurry.top.value);
		for (const { slurry, at } of upsideDown)
			fault(desk, "well/top-below-bottom", [...at, "to"], {
				what: message("well/top-below-bottom.slurry-string-ends-at-or", {
					role: slurry.role,
					string: found.string.id,
				}),
				expected: message("well/top-below-bottom.expected", { top: asWritten(slurry.top) }),
				found: asWritten(slurry.bottom),
				mend: message("well/top-below-bottom.mend"),
				related: [
					{ at: placeOfDepth(slurry.top, [...at, "from"]), label: message("well/top-below-bottom.its-top") },
				],
			});
		if (upsideDown.length > 0) continue;
		const column = [...placed].sort((a, b) => a.slurry.top.value - b.slurry.top.value);
		if (astray.has(found.string.id)) checkJoints(found, column, desk);
		else if (cement.stageTool === undefined || checkStageTool(found, cement.stageTool, column, desk))
			checkColumn(found, column, datum, desk);
	}
};

/** Whether the tool is in its string and no slurry reaches across it. */
const checkStageTool = (
	{ string, at }: FoundString,
	tool: Known<"measured-depth">,
	column: readonly Placed[],
	desk: Desk,
): boolean => {
	const place = placeOf(tool, [...at, "cement", "stage_tool"]);
	const collar = string.shoe.value - (string.shoeTrack?.value ?? 0);
	if (tool.value <= string.top.value || tool.value >= collar) {
		fault(desk, "well/stage-tool", place, {
			what: message("well/stage-tool.what", { string: string.id }),
			expected: message("well/stage-tool.expected", {
				top: asWritten(string.top),
				collar: measured("measured-depth", collar, tool.value),
			}),
			found: asWritten(tool),
			mend: message("well/stage-tool.mend"),
		});
		return false;
	}
	const across = column.find(
		({ slurry }) =>
			slurry.top.value < tool.value - SAME_DEPTH && slurry.bottom.value > tool.value + SAME_DEPTH,
	);
	if (across !== undefined) {
		fault(desk, "well/stage-tool", placeOf(across.slurry.bottom, [...across.at, "to"]), {
			what: message("well/stage-tool.slurry-string-reaches-across-stage", {
				role: across.slurry.role,
				string: string.id,
			}),
			expected: message("well/stage-tool.slurry-that-begins-at-tool", { tool: asWritten(tool) }),
			found: asWritten(across.slurry.bottom),
			mend: message("well/stage-tool.part-slurry-at-tool-or"),
			related: [{ at: place, label: message("well/stage-tool.label") }],
		});
		return false;
	}
	const second = column.filter(({ slurry }) => slurry.bottom.value <= tool.value + SAME_DEPTH).at(-1);
	if (second !== undefined && second.slurry.bottom.value >= tool.value - SAME_DEPTH) return true;
	fault(desk, "well/stage-tool", place, {
		what: message("well/stage-tool.no-slurry-string-begins-at", { string: string.id }),
		expected: message("well/stage-tool.second-stage-that-begins-at"),
		found: asWritten(tool),
		mend: message("well/stage-tool.add-slurry-second-stage-or"),
		...(second === undefined
			? {}
			: {
					related: [
						{
							at: placeOf(second.slurry.bottom, [...second.at, "to"]),
							label: message("well/stage-tool.nearest-begins-here"),
						},
					],
				}),
	});
	return false;
};

/** Whether each slurry begins where the one above it ends. */
const checkJoints = ({ string }: FoundString, column: readonly Placed[], desk: Desk): boolean => {
	let joined = true;
	for (const [i, lower] of column.entries()) {
		const upper = column[i - 1];
		const step = upper === undefined ? 0 : lower.slurry.top.value - upper.slurry.bottom.value;
		if (upper === undefined || Math.abs(step) <= SAME_DEPTH) continue;
		const gap = step > 0;
		const tool = string.cement?.stageTool;
		if (gap && tool !== undefined && Math.abs(upper.slurry.bottom.value - tool.value) <= SAME_DEPTH) continue;
		joined = false;
		fault(
			desk,
			gap ? "well/slurry-gap" : "well/slurry-overlap",
			placeOf(lower.slurry.top, [...lower.at, "from"]),
			{
				what: gap
					? message("well/slurry-meeting.what", {
							role: upper.slurry.role,
							role2: lower.slurry.role,
							string: string.id,
							step: measured("length", step),
						})
					: message("well/slurry-meeting.and-slurries-string-overlap-by", {
							role: upper.slurry.role,
							role2: lower.slurry.role,
							string: string.id,
							step: measured("length", -step),
						}),
				expected: message("well/slurry-meeting.expected", { bottom: asWritten(upper.slurry.bottom) }),
				found: asWritten(lower.slurry.top),
				mend: message("well/slurry-meeting.mend"),
				related: [
					{
						at: placeOf(upper.slurry.bottom, [...upper.at, "to"]),
						label: message("well/slurry-meeting.label", { role: upper.slurry.role }),
					},
				],
			},
		);
	}
	return joined;
};

const checkColumn = (found: FoundString, column: readonly Placed[], datum: Datum, desk: Desk): void => {
	const { string } = found;
	const joined = checkJoints(found, column, desk);
	const lowest = column.at(-1);
	if (joined && lowest !== undefined && Math.abs(lowest.slurry.bottom.value - string.shoe.value) > SAME_DEPTH)
		fault(desk, "well/slurry-bottom", placeOf(lowest.slurry.bottom, [...lowest.at, "to"]), {
			what: message("well/slurry-bottom.what", { string: string.id }),
			expected: asWritten(string.plannedShoe ?? string.shoe),
			found: asWritten(lowest.slurry.bottom),
			mend: message("well/slurry-bottom.mend"),
			related: [
				{ at: placeOf(string.plannedShoe ?? string.shoe, []), label: message("well/slurry-bottom.label") },
			],
		});
	const [highest] = column;
	const ceiling = string.kind === "casing" ? datum.groundLevel : string.top;
	if (highest !== undefined && highest.slurry.top.value < ceiling.value - SAME_DEPTH)
		fault(desk, "well/slurry-top", placeOf(highest.slurry.top, [...highest.at, "from"]), {
			what:
				string.kind === "casing"
					? message("well/slurry-top.what", { role: highest.slurry.role, string: string.id })
					: message("well/slurry-top.slurry-string-ends-above-top", {
							role: highest.slurry.role,
							string: string.id,
						}),
			expected:
				string.kind === "casing"
					? message("well/slurry-top.expected")
					: message("well/slurry-top.at-least", { ceiling: asWritten(ceiling) }),
			found: asWritten(highest.slurry.top),
			mend:
				string.kind === "casing"
					? message("well/slurry-top.mend")
					: message("well/slurry-top.end-column-at-top-string"),
		});
};
