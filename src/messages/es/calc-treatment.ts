import type { CALC_TREATMENT as ENGLISH } from "../en/calc-treatment.ts";
import type { Translation } from "../entries.ts";

export const CALC_TREATMENT: Translation<typeof ENGLISH> = {
	"calc/treating-pressure-needs": "La presión de tratamiento necesita {wanting}.",
	"calc/fracture-models-need": "Los modelos de fractura necesitan {wanting}.",
	"calc/step-has-no-volume": 'El paso "{step}" no tiene volumen.',
	"calc/step-names-no-proppant-that-is": 'El paso "{name}" no nombra un apuntalante que esté descrito.',
	"calc/string-treated-through-has-no-pipe": "La sarta por la que se trata no tiene tubería.",
	"calc/no-rating-is-known-for": "No se conoce capacidad de {element}.",
	"calc/sees-treating-pressure-and-is-not":
		"{element} recibe la presión de tratamiento y no está entre los elementos que la contienen.",
	"calc/has-no-rate-and-is-pumped":
		"{additive} no tiene dosis y no se bombea en ningún paso, así que no se puede dar una parte en masa.",
	"calc/has-no-density-so-no-share":
		"{additive} no tiene densidad, así que no se puede dar una parte en masa.",
	"calc/stresses-are-stated-for-clusters-and":
		"Se indicaron esfuerzos para {value} clústeres, y la etapa {number} tiene {clusters}.",
	"calc/net-pressure-reaches-stress-contrast-this":
		"La presión neta alcanza el contraste de esfuerzos: este modelo no pone límite a la altura.",
	"calc/how-first-stage-is-opened-is":
		"No se indicó cómo se abre la primera etapa. Las pistolas no se pueden bombear hasta que el fluido pueda entrar a la roca.",
	"calc/initiation-valve-has-no-opening-pressure": "La válvula de iniciación no tiene presión de apertura.",
};
