import type { PaperDocument } from "../../document/document.ts";
import { auditPages, type LayoutFinding } from "./audit.ts";
import { Paper } from "./components/paper.tsx";
import { expanded } from "./expand.ts";
import type { PageNode } from "./layout-node.ts";
import { layoutPages, prepareEngine, withWarnings } from "./pins.ts";
import { sceneOf } from "./scene.ts";
import { tidyPages } from "./tidy-pages.ts";
import { unhyphenated } from "./unhyphenate.ts";

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

/** Sets a paper into pages and examines them; nothing is written. */
export const setPaper = (document: PaperDocument): Promise<SetPaper> =>
	inTurn(async () => {
		await prepareEngine();
		const { value: laid, warnings } = await withWarnings(() =>
			layoutPages(expanded(Paper(sceneOf(document)))),
		);
		const pages = unhyphenated(tidyPages(laid));
		return { pages, findings: [...auditPages(pages), ...fromWarnings(warnings)] };
	});
