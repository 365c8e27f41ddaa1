import { PDFArray, PDFDict, type PDFDocument, PDFNumber, PDFRawStream, PDFString } from "@cantoo/pdf-lib";
import { beforeAll, describe, expect, it } from "vitest";
import { renderPdf } from "../../../src/render/pdf/render-pdf.ts";
import { samplePaper } from "../sample-paper.ts";
import {
	at,
	closePdf,
	dictAt,
	type FileElement,
	itemsAt,
	name,
	openPdf,
	structureOf,
	within,
} from "./pdf-file.ts";
import { FAULT_KINDS, type FaultKind, inspectPdf } from "./structure-faults.ts";

let bytes: Uint8Array;

beforeAll(async () => {
	const rendered = await renderPdf(samplePaper(), {
		attachments: [
			{
				name: "well.yaml",
				bytes: new TextEncoder().encode("name: Quarry Lantern 12-4H\n"),
				mime: "application/yaml",
				description: "The definition",
				relationship: "Source",
			},
		],
	});
	expect(rendered.findings).toEqual([]);
	bytes = rendered.bytes;
});

const need = <T>(found: T | undefined, what: string): T => {
	if (found === undefined) throw new Error(`The sample has no ${what}`);
	return found;
};

const element = (file: PDFDocument, role: string): FileElement =>
	need(
		structureOf(file)
			.flatMap(within)
			.find((found) => found.role === role),
		role,
	);

const info = (file: PDFDocument): PDFDict => file.context.lookup(file.context.trailerInfo.Info, PDFDict);

/** Writes operators behind what a page paints. */
const append = (file: PDFDocument, operators: string): void => {
	const page = need(file.getPages()[1], "second page");
	page.node.addContentStream(file.context.register(file.context.flateStream(operators)));
};

const xmp = (file: PDFDocument, change: (xml: string) => string): void => {
	const stream = at(file.catalog, "Metadata");
	if (!(stream instanceof PDFRawStream)) throw new Error("The sample has no metadata");
	const changed = Buffer.from(change(Buffer.from(stream.contents).toString("utf8")));
	file.catalog.set(
		name("Metadata"),
		file.context.register(file.context.stream(changed, { Type: "Metadata", Subtype: "XML" })),
	);
};

const annotation = (file: PDFDocument): PDFDict => {
	for (const page of file.getPages())
		for (const item of itemsAt(page.node, "Annots")) return file.context.lookup(item, PDFDict);
	throw new Error("The sample has no link");
};

const font = (file: PDFDocument): PDFDict =>
	need(
		file.context
			.enumerateIndirectObjects()
			.map(([, object]) => object)
			.filter((object) => object instanceof PDFDict)
			.find((object) => object.lookup(name("Subtype"))?.toString() === "/Type0"),
		"font",
	);

const kidsOf = (found: FileElement): PDFArray => found.dict.lookup(name("K"), PDFArray);

const attribute = (found: FileElement, key: string): void => {
	need(dictAt(found.dict, "A"), `${found.role} with attributes`).delete(name(key));
};

/** A fault of each kind, put into a finished paper. */
const PLANTED: Readonly<Record<FaultKind, (file: PDFDocument) => void>> = {
	"not tagged": (file) => void file.catalog.delete(name("MarkInfo")),
	"no language": (file) => void file.catalog.delete(name("Lang")),
	"no title": (file) => void file.catalog.delete(name("ViewerPreferences")),
	"painted outside marks": (file) => append(file, "10 10 5 5 re f"),
	"marks cross": (file) => append(file, "q /Artifact BMC Q EMC"),
	"artifact in content": (file) => append(file, "/Artifact BMC /P << /MCID 0 >> BDC EMC EMC"),
	"content without element": (file) => append(file, "/P << /MCID 9999 >> BDC 1 1 5 5 re f EMC"),
	"element without content": (file) => {
		const owner = need(
			structureOf(file)
				.flatMap(within)
				.find(({ role, kids }) => role === "H1" && kids.length === 0),
			"H1",
		);
		kidsOf(owner).push(
			file.context.obj({ Type: "MCR", Pg: need(file.getPages()[0], "page").ref, MCID: 8888 }),
		);
	},
	"parent tree": (file) => {
		const tree = dictAt(dictAt(file.catalog, "StructTreeRoot"), "ParentTree");
		const first = itemsAt(tree, "Nums").map((item) => file.context.lookup(item));
		need(
			first.find((item) => item instanceof PDFArray),
			"tree back",
		).set(0, file.context.obj(null));
	},
	"unknown role": (file) => element(file, "H2").dict.set(name("S"), name("Title")),
	"misplaced role": (file) => element(file, "TD").dict.set(name("S"), name("LI")),
	"heading skipped": (file) => element(file, "H3").dict.set(name("S"), name("H5")),
	"figure without text": (file) => void element(file, "Figure").dict.delete(name("Alt")),
	"figure without box": (file) => attribute(element(file, "Figure"), "BBox"),
	"table without heads": (file) => {
		const row = element(file, "TR");
		for (const cell of row.kids) cell.dict.set(name("S"), name("TD"));
	},
	"head without scope": (file) => attribute(element(file, "TH"), "Scope"),
	"rows unequal": (file) => kidsOf(element(file, "TR")).remove(0),
	"list item": (file) => {
		const item = element(file, "LI");
		for (const kid of item.kids) kid.dict.set(name("S"), name("Lbl"));
	},
	"list without numbering": (file) => void element(file, "L").dict.delete(name("A")),
	"font not embedded": (file) => {
		const [descendant] = itemsAt(font(file), "DescendantFonts").map((item) =>
			file.context.lookup(item, PDFDict),
		);
		need(dictAt(descendant, "FontDescriptor"), "font descriptor").delete(name("FontFile2"));
	},
	"text without characters": (file) => void font(file).delete(name("ToUnicode")),
	"metadata ill-formed": (file) => xmp(file, (xml) => xml.replace("Bluestem &#38; Rye", "Bluestem & Rye")),
	"metadata disagrees": (file) => info(file).set(name("Title"), PDFString.of("Another well")),
	"not declared": (file) => xmp(file, (xml) => xml.replace("<pdfuaid:part>1", "<pdfuaid:part>0")),
	"outline leads nowhere": (file) => {
		const first = need(dictAt(dictAt(file.catalog, "Outlines"), "First"), "outline");
		first.set(name("Dest"), file.context.obj(["nowhere"]));
		first.delete(name("A"));
	},
	"link leads nowhere": (file) => {
		const link = annotation(file);
		link.delete(name("A"));
		link.set(name("Dest"), PDFString.of("nowhere"));
	},
	"link without text": (file) => void annotation(file).delete(name("Contents")),
	"link not in structure": (file) => annotation(file).set(name("StructParent"), PDFNumber.of(7777)),
	"page without tab order": (file) => {
		for (const page of file.getPages()) page.node.delete(name("Tabs"));
	},
	"no output intent": (file) => void file.catalog.delete(name("OutputIntents")),
	"file of another kind": (file) =>
		file.catalog.set(name("OpenAction"), file.context.obj({ S: "JavaScript", JS: PDFString.of("1") })),
	attachment: (file) => {
		const [spec] = itemsAt(file.catalog, "AF").map((item) => file.context.lookup(item, PDFDict));
		need(spec, "attachment").delete(name("AFRelationship"));
	},
};

describe("the structure checker", () => {
	it("finds nothing wrong with the sample, and saw all of it", async () => {
		const { faults, seen } = await inspectPdf(bytes, "en");
		expect(faults).toEqual([]);
		expect(seen).toMatchObject({
			figures: 1,
			tables: 3,
			lists: 6,
			links: 5,
			fonts: 4,
			attachments: ["well.yaml"],
		});
		expect(seen.painted).toBeGreaterThan(800);
		expect(seen.elements).toBeGreaterThan(700);
	});

	it("takes a paper that was opened and closed for what it was", async () => {
		const { faults } = await inspectPdf(await closePdf(await openPdf(bytes)), "en");
		expect(faults).toEqual([]);
	});

	it.each(FAULT_KINDS)("catches: %s", async (kind) => {
		const file = await openPdf(bytes);
		PLANTED[kind](file);
		const { faults } = await inspectPdf(await closePdf(file), "en");
		expect(faults.map((fault) => fault.kind)).toContain(kind);
	});

	it("follows a link into another file, to a place that must be there", async () => {
		const file = await openPdf(bytes);
		const link = annotation(file);
		link.delete(name("Dest"));
		const action = { S: "GoToR", F: PDFString.of("other.pdf"), D: PDFString.of("table-1") };
		link.set(name("A"), file.context.obj(action));
		const closed = await closePdf(file);
		const kinds = async (...beside: Parameters<typeof inspectPdf>[2][]): Promise<readonly string[]> =>
			(await inspectPdf(closed, "en", ...beside)).faults.map((fault) => fault.kind);
		expect(await kinds(new Map([["other.pdf", new Set(["table-1"])]]))).toEqual([]);
		expect(await kinds(new Map([["other.pdf", new Set(["table-2"])]]))).toEqual(["link leads nowhere"]);
		expect(await kinds()).toEqual(["link leads nowhere"]);
	});

	it("catches a paper that speaks another language than it says", async () => {
		const { faults } = await inspectPdf(bytes, "es");
		expect(faults.map((fault) => fault.kind)).toEqual(["no language"]);
	});
});
