import type { Explained } from "./explained.ts";

/** Codes of faults between the parts of a well. */
export const CODES_OF_THE_WELL: Readonly<Record<string, Explained>> = {
	"well/unknown-reference": [
		"Un nombre no se refiere a nada",
		"Las sartas nombran su agujero, la estimulación su sarta, los pasos del tratamiento su apuntalante. " +
			"Un nombre sin definir no une nada, y no se puede calcular lo que depende de él. Escríbalo como " +
			"donde se define.",
	],
	"well/collars-too-wide": [
		"Los lastrabarrenas son más anchos que el agujero",
		"La sarta de perforación perfora el último agujero, así que sus lastrabarrenas son más angostos que " +
			"él. Con otros más anchos el espacio anular a su lado no tiene volumen, y no se puede calcular la " +
			"altura de un brote. Un diámetro suele tener un dígito equivocado.",
	],
	"well/top-below-bottom": [
		"Un intervalo está al revés",
		"La cima de un intervalo queda en su base o debajo de ella. Por lo común se intercambiaron las dos " +
			"profundidades, o a una le falta un dígito.",
	],
	"well/record-after-issue": [
		"Un registro tiene fecha posterior al documento que lo informa",
		"Lo que va en `actual` es registro de trabajo hecho, y los documentos lo muestran así, por encima " +
			"del plan. Un registro no puede ser más reciente que el documento. O todavía es un plan y no va en " +
			"`actual`, o no se movió la fecha de emisión al llegar el registro.",
	],
	"well/hole-order": [
		"Una sección de agujero no baja más que la de arriba",
		"Las secciones de agujero se enumeran de la superficie hacia abajo, cada una termina más abajo que " +
			"la anterior. Ordénelas así.",
	],
	"well/hole-diameter": [
		"Una sección de agujero es más ancha que la de arriba",
		"Cada agujero se perfora a través del de arriba y no es más ancho. Uno más ancho suele estar fuera " +
			"de orden en la lista, o con el diámetro mal tecleado.",
	],
	"well/bit-drift": [
		"La barrena es más ancha que el diámetro de paso de una sarta que cruza",
		"El diámetro de paso (drift) es el que pasa con seguridad; una barrena mayor puede atorarse. Pida la " +
			"tubería calibrada al diámetro mayor y dígalo con `drift`, elija una barrena menor o abra el agujero " +
			"con un ampliador.",
	],
	"well/shoe-below-hole": [
		"Una zapata queda más abajo que su agujero",
		"No se puede asentar tubería más abajo del fondo del agujero en que se corre. La zapata suele quedar " +
			"a pocos pies del fondo. Revise ambas profundidades, y que las dos sean medidas desde el mismo nivel.",
	],
	"well/shoe-above-hole": [
		"Una sarta no llega a su agujero",
		"La zapata queda arriba del inicio de la sección de agujero que nombra la sarta, así que la sarta " +
			"está en otra sección. Nombre esa, o corrija la profundidad.",
	],
	"well/strings-nest": [
		"Una sarta no cabe dentro de la anterior",
		"Las sartas se enumeran de afuera hacia adentro; cada una es más angosta y termina más abajo que la " +
			"anterior, y un liner cuelga dentro de ella. Todo lo que cuenta barreras sigue este orden.",
	],
	"well/liner-top": [
		"Un liner no cuelga dentro de la sarta anterior",
		"La boca del liner queda en la sarta de que cuelga, arriba de la zapata de esa sarta. Sin traslape " +
			"queda agujero descubierto entre los dos.",
	],
	"well/pipe-gap": [
		"Hay un hueco entre dos tramos de tubería",
		"Los tramos de una sarta combinada se unen: cada uno empieza donde termina el de arriba. Corrija una " +
			"de las dos profundidades.",
	],
	"well/pipe-overlap": [
		"Dos tramos de tubería se traslapan",
		"Los tramos de una sarta combinada se unen: cada uno empieza donde termina el de arriba. Corrija una " +
			"de las dos profundidades.",
	],
	"well/pipe-passage": [
		"La tubería no pasa por la sarta en que se corre",
		"La tubería o su cople es más ancho que el diámetro de paso de una sarta exterior. Pasa con " +
			"seguridad el diámetro de paso, no el interior. Donde el catálogo conoce un diámetro de paso alterno " +
			"que serviría, el mensaje lo nombra: entonces la tubería se pide y se calibra a él, y la definición " +
			"lo dice.",
	],
	"well/pipe-hole": [
		"La tubería no cabe en su agujero",
		"La tubería o su cople es tan ancho como el agujero o más. No se puede correr, y ningún cemento " +
			"pasaría.",
	],
	"well/unknown-pipe": [
		"La tubería no está en el catálogo",
		"El catálogo no tiene TR de este diámetro y peso, así que no se conocen pared, diámetro de paso ni " +
			"resistencias. Corrija el diámetro o el peso; de tubería que de verdad no está en el catálogo, " +
			"escriba su peso y pared, y sus resistencias.",
	],
	"well/pipe-wall": [
		"Peso y pared nombran tuberías distintas",
		"La pared del catálogo para este diámetro y peso no es la escrita. Una de las dos está mal. Escriba " +
			"solo una, o corríjala.",
	],
	"well/unknown-grade": [
		"El grado no está en el catálogo",
		"La resistencia sale del grado. De un grado propio del fabricante escriba `minimum_yield`, y " +
			"`minimum_tensile` si se conoce.",
	],
	"well/grade-not-listed": [
		"La norma no lista este peso en este grado",
		"La tubería puede existir, pero no es artículo del catálogo; muchas veces el peso o el grado está " +
			"mal tecleado. Confírmelo con el certificado de fábrica.",
	],
	"well/connection-size": [
		"Esta rosca no se hace en este diámetro",
		"La norma no tiene rosca larga arriba de 9 5/8 in, salvo en 20 in. Nombre la conexión que tiene la " +
			"tubería.",
	],
	"well/connection-unrated": [
		"Una conexión fuera de la norma no tiene resistencias",
		"La resistencia de una conexión propia del fabricante no se publica en la norma. Sin resistencias " +
			"escritas, lo que depende de ella queda sin determinar por falta de datos. Tómelas de la hoja del " +
			"fabricante y escríbalas en `ratings`.",
	],
	"well/slurry-gap": [
		"Hay un hueco en la columna de cemento",
		"Las lechadas de un trabajo llenan la columna sin huecos: cada una empieza donde termina la de " +
			"abajo. La tubería frente a un hueco queda en lodo, y lo que hay detrás no queda sellado. Corrija " +
			"cimas y bases.",
	],
	"well/slurry-overlap": [
		"Dos lechadas se traslapan",
		"Las lechadas de un trabajo llenan la columna una vez: cada una empieza donde termina la de abajo. " +
			"Donde dos reclaman el mismo tramo, su volumen se contaría dos veces. Corrija cimas y bases.",
	],
	"well/slurry-bottom": [
		"La columna de cemento no empieza en la zapata",
		"Una cementación primaria llena el espacio anular de la zapata hacia arriba. La base de la lechada " +
			"más honda es la profundidad de la zapata.",
	],
	"well/slurry-top": [
		"Se planea cemento arriba de la sarta que rodea",
		"El cemento queda entre la sarta y lo que la rodea; por eso ninguna lechada termina arriba de la " +
			"boca de la sarta ni del terreno. Corrija la cima de la lechada o la de la sarta.",
	],
	"well/cement-class": [
		"La clase de cemento no es una de las de la norma que aquí se conocen",
		"Se conocen las clases A, B, C, G y H. Se usan los datos propios de la lechada, se llame como se " +
			"llame.",
	],
	"well/centralizer-range": [
		"Se planean centralizadores fuera de la sarta",
		"Un tramo de centralizadores queda sobre su sarta, entre su boca y su zapata. Centralizadores en " +
			"otra parte se contarían y comprarían en balde, o dejarían un tramo sin ellos. Corrija las " +
			"profundidades.",
	],
	"well/shoe-track": [
		"El tramo de zapata es más largo que la sarta",
		"El cople flotador queda en la sarta, arriba de la zapata. Revise la longitud.",
	],
	"well/formation-order": [
		"Las formaciones están fuera de orden",
		"Las formaciones se enumeran de la superficie hacia abajo, cada una con su cima a la de la anterior " +
			"o más abajo. Todo lo que se lee del terreno a una profundidad, de la presión de poro a la " +
			"litología, sigue este orden. Corrija las cimas o mueva los renglones.",
	],
	"well/formation-base": [
		"La base de una formación queda abajo de la cima de la siguiente",
		"Dos formaciones no pueden estar a una misma profundidad. Omita la base donde es simplemente la cima " +
			"de la siguiente.",
	],
	"well/water-below-well": [
		"El agua protegida llega más abajo que el pozo",
		"La base del agua protegida es más honda que el pozo, así que no puede quedar debajo de ninguna " +
			"zapata. Por lo común un dígito o la unidad está mal.",
	],
	"well/target-above-water": [
		"La roca que se va a tratar queda arriba de la base del agua protegida",
		"En casi todo pozo la roca tratada queda miles de pies abajo del agua protegida. Donde su cima queda " +
			"arriba de la base de esa agua, muy probablemente se corrió un dígito o la unidad de una de las dos. " +
			"Si así es, deciden las reglas del lugar; los documentos lo dicen claramente.",
	],
	"well/no-path": [
		"No hay trayectoria planeada ni registro direccional",
		"Profundidades verticales, distancias y volúmenes necesitan la trayectoria del agujero. Dé un plan, " +
			"`vertical: true` si va derecho hacia abajo, o un registro direccional.",
	],
	"well/path-short": [
		"La trayectoria planeada termina arriba del fondo del agujero",
		"El plan de la trayectoria y la sección de agujero más honda no concuerdan en dónde termina el pozo. " +
			"Lo que queda más allá de la trayectoria no tiene profundidad vertical.",
	],
	"well/survey-order": [
		"Las estaciones están fuera de orden",
		"Las estaciones se enumeran por profundidad medida, cada una más honda que la anterior; la primera " +
			"es el punto de enlace. La trayectoria se calcula de estación a estación, así que su orden es el " +
			"agujero. Ordene los renglones o corrija la profundidad.",
	],
	"well/survey-angle": [
		"Un ángulo de la trayectoria es imposible",
		"La inclinación va de 0 a 180 grados y el azimut de 0 a 360. Un ángulo malo dobla toda la " +
			"trayectoria debajo de él. Corrija el plan o la estación, o quite una estación que no se midió.",
	],
	"well/stage-row": [
		"No se puede usar un renglón de un archivo de etapas",
		"Un archivo de etapas tiene las columnas stage, bottom, top y clusters, y puede tener plug, " +
			"shots_per_cluster, shot_diameter, phasing y rate; un archivo de registro tiene stage y cualquiera " +
			"de los registros. Las unidades van en el encabezado, como en `bottom_ft`. Las profundidades de los " +
			"clústeres van en una celda, separadas por espacios. Las etapas se numeran desde 1, la más honda.",
	],
	"well/unknown-stage": [
		"Un cambio o registro es de una etapa que no existe",
		"Las etapas se numeran desde 1, la más honda, sin saltos. Corrija el número.",
	],
	"well/stage-clusters": [
		"Los clústeres no caben en su etapa",
		"El clúster más hondo va en la base de la etapa y los demás arriba, a la separación entre clústeres; " +
			"el más alto debe quedar abajo de la base de la etapa siguiente. Menos clústeres, menos separación o " +
			"una etapa más larga.",
	],
	"well/stage-outside": [
		"Una etapa queda fuera de la sarta que se trata",
		"Las etapas quedan entre la boca de la sarta tratada y su cople flotador; abajo del cople la tubería " +
			"está llena de cemento. Revise fondo, longitud y número.",
	],
	"well/stage-overlap": [
		"Dos etapas se traslapan",
		"Las etapas se siguen agujero arriba; cada una termina en el fondo de la siguiente o más abajo. " +
			"Donde dos se traslapan, un tapón quedaría entre clústeres abiertos. Corrija los fondos o la " +
			"longitud.",
	],
	"well/plug-place": [
		"Un tapón no queda entre su etapa y la de abajo",
		"Un tapón aísla la etapa de abajo: se asienta abajo del clúster más hondo de la etapa y arriba del " +
			"clúster más alto de la de abajo. La etapa 1, en la punta, no tiene.",
	],
	"well/sleeve-balls": [
		"Una bola no sella en su asiento, o no llega a él",
		"Las camisas deslizantes se abren de la punta hacia arriba, cada una con una bola que llega a su " +
			"asiento. La bola debe pasar por la tubería y por todo asiento arriba del suyo, así que asientos y " +
			"bolas crecen de la punta hacia arriba, y la bola debe ser mayor que su propio asiento. Cuánto mayor " +
			"es asunto del fabricante; el documento imprime el apoyo y la holgura que dejan estas medidas.",
	],
	"well/coupling-near": [
		"Un tapón o un clúster queda en un cople",
		"Un tapón asentado en un cople puede no sellar, y los disparos en él pueden abrir la junta. La " +
			"relación de tubería dice dónde están los coples; cada tapón y clúster guarda de ellos por lo menos " +
			"la distancia escrita. Muévalo unos pies con un cambio de su etapa.",
	],
	"well/toe-depth": [
		"La apertura de la punta no está en la punta",
		"La punta es la primera apertura y la más honda: en el fondo de la etapa 1 o más abajo, y arriba del " +
			"cople flotador. Una apertura en otra parte no podría recibir fluido, o dejaría cerrada la etapa más " +
			"baja. Corrija su profundidad.",
	],
	"well/step-material": [
		"Un paso del tratamiento nombra apuntalante sin concentración, o al revés",
		"El apuntalante va a una concentración. Un paso lleva ambos o ninguno.",
	],
	"well/improbable-value": [
		"Un valor queda fuera del rango usual",
		"El valor puede estar bien. También puede ser un punto decimal corrido o una unidad equivocada. El " +
			"rango es el de la práctica común, o el de la fuente nombrada; no es límite de ninguna regla.",
	],
};
