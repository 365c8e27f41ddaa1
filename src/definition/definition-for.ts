import type { Path } from "../diagnostics/path.ts";
import type { Paper } from "../document/document.ts";
import { mayAppear } from "./privacy.ts";

/**
 * The definition as written, without what the readers of one paper may not see. A block or list of which nothing
 * remains is left out; one that was written empty stays.
 *
 * @param tree the definition as read from YAML
 */
export const definitionFor = (paper: Paper, tree: unknown): unknown => open(paper, tree, tree, []);

const open = (paper: Paper, tree: unknown, node: unknown, path: Path): unknown => {
	if (Array.isArray(node)) {
		const items = node
			.map((item, i) => open(paper, tree, item, [...path, i]))
			.filter((item) => item !== undefined);
		return items.length === 0 && node.length > 0 ? undefined : items;
	}
	if (typeof node === "object" && node !== null) {
		const entries = Object.entries(node);
		const kept = entries
			.map(([key, child]) => [key, open(paper, tree, child, [...path, key])] as const)
			.filter(([, child]) => child !== undefined);
		return kept.length === 0 && entries.length > 0 ? undefined : Object.fromEntries(kept);
	}
	return mayAppear(paper, path, tree) ? node : undefined;
};
