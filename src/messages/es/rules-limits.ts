import type { RULES_LIMITS as ENGLISH } from "../en/rules-limits.ts";
import type { Translation } from "../entries.ts";

export const RULES_LIMITS: Translation<typeof ENGLISH> = {
	"rules/nothing-is-asked": "No se pide nada.",
	"rules/top-known-by-returns": "una cima conocida por retornos",
	"rules/calculated-top": "una cima calculada",
	"rules/top-by-temperature-survey": "una cima por registro de temperatura",
	"rules/top-by-bond-log": "una cima por registro de adherencia",
	"rules/tagged-top": "una cima tocada con tubería",
	"rules/held-between-and": "{inside}, limitado entre {from} y {to}",
	"rules/way-cement-top-is-found": "la forma en que se halla la cima de cemento",
	"rules/way-cement-top-is-found-as": "la forma en que se halla la cima de cemento, como la nombra la regla",
	"rules/rule-gives-no-distance-for": "la regla no da distancia para {topBy}",
	"rules/for": "para {topBy}",
	"rules/none-is-allowed": "no se permite",
	"rules/as-far-as-tests-given-show": "{words}, hasta donde muestran las pruebas dadas; {requirement}.",
	"rules/rule-says-about-shortfall-not-more-than":
		"{said}. La regla dice “about” (aproximadamente); una diferencia de no más de {about} la decide un ingeniero.",
};
