import type { CALC_CEMENT as ENGLISH } from "../en/calc-cement.ts";
import type { Translation } from "../entries.ts";

export const CALC_CEMENT: Translation<typeof ENGLISH> = {
	"calc/density-mud-is-not-given": "No se indicó la densidad del lodo.",
	"calc/pump-rate-or-density-spacer-or":
		"No se indicó un gasto de bombeo, o la densidad del espaciador o del desplazamiento.",
	"calc/plastic-viscosity-or-yield-point-is":
		"No se indicó la viscosidad plástica o el punto de cedencia de {stiff}; las presiones de afuera son las estáticas, y no se da presión de bombeo ni de asentamiento del tapón.",
	"calc/tests-slurry-end-below-that-strength":
		"Las pruebas de la lechada {slurry} terminan por debajo de esa resistencia.",
	"calc/strength-slurry-is-not-given": "No se indicó la resistencia de la lechada {slurry}.",
	"calc/length-joint-is-not-given": "No se indicó la longitud de un tramo.",
	"calc/no-centralizers-stand-there": "Ahí no hay centradores.",
	"calc/length-joint-or-density-mud-is": "No se indicó la longitud de un tramo o la densidad del lodo.",
	"calc/diameter-over-blades-rigid-centralizers-is":
		"No se indicó el diámetro sobre las aletas de los centradores rígidos.",
	"calc/restoring-force-bow-springs-is-not":
		"No se conoce la fuerza restauradora de los centradores de flejes para este diámetro.",
	"calc/blades-are-smaller-than-pipe-or": "Las aletas son menores que la tubería o mayores que el agujero.",
	"calc/no-slurry-reaches-shoe": "Ninguna lechada llega a la zapata.",
	"calc/density-above-cement-is-not-given": "No se indicó la densidad de {unknown} por encima del cemento.",
	"calc/density-displacement-is-not-given": "No se indicó la densidad del desplazamiento.",
	"calc/plastic-viscosity-and-yield-point-are":
		"No se indicaron la viscosidad plástica y el punto de cedencia de {fluid}.",
	"calc/part-annulus-is-too-wide-for":
		"Una parte del espacio anular es demasiado ancha para la fórmula de fricción.",
	"calc/slurry-not-designed.what":
		"la lechada {slurry} de la TR {string} no se puede calcular a partir de sus componentes",
	"calc/slurry-not-designed.expected":
		"agua de mezcla, o una densidad entre la del agua y la de la mezcla seca",
	"calc/slurry-not-designed.mend": "corrija las cantidades, o indique densidad, rendimiento y agua",
	"calc/slurry-design.what": "los componentes de la lechada {slurry} de la TR {string} dan {differs}",
	"calc/slurry-design.expected": "datos y componentes de una misma mezcla",
	"calc/slurry-design.mend": "pregunte al laboratorio cuál es correcto; se usan los datos indicados",
	"calc/calculated-volume-is-zero": "El volumen calculado es cero.",
	"calc/shoe-track-is-longer-than-string":
		"El tramo entre cople flotador y zapata es más largo que la sarta.",
	"calc/liner-is-displaced-through-its-running":
		"Un liner se desplaza por su sarta de corrida, cuyo diámetro interior no se indicó.",
	"calc/no-shoe-track-is-given-so":
		"No se indicó tramo entre cople flotador y zapata, así que no hay cople flotador hasta el cual desplazar.",
	"calc/margin-fault.expected": "a lo más {rock} ahí",
	"calc/margin-fault.at-least-there": "al menos {rock} ahí",
	"calc/margin-fault.mend":
		"bombee más despacio, aligere la lechada, acorte la columna, o coloque una herramienta de etapas por encima",
	"calc/margin-fault.shorten-or-weight-spacer-or":
		"acorte o densifique el espaciador, o mantenga presión en el espacio anular",
	"calc/lifts-casing.what": "la cementación levanta la TR {string} con {least} más de lo que la sujeta",
	"calc/lifts-casing.expected": "más peso dentro de la tubería y de ella misma que empuje en su extremo",
	"calc/lifts-casing.found": "{least} hacia arriba, después de {atpumped}",
	"calc/lifts-casing.upward-when-plug-lands": "{least} hacia arriba al asentar el tapón",
	"calc/lifts-casing.mend":
		"desplace con un fluido más pesado, sujete la tubería con cadenas, o aligere la lechada",
	"calc/bump-above-limit.what":
		"asentar {plug} de la TR {string} requiere {bumppressure}, {bumppressure2} más de lo que permite: {element}",
	"calc/bump-above-limit.expected": "a lo más {allowed}",
	"calc/bump-above-limit.mend": "baje el gasto antes de que llegue el tapón, o asiéntelo con menos presión",
	"calc/sets-before-placed.what":
		"la lechada {id} de la TR {string} espesa {inuse} antes de que llegue el tapón",
	"calc/sets-before-placed.expected": "un tiempo de espesamiento de más de {inuse}",
	"calc/sets-before-placed.mend": "retarde la lechada, o bombee más rápido",
	"calc/drill-out-before-strength.what":
		"la zapata de la TR {string} se va a perforar a las {when}, cuando su cemento tiene {strength}",
	"calc/drill-out-before-strength.found": "{strength} según las pruebas de laboratorio",
	"calc/drill-out-before-strength.mend": "espere una prueba que muestre la resistencia",
	"calc/drill-out-before-strength.wait-or-have-laboratory-show":
		"espere {reached}, o pida al laboratorio que muestre antes la resistencia",
	"calc/no-returns.what": "se bombeó {over} del cemento calculado de la TR {string} y no regresó nada",
	"calc/no-returns.expected": "cemento en superficie",
	"calc/no-returns.mend": "encuentre la cima con un registro, y anótela en `top`",
	"calc/cement-short-of-water.what":
		"el cemento detrás de la TR {string} se queda {short} por debajo de la cima de {name}",
	"calc/cement-short-of-water.expected": "cemento desde {top} TVD o más arriba",
	"calc/cement-short-of-water.found": "cima a {tvd} TVD, por retornos",
	"calc/cement-short-of-water.top-at-tvd-by": "cima a {tvd} TVD, por {topmethod}",
	"calc/cement-short-of-water.mend":
		"avise a la autoridad, y coloque lo que falta antes de seguir perforando",
	"calc/no-returns.found": "{back} de {pumped}",
};
