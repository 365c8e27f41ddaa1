import * as z from "zod";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { PAPERS } from "../document/document.ts";
import { parseQuantity } from "../units/parse.ts";
import { definitionSchema } from "./definition.ts";
import { faultAt, isBlock, shown, valueAt } from "./fault.ts";
import { fieldAt } from "./schema-walk.ts";

/*
 * Rules that bind several entries of one topic. They read the tree as written, not the parsed one, so that they speak
 * in the same run as every other fault; an entry that is itself at fault is passed over in silence.
 */

/** Every fault between the entries of a topic. */
export const withinTopics = (tree: unknown): readonly Diagnostic[] => [
	...duplicates(tree),
	...datesInOrder(tree),
	...sharesOfWhole(tree),
	...lowBelowHigh(tree),
	...choices(tree),
	...methodAndStages(tree),
	...papersNarrowed(tree),
];

/** Lists whose items are told apart by a name, and that name. */
const NAMED: readonly (readonly [list: Path, name: string])[] = [
	[["well", "revisions"], "id"],
	[["site", "neighbors"], "id"],
	[["site", "offset_wells"], "id"],
	[["geology", "formations"], "name"],
	[["geology", "water"], "name"],
	[["holes"], "id"],
	[["casing"], "id"],
	[["stimulation", "proppants"], "id"],
	[["stimulation", "additives"], "id"],
	[["stimulation", "stages", "overrides"], "stage"],
	[["stimulation", "stages", "actual", "records"], "stage"],
	[["safety", "muster_points"], "id"],
];

const itemsAt = (tree: unknown, path: Path): readonly unknown[] => {
	const list = valueAt(tree, path);
	return Array.isArray(list) ? list : [];
};

const duplicates = (tree: unknown): readonly Diagnostic[] =>
	NAMED.flatMap(([list, name]) => {
		const first = new Map<string, number>();
		return itemsAt(tree, list).flatMap((item, i) => {
			const id = isBlock(item) ? item[name] : undefined;
			if (typeof id !== "string" && typeof id !== "number") return [];
			const earlier = first.get(String(id));
			if (earlier === undefined) {
				first.set(String(id), i);
				return [];
			}
			return [
				faultAt({
					code: "definition/duplicate-id",
					at: [...list, i, name],
					what: "a name that another entry of the list already has",
					expected: "a name of its own for each entry, because other entries, files and results go by it",
					found: String(id),
					mend: "rename one of the two",
					related: [
						{
							at: { path: [...list, earlier, name] },
							label: "first used here",
						},
					],
				}),
			];
		});
	});

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

const datesInOrder = (tree: unknown): readonly Diagnostic[] => {
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

/** A tenth of a percent: shares are written as whole or tenth percents. */
const SHARE_TOLERANCE = 0.001;

const sharesOfWhole = (tree: unknown): readonly Diagnostic[] => {
	const list: Path = ["stimulation", "water_sources"];
	const shares = itemsAt(tree, list).map((item) => {
		const text = isBlock(item) ? item["share"] : undefined;
		const read = typeof text === "string" ? parseQuantity(text, "share") : undefined;
		return read?.ok ? read.value : Number.NaN;
	});
	const sum = shares.reduce((total, share) => total + share, 0);
	if (shares.length === 0 || Number.isNaN(sum) || Math.abs(sum - 1) <= SHARE_TOLERANCE) return [];
	return [
		faultAt({
			code: "definition/shares-of-whole",
			at: list,
			what: "shares that do not add up to the whole",
			expected: "100 %",
			found: `${Number((sum * 100).toFixed(2))} %`,
			mend: "correct the shares, or add the source that is left out",
		}),
	];
};

const lowBelowHigh = (tree: unknown): readonly Diagnostic[] => {
	const faults: Diagnostic[] = [];
	const raise = (at: Path, found: string): void => {
		faults.push(
			faultAt({
				code: "definition/low-above-high",
				at,
				what: "a low value above the high one",
				expected: "the low value first, then the high one",
				found,
				mend: "put them in order",
			}),
		);
	};
	itemsAt(tree, ["schedule"]).forEach((_, i) => {
		const path: Path = ["schedule", i, "days"];
		const days = itemsAt(tree, path);
		const [low, base, high] = days;
		if (days.length !== 3 || !days.every((day) => typeof day === "number")) return;
		if (Number(low) > Number(base) || Number(base) > Number(high)) raise(path, days.join(", "));
	});
	const returned: Path = ["stimulation", "flowback", "returned"];
	const [low, high] = itemsAt(tree, returned).map((share) =>
		typeof share === "string" ? parseQuantity(share, "share") : undefined,
	);
	if (low?.ok && high?.ok && low.value > high.value) raise(returned, itemsAt(tree, returned).join(", "));
	itemsAt(tree, ["well_control", "preventers"]).forEach((_, i) => {
		const path: Path = ["well_control", "preventers", i, "test"];
		const test = valueAt(tree, path);
		if (!isBlock(test)) return;
		const [lowTest, highTest] = [test["low"], test["high"]].map((text) =>
			typeof text === "string" ? parseQuantity(text, "pressure") : undefined,
		);
		if (lowTest?.ok && highTest?.ok && lowTest.value > highTest.value)
			raise(path, `${shown(test["low"])}, ${shown(test["high"])}`);
	});
	return faults;
};

/** Entries of a block that say the same thing in different ways. */
const oneOfKeys = (tree: unknown, block: Path, keys: readonly string[]): readonly Diagnostic[] => {
	const value = valueAt(tree, block);
	if (!isBlock(value)) return [];
	const given = keys.filter((key) => Object.hasOwn(value, key));
	if (given.length === 1) return [];
	return [
		faultAt({
			code: "definition/one-of-keys",
			at: block,
			what: given.length === 0 ? `none of ${keys.join(", ")} is given` : "the same thing is said twice",
			expected: `exactly one of: ${keys.join(", ")}`,
			...(given.length === 0 ? {} : { found: given.join(" and ") }),
			mend: given.length === 0 ? "add one of them" : "keep one of them and take the others out",
		}),
	];
};

const choices = (tree: unknown): readonly Diagnostic[] => [
	...oneOfKeys(tree, ["stimulation", "stages"], ["layout", "rows", "interval"]),
	...oneOfKeys(tree, ["stimulation", "stages", "actual"], ["file", "records"]),
	...oneOfKeys(tree, ["trajectory", "actual", "survey"], ["file", "stations"]),
	...itemsAt(tree, ["casing"]).flatMap((string, i) =>
		itemsAt(string, ["pipe"]).flatMap((pipe, j) =>
			isBlock(pipe) && !Object.hasOwn(pipe, "weight")
				? oneOfKeys(tree, ["casing", i, "pipe", j], ["weight", "wall"])
				: [],
		),
	),
];

const methodAndStages = (tree: unknown): readonly Diagnostic[] => {
	const method = valueAt(tree, ["stimulation", "method"]);
	const stages = valueAt(tree, ["stimulation", "stages"]);
	if (!isBlock(stages)) return [];
	const given = ["layout", "rows", "interval"].filter((key) => Object.hasOwn(stages, key));
	const known = ["plug and perforate", "sliding sleeve", "single interval"].some((word) => word === method);
	if (given.length !== 1 || !known) return [];
	const single = given[0] === "interval";
	if (single === (method === "single interval")) return [];
	return [
		faultAt({
			code: "definition/method-and-stages",
			at: ["stimulation", "method"],
			what: `the method does not go with \`${given[0]}\` under \`stages\``,
			expected: single ? "`single interval`" : "`plug and perforate` or `sliding sleeve`",
			found: String(method),
			mend: "correct the method, or describe the stages in the form that goes with it",
			related: [
				{
					at: { path: ["stimulation", "stages", given[0] ?? ""] },
					label: "the stages as described",
				},
			],
		}),
	];
};

const papersNarrowed = (tree: unknown): readonly Diagnostic[] => {
	const faults: Diagnostic[] = [];
	const visit = (node: unknown, path: Path, trail: readonly unknown[]): void => {
		if (typeof node !== "object" || node === null || trail.includes(node)) return;
		if (isBlock(node) && Array.isArray(node["papers"])) {
			const allowed: readonly string[] = fieldAt(definitionSchema, [...path, "papers"])?.papers ?? [];
			node["papers"].forEach((paper, i) => {
				if (typeof paper !== "string" || allowed.includes(paper) || !ALL_PAPERS.includes(paper)) return;
				faults.push(
					faultAt({
						code: "definition/papers-widened",
						at: [...path, "papers", i],
						what: "a paper that this entry is kept out of",
						expected: `only: ${allowed.join(", ")}`,
						found: paper,
						why: "persons and private records stay out of papers they do not belong in",
						mend: "take that paper out",
					}),
				);
			});
		}
		for (const [key, child] of Object.entries(node))
			visit(child, [...path, Array.isArray(node) ? Number(key) : key], [...trail, node]);
	};
	visit(tree, [], []);
	return faults;
};

const ALL_PAPERS: readonly string[] = PAPERS;
