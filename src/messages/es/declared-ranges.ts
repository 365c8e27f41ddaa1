/** Where formulas hold, as `explain` prints it. A range that is signs alone reads alike in both languages. */
export const RANGES: Readonly<Record<string, string>> = {
	"0 < p < 1; the same in every direction": "0 < p < 1; igual en toda dirección",
	"0 < t < D/2; t is the nominal wall": "0 < t < D/2; t es la pared nominal",
	"0 < t < D/2; 0 ≤ n < 1; 0.875 > 2 a; a is the flaw that inspection may pass, as part of the wall":
		"0 < t < D/2; 0 ≤ n < 1; 0.875 > 2 a; a es el defecto que la inspección puede dejar pasar, parte de la pared",
	"0 ≤ wear < 1; as many of each as sections": "0 ≤ desgaste < 1; tantos de cada uno como tramos",
	"2 R_300 not below R_600": "2 R_300 no menor que R_600",
	"D below the ground": "D bajo el terreno",
	"D center to center; σ_s the combined standard deviation of both places along D":
		"D de centro a centro; σ_s la desviación estándar combinada de ambos lugares a lo largo de D",
	"KGD, the width mean over the wing": "KGD, la media del ancho en el ala",
	"KOP ≥ 0, B > 0; the target outside the arc and reached before 90°":
		"KOP ≥ 0, B > 0; el objetivo fuera del arco y alcanzado antes de 90°",
	"MD at or below the path's first station": "MD en la primera estación de la trayectoria o más abajo",
	"MD at or below the path's first station; past the last station the hole is taken straight":
		"MD en la primera estación de la trayectoria o más abajo; pasada la última estación el agujero se toma derecho",
	"MD within the column": "MD dentro de la columna",
	"MD2 > MD1; dogleg below 180°": "MD2 > MD1; pata de perro menor que 180°",
	"MD_2 > MD_1; the hole changes direction between them":
		"MD_2 > MD_1; el agujero cambia de dirección entre ellas",
	"N perforations in each cluster, alike; stress differences above the easiest cluster's; the same near-wellbore loss at each":
		"N disparos por clúster, iguales; diferencias de esfuerzo sobre el del clúster más fácil; la misma " +
		"pérdida junto al pozo en cada uno",
	"PKN, the width mean over the wing": "PKN, la media del ancho en el ala",
	"Poisson's ratio from 0 to 0.5": "relación de Poisson de 0 a 0.5",
	"Poisson's ratio from 0 to 0.5; Biot's coefficient from 0 to 1":
		"relación de Poisson de 0 a 0.5; coeficiente de Biot de 0 a 1",
	"Poisson's ratio from 0 to 0.5; pore pressure no greater than the overburden":
		"relación de Poisson de 0 a 0.5; presión de poro no mayor que la sobrecarga",
	"Q in scf/d at 14.65 psia and 60 °F, MF as a mole fraction; the rule starts at 100 ppm in the system":
		"Q en scf/d a 14.65 psia y 60 °F, MF como fracción molar; la regla empieza en 100 ppm en el sistema",
	"R_600 above R_300": "R_600 mayor que R_300",
	"Re above zero": "Re mayor que cero",
	"Re above zero; roughness less than a twentieth of the diameter":
		"Re mayor que cero; rugosidad menor que un veinteavo del diámetro",
	"TVD_b > 0; the real hole may lie anywhere between":
		"TVD_b > 0; el agujero real puede quedar en cualquier lugar entre ambos",
	"X is the volume on the way from the pump to the place":
		"X es el volumen en el camino de la bomba al lugar",
	"a ball larger than its seat": "una bola mayor que su asiento",
	"a base for each top; the same pressure from every side":
		"una base para cada cima; la misma presión por todos lados",
	"a bottom for each column, from the top down": "una base para cada columna, de arriba hacia abajo",
	"a calculated lift above zero": "levantamiento calculado mayor que cero",
	"a calculated volume above zero": "volumen calculado mayor que cero",
	"a capacity above zero": "capacidad mayor que cero",
	"a closed annulus full of water, nothing bled off; pipe held along its length; free pipe both sides":
		"un espacio anular cerrado lleno de agua, sin purgar nada; tubería sujeta en toda su longitud; " +
		"tubería libre a ambos lados",
	"a closed annulus full of water, nothing bled off; pipe held along its length; free pipe both sides; it warms, from between 60 and 200 °F":
		"un espacio anular cerrado lleno de agua, sin purgar nada; tubería sujeta en toda su longitud; " +
		"tubería libre a ambos lados; se calienta, desde entre 60 y 200 °F",
	"a closed annulus full of water, nothing bled off; pipe held along its length; the outer wall does not give, as behind it stands cement and rock":
		"un espacio anular cerrado lleno de agua, sin purgar nada; tubería sujeta en toda su longitud; la " +
		"pared exterior no cede, pues detrás hay cemento y roca",
	"a closed annulus full of water, nothing bled off; pipe held along its length; the outer wall does not give, as behind it stands cement and rock; it warms, from between 60 and 200 °F":
		"un espacio anular cerrado lleno de agua, sin purgar nada; tubería sujeta en toda su longitud; la " +
		"pared exterior no cede, pues detrás hay cemento y roca; se calienta, desde entre 60 y 200 °F",
	"a continuous release of hydrogen sulfide at 100 ppm": "escape continuo de ácido sulfhídrico a 100 ppm",
	"a depth between the datum and the shoe": "una profundidad entre el nivel de referencia y la zapata",
	"a design factor above zero": "factor de diseño mayor que cero",
	"a duration above zero": "duración mayor que cero",
	"a factor above 0 to 1": "factor mayor que 0 y hasta 1",
	"a gradient for each stretch, from the surface down; the hole full to the depth datum":
		"un gradiente para cada tramo, de la superficie hacia abajo; el agujero lleno hasta el nivel de referencia",
	"a height no less than the pay's": "altura no menor que la de la zona productora",
	"a hole inclined by 5° or more between two stations": "agujero inclinado 5° o más entre dos estaciones",
	"a length above zero": "longitud mayor que cero",
	"a national mean of 2015; states ran from 35 to 184 gal a person a day":
		"media nacional de 2015; los estados iban de 35 a 184 gal por persona por día",
	"a pace above zero": "ritmo mayor que cero",
	"a path with stations": "trayectoria con estaciones",
	"a payload above zero": "carga útil mayor que cero",
	"a piped share from 0 to 1": "parte por tubería de 0 a 1",
	"a planned mass above zero": "masa planeada mayor que cero",
	"a planned volume above zero": "volumen planeado mayor que cero",
	"a point source in the open; no allowance for ground, wind, walls or air":
		"fuente puntual al aire libre; sin contar terreno, viento, muros ni aire",
	"a power above zero; a share above 0 to 1": "potencia mayor que cero; parte mayor que 0 y hasta 1",
	"a puff of hydrogen sulfide at 100 ppm": "escape instantáneo de ácido sulfhídrico a 100 ppm",
	"a rate above zero": "gasto mayor que cero",
	"a reduction from 0 to less than 1": "reducción de 0 a menos de 1",
	"a share from 0 to 1": "parte de 0 a 1",
	"a shoe track shorter than the string": "tramo de zapata más corto que la sarta",
	"a spring that reaches the wall; hole at gauge": "fleje que llega a la pared; agujero a calibre",
	"a step within the ramp": "un paso dentro de la rampa",
	"a strength no greater than the greatest tested; one below the first test is dated by the first test":
		"resistencia no mayor que la mayor probada; una menor que la primera prueba toma el tiempo de la primera",
	"a volume and an efficiency above zero": "volumen y eficiencia mayores que cero",
	"a weight-up, to less than barite's own 35 lb/gal; sacks of 100 lb":
		"densificación, hasta menos que los 35 lb/gal de la barita; sacos de 100 lb",
	"a yield above zero": "rendimiento mayor que cero",
	"above the first row and below the last the hole is as wide as there":
		"arriba del primer renglón y abajo del último el agujero es tan ancho como ahí",
	"all perforations open and alike; discharge coefficient above 0 to 1":
		"todos los disparos abiertos e iguales; coeficiente de descarga mayor que 0 y hasta 1",
	"all three as densities from the depth datum": "los tres como densidades desde el nivel de referencia",
	"an absolute volume above zero": "volumen absoluto mayor que cero",
	"an annulus above zero": "espacio anular mayor que cero",
	"an average gradient from ground level; the rock beside a circulating well is cooler or warmer":
		"gradiente medio desde el terreno; la roca junto a un pozo que circula está más fría o más caliente",
	"an equivalent density that counts from ground level": "densidad equivalente contada desde el terreno",
	"an excess that leaves room": "exceso que deja lugar",
	"an output above zero": "producción mayor que cero",
	"an overburden of 1 psi/ft; pore gradient from 0 to 1 psi/ft":
		"sobrecarga de 1 psi/ft; gradiente de poro de 0 a 1 psi/ft",
	"as many inclinations and azimuths as lengths; each dogleg below 180°":
		"tantas inclinaciones y azimuts como longitudes; cada pata de perro menor que 180°",
	"as many starts as durations, from one day": "tantos inicios como duraciones, desde un día",
	"as the half-length": "como la semilongitud",
	"at each step the place of the least margin in pressure":
		"en cada paso, el lugar con el menor margen de presión",
	"at least one": "por lo menos uno",
	"at least one formation": "por lo menos una formación",
	"at least one fracture": "por lo menos una fractura",
	"at least one moment": "por lo menos un momento",
	"at least one rating": "por lo menos una resistencia",
	"at least one rating; the traveling block not counted":
		"por lo menos una resistencia; sin contar el bloque viajero",
	"at least one record": "por lo menos un registro",
	"at least one seat, each larger than the ball": "por lo menos un asiento, cada uno mayor que la bola",
	"at least one section": "por lo menos una sección",
	"at least one slurry": "por lo menos una lechada",
	"at least one source": "por lo menos una fuente",
	"at least one stage": "por lo menos una etapa",
	"at least one stage; a pace above zero": "por lo menos una etapa; ritmo mayor que cero",
	"at least one test whose temperature is stated": "por lo menos una prueba cuya temperatura se indica",
	"azimuths of both paths from one north": "azimuts de ambas trayectorias desde un mismo norte",
	"below the datum": "abajo del nivel de referencia",
	"blades larger than the pipe and no larger than the hole":
		"aletas mayores que la tubería y no mayores que el agujero",
	"both ends held": "ambos extremos sujetos",
	"both ends held; no buckling; a bottom for each free stretch":
		"ambos extremos sujetos; sin pandeo; una base para cada tramo libre",
	"both paths from one wellhead and one datum; center to center, no uncertainty deducted":
		"ambas trayectorias desde una boca de pozo y un nivel; de centro a centro, sin descontar incertidumbre",
	"both paths from one wellhead and one datum; center to center, no uncertainty deducted; the other path reaches TVD_top":
		"ambas trayectorias desde una boca de pozo y un nivel; de centro a centro, sin descontar " +
		"incertidumbre; la otra trayectoria llega a TVD_top",
	"both places in one datum, degrees, north and east positive; heights are left out":
		"ambos lugares en un mismo datum, en grados, norte y este positivos; sin contar alturas",
	"c in lb of proppant added to a gallon of clean fluid":
		"c en lb de apuntalante añadidas a un galón de fluido limpio",
	"c in lb of proppant per gallon of slurry": "c en lb de apuntalante por galón de lechada",
	"c in lb per gallon of slurry": "c en lb por galón de lechada",
	"c in lb per gallon of slurry, V slurry; zero in the pad, V no more than the total":
		"c en lb por galón de lechada, V de lechada; cero en el colchón, V no mayor que el total",
	"closed pipe; inner diameter less than outer": "tubería cerrada; diámetro interior menor que el exterior",
	"coefficient from 0 to 1; pore pressure no greater than the overburden":
		"coeficiente de 0 a 1; presión de poro no mayor que la sobrecarga",
	"coiled pipe in vertical hole; μ, r and w above zero":
		"tubería enrollada en agujero vertical; μ, r y w mayores que cero",
	"columns one under another, from the depth datum down":
		"columnas una debajo de otra, desde el nivel de referencia",
	"compression above that of helical buckling; r above zero":
		"compresión mayor que la del pandeo helicoidal; r mayor que cero",
	"constant mean width; one-wing rate; leakoff above zero; height taken as wholly permeable":
		"ancho medio constante; gasto de un ala; filtrado mayor que cero; la altura se toma toda como permeable",
	"constant temperature and ideal gas": "temperatura constante y gas ideal",
	"d/2 ≤ r ≤ D/2; elastic": "d/2 ≤ r ≤ D/2; elástico",
	"diameter not below zero": "diámetro no menor que cero",
	"efficiency above 0 to 1": "eficiencia mayor que 0 y hasta 1",
	elastic: "elástico",
	"errors of the two wells independent and alike in every direction; a survey's error grows in proportion to measured depth":
		"errores de los dos pozos independientes e iguales en toda dirección; el error de un registro crece " +
		"en proporción a la profundidad medida",
	"errors of the two wells independent, each by its own model":
		"errores de los dos pozos independientes, cada uno por su propio modelo",
	"errors of the two wells independent; the other well's alike in every direction, growing in proportion to measured depth":
		"errores de los dos pozos independientes; los del otro pozo iguales en toda dirección, y crecen en " +
		"proporción a la profundidad medida",
	"excess not below zero; open hole only": "exceso no menor que cero; solo agujero descubierto",
	"fluids do not mix; open hole holds its volume with the excess; Bingham friction in gauge hole, pipe in the middle; an annulus too wide for the friction formula has none":
		"los fluidos no se mezclan; el agujero descubierto tiene su volumen con el exceso; fricción de " +
		"Bingham en agujero a calibre, tubería centrada; un espacio anular demasiado ancho para la fórmula " +
		"no tiene fricción",
	"four to nine digits before the check digit, the first not zero; a pass proves consistency, not identity":
		"de cuatro a nueve dígitos antes del verificador, el primero distinto de cero; que cierre prueba " +
		"consistencia, no identidad",
	"frictionless wall; pipe heavier than what it displaces; r above zero; w_c at least zero":
		"pared sin fricción; tubería más pesada que lo que desplaza; r mayor que cero; w_c de por lo menos cero",
	"from ≤ to": "desde ≤ hasta",
	"gas lighter than mud; a single bubble, no friction, no gas in solution":
		"gas más ligero que el lodo; una sola burbuja, sin fricción, sin gas disuelto",
	"gas, or oil above its bubble point, at P": "gas, o aceite arriba de su punto de burbuja, a P",
	"gel strength of 500 lbf/100 ft² over the whole column above the zone; hole wider than the pipe":
		"gel de 500 lbf/100 ft² en toda la columna arriba de la zona; agujero más ancho que la tubería",
	"half-length below the height; constant rate, height and leakoff coefficient; no spurt; one-wing rate; Newtonian fluid":
		"semilongitud menor que la altura; gasto, altura y coeficiente de filtrado constantes; sin pérdida " +
		"instantánea; gasto de un ala; fluido newtoniano",
	"half-length below the height; one-wing rate; Newtonian fluid":
		"semilongitud menor que la altura; gasto de un ala; fluido newtoniano",
	"half-length well above the height; constant rate, height and leakoff coefficient; no spurt; one-wing rate; Newtonian fluid":
		"semilongitud bastante mayor que la altura; gasto, altura y coeficiente de filtrado constantes; sin " +
		"pérdida instantánea; gasto de un ala; fluido newtoniano",
	"half-length well above the height; one-wing rate; Newtonian fluid":
		"semilongitud bastante mayor que la altura; gasto de un ala; fluido newtoniano",
	"heavier than water, lighter than the dry mix": "más pesada que el agua, más ligera que la mezcla seca",
	"hours above 0 to 24 h; uptime above 0 to 1":
		"horas desde más de 0 hasta 24 h; tiempo activo mayor que 0 y hasta 1",
	"i from 0 to n": "i de 0 a n",
	"in plan; the path taken straight between its stations":
		"en planta; la trayectoria se toma recta entre sus estaciones",
	"inclination below 180°; a field that is not vertical; revision 5 of the model, axes along true north":
		"inclinación menor que 180°; campo que no es vertical; revisión 5 del modelo, ejes según el norte verdadero",
	"inner diameter less than outer": "diámetro interior menor que el exterior",
	"inner diameter less than outer; pipe in the middle of the hole, not turning":
		"diámetro interior menor que el exterior; tubería centrada en el agujero, sin girar",
	"intervals in order from the bottom up; a volume that they do not hold stands at their top":
		"intervalos en orden del fondo hacia arriba; un volumen que no cabe en ellos queda en su cima",
	"joint > 0": "junta > 0",
	"laminar flow; inner diameter less than outer": "flujo laminar; diámetro interior menor que el exterior",
	"leak-off as a surface pressure measured with the old mud":
		"goteo como presión en superficie medida con el lodo anterior",
	"less proppant than fills the slurry": "menos apuntalante del que llena la lechada",
	"let down with the greatest friction, the shoe as deep as it gets":
		"bajada con la mayor fricción, la zapata tan honda como llega",
	"measured depth strictly increasing; each dogleg below 180°":
		"profundidad medida siempre creciente; cada pata de perro menor que 180°",
	"more pressure on the zone than in it when the plug lands":
		"más presión sobre la zona que dentro de ella al asentar el tapón",
	"moving fluid": "fluido en movimiento",
	"net pressure from 0 to less than the stress contrast; beyond it the model has no bound":
		"presión neta de 0 a menos que el contraste de esfuerzos; más allá el modelo no tiene cota",
	"no leakoff; half-length below the height; Newtonian fluid; time above zero":
		"sin filtrado; semilongitud menor que la altura; fluido newtoniano; tiempo mayor que cero",
	"no leakoff; half-length below the height; one-wing rate; Newtonian fluid":
		"sin filtrado; semilongitud menor que la altura; gasto de un ala; fluido newtoniano",
	"no leakoff; half-length well above the height; one-wing rate; Newtonian fluid":
		"sin filtrado; semilongitud bastante mayor que la altura; gasto de un ala; fluido newtoniano",
	"no leakoff; one-wing rate; Newtonian fluid": "sin filtrado; gasto de un ala; fluido newtoniano",
	"no stiffness, no buckling; a least and a greatest coefficient for casing and for rock; without the traveling block":
		"sin rigidez, sin pandeo; un coeficiente mínimo y uno máximo para TR y para roca; sin el bloque viajero",
	"no stiffness, no buckling; the pipe on the wall all the way":
		"sin rigidez, sin pandeo; la tubería recargada en la pared en todo el camino",
	"not a number where no margin is lost": "no hay número donde no se pierde margen",
	"not a number where the fluids never fall ahead of the pump":
		"no hay número donde los fluidos nunca caen más aprisa que la bomba",
	"nothing holds the height; constant rate, height and leakoff coefficient; no spurt; one-wing rate; Newtonian fluid":
		"nada contiene la altura; gasto, altura y coeficiente de filtrado constantes; sin pérdida " +
		"instantánea; gasto de un ala; fluido newtoniano",
	"one absolute volume for each mass (cement first, per sack of 94 lb)":
		"un volumen absoluto para cada masa (primero el cemento, por saco de 94 lb)",
	"one base, density and gradient for each top": "una base, una densidad y un gradiente para cada cima",
	"one fluid inside and outside the pipe; no drag; a lateral hangs on nothing":
		"un mismo fluido dentro y fuera de la tubería; sin arrastre; una horizontal no cuelga de nada",
	"one fluid inside and outside the pipe; tension from the buoyed weight below, no drag; in a build the tension takes from the weight, in a drop it adds":
		"un mismo fluido dentro y fuera de la tubería; tensión por el peso flotado de abajo, sin arrastre; " +
		"al incrementar ángulo la tensión resta del peso, al reducirlo se suma",
	"one inclination over the influx, below 90°":
		"una sola inclinación a lo largo de la invasión, menor que 90°",
	"one nozzle at least": "por lo menos una tobera",
	"one sack of 94 lb and its water; dry additives make the true density greater":
		"un saco de 94 lb y su agua; los aditivos secos hacen mayor la densidad verdadera",
	"one specific gravity for each mass": "una gravedad específica para cada masa",
	"one state's rule; elsewhere the company's own": "regla de un estado; en otras partes, la de la compañía",
	"one time for each concentration; divided by eight hours however long the shift was":
		"un tiempo para cada concentración; entre ocho horas, dure lo que dure el turno",
	"one top for each bottom": "una cima para cada base",
	"one top for each bottom; a base no shallower than the top":
		"una cima para cada base; la base no más somera que la cima",
	"one-wing rate": "gasto de un ala",
	"one-wing rate; Newtonian fluid": "gasto de un ala; fluido newtoniano",
	"pipe in contact with the hole all along the bend; elastic":
		"tubería en contacto con el agujero en toda la curva; elástico",
	"pipe in contact with the hole; elastic": "tubería en contacto con el agujero; elástico",
	"pipe smaller than the hole; lengths in inches in the beam":
		"tubería menor que el agujero; longitudes en pulgadas en la viga",
	"pore pressure no greater than the overburden": "presión de poro no mayor que la sobrecarga",
	"pump pressure acts inside and does not enter again":
		"la presión de bomba actúa adentro y no entra otra vez",
	"pushed by its own weight alone, the traveling block not counted; no stiffness before it coils; coiled pipe as a full helix":
		"empujada solo por su propio peso, sin contar el bloque viajero; sin rigidez antes de enrollarse; " +
		"enrollada como hélice completa",
	"radial, the width mean over the face": "radial, la media del ancho en la cara",
	"rock with a fracture gradient; margins below zero break it down":
		"roca con gradiente de fractura; con márgenes menores que cero se rompe",
	"rock with a pore pressure; while cement is fluid and carries its full weight":
		"roca con presión de poro; mientras el cemento es fluido y transmite todo su peso",
	"sacks of 94 lb; blended additives come on top": "sacos de 94 lb; los aditivos mezclados van aparte",
	"slot form, inner over outer diameter more than 0.3":
		"forma de ranura, interior entre exterior mayor que 0.3",
	"slot form, inner over outer diameter more than 0.3; pipe in the middle of the hole":
		"forma de ranura, interior entre exterior mayor que 0.3; tubería centrada en el agujero",
	"smooth pipe; tool joints not counted": "tubería lisa; sin contar las juntas",
	"solids from 0 to 0.5 of the slurry": "sólidos de 0 a 0.5 de la lechada",
	"some depth is loaded": "alguna profundidad está cargada",
	"some proppant planned": "se planea apuntalante",
	"specific gravity above zero; not for salts in solution, whose volume in water is tabulated":
		"gravedad específica mayor que cero; no para sales en solución, cuyo volumen en agua está en tablas",
	"spheres in a Newtonian fluid lighter than they are; grain Reynolds number below 1,000":
		"esferas en un fluido newtoniano más ligero que ellas; Reynolds del grano menor que 1,000",
	"steady flow at each moment; fracturing pressure held at its stated value throughout":
		"flujo estable en cada momento; presión de fractura mantenida en su valor indicado",
	"steady pumping into an open fracture; breakdown and screen-out lie above it":
		"bombeo estable en una fractura abierta; ruptura y arenamiento quedan arriba",
	"tests of the blend that is pumped, at the temperature of the hole; before the first test a guess on the high side":
		"pruebas de la mezcla que se bombea, a la temperatura del agujero; antes de la primera prueba, una " +
		"estimación por lo alto",
	"the annulus below the shoe is vertical over that height; a slant holds more":
		"el espacio anular abajo de la zapata es vertical en esa altura; inclinado contiene más",
	"the base lies below the top": "la base queda abajo de la cima",
	"the bottom is no shallower than the top": "la base no es más somera que la cima",
	"the bottom lies below the top": "la base queda abajo de la cima",
	"the first step where it is least": "el primer paso donde es mínimo",
	"the fracture pressure exceeds the column of gas": "la presión de fractura pasa de la columna de gas",
	"the gas reaches surface with pressure left": "el gas llega a superficie con presión",
	"the hole leaves vertical": "el agujero deja la vertical",
	"the hole reaches that inclination": "el agujero alcanza esa inclinación",
	"the neighbor's ground taken at the elevation of this well's":
		"el terreno del vecino se toma a la elevación del de este pozo",
	"the path reaches the depth": "la trayectoria llega a la profundidad",
	"the pipe is no larger than what surrounds it": "la tubería no es mayor que lo que la rodea",
	"the result above zero": "resultado mayor que cero",
	"the result below the datum": "resultado abajo del nivel de referencia",
	"the same fluid inside and outside": "el mismo fluido dentro y fuera",
	"the shoe lies below the datum and the column is full to it":
		"la zapata queda abajo del nivel de referencia y la columna está llena hasta él",
	"the target is no lighter than the fluid in the hole":
		"la buscada no es más ligera que el fluido en el agujero",
	"the traveling block not counted": "sin contar el bloque viajero",
	"the well is at least as deep as the shoe; says nothing of how large an influx may be":
		"el pozo es por lo menos tan hondo como la zapata; no dice nada de qué tan grande puede ser la " +
		"invasión",
	"the wellhead in the datum named; offsets as lengths on the ellipsoid, no grid scale":
		"la boca del pozo en el datum nombrado; desplazamientos como longitudes sobre el elipsoide, sin " +
		"escala de cuadrícula",
	"MD on the string; at a change of force, the side above":
		"MD en la sarta; donde la fuerza cambia, el lado de arriba",
	"steady flow; straight in vertical depth": "flujo estable; recta en profundidad vertical",
	"top and bottom along the hole; negative where it climbs between them":
		"cima y base por el agujero; negativo donde sube entre ellas",
	"top and bottom along the hole; where it climbs between them the pressure falls, and the result is negative":
		"cima y base por el agujero; donde sube entre ellas la presión baja, y el resultado es negativo",
	"total = base fluid + proppant + additives; sums may pass 100 % because each share is a maximum":
		"total = fluido base + apuntalante + aditivos; las sumas pueden pasar de 100 % porque cada parte es " +
		"un máximo",
	"turbulent flow, Re above 4,000": "flujo turbulento, Re mayor que 4,000",
	"viscosity above zero": "viscosidad mayor que cero",
	"washout not below zero": "agrandamiento no menor que cero",
	"water friction above zero": "fricción del agua mayor que cero",
	"weights by vertical depth; p outside at the shoe, at rest; no annular friction, no friction on the wall, one diameter":
		"pesos por profundidad vertical; p afuera en la zapata, en reposo; sin fricción anular ni en la " +
		"pared, un solo diámetro",
	"where yield governs, not collapse: the collapse line stands beside it":
		"donde rige la cedencia y no el colapso: la línea de colapso va al lado",
	"while the annulus is full of the present mud; a strength below the mud's density gives zero":
		"mientras el espacio anular está lleno del lodo actual; una resistencia menor que la densidad del " +
		"lodo da cero",
	"within some tens of miles of the wellhead": "a unas decenas de millas de la boca del pozo",
	"σ_a + p_i < Y_p and Y_pa ≥ 24,000 psi; D/t > 2": "σ_a + p_i < Y_p y Y_pa ≥ 24,000 psi; D/t > 2",
	"σ_a < Y_p and Y_pa ≥ 24,000 psi throughout": "σ_a < Y_p y Y_pa ≥ 24,000 psi en todo",
	"σ_a < Y_p and Y_pa ≥ 24,000 psi; D/t > 2": "σ_a < Y_p y Y_pa ≥ 24,000 psi; D/t > 2",
	"σ_a < Y_p; no change under compression": "σ_a < Y_p; sin cambio bajo compresión",
	"τ_y below PV + YP": "τ_y menor que PV + YP",
	"60 °F and one atmosphere; salt mostly sodium chloride, up to saturation":
		"60 °F y una atmósfera; sal en su mayor parte cloruro de sodio, hasta la saturación",
	"σ_a + p_i < Y_p and Y_pa ≥ 24,000 psi throughout": "σ_a + p_i < Y_p y Y_pa ≥ 24,000 psi en todo",
	"z: the top of a zone that flows, the base of protected water":
		"z: la cima de una zona que fluye, la base del agua protegida",
	"x_1 of the fluid ahead, above zero; x_2 of the one that displaces it":
		"x_1 del fluido de adelante, mayor que cero; x_2 del que lo desplaza",
	"within some tens of miles of the wellhead; all in one datum":
		"a unas decenas de millas de la boca del pozo; todo en un mismo datum",
	"pipe in the middle of the hole; on the narrow side it takes more":
		"tubería al centro del agujero; en el lado angosto hace falta más",
	"p above zero": "p mayor que cero",
	"one top for each bottom; stretches that do not overlap":
		"una cima por cada base; tramos que no se traslapan",
	"one rate for each time, in order of time": "un gasto por cada tiempo, en orden de tiempo",
	"one gel strength over the whole column; no volume is lost into rock":
		"una sola resistencia de gel en toda la columna; no se pierde volumen hacia la roca",
	"more pressure on the zone than in it when the plug lands; one gel strength over the whole column":
		"más presión sobre la zona que en ella al asentar el tapón; una sola resistencia de gel en toda la columna",
	"inner diameter less than outer; standoff above 0, 1 in the middle of the hole":
		"diámetro interior menor que el exterior; standoff mayor que 0, y 1 al centro del agujero",
	"in plan; straight between corners and between points of the path":
		"en planta; recto entre vértices y entre puntos de la trayectoria",
	"friction of water above zero at the recorded average rate":
		"fricción del agua mayor que cero al gasto medio registrado",
	"friction near the wellbore has died away when the pressure is read":
		"la fricción junto al pozo ya se disipó cuando se lee la presión",
	"average pressure is taken over the whole stage": "la presión media se toma sobre toda la etapa",
	"annulus full of packer fluid; tubing full of gas, shut in":
		"espacio anular lleno de fluido empacador; tubería de producción llena de gas y cerrada",
	"an index for comparison of places, and no forecast of a channel":
		"un índice para comparar lugares, y no el pronóstico de un canal",
	"a recorded volume above zero": "un volumen registrado mayor que cero",
	"a density for each share, shares above zero together":
		"una densidad por cada proporción; las proporciones juntas, mayores que cero",
	"a capacity for each length; excess not below zero":
		"una capacidad por cada longitud; exceso no menor que cero",
	"A_0 in free pipe above A_100 in full bond; below full bond it is 100 %, above free pipe 0":
		"A_0 en tubería libre mayor que A_100 en adherencia total; por debajo de esta es 100 %, por encima de tubería libre 0",
	"A_0 in free pipe above A_100 in full bond": "A_0 en tubería libre mayor que A_100 en adherencia total",
	"1 or more moves the fluid on the narrow side; buoyancy helps in steep hole and not in level hole":
		"1 o más mueve el fluido del lado angosto; la flotación ayuda en agujero empinado y no en agujero horizontal",
};
