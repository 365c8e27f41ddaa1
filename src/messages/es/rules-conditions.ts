import type { RULES_CONDITIONS as ENGLISH } from "../en/rules-conditions.ts";
import type { Translation } from "../entries.ts";

export const RULES_CONDITIONS: Translation<typeof ENGLISH> = {
	"rules/definition-carries": "se indicó: {asked}.",
	"rules/maximum-treating-pressure": "la presión máxima de tratamiento",
	"rules/purpose-of-well": "el propósito del pozo",
	"rules/well-produces": "el pozo es para producir {what, select, gas {gas} other {petróleo}}",
	"rules/well-is-for":
		"el pozo es para {purpose, select, gas {gas} oil {petróleo} injection {inyección} monitoring {monitoreo} other {petróleo y gas}}",
	"rules/county-of-well": "el condado del pozo",
	"rules/field-of-well": "el campo del pozo",
	"rules/well-lies-in": "el pozo está en {name}",
	"rules/well-lies-in-no-place-listed": "el pozo está en {name}, que la regla no nombra",
	"rules/step-of-a-table": "según la tabla de la regla, para {noun} de {value}",
	"rules/class-well": "la clase del pozo",
	"rules/record-has-floats-that-did-not-hold": "el registro indica que no retuvo el equipo de flotación",
	"rules/no-record-of-floats-that-did-not-hold":
		"aplica solo si no retiene el equipo de flotación; ningún registro indica que no haya retenido",
	"rules/string-has-plain-end-pipe": "la sarta {string} lleva tubería de extremos lisos",
	"rules/string-has-no-plain-end-pipe":
		"aplica solo a tubería soldada de extremos lisos; la sarta {string} no la lleva",
	"rules/well-is-exploratory": "el pozo es exploratorio",
	"rules/well-is-class": "el pozo es de la clase “{class}”",
	"rules/stimulation-is-planned": "se planea una estimulación",
	"rules/string-reaches-below-kickoff": "la TR {string} llega por debajo del punto de desvío",
	"rules/string-ends-above-kickoff": "la TR {string} termina por encima del punto de desvío",
	"rules/well-has-lateral": "el pozo tiene una lateral",
	"rules/well-has-no-lateral": "el pozo no tiene lateral",
	"rules/well-has-second-surface-string": "el pozo tiene una segunda TR superficial",
	"rules/well-has-one-surface-string": "el pozo tiene una sola TR superficial",
	"rules/no-formation-open-above-shoe-is":
		"ninguna formación abierta sobre la zapata de la TR {string} está marcada como zona de flujo ni como objetivo",
	"rules/hole-has-been-surveyed": "el agujero ya tiene levantamiento direccional",
	"rules/path-is-still-planned-one": "la trayectoria es todavía la del plan",
	"rules/string-is-treated-through": "se trata a través de la TR",
	"rules/string-is-not-treated-through": "no se trata a través de la TR",
	"rules/no-string-is-treated-through": "no se trata a través de ninguna TR.",
	"rules/no-cement-job-is-recorded": "no hay registro de cementación.",
	"rules/no-shoe-test-is-recorded": "no hay registro de prueba de zapata.",
	"rules/no-casing-test-is-recorded": "no hay registro de prueba de TR.",
	"rules/well-has-no-string": "el pozo no tiene TR de este tipo: {named}.",
	"rules/well-has-no-such-annulus-at-wellhead": "el pozo no tiene tal espacio anular en el cabezal.",
	"rules/subjects-of-rule.what": "los preventores",
	"rules/no-offset-well-is-listed": "no hay pozos vecinos listados.",
	"rules/no-is-listed-every-well-has-one":
		"no hay ningún elemento de este tipo listado: {named}; todo pozo tiene uno cerca.",
	"rules/distance-to": "la distancia a: {always}",
	"rules/no-is-listed-and-list-neighbors-is":
		"no hay ninguno listado de este tipo: {named}, y se declara que la lista de vecinos está completa.",
	"rules/no-is-listed-and-nobody-has-stated":
		"no hay ninguno listado de este tipo: {named}, y nadie ha declarado que la lista de vecinos esté completa.",
};
