import type { CSV as ENGLISH } from "../en/csv.ts";
import type { Translation } from "../entries.ts";

export const CSV: Translation<typeof ENGLISH> = {
	"csv/cell.empty": "`{name}` está vacía en este renglón",
	"csv/cell.comma": "`{name}` lleva una coma",
	"csv/cell.negative": "`{name}` es menor que cero, lo que aquí no tiene sentido",
	"csv/cell.more": "`{name}` tiene algo más que un número",
	"csv/cell.wordy": "`{name}` no es un número",
	"csv/cell.expected": "un número en la unidad del encabezado de la columna, sin comas ni palabras",
	"csv/cell.without-comma": "quite las comas",
	"csv/cell.only-number": "escriba `{number}`; la unidad va en el encabezado",
	"csv/cell.mend": "escriba el número, o quite el renglón si no se midió",
	"csv/column-unit.none": "el encabezado de la columna `{name}` no indica su unidad",
	"csv/column-unit.wrong": "la unidad en el encabezado de la columna `{name}` no sirve para medirla",
	"csv/column-unit.mend": "escriba `{head}`, o la unidad en que está",
	"csv/column-unit.stated-wrong": "la unidad indicada para la columna `{name}` no sirve para medirla",
	"csv/column-unit.correct": "corrija la unidad",
	"csv/column-unit.stated-none": "el encabezado indicado para `{name}` no dice su unidad",
	"csv/column-unit.state":
		"indíquela en la definición, como en `{name}: '{' head: \"{head}\", unit: {unit} '}'`",
	"csv/empty.what": "la tabla no tiene renglones debajo de sus encabezados",
	"csv/empty.expected": "un renglón de encabezados, y luego un renglón por cada registro",
	"csv/empty.mend": "revise que se nombró el archivo correcto y que se exportó completo",
	"csv/header.numbers": "el primer renglón de la tabla son números, donde deben ir los encabezados",
	"csv/header.numbers-expected": "un renglón de encabezados arriba, cada uno con su unidad, como `md_ft`",
	"csv/header.numbers-mend": "agregue arriba un renglón que nombre cada columna y su unidad",
	"csv/header.none": "una columna no tiene encabezado",
	"csv/header.twice": "dos columnas tienen el encabezado `{head}`",
	"csv/header.expected": "un encabezado propio en cada columna",
	"csv/header.mend": "nombre cada columna una sola vez",
	"csv/missing-column.stated":
		"la tabla no tiene ninguna columna con el encabezado `{head}`, que se indica para `{name}`",
	"csv/missing-column.stated-expected": "uno de sus encabezados: {heads}",
	"csv/missing-column.stated-mend": "corrija el encabezado donde se indica",
	"csv/missing-column.stated-here": "se indica aquí",
	"csv/missing-column.several": "a la tabla le faltan las columnas {columns}",
	"csv/missing-column.what": "la tabla no tiene la columna `{name}`",
	"csv/missing-column.several-mend":
		"vea si es el archivo correcto; si lo es, indique cómo se llaman sus encabezados: `columns: '{' {name}: … '}'`",
	"csv/missing-column.mend":
		"corrija su encabezado, agregue la columna o indique cómo se llama: `columns: '{' {name}: … '}'`",
	"csv/missing-column.expected":
		"{count, plural, one {una columna con el encabezado {columns}} other {columnas con los encabezados {columns}}}",
	"csv/quote.what": "una celda entre comillas no está cerrada, o hay texto después de las comillas de cierre",
	"csv/quote.expected": "comillas en ambos extremos de la celda, y dobles las que van dentro",
	"csv/quote.mend": "quite las comillas; para pulgadas escriba `in`",
	"csv/row-length.what": "el renglón tiene {cells} celdas y la tabla {columns} columnas",
	"csv/row-length.expected": "{columns} celdas, sin comas dentro de los números",
	"csv/row-length.too-many":
		"quite las comas de los números, o ponga entre comillas dobles el texto que lleve comas",
	"csv/row-length.too-few": "escriba las celdas que faltan; una celda vacía también lleva su coma",
	"csv/separator.what": "los encabezados de las columnas no están separados por comas",
	"csv/separator.expected": "celdas separadas por comas, y punto decimal",
	"csv/separator.mend": "exporte otra vez la tabla como valores separados por comas",
	"csv/unknown-column.mend": "déjelas, o corrija el encabezado si se trataba de una de esas",
	"csv/unknown-column.what":
		"{count, plural, one {nada lee esta columna} other {nada lee # de las columnas}}",
};
