import type { Said } from "../messages/message.ts";
import { ENGLISH_READER, type Reader, tellSaid } from "../messages/print.ts";
import type { Code } from "./codes.ts";
import type { Diagnostic, Place, Severity } from "./diagnostic.ts";
import { locate, type Sources } from "./locate.ts";
import { pathKey } from "./path.ts";
import { inOrder } from "./print.ts";

/** A place for programs: lines and columns from 1, the end exclusive; each absent where it is not known. */
interface PlaceJson {
	readonly file?: string;
	readonly line?: number;
	readonly column?: number;
	readonly end_line?: number;
	readonly end_column?: number;
	/** `casing[1].shoe`; absent for the file as a whole. */
	readonly path?: string;
}

interface DiagnosticJson extends PlaceJson {
	readonly code: Code;
	readonly severity: Severity;
	readonly what: string;
	readonly expected: string;
	readonly found?: string;
	readonly why?: string;
	readonly mend: string;
	readonly related?: readonly (PlaceJson & { readonly label: string })[];
	readonly source?: string;
}

const placeJson = (place: Place, sources: Sources): PlaceJson => {
	const { file, start, end } = locate(place, sources);
	return {
		...(file === undefined ? {} : { file }),
		...(start === undefined ? {} : { line: start.line, column: start.column }),
		...(end === undefined ? {} : { end_line: end.line, end_column: end.column }),
		...(place.path.length === 0 ? {} : { path: pathKey(place.path) }),
	};
};

/** Diagnostics for programs (editors, continuous checks), in the order they are printed in. */
export const diagnosticsToJson = (
	diagnostics: readonly Diagnostic[],
	sources: Sources,
	reader: Reader = ENGLISH_READER,
): DiagnosticJson[] => {
	// A program compares and copies what it is told: ordinary blanks.
	const told = (said: Said): string => tellSaid(said, reader).replaceAll("\u00a0", " ");
	return inOrder(diagnostics, sources).map(
		({ code, severity, at, what, expected, found, why, mend, related, source }) => ({
			code,
			severity,
			...placeJson(at, sources),
			what: told(what),
			expected: told(expected),
			...(found === undefined ? {} : { found: told(found) }),
			...(why === undefined ? {} : { why: told(why) }),
			mend: told(mend),
			...(related === undefined
				? {}
				: { related: related.map((each) => ({ ...placeJson(each.at, sources), label: told(each.label) })) }),
			...(source === undefined ? {} : { source }),
		}),
	);
};
