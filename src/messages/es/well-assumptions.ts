import type { WELL_ASSUMPTIONS as ENGLISH } from "../en/well-assumptions.ts";
import type { Translation } from "../entries.ts";

export const WELL_ASSUMPTIONS: Translation<typeof ENGLISH> = {
	"well/casing-hanger.what": "La tubería que llega a superficie se cuelga a nivel del terreno.",
	"well/casing-hanger.why":
		"No se indicó la profundidad del colgador de TR; en tierra queda a pocos pies del nivel del terreno.",
	"well/cement-job.what":
		"Los volúmenes de cemento de la TR {string} llenan el agujero con derrumbe, con el exceso sumado una sola vez.",
	"well/cement-job.cement-volumes-string-fill-gauge":
		"Los volúmenes de cemento de la TR {string} llenan el agujero al diámetro de la barrena, con el exceso sumado una sola vez.",
	"well/cement-job.why": "No se indicó la base de los volúmenes.",
	"well/cement-job.top-cement-behind-string-is":
		"La cima de cemento detrás de la TR {string} se determina por cálculo.",
	"well/cement-job.how-it-will-be-found":
		"No se indicó cómo se determinará; el cálculo es la evidencia más débil.",
	"well/design-basis.what":
		"En presión interna, el respaldo fuera de la tubería es agua dulce ({freshWater}).",
	"well/design-basis.why":
		"No se indicó gradiente; el agua dulce es el fluido más ligero con que se puede contar por fuera, así que es el que menos ayuda.",
	"well/design-basis.pipe-keeps-its-whole-wall": "La tubería conserva toda su pared: sin desgaste.",
	"well/design-basis.no-wear-is-given-drilling":
		"No se indicó desgaste. Perforar a través de una sarta la adelgaza; si eso se espera, debe indicarse.",
	"well/design-basis.steel-loses-yield-strength-at":
		"El acero pierde esfuerzo de cedencia a razón de {derating} por encima de {room}.",
	"well/design-basis.no-rate-is-given-this": "No se indicó la tasa; esta es la usual para acero al carbono.",
	"well/design-basis.pipe-must-stand-pull-above":
		"La tubería debe resistir {overpull} de jalón además de su peso.",
	"well/design-basis.no-overpull-is-given-this": "No se indicó sobretensión; este es el mínimo usual.",
	"well/design-basis.pipe-moves-at-at-most":
		"La tubería se mueve a {runningSpeed} como máximo mientras se mete.",
	"well/design-basis.no-speed-is-given-joint":
		"No se indicó velocidad; un tramo de {value} que baja en unos doce segundos se mueve a {value2} en promedio, y a la mitad más en su punto más rápido.",
	"well/friction.why":
		"No se indicó intervalo; este es el usual. Ajústelo con las cargas al gancho de pozos cercanos.",
	"well/pipe-condition.what": "La tubería es nueva.",
	"well/pipe-condition.why": "No se indicó su condición, y las capacidades valen solo para tubería nueva.",
	"well/tensile-strength.what":
		"La resistencia a la tensión de {grade} no es mayor que su esfuerzo de cedencia.",
	"well/tensile-strength.why":
		"No se indicó. El acero resiste a la ruptura al menos tanto como a la cedencia, así que esto queda del lado seguro.",
	"well/washout.what": "El agujero {each} tiene el diámetro de su barrena.",
	"well/washout.why": "No se indicó derrumbe; los volúmenes de cemento dependen entonces solo del exceso.",
	"well/offset-datum.what":
		"Las profundidades de {open} se cuentan desde la elevación del nivel de referencia de este pozo.",
	"well/offset-datum.why":
		"No se indicó la elevación de su propio nivel de referencia; una diferencia las sube o las baja en la misma medida.",
	"well/uncertainty-growth.what":
		"El radio de incertidumbre de un registro direccional es el del final de su agujero, y crece desde cero en el cabezal en proporción a la profundidad medida.",
	"well/uncertainty-growth.why":
		"Solo se da su valor a la profundidad total. Los errores de dirección se acumulan a lo largo del agujero, así que ahí el radio es mayor.",
	"well/uncertainty-confidence.what":
		"Un radio de incertidumbre sin nivel de confianza contiene al agujero 95 de cada 100 veces.",
	"well/uncertainty-confidence.why":
		"Los informes de registros direccionales casi siempre lo dan así; un radio de menor confianza haría menor el factor de separación.",
	"well/plug-midway.what":
		"Cada tapón se asienta a la mitad entre el clúster más profundo de su etapa y el clúster más alto de la etapa de abajo.",
	"well/plug-midway.why": "No se indicó dónde se asientan los tapones.",
	"well/treating-loss.what": "No se pierde presión entre los disparos y la fractura.",
	"well/treating-loss.why":
		"No se indicó la pérdida cerca del pozo; una pérdida real eleva en la misma medida la presión de tratamiento esperada.",
	"well/treating-loss.fluid-flows-in-pipe-as":
		"El fluido corre por la tubería como lo haría sin reductor de fricción.",
	"well/treating-loss.friction-reduction-is-not-given":
		"No se indicó la reducción de fricción; una reducción real baja la presión de tratamiento esperada.",
	"well/trucks.what": "Toda el agua llega en camión.",
	"well/trucks.why": "No se indicó una parte por ducto; si la hay, las cargas y los viajes son menos.",
	"well/neighbor-ground.what":
		"El terreno en el pozo de agua de cada vecino está a la misma altura que el terreno de este pozo.",
	"well/neighbor-ground.why":
		"Su elevación no se pide; una diferencia mueve el fondo de ese pozo en la misma medida.",
};
