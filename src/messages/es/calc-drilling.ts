import type { CALC_DRILLING as ENGLISH } from "../en/calc-drilling.ts";
import type { Translation } from "../entries.ts";

export const CALC_DRILLING: Translation<typeof ENGLISH> = {
	"calc/survey-uncertainty-this-well-is-not":
		"No se indicó la incertidumbre del registro direccional de este pozo.",
	"calc/how-well-place-is-known-is": "No se indicó qué tan bien se conoce la posición de {entry}.",
	"calc/base-protected-water-is-not-given": "No se indicó la base del agua protegida.",
	"calc/no-string-has-both-its-shoe":
		"Ninguna TR tiene a la vez su zapata por debajo de la base del agua protegida y cemento a través de ella.",
	"calc/string-which-has-to-protect-water":
		"La TR {must}, que debe proteger el agua, no tiene a la vez su zapata por debajo de la base del agua protegida y cemento a través de ella.",
	"calc/load-truck-is-not-given": "No se indicó la carga de un camión ({field}).",
	"calc/hole-ends-above-shoe-vertically": "El agujero termina, en vertical, por encima de la zapata.",
	"calc/mud-is-lighter-than-influx-or":
		"El lodo es más ligero que el fluido invasor, o el agujero termina por encima de la zapata.",
	"calc/rate-gas-that-could-escape-is": "No se indicó el gasto de gas que podría escapar.",
	"calc/no-dwelling-is-listed-whose-distance": "No hay vivienda listada cuya distancia se conozca.",
	"calc/path-is-not-given-its-distance":
		"No se indicó la trayectoria de {entry}. Su distancia en el espacio no se evalúa.",
	"calc/path-cannot-be-worked-out-its":
		"La trayectoria de {entry} no se puede calcular. Su distancia en el espacio no se evalúa.",
	"calc/wells-surface-location-is-not-given": "No se indicó la ubicación superficial del pozo.",
	"calc/coordinates-are-not-given": "No se indicaron las coordenadas de {name}.",
	"calc/is-placed-in-and-well-in":
		"{name} está ubicado en {datum} y el pozo en {datum2}; los dos no se mezclan.",
	"calc/is-not-given-places-on-map":
		"No se indicó {what}. Hace falta para las posiciones en el mapa y las distancias a la trayectoria del pozo.",
	"calc/impossible-plan.what":
		"ningún agujero sigue estos segmentos: uno no tiene longitud, o da media vuelta completa sobre el anterior",
	"calc/impossible-plan.expected": "longitudes mayores que cero, y menos de media vuelta en cada segmento",
	"calc/impossible-plan.mend": "reparta el giro en varios segmentos",
	"calc/impossible-plan.no-hole-follows-this-plan": "ningún agujero sigue este plan",
	"calc/impossible-plan.kickoff-below-datum-build-above":
		"un inicio de desviación bajo el nivel de referencia, un ritmo de construcción mayor que cero, y una inclinación de aterrizaje entre 0 y 180 grados",
	"calc/impossible-plan.check-kickoff-build-and-landing":
		"revise el inicio de desviación, el ritmo de construcción y la inclinación de aterrizaje",
	"calc/impossible-plan.build-zero-reaches-no-target":
		"un ritmo de construcción de cero no llega a un objetivo lateral",
	"calc/impossible-plan.build-above-zero": "un ritmo de construcción mayor que cero",
	"calc/impossible-plan.state-build-rate": "indique el ritmo de construcción",
	"calc/impossible-plan.target-lies-no-deeper-than":
		"el objetivo no es más profundo que el inicio de desviación, {kickoff}",
	"calc/impossible-plan.target-below-kickoff": "un objetivo por debajo del inicio de desviación",
	"calc/impossible-plan.kick-off-higher": "inicie la desviación más arriba",
	"calc/build-at-or-more": "construya a {ceil} o más",
	"calc/kick-off-at-or-higher": "inicie la desviación a {highest} o más arriba",
	"calc/impossible-plan.arc-from-cannot-reach-target":
		"un arco de {build} desde {kickoff} no puede llegar al objetivo antes de quedar horizontal",
	"calc/impossible-plan.target-outside-arc-reached-at":
		"un objetivo fuera del arco, alcanzado a 90 grados o menos",
	"calc/impossible-plan.found": "{message}, a {x} de distancia",
	"calc/surveyed-stations.what":
		"el registro direccional cuenta desde el norte {north}, y no se indicó el norte del plan",
	"calc/surveyed-stations.expected": "el norte desde el que se cuentan los azimuts del pozo",
	"calc/surveyed-stations.mend": "indique `reference` en site, north",
	"calc/surveyed-stations.survey-counts-from-north-and":
		"el registro direccional cuenta desde el norte {north} y el pozo desde el norte {own}",
	"calc/surveyed-stations.to-turn-one-to-other": "{wanting}, para pasar de uno al otro",
	"calc/surveyed-stations.state-under-site-north": "indique {wanting} en site, north",
	"calc/survey-start.what":
		"el registro direccional empieza a {md}, donde el agujero ya está inclinado {inclination}",
	"calc/survey-start.expected":
		"estaciones desde el nivel de referencia hacia abajo, incluido el agujero arriba de una desviación lateral",
	"calc/survey-start.found": "una primera estación a {md}",
	"calc/survey-start.why":
		"el agujero de arriba se toma como un solo arco desde la vertical en el nivel de referencia, así que toda posición más abajo vale solo lo que valga eso",
	"calc/survey-start.mend":
		"agregue las estaciones de arriba; de una desviación lateral, las del agujero original",
	"calc/unusable-survey.what": "la estación {i} del registro no es más profunda que la anterior",
	"calc/unusable-survey.expected": "una profundidad medida por debajo de {md}",
	"calc/unusable-survey.mend": "ponga las estaciones en orden de profundidad, cada una una vez",
	"calc/unusable-survey.hole-turns-right-back-on":
		"el agujero da media vuelta sobre sí mismo en la estación {i}",
	"calc/unusable-survey.less-than-half-turn-between": "menos de media vuelta entre estaciones",
	"calc/unusable-survey.found": "{inclination}° a {azimuth}°, luego {inclination2}° a {azimuth2}°",
	"calc/unusable-survey.correct-inclination-or-azimuth-station":
		"corrija la inclinación o el azimut de la estación",
	"calc/told.expected": "un agujero bajo el nivel de referencia en todo su largo",
	"calc/told.found": "{tvd} por encima del nivel de referencia, a {md} a lo largo del agujero",
	"calc/told.why": "una inclinación mayor de 90 grados lleva hacia arriba",
	"calc/impossible-plan.planned-path-comes-out-ground": "la trayectoria planeada sale del terreno",
	"calc/impossible-plan.correct-its-angles-or-its": "corrija sus ángulos o sus longitudes",
	"calc/unusable-survey.hole-comes-out-ground-by": "el agujero sale del terreno hacia la estación {i}",
	"calc/unusable-survey.correct-inclination-this-station-or":
		"corrija la inclinación de esta estación o de las anteriores",
	"calc/past-the-path.what": "el agujero pasa {to} más allá del final: {ofWord}",
	"calc/past-the-path.expected": "que {ofWord} llegue al fondo del agujero",
	"calc/past-the-path.found": "última estación a {reached}, agujero hasta {to}",
	"calc/past-the-path.why":
		"más abajo de la última estación el agujero se toma recto, así que las profundidades ahí valen solo lo que valga eso",
	"calc/past-the-path.mend": "lleve {ofWord} hasta el fondo del agujero",
	"calc/outside-validity.no-number-comes-out-for": "no sale ningún número para: {name}",
	"calc/outside-validity.values-that-formula-has-result": "valores para los que la fórmula tiene resultado",
	"calc/outside-validity.correct-what-it-is-worked": "corrija aquello de lo que se calcula",
	"calc/fracture-correlation.what": "al gradiente {method} de {name} le falta {missing}",
	"calc/fracture-correlation.inputs-gradient-lie-outside-what":
		"los datos del gradiente {method} de {name} quedan fuera de lo que el método admite",
	"calc/fracture-correlation.expected": "todos los datos del método, dentro de su intervalo",
	"calc/fracture-correlation.mend": "agregue lo que falta, o indique el gradiente mismo",
};
