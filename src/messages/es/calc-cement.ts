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
};
