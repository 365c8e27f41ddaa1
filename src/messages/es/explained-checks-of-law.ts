import type { Explained } from "./explained.ts";

/** Checks that rules of law are made with, for who writes rules. */
export const CHECKS_OF_LAW: Readonly<Record<string, Explained>> = {
	"surface-shoe-depth": [
		"Zapata superficial abajo del agua protegida",
		"La TR superficial es el primer acero frente al agua dulce, así que tiene que terminar abajo de " +
			"ella; algunas reglas dicen también cuánto más puede bajar. La base del agua protegida es dato de la " +
			"dependencia, tecleado de su carta; esta revisión no puede confirmarlo. Las distancias son " +
			"verticales.",
	],
	"shoe-depth": [
		"Profundidad de una zapata",
		"Algunas reglas dan una profundidad mínima o máxima de una sarta, o piden aprobación para pasarla. " +
			"Una regla que cuenta desde el terreno se compara con la profundidad bajo el terreno, no con la del " +
			"equipo.",
	],
	"shoe-seat": [
		"Roca en la zapata",
		"Las reglas piden la zapata en roca competente o impermeable. Ninguna cuenta puede aprobar una " +
			"palabra así: la revisión muestra la roca y los números, y decide una persona.",
	],
	"shoe-test": [
		"Prueba de zapata",
		"Probar la roca debajo de una zapata muestra si aguanta el fluido que necesita el agujero siguiente. " +
			"La revisión compara la prueba planeada, o la registrada donde ya se hizo, con la longitud de " +
			"agujero nuevo de la regla y con el fluido más pesado planeado abajo.",
	],
	"shoe-strength": [
		"Resistencia de la roca en la zapata",
		"Algunas reglas piden que la roca en la zapata aguante una presión. La presión se calcula con el " +
			"gradiente de fractura de la formación en la zapata; una prueba de goteo o de integridad se juzga en " +
			"la prueba de zapata.",
	],
	"liner-lap": [
		"Traslape de un liner",
		"Un liner sella donde traslapa con la sarta anterior; las reglas dan el traslape mínimo, a lo largo " +
			"del agujero.",
	],
	"cement-to-surface": [
		"Cemento a superficie",
		"Cemento de la zapata a superficie no deja espacio anular abierto frente al agua dulce. Una columna " +
			"planeada se juzga como plan y el dictamen lo dice; hecho el trabajo se juzga el registro. El " +
			"cemento puede bajar después del retorno; el registro tiene que decirlo.",
	],
	"cement-top": [
		"Cima de cemento",
		"Detrás de sartas más hondas el cemento tiene que subir cierta distancia arriba de lo que aísla. Las " +
			"reglas cuentan por el agujero o en vertical, y algunas piden menos donde la cima se conoce mejor " +
			"(por registro) que donde se calcula. Formaciones sin marca se toman como que no fluyen.",
	],
	"cement-coverage": [
		"Zonas detrás del cemento",
		"Toda zona que nombra la regla debe quedar detrás de una sola columna de cemento, de cima a base. La " +
			"revisión ve cimas planeadas o registradas; no puede ver un canal en el cemento.",
	],
	"cement-class": [
		"Clase de cemento",
		"Algunas reglas nombran las normas o clases a que debe pertenecer el cemento. Las clases se comparan " +
			"por su letra o tipo, no por lo que hay en el saco.",
	],
	"cement-strength": [
		"Resistencia del cemento",
		"La regla da una resistencia a cierto tiempo para una parte de la sarta. El cemento gana " +
			"resistencia, así que una prueba anterior la acota por abajo y una posterior por arriba; entre las " +
			"dos la revisión no puede decidir, y nada se interpola.",
	],
	"free-fluid": [
		"Fluido libre del cemento",
		"El agua que se separa de una lechada en reposo deja un canal. La regla da lo más que puede " +
			"separarse.",
	],
	"critical-cement-length": [
		"Longitud de cemento en la zapata",
		"Las reglas definen una zona arriba de la zapata con cemento de mayor resistencia. La revisión " +
			"compara con esa zona la longitud de la lechada que queda en la zapata; su resistencia se revisa " +
			"aparte.",
	],
	"wait-on-cement": [
		"Espera de fraguado",
		"Nada mueve la tubería hasta que el cemento fragua. Las reglas piden horas, una resistencia, " +
			"cualquiera de las dos o ambas; la resistencia se toma al final de la espera planeada.",
	],
	"cementing-plugs": [
		"Tapones de cementación",
		"Los tapones separan cemento, espaciador y lodo dentro de la tubería. La regla nombra los tapones " +
			"que hay que usar.",
	],
	"casing-pressure-test": [
		"Prueba de presión de la TR",
		"La prueba comprueba la tubería antes de que algo dependa de ella. La presión exigida se calcula " +
			"muchas veces con la longitud de la sarta, entre un mínimo y una parte de la cedencia; el dictamen " +
			"muestra esa cuenta. Una prueba planeada se juzga por sus límites planeados; una registrada, solo " +
			"por su registro.",
	],
	"internal-yield-margin": [
		"Resistencia interna sobre la presión de tratamiento",
		"La tubería que recibe presión de tratamiento necesita un margen de resistencia interna sobre ella. " +
			"La resistencia es la de tubería nueva, del tramo más débil; aquí no se descuentan desgaste, " +
			"corrosión ni flexión.",
	],
	"relief-valve": [
		"Ajuste de la válvula de alivio",
		"Donde una regla limita el ajuste de la válvula de alivio, se compara con él el ajuste planeado.",
	],
	"relief-below-maximum": [
		"Válvula de alivio abajo de la presión máxima de tratamiento",
		"Una válvula de alivio que abre arriba de la presión máxima de tratamiento no protege nada: las " +
			"bombas pueden cargar la tubería más allá de su límite antes de que abra. El ajuste planeado se " +
			"compara con el máximo planeado.",
	],
	"annulus-limit": [
		"Presión anular durante el tratamiento",
		"Que la presión anular se aparte de lo que explican el calor y la dilatación es la primera señal de " +
			"una fuga. Las reglas piden parar a una presión, a un aumento o ante cualquier desviación; lo último " +
			"necesita un pronóstico para cada espacio anular.",
	],
	"slurry-volume-record": [
		"Lechada bombeada contra la calculada",
		"Un registro se compara con el diseño; antes de registrado el trabajo la revisión no aplica. Decide " +
			"la lechada con la menor parte de su volumen calculado.",
	],
	"slurry-density-record": [
		"Densidad de la lechada contra el diseño",
		"Un registro se compara con el diseño; antes de registrado el trabajo la revisión no aplica. El " +
			"cemento mezclado ligero fragua débil y despacio; mezclado pesado puede romper la roca o fraguar " +
			"antes.",
	],
	"lift-record": [
		"Presión de levantamiento contra la calculada",
		"Un registro se compara con el diseño; antes de registrado el trabajo la revisión no aplica. Una " +
			"presión de levantamiento muy baja dice que el cemento no está tan alto como debe. El manómetro lee " +
			"solo las columnas, o además la fricción del último bombeo, y concuerda todo lo que quede entre las " +
			"dos.",
	],
	"cement-top-record": [
		"Cima de cemento contra el plan",
		"Donde no se vio ni se registró una cima, se calcula con los volúmenes bombeados y el exceso del " +
			"plan. Los volúmenes no ven pérdidas ni un canal.",
	],
	"bump-record": [
		"Presión al asentar el tapón contra lo que admite la sarta",
		"Un registro se compara con el diseño; antes de registrado el trabajo la revisión no aplica.",
	],
	"float-record": [
		"El equipo de flotación sella",
		"Un equipo de flotación que falla deja regresar cemento a la tubería, salvo que se mantenga presión " +
			"hasta que fragüe.",
	],
	"returns-record": [
		"Retorno durante la cementación",
		"Lo que no regresa se fue a la roca, y la cima queda más baja en lo mismo.",
	],
	"shoe-test-record": [
		"Prueba de zapata contra lo que necesita el agujero siguiente",
		"Un registro se compara con el diseño; antes de registrado el trabajo la revisión no aplica. El " +
			"agujero siguiente se diseñó con la prueba planeada; una menor deja menos margen para lodo, fricción " +
			"y un brote.",
	],
	"casing-test-record": [
		"Prueba de la TR contra su plan",
		"Un registro se compara con el diseño; antes de registrado el trabajo la revisión no aplica.",
	],
	"preventer-test-record": [
		"Prueba de preventores contra su plan",
		"Un registro se compara con el diseño; antes de registrado el trabajo la revisión no aplica.",
	],
	"treating-pressure-record": [
		"Presión de tratamiento registrada",
		"Un registro se compara con el diseño; antes de registrado el trabajo la revisión no aplica. Decide " +
			"la etapa que alcanzó la presión más alta.",
	],
	"stage-volume-record": [
		"Etapas bombeadas contra el plan",
		"Un registro se compara con el diseño; antes de registrado el trabajo la revisión no aplica. Decide " +
			"la etapa que quedó más corta; la tabla de etapas las muestra todas.",
	],
	"annulus-record": [
		"Presión anular registrada",
		"Un registro se compara con el diseño; antes de registrado el trabajo la revisión no aplica.",
	],
	"hole-clearance": [
		"Holgura en el agujero",
		"El cemento necesita lugar alrededor de la tubería. Las reglas cuentan por lado o en diámetro, desde " +
			"la tubería o desde su cople; las palabras del dictamen dicen cuál. Se usa el diámetro de barrena, " +
			"no el agujero agrandado, y la tubería se toma centrada.",
	],
	"casing-condition": [
		"Condición de la tubería",
		"Algunas reglas piden tubería nueva, o una prueba de la usada. La condición tiene que indicarse; una " +
			"supuesta no es evidencia.",
	],
	centralizers: [
		"Centralizadores",
		"La tubería recargada en la pared no queda sellada todo alrededor. Las reglas dan un patrón: en los " +
			"tramos más bajos, cada tantos tramos, el primero dentro de una distancia y luego a un " +
			"espaciamiento, o a través del agua. Los tramos se leen como se escriben; el centralizador más bajo " +
			"de un tramo se toma en su fondo.",
	],
	"drilling-fluid": [
		"Fluido de perforación frente al agua dulce",
		"Hasta que se cementa la sarta que protege el agua, lo que hay en el agujero la toca. Los tipos se " +
			"comparan por nombre con la lista de la regla.",
	],
	separation: [
		"Separación entre roca tratada y agua protegida",
		"La roca vertical entre el agua protegida y el intervalo tratado. Donde una regla tiene separación " +
			"mínima, una menor trae más deberes. Aquí no se descuenta el crecimiento de la fractura arriba de " +
			"los disparos; las cifras de aislamiento lo muestran al lado.",
	],
	"water-definition": [
		"Agua que protege la regla",
		"Las reglas definen el agua protegida por sólidos disueltos, por uso, por una formación o por la " +
			"carta de una dependencia. La revisión pregunta si una zona de la lista que la regla protegería " +
			"queda más abajo que la base para la que se hace el pozo. No puede ver una zona que no está en la " +
			"lista.",
	],
	"water-samples": [
		"Agua muestreada antes del trabajo",
		"Una muestra antes del trabajo es la base para toda pregunta posterior. La revisión pide una de cada " +
			"fuente de la lista dentro del radio de la regla; donde no hay ninguna, la definición tiene que " +
			"decir que la lista de vecinos está completa.",
	],
	setback: [
		"Distancia mínima",
		"Una distancia medida en campo va antes que una calculada con coordenadas, y una medida desde otro " +
			"lugar no se usa. Los límites se toman como los dice la regla: `2,000 ft o menos` no cumple a 2,000 " +
			"ft. Donde no hay vecino de ese tipo en la lista, la revisión no puede decidir salvo que se diga que " +
			"la lista está completa. `consent: written` se cumple con un consentimiento que la definición " +
			"registra del vecino; junto a una distancia va en un `any_of`.",
	],
	"offset-wells": [
		"Pozos vecinos",
		"Un agujero viejo puede ser el camino que rodea toda barrera. Cada pozo de la lista dentro del radio " +
			"tiene que llevar evidencia de su condición; la revisión no puede ver un pozo que nadie puso en la " +
			"lista.",
	],
	"separation-factor": [
		"Separación de otro pozo",
		"El factor es la distancia entre los dos agujeros, menos sus radios y un margen, entre un número de " +
			"desviaciones estándar de ambos lugares, como dice la fuente de la fórmula. Abajo del límite menor " +
			"no se sigue perforando; entre los dos límites confirma un ingeniero. Sin la trayectoria del otro " +
			"pozo, o sin saber qué tan bien se conoce, la revisión no puede decidir.",
	],
	"fracture-reach": [
		"Otros pozos al alcance de las fracturas",
		"Un agujero viejo que alcanzan las fracturas es el camino que rodea toda capa de roca. El alcance es " +
			"la mayor semilongitud de los modelos sencillos más las incertidumbres de ambos lugares, juzgado en " +
			"el mapa porque las fracturas son verticales. Un agujero dentro de él necesita barreras demostradas " +
			"de la cima más alta modelada a la base más baja.",
	],
	"survey-interval": [
		"Intervalo entre estaciones",
		"Entre estaciones el agujero se toma como un solo arco, así que su lugar es tan bueno como corto el " +
			"intervalo. El tramo de la última estación al final del agujero es una proyección y no se cuenta.",
	],
	"survey-radius": [
		"Incertidumbre direccional indicada",
		"El modelo del comité para una herramienta magnética en equipo fijo, sin correcciones por " +
			"interferencia ni pandeo y con el campo local como se indica. Una herramienta corregida tiene una " +
			"elipse menor que la de este modelo.",
	],
	"hydrogen-sulfide": [
		"Ácido sulfhídrico",
		"Arriba de cierta fracción las reglas piden plan, capacitación y distancias. La fracción es lo que " +
			"dice la operadora; un pozo cuyo gas nadie analizó no tiene ninguna.",
	],
	"treatment-volume": [
		"Volumen del tratamiento",
		"Algunas reglas empiezan en un volumen, de una etapa o de todas. Los volúmenes son de fluido limpio, " +
			"agua y ácido, antes del apuntalante.",
	],
	"listed-ingredients": [
		"Ingredientes de una lista",
		"Fracturar con las sustancias de la lista necesita un permiso de otro tipo. Los ingredientes se " +
			"comparan por número CAS; uno sin número, incluso un secreto comercial, no puede descartarse.",
	],
	"filing-fields": [
		"Campos del trámite",
		"Las dependencias piden los mismos datos bajo distintos encabezados. Un campo que la definición no " +
			"lleva se enumera como faltante con su lugar; un valor supuesto no se toma como dado. Aquí no se " +
			"mira si el valor es correcto.",
	],
	notice: [
		"Aviso antes del trabajo",
		"La fecha límite se cuenta hacia atrás desde el evento planeado, en días naturales o hábiles; los " +
			"hábiles usan los feriados del archivo de la jurisdicción. Lo que aún no vence en la fecha de esta " +
			"emisión no se pide; lo vencido tiene que estar registrado como enviado.",
	],
	report: [
		"Informe después del trabajo",
		"La fecha límite se cuenta desde el evento; donde una regla nombra varios, cuenta el primero. Lo que " +
			"aún no vence en la fecha de esta emisión no se pide.",
	],
	"string-notice": [
		"Aviso antes del trabajo en una sarta",
		"Como `notice`, para eventos de una sarta: asentarla, cementarla, probarla.",
	],
	"string-report": [
		"Informe después del trabajo en una sarta",
		"Como `report`, para eventos de una sarta: asentarla, cementarla, probarla.",
	],
	document: [
		"Documento que se adjunta",
		"La regla pide un papel que la definición no lleva (un plano, una declaración jurada, una fianza, un " +
			"informe de laboratorio). Una persona tiene que adjuntarlo y confirmarlo.",
	],
	judgement: [
		"Para que juzgue una persona",
		"Palabras como `adecuado` y `competente`, y hechos que ninguna definición lleva, se muestran a una " +
			"persona y nunca se aprueban con una cuenta.",
	],
	"string-judgement": [
		"Para que juzgue una persona, sarta por sarta",
		"Como `judgement`, para reglas que hablan de una sarta.",
	],
};
