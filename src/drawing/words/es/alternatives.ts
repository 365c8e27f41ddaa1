import type { DrawingWords } from "../words.ts";

/** Spanish: the sentences that stand in for a drawing. */
export const ALTERNATIVES = {
	altWell: "{well}, dibujado desde la superficie, arriba, hasta la profundidad total de {depth}.",
	altString: "{string}, {size}, zapata a {depth}; {cement}.",
	altCementSurface: "cemento hasta la superficie, {basis}",
	altCementTop: "cima del cemento a {depth}, {basis}",
	altCementBetween: "cemento de {top} a {bottom}, {basis}",
	altNoCement: "sin dato de cemento",
	altWaterBase: "La base del agua protegida está a {depth}.",
	altShoeBelow: "La zapata ({string}) está {distance} por debajo de ella.",
	altShoeAbove: "La zapata ({string}) está {distance} por encima de ella.",
	altFormations: "Formaciones desde arriba: {list}.",
	altTurn:
		"El pozo deja la vertical a {kickoff} y sigue {lateral} desde la entrada al tramo horizontal a {landing}.",
	altPerforations: "{count} etapas se disparan entre {top} y {bottom}.",
	altPerforationsAt: "{count} etapas se disparan a {top}.",
	altPerforationsOne: "Una etapa se dispara entre {top} y {bottom}.",
	altPerforationsOneAt: "Una etapa se dispara a {top}.",
	altGap: "Hay {distance} de roca entre la base del agua protegida y el disparo más somero.",
	altLayers: "En la base del agua protegida, de la roca hacia adentro: {list}.",
	altFractures: "Según modelos simples, solo como ilustración, una fractura sube cuando mucho hasta {depth}.",
	altTable: "Las tablas dan todas las profundidades.",
	altPath: "El pozo termina a {departure} del cabezal hacia el azimut {azimuth}, a {tvd} TVD.",
	altPathDown: "El pozo baja derecho hasta {tvd} TVD.",
	altNear: "Otros pozos cercanos: {list}.",
	altPlan: "El pozo termina a {distance} del cabezal hacia el azimut {azimuth}. Cerca se muestran: {list}.",
	altPlanNone: "El pozo termina a {distance} del cabezal hacia el azimut {azimuth}.",
	altPlanDown: "El pozo termina justo debajo del cabezal. Se muestran cerca: {list}.",
	altPlanDownNone: "El pozo termina justo debajo del cabezal.",
} as const satisfies Partial<DrawingWords>;
