import { createHash } from "node:crypto";
import PDFDocument from "pdfkit";
import type { PaperDocument } from "../../document/document.ts";
import { PRINT_WORDS } from "../print/print-words.ts";
import type { LaidPage } from "./layout/laid.ts";
import type { Sheet } from "./layout/vocabulary.ts";
import { type OutlineEntry, paintPages } from "./paint/paint-pages.ts";
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

/**
 * What the paper is built to, beside the PDF/A part that pdfkit writes: PDF/UA-1, with the description that PDF/A asks
 * of a property it does not know; and when the paper was last changed, which Info says too.
 *
 * @source ISO 14289-1, 5; ISO 19005-3, 6.6.2.3 (from memory)
 */
const builtTo = (date: Date): string => `
<rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
<xmp:ModifyDate>${date.toISOString().slice(0, 19)}Z</xmp:ModifyDate>
</rdf:Description>
<rdf:Description rdf:about="" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
<pdfuaid:part>1</pdfuaid:part>
</rdf:Description>
<rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
<pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
<pdfaProperty:name>part</pdfaProperty:name>
<pdfaProperty:valueType>Integer</pdfaProperty:valueType>
<pdfaProperty:category>internal</pdfaProperty:category>
<pdfaProperty:description>Part of ISO 14289 to which the document is built</pdfaProperty:description>
</rdf:li></rdf:Seq></pdfaSchema:property>
</rdf:li></rdf:Bag></pdfaExtension:schemas>
</rdf:Description>`;

const xmlEscaped = (text: string): string => text.replace(/[<>&'"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** Midnight, UTC, of the paper's date of issue: no clock is read. */
const dateOf = (issued: string): Date => {
	const date = new Date(`${issued.slice(0, 10)}T00:00:00Z`);
	if (Number.isNaN(date.getTime())) throw new RangeError(`"${issued}" is not a date of issue (YYYY-MM-DD)`);
	return date;
};

/** Releases of Node differ in the last bit of a power or a sine, which no paper prints. */
const DIGITS = 12;

/** Over everything that the file is made from: pdfkit makes the file's identifier from what Info says. */
const fingerprint = (document: PaperDocument, attachments: readonly Attachment[]): string => {
	const printed = JSON.stringify(document, (_, value: unknown) =>
		typeof value === "number" ? Number(value.toPrecision(DIGITS)) : value,
	);
	const hash = createHash("sha256").update(printed);
	for (const { name, bytes } of attachments) hash.update(name).update(bytes);
	return hash.digest("hex").slice(0, 32);
};

/**
 * Has the words of Info escaped where pdfkit writes them into XMP as they stand: an ampersand in a title would make the
 * XML ill-formed.
 */
const escapeMetadata = (context: PDFDocument, words: readonly string[]): void => {
	const append = context.appendXML.bind(context);
	const risky = [...new Set(words)].filter((text) => xmlEscaped(text) !== text);
	context.appendXML = (xml, newline) =>
		append(
			risky.reduce((safe, text) => safe.replaceAll(`>${text}<`, `>${xmlEscaped(text)}<`), xml),
			newline,
		);
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
 * Writes laid-out pages as PDF 1.7, tagged, with language, title, outline, attachments; built to the rules of PDF/UA-1
 * and PDF/A-3a, and certified to none. Equal input, equal bytes.
 *
 * @throws RangeError for a date of issue that is not ISO 8601
 */
export const writePdf = async (
	document: PaperDocument,
	pages: readonly LaidPage[],
	matter: (sheet: Sheet) => RunningMatter,
	attachments: readonly Attachment[],
): Promise<Uint8Array> => {
	const { imprint } = document;
	const date = dateOf(imprint.issued);
	const words = {
		Title: `${imprint.title} – ${imprint.well}`,
		Author: imprint.operator,
		Subject: imprint.subject,
		Keywords: [imprint.well, imprint.state, imprint.revision, imprint.digest].join(", "),
		Creator: PRODUCER,
		Producer: PRODUCER,
	};
	const context = new PDFDocument({
		autoFirstPage: false,
		font: null,
		compress: true,
		pdfVersion: "1.7",
		subset: "PDF/A-3a",
		tagged: true,
		lang: document.language === "es" ? "es-US" : "en-US",
		displayTitle: true,
		info: {
			...words,
			CreationDate: date,
			ModDate: date,
			Fingerprint: fingerprint(document, attachments),
		},
	});
	escapeMetadata(context, Object.values(words));
	context.appendXML(builtTo(date));
	const chunks: Uint8Array[] = [];
	context.on("data", (chunk: Uint8Array) => chunks.push(chunk));
	const ended = new Promise<void>((resolve, reject) => {
		context.on("end", () => resolve());
		context.on("error", reject);
	});
	const outline = paintPages({
		context,
		pages,
		running: (pen, page) => {
			const sheet = pages[page - 1]?.sheet;
			if (sheet !== undefined) drawRunning(pen, matter(sheet), sheet, page, pages.length);
		},
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
	context.end();
	await ended;
	return new Uint8Array(Buffer.concat(chunks));
};
