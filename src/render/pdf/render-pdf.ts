import type { PaperDocument } from "../../document/document.ts";
import type { LayoutFinding } from "./audit.ts";
import { fromWarnings, inTurn, setPaper } from "./layout.ts";
import { withWarnings } from "./pins.ts";
import { runningMatter } from "./running.ts";
import { type Attachment, writePdf } from "./write.ts";

export type { Attachment, LayoutFinding };

export interface RenderedPdf {
	readonly bytes: Uint8Array;
	readonly pages: number;
	/** Faults of the set page; a paper with any must not be issued. */
	readonly findings: readonly LayoutFinding[];
}

/**
 * Renders a paper as a tagged PDF on US letter. The layout library is heavy: import this module only where a PDF is
 * asked for.
 *
 * @throws RangeError for a number that cannot be printed, or a date of issue that is none
 */
export const renderPdf = async (
	document: PaperDocument,
	options: { readonly attachments?: readonly Attachment[] } = {},
): Promise<RenderedPdf> => {
	const { pages, findings } = await setPaper(document);
	const matter = runningMatter(document);
	const { value: bytes, warnings } = await inTurn(() =>
		withWarnings(() => writePdf(document, pages, matter, options.attachments ?? [])),
	);
	return {
		bytes,
		pages: pages.length,
		findings: [...findings, ...matter.findings, ...fromWarnings(warnings)],
	};
};
