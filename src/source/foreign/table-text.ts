import { message, type Said } from "../../messages/message.ts";
import { ForeignFault, type ForeignTable } from "./foreign-table.ts";
import { lasText } from "./las.ts";
import { witsmlText } from "./witsml.ts";
import { workbookText } from "./workbook.ts";

export type { ForeignTable };

type TableRead = ForeignTable | { readonly refused: Said };

const startsWith = (bytes: Uint8Array, mark: string): boolean =>
	[...mark].every((letter, i) => bytes[i] === letter.charCodeAt(0));

/** The first letters of a text, without a byte order mark and blanks. */
const beginning = (bytes: Uint8Array): string =>
	new TextDecoder("latin1").decode(bytes.subarray(0, 4096)).replace(/^(?:\u00ef\u00bb\u00bf)?\s*/u, "");

/**
 * Reads a workbook (XLSX), a LAS log file or a WITSML trajectory as a table, known by what it begins with and not by its
 * name. Nothing for any other file, which is then read as CSV.
 */
export const foreignTable = (bytes: Uint8Array): TableRead | undefined => {
	const read = readerOf(bytes);
	if (read === undefined) return undefined;
	try {
		return read(bytes);
	} catch (fault) {
		return { refused: fault instanceof ForeignFault ? fault.said : message("foreign/broken") };
	}
};

const readerOf = (bytes: Uint8Array): ((bytes: Uint8Array) => ForeignTable) | undefined => {
	if (startsWith(bytes, "PK\u0003\u0004")) return workbookText;
	const start = beginning(bytes);
	if (/^(?:#[^\n]*\n\s*)*~v/iu.test(start)) return lasText;
	return start.startsWith("<") ? witsmlText : undefined;
};
