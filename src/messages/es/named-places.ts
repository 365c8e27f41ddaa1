/** Casing strings by the name that most definitions give them: `TR superficial`. */
const STRINGS: Readonly<Record<string, string>> = {
	conductor: "conductora",
	surface: "superficial",
	intermediate: "intermedia",
	production: "de producción",
};

/** Holes by the string that is run in them: `agujero superficial`. */
const HOLES: Readonly<Record<string, string>> = {
	conductor: "conductor",
	surface: "superficial",
	intermediate: "intermedio",
	production: "de producción",
};

/** Facts that name a string or a hole, by the name that entries have for them. */
export const NAMED_PLACES: ReadonlyMap<string, Readonly<Record<string, string>>> = new Map([
	...["string", "string2", "inner", "outer", "above", "liner"].map((name) => [name, STRINGS] as const),
	["hole", HOLES],
]);
