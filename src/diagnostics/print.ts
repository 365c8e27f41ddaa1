import { type Message, message, type Said } from "../messages/message.ts";
import { ENGLISH_READER, type Reader, tellPhrase, tellSaid } from "../messages/print.ts";
import type { Diagnostic, Severity } from "./diagnostic.ts";
import { type Location, locate, locateStart, type Sources, showLocation } from "./locate.ts";
import { showPath } from "./path.ts";
import { visible } from "./visible.ts";
import { wrap } from "./wrap.ts";

interface PrintOptions {
	readonly color: boolean;
	/** Columns of the terminal; 80 where it is not one. */
	readonly width: number;
	/** English in field units where absent. */
	readonly reader?: Reader;
}

const ESCAPE = "\u001b[";
const SHADES = { error: "31;1", warning: "33;1", note: "36;1", strong: "1", faint: "2" } as const;
type Shade = keyof typeof SHADES;
type Paint = (shade: Shade, text: string) => string;

const painter =
	(color: boolean): Paint =>
	(shade, text) =>
		color ? `${ESCAPE}${SHADES[shade]}m${text}${ESCAPE}0m` : text;

/** Columns before the text of a labelled line: `  expected  `. */
const LABEL = 12;
const NARROWEST = 40;
const ELLIPSIS = "…";
/** More than this nobody reads in one go, and it is mostly one slip made many times. */
const MOST_SHOWN = 100;

/** Longest text printed of a value; whole blocks and lines may have been put in one place. */
const LONGEST_TEXT = 400;

const clipped = (text: string): string =>
	text.length > LONGEST_TEXT ? `${text.slice(0, LONGEST_TEXT)}${ELLIPSIS}` : text;

const labelled = (label: string, text: string, width: number, paint: Paint): string[] =>
	wrap(visible(clipped(text)), width - LABEL).map((line, index) =>
		index === 0 ? `  ${paint("faint", label.padEnd(LABEL - 2))}${line}` : " ".repeat(LABEL) + line,
	);

/** The line at fault with carets below the part that is meant, cut to the width around it. */
const frame = ({ start, line }: Location, width: number, shade: Severity, paint: Paint): string[] => {
	if (start === undefined || line === undefined) return [];
	const number = String(start.line);
	const room = Math.max(20, width - number.length - 6);
	const text = line.text.trimEnd();
	if (text === "") return [];
	const length = Math.min(line.to - line.from, room - 2);
	const tooLong = text.length > room;
	const shift = tooLong
		? Math.max(0, Math.min(line.from - Math.floor((room - length) / 3), text.length - room + 1))
		: 0;
	const head = shift > 0 ? ELLIPSIS : "";
	const body = text.slice(shift, shift + room - head.length);
	const tail = shift + room - head.length < text.length ? ELLIPSIS : "";
	const shown = head + (tail === "" ? body : body.slice(0, -1)) + tail;
	const indent = line.from - shift + head.length;
	const carets = "^".repeat(Math.max(1, Math.min(length, room - indent)));
	const gutter = " ".repeat(number.length);
	return [
		`  ${paint("faint", `${number} │`)} ${visible(shown)}`,
		`  ${paint("faint", `${gutter} │`)} ${" ".repeat(indent)}${paint(shade, carets)}`,
	];
};

/** `casing › surface › shoe`: items of lists by their own names where the file gives them one. */
const trail = ({ at }: Diagnostic, sources: Sources, reader: Reader): string => {
	const [main = ""] = sources.keys();
	const steps = sources.get(at.file ?? main)?.positions?.trail(at.path);
	return steps === undefined ? showPath(at.path) : steps.map((step) => tellSaid(step, reader)).join(" › ");
};

/** Heads of the lines of a fault. */
const LABELS = {
	expected: { en: "expected", es: "se espera" },
	found: { en: "found", es: "hay" },
	why: { en: "why", es: "motivo" },
	mend: { en: "mend", es: "arreglo" },
	see: { en: "see", es: "vea" },
	source: { en: "source", es: "fuente" },
	more: { en: "more", es: "más" },
} as const;

/** How grave a fault is, beside its place. */
const SEVERITY = {
	error: { en: "error", es: "error" },
	warning: { en: "warning", es: "advertencia" },
	note: { en: "note", es: "nota" },
} as const;

interface Sheet {
	readonly width: number;
	readonly paint: Paint;
	readonly reader: Reader;
}

const printOne = (diagnostic: Diagnostic, sources: Sources, { width, paint, reader }: Sheet): string => {
	const { code, severity, at, what, expected, found, why, mend, related = [], source } = diagnostic;
	const location = locate(at, sources);
	const line = (label: keyof typeof LABELS, said: Said | undefined): string[] =>
		said === undefined ? [] : labelled(LABELS[label][reader.language], tellSaid(said, reader), width, paint);
	const crumbs = at.path.length === 0 ? "" : `${visible(trail(diagnostic, sources, reader))}: `;
	const underlined = location.line?.text.slice(location.line.from, location.line.to);
	return (
		[
			`${paint("strong", visible(showLocation(location)))}  ${paint(severity, SEVERITY[severity][reader.language])}  ${code}`,
			...wrap(crumbs + visible(clipped(tellSaid(what, reader))), width - 2).map((text) => `  ${text}`),
			...frame(location, width, severity, paint),
			...line("expected", expected),
			...line("found", found === undefined || tellSaid(found, reader) === underlined ? undefined : found),
			...line("why", why),
			...line("mend", mend),
			...related.flatMap((place) =>
				line("see", `${showLocation(locateStart(place.at, sources))}  ${tellSaid(place.label, reader)}`),
			),
			...line("source", source),
			...line("more", `casebound explain ${code}`),
		]
			.join("\n")
			// The lines are broken; what a reader copies into a definition is to hold ordinary blanks.
			.replaceAll("\u00a0", " ")
	);
};

/** By file in the order of the sources, then by place; faults of a whole file come first. */
export const inOrder = (diagnostics: readonly Diagnostic[], sources: Sources): Diagnostic[] => {
	const files = [...sources.keys()];
	const rank = (diagnostic: Diagnostic): readonly [number, number, number] => {
		const { file, start } = locateStart(diagnostic.at, sources);
		const index = file === undefined ? -1 : files.indexOf(file);
		return [index === -1 ? files.length : index, start?.line ?? 0, start?.column ?? 0];
	};
	return diagnostics
		.map((diagnostic) => ({ diagnostic, rank: rank(diagnostic) }))
		.sort((a, b) => a.rank[0] - b.rank[0] || a.rank[1] - b.rank[1] || a.rank[2] - b.rank[2])
		.map(({ diagnostic }) => diagnostic);
};

/** `2 errors, 1 warning`; empty where there is nothing to count. */
const countLine = (diagnostics: readonly Diagnostic[], reader: Reader = ENGLISH_READER): string =>
	(["error", "warning", "note"] as const)
		.map((severity) => ({ severity, count: diagnostics.filter((each) => each.severity === severity).length }))
		.filter(({ count }) => count > 0)
		.map(({ severity, count }) => tellPhrase(COUNTED[severity](count), reader))
		.join(", ");

const COUNTED: Readonly<Record<Severity, (count: number) => Message>> = {
	error: (count) => message("diagnostics/errors", { count }),
	warning: (count) => message("diagnostics/warnings", { count }),
	note: (count) => message("diagnostics/notes", { count }),
};

/**
 * Diagnostics as a person reads them: where, what, the line itself, what was expected and found, and one thing to do.
 * In the order of the text, a blank line between two, the count at the end; of very many only the first hundred.
 * Nothing gives an empty string.
 */
export const printDiagnostics = (
	diagnostics: readonly Diagnostic[],
	sources: Sources,
	{ color, width, reader = ENGLISH_READER }: PrintOptions,
): string => {
	if (diagnostics.length === 0) return "";
	const columns = Math.max(NARROWEST, width);
	const paint = painter(color);
	const shown = inOrder(diagnostics, sources).slice(0, MOST_SHOWN);
	const printed = shown.map((each) => printOne(each, sources, { width: columns, paint, reader }));
	const count = countLine(diagnostics, reader);
	const left = diagnostics.length - shown.length;
	return `${[...printed, left > 0 ? tellPhrase(message("diagnostics/not-shown", { counted: count, count: left }), reader) : count].join("\n\n")}\n`;
};
