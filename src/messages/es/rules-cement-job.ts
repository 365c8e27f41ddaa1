import type { RULES_CEMENT_JOB as ENGLISH } from "../en/rules-cement-job.ts";
import type { Translation } from "../entries.ts";

export const RULES_CEMENT_JOB: Translation<typeof ENGLISH> = {
	"rules/cement-job-string-is-on-record": "la cementación de la TR {string} ya está registrada",
	"rules/string-is-grouted-from-surface": "la TR {string} se cementa desde superficie",
	"rules/plastic-viscosity-and-yield-point-every":
		"la viscosidad plástica y el punto de cedencia de cada fluido de la cementación",
	"rules/fracture-gradient-rock-behind-cement": "el gradiente de fractura de la roca detrás del cemento",
	"rules/least-margin-cement-job-to-fracture": "el menor margen de la cementación a la fractura",
	"rules/cement-job-string-comes-bears": "la cementación de la TR {string} llega {detail}{where}{detail2}",
	"rules/least-margin-cement-job-to-fracture-2":
		"el menor margen de la cementación a la fractura, como densidad",
	"rules/as-density-least-margin-cement-job-to":
		"como densidad, el menor margen de la cementación de la TR {string} a la fractura es {part}",
	"rules/least-margin-cement-job-over-pore": "el menor margen de la cementación sobre la presión de poro",
	"rules/pore-pressure-rock-behind-cement": "la presión de poro de la roca detrás del cemento",
	"rules/plug-bump-pressure": "la presión al asentar el tapón",
	"rules/no-plug-is-bumped": "no se asienta ningún tapón",
	"rules/pressure-over-final-circulating-that-plug":
		"la presión sobre la final de circulación con que se asienta el tapón",
	"rules/plug-string-is-bumped-at": "el tapón de la TR {string} se asienta a {part}",
	"rules/weakest-pipe-coupling-and-wellhead": "el más débil de tubería, cople y cabezal",
	"rules/rating-pipe": "la capacidad de la tubería",
	"rules/weakest-pipe-coupling-and-wellhead-is-rated":
		"el más débil de tubería, cople y cabezal resiste {part}",
	"rules/thickening-time-left-when-plug-lands": "el tiempo bombeable restante al asentar el tapón",
	"rules/thickening-time-slurry": "el tiempo bombeable de la lechada {id}",
	"rules/pump-rates-cement-job": "los gastos de bombeo de la cementación",
	"rules/least-standoff-at-shoe-and-water": "el menor standoff en la zapata y el agua",
	"rules/centralizers-at-shoe-joint-length-or":
		"los centralizadores en la zapata, la longitud de los tramos o la densidad del lodo",
	"rules/standoff-string-is-at": "el standoff de la TR {string} es {part} en {at_name}",
	"rules/least-contact-time-spacer": "el menor tiempo de contacto del espaciador",
	"rules/pump-rate-behind-spacer": "el gasto de bombeo detrás del espaciador",
	"rules/spacer-string-passes-place-in": "el tiempo de contacto del espaciador de la TR {string} es {part}",
	"rules/length-annulus-that-spacer-fills": "la longitud de espacio anular que llena el espaciador",
	"rules/no-spacer-is-left-above-cement": "no queda espaciador sobre el cemento",
	"rules/it-fills-annulus-above-cement": "el espaciador llena {part} de espacio anular sobre el cemento",
	"rules/least-step-density-from-mud-to": "el menor escalón de densidad de lodo a espaciador a cemento",
	"rules/hole-holds-no-mud": "el agujero no tiene lodo",
	"rules/density-mud-and-spacer": "la densidad del lodo y del espaciador",
	"rules/gas-flow-potential": "el potencial de flujo de gas",
	"rules/no-gas-zone-is-open-behind": "no hay zona de gas abierta detrás del cemento de la TR {string}",
	"rules/no-formation-is-marked-as-gas": "ninguna formación está marcada como gasífera",
	"rules/gas-flow-potential-behind-string-is":
		"el potencial de flujo de gas de {formation} detrás de la TR {string} es {part}{detail}",
	"rules/static-temperature-behind-cement": "la temperatura estática detrás del cemento",
	"rules/temperature-gradient": "el gradiente de temperatura",
	"rules/rock-at-foot-slurry-is-at": "la temperatura estática al fondo de la lechada {hottest} es {part}",
	"rules/silica-by-weight-cement": "la sílice por peso de cemento",
	"rules/silica-slurry": "la sílice de la lechada {detail}",
	"rules/slurry-string-has-silica-by-weight-cement":
		"la lechada {hot} de la TR {string} tiene {part} de sílice por peso de cemento{detail}",
	"rules/difference-strength-test-and-rock-temperature":
		"la diferencia entre la temperatura de la prueba de resistencia y la de la roca",
	"rules/no-strength-test-cement-is-given": "no hay prueba de resistencia del cemento de la TR {string}",
	"rules/temperature-strength-tests-slurry":
		"la temperatura de las pruebas de resistencia de la lechada {strengths}",
	"rules/strength-slurry-string-was-tested-within-range":
		"la resistencia de la lechada {off} de la TR {string} se probó dentro del rango de temperatura de la roca que la rodea{detail}",
	"rules/strength-slurry-string-was-tested-outside-range":
		"la resistencia de la lechada {off} de la TR {string} se probó a {part} fuera del rango de temperatura de la roca que la rodea{detail}",
	"rules/pressure-of-shoe-test": "la presión de la prueba de la zapata",
	"rules/fracture-pressure-of": "la presión de fractura de {formation}",
	"rules/above-what": "a {size} por encima de ",
	"rules/within-what": "a {size} de ",
	"rules/at": " a {tvd}",
	"rules/that-gelling-cement-may-lose-over":
		" (restricción de presión {restriction}, sobrebalance {overbalance})",
	"rules/against-rock-at": " frente a roca a {rock}",
	"rules/which-is-at-at-its-foot": " ({rock} en su parte inferior)",
	"rules/strength-when-drilled-out": "la resistencia del cemento de la zapata al molerlo",
	"rules/strength-tests-of-slurry": "las pruebas de resistencia de la lechada {slurry}",
	"rules/cement-at-shoe-has": "el cemento en la zapata {string} tiene {part} a las {after}{detail}",
	"rules/it-reaches-strength-after": " y alcanza {wanted} a las {reached}",
	"rules/hold-down-while-cementing": "la fuerza que sujeta la sarta mientras se cementa",
	"rules/hold-down-of-one-diameter":
		"no se calcula la fuerza sobre una sarta de varios diámetros o un liner: {string}",
	"rules/cement-job-lifts":
		"la cementación empuja la TR {string} hacia arriba con {size} más de lo que la sujeta",
	"rules/cement-job-holds-down":
		"la TR {string} conserva al menos {size} de fuerza neta hacia abajo mientras se cementa",
	"rules/recorded-cement-top-below-water-zone":
		"la cima de cemento registrada por debajo de la cima de una zona de agua",
	"rules/string-passes-no-water-bare":
		"la sarta {string} no pasa por ninguna zona de agua que el cemento exterior deje descubierta",
	"rules/cement-stops-below-water":
		"el cemento detrás de la sarta {string} termina {size} por debajo de la cima de {zone}",
	"rules/cement-covers-water": "el cemento detrás de la sarta {string} cubre {zone}",
	"rules/while-fluid-passes": ", mientras pasa {fluid}",
	"rules/while-fluid-is-pumped": ", mientras se bombea {fluid}",
	"rules/no-cement-returned-of":
		"se bombeó {over} veces el cemento calculado, y el registro muestra que nada regresó a la superficie.",
	"rules/strength-wanted-at-drill-out": "la resistencia que se espera antes de moler",
	"rules/strength-wanted-is": "para moler se espera a {part}",
	"rules/no-strength-is-stated-for-drilling-out":
		"no se indica una resistencia para moler la zapata {string}",
	"rules/cementing-line-test": "la prueba de la línea de cementación",
	"rules/cementing-line-is-tested-to": "la línea de cementación de la sarta {string} se prueba a {part}",
	"rules/highest-cementing-pressure": "la presión más alta de la cementación",
	"rules/cement-job-reaches": "la cementación llega a {part}",
	"rules/depth-of-shallow-cement-class": "la profundidad del cemento clase A, B o C",
	"rules/no-shallow-class": "la sarta {string} no tiene cemento clase A, B o C",
	"rules/slurry-of-class-reaches":
		"la lechada {slurry} de la sarta {string} es de clase {class} y llega a {part} TVD",
	"rules/float-equipment": "el equipo de flotación",
	"rules/floats-named": "se indica el equipo de flotación de la TR {string}: {floats}",
	"rules/no-float-is-named": "no se indica {without} en la TR {string} (equipo de flotación: {floats})",
	"rules/production-packer-below-cement-top": "el empacador de producción por debajo de la cima del cemento",
	"rules/no-packer": "no se indica un empacador de producción en la sarta {string}",
	"rules/packer-above-cement":
		"el empacador de producción se asienta {size} por encima de la cima del cemento detrás de la sarta {string}",
	"rules/packer-below-cement":
		"el empacador de producción se asienta {size} por debajo de la cima del cemento detrás de la sarta {string}",
};
