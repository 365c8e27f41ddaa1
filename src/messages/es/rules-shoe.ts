import type { RULES_SHOE as ENGLISH } from "../en/rules-shoe.ts";
import type { Translation } from "../entries.ts";

export const RULES_SHOE: Translation<typeof ENGLISH> = {
	"rules/shoe-depth": "la profundidad de la zapata",
	"rules/shoe": "la zapata",
	"rules/no-water-well-is-listed-within-distance":
		"no hay ningún pozo de agua listado dentro de la distancia, y se declara que la lista de vecinos está completa",
	"rules/depth": "la profundidad de {neighbor}",
	"rules/depth-each-water-well-nearby": "la profundidad de cada pozo de agua cercano",
	"rules/string-is-not-liner": "la TR {string} no es un liner",
	"rules/liner-top-and-shoe-before-it": "la boca del liner y la zapata anterior",
	"rules/liner-top": "la boca del liner",
	"rules/length-string": "la longitud de la TR",
	"rules/string-is-long": "la TR mide {part} de largo",
	"rules/length-joint": "la longitud de un tramo",
	"rules/joint-length": "la longitud de los tramos",
	"rules/joint-is-long": "un tramo mide {part} de largo",
	"rules/vertical-depth-shoe-below-ground": "la profundidad vertical de la zapata bajo el terreno",
	"rules/shoe-is-below-ground-vertically": "la zapata está {part} bajo el nivel del terreno, en vertical",
	"rules/vertical-depth-shoe": "la profundidad vertical de la zapata",
	"rules/shoe-is-at-vertical-depth-from-datum":
		"la zapata está a una profundidad vertical de {part} desde el datum",
	"rules/measured-depth-shoe": "la profundidad medida de la zapata",
	"rules/shoe-is-at-measured-depth": "la zapata está a una profundidad medida de {part}",
	"rules/depth-shoe-below-protected-water": "la profundidad de la zapata por debajo del agua protegida",
	"rules/base-protected-water": "la base del agua protegida",
	"rules/base-protected-water-2": "la base del agua protegida",
	"rules/depth-shoe-below-formations-top":
		"la profundidad de la zapata por debajo de la cima de la formación",
	"rules/top": "la cima de {formation}",
	"rules/depth-shoe-below-formations-base":
		"la profundidad de la zapata por debajo de la base de la formación",
	"rules/base": "la base de {formation}",
	"rules/depth-shoe-below-top-competent-rock":
		"la profundidad de la zapata por debajo de la cima de la roca competente",
	"rules/shallowest-formation-stated-to-be-competent": "la formación más somera declarada competente",
	"rules/top-shallowest-formation-stated-to-be": "la cima de la formación más somera declarada competente",
	"rules/depth-shoe-below-nearby-water-wells":
		"la profundidad de la zapata por debajo de los pozos de agua cercanos",
	"rules/deepest-water-well-listed": "el pozo de agua más profundo de la lista",
	"rules/fracture-pressure-at-shoe": "la presión de fractura en la zapata",
	"rules/fracture-gradient-formation-at-shoe":
		"el gradiente de fractura de la formación en la zapata de la TR {string}",
	"rules/rock-at-shoe-breaks-down-at": "la roca en la zapata fractura a {part}",
	"rules/lap-liner": "el traslape del liner",
	"rules/liner-laps-into-string-before-it": "el liner traslapa {part} dentro de la TR anterior",
	"rules/formation-at-shoe": "la formación en la zapata",
	"rules/shoe-stands-in-geologist-has-to-say":
		"la zapata de la TR {string} está asentada en {rock} ({lithology}); {stated}{detail}{detail2}. Un geólogo debe decir si el asiento es bueno.",
	"rules/rock-at-shoe-is-taken-to-break": "; se considera que la roca en la zapata fractura a {fracture}",
	"rules/drilling-fluids-column-to-shoe-weighs":
		"; la columna del fluido de perforación hasta la zapata pesa {mud}",
	"rules/preventers-over-hole": "los preventores sobre el agujero",
	"rules/hole-is-drilled-without-preventers":
		"el agujero {hole} se perfora antes de la primera TR que lleva preventores, y no se indica gas en él",
	"rules/no-preventers-stand-over-hole":
		"no se indican preventores ni desviador sobre la sarta {string} mientras se perfora el agujero {hole}{detail}",
	"rules/preventers-stand-over-hole":
		"se instala un conjunto de preventores en la TR {string} mientras se perfora el agujero {hole}{detail}",
	"rules/and-hole-meets-gas": ", que encuentra gas en {gas}",
	"rules/shoe-test-is-on-record": "la prueba de la zapata {string} está registrada",
	"rules/planned-shoe-test-over-fluid": "la prueba de zapata planeada sobre el fluido del agujero siguiente",
	"rules/planned-shoe-test-below-fluid":
		"la prueba de zapata planeada queda {size} por debajo del fluido del agujero siguiente",
	"rules/planned-shoe-test-above-fluid":
		"la prueba de zapata planeada queda {size} por encima del fluido del agujero siguiente",
	"rules/planned-formation-integrity-test": "la prueba de integridad de formación planeada",
	"rules/shoe-is-tested-to-leak-off": "la zapata {string} se prueba hasta que la roca toma fluido",
	"rules/shoe-is-to-be-tested-to": "la zapata {string} se va a probar a {part}",
	"rules/fracture-gradient-at-shoe": "el gradiente de fractura de la roca en la zapata",
	"rules/rock-at-shoe-bears": "la roca en la zapata resiste {part}",
	"rules/pore-pressure-of": "la presión de poro de {formation}",
	"rules/fracture-gradient-of": "el gradiente de fractura de {formation}",
};
