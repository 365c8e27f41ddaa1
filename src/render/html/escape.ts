/** Text between tags and in quoted attributes. Control characters, which HTML does not allow, are left out. */
export const escaped = (text: string): string =>
	text
		// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is to be left out
		.replaceAll(/[\0-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\ud800-\udfff\ufffe\uffff]/gu, "")
		.replaceAll("&", "&amp;")
		.replaceAll("<", "&lt;")
		.replaceAll(">", "&gt;")
		.replaceAll('"', "&quot;")
		.replaceAll("'", "&#39;");

/** A CSS string. Whatever could end it, or the style element around it, is written by its number. */
export const cssString = (text: string): string =>
	`"${[...text].map((sign) => (/[\p{L}\p{N} .,;:·–-]/u.test(sign) ? sign : `\\${(sign.codePointAt(0) ?? 0).toString(16)} `)).join("")}"`;
