import type { WELL_PIPE as ENGLISH } from "../en/well-pipe.ts";
import type { Translation } from "../entries.ts";

export const WELL_PIPE: Translation<typeof ENGLISH> = {
	"well/unknown-pipe.outside-catalogue":
		"o, para tubería fuera del catálogo, indique tanto `weight` como `wall`",
	"well/unknown-pipe.what": "el catálogo no tiene TR de este diámetro exterior",
	"well/unknown-pipe.expected": "un diámetro del catálogo; los más cercanos son {names}",
	"well/unknown-pipe.mend": "corrija el diámetro, {outside}",
	"well/unknown-pipe.catalogue-has-no-casing-this": "el catálogo no tiene TR de {size} con este peso",
	"well/unknown-pipe.listed-weight-nearest-are": "un peso del catálogo; los más cercanos son {weights}",
	"well/unknown-pipe.correct-weight": "corrija el peso, {outside}",
	"well/unknown-pipe.catalogue-has-no-casing-this-2":
		"el catálogo no tiene TR de {size} con este espesor de pared",
	"well/unknown-pipe.listed-wall-nearest-are": "un espesor del catálogo; los más cercanos son {walls}",
	"well/unknown-pipe.correct-wall": "corrija el espesor, {outside}",
	"well/unknown-grade.what": "el catálogo no conoce la resistencia de este grado",
	"well/unknown-grade.expected": "uno de: {grades}",
	"well/unknown-grade.mend": "corrija el grado, o indique `minimum_yield` si es propio de un fabricante",
	"well/unknown-grade.write-if-that-is-one":
		"escriba {near} si ese es el que quiso decir, o indique `minimum_yield` si es propio de un fabricante",
	"well/pipe-wall.what": "el espesor de {row} es otro en el catálogo",
	"well/pipe-wall.mend": "indique solo el peso o solo el espesor, o corrija el que esté mal",
	"well/grade-not-listed.what": "{row} no aparece en grado {grade}",
	"well/grade-not-listed.mend":
		"confirme la tubería con su certificado de fábrica, o corrija el grado o el peso",
	"well/connection-unrated.what": "no se conoce la resistencia de {connection}",
	"well/connection-unrated.expected":
		"una conexión de la norma (STC, LTC, BTC, extremo liso), o capacidades indicadas",
	"well/connection-unrated.mend": "indique sus capacidades, de la hoja del fabricante, en `ratings`",
	"well/connection-size.what": "no hay {standard} en tubería {row}",
	"well/connection-size.expected": "STC, BTC o extremo liso, o la conexión propia de un fabricante",
	"well/connection-size.mend": "nombre la conexión que tiene la tubería",
	"well/connection-size.there-is-no-special-clearance": "no hay cople de claro especial en tubería {sized}",
	"well/connection-size.btc-or-couplings-own-diameter":
		"BTC, o el diámetro propio del cople en `coupling_od`",
	"well/connection-size.name-connection-that-pipe-has":
		"nombre la conexión que tiene la tubería, o indique el diámetro del cople",
	"well/liner-top.what": "la TR {string} no llega a superficie, y no hay sarta anterior en la que se cuelgue",
	"well/liner-top.expected":
		"`surface` para la sarta más externa; para un liner, una sarta en la que se cuelgue",
	"well/liner-top.mend": "escriba `from: surface`, o liste las sartas de afuera hacia adentro",
	"well/strings-nest.what": "la TR {string} no es más angosta que la TR {string2} anterior",
	"well/strings-nest.string-is-not-deeper-than":
		"la TR {string} no es más profunda que la TR {string2} anterior",
	"well/strings-nest.expected": "menos de {other}",
	"well/strings-nest.deeper-than-shoe-string-at": "más abajo que la zapata de la TR {string}, a {other}",
	"well/strings-nest.mend": "escriba `kind: tieback` si se une a ese liner, o corrija la profundidad",
	"well/strings-nest.list-strings-from-outermost-inward":
		"liste las sartas de afuera hacia adentro, o corrija el valor",
	"well/strings-nest.label": "la TR {string}",
	"well/tieback-join.what": "la TR {string} es un tieback, y la sarta anterior no es un liner",
	"well/tieback-join.tieback-does-not-end-in": "el tieback {string} no termina en la cima del liner {liner}",
	"well/tieback-join.expected": "el liner al que se une, listado antes",
	"well/tieback-join.at-liners-top-or-at": "en la cima del liner, a {top}, o a lo más {longestStem} abajo",
	"well/tieback-join.mend": "lístelo después de su liner, o corrija su tipo",
	"well/tieback-join.correct-depth": "corrija la profundidad",
	"well/tieback-join.label": "cima del liner",
	"well/liner-top.top-liner-is-not-inside": "la cima del liner {string} no está dentro de la TR {string2}",
	"well/liner-top.between-and-shoe-at": "entre {top} y la zapata a {shoe}",
	"well/liner-top.hang-liner-inside-string-before": "cuelgue el liner dentro de la sarta anterior",
	"well/liner-top.label": "zapata de la TR {string}",
	"well/pipe-passage.what":
		"el cople de la TR {string}, de {width}, es más ancho que el drift de la TR {string2}",
	"well/pipe-passage.pipe-string-is-wider-than":
		"el tubo de la TR {string}, de {width}, es más ancho que el drift de la TR {string2}",
	"well/pipe-passage.expected": "a lo más {drift}",
	"well/pipe-passage.mend": "elija tubería menor o de conexión lisa por dentro, o más ligera por fuera",
	"well/pipe-passage.label": "drift de {drift}",
	"well/pipe-passage.alternate-drift":
		"pida el {row} de la TR {id} con drift de {drift}, su drift alterno, e indique `drift: {drift}`",
	"well/pipe-hole.what": "el cople de la TR {string}, de {width}, no cabe en el agujero {hole}",
	"well/pipe-hole.pipe-string-does-not-fit":
		"el tubo de la TR {string}, de {width}, no cabe en el agujero {hole}",
	"well/pipe-hole.expected": "menos de {diameter}",
	"well/pipe-hole.mend": "perfore un agujero más ancho, o meta tubería menor",
	"well/pipe-hole.label": "el agujero {hole}",
	"well/bit-drift.what": "la barrena del agujero {hole} es más ancha que el drift de la TR {string}",
	"well/bit-drift.mend": "elija una barrena menor o tubería más ligera, o planee ampliar el agujero",
	"well/pipe-above-hanger.what": "la TR {string} empieza por encima del colgador",
	"well/pipe-above-hanger.expected": "`surface`, que es el colgador a {casingHanger}",
	"well/pipe-above-hanger.mend": "escriba `from: surface`",
	"well/top-below-bottom.run-string-ends-at-or":
		"la sección {j} de la TR {id} termina en su cima o por encima de ella",
	"well/pipe-meeting.what": "las secciones {j} y {j2} de la TR {id} dejan un hueco de {step}",
	"well/pipe-meeting.runs-and-string-overlap-by":
		"las secciones {j} y {j2} de la TR {id} se traslapan {step}",
	"well/pipe-meeting.expected": "una sección que empiece a {bottom}",
	"well/pipe-meeting.mend": "haga que la sección empiece donde termina la de arriba",
	"well/pipe-meeting.label": "la sección de arriba termina aquí",
	"well/shoe-below-hole.what": "la zapata de la TR {string} está más abajo que el agujero {hole}",
	"well/shoe-below-hole.mend": "asiente la zapata más arriba, o perfore más el agujero",
	"well/shoe-below-hole.label": "fondo del agujero {hole}",
	"well/shoe-above-hole.what": "la TR {string} termina por encima del agujero {hole} que nombra",
	"well/shoe-above-hole.mend": "nombre el agujero en que se mete la sarta, o corrija la profundidad",
	"well/shoe-track.what":
		"el tramo entre cople flotador y zapata de la TR {string} es más largo que la sarta",
	"well/shoe-track.expected": "la distancia del cople flotador a la zapata",
	"well/shoe-track.mend": "corrija la longitud",
	"well/top-below-bottom.stretch-centralizers-on-string-ends":
		"un tramo de centradores de la TR {string} termina en su cima o por encima de ella",
	"well/centralizer-range.what": "un tramo de centradores se sale de la TR {string}",
	"well/centralizer-range.expected": "un tramo entre {top} y {shoe}",
	"well/centralizer-range.mend": "termínelo en la zapata, o corrija la profundidad",
	"well/tally.what": "los tramos de la relación de tubería no están numerados sin huecos ni repeticiones",
	"well/tally.expected": "sigue el tramo {numbers}",
	"well/tally.mend": "agregue el renglón que falta, o quite el que está dos veces",
	"well/tally.tally-string-has-another-number":
		"la relación de tubería de la TR {id} tiene otro número de tramos que los metidos",
	"well/tally.correct-number-or-complete-tally": "corrija el número, o complete la relación",
	"well/tally.joints-tally-are-together-and":
		"los tramos de la relación suman {total}, y la TR {id} mide {due}",
	"well/tally.joints-that-reach-from-top":
		"tramos que lleguen de la cima de la sarta a su zapata, con un tramo de tolerancia",
	"well/tally.correct-shoe-or-lengths-in": "corrija la zapata, o las longitudes de la relación",
	"well/treating-string.what":
		"la sarta de tratamiento, de {passing} en sus coples, es más ancha que el drift de la TR {string}",
	"well/treating-string.mend": "elija tubería menor",
	"well/treating-string.treating-string-ends-below-float":
		"la sarta de tratamiento termina por debajo del cople flotador de la TR {string}",
	"well/treating-string.packer-is-set-above-string": "el empacador se ancla por encima de la TR {string}",
	"well/treating-string.packer-is-set-too-deep": "el empacador se ancla demasiado abajo",
	"well/treating-string.expected": "entre {top} y el extremo de la tubería",
	"well/treating-string.between-and": "entre {top} y {at}",
	"well/treating-string.correct-depth-packer": "corrija la profundidad del empacador",
	"well/shoe-too-shallow.what": "{group} cosas ligadas a esta sarta quedan por debajo de su zapata",
	"well/shoe-too-shallow.expected": "una zapata a la altura de todo lo ligado a la sarta, o más abajo",
	"well/shoe-too-shallow.mend":
		"corrija la profundidad de la zapata; o, si está bien, cada uno de los lugares nombrados",
};
