import type { Known } from "../../cite/known.ts";
import { readBy } from "../../document/document.ts";
import type { QuantityStyle, QuantityText } from "../../document/inline.ts";
import { type PaperContext, shown } from "../context.ts";

/** A value for a sentence, or `false` where there is none. */
export const say = (
	context: PaperContext,
	known: Known | undefined,
	style?: QuantityStyle,
): QuantityText | false => (known === undefined ? false : shown(context, known, style));

/** For the public: two or three significant figures carry all that a listener can use. */
export const about = (
	context: PaperContext,
	known: Known | undefined,
	significant = 2,
	unit?: string,
): QuantityText | false => say(context, known, unit === undefined ? { significant } : { significant, unit });

/**
 * A day as its readers say it: `June 1, 2026` to the public, `2026-06-01` to an office and a crew.
 */
export const sayDate = (context: PaperContext, day: string | undefined): string | false => {
	if (day === undefined || day === "") return false;
	const at = Date.parse(`${day}T00:00:00Z`);
	if (!isSpoken(context) || Number.isNaN(at)) return day;
	return LONG_DATE[context.words.language].format(at);
};
/** Papers that are read, or read out, to the public. */
const isSpoken = ({ paper }: PaperContext): boolean =>
	readBy(paper) !== "regulator" && readBy(paper) !== "crew";
const LONG_DATE = {
	en: new Intl.DateTimeFormat("en-US", { dateStyle: "long", timeZone: "UTC" }),
	es: new Intl.DateTimeFormat("es-US", { dateStyle: "long", timeZone: "UTC" }),
} as const;

/** A volume of liquid: gallons to the public of a well in field units, and to those who answer it. */
export const liquid = (context: PaperContext, known: Known<"volume"> | undefined): QuantityText | false =>
	about(context, known, 2, context.units === "field" && isSpoken(context) ? "gal" : undefined);

export const sayText = (value: string | undefined): string | false =>
	value === undefined || value === "" ? false : value;

/** `a`, `a and b`, `a, b and c`. */
export const listed = (items: readonly string[], and: string): string =>
	items.length <= 1 ? (items[0] ?? "") : `${items.slice(0, -1).join(", ")} ${and} ${items.at(-1)}`;

const COMPASS = [
	"north",
	"northeast",
	"east",
	"southeast",
	"south",
	"southwest",
	"west",
	"northwest",
] as const;

/** The nearest of eight compass points to an azimuth in degrees. */
export const compassPoint = (azimuth: number): (typeof COMPASS)[number] =>
	COMPASS[Math.round((((azimuth % 360) + 360) % 360) / 45) % 8] ?? "north";
