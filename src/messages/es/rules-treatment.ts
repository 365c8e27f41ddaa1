import type { RULES_TREATMENT as ENGLISH } from "../en/rules-treatment.ts";
import type { Translation } from "../entries.ts";

export const RULES_TREATMENT: Translation<typeof ENGLISH> = {
	"rules/pump-kickout": "el paro de bomba {rung}",
	"rules/relief-valve": "la válvula de alivio",
	"rules/maximum-treating-pressure-2": "la presión máxima de tratamiento",
	"rules/line-test": "la prueba de la línea",
	"rules/what-is-allowed": "lo permitido para {rung}",
	"rules/expected-pressure": "la presión esperada",
	"rules/limits-treatment-that-stand-out-order": "los límites del tratamiento fuera de orden",
	"rules/kickouts-relief-valve-maximum-ratings-and-line":
		"los paros de bomba, la válvula de alivio, la presión máxima, las capacidades y la prueba de la línea van en orden ascendente",
	"rules/expected-pressure-with-half-friction-reduction":
		"la presión esperada con la mitad de la reducción de fricción",
	"rules/treatment-is-on-record": "el tratamiento ya está registrado",
	"rules/pressure-model-treatment": "el modelo de presión del tratamiento",
	"rules/with-half-stated-friction-reduction-treatment-is":
		"con la mitad de la reducción de fricción declarada, la presión de tratamiento esperada es {part}",
	"rules/lowest-pump-kickout": "el paro de bomba más bajo",
	"rules/pump-kickouts": "los paros de bomba",
	"rules/first-pump-kickout-is-set-to": "el primer paro de bomba está ajustado a {part}",
	"rules/internal-yield-casing-around-annulus":
		"la presión interna de cedencia de la TR que rodea el espacio anular",
	"rules/casing-around-annulus-yields-at": "la TR que rodea el espacio anular cede a {part}",
	"rules/vertical-depth-of-the-shoe-around-annulus":
		"la profundidad vertical de la zapata de la TR que rodea el espacio anular",
	"rules/shoe-depth-of-casing-around-annulus":
		"la profundidad de la zapata de la TR que rodea el espacio anular",
	"rules/shoe-around-annulus-is-at":
		"la zapata de la TR que rodea el espacio anular está a una profundidad vertical de {part}",
	"rules/internal-yield-next-casing-outward":
		"la presión interna de cedencia de la siguiente TR hacia afuera",
	"rules/next-casing-outward-yields-at": "la siguiente TR hacia afuera cede a {part}",
	"rules/collapse-string-inside-annulus": "el colapso de la TR dentro del espacio anular",
	"rules/collapse-rating": "la resistencia al colapso",
	"rules/string-inside-annulus-collapses-at": "la TR dentro del espacio anular colapsa a {part}",
	"rules/pressure-that-leak-treated-string-lets":
		"la presión que una fuga de la TR tratada deja pasar al espacio anular",
	"rules/string-does-not-hold-treating-pressure": "la TR {inner} no contiene la presión de tratamiento",
	"rules/leak-treated-string-lets-into-annulus-inside":
		"una fuga de la TR tratada deja pasar {part} al espacio anular dentro de la TR {outer}, y no se indica válvula de alivio para él",
	"rules/relief-valve-opens-annulus-at": "una válvula de alivio abre el espacio anular a {part}",
	"rules/rating-wellhead-for-treating": "la capacidad del cabezal para el tratamiento",
	"rules/rating-wellhead-while-treating": "la capacidad del cabezal durante el tratamiento",
	"rules/wellhead-is-rated-for-while-treating": "el cabezal es de {part} durante el tratamiento",
	"rules/rating-wellhead-while-drilling": "la capacidad del cabezal durante la perforación",
	"rules/wellhead-is-rated-for-while-drilling": "el cabezal es de {part} durante la perforación",
	"rules/highest-anticipated-surface-pressure-while-drilling":
		"la mayor presión superficial anticipada durante la perforación",
	"rules/no-preventers-are-closed-on-gas-while": "no hay preventores que cierren gas durante la perforación",
	"rules/gas-may-bring-to-surface-while-drilling":
		"el gas puede llevar {part} a superficie durante la perforación",
	"rules/thickness-confining-bed": "el espesor de la capa confinante",
	"rules/no-confining-bed-is-stated-between-protected":
		"no se declara capa confinante entre el agua protegida y el disparo más somero",
	"rules/is-thick-between-protected-water-and-shallowest":
		"{bed} tiene {part} de espesor entre el agua protegida y el disparo más somero",
	"rules/highest-modeled-fracture-top-below-top":
		"la cima modelada más alta de las fracturas por debajo de la cima de la capa confinante",
	"rules/no-confining-bed-is-stated": "no se declara capa confinante",
	"rules/mechanical-properties-treated-rock-for-fracture":
		"las propiedades mecánicas de la roca tratada, para un modelo de fractura",
	"rules/protected-water-to-highest-modeled-fracture":
		"la distancia del agua protegida a la cima modelada más alta de las fracturas",
	"rules/expected-treating-pressure": "la presión de tratamiento esperada",
	"rules/treatment-is-expected-to-need":
		"la presión de tratamiento esperada es {part} en la etapa de mayor presión",
	"rules/toe-valve-opening-pressure": "la presión en superficie que abre la válvula de la punta",
	"rules/no-toe-valve": "la punta no se abre con una válvula de inicio",
	"rules/toe-valve-opens-at": "la válvula de la punta abre a {part} en superficie",
	"rules/casing-test-of-treated-string": "la prueba de la TR por la que se trata",
	"rules/treated-string-is-tested-to": "la TR por la que se trata se prueba a {part}",
	"rules/annulus-pressure-without-leak": "la presión del espacio anular sin fuga",
	"rules/annulus-not-watched": "no se indica un límite de presión para este espacio anular",
	"rules/annulus-does-not-rise": "no se calculó ni se predijo un alza en este espacio anular",
	"rules/annulus-may-rise-to": "el espacio anular puede subir a {part} sin fuga",
	"rules/limits-out-of-order":
		"{count, plural, one {un límite de tratamiento está} other {# límites de tratamiento están}} fuera de orden: {list}",
	"rules/pressure-boundary-elements": "los elementos del conjunto a presión",
	"rules/boundary-has": "la lista de elementos expuestos a la presión incluye {elements}",
	"rules/boundary-lacks":
		"la lista de elementos expuestos a la presión incluye {elements}, pero no {without}",
};
