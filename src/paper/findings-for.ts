import { isKnown, isKnownTable } from "../cite/known.ts";
import { type Paper, readerPaperOf } from "../document/document.ts";
import { VERDICTS, type Verdict } from "../document/verdict.ts";
import type { Findings } from "./context.ts";
import { forPaper } from "./for-paper.ts";

/** Lists whose entries may be narrowed to some papers and turn up by name in what is computed and judged. */
const NAMED_LISTS = [
	["site", "neighbors"],
	["site", "offset_wells"],
	["stimulation", "additives"],
] as const;

/**
 * Everything found, as one paper may show it: the well without what the definition keeps from that paper's readers, and
 * results, verdicts, assumptions and gaps without the entries that are kept from them.
 */
export const findingsFor = <F extends Findings>(findings: F, paper: Paper): F => {
	const well = forPaper(findings.well, paper);
	const hidden = hiddenNames(findings.written, paper);
	if (hidden.size === 0) return { ...findings, well };
	const silent = <T>(items: readonly T[]): T[] => items.filter((item) => !speaksOf(item, hidden));
	const { judgement, results, missing } = findings;
	const kept = silent(judgement.findings);
	const without = drop(results, hidden) as Findings["results"];
	return {
		...findings,
		well: {
			...(drop(well, hidden) as Findings["well"]),
			assumptions: silent(well.assumptions),
		},
		results: { ...without, undetermined: silent(results.undetermined) },
		judgement: {
			...judgement,
			findings: kept,
			counts: Object.fromEntries(
				VERDICTS.map((verdict) => [verdict, kept.filter((each) => each.verdict === verdict).length]),
			) as Readonly<Record<Verdict, number>>,
		},
		missing: silent(missing),
	};
};

/** Names of entries that a paper may not show. */
const hiddenNames = (written: unknown, paper: Paper): ReadonlySet<string> =>
	new Set(
		NAMED_LISTS.flatMap((path) => {
			const list = path.reduce<unknown>((node, key) => entry(node, key), written);
			return (Array.isArray(list) ? list : []).flatMap((item): string[] => {
				const [papers, name] = [entry(item, "papers"), entry(item, "name")];
				return Array.isArray(papers) && !papers.includes(readerPaperOf(paper)) && typeof name === "string"
					? [name]
					: [];
			});
		}),
	);

const entry = (node: unknown, key: string): unknown =>
	typeof node === "object" && node !== null ? (node as Readonly<Record<string, unknown>>)[key] : undefined;

/** A tree without the entries of a hidden name: items of lists, and blocks of their own. Values are kept as they are. */
const drop = (node: unknown, hidden: ReadonlySet<string>): unknown => {
	if (typeof node !== "object" || node === null || isKnown(node) || isKnownTable(node)) return node;
	if (node instanceof Map) return node;
	if (Array.isArray(node)) {
		const kept = node.filter((item) => !isOf(item, hidden));
		return kept.map((item) => drop(item, hidden));
	}
	return Object.fromEntries(
		Object.entries(node)
			.filter(([, child]) => !isOf(child, hidden))
			.map(([key, child]) => [key, drop(child, hidden)]),
	);
};

const isOf = (item: unknown, hidden: ReadonlySet<string>): boolean => {
	const name = entry(item, "name");
	return typeof name === "string" && hidden.has(name);
};

/** Whether any words of an item name a hidden entry. */
const speaksOf = (item: unknown, hidden: ReadonlySet<string>): boolean => {
	if (typeof item === "string") return [...hidden].some((name) => item.includes(name));
	if (typeof item !== "object" || item === null || isKnown(item) || isKnownTable(item)) return false;
	return Object.values(item).some((child) => speaksOf(child, hidden));
};
