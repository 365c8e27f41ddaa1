import type { Place } from "./diagnostic.ts";
import { type LineColumn, lineColumn, lineStarts, type Range, type SourceText } from "./source-text.ts";

/** Texts of the files that diagnostics may point into, by the name the user gave. The first is the definition. */
export type Sources = ReadonlyMap<string, SourceText>;

/** A place found in its file. */
export interface Location {
	/** Undefined only where there are no sources at all. */
	readonly file: string | undefined;
	/** Undefined where the file's text is not at hand, or the place is the file as a whole. */
	readonly start?: LineColumn;
	readonly end?: LineColumn;
	/** The line the place starts on, and the part of it that is meant, as columns from 0. */
	readonly line?: { readonly text: string; readonly from: number; readonly to: number };
}

const rangeIn = (place: Place, { positions }: SourceText): Range | undefined => {
	if (place.range !== undefined) return place.range;
	if (positions === undefined || (place.path.length === 0 && place.key !== true)) return undefined;
	return (place.key === true ? positions.keyRange(place.path) : positions.valueRange(place.path)).range;
};

/** Line and column of a place, from its range or, where it has none, from its path. */
export const locate = (place: Place, sources: Sources): Location => {
	const [main] = sources.keys();
	const file = place.file ?? main;
	const source = file === undefined ? undefined : sources.get(file);
	const found = source === undefined ? undefined : rangeIn(place, source);
	if (source === undefined || found === undefined) return { file };
	const range: Range = [Math.min(found[0], source.text.length), Math.min(found[1], source.text.length)];
	const starts = lineStarts(source.text);
	const start = lineColumn(starts, range[0]);
	const lineStart = starts[start.line - 1] ?? 0;
	const text = /^[^\r\n]*/.exec(source.text.slice(lineStart))?.[0] ?? "";
	const from = range[0] - lineStart;
	const to = Math.min(range[1] - lineStart, text.trimEnd().length);
	return {
		file,
		start,
		end: lineColumn(starts, range[1]),
		line: { text, from, to: Math.max(to, from + 1) },
	};
};

/** `well.yaml:8:7`, as editors and terminals link it. */
export const showLocation = ({ file, start }: Location): string => {
	const name = file ?? "(no file)";
	return start === undefined ? name : `${name}:${start.line}:${start.column}`;
};
