import type { WELL_WRITING as ENGLISH } from "../en/well-writing.ts";
import type { Translation } from "../entries.ts";

export const WELL_WRITING: Translation<typeof ENGLISH> = {
	"well/unknown-reference.what": 'no existe {thing} con el nombre "{written}"',
	"well/unknown-reference.expected": "un nombre ya definido ({thing})",
	"well/unknown-reference.one": "uno de: {names}",
	"well/unknown-reference.mend": "defina lo que falta ({thing}), o use un nombre ya definido",
	"well/unknown-reference.write-if-that-is-one": 'escriba "{near}" si ese es el que quiso decir',
	"well/api-state.what": "el número API empieza con {written}, que no es de ningún estado conocido aquí",
	"well/api-state.api-number-begins-with-code": "el número API empieza con {written}, el código de {other}",
	"well/api-state.mend": "corrija el número, o las jurisdicciones",
	"well/api-state.label": "las jurisdicciones nombradas",
	"well/coordinates-astray.sign": "escriba `{lon}`: las longitudes al oeste de Greenwich son negativas",
	"well/coordinates-astray.exchanged": "intercambie latitud y longitud",
	"well/coordinates-astray.correct":
		"corrija las coordenadas, o las jurisdicciones; deje ambas si el lugar de veras está ahí",
	"well/coordinates-astray.what": "{called} queda fuera de {states}",
	"well/coordinates-astray.lies-from-wellhead-too-far":
		"{called} queda a {abs} del cabezal, demasiado lejos para tener que ver con el pozo",
	"well/coordinates-astray.expected": "a menos de {near} de {own}",
	"well/coordinates-astray.mend": "corrija el dato, o quite el lugar",
	"well/coordinates-astray.label": "el cabezal del pozo",
	"well/improbable-value.what": "el valor está por debajo del intervalo usual",
	"well/improbable-value.value-is-above-usual-range": "el valor está por encima del intervalo usual",
	"well/improbable-value.mend": "revise el dato y su unidad; déjelo si es correcto",
	"well/record-after-issue.what": "el registro tiene fecha posterior al día en que se emite este documento",
	"well/record-after-issue.this-is-said-to-be":
		"esto se da por hecho, con fecha posterior al día en que se emite este documento",
	"well/record-after-issue.expected": "una fecha no posterior a {issued}",
	"well/record-after-issue.mend":
		"mueva la fecha de emisión, o saque el bloque de `actual` si el trabajo apenas está planeado",
	"well/record-after-issue.move-date-issue-or-take":
		"mueva la fecha de emisión, o quite la fecha hasta que esté hecho",
	"well/record-after-issue.label": "día de emisión",
	"well/record-before-spud.what": "el registro tiene fecha anterior al inicio del pozo",
	"well/record-before-spud.expected": "una fecha no anterior a {spud}",
	"well/record-before-spud.mend": "corrija la fecha que esté mal de las dos",
	"well/record-before-spud.label": "el pozo se inició",
	"well/record-before-spud.there-is-record-work-done":
		"hay un registro de trabajo hecho, y el pozo apenas se va a iniciar",
	"well/record-before-spud.no-record-in-hole-before": "ningún registro en el agujero antes de {spud}",
	"well/record-before-spud.take-block-out-actual-if":
		"saque el bloque de `actual` si es el plan, o corrija la fecha de `spud`",
	"well/record-before-spud.well-is-begun": "el pozo se inicia",
	"well/collars-too-wide.what": "los lastrabarrenas no caben en el agujero {last}",
	"well/collars-too-wide.mend": "corrija el diámetro de los lastrabarrenas o el del agujero",
	"well/collars-too-wide.label": "el agujero",
	"well/section-direction.what": "el pozo va hacia atrás a lo largo de su propia sección vertical",
	"well/section-direction.expected": "a menos de 90 grados de {along}",
	"well/section-direction.mend": "una de las dos está invertida, muchas veces 180 grados; corríjala",
	"well/section-direction.label": "el azimut de la sección vertical",
	"well/declination-of-place.what": "la brújula apunta al este del norte verdadero en esta longitud",
	"well/declination-of-place.compass-points-west-true-north":
		"la brújula apunta al oeste del norte verdadero en esta longitud",
	"well/declination-of-place.expected": "una declinación al este",
	"well/declination-of-place.declination-to-west": "una declinación al oeste",
	"well/declination-of-place.mend":
		"corrija el signo, o las coordenadas; la línea sin declinación pasa cerca de los 90 grados oeste",
	"well/declination-of-place.label": "la longitud",
	"well/unit-of-elevation.what":
		"la elevación está escrita en otra unidad que la altura del nivel de referencia sobre ella",
	"well/unit-of-elevation.expected": "{other}, como está escrita la altura del nivel de referencia",
	"well/unit-of-elevation.mend": "corrija la unidad, o convierta el dato; déjelo si ambos son correctos",
	"well/unit-of-elevation.label": "el nivel de referencia sobre el terreno",
	"well/strength-of-slurries.what":
		"una lechada de {density} no tiene tanta resistencia {after} después de colocada",
	"well/strength-of-slurries.expected": "a lo más cerca de {most}",
	"well/strength-of-slurries.mend":
		"revise el dato; un dígito de más hace que la cuadrilla perfore cemento blando",
	"well/strength-of-slurries.label": "su densidad",
	"well/rate-per-perforation.what": "el gasto por un disparo resulta de {each}",
	"well/rate-per-perforation.mend":
		"revise el gasto, los clústeres y los disparos; a menudo se pierde un dígito",
	"well/rate-per-perforation.label": "los disparos",
	"well/table-file.expected": "el nombre de un archivo junto a la definición o debajo de ella",
	"well/table-file.mend": "ponga ahí el archivo, o corrija su nombre",
	"well/improbable-value.band": "de {low} a {high}: {why}",
	"well/distance-astray.what":
		"la distancia de {name} desde {from} y sus coordenadas, a {far} de la boca del pozo, no pueden ser ciertas las dos",
	"well/distance-astray.expected": "entre {least} y {most}",
	"well/distance-astray.mend": "corrija la distancia, o las coordenadas del lugar",
	"well/distance-astray.label": "sus coordenadas",
};
