import type { Path } from "../diagnostics/path.ts";
import { type Paper, readerPaperOf } from "../document/document.ts";
import type { Audience } from "./audience.ts";
import { definitionSchema } from "./definition.ts";
import { isBlock, valueAt } from "./fault.ts";
import { fieldAt, schemasAt } from "./schema-walk.ts";

/** Papers that the entry at a path of the definition may appear in by default; none where nothing may stand. */
export const papersOf = (path: Path): Audience => {
	const place = path.join("/");
	const known = papersAt.get(place);
	if (known !== undefined) return known;
	const papers =
		schemasAt(definitionSchema, path).length === 0 ? [] : (fieldAt(definitionSchema, path)?.papers ?? []);
	papersAt.set(place, papers);
	return papers;
};

/** By place: every paper asks again of every entry. No more than a definition's entries, longest lists and all. */
const papersAt = new Map<string, Audience>();

/**
 * Whether a paper may show what the definition says at a path: the field's own papers, narrowed by every `papers:`
 * written on the way to it.
 *
 * @param tree the definition, as written or as read
 */
export const mayAppear = (paper: Paper, path: Path, tree: unknown): boolean =>
	papersOf(path).includes(readerPaperOf(paper)) &&
	path.every((_, length) => {
		const block = valueAt(tree, path.slice(0, length));
		const narrowed = isBlock(block) ? block["papers"] : undefined;
		return !Array.isArray(narrowed) || narrowed.includes(readerPaperOf(paper));
	});
