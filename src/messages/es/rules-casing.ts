import type { RULES_CASING as ENGLISH } from "../en/rules-casing.ts";
import type { Translation } from "../entries.ts";

export const RULES_CASING: Translation<typeof ENGLISH> = {
	"rules/between-and": "entre {depth} y {depth2}",
	"rules/each-lowest-joints": "cada uno de los {joints} tramos inferiores",
	"rules/lowest-joint": "el tramo inferior",
	"rules/carries-centralizer": "{lowest} lleva un centralizador.",
	"rules/should-carry-centralizer-and-runs-with-one":
		"{lowest} debe llevar un centralizador, y los intervalos con uno por tramo dejan la tubería sin centralizar {gapWords}.",
	"rules/centralizers-stand-on-every-joints-or-closer":
		"hay centralizadores cada {joints} tramos o menos, de la zapata a la boca de la TR.",
	"rules/no-centralizers-stand-on-every-joints-or":
		"no hay centralizadores cada {joints} tramos o menos {gapWords}.",
	"rules/lowest-centralizer-is-within-shoe":
		"el centralizador inferior está a no más de {firstWithin} de la zapata.",
	"rules/lowest-centralizer-is-not-within-shoe":
		"el centralizador inferior no está a {firstWithin} o menos de la zapata.",
	"rules/above-it-they-are-apart-or-closer": "por encima están a {thenEvery} o menos uno de otro.",
	"rules/above-it-they-are-further-than-apart":
		"por encima están a más de {thenEvery} uno de otro {gapWords}.",
	"rules/water-zones-within-protected-water": "las zonas de agua dentro del agua protegida",
	"rules/hole-does-not-reach": "el agujero no llega a {name}.",
	"rules/lies-below-shoe": "{name} queda por debajo de la zapata.",
	"rules/centralizers-stand-through": "hay centralizadores a lo largo de {name}.",
	"rules/no-centralizers-stand-in": "no hay centralizadores en {name} {gapWords}.",
	"rules/condition-pipe": "la condición de la tubería",
	"rules/condition-pipe-is-not-stated": "no se indica la condición de la tubería {string}.",
	"rules/is-required": "{said}; se requiere {orList}.",
	"rules/drilling-fluid-hole": "el fluido de perforación del agujero {hole}",
	"rules/plan-drills": "el plan perfora {said}.",
	"rules/plan-drills-rule-names": "el plan perfora {said}; la regla admite {orList}.",
	"rules/evacuated": "con evacuación total",
	"rules/while-it-is-run": "durante la corrida",
	"rules/pulled-back-through-curve": "al sacarla por la curva",
	"rules/stopped-short-while-it-is-run": "con carga de choque al bajar",
	"rules/stuck-and-pulled": "atrapada y tensionada",
	"rules/with-cement-in-place": "con el cemento en su lugar",
	"rules/when-plug-is-bumped": "al asentar el tapón",
	"rules/in-pressure-test": "en la prueba de presión",
	"rules/with-gas-kick-shut-in": "con un brote de gas cerrado",
	"rules/at-maximum-treating-pressure": "a la presión máxima de tratamiento",
	"rules/shut-in-full-gas": "cerrada y llena de gas",
	"rules/with-tubing-leak-at-surface": "con una fuga de la tubería de producción en superficie",
	"rules/drawn-down-below-packer": "abatida por debajo del empacador",
	"rules/under-mobile-salt": "frente a sal móvil",
	"rules/factor-over-its-design-factor": "el factor de {kind} sobre su factor de diseño",
	"rules/design.what": "un dato de las cargas de {kind} de la TR {string}",
	"rules/string-has-factor-where-is-asked-it":
		"el factor de seguridad por {kind} de la TR {string} es {value} {situation}{weak}{place}: {of} × el factor de diseño de {required}",
	"rules/overpull-left-at-greatest-pick-up":
		"la sobretensión (overpull) disponible en el mayor peso al levantar",
	"rules/string-is-run-on-another": "la TR {string} se corre colgada de otra",
	"rules/string-is-on-record-as-landed": "la TR {string} consta como asentada",
	"rules/mud-density-hole-for-hook-load": "la densidad del lodo del agujero, para la carga al gancho",
	"rules/string-has-overpull-left-at-greatest-pick":
		"la TR {string} tiene {part} de sobretensión (overpull) disponible en el mayor peso al levantar",
	"rules/hook-load-let-down-with-greatest": "la carga al gancho al bajar con la mayor fricción",
	"rules/hook-carries-with-string-let-down-to":
		"la carga al gancho al bajar es {part} con la TR {string} en el fondo",
	"rules/hook-load-without-friction": "la carga al gancho sin fricción",
	"rules/mud-density-hole": "la densidad del lodo del agujero",
	"rules/hook-load-without-friction-is": "la carga al gancho sin fricción es {part}",
	"rules/gas-pressure-on-connections": "la presión de gas en las conexiones",
	"rules/connections-string-are-not-api-threads": "las conexiones de la TR {string} no son roscas API",
	"rules/no-gas-is-shut-in-by-string": "la TR {string} no queda cerrada con gas",
	"rules/gas-may-stand-at-behind-connections-string":
		"la presión de gas en las conexiones {names} de la TR {string} puede llegar a {part}",
	"rules/sections-pipe-outside-limits-for-sour":
		"los intervalos de tubería fuera de los límites de servicio amargo",
	"rules/fitness-for-sour-service": "la aptitud de {detail} para servicio amargo",
	"rules/service-string-is-not-sour": "el servicio de la TR {string} no es amargo",
	"rules/every-section-string-is-within-limits-for":
		"todos los intervalos de la TR {id} están dentro de los límites de servicio amargo",
	"rules/string-is-not-fit-for-sour-service":
		"{detail} de la TR {id} no es apto para servicio amargo{detail2}{detail3}",
	"rules/public-places-within-radius-exposure": "los lugares públicos dentro del radio de exposición",
	"rules/statement-on-hydrogen-sulfide": "la declaración sobre ácido sulfhídrico",
	"rules/fraction-hydrogen-sulfide": "la fracción de ácido sulfhídrico",
	"rules/no-hydrogen-sulfide-is-expected": "no se espera ácido sulfhídrico",
	"rules/rate-gas-that-could-escape": "el gasto de gas que podría escapar",
	"rules/no-listed-public-place-is-within": "no hay lugares públicos listados dentro{where}",
	"rules/is-hole": "{noun} es de {part} (agujero {diameter}{detail})",
	"rules/clearance-on-each-side-coupling": "el claro a cada lado del cople",
	"rules/coupling-diameter": "el diámetro del cople",
	"rules/clearance-on-each-side-pipe": "el claro a cada lado de la tubería",
	"rules/pipe-diameter": "el diámetro de la tubería",
	"rules/clearance-on-diameter-over-coupling": "el claro diametral sobre el cople",
	"rules/clearance-on-diameter-over-pipe": "el claro diametral sobre la tubería",
	"rules/at-hydrogen-sulfide-partial-pressure": " a una presión parcial de ácido sulfhídrico de {partial}",
	"rules/it-needs-or-more-and-is-as": ": necesita {lowest} o más y llega a enfriarse a {coldest}",
	"rules/reach-greatest-friction": "la profundidad a la que baja la sarta con la mayor fricción",
	"rules/reach-least-friction": "la profundidad a la que baja la sarta con la menor fricción",
	"rules/slides-to-greatest": "con la mayor fricción la TR {string} baja por su propio peso a {part}",
	"rules/slides-to-least": "con la menor fricción la TR {string} baja por su propio peso a {part}",
	"rules/stops-at-greatest":
		"con la mayor fricción la TR {string} se detiene en {part} por su propio peso{why}",
	"rules/stops-at-least":
		"aun con la menor fricción la TR {string} se detiene en {part} por su propio peso{why}",
	"rules/coiled-at": ", con pandeo helicoidal a {md} por {compression} de compresión (límite {helical})",
	"rules/string-stops-short": "con la mayor fricción la TR {string} no llega a la profundidad de su zapata",
	"rules/at-measured-depth": " a {md}",
	"rules/stated-maximum-pull": "la tensión máxima indicada para bajar la TR",
	"rules/no-maximum-pull": "no se indica una tensión máxima para la TR {string}",
	"rules/maximum-pull-is": "la tensión máxima indicada para la TR {string} es {part}",
	"rules/allowed-pull": "lo más débil entre tubo y junta sobre el factor de sobretensión",
	"rules/pull-allowed-is": "la TR permite una tensión de {part}",
};
