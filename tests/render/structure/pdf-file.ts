import {
	PDFArray,
	type PDFContext,
	PDFDict,
	PDFDocument,
	PDFHexString,
	PDFName,
	PDFNumber,
	type PDFObject,
	PDFRawStream,
	PDFRef,
	PDFString,
} from "@cantoo/pdf-lib";

/** A piece of a page's content, or an annotation, that a structure element owns. */
export type Owned =
	| { readonly kind: "content"; readonly page: string; readonly id: number }
	| { readonly kind: "annotation"; readonly annotation: string };

/** A structure element as it stands in the file, empty ones included. */
export interface FileElement {
	readonly role: string;
	readonly ref: string;
	readonly dict: PDFDict;
	readonly kids: readonly FileElement[];
	readonly owned: readonly Owned[];
	/** Entries of its attribute objects, such as `Scope` and `BBox`. */
	readonly attributes: ReadonlyMap<string, PDFObject>;
}

/** A PDF taken apart into its objects, by a library that shares no code with what wrote it. */
export const openPdf = (bytes: Uint8Array): Promise<PDFDocument> =>
	PDFDocument.load(bytes, { updateMetadata: false });

export const closePdf = (document: PDFDocument): Promise<Uint8Array> =>
	document.save({ useObjectStreams: false, updateFieldAppearances: false });

export const name = (text: string): PDFName => PDFName.of(text);

/** What stands under a key, references followed. */
export const at = (dict: PDFDict | undefined, key: string): PDFObject | undefined => dict?.lookup(name(key));

export const dictAt = (dict: PDFDict | undefined, key: string): PDFDict | undefined => {
	const found = at(dict, key);
	if (found instanceof PDFRawStream) return found.dict;
	return found instanceof PDFDict ? found : undefined;
};

export const itemsAt = (dict: PDFDict | undefined, key: string): readonly PDFObject[] => {
	const found = at(dict, key);
	return found instanceof PDFArray ? found.asArray() : [];
};

export const textOf = (object: PDFObject | undefined): string | undefined => {
	if (object instanceof PDFString || object instanceof PDFHexString) return object.decodeText();
	return object instanceof PDFName ? object.decodeText() : undefined;
};

export const textAt = (dict: PDFDict | undefined, key: string): string | undefined => textOf(at(dict, key));

export const numberAt = (dict: PDFDict | undefined, key: string): number | undefined => {
	const found = at(dict, key);
	return found instanceof PDFNumber ? found.asNumber() : undefined;
};

export const refAt = (dict: PDFDict, key: string): string | undefined => {
	const found = dict.get(name(key));
	return found instanceof PDFRef ? found.tag : undefined;
};

const attributesOf = (dict: PDFDict, context: PDFContext): ReadonlyMap<string, PDFObject> => {
	const given = at(dict, "A");
	const blocks = given instanceof PDFArray ? given.asArray().map((item) => context.lookup(item)) : [given];
	return new Map(
		blocks.flatMap((block) =>
			block instanceof PDFDict
				? block.entries().map(([key, value]) => [key.decodeText(), value] as const)
				: [],
		),
	);
};

const elementOf = (ref: PDFRef, context: PDFContext): FileElement => {
	const dict = context.lookup(ref, PDFDict);
	const given = at(dict, "K");
	const items =
		given instanceof PDFArray ? given.asArray() : given === undefined ? [] : [dict.get(name("K"))];
	const kids: FileElement[] = [];
	const owned: Owned[] = [];
	const page = refAt(dict, "Pg") ?? "none";
	for (const item of items) {
		const object = context.lookup(item);
		if (object instanceof PDFNumber) owned.push({ kind: "content", page, id: object.asNumber() });
		else if (object instanceof PDFDict) {
			const type = textAt(object, "Type");
			if (type === "MCR")
				owned.push({
					kind: "content",
					page: refAt(object, "Pg") ?? page,
					id: numberAt(object, "MCID") ?? -1,
				});
			else if (type === "OBJR")
				owned.push({ kind: "annotation", annotation: refAt(object, "Obj") ?? "none" });
			else if (item instanceof PDFRef) kids.push(elementOf(item, context));
		}
	}
	return {
		role: textAt(dict, "S") ?? "",
		ref: ref.tag,
		dict,
		kids,
		owned,
		attributes: attributesOf(dict, context),
	};
};

/** The topmost structure elements. */
export const structureOf = (document: PDFDocument): readonly FileElement[] => {
	const root = dictAt(document.catalog, "StructTreeRoot");
	const given = root?.get(name("K"));
	const items = given instanceof PDFRef ? [given] : itemsAt(root, "K");
	return items.flatMap((item) => {
		const object = document.context.lookup(item);
		if (object instanceof PDFArray)
			return object
				.asArray()
				.flatMap((inner) => (inner instanceof PDFRef ? [elementOf(inner, document.context)] : []));
		return item instanceof PDFRef ? [elementOf(item, document.context)] : [];
	});
};

/** An element and all within it, in reading order. */
export const within = (element: FileElement): readonly FileElement[] => [
	element,
	...element.kids.flatMap(within),
];

/** Keys and values of a number tree. */
export const numberTree = (node: PDFDict | undefined): ReadonlyMap<number, PDFObject> => {
	const found = new Map<number, PDFObject>();
	const items = itemsAt(node, "Nums");
	for (let i = 0; i + 1 < items.length; i += 2) {
		const [key, value] = [items[i], items[i + 1]];
		if (key instanceof PDFNumber && value !== undefined) found.set(key.asNumber(), value);
	}
	for (const kid of itemsAt(node, "Kids")) {
		const dict = node?.context.lookup(kid);
		if (dict instanceof PDFDict) for (const [key, value] of numberTree(dict)) found.set(key, value);
	}
	return found;
};

/** Names and values of a name tree. */
export const nameTree = (node: PDFDict | undefined): ReadonlyMap<string, PDFObject> => {
	const found = new Map<string, PDFObject>();
	const items = itemsAt(node, "Names");
	for (let i = 0; i + 1 < items.length; i += 2) {
		const key = textOf(items[i]);
		const value = items[i + 1];
		if (key !== undefined && value !== undefined) found.set(key, value);
	}
	for (const kid of itemsAt(node, "Kids")) {
		const dict = node?.context.lookup(kid);
		if (dict instanceof PDFDict) for (const [key, value] of nameTree(dict)) found.set(key, value);
	}
	return found;
};
