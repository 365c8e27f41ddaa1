import type { PaperDocument } from "../../document/document.ts";
import type { LayoutFinding } from "./findings.ts";
import type { Sheet } from "./layout/vocabulary.ts";
import { type RunningMatter, runningMatter } from "./running.ts";
import { setPaper } from "./set-paper.ts";
import { type Attachment, writePdf } from "./write.ts";

export type { Attachment, LayoutFinding };

export interface RenderedPdf {
	readonly bytes: Uint8Array;
	readonly pages: number;
	/** Faults of the set page; a paper with any must not be issued. */
	readonly findings: readonly LayoutFinding[];
}

/**
 * Renders a paper as a tagged PDF. The library that writes it is heavy: import this module only where a PDF is asked
 * for.
 *
 * @throws RangeError for a number that cannot be printed, or a date of issue that is none
 */
export const renderPdf = async (
	document: PaperDocument,
	options: { readonly attachments?: readonly Attachment[] } = {},
): Promise<RenderedPdf> => {
	const { pages, findings } = setPaper(document);
	const matters = new Map<Sheet, RunningMatter>();
	for (const { sheet } of pages) if (!matters.has(sheet)) matters.set(sheet, runningMatter(document, sheet));
	const matterOf = (sheet: Sheet): RunningMatter => matters.get(sheet) ?? runningMatter(document, sheet);
	const bytes = await writePdf(document, pages, matterOf, options.attachments ?? []);
	return {
		bytes,
		pages: pages.length,
		findings: [...findings, ...[...matters.values()].flatMap((matter) => matter.findings)],
	};
};
