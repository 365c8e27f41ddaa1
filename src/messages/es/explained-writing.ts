import type { Explained } from "./explained.ts";

/** Codes of faults in the writing of a definition, a table or a rules file. */
export const CODES_OF_WRITING: Readonly<Record<string, Explained>> = {
	"syntax/alias": [
		"No se puede seguir una entrada repetida",
		"YAML permite que `*nombre` repita una entrada marcada antes con `&nombre`. Aquí no hay tal marca, o " +
			"la entrada se repetiría a sí misma, o las repeticiones pasan de lo que tendría una definición real. " +
			"Escriba los valores donde corresponden.",
	],
	"syntax/comma-in-number": [
		"Una coma parte un número en dos",
		"Dentro de `{ }` y `[ ]` YAML termina un valor en cada coma; así `{ to: 3,250 ft }` dice `to: 3` y " +
			"una entrada llamada `250 ft`. Una zapata a 3 ft en vez de 3250 ft es un error que nadie ve impreso. " +
			"Los números se escriben sin comas en todas partes: `3250 ft`. Los documentos imprimen la coma por " +
			"sí solos.",
	],
	"syntax/comma-in-text": [
		"Una coma parte un texto en dos",
		"Dentro de `{ }` y `[ ]` YAML termina un valor en cada coma, así que solo se leería la parte " +
			"anterior. Ponga todo el texto entre comillas dobles, o pase la entrada a una línea propia fuera de " +
			"los corchetes.",
	],
	"syntax/directive": [
		"El archivo dice cómo quiere que se lea",
		"Una línea como `%YAML 1.1` al inicio cambia el sentido de palabras sencillas: `yes` se volvería " +
			"verdadero, `12:30` un número. Una definición se lee siempre igual, como YAML 1.2. Quite la línea.",
	],
	"syntax/duplicate-key": [
		"Una entrada se da dos veces",
		"El mismo nombre está dos veces en un bloque, y no se sabe qué valor vale; muchos lectores tomarían " +
			"el último en silencio. Pasa al copiar una línea para probar otro peso u otra profundidad. Deje la " +
			"correcta.",
	],
	"syntax/empty": [
		"El archivo está vacío",
		"En el archivo solo hay comentarios o líneas en blanco. Si debía tener trabajo, vea si se guardó con " +
			"otro nombre. `casebound new` escribe un archivo inicial para empezar.",
	],
	"syntax/hash-in-value": [
		"Un signo # corta un valor",
		"Un `#` tras un espacio empieza un comentario; así de `8.8 #/gal` solo queda 8.8, y `Pad #3` se " +
			"vuelve `Pad`. Use `lb/gal` y `lb/ft`, o ponga el valor entre comillas dobles. Un comentario de " +
			"verdad lleva un espacio después de su `#`.",
	],
	"syntax/hidden-character": [
		"Un carácter que no se ve",
		"Las marcas que invierten la lectura, los caracteres de control y los finales de línea raros no se " +
			"ven en un editor, y hacen que una línea se lea distinta de lo que dice. Nada en una definición los " +
			"necesita; llegan con texto copiado. Borre el carácter, o teclee la línea de nuevo.",
	],
	"syntax/invisible-character": [
		"Se dejó fuera un carácter que no ocupa lugar",
		"Guiones opcionales, espacios y uniones de ancho cero quedan de procesadores de texto y páginas web. " +
			"Partirían palabras en búsquedas y nombres de archivo, así que se dejan fuera de todo documento. " +
			"Bórrelos también en la definición.",
	],
	"syntax/key": [
		"Una entrada no tiene un nombre que sirva",
		"Antes de cada dos puntos va una palabra sencilla que nombra la entrada. Aquí falta, o es una lista " +
			"o un bloque. Escriba el nombre, o ponga el valor entre comillas si los dos puntos son parte de un " +
			"texto.",
	],
	"syntax/merge-key": [
		"Se copian entradas con <<",
		"La clave `<<` toma entradas de otra parte del archivo. Entonces rige un valor donde nadie puede " +
			"leerlo, y los documentos no podrían decir de qué línea vino. No es parte de YAML 1.2. Escriba las " +
			"entradas completas.",
	],
	"syntax/nesting": [
		"Hay corchetes o bloques demasiado metidos unos en otros",
		"Una definición necesita unos diez niveles. Muchos más significan que se abrieron corchetes y no se " +
			"cerraron, o que esto no es una definición. Cuente los corchetes cerca del lugar señalado.",
	],
	"syntax/no-such-letter": [
		"Una letra que los documentos no pueden mostrar",
		"Documentos y dibujos usan un solo tipo de letra, con los alfabetos latino, griego y cirílico y los " +
			"signos del oficio. Una letra de otra escritura, o un pictograma, dejaría un hueco o un cuadro en el " +
			"papel. Escriba la palabra en uno de esos alfabetos.",
	],
	"syntax/no-value": [
		"Un nombre está solo dentro de { }",
		"Dentro de `{ }` cada parte entre comas es `nombre: valor`. A esta le faltan los dos puntos, o el " +
			"espacio después de ellos (`to:3250 ft`). Escriba dos puntos y espacio, o el valor que falta.",
	],
	"syntax/not-text": [
		"El archivo no es texto sencillo",
		"Tiene caracteres de control, o no está en UTF-8: un archivo de hoja de cálculo o de procesador de " +
			"texto, texto guardado en UTF-16, o una copia dañada. Guárdelo como texto sencillo en UTF-8.",
	],
	"syntax/reserved-key": [
		"Un nombre está reservado",
		"`__proto__`, `constructor` y `prototype` significan algo en el lenguaje en que está escrito el " +
			"programa y nunca se toman como nombres. Ninguna entrada de una definición se llama así; elija otro " +
			"nombre.",
	],
	"syntax/several-documents": [
		"El archivo tiene más de un documento",
		"Una línea `---` termina un documento YAML y empieza el siguiente. Un archivo tiene un pozo, para " +
			"que cada documento pueda nombrar el archivo de que vino. Ponga los otros en archivos propios.",
	],
	"syntax/tab": [
		"Una línea lleva sangría con tabulador",
		"YAML muestra con espacios qué va con qué y no cuenta tabuladores; con uno quedaría abierto de qué " +
			"TR es una línea. Cambie los tabuladores por espacios; la mayoría de los editores lo hacen al " +
			"teclear.",
	],
	"syntax/tag": [
		"Un valor lleva una etiqueta",
		"Una palabra con signo de exclamación antes de un valor (`!!str`, `!ref`) le dice a un lector de " +
			"YAML que lo convierta en otra cosa. Una definición tiene solo valores sencillos. Quite la etiqueta, " +
			"o ponga el valor entre comillas si la marca es parte de él.",
	],
	"syntax/too-large": [
		"El archivo es demasiado grande",
		"Una definición tiene unas decenas de kilobytes y puede tener medio megabyte; un registro " +
			"direccional denso tiene menos de un megabyte y puede tener cinco. Un archivo mayor es casi siempre " +
			"un registro de pozo o el archivo equivocado. Reduzca los datos, o nombre el archivo correcto.",
	],
	"syntax/yaml": [
		"El archivo no es YAML bien formado",
		"No se pudo leer el texto como YAML 1.2. Nada después de la falla es de fiar, así que no se calcula " +
			"nada. Corrija el lugar señalado y vuelva a correr.",
	],
	"csv/cell": [
		"No se puede leer una celda de una tabla",
		"Cada celda de una columna numérica tiene un solo número en la unidad que nombra su encabezado, sin " +
			"comas ni palabras. Una estación mala corre toda la trayectoria debajo de ella; por eso ninguna " +
			"celda se salta ni se adivina. Corríjala, o quite el renglón.",
	],
	"csv/column-unit": [
		"La unidad de una columna falta o no se conoce",
		"El encabezado de una columna numérica lleva su unidad: `md_ft`, `inclination_deg`, `md (m)`. Sin " +
			"ella pies y metros se ven iguales. Añada la unidad al encabezado.",
	],
	"csv/empty": [
		"Una tabla no tiene renglones",
		"El archivo tiene a lo más la línea de encabezados. Vea si la exportación quedó completa y si se " +
			"nombró el archivo correcto.",
	],
	"csv/header": [
		"Los encabezados de una tabla no nombran sus columnas",
		"La primera línea nombra cada columna una vez. Aquí un encabezado está vacío, o dos son iguales, y " +
			"no se sabe qué columna tiene la profundidad. Nombre cada columna una vez.",
	],
	"csv/missing-column": [
		"A una tabla le falta una columna",
		"La tabla se lee por los nombres de su primera línea, en cualquier orden. Entre ellos no está una " +
			"columna que el cálculo necesita. Añádala, o corrija su encabezado.",
	],
	"csv/quote": [
		"Una celda entre comillas está mal formada",
		"Una celda entre comillas dobles termina en la comilla de cierre, y una comilla adentro se escribe " +
			"doble (RFC 4180). Aquí falta la de cierre o le sigue texto. La causa usual es la marca de pulgada: " +
			"escriba `in`.",
	],
	"csv/row-length": [
		"Un renglón tiene más o menos celdas que columnas la tabla",
		"Entonces no se sabe qué celda es de qué columna. Una coma dentro de un número (`3,250.5`) parte la " +
			"celda en dos; una coma decimal, igual. Escriba los números sin comas.",
	],
	"csv/separator": [
		"Las celdas no se separan con comas",
		"La primera línea se separa con punto y coma o tabuladores. Así exportan las hojas de cálculo en " +
			"ciertos idiomas, y entonces también escriben comas decimales, que no se distinguen de los " +
			"separadores. Exporte con separación por comas y punto decimal.",
	],
	"csv/unknown-column": [
		"Una columna de la tabla no se usa",
		"La tabla tiene una columna que nada lee. No hace daño, salvo que su encabezado esté mal escrito y " +
			"la columna que usted quería se tome por ausente. Corrija el encabezado, o deje la columna como está.",
	],
	"file/link": [
		"Un archivo que nombra la definición lleva a otra parte",
		"El nombre es un enlace a un lugar fuera de la carpeta de la definición. El código al pie de cada " +
			"documento cubre los archivos junto a la definición; un enlace podría cambiar sin que se note. Ponga " +
			"una copia del archivo junto a la definición.",
	],
	"file/not-beside": [
		"Se nombra un archivo fuera de la carpeta de la definición",
		"Los archivos que usa una definición están junto a ella o en una carpeta debajo, para que el pozo se " +
			"entregue completo y una definición ajena no alcance otras carpetas. Copie ahí el archivo y nómbrelo " +
			"sin ruta que suba o que empiece en la raíz.",
	],
	"file/not-found": [
		"No se puede leer un archivo que nombra la definición",
		"No hay tal archivo junto a la definición, o no se permite abrirlo. Mayúsculas y minúsculas cuentan. " +
			"Revise el nombre, o ponga ahí el archivo.",
	],
	"quantity/comma": [
		"Una coma en un número",
		"Para un lector la coma separa miles y para otro decimales; dentro de { } y [ ] YAML hasta parte ahí " +
			"el número en dos. Escriba 3250 ft, no 3,250 ft.",
	],
	"quantity/depth-reference": [
		"Una profundidad contada desde otro lugar",
		"La profundidad por el agujero, la vertical desde el nivel de referencia (TVD) y la contada desde el " +
			"terreno difieren; en un pozo horizontal, por miles de pies. Cada campo toma solo las que le " +
			"corresponden; el valor dice cuál es.",
	],
	"quantity/digit-space": [
		"Un espacio o una marca dentro de un número",
		"1 200 ft puede ser 1200 ft o un error de dedo, y 1_200 ft y 1'200 ft se leen así en unos programas " +
			"y en otros no. Escriba los dígitos juntos.",
	],
	"quantity/improper-fraction": [
		"Una fracción de uno o más",
		"95/8 in es casi siempre 9 5/8 in sin su espacio. Escriba el entero, un espacio y la fracción.",
	],
	"quantity/letter-case": [
		"Una unidad con otras mayúsculas",
		"mPa es la milésima de un pascal y MPa un millón. Donde la mayúscula cambia el significado, debe " +
			"estar bien.",
	],
	"quantity/negative": [
		"Un valor menor que cero",
		"Esta cantidad no tiene sentido bajo cero. Un menos de más voltearía un volumen o una profundidad, " +
			"así que no se quita en silencio. Quítelo.",
	],
	"quantity/no-unit": [
		"Un número sin su unidad",
		"Con números sin unidad los pies se vuelven metros. Toda cantidad lleva su unidad; el mensaje " +
			"enumera las que admite.",
	],
	"quantity/not-a-number": [
		"No es una cantidad",
		"Una cantidad empieza con un número y sigue con su unidad: 54.5 lb/ft, 9 5/8 in, 10 deg/100 ft. " +
			"Palabras antes de ella, como `cerca de` o `máx.`, no son parte del valor; póngalas en un comentario.",
	],
	"quantity/not-finite": [
		"No es un número finito",
		"El número es demasiado grande para serlo, o está escrito como infinito. Vea su exponente: 4.2e6 son " +
			"4,200,000.",
	],
	"quantity/several-numbers": [
		"Más de un número",
		"Un valor es un número y su unidad: un rango (de 4300 a 4500 psi) o una tolerancia (4300 psi ± 50) " +
			"dejaría abierto con cuál se calcula. Escriba el valor a que se atendrá el plan; donde un campo toma " +
			"una lista, ponga cada uno en su lugar.",
	],
	"quantity/unknown-unit": [
		"Una unidad que no mide esto",
		"La unidad no se conoce, o mide otra cosa: bbl no es presión. El mensaje enumera las que sirven.",
	],
	"definition/api-number": [
		"El número API del pozo no lo es",
		"El número API une cada documento al expediente público del pozo. Tiene 10 dígitos (estado, condado, " +
			"pozo), 12 con el desvío o 14 con la secuencia de eventos, con o sin guiones. Un dígito equivocado " +
			"archiva el pozo a nombre de otro. Cópielo del permiso.",
	],
	"definition/cas-number": [
		"El número CAS no cierra",
		"Una sustancia tiene muchos nombres y un solo número CAS. Su último dígito comprueba los demás: cada " +
			"dígito anterior, desde la derecha, por su posición, sumados, termina en ese dígito. Un número que " +
			"no cierra no nombra ninguna sustancia, y una declaración que lo lleve está mal. Cópielo de la hoja " +
			"de datos de seguridad.",
	],
	"definition/emergency-number": [
		"Un número de emergencia que nadie puede marcar",
		"Un número de emergencia tiene tres dígitos, como 911, o es un teléfono completo de siete o más. A " +
			"cualquier otro le falta o le sobra un dígito, y la cuadrilla lo sabría en el peor momento.",
	],
	"definition/date": [
		"No es una fecha del calendario",
		"Las fechas se escriben año-mes-día, como 2026-05-04, porque 05/04 se lee de dos maneras. El día " +
			"debe existir.",
	],
	"definition/dates-out-of-order": [
		"Fechas fuera de orden",
		"Una de las dos fechas debe venir después de la otra para que el registro tenga sentido: la vigencia " +
			"tras la emisión, las revisiones en secuencia, el final tras el inicio. Un revisor que las halla " +
			"cruzadas duda de lo demás.",
	],
	"definition/duplicate-id": [
		"Dos entradas tienen el mismo nombre",
		"Otras entradas, nombres de archivo y resultados se refieren a una entrada por este nombre; con dos, " +
			"nadie sabe cuál es. Cambie el nombre de una y de toda entrada que se refiera a ella.",
	],
	"definition/empty": [
		"Una entrada sin valor",
		"El nombre está y después no hay nada. El programa no adivina qué se quiso: dé un valor, o quite la " +
			"línea y la entrada cuenta como no indicada.",
	],
	"definition/low-above-high": [
		"Un rango al revés",
		"Un rango se escribe con el menor primero. Al revés, toda cifra sacada de él saldría mal en ambos " +
			"extremos.",
	],
	"definition/method-and-stages": [
		"El método y las etapas no van juntos",
		"Un solo intervalo se describe con `interval`; un trabajo por etapas, con `layout` o `rows`. Se " +
			"cambió una de las dos entradas y se olvidó la otra.",
	],
	"definition/missing": [
		"Falta una entrada obligatoria",
		"Sin ella no se puede calcular nada de este tipo, y el programa nunca adivina. Añádala; el mensaje " +
			"dice para qué sirve.",
	],
	"definition/not-one-of": [
		"No es una de las palabras que se entienden",
		"Aquí la definición toma una palabra de una lista cerrada, porque cálculos y reglas dependen de cuál " +
			"sea. El mensaje enumera las palabras; se propone una parecida donde es probable un error de dedo.",
	],
	"definition/one-of-keys": [
		"Se debe dar exactamente una de varias entradas",
		"Estas entradas dicen lo mismo de distintas maneras. Sin ninguna no se dice nada; con dos podrían " +
			"contradecirse.",
	],
	"definition/out-of-range": [
		"Un número fuera de lo que tiene sentido",
		"El número no puede ser lo que dice ser: una latitud más allá del polo, una cuenta menor que uno. " +
			"Busque un signo, un punto o un dígito corrido.",
	],
	"definition/over-whole": [
		"Una parte mayor que el todo",
		"Una parte de más de 100 % de algo que solo se tiene una vez. Un agrandamiento o un exceso puede " +
			"pasar de 100 %; una parte del agua o una caída permitida, no. Corrija la parte.",
	],
	"definition/papers-widened": [
		"Una entrada se muestra donde no se puede",
		"Algunas entradas son personas, teléfonos o datos privados. `papers:` puede apartar una entrada de " +
			"un documento; no puede llevarla a un documento del que se apartan las de su tipo.",
	],
	"definition/date-implausible": [
		"Una fecha lejos de las demás",
		"Un plan se emite unos meses antes del trabajo, rara vez años. Una fecha anterior a 1900, o trabajo " +
			"que empieza más de dos años después del día de emisión, suele ser un error en el año; reglas y " +
			"plazos se cuentan desde ella. Corrija el año, o déjelo si es a propósito.",
	],
	"definition/spud-and-schedule": [
		"Dos fechas de inicio de perforación",
		"La fase de perforación empieza con el inicio del pozo (`spud`). Con otra fecha en `well`, los " +
			"dibujos dirían un día y el calendario otro, y los plazos se contarían desde uno de ellos. Escriba " +
			"el día una vez; una fase de perforación sin inicio lo toma de `spud`.",
	],
	"definition/shares-of-whole": [
		"Partes que no suman el todo",
		"Las partes de un todo deben sumar 100 %. Si no, una está mal o falta una, y los volúmenes y los " +
			"viajes de camión saldrían igual de mal.",
	],
	"definition/unknown-key": [
		"Un nombre que aquí no significa nada",
		"Un nombre mal escrito perdería su valor en silencio; por eso todo nombre debe conocerse en su " +
			"lugar. El mensaje los enumera.",
	],
	"definition/version": [
		"Otra versión del formato",
		"La primera línea, `definition: 1`, dice en qué versión del formato está escrito el archivo. Esta " +
			"versión del programa lee la versión 1.",
	],
	"definition/wrong-count": [
		"Una lista de otra longitud",
		"Aquí la lista tiene longitud fija, como un valor bajo y uno alto. Con menos o más no se sabe cuál " +
			"es cuál. Dé exactamente los que dice el mensaje.",
	],
	"definition/wrong-form": [
		"No está en la forma que se entiende",
		"Aquí el texto debe tener cierta forma, que el mensaje nombra, para que se pueda citar o contar. " +
			"Escríbalo como en el ejemplo.",
	],
	"definition/wrong-kind": [
		"Otro tipo de valor",
		"Hay un texto donde va un bloque o una lista, un número donde va un texto, o al revés. El texto que " +
			"parece número, como un teléfono, va entre comillas.",
	],
	"internal/fault": [
		"Un error del programa mismo",
		"Es un defecto de Casebound, no de la definición. Favor de reportarlo con la definición que lo " +
			"mostró.",
	],
};
