/** Questions that rules put to a person, citations of practice, and kinds of neighbors. */
export const RULE_TEXTS: Readonly<Record<string, string>> = {
	"State when the identity and concentration were given to whoever asked for them.":
		"Indique cuándo se dieron la identidad y la concentración a quien las pidió.",
	"State what was found at the other well and when the division was told.":
		"Indique qué se encontró en el otro pozo y cuándo se avisó a la división.",
	"State how long pressure was kept on the cement head; the rule asks for 4 hours.":
		"Indique cuánto tiempo se mantuvo la presión en la cabeza de cementación; la regla pide 4 horas.",
	"State the passes of the weld, the welder’s certificate, the test and the notice given before it.":
		"Indique los pases de la soldadura, el certificado del soldador, la prueba y el aviso previo.",
	"Confirm that an approved plan was carried out and a new test passed before the treatment.":
		"Confirme que se llevó a cabo un plan aprobado y pasó una nueva prueba antes del tratamiento.",
	"State when the flow was reported, with its depth, thickness and rate; the rule asks for the next business day.":
		"Indique cuándo se informó del flujo, con su profundidad, espesor y gasto; la regla pide el siguiente día hábil.",
	"A geologist must state whether the bed is competent and would hold a shut-in.":
		"Un geólogo debe decir si la capa es competente y soportaría un cierre.",
	"A geologist must state whether the formation is impervious.":
		"Un geólogo debe decir si la formación es impermeable.",
	"A geologist must state whether the formation at the shoe is competent.":
		"Un geólogo debe decir si la formación en la zapata es competente.",
	"A geologist must state whether the shoe is set in consolidated rock.":
		"Un geólogo debe decir si la zapata queda en roca consolidada.",
	"Look up whether an area rule applies at this well, and which of the two is stricter.":
		"Verifique si en este pozo rige una regla de área y cuál de las dos es más estricta.",
	"State the permit under which the stimulation is done.": "Indique con qué permiso se hace la estimulación.",
	"State whether any planned operation is on the list of those that need prior approval.":
		"Indique si alguna operación planeada está en la lista de las que requieren aprobación previa.",
	"State whether the gradients used rest on data, or lie within the ranges allowed for wells without data.":
		"Indique si los gradientes usados se basan en datos o caen en los rangos para pozos sin datos.",
	"State which wells are monitored and who stops the job.":
		"Indique qué pozos se vigilan y quién detiene el trabajo.",
	"A treating string is not part of this plan; an engineer must judge it where one is used.":
		"Este plan no incluye una sarta de tratamiento; si se usa una, un ingeniero debe juzgarla.",
	"An engineer must state that the materials suit the type of well, its depth and its pressures.":
		"Un ingeniero debe declarar que los materiales son adecuados para el tipo de pozo, su profundidad y sus presiones.",
	"An engineer must state the pressures expected on completion and confirm that the planned test covers them.":
		"Un ingeniero debe decir qué presiones traerá la terminación y confirmar que la prueba planeada las cubre.",
	"An engineer must state that the planned centralizers are enough to isolate the completed interval from the zones above it.":
		"Un ingeniero debe declarar que los centralizadores planeados bastan para aislar el intervalo terminado de las zonas superiores.",
	"Only the topics of the directive were read here (barriers, offset-well risk, setbacks from water wells and bedrock, notice before the job); work through the directive itself.":
		"Aquí solo se leyeron los temas de la directiva (barreras, riesgo de pozos vecinos, distancias a pozos de agua y roca firme, aviso antes del trabajo); revise la directiva misma.",
	"Where the lease is federal, confirm that copies of the federal forms were sent.":
		"Si el arrendamiento es federal, confirme que se enviaron las copias de las formas federales.",
	"Distances between wellheads are not measured here; compare them, on the pad and off it.":
		"Aquí no se miden las distancias entre bocas de pozo; compárelas, dentro y fuera de la localización.",
	"The definition does not say which other wells produce from the same reservoir; hold the distances of the wells listed, and of others, against the field rules.":
		"La definición no dice qué otros pozos producen del mismo yacimiento; compare con las reglas del campo las distancias de los pozos listados y de otros.",
	"Inspections come after completion; the operator must schedule them.":
		"Las inspecciones vienen después de la terminación; la operadora debe programarlas.",
	"The operator must plan the monitoring after the job.":
		"La operadora debe planear la vigilancia posterior al trabajo.",
	"The notice to nearby operators is not part of this plan; look up the rule and confirm the notice.":
		"El aviso a las operadoras cercanas no está en este plan; consulte la regla y confirme el aviso.",
	"Permeability is not part of this plan; attach the laboratory report.":
		"La permeabilidad no está en este plan; adjunte el informe del laboratorio.",
	"Production reports come after completion; the operator must schedule them.":
		"Los informes de producción vienen después de la terminación; la operadora debe programarlos.",
	"Attach proof of the well search; it is not part of this plan.":
		"Adjunte la prueba de la búsqueda de pozos; no está en este plan.",
	"State how the integrity of the casing was verified after 360 rotating hours.":
		"Indique cómo se verificó la integridad de la TR después de 360 horas de rotación.",
	"Attach the application’s description of the treatment; it is not part of this plan.":
		"Adjunte la descripción del tratamiento de la solicitud; no está en este plan.",
	"Attach the approval, with its number and date; it is not part of this plan.":
		"Adjunte la aprobación, con su número y fecha; no está en este plan.",
	"The rule’s sampling area was not read as a distance; choose the water sources to sample.":
		"El área de muestreo de la regla no se leyó como una distancia; elija las fuentes de agua por muestrear.",
	"Attach the cement log with its date; it is not judged here.":
		"Adjunte el registro de cementación con su fecha; aquí no se juzga.",
	"Confirm which channels are recorded; they are not part of this plan.":
		"Confirme qué canales se registran; no están en este plan.",
	"Look up the commission’s list for the county and the injection permits within a quarter mile, and mark those formations; this plan does not hold them.":
		"Consulte la lista de la comisión para el condado y los permisos de inyección a menos de un cuarto de milla, y marque esas formaciones; este plan no las tiene.",
	"Confirm that the drilling log records the tests and any sign of usable water; the log is kept outside this plan.":
		"Confirme que la bitácora de perforación registra las pruebas y cualquier indicio de agua aprovechable; la bitácora se lleva fuera de este plan.",
	"Confirm the entry in the national chemical disclosure registry and its date; it is made outside this plan.":
		"Confirme la inscripción en el registro nacional de divulgación química y su fecha; se hace fuera de este plan.",
	"Attach the form, the surface use plan and the evidence of bond; they are not part of this plan.":
		"Adjunte la forma, el plan de uso de la superficie y la constancia de la fianza; no están en este plan.",
	"Attach the list of neighbors notified, with the dates; it is not part of this plan.":
		"Adjunte la lista de vecinos avisados, con las fechas; no está en este plan.",
	"Attach the list of owners and the proof of notice; they are not part of this plan.":
		"Adjunte la lista de propietarios y la constancia del aviso; no están en este plan.",
	"Attach the pipe’s mill test record; it is not part of this plan.":
		"Adjunte el registro de la prueba de fábrica de la tubería; no está en este plan.",
	"Confirm the mud system and the pit; they are not part of this plan.":
		"Confirme el sistema de lodo y la fosa; no están en este plan.",
	"Attach the notices to owners of dwellings; they are kept outside this plan.":
		"Adjunte los avisos a los dueños de viviendas; se guardan fuera de este plan.",
	"Attach the permit forms, the plat, the bond and the notices; they are not part of this plan.":
		"Adjunte las formas del permiso, el plano, la fianza y los avisos; no están en este plan.",
	"Confirm that the permit describes the processes, volumes and materials of the treatment, or that the plan was sent.":
		"Confirme que el permiso describe los procesos, volúmenes y materiales del tratamiento, o que se envió el plan.",
	"The pressure that the rule sets for production casing was cut off in the copy at hand; read it in the official text.":
		"La presión que la regla fija para la TR de producción estaba cortada en la copia disponible; léala en el texto oficial.",
	"The rule sets no number; an engineer must state that the design factors suit the load cases shown.":
		"La regla no fija un número; un ingeniero debe declarar que los factores de diseño son adecuados para los casos de carga mostrados.",
	"Compare the shut-in pressure after completion with the rule; it is not part of this plan.":
		"Compare con la regla la presión de cierre después de la terminación; no está en este plan.",
	"Confirm the sign on site; it is not part of this plan.":
		"Confirme el letrero en el sitio; no está en este plan.",
	"Confirm that the surface casing valve stays open during the treatment and that the well can be shut in from a distance.":
		"Confirme que la válvula de la TR superficial queda abierta durante el tratamiento y que el pozo se puede cerrar a distancia.",
	"Compare the test record of the idle well with the rule; it is not part of this plan.":
		"Compare con la regla el registro de la prueba del pozo inactivo; no está en este plan.",
	"Measure the distance to treated intervals of other wells; they are not part of this plan.":
		"Mida la distancia a los intervalos tratados de otros pozos; no están en este plan.",
	"Whether an aquifer is exempted is for the agency to decide; look it up.":
		"La agencia decide si un acuífero está exento; consúltelo.",
	"Where the tract was pooled by order, measure the distance; this plan does not say whether it was.":
		"Si el predio se integró por orden, mida la distancia; este plan no dice si fue así.",
	"Confirm which pressures are recorded during the job; this plan does not say.":
		"Confirme qué presiones se registran durante el trabajo; este plan no lo dice.",
	"Look up workable coal seams; this plan does not mark them.":
		"Consulte los mantos de carbón explotables; este plan no los marca.",
	"Attach a laboratory report, not older than 12 months, with Young’s modulus, permeability and the share of Portland cement.":
		"Adjunte un informe de laboratorio, de no más de 12 meses, con el módulo de Young, la permeabilidad y la proporción de cemento Portland.",
	"16 TAC § 3.36(c), as practice": "16 TAC § 3.36(c), como práctica",
	"API RP 100-1; common practice": "API RP 100-1; práctica común",
	"API RP 100-1; interference rules of several states":
		"API RP 100-1; reglas de interferencia de varios estados",
	"API RP 10B-2; common practice": "API RP 10B-2; práctica común",
	"API RP 10D-2; common practice": "API RP 10D-2; práctica común",
	"API RP 54; API RP 100-1; common practice": "API RP 54; API RP 100-1; práctica común",
	"API RP 54; common practice": "API RP 54; práctica común",
	"API RP 5C5; common practice": "API RP 5C5; práctica común",
	"API RP 65-2; common practice": "API RP 65-2; práctica común",
	"API STD 53; common practice": "API STD 53; práctica común",
	"ISCWSA collision avoidance rule, SPE 187073; API RP 78":
		"regla de anticolisión de ISCWSA, SPE 187073; API RP 78",
	"Sutton, Sabins and Faul 1984; API STD 65-2": "Sutton, Sabins y Faul 1984; API STD 65-2",
	"Wu and Juvkam-Wold, SPE 25503; common practice": "Wu y Juvkam-Wold, SPE 25503; práctica común",
	"API RP 13D; common practice": "API RP 13D; práctica común",
	"common practice": "práctica común",
	"common practice, no source": "práctica común, sin fuente",
	"common practice; API RP 100-1": "práctica común; API RP 100-1",
	"common practice; several states": "práctica común; varios estados",
	"common practice; several states ask for 1,000 to 2,000 ft":
		"práctica común; varios estados piden de 1,000 a 2,000 pies",
	"company design basis; single-bubble kick tolerance, common practice":
		"bases de diseño de la compañía; tolerancia al brote de una sola burbuja, práctica común",
	"design factors as stated, else common practice":
		"factores de diseño como se indican; si no, práctica común",
	"water well": "pozo de agua",
	"public water supply": "suministro público de agua",
	spring: "manantial",
	dwelling: "vivienda",
	school: "escuela",
	hospital: "hospital",
	"place of worship": "lugar de culto",
	"public building": "edificio público",
	stream: "arroyo",
	"lake or pond": "lago o estanque",
	wetland: "humedal",
	road: "camino",
	railroad: "ferrocarril",
	pipeline: "ducto",
	"property line": "lindero del predio",
	"lease line": "lindero del arrendamiento",
	"unit line": "lindero de la unidad",
	other: "otro",
};
