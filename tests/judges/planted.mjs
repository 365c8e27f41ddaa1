import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { PDFDict, PDFDocument, PDFName, PDFNumber, PDFRawStream } from "@cantoo/pdf-lib";
import { outFolder } from "./run.mjs";

/** Faults put into a paper that passed. A judge that finds nothing in one of them is not judging. */

const dictionaries = (pdf) =>
	pdf.context
		.enumerateIndirectObjects()
		.map(([, object]) => object)
		.filter((object) => object instanceof PDFDict);

const firstWith = (pdf, key, value) => {
	const found = dictionaries(pdf).find((one) => one.get(PDFName.of(key)) === PDFName.of(value));
	if (found === undefined) throw new Error(`no ${key} ${value} to plant a fault in`);
	return found;
};

const drawnOver = (pdf, operators) => {
	const page = pdf.getPage(0);
	const bytes = new TextEncoder().encode(operators);
	const stream = PDFRawStream.of(pdf.context.obj({ Length: PDFNumber.of(bytes.length) }), bytes);
	page.node.addContentStream(pdf.context.register(stream));
};

export const FAULTS = {
	"a figure without a tag": { standard: "ua1", plant: (pdf) => drawnOver(pdf, "q 72 72 60 40 re f Q") },
	"a figure without alternative text": {
		standard: "ua1",
		plant: (pdf) => firstWith(pdf, "S", "Figure").delete(PDFName.of("Alt")),
	},
	"a heading level skipped": {
		standard: "ua1",
		plant: (pdf) => firstWith(pdf, "S", "H2").set(PDFName.of("S"), PDFName.of("H4")),
	},
	"a font not embedded": {
		standard: "3a",
		plant: (pdf) => firstWith(pdf, "Type", "FontDescriptor").delete(PDFName.of("FontFile2")),
	},
};

/** Writes a copy of `paper` for each fault and gives their paths by the fault's name. */
export const plantFaults = async (paper) => {
	const folder = join(outFolder, "planted");
	mkdirSync(folder, { recursive: true });
	const written = [];
	for (const [name, { standard, plant }] of Object.entries(FAULTS)) {
		const pdf = await PDFDocument.load(readFileSync(paper), { updateMetadata: false });
		plant(pdf);
		const file = join(folder, `${name.replaceAll(" ", "-")}.pdf`);
		writeFileSync(file, await pdf.save({ useObjectStreams: false }));
		written.push({ name, standard, file });
	}
	return written;
};
