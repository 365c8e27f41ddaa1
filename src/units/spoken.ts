import type { PrintedQuantity } from "./format.ts";

/*
 * Units as somebody says them to a room: `15 million gallons`, not `15,000,000 gal`. The number is the one that every
 * paper prints; only its dress differs.
 */

export type SpokenLanguage = "en" | "es";

/** One, and more than one. A unit without an entry is said as it is printed. */
const SAID: Readonly<Record<SpokenLanguage, Readonly<Record<string, readonly [one: string, more: string]>>>> =
	{
		en: {
			ft: ["foot", "feet"],
			in: ["inch", "inches"],
			mi: ["mile", "miles"],
			gal: ["gallon", "gallons"],
			lb: ["pound", "pounds"],
			acres: ["acre", "acres"],
			hr: ["hour", "hours"],
			min: ["minute", "minutes"],
			d: ["day", "days"],
			dBA: ["decibel", "decibels"],
			"m³": ["cubic meter", "cubic meters"],
			t: ["metric ton", "metric tons"],
			ha: ["hectare", "hectares"],
			m: ["meter", "meters"],
			mm: ["millimeter", "millimeters"],
		},
		es: {
			ft: ["pie", "pies"],
			in: ["pulgada", "pulgadas"],
			mi: ["milla", "millas"],
			gal: ["galón", "galones"],
			lb: ["libra", "libras"],
			acres: ["acre", "acres"],
			hr: ["hora", "horas"],
			min: ["minuto", "minutos"],
			d: ["día", "días"],
			dBA: ["decibel", "decibeles"],
			"m³": ["metro cúbico", "metros cúbicos"],
			t: ["tonelada", "toneladas"],
			ha: ["hectárea", "hectáreas"],
			m: ["metro", "metros"],
			mm: ["milímetro", "milímetros"],
		},
	};

const MILLION = { en: ["million", "million"], es: ["millón de", "millones de"] } as const;

const NO_BREAK_SPACE = "\u00a0";

/** A printed number as it is said; round millions in words. */
export const spoken = (printed: PrintedQuantity, language: SpokenLanguage): string => {
	const { unit } = printed;
	// `7.00 MPa` is a gauge's reading; a room is told 7.
	const number = printed.number.replace(/(\.\d*?)0+$/u, "$1").replace(/\.$/u, "");
	const [one, more] = SAID[language][unit] ?? [unit, unit];
	const millions = /^(\d{1,3}(?:,\d{3})*),(\d)00,000$/u.exec(number);
	if (millions === null) return joined([number, number === "1" ? one : more]);
	const [, whole = "", tenth = "0"] = millions;
	const count = tenth === "0" ? whole : `${whole}.${tenth}`;
	const [single, plural] = MILLION[language];
	const word = count === "1" ? single : plural;
	// Of a bare count nothing follows that "de" could lead to.
	return joined([count, more === "" ? word.replace(/ de$/u, "") : word, more]);
};

const joined = (parts: readonly string[]): string =>
	parts
		.filter((part) => part !== "")
		.join(NO_BREAK_SPACE)
		.replaceAll(" ", NO_BREAK_SPACE);
