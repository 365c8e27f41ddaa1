import type { Definition } from "../definition/definition.ts";
import type { Place } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { type Desk, fault } from "./desk.ts";
import type { Stimulation } from "./well.ts";

const ISO = /^\d{4}-\d{2}-\d{2}$/;

interface RecordDate {
	readonly date: string;
	readonly at: Place;
}

/**
 * What stands under `actual`, and what is said to have been sampled, sent or determined, is a record: none of its dates
 * is after the day of issue, and none in the hole before the hole was begun.
 */
export const checkRecords = (
	definition: Definition,
	stimulation: Stimulation | undefined,
	desk: Desk,
): void => {
	const { issued, spud } = definition.well;
	const inHole = [...recordDates(definition, [], false), ...recordsOfFile(definition, stimulation)];
	for (const record of [...inHole, ...otherDates(definition)])
		if (record.date > issued) tooLate(record, issued, desk);
	if (spud === undefined) return;
	if (spud > issued) {
		const [block] = recordBlocks(definition, []).filter((at) => !isFirst(at));
		if (block !== undefined) notYetDrilled(block, spud, desk);
		return;
	}
	for (const record of inHole)
		if (record.date < spud && !isFirst(record.at.path)) tooEarly(record, spud, desk);
};

/** The conductor may be set before the well is begun; the plan of the phases is no record of the hole. */
const isFirst = ([topic, index]: Path): boolean =>
	topic === "schedule" || ((topic === "casing" || topic === "holes") && index === 0);

/** Dates of records read from a file, which are not in the definition's own tree. */
const recordsOfFile = (
	{ stimulation: written }: Definition,
	stimulation: Stimulation | undefined,
): readonly RecordDate[] => {
	if (written?.stages.actual?.file === undefined) return [];
	const file: Place = { path: ["stimulation", "stages", "actual", "file"] };
	const dates = (stimulation?.stages ?? [])
		.flatMap(({ actual }): RecordDate[] =>
			actual?.date === undefined || !ISO.test(actual.date)
				? []
				: [{ date: actual.date, at: { ...(actual.dateAt ?? file), path: file.path } }],
		)
		.sort((a, b) => a.date.localeCompare(b.date));
	// The first and the last stand for all of them: one wrong year would be told for every row.
	return [dates.at(0), dates.at(-1)].flatMap((each, i) =>
		each === undefined || (i === 1 && dates.length === 1) ? [] : [each],
	);
};

/** Dates of things done that do not stand under `actual`. */
const otherDates = ({ site, geology }: Definition): readonly RecordDate[] => {
	const dated = (date: string | undefined, path: Path): RecordDate[] =>
		date === undefined ? [] : [{ date, at: { path } }];
	return [
		...(site.neighbors ?? []).flatMap(({ sampled, notice }, i) => [
			...dated(sampled, ["site", "neighbors", i, "sampled"]),
			...dated(notice, ["site", "neighbors", i, "notice"]),
		]),
		...(site.notices ?? []).flatMap(({ sent }, i) => dated(sent, ["site", "notices", i, "sent"])),
		...dated(geology.protected_water?.dated, ["geology", "protected_water", "dated"]),
	];
};

const tooLate = ({ date, at }: RecordDate, issued: string, desk: Desk): void => {
	const recorded = at.path.includes("actual");
	fault(desk, "well/record-after-issue", at, {
		what: recorded
			? message("well/record-after-issue.what")
			: message("well/record-after-issue.this-is-said-to-be"),
		expected: message("well/record-after-issue.expected", { issued }),
		found: date,
		mend: recorded
			? message("well/record-after-issue.mend")
			: message("well/record-after-issue.move-date-issue-or-take"),
		related: [{ at: { path: ["well", "issued"] }, label: message("well/record-after-issue.label") }],
	});
};

const tooEarly = ({ date, at }: RecordDate, spud: string, desk: Desk): void => {
	fault(desk, "well/record-before-spud", at, {
		what: message("well/record-before-spud.what"),
		expected: message("well/record-before-spud.expected", { spud }),
		found: date,
		mend: message("well/record-before-spud.mend"),
		related: [{ at: { path: ["well", "spud"] }, label: message("well/record-before-spud.label") }],
	});
};

const notYetDrilled = (at: Path, spud: string, desk: Desk): void => {
	fault(
		desk,
		"well/record-before-spud",
		{ path: at, key: true },
		{
			what: message("well/record-before-spud.there-is-record-work-done"),
			expected: message("well/record-before-spud.no-record-in-hole-before", { spud }),
			mend: message("well/record-before-spud.take-block-out-actual-if"),
			related: [{ at: { path: ["well", "spud"] }, label: message("well/record-before-spud.well-is-begun") }],
		},
	);
};

const recordDates = (node: unknown, path: Path, recorded: boolean): readonly RecordDate[] => {
	if (typeof node === "string") return recorded && ISO.test(node) ? [{ date: node, at: { path } }] : [];
	return childrenOf(node).flatMap(([key, child]) =>
		recordDates(child, [...path, key], recorded || key === "actual"),
	);
};

/** Paths of the `actual` blocks, in the order of the definition. */
const recordBlocks = (node: unknown, path: Path): readonly Path[] =>
	childrenOf(node).flatMap(([key, child]) =>
		key === "actual" ? [[...path, key]] : recordBlocks(child, [...path, key]),
	);

const childrenOf = (node: unknown): readonly (readonly [string | number, unknown])[] =>
	typeof node !== "object" || node === null
		? []
		: Object.entries(node).map(([key, child]) => [Array.isArray(node) ? Number(key) : key, child] as const);
