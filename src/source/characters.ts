import { diagnose, type Telling } from "../diagnostics/diagnose.ts";
import { type Diagnostic, MOST_FAULTS } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { message, type Said } from "../messages/message.ts";

/*
 * Characters that a definition cannot have, because nobody sees them or no paper can show them.
 */

const CONTROLS =
	"NULL|START OF HEADING|START OF TEXT|END OF TEXT|END OF TRANSMISSION|ENQUIRY|ACKNOWLEDGE|BELL|BACKSPACE|TAB|LINE FEED|LINE TABULATION|FORM FEED|CARRIAGE RETURN|SHIFT OUT|SHIFT IN|DATA LINK ESCAPE|DEVICE CONTROL ONE|DEVICE CONTROL TWO|DEVICE CONTROL THREE|DEVICE CONTROL FOUR|NEGATIVE ACKNOWLEDGE|SYNCHRONOUS IDLE|END OF TRANSMISSION BLOCK|CANCEL|END OF MEDIUM|SUBSTITUTE|ESCAPE|FILE SEPARATOR|GROUP SEPARATOR|RECORD SEPARATOR|UNIT SEPARATOR".split(
		"|",
	);

/** As the Unicode standard names them. */
const NAMES: Readonly<Record<number, string>> = {
	...Object.fromEntries(CONTROLS.map((name, code) => [code, name])),
	127: "DELETE",
	133: "NEXT LINE",
	173: "SOFT HYPHEN",
	1564: "ARABIC LETTER MARK",
	8203: "ZERO WIDTH SPACE",
	8204: "ZERO WIDTH NON-JOINER",
	8205: "ZERO WIDTH JOINER",
	8206: "LEFT-TO-RIGHT MARK",
	8207: "RIGHT-TO-LEFT MARK",
	8232: "LINE SEPARATOR",
	8233: "PARAGRAPH SEPARATOR",
	8234: "LEFT-TO-RIGHT EMBEDDING",
	8235: "RIGHT-TO-LEFT EMBEDDING",
	8236: "POP DIRECTIONAL FORMATTING",
	8237: "LEFT-TO-RIGHT OVERRIDE",
	8238: "RIGHT-TO-LEFT OVERRIDE",
	8288: "WORD JOINER",
	8294: "LEFT-TO-RIGHT ISOLATE",
	8295: "RIGHT-TO-LEFT ISOLATE",
	8296: "FIRST STRONG ISOLATE",
	8297: "POP DIRECTIONAL ISOLATE",
	65279: "ZERO WIDTH NO-BREAK SPACE",
	65533: "REPLACEMENT CHARACTER",
};

/** `U+202E, RIGHT-TO-LEFT OVERRIDE`; a letter with itself, as `你 (U+4F60)`. */
export const characterName = (character: string): Said => {
	const code = character.codePointAt(0) ?? 0;
	const number = `U+${code.toString(16).toUpperCase().padStart(4, "0")}`;
	const name = NAMES[code];
	if (name !== undefined) return `${number}, ${name}`;
	return code >= 0x80 && code < 0xa0
		? message("syntax/not-text.control-number", { number })
		: `${character} (${number})`;
};

/** Controls but for tab and line ends, and the mark that a lenient decoder leaves for what it could not read. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
export const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u0084\u0086-\u009f\ufffd]/;

/** Marks that turn the direction of reading, and line ends that no editor shows as such. */
export const HIDDEN = /[\u0085\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/;

/** Takes no room and says nothing: left by word processors and web pages. */
const INVISIBLE = /[\u00ad\u200b-\u200d\u2060-\u2064\ufeff]/gu;

export const hiddenTelling = (character: string): Telling => ({
	what: message("syntax/hidden-character.what"),
	expected: message("syntax/hidden-character.expected"),
	found: characterName(character),
	mend: message("syntax/hidden-character.mend"),
});

/** Fault of a value or name that was written with escapes, such as `"\u202e"`. */
export const escapedFault = (text: string): Telling | undefined => {
	const match = CONTROL.exec(text) ?? HIDDEN.exec(text);
	return match === null ? undefined : hiddenTelling(match[0]);
};

/** A tree of what was read, with every text of it fit to be printed; and what was wrong with those that were not. */
interface PrintableTree {
	readonly value: unknown;
	readonly diagnostics: readonly Diagnostic[];
}

/**
 * Drops what takes no room, with a notice, and tells of letters that the typeface of the papers lacks: once a value.
 *
 * @param hasGlyph  whether every cut of the typeface has a character
 */
export const printableTree = (
	tree: unknown,
	file: string,
	hasGlyph: (codePoint: number) => boolean,
): PrintableTree => {
	const diagnostics: Diagnostic[] = [];
	const report = (...given: Parameters<typeof diagnose>): void => {
		if (diagnostics.length < MOST_FAULTS) diagnostics.push(diagnose(...given));
	};
	const fitted = (text: string, path: Path): string => {
		if (isPlain(text)) return text;
		const shown = text.replaceAll(INVISIBLE, "");
		if (shown !== text) {
			const [character = ""] = INVISIBLE_ONCE.exec(text) ?? [];
			report(
				"syntax/invisible-character",
				{ file, path },
				{ ...INVISIBLE_TELLING, found: characterName(character) },
			);
		}
		const lacking = [...shown].find((each) => !/\s/u.test(each) && !hasGlyph(each.codePointAt(0) ?? 0));
		if (lacking !== undefined) report("syntax/no-such-letter", { file, path }, letterTelling(lacking));
		return shown;
	};
	const walk = (node: unknown, path: Path): unknown => {
		if (typeof node === "string") return fitted(node, path);
		if (typeof node !== "object" || node === null) return node;
		if (Array.isArray(node)) return node.map((item, i) => walk(item, [...path, i]));
		const map: Record<string, unknown> = Object.create(null);
		for (const [name, value] of Object.entries(node)) map[name] = walk(value, [...path, name]);
		return map;
	};
	return { value: walk(tree, []), diagnostics };
};

const INVISIBLE_ONCE = new RegExp(INVISIBLE.source, "u");

const INVISIBLE_TELLING: Omit<Telling, "found"> = {
	what: message("syntax/invisible-character.what"),
	expected: message("syntax/invisible-character.expected"),
	mend: message("syntax/invisible-character.mend"),
};

const letterTelling = (letter: string): Telling => ({
	what: message("syntax/no-such-letter.what"),
	expected: message("syntax/no-such-letter.expected"),
	found: characterName(letter),
	mend: message("syntax/no-such-letter.mend"),
});

/** Of most text nothing else has to be asked. */
const isPlain = (text: string): boolean => /^[\t\n\r\u0020-\u007e]*$/u.test(text);

/** The first letter of a text that the typeface lacks, where it stands: for tables beside a definition. */
export const lackingLetter = (
	text: string,
	file: string,
	hasGlyph: (codePoint: number) => boolean,
): Diagnostic | undefined => {
	if (isPlain(text)) return undefined;
	let at = 0;
	for (const letter of text) {
		if (!/[\s\p{Cf}]/u.test(letter) && !hasGlyph(letter.codePointAt(0) ?? 0))
			return diagnose(
				"syntax/no-such-letter",
				{ file, path: [], range: [at, at + letter.length] },
				letterTelling(letter),
			);
		at += letter.length;
	}
	return undefined;
};
