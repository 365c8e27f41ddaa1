import type { CALC_STRINGS as ENGLISH } from "../en/calc-strings.ts";
import type { Translation } from "../entries.ts";

export const CALC_STRINGS: Translation<typeof ENGLISH> = {
	"calc/it-is-not-stated-whether-salt": "No se indicó si la sal de {formation} fluye contra la tubería.",
	"calc/rating-under-this-load-lies-outside":
		"Una capacidad bajo esta carga queda fuera de la validez de su fórmula.",
	"calc/no-packer-is-given-so-leak":
		"No se indicó empacador, así que no se evalúan una fuga de la tubería de producción ni un abatimiento de la roca.",
	"calc/no-producing-temperature-is-given":
		"No se indicó la temperatura fluyente en el cabezal, así que no se evalúa el caso caliente.",
	"calc/no-shut-in-pressure-is-known-so-hot":
		"No se indicó ni se calculó la presión de cierre de la tubería de producción, así que no se evalúa el caso caliente.",
	"calc/no-rock-temperature-is-given-so-hot":
		"No se indicó la temperatura de la roca, así que no se evalúa el caso caliente.",
	"calc/strength-joint-is-not-known": "No se conoce la resistencia de una junta.",
	"calc/hole-is-drilled-with-air-no": "El agujero {id} se perfora con aire: ningún lodo carga la sarta.",
	"calc/no-mud-density-is-given-for": "No se indicó la densidad del lodo del agujero {id}.",
	"calc/internal-pressure-rating-coupling-is-not": "No se conoce la presión interna permitida de un cople.",
	"calc/outside-validity.what": "ninguna fórmula publicada da la {what} de esta tubería",
	"calc/outside-validity.expected":
		"una pared que deje un diámetro interior, y un esfuerzo de cedencia de {value} a {value2}",
	"calc/outside-validity.found": "{outsideDiameter}, pared {wall}, cedencia {minimumYield}",
	"calc/outside-validity.mend": "corrija la tubería, o indique sus capacidades con su fuente",
	"calc/connections-are-not-in-catalogue-and":
		"Las conexiones {connection} no están en el catálogo y no se indicó ninguna capacidad para ellas.",
	"calc/coupling-is-no-larger-than-its": "El cople no es más grande que su rosca.",
	"calc/plain-end-pipe-is-as-strong":
		"La tubería de extremo liso es tan fuerte como sus soldaduras, que aquí no se califican.",
	"calc/connections-are-not-in-catalogue-and.connections-are-not-in-catalogue":
		"Las conexiones {connection} no están en el catálogo y no se indicó su capacidad a la tensión.",
	"calc/joints-dimensions-leave-no-strength": "Las dimensiones de la junta no dejan resistencia.",
	"calc/whether-hydrogen-sulfide-is-expected-is": "No se indicó si se espera ácido sulfhídrico.",
	"calc/no-formation-is-given-at-shoe": "No se indicó formación en la zapata.",
	"calc/no-fracture-gradient-is-given-for": "No se indicó gradiente de fractura para {formation}.",
	"calc/no-mud-density-for-shoe-test": "No se indicó densidad del lodo para la prueba de zapata.",
	"calc/mud-is-heavier-than-shoe-test": "El lodo es más pesado de lo que pide la prueba de zapata.",
};
