import type { PAD as ENGLISH } from "../en/pad.ts";
import type { Translation } from "../entries.ts";

export const PAD: Translation<typeof ENGLISH> = {
	"pad/well-twice.what": "el mismo pozo aparece dos veces",
	"pad/well-twice.mend": "nombre el archivo del otro pozo, o borre el renglón",
	"pad/one-name.what": "dos pozos de la plataforma tienen el mismo nombre",
	"pad/one-name.mend": "dé a cada pozo el nombre de su propio permiso",
	"pad/one-name.expected": "un nombre que ningún otro pozo de la plataforma tenga",
	"pad/well-file.expected": "la definición de un pozo, junto al archivo de la plataforma o debajo",
	"pad/well-file.mend": "revise el nombre, o ponga ahí el archivo",
	"pad/approach": "{well} y {other}: lo más cerca {distance} a {md}{detail}",
	"pad/approach-factor": ", factor de separación {factor} a {at}",
	"pad/approach-unknown": "{well} y {other}: no se evaluó qué tan cerca pasan",
	"pad/heading":
		"{name} ({count, plural, one {# pozo} other {# pozos}}): qué tan cerca pasan de dos en dos, según {file}",
};
