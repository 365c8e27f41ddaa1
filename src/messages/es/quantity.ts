import type { QUANTITY as ENGLISH } from "../en/quantity.ts";
import type { Translation } from "../entries.ts";

export const QUANTITY: Translation<typeof ENGLISH> = {
	"quantity/comma.what": "una coma en un número",
	"quantity/comma.or-thousands": "escriba `{alternative}`, o `{cure}` si la coma separa los miles",
	"quantity/comma.or-decimals": "escriba `{cure}`, o `{alternative}` si la coma separa los decimales",
	"quantity/depth-reference.what": "una profundidad contada desde un punto que aquí no corresponde",
	"quantity/depth-reference.why":
		"las profundidades a lo largo del pozo, las verticales desde la referencia y las contadas bajo el terreno son profundidades distintas",
	"quantity/depth-reference.found": "{depth} (una profundidad medida)",
	"quantity/depth-reference.work-out":
		"calcule la profundidad como se cuenta aquí, y escríbala como en {forms}",
	"quantity/depth-reference.mend": "indique desde dónde se cuenta la profundidad: {forms}",
	"quantity/digit-space.what": "un espacio o una marca entre los dígitos de un número",
	"quantity/improper-fraction.what":
		"una fracción de uno o más, que casi siempre es un diámetro al que le falta el espacio",
	"quantity/letter-case.what":
		"una unidad cuyas letras, así en mayúsculas o minúsculas, significan otra cosa",
	"quantity/negative.what": "un valor menor que cero, que aquí no tiene sentido",
	"quantity/no-unit.what": "un número sin su unidad",
	"quantity/no-unit.expected": "una de estas unidades después del número: {units}",
	"quantity/no-unit.mend": "escriba `{first}`, o `{second}`",
	"quantity/no-unit.second": "escriba la unidad después del número, como en `{example}`, o `{second}`",
	"quantity/no-unit.example": "escriba la unidad después del número, como en `{example}`",
	"quantity/not-a-number.what": "esto no se puede leer como un número y una unidad",
	"quantity/not-a-number.or-leave-out":
		"escríbalo como en `{example}`, o déjelo fuera mientras no se conozca",
	"quantity/not-finite.what": "no es un número finito",
	"quantity/several-numbers.what": "más de un número donde debe ir uno",
	"quantity/several-numbers.mend": "escriba un solo valor, como en `{example}`",
	"quantity/several-numbers.in-list": "escriba un solo valor, como en `{example}`, o una coma entre dos",
	"quantity/unknown-unit.what": "una unidad que no sirve para medir esto",
	"quantity/unknown-unit.mend": "use una de estas unidades, como en `{example}`",
	"quantity/unknown-unit.alphabet": "la letra `{letter}` es de otro alfabeto ({number}), aunque se vea igual",
	"quantity/words-after-unit.what": "hay algo más que un número y su unidad",
	"quantity/words-after-unit.gauge": "escriba la presión manométrica, como en `{example}`",
	"quantity/words-after-unit.mend":
		"escriba `{written}`, y lo demás en un comentario: un espacio y `# ` al final de la línea",
	"quantity/write.mend": "escriba `{written}`",
};
