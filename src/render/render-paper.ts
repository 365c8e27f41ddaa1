import type { PaperDocument } from "../document/document.ts";
import type { Attachment, RenderedPdf } from "./pdf/render-pdf.ts";
import type { TableFile } from "./tables/render-tables.ts";

/*
 * The ways in which a composed paper is printed. Each loads what it needs, for the engines are heavy.
 */

/** As a PDF. */
export const renderPaper = async (
	paper: PaperDocument,
	attachments: readonly Attachment[] = [],
): Promise<RenderedPdf> => {
	const { renderPdf } = await import("./pdf/render-pdf.ts");
	return renderPdf(paper, { attachments });
};

/** As the reference engine sets it: to lay beside ours, untagged and not audited, and not to be issued. */
export const renderByReference = async (paper: PaperDocument): Promise<Uint8Array> => {
	const { renderReference } = await import("./pdf/reference/render-reference.ts");
	return renderReference(paper);
};

/** The HTML edition. */
export const renderEdition = async (paper: PaperDocument): Promise<string> => {
	const { renderHtml } = await import("./html/render-html.ts");
	return renderHtml(paper);
};

/** The tables, a CSV file each. */
export const renderTableFiles = async (paper: PaperDocument): Promise<readonly TableFile[]> => {
	const { renderCsv } = await import("./tables/render-tables.ts");
	return renderCsv(paper);
};

/** The tables as one workbook, a sheet a table. */
export const renderWorkbook = async (paper: PaperDocument): Promise<Uint8Array> => {
	const { renderXlsx } = await import("./xlsx/render-xlsx.ts");
	return renderXlsx(paper);
};

/** The tables, all in one JSON file. */
export const renderTablesAsJson = async (paper: PaperDocument): Promise<string> => {
	const { renderTablesJson } = await import("./tables/render-tables.ts");
	return renderTablesJson(paper);
};
