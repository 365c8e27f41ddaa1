import type { RULES_LIMITS as ENGLISH } from "../en/rules-limits.ts";
import type { Translation } from "../entries.ts";

export const RULES_LIMITS: Translation<typeof ENGLISH> = {
	"rules/nothing-is-asked": "No se pide nada.",
	"rules/top-known-by-returns": "una cima conocida por retornos",
	"rules/calculated-top": "una cima calculada",
	"rules/top-by-temperature-survey": "una cima por registro de temperatura",
	"rules/top-by-bond-log": "una cima por registro de adherencia",
	"rules/tagged-top": "una cima tocada con tubería",
	"rules/factor-on": "{factor} × {noun}",
	"rules/limit-on": "{noun}: {operator} {amount}",
	"rules/limit-about": " (la regla dice aproximadamente; se toma con un margen de {about})",
	"rules/step-in-words": "{amount} ({noun}: {operator} {end})",
	"rules/step-beyond": "{amount} más allá",
	"rules/of-the-bottom": "en los {height} inferiores de la sarta",
	"rules/above-the-bottom": "sobre los {height} inferiores de la sarta",
	"rules/within-radius": "a menos de {radius}",
	"rules/so-long-after-placing": "{after} después de colocarse",
	"rules/earliest-of": "lo primero que ocurra de {among}",
	"rules/no-sooner-than": ", y no más de {span}",
	"rules/pattern-bottom":
		"{joints, plural, one {un centralizador en el tramo inferior} other {centralizadores en los # tramos inferiores}}",
	"rules/pattern-every":
		"{joints, plural, one {un centralizador en cada tramo} other {un centralizador cada # tramos}}",
	"rules/pattern-first": "el primer centralizador a menos de {first}, luego uno cada {every}",
	"rules/where-dated": "{event} desde {from}, antes de {before}",
	"rules/within-of": "a menos de {radius} de {place}",
	"rules/where-so": "{what}, donde {where}",
	"rules/held-between-and": "{inside}, limitado entre {from} y {to}",
	"rules/way-cement-top-is-found": "la forma en que se halla la cima de cemento",
	"rules/way-cement-top-is-found-as": "la forma en que se halla la cima de cemento, como la nombra la regla",
	"rules/rule-gives-no-distance-for": "la regla no da distancia para {topBy}",
	"rules/for": "para {topBy}",
	"rules/none-is-allowed": "no se permite",
	"rules/as-far-as-tests-given-show": "{words}, hasta donde muestran los datos dados; {requirement}.",
	"rules/rule-says-about-shortfall-not-more-than":
		"{said}. La regla dice “about” (aproximadamente); una diferencia de no más de {about} la decide un ingeniero.",
};
