import * as z from "zod";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { faultAt, isBlock, itemsAt, valueAt } from "./fault.ts";

const calendarDate = z.iso.date();
const dateAt = (tree: unknown, path: Path): string | undefined =>
	calendarDate.safeParse(valueAt(tree, path)).data;

/** The drilling phase begins with spud: a day that is written twice is one day. */
export const spudAndSchedule = (tree: unknown): readonly Diagnostic[] => {
	const spud = dateAt(tree, ["well", "spud"]);
	const drilling = itemsAt(tree, ["schedule"]).findIndex(
		(phase) => isBlock(phase) && phase["phase"] === "drilling",
	);
	if (spud === undefined || drilling < 0) return [];
	const starts = (
		[
			["schedule", drilling, "actual", "started"],
			["schedule", drilling, "starts"],
		] as const
	).find((path) => dateAt(tree, path) !== undefined);
	const begun = starts && dateAt(tree, starts);
	if (starts === undefined || begun === undefined || begun === spud) return [];
	return [
		faultAt({
			code: "definition/spud-and-schedule",
			at: ["well", "spud"],
			what: message("definition/spud-and-schedule.what", { begun }),
			expected: message("definition/spud-and-schedule.expected"),
			found: spud,
			mend: message("definition/spud-and-schedule.mend"),
			related: [{ at: { path: starts }, label: message("definition/spud-and-schedule.label") }],
		}),
	];
};

/** Work that begins later than this after the day of issue is mostly a slip in the year [years]. */
const LATEST = 2;
const EARLIEST = "1900-01-01";

/** Whether anything is on record of the work: an old spud is no slip then. */
const hasRecord = (tree: unknown): boolean =>
	["holes", "casing", "schedule"].some((list) =>
		itemsAt(tree, [list]).some((each) => isBlock(each) && each["actual"] !== undefined),
	) || valueAt(tree, ["trajectory", "actual"]) !== undefined;

/** Dates of which the year can hardly be meant. */
export const implausibleDates = (tree: unknown): readonly Diagnostic[] => {
	const issued = dateAt(tree, ["well", "issued"]);
	const dated: readonly Path[] = [
		["well", "issued"],
		["well", "spud"],
		...itemsAt(tree, ["schedule"]).map((_, i): Path => ["schedule", i, "starts"]),
	];
	return dated.flatMap((at) => {
		const date = dateAt(tree, at);
		if (date === undefined) return [];
		const past = at[1] === "spud" && issued !== undefined && date < yearsLater(issued, -LATEST);
		if (past && !hasRecord(tree))
			return [
				faultAt({
					code: "definition/date-implausible",
					at,
					what: message("definition/date-implausible.past", { years: String(LATEST) }),
					expected: message("definition/date-implausible.not-before", {
						earliest: yearsLater(issued, -LATEST),
					}),
					found: date,
					mend: message("definition/date-implausible.mend"),
					related: [
						{ at: { path: ["well", "issued"] }, label: message("definition/date-implausible.label") },
					],
				}),
			];
		const latest = issued === undefined ? undefined : yearsLater(issued, LATEST);
		const late = latest !== undefined && date > latest;
		if (date >= EARLIEST && !late) return [];
		return [
			faultAt({
				code: "definition/date-implausible",
				at,
				what: late
					? message("definition/date-implausible.late", { latest: String(LATEST) })
					: message("definition/date-implausible.early"),
				expected: late
					? message("definition/date-implausible.up-to", { latest })
					: message("definition/date-implausible.from", { earliest: EARLIEST }),
				found: date,
				mend: message("definition/date-implausible.mend"),
				...(late
					? {
							related: [
								{ at: { path: ["well", "issued"] }, label: message("definition/date-implausible.label") },
							],
						}
					: {}),
			}),
		];
	});
};

const yearsLater = (date: string, years: number): string =>
	`${String(Number(date.slice(0, 4)) + years).padStart(4, "0")}${date.slice(4)}`;
