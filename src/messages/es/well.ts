import type { WELL as ENGLISH } from "../en/well.ts";
import type { Translation } from "../entries.ts";

export const WELL: Translation<typeof ENGLISH> = {
	"well/value": "{value}",
	"well/true-vertical-depth": "{depth} TVD",
	"well/from-to": "de {from} a {to}",
	"well/any-of": "{choices}",
	"well/thing.string": "sarta de TR",
	"well/thing.hole": "agujero",
	"well/thing.proppant": "apuntalante",
	"well/thing.additive": "aditivo",
	"well/figure.density": "densidad",
	"well/figure.yield": "rendimiento",
	"well/figure.water": "agua de mezcla",
	"well/the-wellhead": "el cabezal del pozo",
	"well/the-landing-site": "el sitio de aterrizaje",
	"well/api-state.for": "{number} de {state}",
	"well/coordinates-astray.box":
		"{name} queda entre {south} y {north} de latitud norte, y entre {west} y {east} de longitud este",
	"well/tally.as-many": "{count, plural, one {# tramo} other {# tramos}}, como tiene la relación de tubería",
	"well/stage-row.date":
		"{count, plural, one {la fecha de un registro no está escrita} other {las fechas de # registros no están escritas}} como año-mes-día",
	"well/coupling-near.what":
		"{what} cae en un cople{others, plural, =0 {} one {, y # tapón o clúster más} other {, y # tapones o clústeres más}}",
	"well/rate-per-perforation.expected":
		"de {least} a {greatest} por {count, plural, one {el único disparo} other {cada uno de los # disparos}}",
	"well/design-factor.burst": "El factor de diseño a presión interna es {factor}.",
	"well/design-factor.collapse": "El factor de diseño al colapso es {factor}.",
	"well/design-factor.tension": "El factor de diseño a la tensión es {factor}.",
	"well/design-factor.bending": "El factor de diseño a la tensión, con la flexión incluida, es {factor}.",
	"well/design-factor.overpull": "El factor de diseño de una sarta atrapada que se jala es {factor}.",
	"well/design-factor.triaxial": "El factor de diseño triaxial es {factor}.",
	"well/design-factor.usual":
		"No se indicó ninguno; este es el valor usual; reguladores y operadores fijan el suyo.",
	"well/design-factor.upper-collapse":
		"No se indicó ninguno; este es el extremo superior del intervalo usual, de 1.0 a 1.125.",
	"well/design-factor.usual-deviated":
		"No se indicó ninguno; este es el valor usual para un pozo desviado, sin flexión.",
	"well/design-factor.usual-bending":
		"No se indicó ninguno; este es el valor usual cuando se incluye la flexión.",
	"well/design-factor.usual-overpull":
		"No se indicó ninguno; este es el valor usual para una sarta que se jala una sola vez.",
	"well/design-factor.upper-triaxial":
		"No se indicó ninguno; este es el extremo superior del intervalo usual, de 1.2 a 1.25.",
	"well/friction.inside-casing":
		"El coeficiente de fricción de la tubería dentro de la TR va de {least} a {greatest}.",
	"well/friction.in-open-hole":
		"El coeficiente de fricción de la tubería en agujero abierto va de {least} a {greatest}.",
	"calc/outside-target.expected": "{beds}",
	"calc/outside-target.below": "dentro de {name}: de {top} hacia abajo",
	"calc/outside-target.between": "dentro de {name}: de {top} a {base}",
	"well/its-shoe-track": "su tramo entre cople flotador y zapata",
	"well/packer-below-end": "el empacador queda por debajo del extremo de la sarta de tratamiento",
	"well/packer-below-opening": "el empacador queda a la altura de la apertura más alta o por debajo",
	"calc/outside-target.what": "la etapa {number} se abre {by} fuera del objetivo",
	"calc/outside-target.in-bed": "la etapa {number} se abre {by} fuera del objetivo, en {bed}",
	"calc/outside-target.mend": "corrija las profundidades de las etapas, la trayectoria o las formaciones",
	"calc/outside-target.formations": "las formaciones",
};
