import { getDocument, type PDFDocumentProxy } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A structure element as read back: its role, its own text, and what is inside. */
export interface ReadElement {
	readonly role: string;
	readonly alt?: string;
	readonly text: string;
	readonly children: readonly ReadElement[];
}

export interface ReadPdf {
	readonly pages: number;
	readonly info: Readonly<Record<string, unknown>>;
	readonly xmp: string;
	readonly marked: boolean;
	/** Text of each page, in content order. */
	readonly texts: readonly string[];
	/** Structure, page by page; an element that runs over pages appears on each. */
	readonly structure: readonly ReadElement[];
	readonly outline: readonly { readonly title: string; readonly items: readonly string[] }[];
	readonly attachments: Readonly<Record<string, Uint8Array>>;
	readonly destinations: readonly string[];
	/** Targets of the links on each page. */
	readonly links: readonly (readonly string[])[];
}

interface Node {
	readonly role?: string;
	readonly alt?: string;
	readonly type?: string;
	readonly id?: string;
	readonly children?: readonly Node[];
}

const readPage = async (document: PDFDocumentProxy, number: number) => {
	const page = await document.getPage(number);
	const content = await page.getTextContent({ includeMarkedContent: true });
	const marked = new Map<string, string>();
	const open: (string | undefined)[] = [];
	let whole = "";
	for (const item of content.items) {
		if ("str" in item) {
			const words = item.str + (item.hasEOL ? "\n" : "");
			whole += words;
			const id = open.findLast((known) => known !== undefined);
			if (id !== undefined) marked.set(id, (marked.get(id) ?? "") + words);
		} else if (item.type === "endMarkedContent") open.pop();
		else open.push("id" in item && typeof item.id === "string" ? item.id : undefined);
	}
	const toElement = (node: Node): ReadElement => {
		const children = (node.children ?? []).filter((child) => child.role !== undefined).map(toElement);
		const text = (node.children ?? [])
			.map((child) =>
				child.role === undefined
					? child.type === "content"
						? (marked.get(child.id ?? "") ?? "")
						: ""
					: toElement(child).text,
			)
			.join(" ");
		return {
			role: node.role ?? "",
			...(node.alt === undefined ? {} : { alt: node.alt }),
			text: text.replace(/\s+/g, " ").trim(),
			children,
		};
	};
	const tree = (await page.getStructTree()) as Node | null;
	const annotations: readonly { dest?: unknown; url?: unknown }[] = await page.getAnnotations();
	return {
		text: whole,
		structure: tree === null ? { role: "none", text: "", children: [] } : toElement(tree),
		links: annotations.map(({ dest, url }) => String(dest ?? url ?? "")),
	};
};

/** Reads a PDF back with pdf.js, which shares no code with what wrote it. */
export const readPdf = async (bytes: Uint8Array): Promise<ReadPdf> => {
	const task = getDocument({ data: Uint8Array.from(bytes), verbosity: 0 });
	const document = await task.promise;
	try {
		const numbers = Array.from({ length: document.numPages }, (_, i) => i + 1);
		const pages = [];
		for (const number of numbers) pages.push(await readPage(document, number));
		const { info, metadata } = await document.getMetadata();
		const outline: readonly { title: string; items: readonly { title: string }[] }[] =
			(await document.getOutline()) ?? [];
		const attachments: Readonly<Record<string, { content: Uint8Array }>> =
			(await document.getAttachments()) ?? {};
		const mark = await document.getMarkInfo();
		return {
			pages: document.numPages,
			info: info as Record<string, unknown>,
			xmp: metadata?.getRaw() ?? "",
			marked: mark?.Marked === true,
			texts: pages.map((page) => page.text),
			structure: pages.map((page) => page.structure),
			outline: outline.map((item) => ({ title: item.title, items: item.items.map((sub) => sub.title) })),
			attachments: Object.fromEntries(
				Object.entries(attachments).map(([name, file]) => [name, file.content]),
			),
			destinations: Object.keys(await document.getDestinations()),
			links: pages.map((page) => page.links),
		};
	} finally {
		await task.destroy();
	}
};

/** Elements of a role, in reading order. */
export const elementsOf = (elements: readonly ReadElement[], role: string): readonly ReadElement[] =>
	elements.flatMap((element) => (element.role === role ? [element] : elementsOf(element.children, role)));

/** Structure elements as the file's own objects: role and number of children, in the order written. */
export const objectsOf = (
	bytes: Uint8Array,
): readonly { readonly role: string; readonly children: number }[] => {
	const source = Buffer.from(bytes).toString("latin1");
	const elements = [...source.matchAll(/\n(\d+) 0 obj\n<<\n\/S \/(\w+)\n([\s\S]*?)>>\nendobj/g)].map(
		([, id, role, rest]) => ({
			id: Number(id),
			role: role ?? "",
			children:
				(/\/K \[([\s\S]*?)\]/.exec(rest ?? "")?.[1] ?? "").match(/\d+ 0 R|<<|(?<![\d ])\b\d+\b(?! 0 R)/g)
					?.length ?? 0,
		}),
	);
	return elements.sort((a, b) => a.id - b.id);
};
