import type { Known } from "../cite/known.ts";
import type { Path } from "../diagnostics/path.ts";
import { placeOfDepth } from "./check-stages.ts";
import { asWritten, type Desk, fault, placeOf, SAME_DEPTH } from "./desk.ts";
import type { FoundString } from "./resolve-strings.ts";
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
				what: `the ${slurry.role} slurry of the ${found.string.id} string ends at or above its top`,
				expected: `deeper than ${asWritten(slurry.top, "ft")}`,
				found: asWritten(slurry.bottom, "ft"),
				mend: "exchange the two depths, or correct one",
				related: [{ at: placeOfDepth(slurry.top, [...at, "from"]), label: "its top" }],
			});
		if (upsideDown.length > 0 || astray.has(found.string.id)) continue;
		const column = [...placed].sort((a, b) => a.slurry.top.value - b.slurry.top.value);
		if (cement.stageTool === undefined || checkStageTool(found, cement.stageTool, column, desk))
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
			what: `the stage tool of the ${string.id} string is not in the string`,
			expected: `between ${asWritten(string.top, "ft")} and the float collar at ${Number(collar.toFixed(1))} ft`,
			found: asWritten(tool, "ft"),
			mend: "correct the depth of the tool",
		});
		return false;
	}
	const across = column.find(
		({ slurry }) =>
			slurry.top.value < tool.value - SAME_DEPTH && slurry.bottom.value > tool.value + SAME_DEPTH,
	);
	if (across !== undefined) {
		fault(desk, "well/stage-tool", placeOf(across.slurry.bottom, [...across.at, "to"]), {
			what: `the ${across.slurry.role} slurry of the ${string.id} string reaches across the stage tool`,
			expected: `a slurry that begins at the tool, ${asWritten(tool, "ft")}, or ends at it or below`,
			found: asWritten(across.slurry.bottom, "ft"),
			mend: "part the slurry at the tool, or correct its depths",
			related: [{ at: place, label: "the stage tool" }],
		});
		return false;
	}
	const second = column.filter(({ slurry }) => slurry.bottom.value <= tool.value + SAME_DEPTH).at(-1);
	if (second !== undefined && second.slurry.bottom.value >= tool.value - SAME_DEPTH) return true;
	fault(desk, "well/stage-tool", place, {
		what: `no slurry of the ${string.id} string begins at its stage tool`,
		expected: "a second stage that begins at the tool and goes up from it",
		found: asWritten(tool, "ft"),
		mend: "add the slurry of the second stage, or correct the depth of the tool",
		...(second === undefined
			? {}
			: {
					related: [
						{ at: placeOf(second.slurry.bottom, [...second.at, "to"]), label: "the nearest begins here" },
					],
				}),
	});
	return false;
};

const checkColumn = ({ string }: FoundString, column: readonly Placed[], datum: Datum, desk: Desk): void => {
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
				what: `the ${upper.slurry.role} and ${lower.slurry.role} slurries of the ${string.id} string ${gap ? "leave a gap of" : "overlap by"} ${Number(Math.abs(step).toFixed(1))} ft`,
				expected: `a slurry that ends at ${asWritten(upper.slurry.bottom, "ft")}`,
				found: asWritten(lower.slurry.top, "ft"),
				mend: "let the two meet at one depth",
				related: [
					{
						at: placeOf(upper.slurry.bottom, [...upper.at, "to"]),
						label: `the ${upper.slurry.role} slurry begins here`,
					},
				],
			},
		);
	}
	const lowest = column.at(-1);
	if (joined && lowest !== undefined && Math.abs(lowest.slurry.bottom.value - string.shoe.value) > SAME_DEPTH)
		fault(desk, "well/slurry-bottom", placeOf(lowest.slurry.bottom, [...lowest.at, "to"]), {
			what: `the cement column of the ${string.id} string does not begin at its shoe`,
			expected: asWritten(string.plannedShoe ?? string.shoe, "ft"),
			found: asWritten(lowest.slurry.bottom, "ft"),
			mend: "let the deepest slurry begin at the shoe",
			related: [{ at: placeOf(string.plannedShoe ?? string.shoe, []), label: "the shoe" }],
		});
	const [highest] = column;
	const ceiling = string.kind === "casing" ? datum.groundLevel : string.top;
	if (highest !== undefined && highest.slurry.top.value < ceiling.value - SAME_DEPTH)
		fault(desk, "well/slurry-top", placeOf(highest.slurry.top, [...highest.at, "from"]), {
			what: `the ${highest.slurry.role} slurry of the ${string.id} string ends above ${string.kind === "casing" ? "ground level" : "the top of the string"}`,
			expected:
				string.kind === "casing"
					? "`surface`, or a depth below ground level"
					: `at least ${asWritten(ceiling, "ft")}`,
			found: asWritten(highest.slurry.top, "ft"),
			mend:
				string.kind === "casing"
					? "write `surface` for cement that comes to ground level"
					: "end the column at the top of the string; what is pumped beyond it belongs in the excess",
		});
};
