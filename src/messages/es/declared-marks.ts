/** What a formula’s citation says beside the key of its source. */
export const MARKS: Readonly<Record<string, string>> = {
	"(c), radius of exposure (memory)": "(c), radio de exposición (de memoria)",
	"500 to 1,000 psi over the final circulating pressure":
		"500 a 1,000 psi sobre la presión final de circulación",
	"500 to 1,000 psi over the final circulating pressure, friction at the last slow rate left out":
		"500 a 1,000 psi sobre la presión final de circulación, sin la fricción al último gasto lento",
	"well barrier schematics and element tables; from memory, in our own form":
		"esquemas de barreras y tablas de elementos; de memoria, en forma propia",
	"number of barriers by source of inflow; from memory":
		"número de barreras según la fuente de flujo; de memoria",
	"failure of one element of a barrier; from memory": "falla de un elemento de una barrera; de memoria",
	"8-hour time-weighted average": "promedio ponderado en 8 horas",
	"82 gal a person a day at home, United States, 2015":
		"82 gal por persona al día en casa, Estados Unidos, 2015",
	"Annex C, continuous release, night": "Anexo C, emisión continua, de noche",
	"Annex C, release rate": "Anexo C, gasto de emisión",
	"Annex C, sample C.11": "Anexo C, muestra C.11",
	"Annex C, sample C.9": "Anexo C, muestra C.9",
	"Carter's appendix": "apéndice de Carter",
	"Dogleg severity, radius of curvature method":
		"Severidad de la pata de perro, método del radio de curvatura",
	"Fanning equation in field units; 25.8 derives as 25.806":
		"ecuación de Fanning en unidades de campo; 25.8 se deriva como 25.806",
	"KGD: width of a crack pressed open along its length, after Sneddon":
		"KGD: ancho de una grieta abierta a presión en su longitud, según Sneddon",
	"PKN, constant rate along the wing": "PKN, gasto constante a lo largo del ala",
	"PKN, falling rate along the wing": "PKN, gasto decreciente a lo largo del ala",
	"PKN: elliptical cross-section of a pressurized crack, after Sneddon":
		"PKN: sección elíptica de una grieta presurizada, según Sneddon",
	"Reynolds number in field units": "número de Reynolds en unidades de campo",
	"Table 1-2, burst": "Tabla 1-2, estallido",
	"Table 1-2, surface casing: depth × (fracture gradient − 0.1)":
		"Tabla 1-2, TR superficial: profundidad × (gradiente de fractura − 0.1)",
	"Table 1-2, tension 2: buoyant weight plus test pressure":
		"Tabla 1-2, tensión 2: peso flotado más presión de prueba",
	"Table 1-4, collapse: plastic salt, 1 psi/ft": "Tabla 1-4, colapso: sal plástica, 1 psi/ft",
	"Table 1-5, tension": "Tabla 1-5, tensión",
	"Table P-21, pounds per gallon of slurry": "Tabla P-21, libras por galón de lechada",
	"Table P-21, slurry density": "Tabla P-21, densidad de la lechada",
	"Table P-21, slurry yield and clean fraction": "Tabla P-21, rendimiento de la lechada y fracción limpia",
	"a column counts where it spans the depth": "una columna cuenta donde abarca la profundidad",
	"a hole of bit size": "agujero del diámetro de la barrena",
	"a layer counts where it spans the zone from top to base":
		"una capa cuenta donde abarca la zona de cima a base",
	"a part load is a load": "una carga parcial cuenta como una carga",
	"a plan is an exact list of arcs and straights": "un plan es una lista exacta de arcos y rectas",
	"a record that weighs all proppant of a stage together is divided as planned":
		"un registro que pesa junto todo el apuntalante de una etapa se reparte como en el plan",
	"addition of levels": "suma de niveles",
	"all loads within the shortest time, evenly; deliveries that bunch make it busier":
		"todas las cargas en el menor tiempo, parejas; las entregas que se juntan lo hacen más intenso",
	"an average; the busiest day is busier": "un promedio; el día más cargado es mayor",
	"arc length over angle": "longitud del arco entre ángulo",
	ballooning: "efecto de abombamiento",
	"ballooning and temperature effect; length kept between fixed points":
		"efecto de abombamiento y de temperatura; longitud fija entre puntos fijos",
	"bending force": "fuerza de flexión",
	"both elevations above one sea level": "ambas elevaciones sobre el mismo nivel del mar",
	"both from the same datum": "ambas desde el mismo nivel de referencia",
	"effective force: buckling by the fictitious force": "fuerza efectiva: pandeo por la fuerza ficticia",
	"build rate": "ritmo de incremento",
	"buoyancy factor": "factor de flotación",
	"buttress thread casing joint strength": "resistencia de la junta de TR con rosca buttress",
	"casing weight and tension on a curved hole, from memory":
		"peso y tensión de la TR en un agujero curvo, de memoria",
	"casing weight, from memory": "peso de la TR, de memoria",
	"cement gains strength; a straight line lies under a curve that flattens":
		"el cemento gana resistencia; una recta queda por debajo de una curva que se aplana",
	"ch. 1, annular capacity; the constant from exact definitions":
		"cap. 1, capacidad anular; la constante, de definiciones exactas",
	"ch. 1, capacity formulas; the constant from exact definitions":
		"cap. 1, fórmulas de capacidad; la constante, de definiciones exactas",
	"ch. 1, equivalent circulating density": "cap. 1, densidad equivalente de circulación",
	"ch. 1, formation integrity and leak-off tests": "cap. 1, pruebas de integridad y de goteo",
	"ch. 1, hydrostatic pressure": "cap. 1, presión hidrostática",
	"ch. 1, mud weight increase with barite": "cap. 1, aumento de densidad del lodo con barita",
	"ch. 1, pressure gradient": "cap. 1, gradiente de presión",
	"ch. 1, pressure to equivalent mud weight": "cap. 1, presión a densidad equivalente de lodo",
	"ch. 1, pump strokes: volume over pump output":
		"cap. 1, emboladas: volumen entre desplazamiento de la bomba",
	"ch. 1, temperature conversion and gradient": "cap. 1, conversión de temperatura y gradiente",
	"ch. 2, a sack of cement is 94 lb": "cap. 2, un saco de cemento pesa 94 lb",
	"ch. 2, cement additive calculations": "cap. 2, cálculos de aditivos del cemento",
	"ch. 2, cement volumes with excess": "cap. 2, volúmenes de cemento con exceso",
	"ch. 2, liquid additives by absolute volume": "cap. 2, aditivos líquidos por volumen absoluto",
	"ch. 2, mix water requirement": "cap. 2, requerimiento de agua de mezcla",
	"ch. 2, number of sacks required": "cap. 2, número de sacos requeridos",
	"ch. 2, water requirement and slurry yield for a wanted density":
		"cap. 2, requerimiento de agua y rendimiento para una densidad deseada",
	"ch. 4, Bingham plastic, turbulence criteria": "cap. 4, plástico de Bingham, criterios de turbulencia",
	"ch. 4, Newtonian and effective viscosity": "cap. 4, viscosidad newtoniana y efectiva",
	"ch. 4, adjusted maximum allowable shut-in casing pressure":
		"cap. 4, presión máxima permisible de cierre en TR, ajustada",
	"ch. 4, annular flow, Bingham plastic": "cap. 4, flujo anular, plástico de Bingham",
	"ch. 4, kick tolerance factor": "cap. 4, factor de tolerancia al brote",
	"ch. 4, maximum formation pressure": "cap. 4, presión máxima de formación",
	"ch. 4, maximum shut-in casing pressure": "cap. 4, presión máxima de cierre en TR",
	"ch. 4, pipe flow, Bingham plastic": "cap. 4, flujo en tubería, plástico de Bingham",
	"ch. 4, slot approximation": "cap. 4, aproximación de ranura",
	"ch. 8 sec. 2": "cap. 8, sec. 2",
	"ch. 8, build-and-hold": "cap. 8, incrementar y mantener",
	"circular arc in a vertical plane; engineering form as in bourgoyne-1986, ch. 8":
		"arco circular en un plano vertical; forma de ingeniería como en bourgoyne-1986, cap. 8",
	"circular normal distribution in a plane: share within r is 1 − exp(−r²/2σ²)":
		"distribución normal circular en un plano: la parte dentro de r es 1 − exp(−r²/2σ²)",
	"clean fluid and absolute volume of proppant": "fluido limpio y volumen absoluto del apuntalante",
	closure: "cierre",
	collapse: "colapso",
	"collapse under axial tension, before the 2015 addendum":
		"colapso con tensión axial, antes de la adenda de 2015",
	"collapse under combined load, 2015 addendum (from memory; abstract read)":
		"colapso con cargas combinadas, adenda de 2015 (de memoria; resumen leído)",
	"collapse, D/t limits": "colapso, límites de D/t",
	"collapse, empirical constants": "colapso, constantes empíricas",
	"collapse, four regimes; zero axial load and internal pressure":
		"colapso, cuatro regímenes; carga axial y presión interna nulas",
	"contact time is how long a fluid flows past a place":
		"el tiempo de contacto es lo que tarda un fluido en pasar por un lugar",
	"convergence or declination counted east of true north":
		"convergencia o declinación contada al este del norte verdadero",
	"cycle time over hours worked and uptime": "tiempo de ciclo sobre las horas trabajadas y la disponibilidad",
	"d horizontal, from the treated interval": "d horizontal, desde el intervalo tratado",
	"deflection of a beam held at both ends, under tension, from memory":
		"flecha de una viga empotrada en ambos extremos, bajo tensión, de memoria",
	"derating of carbon steel": "reducción del acero al carbono",
	diameters: "diámetros",
	"direct geodesic problem": "problema geodésico directo",
	"dogleg, half-angle form": "pata de perro, forma del ángulo medio",
	"drag of a sphere": "arrastre de una esfera",
	"drag reduction is against the solvent in the same pipe, bounded by the asymptote":
		"la reducción de arrastre es contra el solvente en la misma tubería, limitada por la asíntota",
	"each load is a trip in and a trip out": "cada carga es un viaje de ida y uno de vuelta",
	"elastic collapse": "colapso elástico",
	"exact where the pad fraction and the exponent are (1 − η)/(1 + η)":
		"exacta donde la fracción de colchón y el exponente son (1 − η)/(1 + η)",
	"exact: 9702/(60 · 3π) = 17.157": "exacta: 9702/(60 · 3π) = 17.157",
	"trapezoids between the readings": "trapecios entre las lecturas",
	"effective laminar displacement, density 10 %; from memory":
		"desplazamiento laminar efectivo, densidad 10 %; de memoria",
	"effective laminar displacement, friction 20 %; from memory":
		"desplazamiento laminar efectivo, fricción 20 %; de memoria",
	"effective laminar displacement, minimum pressure gradient; from memory":
		"desplazamiento laminar efectivo, gradiente mínimo de presión; de memoria",
	"effective laminar displacement, each criterion; to count them is ours; from memory":
		"desplazamiento laminar efectivo, cada criterio; contarlos es nuestro; de memoria",
	"ch. 4, pressure to break gel in an annulus, with the gap on the narrow side":
		"cap. 4, presión para romper gel en un espacio anular, con la abertura del lado angosto",
	"density of formation water at standard conditions; from memory":
		"densidad del agua de formación en condiciones estándar; de memoria",
	"mass over volume; volumes add within a part in a thousand":
		"masa entre volumen; los volúmenes se suman con error de uno en mil",
	"1, cement volume with the pipe out": "1, volumen de cemento con la tubería afuera",
	"n_i, plugs that close a zone": "n_i, tapones que cierran una zona",
	"a plug across each zone's top, or within 200 ft above it":
		"un tapón frente a la cima de cada zona, o a menos de 200 pies arriba",
	"critical static gel strength; from memory": "resistencia de gel estática crítica; de memoria",
	"pressure that a gelling column loses; from memory":
		"presión que pierde una columna que gelifica; de memoria",
	"100 to 500 lbf/100 ft²": "de 100 a 500 lbf/100 ft²",
	"mass of clean fluid and proppant over their volume":
		"masa de fluido limpio y apuntalante entre su volumen",
	"the pipe is full of the flush fluid when the pumps stop":
		"la tubería está llena del fluido de desplazamiento cuando paran las bombas",
	"pressure in the fracture is taken as that at shut-in; columns as pumped and as flushed":
		"la presión en la fractura se toma como la del cierre; columnas como se bombearon y desplazadas",
	"what is left of the recorded friction is in the pipe":
		"lo que queda de la fricción registrada está en la tubería",
	"a calculated top is no better than the excess that it rests on":
		"una cima calculada no es mejor que el exceso en que se apoya",
	"amplitude against bond index on a semilog chart: 0 % at free pipe, 100 % at full bond":
		"amplitud contra índice de adherencia en gráfica semilogarítmica: 0 % en tubería libre, 100 % con adherencia total",
	"sustained casing pressure: pressure that rebuilds after it is bled down (memory)":
		"presión anular sostenida: la que regresa después de purgarla (de memoria)",
	"n_i, sheaths across a zone that are verified": "n_i, capas comprobadas frente a una zona",
	"excess is added to open hole only": "el exceso se agrega solo al agujero descubierto",
	"expected < kick-outs < relief ≤ maximum ≤ each rating × factor":
		"esperada < paros de bomba < alivio ≤ máxima ≤ cada resistencia × factor",
	"exponent of about 5": "exponente de alrededor de 5",
	"gallons per thousand gallons of base fluid": "galones por mil galones de fluido base",
	"gas flow potential; from memory": "potencial de flujo de gas; de memoria",
	"horizontal stress from uniaxial strain": "esfuerzo horizontal por deformación uniaxial",
	"hydraulic lift of casing": "levantamiento hidráulico de la TR",
	"hydraulic lift of casing; annular friction added outside":
		"levantamiento hidráulico de la TR; se suma la fricción anular exterior",
	"in Fanning form": "en la forma de Fanning",
	"inclined hole; vertical hole as the least; from memory":
		"agujero inclinado; el vertical como mínimo; de memoria",
	"internal pressure leak resistance at the E7 plane":
		"resistencia a fuga por presión interna en el plano E7",
	"internal pressure resistance, the least of the three":
		"resistencia a presión interna, la menor de las tres",
	"internal yield pressure of couplings; thread dimensions of api-5b":
		"presión interna de cedencia de coples; dimensiones de rosca de api-5b",
	"internal yield pressure of pipe (Barlow)": "presión interna de cedencia de la tubería (Barlow)",
	"interpolation on the minimum-curvature arc": "interpolación en el arco de mínima curvatura",
	"interpolation on the minimum-curvature arc, inverted":
		"interpolación en el arco de mínima curvatura, inversa",
	"interval of survey stations": "intervalo de las estaciones de registro",
	"inverse geodesic problem": "problema geodésico inverso",
	"inverse of c/(1 + cV)": "inversa de c/(1 + cV)",
	"kick intensity counted from the highest pore pressure of the open hole":
		"intensidad del brote contada desde la mayor presión de poro del agujero descubierto",
	"landing of a surveyed hole": "aterrizaje de un pozo con registro",
	"least distance between two lines in space": "menor distancia entre dos líneas en el espacio",
	"least distance between straight pieces": "menor distancia entre tramos rectos",
	"least distance from a point to a line of straight pieces":
		"menor distancia de un punto a una línea de tramos rectos",
	"lift agrees with the columns if the cement is where it should be":
		"el levantamiento coincide con las columnas si el cemento está donde debe",
	"mass of one sack and its water over its slurry volume":
		"masa de un saco y su agua entre su volumen de lechada",
	"maximum drag reduction asymptote": "asíntota de máxima reducción de arrastre",
	"maximum ingredient concentration in the fluid, percent by mass":
		"concentración máxima del ingrediente en el fluido, porcentaje en masa",
	"minimum curvature": "mínima curvatura",
	"net pressure is what the fracture holds above closure":
		"la presión neta es lo que la fractura retiene sobre el cierre",
	"no flow, so no friction": "sin flujo no hay fricción",
	"nominal weight along the pipe; upsets and tool joints as the nominal weight has them":
		"peso nominal a lo largo de la tubería; recalcados y juntas como los tenga el peso nominal",
	"north references: grid convergence and magnetic declination, east positive":
		"referencias de norte: convergencia de cuadrícula y declinación magnética, este positivo",
	"nothing disturbs the cement before both": "nada perturba el cemento antes de los dos",
	"one centralizer to every k joints": "un centralizador cada k tramos",
	"one inch of rain on one acre is 27,154 gal": "una pulgada de lluvia sobre un acre son 27,154 gal",
	"p. 62 and Table 1-2, tension 1: weight in air plus overpull":
		"p. 62 y Tabla 1-2, tensión 1: peso en aire más sobretensión",
	"p. 79, perforation friction, at each cluster with its own stress":
		"p. 79, fricción en disparos, en cada cluster con su propio esfuerzo",
	"partial pressure: mole fraction times total absolute pressure":
		"presión parcial: fracción molar por presión absoluta total",
	"phases one after another, without the waiting between them":
		"fases una tras otra, sin las esperas entre ellas",
	"pipe bent to the hole's curvature": "tubería flexionada a la curvatura del agujero",
	"pipe body area": "área del cuerpo de la tubería",
	"pipe body yield and joint strength": "cedencia del cuerpo y resistencia de la junta",
	"pipe body yield strength": "resistencia a la cedencia del cuerpo",
	"plain-end mass": "masa de extremos lisos",
	"plane-strain modulus": "módulo de deformación plana",
	"plastic collapse": "colapso plástico",
	"plug flow: fluids follow one another without mixing": "flujo pistón: los fluidos se siguen sin mezclarse",
	"point source, spreading only": "fuente puntual, solo dispersión",
	"pounds added to each gallon of clean fluid": "libras agregadas a cada galón de fluido limpio",
	"power-law proppant schedule": "programa de apuntalante de ley de potencia",
	"power-law proppant schedule, integrated over the step":
		"programa de apuntalante de ley de potencia, integrado en el paso",
	"pressure test load": "carga de la prueba de presión",
	"pressure-area method": "método de presión por área",
	"pressure-area method; weights by TVD after devereux p. 75":
		"método de presión por área; pesos por TVD según devereux p. 75",
	"pumps run below their rating, with spare ones on line":
		"las bombas trabajan por debajo de su capacidad, con reserva en línea",
	"pumps running; the time between stages is not in it":
		"bombas en marcha; no incluye el tiempo entre etapas",
	"radial fracture": "fractura radial",
	"radial fracture with Carter leakoff": "fractura radial con filtrado de Carter",
	"radial fracture: radius and width, the time eliminated": "fractura radial: radio y ancho, sin el tiempo",
	"radial fracture: width of a disk pressed open, after Sneddon":
		"fractura radial: ancho de un disco abierto a presión, según Sneddon",
	"rating of pipe and joint over the overpull factor, less the hook load":
		"resistencia de tubería y junta entre el factor de sobretensión, menos la carga al gancho",
	"ratio factor": "factor de relación",
	"regular layout": "arreglo regular",
	"restoring force is stated at 67 % standoff; the straight line between is ours":
		"la fuerza de restitución se declara a 67 % de standoff; la recta entre ambos es nuestra",
	"round thread casing joint strength": "resistencia de la junta de TR con rosca redonda",
	"round thread dimensions": "dimensiones de rosca redonda",
	"sacks are rounded up": "los sacos se redondean hacia arriba",
	"salt is stated by weight of mix water": "la sal se expresa en peso del agua de mezcla",
	"sec. 1.4.13, p. 75: unit weight by vertical interval":
		"sec. 1.4.13, p. 75: peso unitario por intervalo vertical",
	"separation factor": "factor de separación",
	"shift of origin": "traslado de origen",
	"shock loading; √(E ρ) of steel": "carga de choque; √(E ρ) del acero",
	"single-bubble kick tolerance": "tolerancia al brote de una sola burbuja",
	"single-bubble kick tolerance with Boyle's law":
		"tolerancia al brote de una sola burbuja con la ley de Boyle",
	"smooth turbulent pipe flow": "flujo turbulento en tubería lisa",
	"soft-string tension and side force; from memory": "tensión y fuerza lateral de sarta flexible; de memoria",
	"standard drift mandrels": "mandriles de drift estándar",
	"standoff ratio, from memory": "relación de standoff, de memoria",
	"steps of equal slurry": "pasos de igual lechada",
	"surface injection pressure: breakdown less hydrostatic plus friction":
		"presión de inyección en superficie: ruptura menos hidrostática más fricción",
	"surface pressure, step by step along the column of what has been pumped":
		"presión en superficie, paso a paso a lo largo de la columna bombeada",
	"symmetric barriers, no toughness": "barreras simétricas, sin tenacidad",
	"tangent plane at the wellhead: geodesic distance and azimuth kept":
		"plano tangente en la boca del pozo: se conservan distancia geodésica y azimut",
	"temperature effect": "efecto de temperatura",
	"tests at the temperature of the zone; from memory": "pruebas a la temperatura de la zona; de memoria",
	"the casing full of the richest slurry": "la TR llena de la lechada con más apuntalante",
	"the factor is the operator's own": "el factor es de la propia operadora",
	"the loads of as many whole stages as the pace begins in a day":
		"las cargas de tantas etapas completas como empiezan en un día a ese ritmo",
	"the longest half-length of the models; each uncertainty as stated, all the near way":
		"la mayor media longitud de los modelos; cada incertidumbre como se declara, toda hacia el lado cercano",
	"the mass of the ramp, turned round": "la masa de la rampa, invertida",
	"the pipe centered in a hole of bit size": "la tubería centrada en un agujero del diámetro de la barrena",
	"the pumps' rate shared evenly by the clusters, each with two wings":
		"el gasto de las bombas repartido por igual entre los clusters, cada uno con dos alas",
	"the rate is that of the slurry": "el gasto es el de la lechada",
	"the shoe track and the hole below the shoe left out; the annulus without excess":
		"sin el tramo entre cople y zapata ni el agujero bajo la zapata; el anular sin exceso",
	"thick cylinders in plane strain: E = 30·10⁶ psi, ν = 0.3; water 3.0·10⁻⁶/psi, 2.5·10⁻⁴/°F by common practice":
		"cilindros gruesos en deformación plana: E = 30·10⁶ psi, ν = 0.3; agua 3.0·10⁻⁶/psi, 2.5·10⁻⁴/°F por práctica común",
	"transition collapse": "colapso de transición",
	"triaxial yield of pipe body": "cedencia triaxial del cuerpo de la tubería",
	"triaxial yield of pipe body, with bending": "cedencia triaxial del cuerpo de la tubería, con flexión",
	"triaxial yield of pipe body; Lamé's stresses":
		"cedencia triaxial del cuerpo de la tubería; esfuerzos de Lamé",
	"turn rate": "ritmo de giro",
	"uniform wear": "desgaste uniforme",
	"vertical section": "sección vertical",
	"volume of the disk over what went into both wings": "volumen del disco entre lo que entró en ambas alas",
	"volume of the wing over what went into it": "volumen del ala entre lo que entró en ella",
	"volume passing a point over rate": "volumen que pasa por un punto entre gasto",
	"water ratios by class": "relaciones de agua por clase",
	"what bears on the end of the pipe is the vertical column":
		"lo que actúa en el extremo de la tubería es la columna vertical",
	"width equation and Carter's material balance solved together":
		"ecuación del ancho y balance de materia de Carter, resueltos juntos",
	"yield strength collapse": "colapso de cedencia",
	"Herschel–Bulkley; the power law where τ_y is zero; equations read in copies, the rest from memory":
		"Herschel–Bulkley; ley de potencia donde τ_y es cero; ecuaciones leídas en copias, lo demás de memoria",
	"ch. 5, surge and swab pressures": "cap. 5, presiones de surgencia y suaveo",
	"ch. 5, surge and swab pressures; after Burkhardt 1961":
		"cap. 5, presiones de surgencia y suaveo; según Burkhardt 1961",
	"contact force of a fully developed helix; from memory":
		"fuerza de contacto de una hélice completa; de memoria",
	"drag of helically buckled pipe on that of the soft string of johancsik-1984; from memory":
		"arrastre de tubería pandeada en hélice, sobre el de la sarta flexible de johancsik-1984; de memoria",
	"eq. 2.81, after Burkhardt's chart for laminar flow":
		"ec. 2.81, según la gráfica de Burkhardt para flujo laminar",
	"frictional drag of helically buckled pipe, w = μ r F² / (4 E J); from memory":
		"arrastre por fricción de tubería pandeada en hélice, w = μ r F² / (4 E J); de memoria",
	"inclined hole; the least is Lubinski's of vertical hole; from memory":
		"agujero inclinado; el mínimo es el de Lubinski para agujero vertical; de memoria",
	"low-shear-rate yield point; equations read in copies, the rest from memory":
		"punto de cedencia a bajo corte; ecuaciones leídas en copias, lo demás de memoria",
	"rheological models; equations read in copies, the rest from memory":
		"modelos reológicos; ecuaciones leídas en copias, lo demás de memoria",
	"simplified hydraulics, annulus; equations read in copies, the rest from memory":
		"hidráulica simplificada, espacio anular; ecuaciones leídas en copias, lo demás de memoria",
	"simplified hydraulics, pipe; equations read in copies, the rest from memory":
		"hidráulica simplificada, tubería; ecuaciones leídas en copias, lo demás de memoria",
	"rating of pipe and joint over the overpull factor":
		"resistencia de tubería y junta entre el factor de sobretensión",
	"sheets drdp, TOTALS and those of the terms; after Williamson, SPE 67616":
		"hojas drdp, TOTALS y las de los términos; según Williamson, SPE 67616",
	"principal axes of the horizontal part of the covariance":
		"ejes principales de la parte horizontal de la covarianza",
	"normal distribution in a plane: share within k is 1 − exp(−k²/2)":
		"distribución normal en un plano: la parte dentro de k es 1 − exp(−k²/2)",
	"the plan's own stations, and between them at most 100 ft apart":
		"las estaciones del plan, y entre ellas a no más de 100 pies",
	"ductile rupture, hardening index by yield strength; from memory":
		"ruptura dúctil, índice de endurecimiento según la cedencia; de memoria",
	"ductile rupture of capped-end pipe; from memory":
		"ruptura dúctil de tubería de extremos cerrados; de memoria",
};
