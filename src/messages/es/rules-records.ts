import type { RULES_RECORDS as ENGLISH } from "../en/rules-records.ts";
import type { Translation } from "../entries.ts";

export const RULES_RECORDS: Translation<typeof ENGLISH> = {
	"rules/cement-job-string-is-not-recorded": "no hay registro de la cementación de la TR {string}.",
	"rules/record-whether-floats-held": "el registro de si retuvo el equipo de flotación",
	"rules/record-says-that-floats-held": "el registro indica que retuvo el equipo de flotación.",
	"rules/record-says-that-floats-did-not-hold": "el registro indica que no retuvo el equipo de flotación.",
	"rules/record-says-that-returns-were-while-pumping":
		"el registro indica que los retornos fueron {seen} durante el bombeo.",
	"rules/record-says-that-there-were-no": "el registro indica que no hubo retornos durante el bombeo.",
	"rules/record-shows-cement-returned-to-surface-2":
		"el registro indica {cement} de cemento retornado a superficie.",
	"rules/record-returns-while-pumping": "el registro de los retornos durante el bombeo",
	"rules/this-is-not-preventer-stack": "esto no es un conjunto de preventores.",
	"rules/no-test-preventers-on-string-is-recorded":
		"no hay registro de la prueba de los preventores de la TR {over}.",
	"rules/record-whether-preventers-on-string-held":
		"el registro de si retuvieron los preventores de la TR {over}",
	"rules/record-says-that-preventers-held-their-test":
		"el registro indica que los preventores retuvieron su prueba.",
	"rules/record-says-that-preventers-did-not-hold":
		"el registro indica que los preventores no retuvieron su prueba.",
	"rules/cement-job-string-is-not-recorded-2": "no hay registro de la cementación de la TR {string}",
	"rules/volume-pumped-each-slurry": "el volumen bombeado de cada lechada",
	"rules/no-stage-is-recorded-as-pumped": "no hay registro de ninguna etapa bombeada",
	"rules/least-part-slurrys-calculated-volume-that":
		"la menor parte bombeada del volumen calculado de una lechada",
	"rules/slurry-was-pumped-to-its-calculated-volume":
		"de la lechada {leastSlurry} se bombeó {part} de su volumen calculado",
	"rules/greatest-difference-slurrys-density-from-its":
		"la mayor diferencia de la densidad de una lechada con su diseño",
	"rules/density-each-slurry-pumped": "la densidad de cada lechada bombeada",
	"rules/slurries-are-off-their-design-density-by": "las lechadas se apartan {part} de su densidad de diseño",
	"rules/slurry-was-weighed-at-off-its-design":
		"la lechada {slurry} se pesó en {density}, a {part} de su diseño",
	"rules/density-window-stated-for-job": "la ventana de densidad declarada para el trabajo",
	"rules/no-density-window-is-stated-for-cement":
		"no se declara ventana de densidad para el cemento de la TR {string}",
	"rules/density-window": "la ventana de densidad",
	"rules/density-window-is": "la ventana de densidad es {part}",
	"rules/difference-recorded-lift-pressure-from-calculated":
		"la diferencia entre la presión de levantamiento registrada y la calculada",
	"rules/final-lift-pressure": "la presión final de levantamiento",
	"rules/cement-string-is-no-heavier-than-what":
		"el cemento de la TR {string} no pesa más que lo que lo desplaza",
	"rules/calculated-lift-pressure": "la presión de levantamiento calculada",
	"rules/recorded-lift-pressure-is-off-calculated-one":
		"la presión de levantamiento registrada se aparta {part} de la calculada",
	"rules/recorded-lift-pressure-is-columns-at-rest":
		"la presión de levantamiento registrada es {lift}, las columnas en reposo dan {calculated}; la diferencia es {part}",
	"rules/depth-cement-top-below-planned-one":
		"la profundidad de la cima de cemento por debajo de la planeada, a lo largo del agujero",
	"rules/is-above-planned-one": "{topNoun} está por encima de la planeada",
	"rules/is-below-planned-one-along-hole":
		"{topNoun} está {part} por debajo de la planeada, a lo largo del agujero",
	"rules/recorded-bump-pressure": "la presión registrada al asentar el tapón",
	"rules/bump-pressure": "la presión al asentar el tapón",
	"rules/plug-was-bumped-at": "el tapón se asentó a {part}",
	"rules/pressure-that-casing-its-planned-test":
		"la presión que permiten la TR, su prueba planeada y el cabezal al asentar el tapón",
	"rules/rating-at-plug-bump": "la capacidad al asentar el tapón",
	"rules/pressure-allowed-at-plug-bump-is": "la presión permitida al asentar el tapón es {part}",
	"rules/equivalent-density-that-shoe-test-was":
		"la densidad equivalente planeada para la prueba de la zapata",
	"rules/planned-shoe-test": "la prueba planeada de la zapata",
	"rules/shoe-test-was-planned-to": "la prueba de la zapata se planeó a {part}",
	"rules/shoe-test-over-fluid-that-next":
		"la prueba de la zapata sobre el fluido con que se perfora el siguiente agujero",
	"rules/no-test-shoe-is-recorded": "no hay registro de la prueba de la zapata de la TR {string}",
	"rules/no-hole-is-drilled-below-shoe": "no se perfora agujero por debajo de la zapata de la TR {string}",
	"rules/planned-test-pressure": "la presión de prueba planeada",
	"rules/planned-hold-test": "la duración planeada de la prueba",
	"rules/fall-that-test-is-allowed": "la caída permitida en la prueba",
	"rules/highest-treating-pressure-on-record": "la mayor presión de tratamiento registrada",
	"rules/maximum-pressure-stages-pumped": "la presión máxima de las etapas bombeadas",
	"rules/greatest-channel-index": "el mayor índice de riesgo de canal",
	"rules/no-flow-of-mud-and-spacer-is-known": "no se da el flujo de lodo y cemento, o no hay centralizadores",
	"rules/yield-points-of-mud-spacer-slurry": "los puntos de cedencia de lodo, espaciador y lechadas",
	"rules/channel-index-of-string-is":
		"de cuatro criterios de desplazamiento la TR {string} no cumple {part} ({at_name})",
	"rules/base-fluid-off-its-water": "la diferencia de densidad entre el fluido base y su agua",
	"rules/dissolved-solids-of-the-water-are-not-given":
		"no se dan los sólidos disueltos de las fuentes de agua",
	"rules/base-fluid-is-off-by": "el fluido base declarado y la mezcla de su agua difieren en {part}",
	"rules/longest-transition-time": "el mayor tiempo de transición de las lechadas",
	"rules/no-gas-zone-is-behind-the-cement": "no hay zona de gas detrás del cemento",
	"rules/transition-time-of-the-slurries": "el tiempo de transición de las lechadas, del laboratorio",
	"rules/slurry-is-in-transition-for": "una lechada con gas detrás está en transición {part}",
	"rules/chart-volume-apart-from-record": "la diferencia de volumen entre gráfica de tratamiento y registro",
	"rules/no-chart-of-a-recorded-stage": "no se da gráfica de tratamiento de ninguna etapa registrada",
	"rules/charts-of-the-stages": "las gráficas de tratamiento de las etapas",
	"rules/chart-and-record-differ": "la gráfica y el registro de la etapa {stage} difieren en {part}",
	"rules/highest-gradient-at-shut-in": "el mayor gradiente al cierre instantáneo",
	"rules/shut-in-pressure-of-the-stages": "la presión de cierre instantáneo de las etapas",
	"rules/stage-shut-in-at": "la etapa {stage} cerró a {part}",
	"rules/stage-reached": "la etapa {detail} llegó a {part}",
	"rules/line-test-pressure": "la presión de prueba de la línea",
	"rules/treating-line-was-tested-to": "la línea de tratamiento se prueba a {part}",
	"rules/pressure-allowed-by-weakest-element-pressure":
		"la presión permitida por el elemento más débil de la barrera de presión",
	"rules/elements-that-see-treating-pressure": "los elementos que ven la presión de tratamiento",
	"rules/weakest-element-pressure-boundary-is-allowed":
		"al elemento más débil de la barrera de presión se le permite {part}",
	"rules/stage-was-given.proppant-placed-in-each": "el apuntalante colocado en cada etapa",
	"rules/stage-was-pumped-with.clean-volume-each-stage": "el volumen limpio de cada etapa",
	"rules/highest-pressure-recorded-in-annulus": "la mayor presión registrada en el espacio anular",
	"rules/highest-pressure-recorded-in": "la mayor presión registrada en {name}",
	"rules/annulus-reached": "el espacio anular llegó a {part}",
	"rules/recorded-high-pressure-test-preventers": "la prueba de alta presión registrada de los preventores",
	"rules/no-test-preventers-on-string-is-recorded-2":
		"no hay registro de la prueba de los preventores de la TR {over}",
	"rules/high-test": "la prueba de alta",
	"rules/preventers-were-tested-to": "los preventores se probaron a {part}",
	"rules/planned-high-pressure-test-preventers": "la prueba de alta presión planeada de los preventores",
	"rules/planned-high-test": "la prueba de alta planeada",
	"rules/preventers-are-to-be-tested-to": "los preventores se van a probar a {part}",
};
