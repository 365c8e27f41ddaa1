import type { Place } from "./diagnostic.ts";
import { type LineColumn, lineColumn, lineStarts, type Range, type SourceText } from "./source-text.ts";

/** Texts of the files that diagnostics may point into, by the name the user gave. The first is the definition. */
export type Sources = ReadonlyMap<string, SourceText>;

/** A place found in its file. */
export interface Location {
	/** Undefined only where there are no sources at all. */
	readonly file: string | undefined;
	/** Undefined where the file's text is not at hand. Of the file as a whole it is the head of the file. */
	readonly start?: LineColumn;
	readonly end?: LineColumn;
	/** The line the place starts on, and the part of it that is meant, as columns from 0; none of a whole file. */
	readonly line?: { readonly text: string; readonly from: number; readonly to: number };
}

const wholeFile = ({ range, path, key }: Place): boolean =>
	range === undefined && path.length === 0 && key !== true;

const HEAD: Range = [0, 0];

const rangeIn = (place: Place, { positions }: SourceText): Range => {
	if (place.range !== undefined) return place.range;
	if (positions === undefined || wholeFile(place)) return HEAD;
	return (place.key === true ? positions.keyRange(place.path) : positions.valueRange(place.path)).range;
};

const startsOf = new WeakMap<SourceText, readonly number[]>();

const linesOf = (source: SourceText): readonly number[] => {
	const starts = startsOf.get(source) ?? lineStarts(source.text);
	startsOf.set(source, starts);
	return starts;
};

interface Found extends Pick<Location, "file" | "start"> {
	readonly source?: SourceText;
	readonly range?: Range;
}

const find = (place: Place, sources: Sources): Found => {
	const [main] = sources.keys();
	const file = place.file ?? main;
	const source = file === undefined ? undefined : sources.get(file);
	if (source === undefined) return { file };
	const found = rangeIn(place, source);
	const { length } = source.text;
	const range: Range = [Math.min(found[0], length), Math.min(found[1], length)];
	return { file, start: lineColumn(linesOf(source), range[0]), source, range };
};

/** File, line and column where a place starts; enough to put places in order. */
export const locateStart = (place: Place, sources: Sources): Pick<Location, "file" | "start"> =>
	find(place, sources);

/** Line and column of a place, from its range or, where it has none, from its path. */
export const locate = (place: Place, sources: Sources): Location => {
	const { file, start, source, range } = find(place, sources);
	if (start === undefined || source === undefined || range === undefined) return { file };
	if (wholeFile(place)) return { file, start };
	const starts = linesOf(source);
	const lineStart = starts[start.line - 1] ?? 0;
	const text = source.text.slice(lineStart, starts[start.line]).replace(/[\r\n]+$/, "");
	const from = range[0] - lineStart;
	const to = Math.min(range[1] - lineStart, text.trimEnd().length);
	return { file, start, end: lineColumn(starts, range[1]), line: { text, from, to: Math.max(to, from + 1) } };
};

/** `well.yaml:8:7`, as editors and terminals link it. */
export const showLocation = ({ file, start }: Pick<Location, "file" | "start">): string => {
	const name = file ?? "(no file)";
	return start === undefined ? name : `${name}:${start.line}:${start.column}`;
};
