import type { CALC_TREATMENT as ENGLISH } from "../en/calc-treatment.ts";
import type { Translation } from "../entries.ts";

export const CALC_TREATMENT: Translation<typeof ENGLISH> = {
	"calc/treating-pressure-needs": "La presión de tratamiento necesita {wanting}.",
	"calc/step-has-no-volume": 'El paso "{step}" no tiene volumen.',
	"calc/step-names-no-proppant-that-is": 'El paso "{name}" no nombra un apuntalante que esté descrito.',
	"calc/string-treated-through-has-no-pipe": "La sarta por la que se trata no tiene tubería.",
	"calc/annulus-stop.what":
		"el espacio anular {between} puede subir, sin fuga, por encima de donde se detiene el trabajo",
	"calc/annulus-stop.expected": "al menos {pressureAsWritten}",
	"calc/annulus-stop.mend":
		"indique la válvula de alivio que mantiene el espacio anular por debajo del paro, o suba el paro hasta donde ambas sartas permitan",
	"calc/annulus-stop.set-relief-valve-below-stop": "calibre la válvula de alivio por debajo del paro",
	"calc/ladder-faults.mend": "corrija las presiones",
	"calc/test-line-to-maximum-treating-pressure":
		"pruebe la línea a la presión máxima de tratamiento o por encima de ella",
	"calc/lower-rate-or-design-for-higher": "baje el gasto, o diseñe para un límite mayor",
	"calc/lower-limit-or-use-stronger-element":
		"baje el límite, o use un elemento más fuerte o una prueba mayor",
	"calc/set-them-from-lowest-up-kickouts":
		"ajústelos del más bajo hacia arriba: paros de bomba, válvula de alivio, máxima",
	"calc/expected-treating-pressure": "la presión de tratamiento esperada",
	"calc/kickout": "el paro automático {name}",
	"calc/relief-valve": "la válvula de alivio",
	"calc/maximum-treating-pressure": "la presión máxima de tratamiento",
	"calc/the-line-test": "la prueba de línea",
	"calc/what-is-allowed": "lo que se permite a {name}",
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
	"calc/toe-valve.mend": "elija otra presión de apertura, u otra forma de abrir la punta",
	"calc/casing-test-would-open-initiation-valve": "la prueba de la TR abriría la válvula de iniciación",
	"calc/above-at-surface": "más de {pressureAsWritten} en superficie",
	"calc/casing-test": "la prueba de la TR",
	"calc/no-allowed-pressure-opens-initiation-valve":
		"ninguna presión permitida abre la válvula de iniciación",
	"calc/at-most-at-surface": "a lo más {pressureAsWritten} en superficie",
	"calc/maximum": "la máxima",
};
