import type { Said } from "../../messages/message.ts";

/** A table of another format, put into the form of a CSV file. */
export interface ForeignTable {
	/** What it was read as, such as `LAS 2.0`. */
	readonly format: string;
	/** A line a row; as far as the format has lines or rows, on the line that it has there. */
	readonly text: string;
	/** Of directions: what the file says they are counted from, in its own words. */
	readonly north?: string;
}

/** Thrown by a reader of one format for a file that is of it and cannot be read. */
export class ForeignFault extends Error {
	readonly said: Said;
	constructor(said: Said) {
		super(typeof said === "string" ? said : said.code);
		this.said = said;
	}
}

/** A cell of a CSV file. */
export const cellText = (text: string): string =>
	/[",\r\n]/u.test(text) ? `"${text.replaceAll('"', '""').replaceAll(/\s+/gu, " ")}"` : text;

/** How these formats write the units that a survey is in, and how a definition writes them. */
const UNITS: Readonly<Record<string, string>> = {
	f: "ft",
	ft: "ft",
	feet: "ft",
	foot: "ft",
	ftus: "usft",
	usft: "usft",
	m: "m",
	meter: "m",
	meters: "m",
	metre: "m",
	metres: "m",
	deg: "deg",
	dega: "deg",
	degree: "deg",
	degrees: "deg",
	"°": "deg",
};

/** `DEPT (ft)`: a head with its unit as a definition writes it; the unit as it stands where it is none of these. */
export const headText = (name: string, unit: string): string => {
	const known = UNITS[unit.toLowerCase()] ?? unit;
	return cellText(known === "" ? name : `${name} (${known})`);
};
