import { createHash } from "node:crypto";
import PDFDocument from "pdfkit";
import type { PaperDocument } from "../../document/document.ts";
import { PRINT_WORDS } from "../print/print-words.ts";
import type { PageNode } from "./layout-node.ts";
import { type OutlineEntry, paintPages } from "./paint.ts";
import { escapeMetadata, putOffEnd, rememberFonts, setFileId } from "./pins.ts";
import { drawRunning, type RunningMatter } from "./running.ts";

/** A file that travels inside the paper. */
export interface Attachment {
	readonly name: string;
	readonly bytes: Uint8Array;
	readonly mime: string;
	readonly description: string;
	/** What it is to the paper: what it was made from, data shown in it, or more to read. */
	readonly relationship: "Source" | "Data" | "Supplement";
}

const PRODUCER = "Casebound";

const xmlEscaped = (text: string): string => text.replace(/[<>&'"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** Midnight, UTC, of the paper's date of issue: no clock is read. */
const dateOf = (issued: string): Date => {
	const date = new Date(`${issued.slice(0, 10)}T00:00:00Z`);
	if (Number.isNaN(date.getTime())) throw new RangeError(`"${issued}" is not a date of issue (YYYY-MM-DD)`);
	return date;
};

const fileId = (document: PaperDocument, attachments: readonly Attachment[]): Uint8Array => {
	const hash = createHash("sha256").update(JSON.stringify(document));
	for (const { name, bytes } of attachments) hash.update(name).update(bytes);
	return new Uint8Array(hash.digest().subarray(0, 16));
};

const addOutline = (context: PDFDocument, entries: readonly OutlineEntry[]): void => {
	let section = context.outline;
	for (const { title, level, page, top } of entries) {
		const parent = level === 1 ? context.outline : section;
		// pdfkit counts `left` from the right edge; the whole width is the left margin.
		const item = parent.addItem(title, { pageNumber: page, top, left: context.page.width, expanded: false });
		if (level === 1) section = item;
	}
};

/**
 * Writes laid-out pages as PDF 1.7, tagged, with language, title, outline, attachments. Equal input, equal bytes.
 *
 * @throws RangeError for a date of issue that is not ISO 8601
 */
export const writePdf = async (
	document: PaperDocument,
	pages: readonly PageNode[],
	matter: RunningMatter,
	attachments: readonly Attachment[],
): Promise<Uint8Array> => {
	const { imprint } = document;
	const date = dateOf(imprint.issued);
	const context = new PDFDocument({
		autoFirstPage: false,
		compress: true,
		pdfVersion: "1.7",
		tagged: true,
		lang: document.language === "es" ? "es-US" : "en-US",
		displayTitle: true,
		info: {
			Title: `${imprint.title} – ${imprint.well}`,
			Author: imprint.operator,
			Subject: imprint.subject,
			Keywords: [imprint.well, imprint.state, imprint.revision, imprint.digest].join(", "),
			Creator: PRODUCER,
			Producer: PRODUCER,
			CreationDate: date,
			ModDate: date,
		},
	});
	setFileId(context, fileId(document, attachments));
	escapeMetadata(context, xmlEscaped);
	rememberFonts(context);
	const end = putOffEnd(context);
	const chunks: Uint8Array[] = [];
	context.on("data", (chunk: Uint8Array) => chunks.push(chunk));
	const ended = new Promise<void>((resolve, reject) => {
		context.on("end", () => resolve());
		context.on("error", reject);
	});
	const outline = paintPages({
		context,
		pages,
		running: (page) => drawRunning(context, matter, page, pages.length),
		goTo: PRINT_WORDS[document.language].goTo,
	});
	addOutline(context, outline);
	for (const { name, bytes, mime, description, relationship } of attachments) {
		context.file(bytes, {
			name,
			type: mime,
			description,
			relationship,
			creationDate: date,
			modifiedDate: date,
		});
	}
	end();
	await ended;
	return new Uint8Array(Buffer.concat(chunks));
};
