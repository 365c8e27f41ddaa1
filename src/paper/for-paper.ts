import { isKnown } from "../cite/known.ts";
import { mayAppear } from "../definition/privacy.ts";
import type { Path } from "../diagnostics/path.ts";
import { type Paper, readerPaperOf } from "../document/document.ts";
import type { Well } from "../well/well.ts";

/** Topics of a well that are the definition's own blocks, with the place they were written at. */
const OWN_BLOCKS = {
	identity: ["well"],
	site: ["site"],
	neighbors: ["site", "neighbors"],
	offsetWells: ["site", "offset_wells"],
	schedule: ["schedule"],
	logistics: ["logistics"],
	agency: ["agency"],
	community: ["community"],
	safety: ["safety"],
	wellControl: ["well_control"],
	wellhead: ["wellhead"],
} as const satisfies Partial<Record<keyof Well, Path>>;

/**
 * The well as one paper may show it: what the definition keeps from that paper's readers is not there, so that no part
 * of the paper can print it by mistake.
 */
export const forPaper = (well: Well, paper: Paper): Well => {
	const kept = Object.fromEntries(
		Object.entries(OWN_BLOCKS).map(([topic, path]) => [
			topic,
			keep(well[topic as keyof typeof OWN_BLOCKS], [...path], paper),
		]),
	);
	return { ...well, ...kept };
};

const keep = (node: unknown, path: Path, paper: Paper): unknown => {
	if (Array.isArray(node))
		return node.filter((item) => isOpenTo(item, paper)).map((item, i) => keep(item, [...path, i], paper));
	if (typeof node !== "object" || node === null || isKnown(node)) return node;
	if (!isOpenTo(node, paper)) return undefined;
	return Object.fromEntries(
		Object.entries(node)
			.filter(([key]) => JOINING.has(key) || isDepth(node) || mayAppear(paper, [...path, key], undefined))
			.map(([key, child]) => [key, isDepth(node) ? child : keep(child, [...path, key], paper)]),
	);
};

/** Kept whatever the paper: a short name joins an entry with its results, and no part prints one for the public. */
const JOINING = new Set(["papers", "id"]);

/** A depth as read, with what it is measured from: one entry of the definition, not a block of several. */
const isDepth = (node: object): boolean => "reference" in node && "depth" in node;

/** A block may name the papers it is for; without a list it goes where its fields go. */
const isOpenTo = (node: unknown, paper: Paper): boolean => {
	const papers = typeof node === "object" && node !== null && "papers" in node ? node.papers : undefined;
	return !Array.isArray(papers) || papers.includes(readerPaperOf(paper));
};
