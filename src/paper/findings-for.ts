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
	const substances = substancesOf(findings.written, paper);
	for (const name of substances.hidden) hidden.add(name);
	const silent = <T>(items: readonly T[]): T[] => items.filter((item) => !speaksOf(item, hidden));
	const { judgement, results, missing } = findings;
	const kept = silent(judgement.findings);
	const without = drop(named(results, substances), hidden) as Findings["results"];
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
const hiddenNames = (written: unknown, paper: Paper): Set<string> =>
	new Set(
		NAMED_LISTS.flatMap((path) =>
			listAt(written, path).flatMap((item) => (isKeptFrom(item, paper) ? wordsAt(item, "name") : [])),
		),
	);

/** A list of the definition as written; empty where it is not there. */
export const listAt = (node: unknown, path: readonly string[]): readonly unknown[] => {
	const found = path.reduce<unknown>((at, key) => entry(at, key), node);
	return Array.isArray(found) ? found : [];
};

const wordsAt = (item: unknown, key: string): readonly string[] => {
	const found = entry(item, key);
	return typeof found === "string" ? [found] : [];
};

const isKeptFrom = (item: unknown, paper: Paper): boolean => {
	const papers = entry(item, "papers");
	return Array.isArray(papers) && !papers.includes(readerPaperOf(paper));
};

interface Substances {
	/** Names that stand in additives kept from the paper, and in nothing that it shows. */
	readonly hidden: ReadonlySet<string>;
	/** The name that a registry number goes by in what the paper shows. */
	readonly shownAs: ReadonlyMap<string, string>;
}

/** What the additives that a paper may not show are made of: the table of all chemicals names it without the additive. */
const substancesOf = (written: unknown, paper: Paper): Substances => {
	const additives = listAt(written, ["stimulation", "additives"]);
	const ingredients = (shown: boolean) =>
		additives
			.filter((item) => isKeptFrom(item, paper) !== shown)
			.flatMap((item) => listAt(item, ["ingredients"]));
	const shown = ingredients(true);
	const names = new Set([
		"Water",
		...shown.flatMap((item) => wordsAt(item, "name")),
		...listAt(written, ["stimulation", "proppants"]).flatMap((item) => wordsAt(item, "material")),
	]);
	return {
		hidden: new Set(
			ingredients(false).flatMap((item) => wordsAt(item, "name").filter((name) => !names.has(name))),
		),
		shownAs: new Map(
			shown.flatMap((item) =>
				wordsAt(item, "cas").flatMap((cas) => wordsAt(item, "name").map((name) => [cas, name] as const)),
			),
		),
	};
};

/** Results whose chemicals go by the names that the paper shows, where it shows them at all. */
const named = (results: Findings["results"], { hidden, shownAs }: Substances): Findings["results"] => {
	const { stimulation } = results;
	if (stimulation?.disclosure === undefined) return results;
	const { disclosure } = stimulation;
	const chemicals = disclosure.chemicals.map((chemical) => {
		const shown = chemical.cas === undefined ? undefined : shownAs.get(chemical.cas);
		return shown !== undefined && hidden.has(chemical.name) ? { ...chemical, name: shown } : chemical;
	});
	return { ...results, stimulation: { ...stimulation, disclosure: { ...disclosure, chemicals } } };
};

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
