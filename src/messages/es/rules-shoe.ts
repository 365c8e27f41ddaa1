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
};
