import type { Entries } from "../entries.ts";

/** What is said of tables in other formats than CSV. */
export const FOREIGN = {
	"foreign/broken": [
		"it begins like a file of its format, and is not one or is damaged",
		"Said: A table that the definition names cannot be read.",
	],
	"foreign/las-version": [
		"it is a LAS file of version {version}; versions 2.0 and 3.0 are read",
		"Said: A log file cannot be read. version: as the file has it.",
	],
	"foreign/las-no-table": ["it is a LAS file without curves and data", "Said: A log file cannot be read."],
	"foreign/xml-doctype": [
		"it declares a document type or entities of its own, which no trajectory needs",
		"Said: A WITSML file is not read.",
	],
	"foreign/witsml-none": [
		"it is XML, and holds no trajectory with stations",
		"Said: A WITSML file cannot be read.",
	],
	"foreign/witsml-several": [
		"it holds {count} trajectories; keep the one that is meant",
		"Said: A WITSML file cannot be read.",
	],
	"foreign/witsml-units": [
		"its stations give `{name}` in several units: {units}",
		"Said: A WITSML file cannot be read. name: of an element.",
	],
	"foreign/no-workbook": [
		"it is a packed file, and no workbook (XLSX)",
		"Said: A table that the definition names cannot be read.",
	],
	"foreign/workbook-large": [
		"a part of the workbook unpacks to more than 64 MB",
		"Said: A workbook cannot be read.",
	],
	"foreign/workbook-no-table": [
		"none of its sheets has a row of heads above rows of numbers",
		"Said: A workbook cannot be read.",
	],
	"foreign/read-as.what": [
		"The file {file} was read as {format}: {columns}.",
		"An assumption, printed as a sentence in the papers. columns: which column was taken for what.",
	],
	"foreign/read-as.column": [
		"{name} from {head}",
		"Part of a message, for foreign/read-as. name: what is meant, head: what the file has.",
	],
	"foreign/read-as.north": [
		"azimuths counted from {north}, as the file says",
		"Part of a message, for foreign/read-as. north: in the words of the file.",
	],
	"foreign/read-as.why": [
		"The file heads its columns in its own way; the definition does not say how.",
		"Why something is assumed, printed as a sentence in the papers.",
	],
} as const satisfies Entries;
