import type { DrawingWords } from "../words.ts";

/** Spanish: the pictures of the sequence and of the slides. */
export const PICTURES = {
	frameProtected: "agua protegida hasta",
	frameInset: "Acercamiento, sin escala",
	frameScale:
		"La profundidad está a escala, la misma en todas las imágenes. Los anchos, las distancias laterales y los acercamientos no lo están.",
	frameScaleShort: "La profundidad está a escala. Los anchos y los acercamientos no.",
	talkMap: "El pozo y los lugares más cercanos, desde arriba",
	talkMapShows:
		"El norte está arriba. Las distancias son desde la trayectoria del pozo; a otro pozo, de agujero a agujero.",
	talkMapScale:
		"A escala. Distancias desde la trayectoria del pozo, vista desde arriba; a otro pozo, de agujero a agujero.",
	talkHoleToHole: "{distance}, de agujero a agujero",
	talkSection: "El pozo visto de lado",
	talkSectionScale: "A escala, la misma hacia abajo y hacia los lados.",
	talkSectionModels:
		"A escala en ambos sentidos. Las grietas son de modelos simples: un rango, no una promesa.",
	talkWater: "Agua protegida, hasta {depth} de profundidad",
	talkThisWell: "Este pozo, hasta {depth} de profundidad",
	talkCracks: "Grietas, según modelos: de {least} a {most} de alto",
	talkDeep: "{depth} de profundidad",
	talkBars: "Las barras están a escala.",
	talkLayers: "Del interior del pozo a la roca, donde termina el agua protegida",
	talkLayersScale: "Los espesores no están a escala. Izquierda: dentro del pozo. Derecha: roca y agua.",
	talkSteel: "Acero: {string}",
	talkCement: "Cemento alrededor",
	talkFluid: "Espacio con fluido",
	talkRun: "en su lugar",
} as const satisfies Partial<DrawingWords>;
