import { message } from "../../messages/message.ts";
import { cellText, ForeignFault, type ForeignTable, headText } from "./foreign-table.ts";

interface Line {
	readonly number: number;
	readonly text: string;
}

interface SectionOfFile {
	/** As written after the tilde, in small letters. */
	readonly title: string;
	readonly at: number;
	readonly lines: readonly Line[];
}

/** `MNEM.UNIT  value : description`, as both versions of the standard have it. */
const ENTRY = /^\s*([^.\s]+)\s*\.(\S*)\s*(.*?)\s*(?::[^:]*)?$/u;

const sectionsOf = (text: string): readonly SectionOfFile[] => {
	const sections: { title: string; at: number; lines: Line[] }[] = [];
	for (const [number, raw] of text.split(/\r\n|\n|\r/u).entries()) {
		const line = raw.trim();
		if (line === "" || line.startsWith("#")) continue;
		if (line.startsWith("~"))
			sections.push({ title: line.slice(1).trim().toLowerCase(), at: number, lines: [] });
		else sections.at(-1)?.lines.push({ number, text: raw });
	}
	return sections;
};

const entryOf = (section: SectionOfFile | undefined, name: string): string | undefined =>
	section?.lines
		.map(({ text }) => ENTRY.exec(text))
		.find((entry) => entry?.[1]?.toUpperCase() === name)?.[3]
		?.trim();

interface Pair {
	readonly columns: SectionOfFile;
	readonly data: SectionOfFile;
}

/** The survey's own section of a LAS 3.0 file where there is one; else the log. */
const tableOf = (sections: readonly SectionOfFile[]): Pair => {
	const pair = (columns: RegExp, data: RegExp): Pair | undefined => {
		const [first, second] = [columns, data].map((form) => sections.find(({ title }) => form.test(title)));
		return first === undefined || second === undefined ? undefined : { columns: first, data: second };
	};
	const found =
		pair(/^inclinometry_(?:definition|parameter_definition)/u, /^inclinometry_data/u) ??
		pair(/^log_definition/u, /^log_data/u) ??
		pair(/^c/u, /^a/u);
	if (found === undefined) throw new ForeignFault(message("foreign/las-no-table"));
	return found;
};

const SPLIT: Readonly<Record<string, RegExp>> = { COMMA: /,/u, TAB: /\t/u, SPACE: /\s+/u };

/** The standard asks for ASCII; programs that head a column with a degree sign write it in the code page of Windows. */
const textOf = (bytes: Uint8Array): string => {
	try {
		return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
	} catch {
		return new TextDecoder("windows-1252").decode(bytes);
	}
};

/**
 * A LAS file of version 2.0 or 3.0 as a table: the curves with their units as heads, and each line of data on the line
 * that it has in the file. What the file calls absent is an empty cell.
 *
 * The standard is that of the Canadian Well Logging Society: version 2.0, and 3.0 for its delimiters and sections; both from memory.
 * @throws ForeignFault
 */
export const lasText = (bytes: Uint8Array): ForeignTable => {
	const sections = sectionsOf(textOf(bytes));
	const version = sections.find(({ title }) => title.startsWith("v"));
	const number = entryOf(version, "VERS") ?? "";
	if (!/^[23](?:\.|$)/u.test(number))
		throw new ForeignFault(message("foreign/las-version", { version: number }));
	const wrapped = entryOf(version, "WRAP")?.toUpperCase().startsWith("Y") === true;
	const absent = Number(
		entryOf(
			sections.find(({ title }) => title.startsWith("w")),
			"NULL",
		) ?? Number.NaN,
	);
	const split = SPLIT[entryOf(version, "DLM")?.toUpperCase() ?? "SPACE"] ?? /\s+/u;
	const { columns, data } = tableOf(sections);
	const heads = columns.lines.flatMap(({ text: line }) => {
		const [, name, unit = ""] = ENTRY.exec(line) ?? [];
		return name === undefined ? [] : [headText(name, unit)];
	});
	if (heads.length === 0) throw new ForeignFault(message("foreign/las-no-table"));
	const out: string[] = [];
	out[data.at] = heads.join(",");
	const cells = (line: string): readonly string[] =>
		line
			.trim()
			.split(split)
			.map((cell) => cell.trim().replace(/^"(.*)"$/u, "$1"))
			.map((cell) => (cell !== "" && Number(cell) === absent ? "" : cellText(cell)));
	if (wrapped) {
		// One row runs over several lines: it stands on the line that it begins on.
		let row: string[] = [];
		let began = 0;
		for (const { number: at, text: line } of data.lines) {
			if (row.length === 0) began = at;
			row.push(...cells(line));
			if (row.length < heads.length) continue;
			out[began] = row.join(",");
			row = [];
		}
		if (row.length > 0) out[began] = row.join(",");
	} else for (const { number: at, text: line } of data.lines) out[at] = cells(line).join(",");
	return { format: `LAS ${number}`, text: Array.from(out, (line) => line ?? "").join("\n") };
};
