import type { Explained } from "./explained.ts";

/** Checks that practice is judged by, for who writes rules. */
export const CHECKS_OF_PRACTICE: Readonly<Record<string, Explained>> = {
	"mud-over-pore": [
		"Densidad del lodo contra la presión de poro",
		"Un lodo más ligero que la roca deja fluir el pozo en cuanto paran las bombas. El margen sobre la " +
			"mayor presión de poro del agujero descubierto tiene que cubrir lo que se pierde al sacar tubería " +
			"(margen de viaje).",
	],
	"circulating-density": [
		"Densidad de circulación contra la roca más débil",
		"Fricción según la práctica recomendada del API sobre hidráulica para lodo Herschel–Bulkley donde se " +
			"dan las lecturas del viscosímetro; si no, Bingham. Agujero a calibre, tubería centrada y sin girar, " +
			"barrena en el fondo. El lodo se toma frío y sin comprimir; los recortes, como se indican.",
	],
	surge: [
		"Presión de surgencia al meter tubería",
		"Velocidad constante con la constante de adherencia de la gráfica de Burkhardt, tubería cerrada " +
			"abajo; sarta de perforación a su velocidad de viaje y TR a la suya, la que deje menos. No se " +
			"cuentan tirones al arrancar y parar ni geles.",
	],
	swab: [
		"Succión al sacar tubería",
		"La succión tiene que caber en el margen de viaje, o la roca fluye al sacar tubería. Velocidad " +
			"constante, tubería cerrada abajo; una barrena embolada y los geles succionan más.",
	],
	"rock-over-mud": [
		"Densidad del lodo contra la roca más débil",
		"Al circular se suma al lodo lo que toma la fricción, y al meter tubería la surgencia. El margen en " +
			"reposo tiene que dejar lugar para ambas.",
	],
	"kick-tolerance": [
		"Tolerancia al brote",
		"El brote es una sola burbuja de gas a la mayor presión de poro del agujero descubierto más la " +
			"intensidad del brote, contenida por lo más débil entre prueba de zapata y roca. Un lodo arriba de " +
			"la presión de poro la aumenta; uno abajo la reduce.",
	],
	"preventer-rating": [
		"Presión de trabajo de los preventores",
		"Los preventores tienen que aguantar lo que el agujero siguiente puede traer a superficie: gas a " +
			"superficie o lo que aguanta la zapata, lo que sea menor.",
	],
	"preventer-test": [
		"Prueba de preventores",
		"Una prueba sin tapón presiona la TR de abajo. Se remedia indicando un tapón de prueba. La prueba de " +
			"baja presión halla fugas que la alta sella.",
	],
	"burst-factor": [
		"Estallamiento",
		"Todos los casos de carga de la sarta, descontados desgaste y temperatura. Rige el factor de diseño " +
			"escrito en la definición; donde la sarta no tiene uno propio, el de las bases de diseño.",
	],
	"collapse-factor": [
		"Colapso",
		"Todos los casos de carga de la sarta, descontados de la resistencia tensión axial, desgaste y " +
			"temperatura.",
	],
	"tension-factor": [
		"Tensión",
		"Cargas al correr, jalar, probar con presión y en servicio. Una sarta sujeta por cemento y colgador " +
			"reparte su cambio de fuerza en la longitud que cuelga libre.",
	],
	"triaxial-factor": [
		"Esfuerzo triaxial",
		"Von Mises en la pared, con la flexión por la pata de perro. No se cuenta el pandeo.",
	],
	overpull: [
		"Sobretensión",
		"Lo que puede jalarse sobre el peso al levantar antes de que la parte más débil llegue a su factor, " +
			"si la sarta se atora.",
	],
	reach: [
		"Llegada al fondo",
		"Una tubería comprimida más allá del pandeo helicoidal se enrolla, y arrastra más cuanto más se " +
			"empuja, hasta que se traba. No se cuentan rotación, peso del bloque viajero ni rigidez antes de " +
			"enrollarse.",
	],
	"slack-off": [
		"Peso que queda en el gancho",
		"Con poco peso en el gancho, un escalón o un tramo pegajoso detiene la sarta. Se cuenta el arrastre " +
			"de la tubería enrollada.",
	],
	"casing-test-limit": [
		"Prueba de presión contra la sarta",
		"Una prueba bien por debajo de la resistencia comprueba la sarta sin dañarla. Cuenta lo menor entre " +
			"tubería y cople.",
	],
	"gas-tightness": [
		"Gas detrás de conexiones API",
		"Las roscas API sellan con su grasa. Arriba de una presión moderada de gas se prefiere una conexión " +
			"probada para gas.",
	],
	"sour-service": [
		"Tubería en servicio amargo",
		"El sulfuro agrieta el acero resistente cuando está frío. Un tramo se juzga a la temperatura de la " +
			"roca en su parte superior; no se mira la tubería enfriada por el bombeo.",
	],
	"exposure-radius": [
		"Radio de exposición",
		"La forma del radio en la regla depende de la fracción y del caudal de gas que podría escapar. No es " +
			"una distancia segura, y no conoce ni terreno ni clima.",
	],
	"cement-fracture-margin": [
		"Cemento contra fractura",
		"El cemento es más pesado que el lodo y suma fricción. El margen se toma mientras se mueve el " +
			"trabajo y ya en su lugar; cerca de la superficie es de pocos psi en el mejor caso.",
	],
	"cement-pore-margin": [
		"Cemento contra presión de poro",
		"Un espaciador ligero puede dejar fluir la roca mientras pasa. El cemento al fraguar pierde peso más " +
			"allá de esto: vea el potencial de flujo de gas.",
	],
	"plug-bump": [
		"Presión al asentar el tapón",
		"Tapones, equipo de flotación y cabeza de cementación tienen resistencias propias que la definición " +
			"no lleva: compárelas ese día.",
	],
	"thickening-time": [
		"Tiempo de espesamiento",
		"El cemento que fragua antes de que asiente el tapón deja la tubería llena. El margen cubre un paro " +
			"de las bombas.",
	],
	standoff: [
		"Centralización (standoff)",
		"El lodo se queda en el lado angosto de la tubería recargada en la pared. La centralización se toma " +
			"en los centralizadores y entre ellos; cuenta la menor.",
	],
	"spacer-contact": [
		"Contacto del espaciador",
		"El espaciador adelgaza y desplaza el lodo. Sirve el tiempo o la longitud; basta cualquiera.",
	],
	"density-order": [
		"Orden de densidades",
		"Un fluido más ligero detrás de uno más pesado se digita a través de él. Cada fluido debe ser más " +
			"pesado que el que va adelante.",
	],
	"gas-flow-potential": [
		"Flujo de gas en cemento que fragua",
		"El cemento que gelifica ya no transmite su peso. Donde puede perder mucho más que el sobrebalance, " +
			"el gas entra antes del fraguado: acorte la columna, aumente el sobrebalance, o use una lechada " +
			"comprobada contra gas.",
	],
	silica: [
		"Sílice para resistencia en caliente",
		"En roca caliente el cemento Portland pierde resistencia y se vuelve permeable si no lleva sílice.",
	],
	"strength-test": [
		"Prueba de resistencia del cemento",
		"Una prueba más caliente que la roca promete una resistencia que el cemento del agujero alcanza " +
			"después.",
	],
	"cementing-line-test": [
		"Prueba de la línea de cementación",
		"Una línea que no se prueba arriba de lo que necesita el trabajo puede reventar con gente al lado.",
	],
	"cement-class-depth": [
		"Clase de cemento para la profundidad",
		"Las clases A, B y C son para roca somera y fría; más abajo se usan las clases G y H con " +
			"retardadores y aditivos adecuados al calor.",
	],
	"float-equipment": [
		"Equipo de flotación",
		"El equipo de flotación impide que el cemento regrese; dos válvulas, para que pueda fallar una.",
	],
	"maximum-pull": [
		"Jalón máximo contra la sarta",
		"La cuadrilla jala hasta el número de su hoja; la sarta debe aguantarlo.",
	],
	"production-packer": [
		"Empacador de producción contra el cemento",
		"Un empacador asentado donde la TR no está cementada deja un camino hacia arriba a una fuga debajo " +
			"de él.",
	],
	"preventers-over-hole": [
		"Preventores sobre cada agujero",
		"Todo agujero abajo del conductor se perfora con preventores, y el que arriba de ellos encuentra " +
			"gas, con un desviador.",
	],
	"planned-shoe-test": [
		"Prueba de zapata planeada",
		"Una prueba muestra lo que aguanta la zapata antes de que el agujero de abajo dependa de ella. Una " +
			"planeada arriba de lo que aguanta la roca la rompe.",
	],
	"pressure-boundary": [
		"Elementos de la frontera de presión",
		"Un elemento que no se nombra no se compara con nada.",
	],
	"casing-lift": [
		"Sujeción durante la cementación",
		"Fluido ligero adentro y lechada pesada afuera pueden empujar fuera del agujero una sarta corta.",
	],
	"water-zone-record": [
		"Cemento registrado junto al agua",
		"El agua junto a tubería sin cemento no está aislada, dijera lo que dijera el plan.",
	],
	"pressure-ladder": [
		"Orden de las presiones de tratamiento",
		"Cada límite tiene que actuar antes de llegar al siguiente: paros automáticos, luego válvula de " +
			"alivio, luego el máximo, abajo de todo elemento por su factor, con la línea probada arriba de él.",
	],
	"friction-reduction": [
		"Pérdida de la reducción de fricción",
		"A veces el reductor de fricción llega tarde, es débil o se acaba. La presión esperada con la mitad " +
			"de él muestra qué pasa entonces.",
	],
	"expected-pressure": [
		"Presión de tratamiento esperada",
		"Un trabajo que necesita más que su primer paro automático detiene sus bombas en un día común.",
	],
	"toe-opening": [
		"Válvula de la punta contra la prueba de la TR y el máximo",
		"Una válvula que se abre con la prueba de la TR termina la prueba; una que ninguna presión permitida " +
			"abre termina el trabajo.",
	],
	"annulus-stop": [
		"Paro por presión anular contra la presión permisible",
		"Un paro arriba de la presión permisible de un espacio anular puede dañar una sarta antes de que " +
			"termine el trabajo.",
	],
	"annulus-rise": [
		"Aumento anular contra su paro",
		"Un aumento que no necesita fuga debe quedar abajo del paro, o el paro no distingue una fuga del " +
			"trabajo mismo.",
	],
	"leak-into-annulus": [
		"Fuga de la sarta tratada",
		"Si la sarta tratada fuga, la TR que la rodea recibe la presión. La aguanta, o una válvula de alivio " +
			"la descarga.",
	],
	"wellhead-rating": [
		"Presión de trabajo del cabezal",
		"El cabezal aguanta la mayor presión de cada fase. No se mira una herramienta de aislamiento.",
	],
	"confining-bed": [
		"Capa confinante",
		"Una capa que resiste el crecimiento mantiene la fractura en el objetivo. Los modelos ilustran y no " +
			"prometen nada.",
	],
	"fracture-separation": [
		"Del agua protegida a las fracturas",
		"Roca entre la cima más alta de fractura modelada y el agua protegida, en vertical.",
	],
	"channel-index": [
		"Índice de riesgo de canal",
		"Criterios del desplazamiento laminar eficaz (Couturier y otros, de memoria) junto con el standoff; " +
			"se cuenta cada uno que no se cumple, y la cuenta es nuestra. Dice en qué lugar es más probable " +
			"que se quede lodo, y no que ahí se quede.",
	],
	"water-blend": [
		"Densidad del agua ya mezclada",
		"La sal hace más pesada el agua, y con ella la columna dentro de la tubería: un fluido base " +
			"declarado como agua dulce da una presión de superficie demasiado alta y una presión en el fondo " +
			"demasiado baja.",
	],
	"abandonment-plan": [
		"Zonas que cierra el plan de abandono",
		"Una zona se cierra con un tapón a través de su cima o apenas arriba de ella; el agua protegida, " +
			"con uno a través de su base. Al final deciden las reglas de taponamiento de la autoridad y el " +
			"cemento por fuera de la tubería.",
	],
	"chart-record": [
		"Gráfica del tratamiento contra lo registrado",
		"Lo registrado se compara con lo diseñado; antes de que el trabajo quede registrado la revisión no " +
			"aplica. Decide la gráfica que más se aparta. Cualquiera de los dos puede estar mal.",
	],
	"shut-in-gradient-record": [
		"Gradiente al cierre",
		"Una fractura abre contra el menor esfuerzo. Desde más o menos el peso de la roca de encima, el " +
			"menor esfuerzo puede ser ese peso, y la fractura queda horizontal o ha dado con una que lo está.",
	],
	"bonded-interval": [
		"Intervalo adherido contra la roca",
		"Un tramo cuenta como adherido desde el índice que nombra la guía, o donde quien lo interpretó lo " +
			"califica de bueno; de los dos vale el peor. Decide el tramo más largo sin interrupción contra la " +
			"roca. Un registro no ve un canal más angosto que su resolución, y lee bajo donde un microanular " +
			"separa el cemento de la tubería.",
	],
	"sustained-annulus-pressure": [
		"Presión del espacio anular que vuelve",
		"La presión que viene del calor no vuelve una vez purgada; la que vuelve se alimenta por una fuga o " +
			"a lo largo del cemento. Una lectura que no se vigiló después de la purga no muestra ni una cosa " +
			"ni la otra.",
	],
	"squeeze-record": [
		"Cementación forzada con prueba",
		"Una cementación forzada que no se probó después no ha demostrado nada.",
	],
	"water-seal-record": [
		"Sello demostrado a través del agua protegida",
		"Se cuentan las profundidades donde ninguna camisa de cemento es más que planeada o calculada, o " +
			"donde un registro de adherencia no halló ninguna adherida. El cemento visto en superficie " +
			"muestra que la columna llegó, y no que esté libre de canales.",
	],
	"transition-time": [
		"Tiempo de transición de la lechada",
		"Mientras una lechada gelifica transmite cada vez menos su presión y todavía no sella. Cuanto más " +
			"corto ese tiempo, menos gas puede entrar.",
	],
	"simultaneous-work": [
		"Trabajo en la plataforma al mismo tiempo",
		"Un equipo de perforación, una grúa o fluido bombeado en el pozo de al lado ponen en peligro a la " +
			"gente de aquí, y al revés. Alguien tiene que llevar el plan de ambos.",
	],
	"dwelling-noise": [
		"Ruido en la casa más cercana",
		"Las bombas trabajan de día y de noche. El nivel se calcula de uno medido, solo por la distancia; el suelo, " +
			"el viento y las paredes no se cuentan, así que una medición en la casa vale más.",
	],
	"treatment-after-drilling": [
		"Orden de la perforación y el tratamiento",
		"Un pozo se trata después de perforarlo y revestirlo; fechas que dicen otra cosa son casi siempre " +
			"un descuido.",
	],
	"proppant-concentration": [
		"Concentración de apuntalante para el fluido",
		"El agua delgada lleva poco apuntalante; lo que pasa de lo que lleva se asienta en la tubería y " +
			"arena el pozo.",
	],
	"wellhead-at-test": [
		"Cabezal en la prueba de la TR",
		"Una prueba de la TR carga el cabezal que esté puesto. Se toma el de perforación, salvo que la " +
			"definición diga que está puesto el de tratamiento.",
	],
	"lead-slurry-foot": [
		"Lechada delantera contra el intervalo tratado",
		"La lechada delantera es ligera y débil; el intervalo que se trata lo cubre la de amarre.",
	],
	"spacer-rheology": [
		"Viscosidad del espaciador",
		"Un espaciador limpia el lodo solo si es más espeso que el lodo y menos que el cemento. Donde no se " +
			"indica su viscosidad, su fricción se toma como la del lodo.",
	],
	"well-barriers": [
		"Dos barreras en cada fase",
		"Donde puede fluir gas, aceite o presión mayor que la normal, dos barreras lo separan de la " +
			"superficie, cada una completa por sí sola; en otra parte, una. Los elementos vienen de las TR, " +
			"el cemento, el lodo, el cabezal, los preventores y el empacador; la tubería de producción, el " +
			"árbol y los tapones se declaran en `well_barriers`.",
	],
	"single-failure": [
		"Falla única de un elemento de barrera",
		"Falla un elemento a la vez. Entonces la presión la aguanta lo que está detrás, o la deja salir una " +
			"válvula de alivio. En superficie; una fuga de la sarta tratada tiene su propia revisión.",
	],
};
