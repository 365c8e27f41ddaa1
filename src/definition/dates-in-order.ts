import * as z from "zod";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { faultAt, itemsAt, valueAt } from "./fault.ts";

const calendarDate = z.iso.date();
const dateAt = (tree: unknown, path: Path): string | undefined => {
	const value = valueAt(tree, path);
	return calendarDate.safeParse(value).data;
};

const inOrder = (tree: unknown, earlier: Path, later: Path, rule: string): readonly Diagnostic[] => {
	const from = dateAt(tree, earlier);
	const to = dateAt(tree, later);
	if (from === undefined || to === undefined || from <= to) return [];
	return [
		faultAt({
			code: "definition/dates-out-of-order",
			at: later,
			what: `a date before ${from}, which it must not precede`,
			expected: rule,
			found: to,
			mend: "correct whichever of the two dates is wrong",
			related: [{ at: { path: earlier }, label: "the other date" }],
		}),
	];
};

const successive = (tree: unknown, list: Path, name: string, rule: string): readonly Diagnostic[] => {
	const dated = itemsAt(tree, list)
		.map((_, i): Path => [...list, i, name])
		.filter((path) => dateAt(tree, path) !== undefined);
	return dated.flatMap((path, i) => {
		const before = dated[i - 1];
		return before === undefined ? [] : inOrder(tree, before, path, rule);
	});
};

/** Dates of one topic that cross each other; what is no date is passed over. */
export const datesInOrder = (tree: unknown): readonly Diagnostic[] => {
	const revisions = itemsAt(tree, ["well", "revisions"]);
	const last: Path = ["well", "revisions", revisions.length - 1, "date"];
	return [
		...inOrder(tree, ["well", "issued"], ["well", "valid_until"], "a last day on or after the day of issue"),
		...successive(tree, ["well", "revisions"], "date", "revisions in the order they were made"),
		...(revisions.length > 0
			? inOrder(tree, last, ["well", "issued"], "the day of issue on or after that of the last revision")
			: []),
		...successive(tree, ["schedule"], "starts", "phases in the order they begin"),
		...itemsAt(tree, ["schedule"]).flatMap((_, i) =>
			inOrder(
				tree,
				["schedule", i, "actual", "started"],
				["schedule", i, "actual", "ended"],
				"an end on or after the start",
			),
		),
		...inOrder(
			tree,
			["trajectory", "actual", "dates", 0],
			["trajectory", "actual", "dates", 1],
			"the first day of the survey, then the last",
		),
	];
};
