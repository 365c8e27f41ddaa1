import type { LIST as ENGLISH } from "../en/list.ts";
import type { Translation } from "../entries.ts";

export const LIST: Translation<typeof ENGLISH> = {
	"list/belongs-to-limits": "--for y --rules son de “list limits”",
	"list/rules": "{count, plural, one {# regla} other {# reglas}}",
	"list/compared-with-copy":
		"{count, plural, one {# comparada con copia pública} other {# comparadas con copia pública}}",
	"list/wall": "pared {wall}",
	"list/drift": "diámetro de paso {drift}",
	"list/yield": "cedencia {least} a {greatest}",
	"list/tensile": "tensión última {least}",
	"list/fictional": "ficticio",
	"list/fictional-pad": "una localización con sus pozos, ficticios",
	"list/paper-regulator": "anexo a las formas de la dependencia",
	"list/paper-regulator-appendix": "lo que sustenta el anexo; se encuaderna con él",
	"list/paper-transmittal": "una página encima de lo que se envía a la dependencia",
	"list/paper-landowner": "paquete para los vecinos; --neighbor hace la edición de un solo vecino",
	"list/paper-handout": "una hoja para una reunión o un tablero de avisos",
	"list/paper-answers": "hoja de respuestas de quien expone en una reunión",
	"list/paper-crew": "hoja de seguridad previa al trabajo; --job dice de cuál trabajo",
	"list/paper-slides": "láminas para una reunión pública, 16:9, cada una con una afirmación y una imagen",
	"list/paper-notes":
		"para quien expone: de cada lámina los números exactos, de dónde salen y la pregunta probable",
	"list/paper-changes":
		"lo que cambió una revisión, para una modificación; se hace con compare --out y bind --since",
	"list/job-of-string": "una vez por sarta de revestimiento",
	"list/job-of-well": "una vez por pozo",
	"list/set": "conjunto",
	"list/limits": "límites",
	"list/compared": "comparados",
	"list/share": "parte",
	"list/draft": "borrador",
	"list/mended": "corregidos",
	"list/not-compared": "sin comparar",
	"list/numbers-compared": "con números, comparados",
	"list/of": "{some} de {all}",
	"list/all": "todos",
	"list/sheet-title": "Límites que rigen en {well}, para compararlos con el texto vigente",
	"list/sheet-count":
		"{count, plural, one {# límite} other {# límites}}; {compared} comparados por una persona nombrada en la definición",
	"list/sheet-words": "  requisito   {requirement}",
	"list/sheet-number": "  número      {numbers}",
	"list/sheet-no-number": "  número      ninguno; compare las palabras",
	"list/sheet-well": "  este pozo   {reason}",
	"list/sheet-standing": "  estado      {standing}",
	"list/sheet-copy": "{standing}: {at} ({kind}, {dated}); se leyó: {read}",
	"list/sheet-forms": "  formas      {forms}",
	"list/sheet-agrees": "  número en el texto {blank}  concuerda ____  difiere ____",
	"list/sheet-by": "  por {blank}  licencia {blank}  el ____-__-__  contra {blank}  con fecha ____-__-__",
	"list/sheet-compared": "  comparado   por {by} el {on} contra {against} de {dated}",
	"list/sheet-end":
		"Escriba lo que concuerda en site › compared: '{ rule, by, license, on, against, dated }'; corrija lo que difiere en un archivo de reglas propio (replaces: <id>).",
};
