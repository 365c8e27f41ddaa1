import { diagnose } from "../diagnostics/diagnose.ts";
import type { Checked, Diagnostic } from "../diagnostics/diagnostic.ts";
import { message, type Said } from "../messages/message.ts";
import { CONTROL, characterName, HIDDEN, hiddenTelling } from "./characters.ts";

/** Largest definition read, in bytes (or characters, where it is text already): many times what a well needs. */
export const LARGEST_TEXT = 500_000;

/** Largest table read: a survey with a station every foot of a very long hole. */
export const LARGEST_TABLE = 5_000_000;

const bytes = (size: number): Said => message("source/bytes", { size });

const tooLarge = (size: number, most: number, file: string): Diagnostic =>
	diagnose(
		"syntax/too-large",
		{ file, path: [] },
		{
			what: message("syntax/too-large.what"),
			expected: message("syntax/too-large.expected", { most: bytes(most) }),
			// Whoever reads a file reads one byte beyond what is allowed, and does not know how many follow.
			found: size === most + 1 ? message("syntax/too-large.more") : bytes(size),
			mend: message("syntax/too-large.mend"),
		},
	);

const notText = (file: string, found: Said, range?: readonly [number, number]): Diagnostic =>
	diagnose(
		"syntax/not-text",
		{ file, path: [], ...(range === undefined ? {} : { range }) },
		{
			what: message("syntax/not-text.what"),
			expected: message("syntax/not-text.expected"),
			found,
			mend: message("syntax/not-text.mend"),
		},
	);

/** The reason why a text cannot be read at all: too long, or no text. */
export const textFault = (
	text: string,
	file: string,
	most: number = LARGEST_TEXT,
): Diagnostic | undefined => {
	if (text.length > most) return tooLarge(text.length, most, file);
	const control = CONTROL.exec(text);
	if (control !== null)
		return notText(
			file,
			message("syntax/not-text.control", { character: characterName(control[0]) }),
			rangeOf(control),
		);
	const hidden = HIDDEN.exec(text);
	if (hidden === null) return undefined;
	const at = { file, path: [], range: rangeOf(hidden) };
	return diagnose("syntax/hidden-character", at, hiddenTelling(hidden[0]));
};

const rangeOf = (match: RegExpExecArray): readonly [number, number] => [match.index, match.index + 1];

/** Text of a file's bytes: strict UTF-8, its byte order mark dropped. UTF-16 and binary files are told apart and refused. */
export const decodeText = (bytes: Uint8Array, file: string, most: number = LARGEST_TEXT): Checked<string> => {
	if (bytes.length > most) return { diagnostics: [tooLarge(bytes.length, most, file)] };
	const [first, second] = bytes;
	if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff))
		return { diagnostics: [notText(file, message("syntax/not-text.utf-16"))] };
	let text: string;
	try {
		text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
	} catch {
		const at = new TextDecoder().decode(bytes).indexOf("\ufffd");
		return {
			diagnostics: [notText(file, message("syntax/not-text.not-utf-8"), at < 0 ? undefined : [at, at + 1])],
		};
	}
	const fault = textFault(text, file, most);
	return fault === undefined ? { value: text, diagnostics: [] } : { diagnostics: [fault] };
};
