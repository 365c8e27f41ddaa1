import type { EXPECTED as ENGLISH } from "../en/expected.ts";
import type { Translation } from "../entries.ts";

export const EXPECTED: Translation<typeof ENGLISH> = {
	"definition/expected.block": "un bloque de entradas con nombre",
	"definition/expected.flag": "true o false",
	"definition/expected.date": "una fecha escrita año-mes-día, como `2026-05-04`",
	"definition/expected.identifier":
		"un nombre corto de minúsculas, dígitos y guiones, como `surface` o `ww-1`",
	"definition/expected.file": "el nombre de un archivo junto a este, como `{example}`",
	"definition/expected.ratio": "un número, sin unidad",
	"definition/expected.fraction": "un número mayor que 0 y no mayor que 1",
	"definition/expected.count": "un número entero, 1 o más",
	"definition/expected.tally": "un número mayor que 0, sin unidad",
	"definition/expected.grid":
		"el código EPSG de una zona UTM o de plano estatal en NAD83 donde está el lugar, como `EPSG:2277`",
	"definition/expected.coordinate": "grados decimales entre -{limit} y {limit}, sin unidad",
	"definition/expected.east-west": "un ángulo al este o al oeste, como `3.9 deg east`",
	"definition/expected.part-span": "una fracción baja y una alta, como `[10 %, 30 %]`",
	"definition/expected.cement-log": "`none`, o el registro, su fecha y lo que mostró",
	"definition/expected.column": "el encabezado como está en el archivo, o `'{' head: DEPT, unit: ft '}'`",
	"definition/expected.own-limit":
		"un límite en la forma de la propia regla, como `'{' measure: liner lap, at_least: 200 ft '}'`",
	"definition/expected.friction": "un coeficiente mínimo y uno máximo, como `[0.20, 0.30]`",
	"definition/expected.centralizers": "un número de tramos, como `1 joint` o `4 joints`",
	"definition/expected.evacuation": "`full`, o `'{' fluid_level: 600 ft TVD, fluid: 8.8 ppg '}'`",
	"definition/expected.api-number": "un número API de pozo de 10, 12 o 14 dígitos, como `42-000-00000-00-00`",
	"definition/expected.days": "un número de días, o el bajo, el base y el alto, como `[12, 16, 22]`",
	"definition/expected.whole": "un número entero, 0 o más",
	"definition/expected.gas-alarm":
		"una alarma: `'{' gas: hydrogen sulfide, low: 10 ppm, high: 15 ppm, source: … '}'`",
	"definition/expected.north": "uno de: grid, true, magnetic",
	"definition/expected.plan":
		"uno de los cuatro planes: `vertical` con `to`; `kickoff` hasta `lateral`; `kickoff` con un `target`; o `segments`",
	"definition/expected.two-dates": "dos fechas, como `[2026-07-02, 2026-07-19]`",
	"definition/expected.limit":
		"un límite en la forma del renglón de una jurisdicción, como `'{' at: surface '}'`",
	"definition/expected.cas-number": "un número CAS cuyo dígito verificador cierre, como `7732-18-5`",
	"definition/expected.flush": "un volumen con su unidad, como `700 bbl`, o `to top cluster`",
	"definition/expected.discharge": "un coeficiente de orificio nuevo y uno desgastado, como `[0.65, 0.85]`",
	"definition/expected.annulus": "dos nombres cortos, como `[production, intermediate]`",
	"definition/expected.list": "una lista",
	"definition/expected.text": "texto, o '{ en: …, es: … }'",
	"definition/expected.value": "un valor",
	"definition/expected.quantity": "{quantity, select, other {un valor con su unidad}}, como `{example}`",
	"definition/expected.vowel": "{quantity, select, other {un valor con su unidad}}, como `{example}`",
	"definition/expected.depth": "una profundidad, como {forms}",
};
