import { createElement } from "react";
import type { PaperDocument } from "../../document/document.ts";
import { auditPages, type LayoutFinding } from "./audit.ts";
import { Paper } from "./components/paper.tsx";
import type { PageNode } from "./layout-node.ts";
import { layoutPages, prepareEngine, withWarnings } from "./pins.ts";
import { sceneOf } from "./scene.ts";

/** A paper set into pages, and the faults of the setting. */
export interface SetPaper {
	readonly pages: readonly PageNode[];
	readonly findings: readonly LayoutFinding[];
}

let last: Promise<unknown> = Promise.resolve();

/** One paper at a time: the engine's console, which has to be caught, is shared. */
export const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
	const turn = last.then(work, work);
	last = turn.catch(() => undefined);
	return turn;
};

export const fromWarnings = (warnings: readonly string[]): readonly LayoutFinding[] =>
	warnings.map((warning) => ({
		kind: "library-warning",
		page: 0,
		text: warning,
		detail: "said by the layout library",
	}));

/** Moves a page's content up by the space above its first block, which parts nothing at the head of a page. */
const closeHead = (page: PageNode): PageNode => {
	const above = page.children[0]?.box?.marginTop ?? 0;
	if (above <= 0) return page;
	const raised = page.children.map((node) =>
		node.box === undefined ? node : { ...node, box: { ...node.box, top: node.box.top - above } },
	);
	return { ...page, children: raised };
};

/** Sets a paper into pages and examines them; nothing is written. */
export const setPaper = (document: PaperDocument): Promise<SetPaper> =>
	inTurn(async () => {
		await prepareEngine();
		const { value: laid, warnings } = await withWarnings(() =>
			layoutPages(createElement(Paper, sceneOf(document))),
		);
		const pages = laid.map(closeHead);
		return { pages, findings: [...auditPages(pages), ...fromWarnings(warnings)] };
	});
