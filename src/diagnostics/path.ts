/** Place in a definition (or a seed file): keys and list positions from the root. */
export type Path = readonly (string | number)[];

/** `casing › item 2 › cement`: a place as people count, items of lists from 1. */
export const showPath = (path: Path): string =>
	path.length === 0
		? "(whole file)"
		: path.map((step) => (typeof step === "number" ? `item ${step + 1}` : step)).join(" › ");

/** `casing[1].cement`, as result keys and JSON show it. */
export const pathKey = (path: Path): string =>
	path.reduce<string>(
		(key, step) => (typeof step === "number" ? `${key}[${step}]` : key === "" ? step : `${key}.${step}`),
		"",
	);
