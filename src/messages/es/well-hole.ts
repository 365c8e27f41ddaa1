import type { WELL_HOLE as ENGLISH } from "../en/well-hole.ts";
import type { Translation } from "../entries.ts";

export const WELL_HOLE: Translation<typeof ENGLISH> = {
	"well/beyond-total-depth.what": "una profundidad vertical mayor que lo largo del pozo",
	"well/beyond-total-depth.depth-below-bottom-deepest-hole":
		"una profundidad por debajo del fondo del agujero más profundo",
	"well/beyond-total-depth.expected": "a lo más {bottom}",
	"well/beyond-total-depth.mend":
		"corrija la profundidad o su unidad, o la profundidad a la que se perfora el agujero",
	"well/beyond-total-depth.label": "fondo del agujero más profundo",
	"well/stage-above-landing.what":
		"la etapa {number} se abre por encima del aterrizaje de la trayectoria planeada",
	"well/stage-above-landing.stages-to-are-opened-above":
		"las etapas {number} a {number2} se abren por encima del aterrizaje de la trayectoria planeada",
	"well/stage-above-landing.expected": "aperturas por debajo de {landing}, donde aterriza la trayectoria",
	"well/stage-above-landing.mend":
		"menos etapas o más cortas, o corrija el fondo de la primera; déjelo si es a propósito",
	"well/stage-above-landing.label": "la trayectoria planeada",
	"well/formation-order.what":
		"la cima de {each} queda por encima de la cima de {written}, que está listada antes",
	"well/formation-order.top-lies-below-top-which":
		"la cima de {each} queda por debajo de la cima de {written}, que está listada después",
	"well/formation-order.expected": "formaciones de la superficie hacia abajo",
	"well/formation-order.mend": "ponga las formaciones en orden de profundidad, o corrija la cima",
	"well/formation-order.label": "listada antes",
	"well/formation-order.listed-after-it": "listada después",
	"well/top-below-bottom.base-is-not-below-its": "la base de {each} no está por debajo de su cima",
	"well/top-below-bottom.base-deeper-than-top": "una base más profunda que la cima",
	"well/formation-base.what": "la base de {each} queda por debajo de la cima de la siguiente formación",
	"well/formation-base.expected": "una base a la altura de la cima de la siguiente formación, o más arriba",
	"well/formation-base.mend": "omita la base si es la cima de la siguiente, o corríjala",
	"well/formation-base.label": "cima de la siguiente formación",
	"well/caliper.what": "el calibrador del agujero {id} tiene menos de dos renglones",
	"well/caliper.caliper-hole-goes-back-up":
		"el calibrador del agujero {id} vuelve a subir en el renglón {back}",
	"well/caliper.caliper-hole-has-diameter-nothing":
		"el calibrador del agujero {id} tiene un diámetro de cero",
	"well/caliper.expected":
		"renglones de arriba hacia abajo, cada uno más profundo que el anterior, cada uno con un diámetro",
	"well/caliper.mend": "ordene los renglones, y omita aquellos con la herramienta cerrada",
	"well/hole-order.what": "el agujero {each} no baja más que el agujero {above} que está arriba",
	"well/hole-order.expected": "más de {bottomAbove}",
	"well/hole-order.mend": "liste los agujeros de la superficie hacia abajo, o corrija la profundidad",
	"well/hole-order.label": "fondo del agujero {above}",
	"well/hole-diameter.what": "el agujero {each} es más ancho que el agujero {above} que está arriba",
	"well/hole-diameter.expected": "a lo más {diameter}",
	"well/hole-diameter.mend": "liste los agujeros de la superficie hacia abajo, o corrija el diámetro",
	"well/hole-diameter.label": "el agujero {above}",
	"well/no-path.what": "no se indicó la trayectoria del agujero",
	"well/no-path.expected": "un `plan`, o un registro direccional `actual`",
	"well/no-path.mend": "agregue un plan; para un agujero recto, `plan: '{' vertical: true, to: … '}'`",
	"well/path-short.what":
		"la trayectoria planeada termina a {end}, por encima del fondo del agujero más profundo",
	"well/path-short.expected": "una trayectoria hasta {totalDepth} o más allá",
	"well/path-short.mend": "alargue la trayectoria, o corrija la profundidad a la que se perfora el agujero",
	"well/beyond-total-depth.survey-goes-below-bottom-deepest":
		"el registro direccional pasa por debajo del fondo del agujero más profundo",
	"well/beyond-total-depth.at-most": "a lo más {totalDepth}",
	"well/beyond-total-depth.correct-depth-station-or-depth":
		"corrija la profundidad de la estación, o la profundidad a la que se perfora el agujero",
	"well/survey-angle.what": "la inclinación no está entre 0 y 180 grados",
	"well/survey-angle.expected": "0 es vertical hacia abajo, 90 es horizontal",
	"well/survey-angle.mend": "corrija la inclinación, o intercambie las columnas si están cruzadas",
	"well/survey-angle.azimuth-is-not-between-0": "el azimut no está entre 0 y 360 grados",
	"well/survey-angle.degrees-clockwise-from-north": "grados desde el norte en el sentido del reloj",
	"well/survey-angle.correct-azimuth": "corrija el azimut",
	"well/survey-order.what": "la estación no es más profunda que la anterior",
	"well/survey-order.expected": "más de {md}",
	"well/survey-order.mend": "ponga las estaciones en orden de profundidad, o corrija la profundidad",
	"well/target-above-water.what":
		"la base del agua protegida está por debajo de la cima de {target}, que se va a tratar",
	"well/target-above-water.expected": "una profundidad por encima de {top} TVD",
	"well/target-above-water.mend":
		"corrija la profundidad y su unidad, o la cima del objetivo; déjelo si se trata roca por encima de ella",
	"well/target-above-water.label": "cima de {target}",
	"well/water-below-well.what": "la base del agua protegida está por debajo del fondo del pozo",
	"well/water-below-well.expected": "una profundidad por encima de {bottom}",
	"well/water-below-well.mend": "corrija la profundidad y su unidad",
};
