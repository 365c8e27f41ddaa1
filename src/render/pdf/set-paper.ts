import type { PaperDocument } from "../../document/document.ts";
import { auditPages } from "./audit.ts";
import { Paper } from "./components/paper.tsx";
import type { LayoutFinding } from "./findings.ts";
import { fitPages } from "./fit-pages.ts";
import type { LaidPage } from "./layout/laid.ts";
import { layPages } from "./layout/pages.ts";
import { sceneOf } from "./scene.ts";

/** A paper set into pages, and the faults of the setting. */
export interface SetPaper {
	readonly pages: readonly LaidPage[];
	readonly findings: readonly LayoutFinding[];
}

/**
 * Sets a paper into pages and examines them; nothing is written.
 *
 * @throws RangeError for a number that cannot be printed
 */
export const setPaper = (document: PaperDocument): SetPaper => {
	const scene = sceneOf(document);
	const { sections, fits, findings } = fitPages(scene);
	const pages = layPages(Paper({ ...scene, sections }, fits));
	return { pages, findings: [...findings, ...auditPages(pages)] };
};
