import { PDFArray, PDFDict, type PDFDocument, PDFRawStream, PDFRef } from "@cantoo/pdf-lib";
import { getDocument, type PDFDocumentProxy } from "pdfjs-dist/legacy/build/pdf.mjs";
import { JSDOM } from "../../run/jsdom.ts";
import { marksOf } from "./page-marks.ts";
import {
	at,
	dictAt,
	type FileElement,
	itemsAt,
	name,
	nameTree,
	numberAt,
	numberTree,
	openPdf,
	structureOf,
	textAt,
	textOf,
	within,
} from "./pdf-file.ts";

export const FAULT_KINDS = [
	"not tagged",
	"no language",
	"no title",
	"painted outside marks",
	"marks cross",
	"artifact in content",
	"content without element",
	"element without content",
	"parent tree",
	"unknown role",
	"misplaced role",
	"heading skipped",
	"figure without text",
	"figure without box",
	"table without heads",
	"head without scope",
	"rows unequal",
	"list item",
	"list without numbering",
	"font not embedded",
	"text without characters",
	"metadata ill-formed",
	"metadata disagrees",
	"not declared",
	"outline leads nowhere",
	"link leads nowhere",
	"link without text",
	"link not in structure",
	"page without tab order",
	"no output intent",
	"file of another kind",
	"attachment",
] as const;
export type FaultKind = (typeof FAULT_KINDS)[number];

export interface StructureFault {
	readonly kind: FaultKind;
	readonly detail: string;
}

/** What was looked at: a check that saw nothing has proven nothing. */
export interface Seen {
	readonly pages: number;
	readonly painted: number;
	readonly elements: number;
	readonly figures: number;
	readonly tables: number;
	readonly lists: number;
	readonly links: number;
	readonly fonts: number;
	readonly attachments: readonly string[];
}

type Report = (kind: FaultKind, detail: string) => void;

/** Standard structure types that the papers use, and what may stand directly in each: ISO 32000-1, 14.8.4. */
const GROUPING = ["Sect", "Div", "P", "H1", "H2", "H3", "H4", "H5", "H6", "L", "Table", "TOC", "Figure"];
const INLINE = ["Span", "Link", "Quote", "Reference", "Figure"];
const KIDS: Readonly<Record<string, readonly string[]>> = {
	Document: [...GROUPING, "Part", "Art"],
	Part: GROUPING,
	Art: GROUPING,
	Sect: [...GROUPING, "Art"],
	Div: GROUPING,
	P: INLINE,
	H1: INLINE,
	H2: INLINE,
	H3: INLINE,
	H4: INLINE,
	H5: INLINE,
	H6: INLINE,
	L: ["Caption", "LI", "L"],
	LI: ["Lbl", "LBody"],
	Lbl: INLINE,
	LBody: [...GROUPING, ...INLINE],
	Table: ["Caption", "TR", "THead", "TBody", "TFoot"],
	THead: ["TR"],
	TBody: ["TR"],
	TFoot: ["TR"],
	TR: ["TH", "TD"],
	TH: [...GROUPING, ...INLINE],
	TD: [...GROUPING, ...INLINE],
	TOC: ["Caption", "TOC", "TOCI"],
	TOCI: ["Lbl", "Reference", "NonStruct", "P", "TOC"],
	Reference: ["Link", "Lbl", "Span"],
	Caption: [...INLINE, "P"],
	Figure: ["Caption", "P", ...INLINE],
	Link: INLINE,
	Span: INLINE,
	Quote: INLINE,
	NonStruct: GROUPING,
};

const checkRoles = (roots: readonly FileElement[], report: Report): void => {
	if (roots.length !== 1 || roots[0]?.role !== "Document")
		report("misplaced role", "the structure is not one Document");
	for (const element of roots.flatMap(within)) {
		const allowed = KIDS[element.role];
		if (allowed === undefined) {
			report("unknown role", element.role);
			continue;
		}
		for (const [i, kid] of element.kids.entries()) {
			if (!allowed.includes(kid.role)) report("misplaced role", `${kid.role} in ${element.role}`);
			// ISO 32000-1, table 336 and 14.8.4.3.4: a caption is the first of its parent, or the last.
			if (kid.role === "Caption" && i !== 0 && i !== element.kids.length - 1)
				report("misplaced role", `Caption in the midst of ${element.role}`);
		}
	}
};

/** ISO 14289-1, 7.4.2: the first heading is H1, and no level is skipped on the way down. */
const checkHeadings = (elements: readonly FileElement[], report: Report): void => {
	const levels = elements.flatMap(({ role }) => (/^H[1-6]$/u.test(role) ? [Number(role.slice(1))] : []));
	if (levels.filter((level) => level === 1).length !== 1) report("heading skipped", "not one H1");
	let before = 0;
	for (const level of levels) {
		if (level > before + 1)
			report("heading skipped", `H${level} after ${before === 0 ? "none" : `H${before}`}`);
		before = level;
	}
};

/** ISO 14289-1, 7.3: figures have an alternative; 7.1 with ISO 32000-1, table 344: and a box on the page. */
const checkFigures = (elements: readonly FileElement[], file: PDFDocument, report: Report): void => {
	const sizes = file.getPages().map((page) => page.getSize());
	const width = Math.max(...sizes.map((size) => size.width));
	const height = Math.max(...sizes.map((size) => size.height));
	for (const figure of elements.filter(({ role }) => role === "Figure")) {
		const alt = textAt(figure.dict, "Alt") ?? "";
		if (alt.trim().length < 10) report("figure without text", alt);
		const box = figure.attributes.get("BBox");
		const sides = box instanceof PDFArray ? box.asRectangle() : { x: -1, y: -1, width: 0, height: 0 };
		const inside =
			sides.width > 0 &&
			sides.height > 0 &&
			sides.x >= 0 &&
			sides.y >= 0 &&
			sides.x + sides.width <= width + 0.5;
		if (!inside || sides.y + sides.height > height + 0.5) report("figure without box", JSON.stringify(sides));
	}
};

/** ISO 14289-1, 7.5: header cells, each saying whether it heads its row or its column; every row as long as the others. */
const checkTables = (elements: readonly FileElement[], report: Report): void => {
	for (const table of elements.filter(({ role }) => role === "Table")) {
		const rows = within(table).filter(({ role }) => role === "TR");
		const cells = rows.flatMap((row) => row.kids);
		const heads = cells.filter(({ role }) => role === "TH");
		const [first] = rows;
		if (first === undefined || !first.kids.every(({ role }) => role === "TH") || heads.length === 0)
			report("table without heads", `${rows.length} rows`);
		for (const head of heads) {
			const scope = textOf(head.attributes.get("Scope"));
			if (scope !== "Column" && scope !== "Row") report("head without scope", scope ?? "none");
		}
		const lengths = new Set(rows.map((row) => row.kids.length));
		if (lengths.size !== 1) report("rows unequal", [...lengths].join(", "));
	}
};

/** ISO 14289-1, 7.6 with ISO 32000-1, 14.8.4.3.3 and table 347. */
const checkLists = (elements: readonly FileElement[], report: Report): void => {
	for (const list of elements.filter(({ role }) => role === "L")) {
		const items = list.kids.filter(({ role }) => role === "LI");
		if (items.length === 0) report("list item", "a list without items");
		for (const item of items)
			if (!item.kids.some(({ role }) => role === "LBody")) report("list item", "an item without a body");
		const numbering = textOf(list.attributes.get("ListNumbering"));
		if (numbering === undefined && items.some(({ kids }) => kids.some(({ role }) => role === "Lbl")))
			report("list without numbering", `${items.length} items`);
	}
};

/** Every identifier on a page belongs to one element, every element's content is on its page, and the tree back agrees. */
const checkContent = async (
	reader: PDFDocumentProxy,
	file: PDFDocument,
	elements: readonly FileElement[],
	report: Report,
): Promise<number> => {
	const owners = new Map<string, string>();
	for (const element of elements)
		for (const owned of element.owned) {
			if (owned.kind !== "content") continue;
			const key = `${owned.page} ${owned.id}`;
			if (owners.has(key)) report("element without content", `${key} belongs to two elements`);
			owners.set(key, element.ref);
		}
	const parents = numberTree(dictAt(dictAt(file.catalog, "StructTreeRoot"), "ParentTree"));
	let painted = 0;
	for (const [i, page] of file.getPages().entries()) {
		const marks = await marksOf(await reader.getPage(i + 1));
		painted += marks.painted;
		if (marks.outside > 0) report("painted outside marks", `page ${i + 1}: ${marks.outside}`);
		if (marks.crossed > 0) report("marks cross", `page ${i + 1}: ${marks.crossed}`);
		if (marks.mixed > 0) report("artifact in content", `page ${i + 1}: ${marks.mixed}`);
		if (new Set(marks.ids).size !== marks.ids.length)
			report("content without element", `page ${i + 1}: an identifier is used twice`);
		const tree = file.context.lookup(parents.get(numberAt(page.node, "StructParents") ?? -1));
		const up = tree instanceof PDFArray ? tree.asArray() : [];
		for (const id of marks.ids) {
			const key = `${page.ref.tag} ${id}`;
			const owner = owners.get(key);
			if (owner === undefined) report("content without element", `page ${i + 1}: ${id}`);
			const parent = up[id];
			if (!(parent instanceof PDFRef) || parent.tag !== owner) report("parent tree", `page ${i + 1}: ${id}`);
			owners.delete(key);
		}
	}
	for (const key of owners.keys()) report("element without content", key);
	return painted;
};

/** ISO 32000-1, 9.8.1 and ISO 19005-3, 6.2.11.4: every font program is in the file, with a way back to characters. */
const checkFonts = (file: PDFDocument, report: Report): number => {
	let fonts = 0;
	for (const [, object] of file.context.enumerateIndirectObjects()) {
		if (!(object instanceof PDFDict) || textAt(object, "Type") !== "Font") continue;
		const subtype = textAt(object, "Subtype") ?? "";
		if (subtype.startsWith("CIDFont")) continue;
		fonts += 1;
		const face = textAt(object, "BaseFont") ?? "?";
		const [descendant] = itemsAt(object, "DescendantFonts").map((item) => file.context.lookup(item));
		const owner = descendant instanceof PDFDict ? descendant : object;
		const descriptor = dictAt(owner, "FontDescriptor");
		const programs = ["FontFile", "FontFile2", "FontFile3"].map((key) => at(descriptor, key));
		if (!programs.some((program) => program instanceof PDFRawStream && program.contents.length > 100))
			report("font not embedded", face);
		if (!(at(object, "ToUnicode") instanceof PDFRawStream))
			report("text without characters", `${face}: no ToUnicode`);
	}
	return fonts;
};

const NAMESPACES = {
	dc: "http://purl.org/dc/elements/1.1/",
	xmp: "http://ns.adobe.com/xap/1.0/",
	pdf: "http://ns.adobe.com/pdf/1.3/",
	pdfaid: "http://www.aiim.org/pdfa/ns/id/",
	pdfuaid: "http://www.aiim.org/pdfua/ns/id/",
	pdfaSchema: "http://www.aiim.org/pdfa/ns/schema#",
} as const;

const parser = new new JSDOM("").window.DOMParser();

const squash = (text: string): string => text.replaceAll(/\s+/gu, " ").trim();

/** `D:20260302000000Z` as XMP writes it. */
const isoOf = (date: string): string =>
	date.replace(/^D:(\d{4})(\d\d)(\d\d)(\d\d)(\d\d)(\d\d)Z?.*$/u, "$1-$2-$3T$4:$5:$6Z");

/** ISO 19005-3, 6.6.2 and 6.6.3: XMP is well formed, says what Info says, and declares the parts it is built to. */
const checkMetadata = (file: PDFDocument, report: Report): void => {
	const stream = at(file.catalog, "Metadata");
	const xmp = stream instanceof PDFRawStream ? Buffer.from(stream.contents).toString("utf8") : "";
	const tree = parser.parseFromString(xmp.replace(/^\uFEFF/u, ""), "application/xml");
	if (tree.querySelector("parsererror") !== null || tree.documentElement.localName !== "xmpmeta") {
		report("metadata ill-formed", squash(tree.documentElement.textContent ?? "").slice(0, 80));
		return;
	}
	const said = (space: keyof typeof NAMESPACES, key: string): string =>
		squash(tree.getElementsByTagNameNS(NAMESPACES[space], key)[0]?.textContent ?? "");
	const info = file.context.lookup(file.context.trailerInfo.Info);
	const told = (key: string): string =>
		squash((info instanceof PDFDict ? textAt(info, key) : undefined) ?? "");
	const pairs = [
		["Title", said("dc", "title"), told("Title")],
		["Author", said("dc", "creator"), told("Author")],
		["Subject", said("dc", "description"), told("Subject")],
		["Keywords", said("pdf", "Keywords"), told("Keywords")],
		["Producer", said("pdf", "Producer"), told("Producer")],
		["Creator", said("xmp", "CreatorTool"), told("Creator")],
		["CreationDate", said("xmp", "CreateDate"), isoOf(told("CreationDate"))],
		["ModDate", said("xmp", "ModifyDate"), isoOf(told("ModDate"))],
	] as const;
	for (const [key, one, other] of pairs)
		if (one === "" || one !== other) report("metadata disagrees", `${key}: "${one}" and "${other}"`);
	if (told("Title") === "") report("no title", "Info has none");
	if (said("pdfaid", "part") !== "3" || said("pdfaid", "conformance") !== "A")
		report("not declared", "PDF/A part 3, level A");
	if (said("pdfuaid", "part") !== "1") report("not declared", "PDF/UA part 1");
	if (!squash(tree.documentElement.textContent ?? "").includes(NAMESPACES.pdfuaid))
		report("not declared", "the extension schema of the PDF/UA identifier (ISO 19005-3, 6.6.2.3)");
};

const checkCatalog = (file: PDFDocument, language: string, report: Report): void => {
	const { catalog } = file;
	if (at(dictAt(catalog, "MarkInfo"), "Marked")?.toString() !== "true") report("not tagged", "MarkInfo");
	if (dictAt(catalog, "StructTreeRoot") === undefined) report("not tagged", "no structure tree");
	const stated = textAt(catalog, "Lang") ?? "";
	if (!stated.startsWith(`${language}-`)) report("no language", `"${stated}", not ${language}`);
	if (at(dictAt(catalog, "ViewerPreferences"), "DisplayDocTitle")?.toString() !== "true")
		report("no title", "the title is not what a viewer shows");
	// ISO 19005-3, 6.2.4.3: colors of the device need an output intent that says what they are.
	const [intent] = itemsAt(catalog, "OutputIntents").map((item) => file.context.lookup(item));
	const profile = intent instanceof PDFDict ? at(intent, "DestOutputProfile") : undefined;
	const whole =
		profile instanceof PDFRawStream && profile.contents.length > 1000 && numberAt(profile.dict, "N") === 3;
	if (!whole || (intent instanceof PDFDict && textAt(intent, "S") !== "GTS_PDFA1"))
		report("no output intent", "sRGB");
	// ISO 19005-3, 6.1.3, 6.5.1 and 6.6.1: an identifier, no encryption, no scripts and no actions.
	const { ID, Encrypt } = file.context.trailerInfo;
	if (!(ID instanceof PDFArray) || Encrypt !== undefined)
		report("file of another kind", "identifier or encryption");
	for (const key of ["OpenAction", "AA"] as const)
		if (catalog.get(name(key)) !== undefined) report("file of another kind", key);
	if (dictAt(dictAt(catalog, "Names"), "JavaScript") !== undefined)
		report("file of another kind", "JavaScript");
};

/** Files that a paper is read with, by name: the named places of each. */
export type Beside = ReadonlyMap<string, ReadonlySet<string>>;

/** The named places of a PDF: ISO 32000-1, 12.3.2.3. */
export const placesOf = async (bytes: Uint8Array): Promise<ReadonlySet<string>> =>
	new Set(nameTree(dictAt(dictAt((await openPdf(bytes)).catalog, "Names"), "Dests")).keys());

const checkLinks = async (
	reader: PDFDocumentProxy,
	file: PDFDocument,
	elements: readonly FileElement[],
	beside: Beside,
	report: Report,
): Promise<number> => {
	const owners = new Map(
		elements.flatMap((element) =>
			element.owned.flatMap((owned) =>
				owned.kind === "annotation" ? [[owned.annotation, element] as const] : [],
			),
		),
	);
	const parents = numberTree(dictAt(dictAt(file.catalog, "StructTreeRoot"), "ParentTree"));
	let links = 0;
	for (const [i, page] of file.getPages().entries()) {
		const annotations = itemsAt(page.node, "Annots");
		if (annotations.length > 0 && textAt(page.node, "Tabs") !== "S")
			report("page without tab order", `page ${i + 1}`);
		const targets: readonly { dest?: unknown; url?: string; unsafeUrl?: string }[] = await (
			await reader.getPage(i + 1)
		).getAnnotations();
		for (const { dest, url, unsafeUrl } of targets) {
			links += 1;
			const found = typeof dest === "string" ? await reader.getDestination(dest) : dest;
			// ISO 32000-1, 12.6.4.3: a place of another file, by its name there. pdf.js takes no such address for a safe one.
			const [, other = "", place = ""] = /^([^#/:]+\.pdf)#(.+)$/u.exec(unsafeUrl ?? "") ?? [];
			const leads =
				Array.isArray(found) ||
				/^(?:https?|mailto|tel):/u.test(String(url ?? unsafeUrl ?? "")) ||
				beside.get(other)?.has(place) === true;
			if (!leads) report("link leads nowhere", `page ${i + 1}: ${String(dest ?? url ?? unsafeUrl)}`);
		}
		for (const item of annotations) {
			const annotation = file.context.lookup(item);
			if (!(annotation instanceof PDFDict) || !(item instanceof PDFRef)) continue;
			// ISO 14289-1, 7.18.5; ISO 19005-3, 6.3.2.
			if ((textAt(annotation, "Contents") ?? "").trim() === "") report("link without text", `page ${i + 1}`);
			if ((numberAt(annotation, "F") ?? 0) !== 4)
				report("link without text", `page ${i + 1}: not to be printed`);
			const owner = owners.get(item.tag);
			const up = parents.get(numberAt(annotation, "StructParent") ?? -1);
			if (owner?.role !== "Link" || !(up instanceof PDFRef) || up.tag !== owner.ref)
				report("link not in structure", `page ${i + 1}`);
		}
	}
	return links;
};

interface OutlineItem {
	readonly title: string;
	readonly dest: string | readonly unknown[] | null;
	readonly items: readonly OutlineItem[];
}

const checkOutline = async (reader: PDFDocumentProxy, report: Report): Promise<void> => {
	const outline: readonly OutlineItem[] = (await reader.getOutline()) ?? [];
	if (outline.length === 0 && reader.numPages > 1) report("outline leads nowhere", "there is none");
	const follow = async ({ title, dest, items }: OutlineItem): Promise<void> => {
		const found = typeof dest === "string" ? await reader.getDestination(dest) : dest;
		const page: unknown = Array.isArray(found) ? found[0] : undefined;
		const index = await Promise.resolve(page)
			.then((target) =>
				typeof target === "object" && target !== null && "num" in target && "gen" in target
					? reader.getPageIndex({ num: Number(target.num), gen: Number(target.gen) })
					: -1,
			)
			.catch(() => -1);
		if (index < 0 || index >= reader.numPages || title.trim() === "") report("outline leads nowhere", title);
		for (const item of items) await follow(item);
	};
	for (const item of outline) await follow(item);
};

/** ISO 19005-3, 6.8 and annex E: each embedded file has a name, a type, a date, and says what it is to the paper. */
const checkAttachments = (file: PDFDocument, report: Report): readonly string[] => {
	const named = nameTree(dictAt(dictAt(file.catalog, "Names"), "EmbeddedFiles"));
	const associated = itemsAt(file.catalog, "AF").map((item) => (item instanceof PDFRef ? item.tag : ""));
	if (associated.length !== named.size)
		report("attachment", "embedded and associated files differ in number");
	for (const [key, value] of named) {
		const spec = file.context.lookup(value);
		if (!(spec instanceof PDFDict) || !(value instanceof PDFRef)) {
			report("attachment", `${key}: no file`);
			continue;
		}
		const stream = at(dictAt(spec, "EF"), "F");
		const dict = stream instanceof PDFRawStream ? stream.dict : undefined;
		const wants = [
			associated.includes(value.tag) || "it is not associated with the paper",
			textAt(spec, "F") === key || "F",
			textAt(spec, "UF") === key || "UF",
			(textAt(spec, "Desc") ?? "") !== "" || "it has no description",
			["Source", "Data"].includes(textAt(spec, "AFRelationship") ?? "") || "AFRelationship",
			/^[a-z]+\/[a-z.+-]+$/u.test(textAt(dict, "Subtype") ?? "") || "its media type",
			/^D:\d{14}Z/u.test(textAt(dictAt(dict, "Params"), "ModDate") ?? "") || "its date",
		];
		for (const want of wants) if (typeof want === "string") report("attachment", `${key}: ${want}`);
	}
	return [...named.keys()].sort();
};

/**
 * Everything that can be told here of a finished PDF against the rules of PDF/UA-1 (ISO 14289-1) and PDF/A-3a
 * (ISO 19005-3). It is read through pdf.js and pdf-lib, neither of which wrote it. Not a validation: no validator that
 * is recognized for either standard is at hand. Clause numbers are from memory of the standards.
 *
 * @param language the paper's own, such as `en`
 * @param beside the files that its links may lead into
 */
export const inspectPdf = async (
	bytes: Uint8Array,
	language: string,
	beside: Beside = new Map(),
): Promise<{ readonly faults: readonly StructureFault[]; readonly seen: Seen }> => {
	const faults: StructureFault[] = [];
	const report: Report = (kind, detail) => void faults.push({ kind, detail });
	const file = await openPdf(bytes);
	const task = getDocument({ data: Uint8Array.from(bytes), verbosity: 0 });
	const reader = await task.promise;
	try {
		const roots = structureOf(file);
		const elements = roots.flatMap(within);
		checkCatalog(file, language, report);
		checkMetadata(file, report);
		checkRoles(roots, report);
		checkHeadings(elements, report);
		checkFigures(elements, file, report);
		checkTables(elements, report);
		checkLists(elements, report);
		const painted = await checkContent(reader, file, elements, report);
		const fonts = checkFonts(file, report);
		const links = await checkLinks(reader, file, elements, beside, report);
		await checkOutline(reader, report);
		const attachments = checkAttachments(file, report);
		for (let page = 1; page <= reader.numPages; page += 1) {
			const { items } = await (await reader.getPage(page)).getTextContent();
			const unreadable = items.filter((item) => "str" in item && /[\0\uE000-\uF8FF\uFFFD]/u.test(item.str));
			if (unreadable.length > 0) report("text without characters", `page ${page}`);
		}
		const count = (role: string): number => elements.filter((element) => element.role === role).length;
		return {
			faults,
			seen: {
				pages: reader.numPages,
				painted,
				elements: elements.length,
				figures: count("Figure"),
				tables: count("Table"),
				lists: count("L"),
				links,
				fonts,
				attachments,
			},
		};
	} finally {
		await task.destroy();
	}
};
