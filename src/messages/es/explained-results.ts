import type { Explained } from "./explained.ts";

/** Codes of what does not agree, cannot be calculated, or is wrong with rules and tables. */
export const CODES_OF_RESULTS: Readonly<Record<string, Explained>> = {
	"well/slurry-figures": [
		"Una lechada no tiene ni sus datos ni de qué se hace",
		"Una lechada se da por su densidad, rendimiento y agua de mezcla, o por sus componentes con el agua " +
			"de mezcla o la densidad buscada. Sin lo uno ni lo otro no hay sacos, ni peso, ni presión. Escriba " +
			"los datos del laboratorio, o los componentes.",
	],
	"well/slurry-material": [
		"Con un componente de la lechada no se puede calcular",
		"El volumen de un material en la lechada sale de su gravedad específica. Los materiales de la lista " +
			"que trae el programa la tienen; los demás la dicen. Cada uno tiene una sola cantidad: por ciento en " +
			"peso de cemento, por ciento en peso de agua, o volumen por saco.",
	],
	"well/caliper": [
		"Un registro de calibrador no se puede usar",
		"Un calibrador tiene una profundidad y un diámetro por renglón, de arriba hacia abajo. Los volúmenes " +
			"se calculan entre renglones, así que un orden que regresa o un diámetro de cero daría un volumen " +
			"malo sin que se note.",
	],
	"calc/slurry-design": [
		"Los datos de una lechada y sus componentes no concuerdan",
		"Donde la lechada tiene sus datos y además sus componentes, estos se calculan por volumen absoluto y " +
			"se comparan. Una diferencia mayor que el redondeo significa que uno es de otra mezcla: peso, sacos " +
			"o agua saldrían mal ese día. Se usan los datos escritos. Pregunte al laboratorio cuál es correcto.",
	],
	"calc/slurry-not-designed": [
		"No se puede calcular una lechada con sus componentes",
		"Los componentes, con el agua de mezcla o la densidad buscada, no hacen una lechada: densidad menor " +
			"que la del agua o mayor que la de la mezcla seca, o nada de agua. Corrija las cantidades, o escriba " +
			"la densidad, el rendimiento y el agua del laboratorio.",
	],
	"calc/fracture-correlation": [
		"A una correlación del gradiente de fractura le falta un dato",
		"El método de Eaton toma sobrecarga, presión de poro y relación de Poisson; el de Matthews y Kelly, " +
			"sobrecarga, presión de poro y el coeficiente de la región; el de Hubbert y Willis, presión de poro. " +
			"Sin ellos la formación no tiene gradiente de fractura, y lo que depende de él no se puede " +
			"determinar.",
	],
	"definition/same-name": [
		"Dos renglones de una lista tienen el mismo nombre",
		"Los documentos llaman por su nombre a formaciones, aguas, vecinos y materiales. Con dos iguales el " +
			"lector no sabe de cuál es un dato. Muchas veces se copió un renglón y no se terminó. Dé a cada uno " +
			"su nombre, o déjelo si de verdad se llaman igual.",
	],
	"well/annulus-strings": [
		"Las sartas de un espacio anular no se nombran de adentro hacia afuera",
		"Un espacio anular queda entre dos sartas; primero se nombra la interior, como en `[production, " +
			"intermediate]`. Al revés, su límite se vigilaría en el manómetro equivocado. Intercambie las dos.",
	],
	"well/pipe-above-hanger": [
		"La tubería empieza arriba de su colgador",
		"Las profundidades se cuentan desde el nivel de referencia, arriba en el piso del equipo; la tubería " +
			"que llega a superficie empieza en el colgador, unos pies más abajo. Eso dice `from: surface`. Una " +
			"profundidad arriba del colgador cuenta tubería que no existe.",
	],
	"well/api-state": [
		"El número API del pozo es de otro estado",
		"El número API empieza con la clave de su estado: 42 es Texas, 05 Colorado. Aquí no es la de ningún " +
			"estado cuyas reglas nombra el pozo. El número archiva el pozo a nombre de otro, o la jurisdicción " +
			"está equivocada. Corrija lo que esté mal.",
	],
	"well/coordinates-astray": [
		"Un lugar queda fuera de su estado o lejos del pozo",
		"Las coordenadas se comparan con el recuadro del estado y con la boca del pozo. Un signo menos " +
			"perdido, latitud y longitud intercambiadas o un dígito equivocado ponen el lugar en otro estado o " +
			"en otro país, y con él todas las distancias. Cerca de un límite estatal, o si el lugar de verdad " +
			"queda tan lejos, déjelo.",
	],
	"well/distance-astray": [
		"Una distancia medida no concuerda con las coordenadas",
		"Un vecino tiene distancia medida y coordenadas, y son de lugares distintos: en una hay un dígito " +
			"equivocado. Ya se toman en cuenta el tamaño de la localización y la holgura de ambas. Las " +
			"distancias mínimas usan la medida y los mapas las coordenadas; corrija la que esté mal.",
	],
	"well/record-before-spud": [
		"Un registro es más antiguo que el agujero en que se hizo",
		"Lo que va en `actual` es registro de trabajo hecho en este agujero, y el agujero se empezó en la " +
			"fecha de `spud`. Solo el conductor pudo asentarse antes. O una fecha está mal, o lo escrito es el " +
			"plan y no va en `actual`.",
	],
	"well/beyond-total-depth": [
		"Una profundidad queda abajo del fondo del pozo",
		"Ninguna profundidad del pozo pasa de la profundidad a que se perfora su agujero más hondo, y " +
			"ninguna profundidad vertical verdadera pasa de la profundidad medida de su punto. Por lo común se " +
			"corrió un dígito o la unidad. Corrija la profundidad, o perfore más hondo.",
	],
	"well/shoe-too-shallow": [
		"Una zapata queda arriba de lo que va en su sarta",
		"La columna de cemento, los centralizadores y las etapas de una sarta llegan todos más abajo que su " +
			"zapata. Sería raro que todos estuvieran mal, así que probablemente lo está la zapata: suele faltar " +
			"un dígito. Corríjala; si está bien, corrija los lugares que nombra el mensaje.",
	],
	"well/tieback-join": [
		"Un tieback no termina en el liner al que se une",
		"Un tieback va del colgador hacia abajo hasta un liner y sella en la boca de este. Se escribe " +
			"después de ese liner, y su tubería más baja termina en la boca del liner o a pocos pies debajo. En " +
			"otro lugar quedaría un hueco que no retiene presión.",
	],
	"well/stage-tool": [
		"Una herramienta de etapas no concuerda con su sarta o su cemento",
		"La herramienta de etapas es parte de la sarta, arriba del cople flotador, y el cemento de arriba se " +
			"bombea por ella como segunda etapa. Por eso ninguna lechada la cruza: la primera etapa termina en " +
			"la herramienta o más abajo, y la segunda empieza en ella.",
	],
	"well/sacks-volume": [
		"Sacos, rendimiento y volumen de una lechada no concuerdan",
		"Donde se dan ambos, los sacos por el rendimiento son el volumen, con una diferencia de uno por " +
			"ciento a lo más. Si no, uno de los tres es de otra mezcla o de otro pozo, y el trabajo quedaría " +
			"corto o sobrado. Corrija el que esté mal, o escriba solo sacos o solo volumen.",
	],
	"well/seal-evidence": [
		"Un registro de adherencia, medición, prueba o cementación forzada no corresponde a su TR",
		"Lo que muestra si el cemento sella se escribe tramo por tramo: cada uno va hacia abajo y termina " +
			"en la zapata de su TR o más arriba, y los intervalos de un registro de adherencia se siguen uno " +
			"a otro desde arriba. La amplitud en adherencia total es menor que en tubería libre, o el índice " +
			"que sale de las dos quedaría de cabeza.",
	],
	"well/neat-slurry": [
		"Una lechada no es lo que da su clase mezclada pura",
		"En cemento mezclado solo con agua, la clase, el agua, la densidad y el rendimiento se siguen uno " +
			"del otro. Aquí dos de los valores son los de la clase pura y el tercero no, así que probablemente " +
			"se tecleó mal. No se juzga así una lechada extendida, densificada o hecha de componentes.",
	],
	"well/no-caliper": [
		"Se dice que los volúmenes son por calibrador, y no hay calibrador",
		"`volume_basis: caliper` dice que los volúmenes de cemento se basan en un agujero medido. Sin el " +
			"registro, o sin el agrandamiento leído de él, se basan en el plan, y el lector confiaría en ellos " +
			"más de lo debido. Nombre el registro, anote el agrandamiento o escriba la base verdadera.",
	],
	"well/tally": [
		"La relación de tubería no concuerda con la sarta",
		"La relación de tubería enumera cada tramo de la sarta. Sus tramos son tantos como se corrieron, y " +
			"sus longitudes juntas llegan de la boca de la sarta a la zapata, a un tramo de diferencia. Si no, " +
			"la zapata no está donde dicen los documentos, o falta un renglón.",
	],
	"well/treating-string": [
		"Una sarta de tratamiento no concuerda con el pozo",
		"La tubería por la que se bombea el tratamiento pasa por el diámetro de paso de la TR de que cuelga, " +
			"y su empacador se asienta en esa TR, arriba de toda apertura y del cople flotador, en el extremo de " +
			"la tubería o más arriba. De otro modo no se puede correr, o la presión que debía apartar de la TR " +
			"llega de todos modos.",
	],
	"well/stage-above-landing": [
		"Una etapa queda arriba de la horizontal",
		"Según la trayectoria planeada, el agujero aún va en curva donde se abre esta etapa. Puede ser a " +
			"propósito; más a menudo sobra una etapa, o su longitud o su fondo está mal. Revise el número, la " +
			"longitud y el fondo de las etapas.",
	],
	"calc/perforations-outside-target": [
		"La tubería se abre fuera del objetivo",
		"Una formación está marcada como objetivo, y una apertura queda arriba o abajo de ella, donde la " +
			"alcanza la trayectoria. Aperturas en una capa confinante sacan el tratamiento de la roca a la que " +
			"va, y toda separación se cuenta desde ellas. Lo usual: etapas copiadas de otro pozo, una " +
			"trayectoria que aterriza mal o la cima de una formación con un dígito equivocado.",
	],
	"calc/impossible-plan": [
		"Ningún agujero puede seguir el plan",
		"La trayectoria planeada es una lista de arcos y rectas exactos, y estos no se unen en un agujero: " +
			"el objetivo queda dentro del arco, arriba del inicio de la desviación, o solo se alcanza pasando de " +
			"la horizontal. Toda profundidad depende de la trayectoria, así que no se calcula nada. El mensaje " +
			"dice qué ritmo de incremento o qué inicio serviría.",
	],
	"calc/outside-validity": [
		"Una fórmula publicada no vale para lo que se da",
		"Toda fórmula vale dentro de límites: las de resistencia, para tubería hueca y cedencias de 24,000 a " +
			"180,000 psi; las de fricción, para una pared mucho más lisa que ancho el paso. Fuera de ellos un " +
			"número no tendría fuente, así que no se da. Corrija los valores; de una tubería, escriba las " +
			"resistencias del fabricante con su fuente.",
	],
	"calc/past-the-path": [
		"El agujero pasa bastante del final de su trayectoria",
		"Abajo de la última estación el agujero se lleva derecho con la última inclinación y el último " +
			"azimut. En un tramo corto hasta la barrena es práctica usual; en cientos de pies las profundidades " +
			"son una conjetura. Lleve el plan o el registro direccional hasta el fondo del agujero.",
	],
	"calc/unusable-survey": [
		"El registro direccional no describe un agujero",
		"Las estaciones bajan por el agujero, cada una más honda que la anterior. Con un registro en " +
			"desorden no se calcula nada, porque toda profundidad de los documentos saldría mal. Ponga las " +
			"estaciones en orden, cada una una vez.",
	],
	"calc/mixed-norths": [
		"Azimuts de dos nortes no se pueden comparar",
		"El mismo azimut desde el norte de cuadrícula, el verdadero y el magnético son tres direcciones, y " +
			"en una horizontal larga la diferencia es de cientos de pies. Un registro contado desde otro norte " +
			"que el del pozo se gira a este, y para eso se necesita la convergencia de cuadrícula, la " +
			"declinación magnética o ambas. No se calcula nada hasta que se escriban.",
	],
	"calc/survey-start": [
		"El registro direccional no dice cómo llegó el agujero a su primera estación",
		"La trayectoria se lleva desde el nivel de referencia hacia abajo. Donde la primera estación queda " +
			"debajo de él en un agujero ya inclinado, el camino hasta ahí se toma como un solo arco desde la " +
			"vertical, que el agujero no tuvo por qué seguir. Dé las estaciones desde la superficie.",
	],
	"rules/file-shape": [
		"Un archivo de reglas no tiene la forma debida",
		"Un archivo de límites tiene forma fija: quién es la autoridad, y renglones que llevan cada uno id, " +
			"revisión, límite, el requisito en una oración, cita, estado, cómo se conoció el texto y dos fechas " +
			"(que pueden ser desconocidas). Un renglón al que le falte algo no se juzga. Añada lo que falta; " +
			"nunca invente una fecha.",
	],
	"rules/id": [
		"El id de una regla está tomado o fuera de lugar",
		"Las excepciones y los dictámenes impresos citan las reglas por su id; por eso cada id está una sola " +
			"vez y empieza con la clave de su jurisdicción. Dé al renglón un id propio.",
	],
	"rules/limit-form": [
		"Un límite no está escrito en una forma que su revisión admita",
		"Los límites vienen en un conjunto cerrado de formas (una comparación, una de una lista, un patrón, " +
			"un plazo, `all_of`, `any_of` y demás), y cada revisión admite algunas. `casebound explain` con el " +
			"nombre de la revisión da sus formas y medidas.",
	],
	"rules/limit-unit": [
		"No se puede leer el número de un límite",
		"Un límite lleva su unidad, del tipo que tiene la medida: profundidad en ft o m, resistencia en psi " +
			"o MPa, una parte en %. Un número sin unidad, o con una de otro tipo, se rechaza y no se adivina.",
	],
	"rules/date": [
		"Las fechas de una regla no pueden estar bien",
		"Una regla deja de regir después de entrar en vigor, y su texto no se leyó después de emitido el " +
			"documento que se basa en ella. Corrija la fecha, o escriba `unknown`.",
	],
	"rules/standing": [
		"Un renglón dice estar comparado y no dice con qué",
		"Solo un renglón que cita el párrafo oficial completo con su fecha puede decir que está comparado; " +
			"el que se comparó con una copia pública lo dice y nombra la copia, su fecha y qué se leyó. Los " +
			"documentos imprimen ese estado junto al dictamen, y alguien se confiará de él. Nombre el texto, o " +
			"escriba `not compared`.",
	],
	"rules/unknown-check": [
		"Un límite nombra una revisión que no existe",
		"Un límite es un dato y una revisión es programa; un límite sobre algo que ninguna revisión mira se " +
			"ignoraría en silencio. `casebound list checks` nombra las revisiones. Un límite de otro tipo " +
			"necesita que se escriba su revisión.",
	],
	"rules/unknown-jurisdiction": [
		"No se conocen límites de una jurisdicción que nombra el pozo",
		"La definición nombra una jurisdicción de la que no hay archivo de límites, así que no se juzga " +
			"ninguna de sus reglas. Todo documento lo dice. `casebound list jurisdictions` nombra las conocidas.",
	],
	"rules/unknown-rule": [
		"Una excepción o un aviso nombra una regla que no rige",
		"Una excepción se imprime con la regla que reemplaza, y un aviso cumple el plazo de una regla; ambos " +
			"la nombran por su id. Ninguna regla de las jurisdicciones que nombra el pozo tiene este id, así que " +
			"la entrada no tendría efecto y nadie lo vería. Copie el id de los dictámenes.",
	],
	"slides/form": [
		"Una diapositiva propia no tiene la forma que debe",
		"Una diapositiva lleva título y lo que se dice; puede nombrar un dibujo del pozo, la diapositiva a la que " +
			"sigue y, para quien habla, una pregunta con su respuesta. No se muestra nada más, y lo demás se perdería.",
	],
	"slides/place": [
		"Una diapositiva propia sigue a una que no existe",
		"Las diapositivas van en el orden de la plática, y cada una propia puede nombrar la que sigue. Sin `after` va " +
			"antes de la última.",
	],
	"slides/value": [
		"Una diapositiva propia nombra un valor que no está",
		"Un nombre entre llaves se llena con el número de este pozo, como lo dicen los demás documentos. Un nombre que no " +
			"se conoce, o del que este pozo no tiene valor, dejaría un hueco frente a la sala. Lo que se dice de la protección " +
			"del agua sigue los veredictos y no se puede nombrar.",
	],
	"slides/words": [
		"Las palabras de una diapositiva propia no se pueden mostrar",
		"Una diapositiva muestra párrafos y listas, con negritas y cursivas; junto a un dibujo, solo oraciones. Los " +
			"títulos y las preguntas no llevan valores. No se muestran tablas, encabezados, imágenes por dirección ni HTML.",
	],
	"seed/unreadable": [
		"No se puede leer una tabla del programa",
		"Un archivo de seeds/ falta o no es YAML bien formado. Sin él no se calcula nada, porque de ahí " +
			"vienen resistencias de tubería y citas. Restaure el archivo desde el paquete.",
	],
	"seed/shape": [
		"Una tabla del programa no tiene su forma",
		"A un renglón de un archivo de seeds/ le falta una columna, tiene una que no se conoce, o algo que " +
			"no es cifra donde va una cifra. El inicio de cada archivo dice qué contiene y en qué unidades.",
	],
	"seed/inconsistent": [
		"Las cifras de una tabla del programa se contradicen",
		"Dos cifras de un renglón no pueden estar bien a la vez: un diámetro de paso mayor que el interior, " +
			"una cedencia máxima menor que la mínima. Una resistencia calculada con ellas saldría mal, así que " +
			"la tabla se rechaza.",
	],
	"seed/repeated": [
		"Una tabla del programa enumera lo mismo dos veces",
		"Dos renglones de un archivo de seeds/ llevan el mismo nombre. Cuál se hallara dependería de su " +
			"orden, así que la tabla se rechaza.",
	],
};
