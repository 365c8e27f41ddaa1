/** What a written number turned out to be, and the text after it. */
type NumberRead =
	| { readonly ok: true; readonly value: number; readonly rest: string }
	| {
			readonly ok: false;
			readonly reason: "comma" | "improper-fraction" | "not-a-number" | "not-finite";
	  };

const VULGAR: Readonly<Record<string, string>> = {
	"½": "1/2",
	"¼": "1/4",
	"¾": "3/4",
	"⅛": "1/8",
	"⅜": "3/8",
	"⅝": "5/8",
	"⅞": "7/8",
	"⅓": "1/3",
	"⅔": "2/3",
};

const RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const LOWERED = "₀₁₂₃₄₅₆₇₈₉";

const level = (digits: string): string =>
	[...digits].map((digit) => Math.max(RAISED.indexOf(digit), LOWERED.indexOf(digit))).join("");

/** Plain text for every kind of space, minus, hyphen, fraction slash and ready-made fraction. */
export const plainText = (text: string): string =>
	text
		.replace(/[\s\u00a0\u2000-\u200b\u202f\u205f\u3000\ufeff]+/g, " ")
		.trim()
		.replace(/[\u2010-\u2014\u2212\ufe63\uff0d]/g, "-")
		.replace(/[\u2044\u2215]/g, "/")
		.replace(
			/(\d?)[ -]?([⁰¹²³⁴-⁹]+) ?\/ ?([₀-₉]+)/g,
			(_, whole: string, over: string, under: string) =>
				`${whole}${whole === "" ? "" : " "}${level(over)}/${level(under)}`,
		)
		.replace(
			/(\d) ?\/ (?=\d)|(\d) \/(?=\d)/g,
			(_, a: string | undefined, b: string | undefined) => `${a ?? b}/`,
		)
		.replace(/(\d)? ?-?([½¼¾⅛⅜⅝⅞⅓⅔])/g, (all, whole: string | undefined, glyph: string) =>
			whole === undefined ? all.replace(glyph, VULGAR[glyph] ?? glyph) : `${whole} ${VULGAR[glyph] ?? glyph}`,
		);

const NUMBER = /^([+-]?) ?(?:(?:(\d+)[ -])?(\d+)\/(\d+)(?![\d.])|((?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?))/i;

/** Rules and gauges are divided no finer; a greater denominator is a slip (`10/100 ft`). */
const FINEST_FRACTION = 64;

/**
 * Reads the number at the head of `text` (already through `plainText`): decimal, with an exponent, as a fraction, or
 * as whole and fraction (`9 5/8`, `9-5/8`).
 *
 * A fraction of one or more is refused: `95/8` is a pipe size with its space lost far more often than it is 11.875.
 */
export const readNumber = (text: string): NumberRead => {
	if (/\d ?,|, ?\d/.test(text)) return { ok: false, reason: "comma" };
	if (/^[+-]? ?\.?inf/i.test(text)) return { ok: false, reason: "not-finite" };
	const match = NUMBER.exec(text);
	if (match === null) return { ok: false, reason: "not-a-number" };
	const [all, sign, whole = "0", numerator, denominator, decimal] = match;
	const rest = text.slice(all.length).trim();
	if (/^[./+-]/.test(rest) || /^e[+-]?\d/i.test(rest)) return { ok: false, reason: "not-a-number" };
	let magnitude: number;
	if (decimal === undefined) {
		const over = Number(numerator);
		const under = Number(denominator);
		if (under < 2 || under > FINEST_FRACTION) return { ok: false, reason: "not-a-number" };
		if (over >= under) return { ok: false, reason: "improper-fraction" };
		magnitude = Number(whole) + over / under;
	} else {
		magnitude = Number(decimal);
	}
	if (!Number.isFinite(magnitude)) return { ok: false, reason: "not-finite" };
	return {
		ok: true,
		value: sign === "-" && magnitude !== 0 ? -magnitude : magnitude,
		rest,
	};
};
