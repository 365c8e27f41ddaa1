import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { READER_PAPERS } from "../document/document.ts";
import { message } from "../messages/message.ts";
import { datesInOrder } from "./dates-in-order.ts";
import { definitionSchema } from "./definition.ts";
import { faultAt, isBlock, itemsAt, valueAt } from "./fault.ts";
import { PATH_GIVEN_BY } from "./offset-wells.ts";
import { sameNames } from "./same-names.ts";
import { fieldAt } from "./schema-walk.ts";
import { emergencyNumber, lowBelowHigh, sharesOfWhole } from "./shares-and-ranges.ts";
import { implausibleDates, spudAndSchedule } from "./spud-and-dates.ts";

/*
 * Rules that bind several entries of one topic. They read the tree as written, not the parsed one, so that they speak
 * in the same run as every other fault; an entry that is itself at fault is passed over in silence.
 */

/** Every fault between the entries of a topic. */
export const withinTopics = (tree: unknown): readonly Diagnostic[] => [
	...duplicates(tree),
	...sameNames(tree),
	...datesInOrder(tree),
	...spudAndSchedule(tree),
	...implausibleDates(tree),
	...sharesOfWhole(tree),
	...lowBelowHigh(tree),
	...emergencyNumber(tree),
	...choices(tree),
	...methodAndStages(tree),
	...papersNarrowed(tree),
];

/** Lists whose items are told apart by a name, and that name. */
const NAMED: readonly (readonly [list: Path, name: string])[] = [
	[["well", "revisions"], "id"],
	[["site", "neighbors"], "id"],
	[["site", "offset_wells"], "id"],
	[["holes"], "id"],
	[["casing"], "id"],
	[["stimulation", "proppants"], "id"],
	[["stimulation", "additives"], "id"],
	[["stimulation", "stages", "overrides"], "stage"],
	[["stimulation", "stages", "sleeves"], "stage"],
	[["stimulation", "stages", "actual", "records"], "stage"],
	[["safety", "muster_points"], "id"],
];

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
					what: message("definition/duplicate-id.what"),
					expected: message("definition/duplicate-id.expected"),
					found: String(id),
					mend: message("definition/duplicate-id.mend"),
					related: [
						{
							at: { path: [...list, earlier, name] },
							label: message("definition/duplicate-id.label"),
						},
					],
				}),
			];
		});
	});

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
			what:
				given.length === 0
					? message("definition/one-of-keys.none", { keys: keys.join(", ") })
					: message("definition/one-of-keys.twice"),
			expected: message("definition/one-of-keys.expected", { keys: keys.join(", ") }),
			...(given.length === 0
				? {}
				: { found: message("definition/one-of-keys.given", { given: { list: given, joined: "and" } }) }),
			mend:
				given.length === 0 ? message("definition/one-of-keys.add") : message("definition/one-of-keys.keep"),
		}),
	];
};

const choices = (tree: unknown): readonly Diagnostic[] => [
	...oneOfKeys(tree, ["stimulation", "stages"], ["layout", "rows", "interval"]),
	...oneOfKeys(tree, ["stimulation", "stages", "actual"], ["file", "records"]),
	...oneOfKeys(tree, ["trajectory", "actual", "survey"], ["file", "stations"]),
	...itemsAt(tree, ["site", "offset_wells"]).flatMap((_, i) =>
		oneOfKeys(tree, ["site", "offset_wells", i, "path"], PATH_GIVEN_BY),
	),
	...itemsAt(tree, ["casing"]).flatMap((string, i) =>
		itemsAt(string, ["pipe"]).flatMap((pipe, j) =>
			isBlock(pipe) && !Object.hasOwn(pipe, "weight")
				? oneOfKeys(tree, ["casing", i, "pipe", j], ["weight", "wall"])
				: [],
		),
	),
];

const METHODS = ["plug and perforate", "sliding sleeve", "single interval"] as const;

const methodAndStages = (tree: unknown): readonly Diagnostic[] => {
	const method = valueAt(tree, ["stimulation", "method"]);
	const stages = valueAt(tree, ["stimulation", "stages"]);
	if (!isBlock(stages)) return [];
	const given = ["layout", "rows", "interval"].filter((key) => Object.hasOwn(stages, key));
	const known = METHODS.some((word) => word === method);
	if (given.length !== 1 || !known) return [];
	if (Object.hasOwn(stages, "sleeves") && method !== "sliding sleeve")
		return [
			faultAt({
				code: "definition/method-and-stages",
				at: ["stimulation", "method"],
				what: message("definition/method-and-stages.sleeves"),
				expected: `\`${METHODS[1]}\``,
				found: String(method),
				mend: message("definition/method-and-stages.sleeves-mend"),
				related: [
					{
						at: { path: ["stimulation", "stages", "sleeves"] },
						label: message("definition/method-and-stages.sleeves-label"),
					},
				],
			}),
		];
	const single = given[0] === "interval";
	if (single === (method === "single interval")) return [];
	return [
		faultAt({
			code: "definition/method-and-stages",
			at: ["stimulation", "method"],
			what: message("definition/method-and-stages.what", { given: given[0] ?? "" }),
			expected: single ? `\`${METHODS[2]}\`` : message("definition/method-and-stages.several"),
			found: String(method),
			mend: message("definition/method-and-stages.mend"),
			related: [
				{
					at: { path: ["stimulation", "stages", given[0] ?? ""] },
					label: message("definition/method-and-stages.label"),
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
						what: message("definition/papers-widened.what"),
						expected: message("definition/papers-widened.expected", { allowed: allowed.join(", ") }),
						found: paper,
						why: message("definition/papers-widened.why"),
						mend: message("definition/papers-widened.mend"),
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

const ALL_PAPERS: readonly string[] = READER_PAPERS;
