import type { PaperDocument } from "../document/document.ts";
import type { Attachment, LayoutFinding } from "../render/pdf/render-pdf.ts";
import {
	renderByReference,
	renderEdition,
	renderPaper,
	renderTableFiles,
	renderTablesAsJson,
	renderWorkbook,
} from "../render/render-paper.ts";
import type { NewFile } from "./write-set.ts";

export const ENGINES = ["own", "reference"] as const;
export type Engine = (typeof ENGINES)[number];

/** One paper to set, as it is handed to whoever sets it: plain data, which goes from thread to thread. */
export interface PaperTask {
	/** Of its files, without an ending. */
	readonly name: string;
	readonly paper: PaperDocument;
	readonly attachments: readonly Attachment[];
	/** What sets its pages: our own layout, or the one that it is held against. */
	readonly engine: Engine;
	/** What else is wanted of it. */
	readonly html: boolean;
	readonly csv: boolean;
	readonly json: boolean;
	readonly xlsx: boolean;
}

/** A paper as it was set. With findings there are no files: it must not be issued. */
export interface PaperSet {
	readonly findings: readonly LayoutFinding[];
	/** Of the PDF; not known of the reference engine's. */
	readonly pages?: number;
	readonly files: readonly NewFile[];
}

/** Sets one paper and everything that is wanted of it. Nothing is written. */
export const setPaper = async (task: PaperTask): Promise<PaperSet> => {
	const { name, paper } = task;
	if (task.engine === "reference") {
		const content = await renderByReference(paper);
		return { findings: [], files: [{ name: `${name}.reference.pdf`, content }] };
	}
	const { bytes, pages, findings } = await renderPaper(paper, task.attachments);
	if (findings.length > 0) return { findings, pages, files: [] };
	const files: NewFile[] = [{ name: `${name}.pdf`, content: bytes }];
	if (task.html) files.push({ name: `${name}.html`, content: await renderEdition(paper) });
	if (task.csv) {
		const tables = await renderTableFiles(paper);
		files.push({
			name: `${name}.tables`,
			content: tables.map((table) => ({ name: `${table.name}.csv`, content: table.text })),
		});
	}
	if (task.json) files.push({ name: `${name}.tables.json`, content: await renderTablesAsJson(paper) });
	if (task.xlsx) files.push({ name: `${name}.xlsx`, content: await renderWorkbook(paper) });
	return { findings, pages, files };
};
