import type { Said } from "../messages/message.ts";
import type { Code } from "./codes.ts";
import type { Path } from "./path.ts";

export type Severity = "error" | "warning" | "note";

/** Where a diagnostic points: a path into the named file, or a byte range of it where no path exists (a syntax error). */
export interface Place {
	/** The file as the user named it; absent means the definition being read. */
	readonly file?: string;
	readonly path: Path;
	/** Point at the key rather than at its value. */
	readonly key?: boolean;
	/** Half-open character range, for faults found before there is a tree, and for rows of CSV files. */
	readonly range?: readonly [number, number];
}

/**
 * One fault, told so that it can be mended. Stages carry paths; only the printer asks for line and column.
 *
 * `what` states the fault and never the cure; `mend` states one thing to do.
 */
export interface Diagnostic {
	readonly code: Code;
	readonly severity: Severity;
	readonly at: Place;
	readonly what: Said;
	readonly expected: Said;
	readonly found?: Said;
	readonly why?: Said;
	readonly mend: Said;
	readonly related?: readonly { readonly at: Place; readonly label: Said }[];
	/** Key into `seeds/sources.yaml`, with section, where the expectation is somebody's published one. */
	readonly source?: string;
}

/** What a stage gives: its value, if one could be made, and every fault it saw. */
export interface Checked<T> {
	readonly value?: T;
	readonly diagnostics: readonly Diagnostic[];
}

/** A stage stops telling after so many faults: beyond it is one slip made many times, or the wrong file. */
export const MOST_FAULTS = 1000;

export const hasErrors = (diagnostics: readonly Diagnostic[]): boolean =>
	diagnostics.some((d) => d.severity === "error");
