import type { Definition } from "../definition/definition.ts";
import type { Place } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { type Desk, fault } from "./desk.ts";
import type { Stimulation } from "./well.ts";

const ISO = /^\d{4}-\d{2}-\d{2}$/;

/** What stands under `actual` is a record, so none of its dates is after the day of issue. */
export const checkRecords = (
	definition: Definition,
	stimulation: Stimulation | undefined,
	desk: Desk,
): void => {
	const { issued } = definition.well;
	for (const { date, at } of recordDates(definition, [], false))
		if (date > issued) tooLate(date, at, issued, desk);
	// Records read from a file are not in the definition's own tree.
	const { file } = definition.stimulation?.stages.actual ?? {};
	if (file === undefined) return;
	const at: Place = { path: ["stimulation", "stages", "actual", "file"] };
	const dates = (stimulation?.stages ?? [])
		.map(({ actual }) => actual?.date)
		.filter((date) => date !== undefined);
	const bad = dates.find((date) => !ISO.test(date));
	if (bad !== undefined)
		fault(desk, "well/stage-row", at, {
			what: "a record's date is not written year-month-day",
			expected: "a date such as `2026-08-14`",
			found: bad,
			mend: "write the dates of the file so",
		});
	const late = dates
		.filter((date) => ISO.test(date) && date > issued)
		.sort()
		.at(-1);
	if (late !== undefined) tooLate(late, at, issued, desk);
};

const tooLate = (date: string, at: Path | Place, issued: string, desk: Desk): void => {
	fault(desk, "well/record-after-issue", at, {
		what: "the record is dated after the day this paper is issued",
		expected: `a date no later than ${issued}`,
		found: date,
		mend: "move the date of issue, or take the block out of `actual` if the work is only planned",
		related: [{ at: { path: ["well", "issued"] }, label: "day of issue" }],
	});
};

const recordDates = (
	node: unknown,
	path: Path,
	recorded: boolean,
): { readonly date: string; readonly at: Path }[] => {
	if (typeof node === "string") return recorded && ISO.test(node) ? [{ date: node, at: path }] : [];
	if (typeof node !== "object" || node === null) return [];
	return Object.entries(node).flatMap(([key, child]) =>
		recordDates(child, [...path, Array.isArray(node) ? Number(key) : key], recorded || key === "actual"),
	);
};
