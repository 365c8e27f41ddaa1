import type { Known } from "../../cite/known.ts";
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
