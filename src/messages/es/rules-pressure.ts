import type { RULES_PRESSURE as ENGLISH } from "../en/rules-pressure.ts";
import type { Translation } from "../entries.ts";

export const RULES_PRESSURE: Translation<typeof ENGLISH> = {
	"rules/this-is-not-annulus": "esto no es un espacio anular.",
	"rules/no-stimulation-is-planned": "no se planea ninguna estimulación.",
	"rules/hole-is-drilled-and-cased": "el agujero {hole} ya está perforado y revestido",
	"rules/hole-is-drilled-with-air": "el agujero {hole} se perfora con aire",
	"rules/density-drilling-fluid-hole": "la densidad del fluido de perforación del agujero {hole}",
	"rules/pore-pressure-rock-open-to-hole": "la presión de poro de la roca abierta al agujero {hole}",
	"rules/mud-density-over-highest-pore-pressure": "la densidad del lodo sobre la mayor presión de poro",
	"rules/mud-hole-is": "el lodo del agujero {hole} es {size} {detail}{detail2}",
	"rules/strength-weakest-place-over-mud-density":
		"la resistencia del punto más débil sobre la densidad del lodo",
	"rules/strength-shoe-above-hole": "la resistencia de la zapata sobre el agujero {hole}",
	"rules/no-shoe-is-above-hole": "no hay zapata sobre el agujero {hole}",
	"rules/kick-tolerance": "la tolerancia al brote",
	"rules/no-preventers-are-closed-on-kick-hole":
		"no hay preventores que cierren un brote en el agujero {hole}",
	"rules/design-kick-and-its-gas-gradient": "el brote de diseño y su gradiente de gas",
	"rules/drill-string": "la sarta de perforación",
	"rules/holds-kick-while-hole-is-drilled":
		"{detail} resiste un brote de {part} mientras se perfora el agujero {hole}{detail2}",
	"rules/holds-kick-while-hole-is-drilled.shoe": "la zapata {shoe}",
	"rules/design-kick": "el brote de diseño",
	"rules/design-kick-volume-hole": "el volumen del brote de diseño del agujero {hole}",
	"rules/design-kick-is": "el brote de diseño es {part}",
	"rules/rated-working-pressure-preventers": "la presión de trabajo de los preventores",
	"rules/preventers-on-casing-are-rated-for": "los preventores de la TR {over} son de {part}",
	"rules/anticipated-surface-pressure": "la presión superficial anticipada",
	"rules/pore-pressure-and-shoe-strength-below":
		"la presión de poro y la resistencia de la zapata por debajo de la zapata {over}",
	"rules/gas-may-bring-to-surface": "la presión superficial anticipada es {part}",
	"rules/low-pressure-test-preventers": "la prueba de baja presión de los preventores",
	"rules/hole-beneath-is-drilled-and-cased": "el agujero de abajo ya está perforado y revestido",
	"rules/low-pressure-test-preventers-on": "la prueba de baja presión de los preventores de la TR {over}",
	"rules/low-pressure-test-preventers-on-is-to":
		"la prueba de baja presión de los preventores de la TR {over} es a {part}",
	"rules/high-pressure-test-preventers": "la prueba de alta presión de los preventores",
	"rules/test-plug-keeps-test-preventers-off-casing":
		"un tapón de prueba aísla la TR de la prueba de los preventores",
	"rules/high-pressure-test-preventers-on": "la prueba de alta presión de los preventores de la TR {over}",
	"rules/preventers-on-casing-are-to-be-tested":
		"los preventores de la TR {over} se van a probar a {part} y no se indica tapón de prueba",
	"rules/internal-yield-casing-beneath": "la presión interna de cedencia de la TR de abajo",
	"rules/string-called": "una TR llamada “{over}”",
	"rules/open-hole-measures.what": "la tubería de la TR {string}",
	"rules/internal-yield-casing-beneath-is": "la presión interna de cedencia de la TR de abajo es {part}",
	"rules/no-stimulation-is-planned-2": "no se planea ninguna estimulación",
	"rules/is": "{noun} es {part}",
	"rules/density-drilling-fluid-below-shoe": "la densidad del fluido de perforación por debajo de la zapata",
	"rules/test-pressure": "la presión de prueba",
	"rules/hold-test": "la duración de la prueba",
	"rules/hold-pressure-test": "la duración de la prueba de presión",
	"rules/fall-in-test": "la caída en la prueba",
	"rules/fall-pressure-test": "la caída de la prueba de presión",
	"rules/least-internal-yield-pressure-string": "la menor presión interna de cedencia de la TR",
	"rules/internal-yield-pressure": "la presión interna de cedencia",
	"rules/least-internal-yield-pressure-string-is": "la menor presión interna de cedencia de la TR es {part}",
	"rules/relief-valves-setting": "el ajuste de la válvula de alivio",
	"rules/working-pressure-preventers": "la presión de trabajo de los preventores",
	"rules/preventers-on-string": "los preventores sobre la TR {string}",
	"rules/preventers-on-string-are-rated-at": "los preventores sobre la TR son de {part}",
	"rules/new-hole-drilled-before-shoe-test": "el agujero nuevo perforado antes de la prueba de la zapata",
	"rules/new-hole-before-shoe-test": "el agujero nuevo antes de la prueba de la zapata",
	"rules/shoe-is-tested-after-new-hole": "la zapata se prueba después de {part} de agujero nuevo",
	"rules/equivalent-density-shoe-test": "la densidad equivalente de la prueba de la zapata",
	"rules/shoe-test": "la prueba de la zapata",
	"rules/heaviest-fluid-planned-below-shoe": "el fluido más denso planeado por debajo de la zapata",
	"rules/fluid-planned-below-shoe-weighs": "el fluido planeado por debajo de la zapata pesa {part}",
	"rules/pressure-at-which-job-stops": "la presión a la que se detiene el trabajo",
	"rules/stop-pressure": "la presión de paro",
	"rules/job-stops-when-annulus-reaches": "el trabajo se detiene cuando el espacio anular llega a {part}",
	"rules/predicted-rise-annulus-pressure": "el aumento previsto de la presión anular",
	"rules/predicted-rise": "el aumento previsto",
	"rules/annulus-pressure-is-predicted-to-rise-by": "se prevé que la presión anular suba {part}",
	"rules/over-pore-pressure": ", {intensity} sobre la presión de poro",
	"rules/strength-weakest-place-over-ecd":
		"la resistencia del punto más débil sobre la densidad de circulación",
	"rules/strength-weakest-place-over-surge": "la resistencia del punto más débil sobre el lodo con surgencia",
	"rules/swabbed-mud-over-pore": "el lodo con suaveo sobre la mayor presión de poro",
	"rules/rate-of-hole": "el mayor gasto con que se perfora el agujero {hole}",
	"rules/speed-of-pipe-in-hole": "la mayor velocidad de la tubería en el agujero {hole}",
	"rules/readings-of-mud": "las lecturas del viscosímetro del lodo del agujero {hole}",
	"rules/bears-more-than-ecd":
		"{place} resiste {size} más que la densidad de circulación del agujero {hole} (ahí {density})",
	"rules/bears-less-than-ecd":
		"{place} resiste {size} menos que la densidad de circulación del agujero {hole} (ahí {density})",
	"rules/bears-more-than-surge":
		"al bajar {pipe} a {speed}, {place} resiste {size} más que el lodo con surgencia en el agujero {hole} (ahí {density})",
	"rules/bears-less-than-surge":
		"al bajar {pipe} a {speed}, {place} resiste {size} menos que el lodo con surgencia en el agujero {hole} (ahí {density})",
	"rules/the-drill-string": "la sarta de perforación",
	"rules/the-string-called": "la TR {string}",
	"rules/swabbed-above-pore":
		"al sacar la sarta de perforación, el lodo del agujero {hole} queda {size} sobre la presión de poro de {formation}{detail}",
	"rules/swabbed-below-pore":
		"al sacar la sarta de perforación, el lodo del agujero {hole} cae {size} por debajo de la presión de poro de {formation}{detail}",
};
