/**
 * Standard structure types the papers use.
 *
 * @source iso-32000-1, 14.8.4
 */
export type Role =
	| "Document"
	| "Sect"
	| "Div"
	| "H1"
	| "H2"
	| "H3"
	| "H4"
	| "P"
	| "TOC"
	| "TOCI"
	| "Reference"
	| "Link"
	| "Span"
	| "L"
	| "LI"
	| "Lbl"
	| "LBody"
	| "Table"
	| "Caption"
	| "THead"
	| "TBody"
	| "TR"
	| "TH"
	| "TD"
	| "Figure";

/**
 * What a node means. The object itself is the identity of its structure element: the layout splits and repeats nodes,
 * and all pieces that carry the same object belong to one element.
 */
export interface Tag {
	readonly role: Role;
	readonly alt?: string;
	readonly scope?: "Column" | "Row";
	/** Of a list: how its labels count. */
	readonly numbering?: "Decimal" | "Disc";
	/** Structure parent, where it is not the node that encloses this one on the page. */
	readonly within?: Tag;
	/** Read once: the pieces repeated on later pages are running matter. */
	readonly once?: true;
	/** Entry of the document outline. */
	readonly outline?: { readonly title: string; readonly level: 1 | 2 };
}
