import * as z from "zod";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { type Path, pathKey } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";
import { faultAt, isBlock, itemsAt, valueAt } from "./fault.ts";

const calendarDate = z.iso.date();
const dateAt = (tree: unknown, path: Path): string | undefined =>
	calendarDate.safeParse(valueAt(tree, path)).data;

/** Two dates of which the first is not to come after the second. */
interface Order {
	readonly earlier: Path;
	readonly later: Path;
	/** What is due, in words. */
	readonly rule: Said;
}

/** The dates that items of a list have, each after the one before. */
const successive = (tree: unknown, list: Path, below: Path, rule: Said): readonly Order[] => {
	const dated = itemsAt(tree, list)
		.map((_, i): Path => [...list, i, ...below])
		.filter((path) => dateAt(tree, path) !== undefined);
	return dated.flatMap((later, i) => {
		const earlier = dated[i - 1];
		return earlier === undefined ? [] : [{ earlier, later, rule }];
	});
};

/** Pipe is landed, then cemented, then tested, and its shoe is tested after it is drilled out. */
const ofString = (tree: unknown, i: number): readonly Order[] => {
	const string: Path = ["casing", i];
	const hole = valueAt(tree, [...string, "hole"]);
	const drilled = itemsAt(tree, ["holes"]).findIndex((each) => isBlock(each) && each["id"] === hole);
	const landed: Path = [...string, "actual", "date"];
	const cemented: Path = [...string, "cement", "actual", "date"];
	const ready = dateAt(tree, cemented) === undefined ? landed : cemented;
	return [
		{
			earlier: ["holes", drilled, "actual", "reached"],
			later: landed,
			rule: message("definition/dates.landed"),
		},
		{ earlier: landed, later: cemented, rule: message("definition/dates.cemented") },
		{
			earlier: ready,
			later: [...string, "pressure_test", "actual", "date"],
			rule: message("definition/dates.pressure-test"),
		},
		{
			earlier: ready,
			later: [...string, "shoe_test", "actual", "date"],
			rule: message("definition/dates.shoe-test"),
		},
	];
};

const ordersOf = (tree: unknown): readonly Order[] => {
	const revisions = itemsAt(tree, ["well", "revisions"]);
	return [
		{
			earlier: ["well", "issued"],
			later: ["well", "valid_until"],
			rule: message("definition/dates.valid-until"),
		},
		{
			earlier: ["well", "spud"],
			later: ["well", "valid_until"],
			rule: message("definition/dates.spud-within-validity"),
		},
		...successive(tree, ["well", "revisions"], ["date"], message("definition/dates.revisions")),
		{
			earlier: ["well", "revisions", revisions.length - 1, "date"],
			later: ["well", "issued"],
			rule: message("definition/dates.issued"),
		},
		...successive(tree, ["schedule"], ["starts"], message("definition/dates.phases")),
		...itemsAt(tree, ["schedule"]).map((_, i) => ({
			earlier: ["schedule", i, "actual", "started"],
			later: ["schedule", i, "actual", "ended"],
			rule: message("definition/dates.ended"),
		})),
		{
			earlier: ["trajectory", "actual", "dates", 0],
			later: ["trajectory", "actual", "dates", 1],
			rule: message("definition/dates.survey"),
		},
		...successive(tree, ["holes"], ["actual", "reached"], message("definition/dates.holes")),
		...successive(tree, ["casing"], ["actual", "date"], message("definition/dates.strings")),
		...itemsAt(tree, ["casing"]).flatMap((_, i) => ofString(tree, i)),
	];
};

/** Dates that cross each other; what is no date is passed over. A date that crosses several is told once, as the one that is wrong. */
export const datesInOrder = (tree: unknown): readonly Diagnostic[] => {
	let crossed = ordersOf(tree).filter(({ earlier, later }) => {
		const [from, to] = [dateAt(tree, earlier), dateAt(tree, later)];
		return from !== undefined && to !== undefined && from > to;
	});
	const faults: Diagnostic[] = [];
	while (crossed.length > 0) {
		const wrong = mostCrossed(crossed);
		const order = crossed.find(({ earlier, later }) =>
			[earlier, later].some((path) => pathKey(path) === wrong),
		);
		if (order === undefined) break;
		faults.push(crossing(tree, order, pathKey(order.earlier) === wrong));
		crossed = crossed.filter(({ earlier, later }) => pathKey(earlier) !== wrong && pathKey(later) !== wrong);
	}
	return faults;
};

/** The date in most crossings; of equals, the later one of the first. */
const mostCrossed = (crossed: readonly Order[]): string => {
	const counts = new Map<string, number>();
	for (const { earlier, later } of crossed)
		for (const path of [later, earlier]) counts.set(pathKey(path), (counts.get(pathKey(path)) ?? 0) + 1);
	return [...counts].reduce((most, each) => (each[1] > most[1] ? each : most), ["", 0])[0];
};

const crossing = (tree: unknown, { earlier, later, rule }: Order, earlierIsWrong: boolean): Diagnostic => {
	const [from, to] = [dateAt(tree, earlier) ?? "", dateAt(tree, later) ?? ""];
	return faultAt({
		code: "definition/dates-out-of-order",
		at: earlierIsWrong ? earlier : later,
		what: earlierIsWrong
			? message("definition/dates-out-of-order.after", { to })
			: message("definition/dates-out-of-order.before", { from }),
		expected: rule,
		found: earlierIsWrong ? from : to,
		mend: message("definition/dates-out-of-order.mend"),
		related: [
			{
				at: { path: earlierIsWrong ? later : earlier },
				label: message("definition/dates-out-of-order.label"),
			},
		],
	});
};
