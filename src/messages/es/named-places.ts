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

/** Fluids of a cement job as they are pumped: `mientras se bombea el espaciador`. */
const FLUIDS: Readonly<Record<string, string>> = {
	spacer: "el espaciador",
	mud: "el lodo",
	displacement: "el desplazamiento",
	"last displacement": "lo último del desplazamiento",
	lead: "la lechada delantera",
	tail: "la lechada de cola",
	filler: "la lechada de relleno",
};

/** Facts that name a string or a hole, by the name that entries have for them. */
const NAMED_PLACES: ReadonlyMap<string, Readonly<Record<string, string>>> = new Map([
	...["string", "string2", "inner", "outer", "above", "liner"].map((name) => [name, STRINGS] as const),
	["hole", HOLES],
]);

/** Such facts of findings alone. */
const NAMED_IN_FINDINGS: ReadonlyMap<string, Readonly<Record<string, string>>> = new Map([
	...["over", "shoe", "ids", "id"].map((name) => [name, STRINGS] as const),
	["fluid", FLUIDS],
]);

/** Words that definitions are written with, where a finding says one. */
const DATA_WORDS: Readonly<Record<string, string>> = {
	lead: "delantera",
	tail: "de cola",
	filler: "de relleno",
	top: "superior",
	bottom: "inferior",
	shoe: "la zapata",
	"float shoe": "zapata flotadora",
	"float collar": "collar flotador",
	air: "aire",
	"fresh water": "agua dulce",
	"fresh-water mud": "lodo de agua dulce",
	"salt-water mud": "lodo de agua salada",
	"water-based mud": "lodo base agua",
	"oil-based mud": "lodo base aceite",
	"synthetic-based mud": "lodo sintético",
	foam: "espuma",
	"treating iron": "la línea de tratamiento",
	wellhead: "el cabezal",
	casing: "la TR",
	"casing test": "la prueba de la TR",
	"treating string": "la sarta de tratamiento",
	packer: "el empacador",
	new: "nueva",
	used: "usada",
	reconditioned: "reacondicionada",
	full: "completos",
	partial: "parciales",
};

/**
 * A name or a word of the definition, as Spanish calls it; any other as it was typed. Only findings say words of the
 * definition in Spanish: a fault of the writing shows them as they have to be written.
 */
export const nameInSpanish = (code: string, fact: string, text: string): string =>
	NAMED_PLACES.get(fact)?.[text] ??
	(code.startsWith("rules/") ? (NAMED_IN_FINDINGS.get(fact)?.[text] ?? DATA_WORDS[text] ?? text) : text);

/** The short name of a string, as a finding is headed. */
export const stringInSpanish = (id: string): string => STRINGS[id] ?? id;
