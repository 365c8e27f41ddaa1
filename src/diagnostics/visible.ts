/**
 * Text from a file, safe to show on a terminal: control characters (which could move the cursor or change colors) and
 * the marks that turn the reading direction are shown as symbols, tabs as one space.
 */
export const visible = (text: string): string =>
	text
		.replace(/\t/g, " ")
		// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is made visible
		.replace(/[\u0000-\u001f]/g, (control) => String.fromCodePoint(0x2400 + (control.codePointAt(0) ?? 0)))
		.replace(/[\u007f-\u009f\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]/g, "\ufffd");
