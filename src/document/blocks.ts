import type { Dimension } from "../units/dimensions.ts";
import type { Inline, QuantityStyle, QuantityText } from "./inline.ts";
import type { Drawing } from "./shapes.ts";
import type { Verdict } from "./verdict.ts";

/** A table cell. `none` prints a dash; `unset` is a start-critical value that is missing, and prints loudly. */
export type Cell =
	| QuantityText
	| { readonly kind: "text"; readonly text: string }
	| { readonly kind: "rich"; readonly children: readonly Inline[] }
	| { readonly kind: "verdict"; readonly verdict: Verdict }
	/** A box for a pencil. */
	| { readonly kind: "blank" }
	| { readonly kind: "none" }
	| { readonly kind: "unset"; readonly text: string };

export interface Column {
	readonly id: string;
	readonly head: string;
	/** Relative width. */
	readonly width: number;
	readonly kind: "text" | "quantity" | "verdict";
	/** Of a quantity column: its unit goes into the head, and cells print bare. */
	readonly dimension?: Dimension;
	readonly style?: QuantityStyle;
	readonly align?: "start" | "end" | "middle";
	/** The cell that names the row. */
	readonly rowHead?: boolean;
}

export interface Row {
	readonly cells: Readonly<Record<string, Cell>>;
	/** Totals, subheads and the like. */
	readonly emphasis?: "total" | "group";
}

/**
 * Which items of a list, of facts or of a table go on the continuation page where all of them do not go on their own. A
 * heading just before goes with them.
 */
export interface GoesOn {
	/** Those of the lowest turn go first; of one block the last item first. */
	readonly turn: number;
	/** So many stay. Only where the page is too full without everything else do they go too, all but one. */
	readonly keep: number;
	/** What tells of them on the page that they leave: `{n} more reasons to stop`. */
	readonly more: { readonly one: string; readonly many: string };
}

export type Block =
	| { readonly kind: "heading"; readonly level: 2 | 3; readonly text: string; readonly id?: string }
	| {
			readonly kind: "paragraph";
			readonly children: readonly Inline[];
			readonly tone?: "body" | "lead" | "note";
	  }
	| {
			readonly kind: "list";
			readonly ordered: boolean;
			readonly items: readonly (readonly Block[])[];
			readonly goesOn?: GoesOn;
	  }
	/** Label and value pairs, set in columns. */
	| {
			readonly kind: "facts";
			readonly caption?: string;
			readonly columns?: 1 | 2 | 3;
			readonly items: readonly { readonly label: string; readonly value: Cell; readonly note?: string }[];
			readonly goesOn?: GoesOn;
	  }
	/** The few numbers that matter most, set large. */
	| {
			readonly kind: "figures";
			readonly items: readonly { readonly value: Cell; readonly label: string; readonly note?: string }[];
	  }
	| {
			readonly kind: "table";
			readonly caption: string;
			/** Behind the caption: what would stand alike in every row of a column. */
			readonly constants?: readonly Inline[];
			readonly columns: readonly Column[];
			readonly rows: readonly Row[];
			readonly note?: readonly Inline[];
			readonly id?: string;
			/** What a cross-reference calls it, and what it is counted as: `Table 4`. */
			readonly ref?: string;
			readonly number?: string;
			/** `false`: lines to fill in, which are no table to be told by number. */
			readonly counted?: false;
			/** Smaller type, for tables of many columns. */
			readonly dense?: boolean;
			/** A long narrow table runs down so many columns of the page. */
			readonly abreast?: number;
			readonly goesOn?: GoesOn;
	  }
	| {
			readonly kind: "figure";
			readonly drawing: Drawing;
			readonly caption: readonly Inline[];
			readonly id?: string;
			/** What it is counted as: `Figure 2`. */
			readonly number?: string;
	  }
	| {
			readonly kind: "callout";
			/** `stop` is for what can kill; `caution` for what can mislead or hurt; `note` for the rest. */
			readonly tone: "stop" | "caution" | "note";
			readonly title: string;
			readonly blocks: readonly Block[];
	  }
	/** Lines to sign on. */
	| {
			readonly kind: "sign-in";
			readonly columns: readonly { readonly head: string; readonly width: number }[];
			readonly lines: number;
			/** So many lines stand beside each other, each with all the columns. */
			readonly abreast?: 2;
			/** Of each line, where a pencil line is too low for it [pt]. */
			readonly height?: number;
	  }
	/** Blocks that run down two columns, as high as each other. */
	| { readonly kind: "columns"; readonly blocks: readonly Block[] }
	| { readonly kind: "contents" }
	/** The paper's tables or figures by number, each with its page. */
	| {
			readonly kind: "list-of";
			readonly of: "tables" | "figures";
			readonly caption: string;
			/** Of the paper that it is read with: each with where it leads; filled in when both are counted. */
			readonly elsewhere?: readonly {
				readonly number: string;
				readonly title: string;
				readonly to: string;
			}[];
	  }
	/** Blocks that stand beside each other; `share` is the left one's of the width. */
	| {
			readonly kind: "beside";
			readonly share: number;
			readonly left: readonly Block[];
			readonly right: readonly Block[];
	  }
	| { readonly kind: "page-break" };

/**
 * What pages are set on: letter, letter turned, or a 16:9 page for a screen; and for jobs letter or A4 with narrow
 * margins, and 11 × 17 in or A3, turned.
 */
export type SheetName =
	| "letter"
	| "letter-landscape"
	| "screen"
	| "job-letter"
	| "job-a4"
	| "job-tabloid"
	| "job-a3";

export interface Section {
	/** Stable; the link target and the bookmark. */
	readonly id: string;
	/** Printed before the title where the paper numbers its sections. */
	readonly number?: string;
	readonly title: string;
	readonly blocks: readonly Block[];
	/** Begin on a new page. */
	readonly newPage?: boolean;
	/** Set on pages other than the paper's, and so on new ones. */
	readonly sheet?: SheetName;
	/** Set on one page: the type gives way down to a stated least, and where that is too large the paper is faulty. */
	readonly onePage?: boolean;
	/** What does not fit on its one page in the least type goes on a page of its own, behind the sheet. */
	readonly goesOn?: {
		/** Sections one after the other with the same one are one sheet. */
		readonly sheet: string;
		readonly title: string;
		/** Points to it: `Read also page {page}`. */
		readonly readAlso: string;
	};
	/** Not among the contents: it goes with the section before. */
	readonly unlisted?: boolean;
	/** Read from the wall: its type is as large as the page lets it be. */
	readonly poster?: boolean;
	/** The head of the paper heads it: it has no head of its own. */
	readonly headless?: boolean;
}
