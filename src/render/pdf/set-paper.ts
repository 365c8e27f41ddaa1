import type { PaperDocument } from "../../document/document.ts";
import { auditPages } from "./audit.ts";
import { Paper } from "./components/paper.tsx";
import { type LayoutFinding, short } from "./findings.ts";
import { fitPages } from "./fit-pages.ts";
import { placesIn } from "./layout/arrange.ts";
import type { Laid, LaidPage } from "./layout/laid.ts";
import { layPages } from "./layout/pages.ts";
import { sceneOf } from "./scene.ts";

/** A paper set into pages, and the faults of the setting. */
export interface SetPaper {
	readonly pages: readonly LaidPage[];
	readonly findings: readonly LayoutFinding[];
}

/** A slide is one page: of one whose words run on to a second the room would read half, and hear nothing of the rest. */
const slidesOverFull = (
	{ setting, sections }: PaperDocument,
	pages: readonly LaidPage[],
): LayoutFinding[] => {
	if (setting !== "screen") return [];
	let slide = -1;
	return pages.flatMap(({ children }, i): LayoutFinding[] => {
		if (children.some(({ item }) => hasHeading(item))) {
			slide += 1;
			return [];
		}
		const title = sections[Math.max(slide, 0)]?.title ?? "";
		return [
			{ kind: "over-full", page: i + 1, text: short(title), detail: "does not fit on one slide; say less" },
		];
	});
};

const hasHeading = (item: Laid): boolean =>
	item.props.tag?.role === "H2" ||
	(item.kind === "box" && placesIn(item).some((child) => hasHeading(child.item)));

/**
 * Sets a paper into pages and examines them; nothing is written.
 *
 * @throws RangeError for a number that cannot be printed
 */
export const setPaper = (document: PaperDocument): SetPaper => {
	const scene = sceneOf(document);
	const { sections, fits, findings } = fitPages(scene);
	const pages = layPages(Paper({ ...scene, sections }, fits));
	return { pages, findings: [...findings, ...slidesOverFull(document, pages), ...auditPages(pages)] };
};
