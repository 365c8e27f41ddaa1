import type { RULES_SITE as ENGLISH } from "../en/rules-site.ts";
import type { Translation } from "../entries.ts";

export const RULES_SITE: Translation<typeof ENGLISH> = {
	"rules/surface-location-this-well": "la ubicación superficial de este pozo",
	"rules/place": "la ubicación de {entry}",
	"rules/path": "la trayectoria de {entry}",
	"rules/separation-factor": "el factor de separación",
	"rules/survey-uncertainty-this-well": "la incertidumbre del levantamiento de este pozo",
	"rules/survey-uncertainty": "la incertidumbre del levantamiento de {entry}",
	"rules/separation-factor-to-is": "el factor de separación con {entry} es {part}{detail}",
	"rules/longest-survey-interval-in-build-and":
		"el mayor intervalo entre estaciones en la construcción de ángulo y la lateral",
	"rules/hole-is-not-surveyed-through-build-or":
		"el agujero no tiene levantamiento a través de una construcción de ángulo o una lateral",
	"rules/longest-interval-between-stations-build-and-lateral":
		"el mayor intervalo entre estaciones de la construcción de ángulo y la lateral es {part}",
	"rules/ends-above-highest-modeled-top-fractures":
		"{name} termina {above} por encima de la cima modelada más alta de las fracturas",
	"rules/and-is-from-treated-interval-horizontally":
		"{where} y está a {plan} del intervalo tratado, en horizontal.",
	"rules/its-condition-rests-on": "{where}; evidencia de su condición: {evidence}.",
	"rules/and-is-from-treated-interval-horizontally-within":
		"{where} y está a {plan} del intervalo tratado, en horizontal, dentro del alcance de {reach}; no hay evidencia de su condición.",
	"rules/path-2": "la trayectoria de {name}",
	"rules/goes-as-deep-as-fractures-from-treated":
		"{name} llega a la profundidad de las fracturas, a {near} del intervalo tratado, en horizontal; las fracturas y las incertidumbres alcanzan {reach}",
	"rules/and-it-is-shut-off-there-by": "{where}. Ahí lo aísla: {barriers}.",
	"rules/and-nothing-shows-that-it-is-shut":
		"{where}. No hay evidencia de que esté aislado frente a ellas y por encima.",
	"rules/no-neighbor-is-asked": "no atañe a ningún vecino.",
	"rules/no-written-consent-is-recorded-for": "no hay registro de consentimiento por escrito de {name}.",
	"rules/written-consent-for-was-given-on":
		"el consentimiento por escrito de {name} se dio el {given} ({cite}).",
	"rules/no-offset-well-is-listed-and-search":
		"no hay pozos vecinos listados, y se declara que la búsqueda está completa.",
	"rules/no-offset-well-is-listed-and-nobody":
		"no hay pozos vecinos listados, y nadie ha declarado que la búsqueda esté completa.",
	"rules/offset-wells-nearby": "los pozos vecinos cercanos",
	"rules/place-near-enough-to-measure-from":
		"la ubicación de {well}, con precisión suficiente para medir desde {placeWords}",
	"rules/is-from-outside-radius": "{well} está a {distance} de {placeWords}, fuera del radio.",
	"rules/evidence-condition": "la evidencia de la condición de {well}",
	"rules/is-from-its-condition-rests-on":
		"{well} está a {distance} de {placeWords}; evidencia de su condición: {evidence}.",
	"rules/additives-treatment": "los aditivos del tratamiento",
	"rules/ingredients": "los ingredientes de {name}",
	"rules/cas-number-in": "el número CAS de {ingredient} en {name}",
	"rules/none-ingredients-additives-has-cas-number-on":
		"ninguno de los {count} ingredientes de los {additives} aditivos tiene un número CAS de la lista de la regla.",
	"rules/vertical-depth-well-below-ground": "la profundidad vertical del pozo bajo el terreno",
	"rules/total-depth": "la profundidad total",
	"rules/well-is-deep-below-ground-vertically":
		"el pozo tiene {part} de profundidad bajo el terreno, en vertical",
	"rules/vertical-distance-from-protected-water-to":
		"la distancia vertical del agua protegida al disparo superior",
	"rules/no-interval-is-to-be-treated": "no se va a tratar ningún intervalo",
	"rules/computed-from-coordinates": ", calculada con coordenadas",
	"rules/by": ", según {surveyedBy}",
	"rules/hydrogen-sulfide-in-gas": "el ácido sulfhídrico en el gas",
	"rules/gas-is-stated-to-carry-hydrogen-sulfide": "el gas contiene {part} de ácido sulfhídrico{detail}",
	"rules/volume-treatment": "el volumen del tratamiento",
	"rules/volumes-stages": "los volúmenes de las etapas",
	"rules/treatment-takes-clean-fluid-in-all": "el tratamiento usa {part} de fluido limpio en total",
	"rules/volume-greatest-stage": "el volumen de la etapa mayor",
	"rules/greatest-stage-takes-clean-fluid": "la etapa mayor usa {part} de fluido limpio",
	"rules/dissolved-solids": "los sólidos disueltos",
	"rules/dissolved-solids-are-judged-zone-by-zone": "los sólidos disueltos se juzgan zona por zona",
	"rules/water-carries": "el agua lleva {part}",
	"rules/water-zones": "las zonas de agua",
	"rules/carries-dissolved-solids-and-reaches-to-tvd":
		"{zone} lleva {detail} de sólidos disueltos y llega a {base} TVD, por debajo de la base del agua protegida a {base2} TVD; la regla protege el agua de {operatorWords} {limit}.",
	"rules/dissolved-solids-2": "los sólidos disueltos de {zone}",
	"rules/water-zones-listed-none-dissolved-solids-lies":
		"de las zonas de agua listadas ({water}), ninguna con {operatorWords} {limit} de sólidos disueltos queda por debajo de la base del agua protegida a {base} TVD.",
	"rules/date-on-which-was-sampled": "la fecha del muestreo de {neighbor}",
	"rules/after-planned-for": "{said}, después de {eventWords}, con fecha planeada del {date}.",
	"rules/after-recorded": "{said}, después de {eventWords}, que fue el {date}.",
	"rules/before-recorded": "{said}, antes de {eventWords}, que fue el {date}.",
	"rules/before-planned-for": "{said}, antes de {eventWords}, con fecha planeada del {date}.",
	"rules/no-water-source-is-listed-within-and":
		"no hay ninguna fuente de agua listada a {radius} o menos, y se declara que la lista de vecinos está completa.",
	"rules/no-water-source-is-listed-within-and-2":
		"no hay ninguna fuente de agua listada a {radius} o menos, y nadie ha declarado que la lista esté completa.",
	"rules/least-at-where-two-are-apart": ", mínimo a {md}, donde los dos están separados {separation}",
	"rules/stated-by": " (según {by})",
	"rules/survey-radius-stated": "la incertidumbre de la medición indicada",
	"rules/survey-ellipse-by-model": "el semieje mayor de la elipse según el modelo de error de la herramienta",
	"rules/no-radius-and-model-to-compare":
		"no se dan a la vez la incertidumbre de la medición y el modelo de error de la herramienta",
	"rules/survey-radius-is-stated-as": "la incertidumbre de la medición en el fondo se indica como {part}",
	"rules/survey-ellipse-is":
		"según el modelo de error de la herramienta el semieje mayor de la elipse es {part}",
};
