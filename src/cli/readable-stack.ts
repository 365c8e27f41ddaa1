import { readFileSync } from "node:fs";
import { SourceMap, type SourceMapPayload } from "node:module";
import { fileURLToPath } from "node:url";

/** `file:///…/dist/chunks/x.js:12:34`, as a line of a stack names a place in a bundled file. */
const PLACE = /(file:\/\/[^\s()]+\.js):(\d+):(\d+)/gu;

/**
 * A stack with places of the sources in it, where it names places of the bundle. Maps are read only here, so that no
 * other run pays for them; a place without a map stays as it is.
 */
export const readableStack = (stack: string): string => {
	const maps = new Map<string, SourceMap | undefined>();
	return stack.replaceAll(PLACE, (written, file: string, line: string, column: string) => {
		if (!maps.has(file)) maps.set(file, mapOf(file));
		const entry = maps.get(file)?.findEntry(Number(line) - 1, Number(column) - 1);
		if (entry === undefined || !("originalSource" in entry)) return written;
		const source = entry.originalSource.replace(/^(?:\.\.\/)+/u, "");
		return `${source}:${entry.originalLine + 1}:${entry.originalColumn + 1}`;
	});
};

const mapOf = (file: string): SourceMap | undefined => {
	try {
		return new SourceMap(JSON.parse(readFileSync(`${fileURLToPath(file)}.map`, "utf8")) as SourceMapPayload);
	} catch {
		return undefined;
	}
};
